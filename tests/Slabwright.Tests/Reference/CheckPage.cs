using System.Globalization;
using System.Text;
using Slabwright.Core.Handbook;

namespace Slabwright.Tests.Reference;

/// <summary>A page of docs that prints check rows: those whose section begins with its letter.</summary>
/// <param name="File">File in docs.</param>
/// <param name="Title">Title.</param>
/// <param name="Letter">First letter of its sections; null for sections that begin with a number.</param>
internal sealed record CheckPage(string File, string Title, char? Letter)
{
    /// <summary>The pages.</summary>
    public static CheckPage[] All { get; } =
    [
        new("joint-checks.md", "Joint mechanics against published values", null),
        new("concrete-checks.md", "Concrete against published values", 'C'),
    ];

    /// <summary>True when a row is printed here.</summary>
    public bool Holds(CheckRow row) => Letter is { } letter ? row.Section[0] == letter : char.IsDigit(row.Section[0]);

    /// <summary>The page.</summary>
    public string Markdown(IEnumerable<CheckRow> all)
    {
        var rows = all.Where(Holds).ToList();
        var page = new StringBuilder();
        var wrong = rows.Count(r => r.NotReproduced);
        page.Append($"# {Title}\n\n");
        page.Append("Written by the tests from the rows they assert; do not edit (see `tests/Slabwright.Tests/Reference`). Deviations are ");
        page.Append("shares of the published value. \"From memory\" marks publications whose page was not at hand, \"worked independently\" ");
        page.Append("values computed outside this program from the statement given.\n\n");
        page.Append(CultureInfo.InvariantCulture, $"{rows.Count} values; {rows.Count - wrong} come out within their tolerance, ");
        page.Append(CultureInfo.InvariantCulture, $"{wrong} cannot be reproduced by any reading and {(wrong == 1 ? "is" : "are")} shown as such.\n");
        foreach (var section in rows.GroupBy(r => r.Section).OrderBy(s => Order(s.Key)).ThenBy(s => s.Key, StringComparer.Ordinal))
        {
            page.Append($"\n## {section.Key}\n");
            foreach (var source in section.GroupBy(r => r.Source)) Write(page, source.Key, source);
        }

        return page.ToString();
    }

    private static void Write(StringBuilder page, string source, IEnumerable<CheckRow> rows)
    {
        page.Append($"\n### {source}\n\n| item | what | published | program | deviation | remark |\n| --- | --- | --- | --- | --- | --- |\n");
        foreach (var row in rows)
        {
            var remark = row.NotReproduced ? "**Not reproduced.** " + row.Remark : row.Remark;
            page.Append($"| {row.Item} | {row.What} | {AsPrinted(row)} | {Number(row.Ours, row.Unit)} | {Share(row)} | {remark} |\n");
        }
    }

    private static string Number(double value, string unit) => $"{MeasureText.Significant(value, 6)} {unit}".TrimEnd();

    private static string AsPrinted(CheckRow row)
    {
        if (double.IsInfinity(row.Published)) return "unlimited";
        var plain = Math.Abs(row.Published) is 0 or (>= 1e-5 and < 1e9) ? "#,0.##########" : "0.######e0";
        return $"{row.Published.ToString(plain, CultureInfo.InvariantCulture)} {row.Unit}".TrimEnd();
    }

    private static string Share(CheckRow row)
    {
        if (row.Ours == row.Published || Math.Abs(row.Deviation) < 5e-6) return "0";
        return row.Published == 0 || double.IsInfinity(row.Deviation)
            ? MeasureText.Significant(row.Ours, 6)
            : (100 * row.Deviation).ToString("+0.000;−0.000", CultureInfo.InvariantCulture) + " %";
    }

    private static double Order(string section)
    {
        var digits = section.Split(' ')[0].TrimStart('C');
        return double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : double.MaxValue;
    }
}
