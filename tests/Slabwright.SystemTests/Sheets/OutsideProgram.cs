using System.ComponentModel;
using System.Diagnostics;

namespace Slabwright.SystemTests.Sheets;

/// <summary>Runs a program other people wrote over a file of ours. A program that is not installed skips the test, with the reason.</summary>
internal static class OutsideProgram
{
    /// <summary>Skips the test where a program is not on the path.</summary>
    public static void Need(string program)
    {
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator);
        Assert.SkipUnless(folders.Any(f => File.Exists(Path.Combine(f, program))), $"{program} is not installed on this machine.");
    }

    public static string Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        Process? process = null;
        try
        {
            process = Process.Start(start);
        }
        catch (Win32Exception)
        {
            Assert.Skip($"{program} is not installed on this machine.");
        }

        using (process)
        {
            var errors = process!.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            Assert.True(process.ExitCode == 0, $"{program} ended with {process.ExitCode}: {errors.Result}{output}");
            return output;
        }
    }

    /// <summary>Runs Python where a module is at hand; Debian's own interpreter first, since its packages are not seen by others.</summary>
    public static string Python(string module, string script, params string[] arguments)
    {
        var python = File.Exists("/usr/bin/python3") ? "/usr/bin/python3" : "python3";
        var check = new ProcessStartInfo(python, ["-c", "import " + module]) { RedirectStandardError = true };
        try
        {
            using var process = Process.Start(check)!;
            process.StandardError.ReadToEnd();
            process.WaitForExit();
            Assert.SkipUnless(process.ExitCode == 0, $"The Python module {module} is not installed on this machine.");
        }
        catch (Win32Exception)
        {
            Assert.Skip("Python is not installed on this machine.");
        }

        return Run(python, ["-c", script, .. arguments]);
    }
}

/// <summary>A folder for the files of one test, gone afterwards.</summary>
internal sealed class ScratchFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("slabwright-sheets-").FullName;

    public string Save(Slabwright.Sheets.SheetFile file)
    {
        var path = System.IO.Path.Combine(Path, file.Name);
        File.WriteAllBytes(path, file.Content);
        return path;
    }

    public void Dispose() => Directory.Delete(Path, true);
}
