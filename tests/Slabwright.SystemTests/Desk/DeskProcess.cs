using System.Diagnostics;
using System.Text.RegularExpressions;
using Slabwright.SystemTests.Store;

namespace Slabwright.SystemTests.Desk;

/// <summary>The real desk, started as people start it, on a free port of this machine with a store of its own.</summary>
internal sealed partial class DeskProcess : IAsyncDisposable
{
    private readonly Process process;

    private DeskProcess(Process process, Uri address, TimeSpan startTime)
    {
        (this.process, Address, StartTime) = (process, address, startTime);
        Http = new HttpClient { BaseAddress = address, Timeout = TimeSpan.FromMinutes(10) };
    }

    public Uri Address { get; }

    /// <summary>From starting the process until it names its address.</summary>
    public TimeSpan StartTime { get; }

    public HttpClient Http { get; }

    public static async Task<DeskProcess> StartAsync(string data, string demo)
    {
        var watch = Stopwatch.StartNew();
        var process = Launch("--data", data, "--demo", demo, "--urls", "http://127.0.0.1:0");
        var errors = process.StandardError.ReadToEndAsync();
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (Printed().Match(line) is not { Success: true } match) continue;
            _ = process.StandardOutput.ReadToEndAsync();
            return new DeskProcess(process, new Uri(match.Groups[1].Value), watch.Elapsed);
        }

        throw new InvalidOperationException("The desk did not start: " + await errors);
    }

    /// <summary>Address of the first job in the list, as soon as the store has one.</summary>
    public async Task<string> FirstJobAsync()
    {
        for (var i = 0; i < 1200; i++)
        {
            if (JobLink().Match(await Http.GetStringAsync("/")) is { Success: true } match) return match.Groups[1].Value;
            await Task.Delay(50);
        }

        throw new TimeoutException("The desk did not load the demo.");
    }

    /// <summary>Waits until a job's plan is whole: files are given out only then, and there is none of this name.</summary>
    public async Task WholeAsync(string job) => (await Http.GetAsync($"{job}/sheets/none")).Dispose();

    /// <summary>Starts the desk with options that make it end at once.</summary>
    public static async Task<(int ExitCode, string Output)> EndsAsync(params string[] arguments)
    {
        using var process = Launch(arguments);
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        try
        {
            await process.WaitForExitAsync(patience.Token);
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException("The desk went on running.");
        }

        return (process.ExitCode, await output + await errors);
    }

    public async ValueTask DisposeAsync()
    {
        Http.Dispose();
        if (!process.HasExited) process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        process.Dispose();
    }

    private static Process Launch(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        start.ArgumentList.Add(SourceTree.Built("Slabwright.Desk", "slabwright-desk.dll"));
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        return Process.Start(start) ?? throw new InvalidOperationException("The desk could not be started.");
    }

    [GeneratedRegex(@"^Slabwright desk: (http://127\.0\.0\.1:\d+)")]
    private static partial Regex Printed();

    [GeneratedRegex("href=\"(/jobs/[0-9a-f-]{36})\"")]
    private static partial Regex JobLink();
}
