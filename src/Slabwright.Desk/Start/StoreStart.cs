using Slabwright.Core.Evidence;
using Slabwright.Data.Store;
using Slabwright.Desk.Jobs;

namespace Slabwright.Desk.Start;

/// <summary>Where the start of the store stands.</summary>
public enum StartStage
{
    /// <summary>The store is being opened and the demo loaded.</summary>
    Loading,

    /// <summary>Everything is there.</summary>
    Ready,

    /// <summary>The store could not be opened.</summary>
    Failed,
}

/// <summary>Opens the store, loads the demo and begins its plan while the desk already answers, so that the first page need not wait.</summary>
public sealed class StoreStart(ProjectStore store, JobDesk jobs, DeskOptions options, ILogger<StoreStart> log) : BackgroundService
{
    private readonly TaskCompletionSource done = new(TaskCreationOptions.RunContinuationsAsynchronously);

    public StartStage Stage { get; private set; }

    /// <summary>What went wrong, in a sentence; empty when nothing did.</summary>
    public string Trouble { get; private set; } = "";

    /// <summary>What was wrong in the demo's files when it was refused.</summary>
    public IReadOnlyList<Finding> Findings { get; private set; } = [];

    /// <summary>Ends when the store is ready or has failed.</summary>
    public Task Done => done.Task;

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await Task.Yield();
        try
        {
            await store.PrepareAsync(stoppingToken);
            await LoadDemoAsync(stoppingToken);
            Stage = StartStage.Ready;
        }
        catch (Exception trouble) when (trouble is not OperationCanceledException)
        {
            log.LogError(trouble, "The store in {Folder} could not be opened.", options.DataFolder);
            Trouble = $"The store in {options.DataFolder} could not be opened: {trouble.Message}";
            Stage = StartStage.Failed;
        }
        finally
        {
            done.TrySetResult();
        }
    }

    private async Task LoadDemoAsync(CancellationToken cancel)
    {
        if (options.DemoFolder is not { } demo) return;
        var folders = ProjectFoldersIn(demo);
        if (folders.Length == 0) Trouble = $"{demo} holds no project folder; a project folder holds project.json.";
        foreach (var folder in folders)
        {
            var result = await store.ImportFolderAsync(folder, cancel);
            if (result.Id is { } id) await jobs.OpenAsync(id);
            if (result.Outcome != ImportOutcome.Refused) continue;
            Trouble = $"The project in {folder} could not be read.";
            Findings = result.Findings;
        }
    }

    /// <summary>The folder itself when it holds a project, or else the folders in it that do.</summary>
    private static string[] ProjectFoldersIn(string folder)
    {
        if (IsProject(folder)) return [folder];
        return Directory.Exists(folder) ? [.. Directory.EnumerateDirectories(folder).Where(IsProject).Order(StringComparer.Ordinal)] : [];
    }

    private static bool IsProject(string folder) => File.Exists(Path.Combine(folder, "project.json"));
}
