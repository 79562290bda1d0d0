using System.Diagnostics;
using System.Text.Json;

namespace Slabwright.SystemTests.Cli;

/// <summary>The built command, run as its user runs it: a process of its own.</summary>
internal static class CommandLine
{
    /// <summary>How a run ended.</summary>
    public sealed record Ending(int ExitCode, string Output, string Errors)
    {
        /// <summary>Standard output as JSON.</summary>
        public JsonElement Json => JsonDocument.Parse(Output).RootElement;
    }

    /// <summary>Runs the command.</summary>
    public static async Task<Ending> Run(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "slabwright.dll"));
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return new Ending(process.ExitCode, await output, await errors);
    }
}
