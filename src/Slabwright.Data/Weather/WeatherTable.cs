using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Survey;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Data.Import;

namespace Slabwright.Data.Weather;

/// <summary>Rows of a weather text with cells by number, and what is wrong with them.</summary>
/// <param name="file">File name for findings.</param> <param name="findings">Added to.</param>
internal sealed class WeatherTable(string file, List<Finding> findings)
{
    private const int ListedAtMost = 20;

    /// <summary>Markers of a value that was not measured, as the formats write them.</summary>
    private static readonly string[] NotMeasured = ["", "-9900", "-9999", "9999", "99999", "na", "nan", "null", "-"];

    private int listed;

    /// <summary>Rows gathered.</summary>
    public List<WeatherReading> Rows { get; } = [];

    /// <summary>Rows of a text.</summary>
    public static IEnumerable<RawRow> Lines(string text)
    {
        var line = text.AsSpan()[..Math.Max(0, text.AsSpan().IndexOfAny('\r', '\n'))];
        var delimiter = line.Contains(';') ? ';' : line.Contains('\t') ? '\t' : ',';
        return new DelimitedReader(new StringReader(text), delimiter).Rows();
    }

    /// <summary>Text of a cell; empty beyond the row's end.</summary>
    public static string Cell(RawRow row, int index) => index >= 0 && index < row.Cells.Length ? row.Cells[index].Text.Trim() : "";

    /// <summary>Reads a value into a reading; a marker of a missing value leaves it missing, anything else that is no number is a finding.</summary>
    public void Read(WeatherReading reading, RawRow row, int index, WeatherColumn column, double? missingFrom = null)
    {
        var text = Cell(row, index);
        if (NotMeasured.Contains(text.ToLowerInvariant(), StringComparer.Ordinal))
        {
            if (text.StartsWith('-') && text.Length > 1) Add("CON-102", FindingLevel.Warning, "The value is marked as not measured.", row.Number, column.Header, text, "Nothing, where it was not measured; it is bridged and listed.");
            return;
        }

        if (!double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
            Add("CON-102", FindingLevel.Error, "The value is not a number; it is not used.", row.Number, column.Header, text, "Write a number, without the unit.");
        else if (value >= missingFrom) return;
        else reading.Values[(int)column.Variable] = value * column.Factor + column.Offset;
    }

    /// <summary>Adds a finding, up to the number that is listed.</summary>
    public void Add(string code, FindingLevel level, string sentence, long? row, string? field, string? value, string mend)
    {
        if (++listed <= ListedAtMost) findings.Add(new(code, level, sentence, new(file, row, field), value, mend));
        else if (listed == ListedAtMost + 1) findings.Add(new("CON-110", FindingLevel.Note, "The weather file has more findings than are listed.", new(file), null, "Mend those listed and read again."));
    }
}
