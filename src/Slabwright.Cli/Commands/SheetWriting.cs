using System.Collections.Immutable;
using System.CommandLine;
using Slabwright.Core.Job;
using Slabwright.Sheets;

namespace Slabwright.Cli.Commands;

/// <summary>Writes the sheet set into a folder.</summary>
internal static class SheetWriting
{
    /// <summary>The required <c>--out</c>.</summary>
    public static Option<string> OutOption() => new("--out") { Description = "Folder the sheets are written to; made when missing.", Required = true };

    /// <summary>Writes every sheet and returns the file names.</summary>
    /// <exception cref="OutputException">The folder or a file can't be written.</exception>
    public static ImmutableArray<string> Write(Project project, RepairPlan plan, string folder, DateOnly printedOn)
    {
        try
        {
            Directory.CreateDirectory(folder);
            var names = ImmutableArray.CreateBuilder<string>();
            foreach (var sheet in SheetSet.Write(project, plan, new SheetOptions(printedOn)))
            {
                File.WriteAllBytes(Path.Combine(folder, sheet.Name), sheet.Content);
                names.Add(sheet.Name);
            }

            return names.ToImmutable();
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new OutputException($"The sheets can't be written to '{folder}': {exception.Message}", exception);
        }
    }
}
