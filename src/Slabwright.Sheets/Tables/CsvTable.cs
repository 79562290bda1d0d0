using System.Buffers;
using System.Globalization;
using System.Text;

namespace Slabwright.Sheets.Tables;

/// <summary>Comma-separated values as RFC 4180 describes them, in UTF-8, with a decimal point whatever the machine's culture.</summary>
internal static class CsvTable
{
    private static readonly SearchValues<char> Special = SearchValues.Create(",\"\r\n");

    /// <summary>Writes a table with its header.</summary>
    public static byte[] Write<T>(IReadOnlyCollection<T> rows, IReadOnlyList<Field<T>> fields)
    {
        var text = new StringBuilder(rows.Count * 80 + 200);
        AppendRow(text, fields.Select(f => f.Name));
        foreach (var row in rows) AppendRow(text, fields.Select(f => Written(f, row)));
        return new UTF8Encoding(false).GetBytes(text.ToString());
    }

    private static void AppendRow(StringBuilder text, IEnumerable<string> cells)
    {
        var first = true;
        foreach (var cell in cells)
        {
            if (!first) text.Append(',');
            first = false;
            Append(text, cell);
        }

        text.Append("\r\n");
    }

    private static void Append(StringBuilder text, string cell)
    {
        if (cell.AsSpan().IndexOfAny(Special) < 0)
        {
            text.Append(cell);
            return;
        }

        text.Append('"').Append(cell.Replace("\"", "\"\"", StringComparison.Ordinal)).Append('"');
    }

    private static string Written<T>(Field<T> field, T row) => field.Read(row) switch
    {
        null => "",
        double number => number.ToString("0." + new string('#', Math.Max(field.Decimals, 1)), CultureInfo.InvariantCulture),
        IFormattable value => value.ToString(null, CultureInfo.InvariantCulture),
        var value => Harmless(value.ToString() ?? ""),
    };

    /// <summary>Text a spreadsheet would take for a formula, held back by an apostrophe: notes come from anybody's survey.</summary>
    private static string Harmless(string text) =>
        text.Length > 1 && text[0] is ('=' or '+' or '-' or '@' or '\t') && !double.TryParse(text, CultureInfo.InvariantCulture, out _)
            ? "'" + text
            : text;
}
