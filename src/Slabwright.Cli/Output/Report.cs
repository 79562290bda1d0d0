using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Slabwright.Core.Evidence;

namespace Slabwright.Cli.Output;

/// <summary>Writes what a command has to say: for people on the terminal, or as one JSON document for scripts.</summary>
/// <param name="json">True for one JSON document on standard output and nothing else.</param>
/// <param name="quiet">True to leave out progress.</param>
internal sealed class Report(bool json, bool quiet)
{
    private static readonly JsonSerializerOptions JsonStyle = new()
    {
        WriteIndented = true,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    /// <summary>True when the command speaks JSON.</summary>
    public bool Json => json;

    /// <summary>A line of progress on standard error; left out under --quiet and --json.</summary>
    public void Progress(string line)
    {
        if (!json && !quiet) Console.Error.WriteLine(line);
    }

    /// <summary>A line for people; left out under --json.</summary>
    public void Line(string line = "")
    {
        if (!json) Console.Out.WriteLine(line);
    }

    /// <summary>A table for people; left out under --json.</summary>
    public void Table(TextTable table)
    {
        if (!json) table.WriteTo(Console.Out);
    }

    /// <summary>Ends the command: findings for people, or the JSON document with results and findings.</summary>
    /// <param name="command">Verb, repeated in the document.</param>
    /// <param name="code">How it ended.</param>
    /// <param name="result">Results for the document; any plain object.</param>
    /// <param name="findings">Findings of all steps.</param>
    public int End(string command, ExitCode code, object? result, ImmutableArray<Finding> findings)
    {
        if (json)
        {
            var document = new { command, exitCode = (int)code, ended = code, result, findings };
            Console.Out.WriteLine(JsonSerializer.Serialize(document, JsonStyle));
        }
        else
        {
            WriteFindings(findings);
        }

        return (int)code;
    }

    private static void WriteFindings(ImmutableArray<Finding> findings)
    {
        const int Most = 20;
        foreach (var finding in findings.Where(f => f.Level != FindingLevel.Note).OrderByDescending(f => f.Level).Take(Most))
            Console.Error.WriteLine(FindingText.Of(finding));
        var left = findings.Count(f => f.Level != FindingLevel.Note) - Most;
        if (left > 0) Console.Error.WriteLine($"... and {left} more; all of them are in the findings sheet and under --json.");
    }
}
