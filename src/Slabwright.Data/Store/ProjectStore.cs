using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;

namespace Slabwright.Data.Store;

/// <summary>
/// The jobs kept on this machine. A job is stored as the files of its project folder, byte for byte, so nothing is lost and the
/// folder can be written out again; beside them lies the newest plan, good for one content and one engine.
/// </summary>
public sealed class ProjectStore(IDbContextFactory<StoreContext> contexts, FolderReading read, TimeProvider clock)
{
    private readonly SemaphoreSlim importing = new(1);

    /// <summary>Makes the database, or brings an older one up to date.</summary>
    public async Task PrepareAsync(CancellationToken cancel = default)
    {
        await using var context = await contexts.CreateDbContextAsync(cancel);
        await context.Database.MigrateAsync(cancel);
    }

    /// <summary>Reads a project folder into the store. A folder read before keeps its identifier and gets the new content.</summary>
    public async Task<ImportResult> ImportFolderAsync(string folder, CancellationToken cancel = default)
    {
        var from = Path.GetFullPath(folder);
        if (!Directory.Exists(from)) return Refused(NoFolder(from));
        var files = await FolderFiles.ReadAsync(from, cancel);
        var content = await ReadCopyAsync(files, cancel);
        if (content.Project is not { } project) return new ImportResult(ImportOutcome.Refused, null, content.Findings);

        await importing.WaitAsync(cancel);
        try
        {
            var (outcome, id) = await KeepAsync(from, project, files, cancel);
            return new ImportResult(outcome, id, content.Findings);
        }
        finally
        {
            importing.Release();
        }
    }

    /// <summary>All jobs, by name.</summary>
    public async Task<ImmutableArray<ProjectEntry>> ListAsync(CancellationToken cancel = default)
    {
        await using var context = await contexts.CreateDbContextAsync(cancel);
        var entries = await Entries(context.Projects).ToListAsync(cancel);
        return [.. entries.OrderBy(e => e.Name, StringComparer.OrdinalIgnoreCase).ThenBy(e => e.ImportedFrom, StringComparer.Ordinal)];
    }

    /// <summary>One job, or null when the store does not hold it.</summary>
    public async Task<ProjectEntry?> FindAsync(Guid id, CancellationToken cancel = default)
    {
        await using var context = await contexts.CreateDbContextAsync(cancel);
        return await Entries(context.Projects.Where(p => p.Id == id)).SingleOrDefaultAsync(cancel);
    }

    /// <summary>The project of a job, read from its stored files; null when the store does not hold it.</summary>
    public async Task<FolderContent?> LoadAsync(Guid id, CancellationToken cancel = default)
    {
        var files = await FilesAsync(id, cancel);
        return files.Count == 0 ? null : await ReadCopyAsync(files, cancel);
    }

    /// <summary>Writes a job's files into a new or empty folder. False when the store does not hold the job.</summary>
    /// <exception cref="IOException">The folder is not empty or cannot be written.</exception>
    public async Task<bool> ExportFolderAsync(Guid id, string folder, CancellationToken cancel = default)
    {
        var files = await FilesAsync(id, cancel);
        if (files.Count == 0) return false;
        await FolderFiles.WriteAsync(folder, files, cancel);
        return true;
    }

    /// <summary>The plan kept for a content by this engine; null when there is none.</summary>
    public async Task<RepairPlan?> FindPlanAsync(Guid id, string contentHash, CancellationToken cancel = default)
    {
        await using var context = await contexts.CreateDbContextAsync(cancel);
        var content = await context.Plans
            .Where(p => p.ProjectId == id && p.ContentHash == contentHash && p.EngineVersion == Engine.Version)
            .Select(p => p.Content)
            .SingleOrDefaultAsync(cancel);
        return content is null ? null : PlanJson.Read(content);
    }

