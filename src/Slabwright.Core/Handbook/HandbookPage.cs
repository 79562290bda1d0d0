using System.Globalization;
using System.Text;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Handbook;

/// <summary>The handbook as a Markdown page, written from the entries so that page and program cannot disagree.</summary>
public static class HandbookPage
{
    /// <summary>The page, with line ends as <c>\n</c>.</summary>
    public static string Markdown()
    {
        var page = new StringBuilder();
        page.Append("# Handbook\n\n");
        page.Append("Written from the program; a test keeps it so. Every formula with its source, its range, and worked examples with the\n");
        page.Append("deviation of the program from the answer. *From memory* marks figures known from the publication but not yet read there;\n");
        page.Append("*worked by hand* marks answers that follow from the statement. Tags are listed in [sources.md](sources.md).\n\n");
        page.Append("Work one out with `slabwright calc ID input=value …`, e.g. `slabwright calc repair-area length=\"6 ft\" width=\"12 ft\"`.\n\n");
        page.Append("Nothing here replaces local codes or the judgement of a licensed engineer.\n");
        foreach (var chapter in FormulaBook.All.GroupBy(e => e.Topic))
        {
            page.Append($"\n## {chapter.Key}\n");
            foreach (var entry in chapter) Write(page, entry);
        }

        return page.ToString();
    }

    /// <summary>A source as printed in the handbook, its status included.</summary>
    public static string SourceText(SourceRef source) => source.ToString();

    private static void Write(StringBuilder page, HandbookEntry entry)
    {
        page.Append($"\n### {entry.Title}\n\n`{entry.Id}`\n\n    {entry.Expression}\n\n");
        page.Append($"Source: {SourceText(entry.Source)}. {entry.Notes}\n\n");
        if (entry.Caution.Length > 0) page.Append($"> **Caution.** {entry.Caution}\n\n");
        page.Append("| input | symbol | meaning | range | if not given |\n| --- | --- | --- | --- | --- |\n");
        foreach (var input in entry.Inputs)
        {
            var unit = input.Units.Customary;
            var range = $"{MeasureText.Write(input.Least, unit, input.Whole)} to {MeasureText.Write(input.Most, unit, input.Whole)}";
            var taken = input.Default is { } value ? MeasureText.Write(value, unit, input.Whole) : "";
            page.Append($"| `{input.Key}` | {input.Symbol} | {input.Name} | {range} | {taken} |\n");
        }

        page.Append($"\nGives {string.Join(", ", entry.Outputs.Select(Describe))}.\n");
        if (entry.Examples.IsEmpty) return;
        page.Append("\n| example | answer | program | deviation | source of the answer |\n| --- | --- | --- | --- | --- |\n");
        foreach (var example in entry.Examples) Write(page, entry, example);
    }

    private static void Write(StringBuilder page, HandbookEntry entry, WorkedExample example)
    {
        foreach (var comparison in ExampleCheck.Compare(entry, example))
        {
            var given = MeasureText.Write(comparison.Unit.ToBase(comparison.Given), comparison.Unit);
            var deviation = Math.Abs(comparison.Deviation) < 5e-6
                ? "0"
                : (100 * comparison.Deviation).ToString("+0.00;−0.00", CultureInfo.InvariantCulture) + " %";
            var remark = example.Remark.Length > 0 ? " " + example.Remark : "";
            page.Append($"| {example.Title} | {comparison.Expected.Symbol} = {comparison.Expected.Text} | {given} | {deviation} ");
            page.Append($"| {SourceText(example.Source)}.{remark} |\n");
        }
    }

    private static string Describe(HandbookOutput output)
    {
        var (customary, si) = (output.Units.Customary.Symbol, output.Units.Si.Symbol);
        var unit = customary.Length == 0 ? "" : customary == si ? $" ({customary})" : $" ({customary} or {si})";
        return $"{char.ToLowerInvariant(output.Name[0])}{output.Name[1..]} {output.Symbol}{unit}";
    }
}
