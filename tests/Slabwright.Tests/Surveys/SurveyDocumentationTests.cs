using System.Text;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Survey;
using Slabwright.Tests.Rules;

namespace Slabwright.Tests.Surveys;

/// <summary>The tables of the documentation say what the code does.</summary>
public class SurveyDocumentationTests
{
    [Fact]
    public void The_columns_are_documented() => Matches("docs/steps/survey.md", "columns", Columns());

    [Fact]
    public void The_distress_names_are_documented() => Matches("docs/steps/survey.md", "distresses", Distresses());

    [Fact]
    public void The_findings_are_documented()
    {
        var rows = File.ReadAllLines(Repository.PathOf("docs/findings.md")).Where(l => l.StartsWith("| SRV-", StringComparison.Ordinal));
        var expected = SurveyFaults.All.Select(f => $"| {f.Code} | {Level(f.Level)} | {f.Meaning} | {f.Mend} |").ToList();
        var missing = expected.Except(rows).ToList();
        Assert.True(missing.Count == 0, "docs/findings.md lacks these rows:\n" + string.Join('\n', missing));
        Assert.Equal(expected.Count, rows.Count());
    }

    [Fact]
    public void Codes_are_used_once_and_come_in_order()
    {
        var codes = SurveyFaults.All.Select(f => f.Code).ToList();
        Assert.Equal(codes.Distinct().Order(StringComparer.Ordinal), codes);
    }

    private static string Level(FindingLevel level) => level.ToString().ToLowerInvariant();

    private static string Columns()
    {
        var text = new StringBuilder("| column | in | plain numbers are | other headings | meaning |\n| --- | --- | --- | --- | --- |\n");
        foreach (var c in SurveyColumns.All)
        {
            var files = (c.InSurvey, c.InCores) switch { (true, true) => "both", (true, false) => "survey", _ => "cores" };
            var units = SurveyColumns.DefaultUnit(c.Kind, UnitSystem.UsCustomary) is { } us
                ? $"{us} / {SurveyColumns.DefaultUnit(c.Kind, UnitSystem.Si)}" : c.Kind == ColumnKind.Place ? "a station" : "";
            text.Append($"| {c.Name} | {files} | {units} | {string.Join(", ", c.Aliases)} | {c.Meaning} |\n");
        }

        return text.ToString();
    }

    private static string Distresses()
    {
        var text = new StringBuilder("| code | mark | name | severities | also written |\n| --- | --- | --- | --- | --- |\n");
        foreach (var n in DistressCatalog.All)
        {
            text.Append($"| {n.Code} | {n.Mark} | {n.Name} | {(n.HasSeverities ? "yes" : "no")} | {string.Join(", ", n.Aliases)} |\n");
        }

        return text.ToString();
    }

    private static void Matches(string page, string block, string expected)
    {
        var text = File.ReadAllText(Repository.PathOf(page)).ReplaceLineEndings("\n");
        var (open, close) = ($"<!-- {block} -->\n", $"<!-- end {block} -->");
        var start = text.IndexOf(open, StringComparison.Ordinal) + open.Length;
        var end = text.IndexOf(close, StringComparison.Ordinal);
        Assert.True(start >= open.Length && end >= start, $"{page} has no block {block}.");
        if (text[start..end] == expected) return;
        var copy = Path.Combine(AppContext.BaseDirectory, $"{block}.md");
        File.WriteAllText(copy, expected);
        Assert.Fail($"The block {block} of {page} is out of date; its text should be that of {Path.GetFileName(copy)} beside the test program.");
    }
}