    /// <summary>Keeps a plan for a content, in place of the one kept before.</summary>
    public async Task KeepPlanAsync(Guid id, string contentHash, RepairPlan plan, string currency, CancellationToken cancel = default)
    {
        await using var context = await contexts.CreateDbContextAsync(cancel);
        await using var transaction = await context.Database.BeginTransactionAsync(cancel);
        await context.Plans.Where(p => p.ProjectId == id).ExecuteDeleteAsync(cancel);
        context.Plans.Add(new StoredPlan
        {
            ProjectId = id,
            ContentHash = contentHash,
            EngineVersion = Engine.Version,
            ComputedAt = clock.GetUtcNow(),
            Repairs = plan.Boundaries.Repairs.Length,
            TotalCents = (long)decimal.Round(plan.Quantities.Schedule.Total * 100),
            Currency = currency,
            Content = PlanJson.Write(plan),
        });
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
    }

    /// <summary>Adds the job, or gives the one read from the same folder before its new content.</summary>
    private async Task<(ImportOutcome Outcome, Guid Id)> KeepAsync(string from, Project project, List<StoredFile> files, CancellationToken cancel)
    {
        await using var context = await contexts.CreateDbContextAsync(cancel);
        var hash = ContentHash.OfFolder(files);
        var stored = await context.Projects.SingleOrDefaultAsync(p => p.ImportedFrom == from, cancel);
        if (stored?.ContentHash == hash) return (ImportOutcome.Unchanged, stored.Id);

        var outcome = stored is null ? ImportOutcome.Added : ImportOutcome.Replaced;
        stored ??= context.Add(new StoredProject { Id = Guid.NewGuid(), Name = "", ImportedFrom = from, ContentHash = "" }).Entity;
        stored.Name = project.Name;
        stored.Units = project.UnitSystem;
        stored.ImportedAt = clock.GetUtcNow();
        stored.ContentHash = hash;
        await ReplaceFilesAsync(context, stored.Id, files, cancel);
        return (outcome, stored.Id);
    }

    /// <summary>Reads files through a copy on disk, so that what is read is what is stored.</summary>
    private async Task<FolderContent> ReadCopyAsync(List<StoredFile> files, CancellationToken cancel)
    {
        var folder = Directory.CreateTempSubdirectory("slabwright-").FullName;
        try
        {
            await FolderFiles.WriteAsync(folder, files, cancel);
            return read(folder);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task ReplaceFilesAsync(StoreContext context, Guid id, List<StoredFile> files, CancellationToken cancel)
    {
        await using var transaction = await context.Database.BeginTransactionAsync(cancel);
        await context.Plans.Where(p => p.ProjectId == id).ExecuteDeleteAsync(cancel);
        await context.Files.Where(f => f.ProjectId == id).ExecuteDeleteAsync(cancel);
        foreach (var file in files) file.ProjectId = id;
        context.Files.AddRange(files);
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
    }

    private async Task<List<StoredFile>> FilesAsync(Guid id, CancellationToken cancel)
    {
        await using var context = await contexts.CreateDbContextAsync(cancel);
        return await context.Files.AsNoTracking().Where(f => f.ProjectId == id).ToListAsync(cancel);
    }

    private static IQueryable<ProjectEntry> Entries(IQueryable<StoredProject> projects) => projects.Select(p => new ProjectEntry(
        p.Id, p.Name, p.Units, p.ImportedFrom, p.ImportedAt, p.ContentHash,
        p.Plan != null && p.Plan.ContentHash == p.ContentHash && p.Plan.EngineVersion == Engine.Version
            ? new PlanInShort(p.Plan.Repairs, p.Plan.TotalCents / 100m, p.Plan.Currency)
            : null));

    private static ImportResult Refused(Finding finding) => new(ImportOutcome.Refused, null, [finding]);

    private static Finding NoFolder(string folder) => new(
        "STO-001", FindingLevel.Error, "There is no such folder on this machine.", new FindingPlace(File: folder),
        Mend: "Give the path of a project folder, the one that holds project.json.");
}
