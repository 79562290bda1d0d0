using System.Collections.Immutable;
using System.Text.Json;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.RuleSets;

/// <summary>Reads and writes rule sets as JSON files a person can read; the format is described in docs/steps/treatments.md.</summary>
public static class RuleSetFile
{
    /// <summary>
    /// Reads a rule set. Rows that cannot be read become findings and are left out; the set is null only when the text is no JSON or a
    /// limit that every set needs is missing.
    /// </summary>
    /// <param name="json">Text of the file.</param>
    /// <param name="fileName">Name for findings.</param>
    /// <param name="others">Further sets that <c>fills_from</c> may name, besides the published ones.</param>
    public static (RuleSet? RuleSet, ImmutableArray<Finding> Findings) Parse(
        string json, string fileName, IReadOnlyList<RuleSet>? others = null) =>
        Parse(json, fileName, id => others?.FirstOrDefault(s => s.Id == id) ?? PublishedRuleSets.Find(id));

    /// <summary>Writes a rule set with everything that fills in spelled out, so that the file stands alone.</summary>
    public static string Write(RuleSet set) => RuleSetWriter.Write(set);

    internal static (RuleSet? RuleSet, ImmutableArray<Finding> Findings) Parse(
        string json, string fileName, Func<string, RuleSet?> find)
    {
        try
        {
            using var document = JsonDocument.Parse(json, new JsonDocumentOptions
            {
                CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true,
            });
            var door = new JsonDoor(fileName, JsonLines.Of(json));
            if (document.RootElement.ValueKind == JsonValueKind.Object)
                return (new RuleSetReader(door, find).Read(document.RootElement), door.Findings);
            door.Wrong("", document.RootElement, "an object in braces");
            return (null, door.Findings);
        }
        catch (JsonException exception)
        {
            var place = new FindingPlace(fileName, exception.LineNumber + 1);
            return (null, [new Finding("TRT-001", FindingLevel.Error, "The rule set file is not valid JSON.", place, exception.Message,
                "Mend the text at this line: a comma, quote or bracket is missing or too many.")]);
        }
    }
}
