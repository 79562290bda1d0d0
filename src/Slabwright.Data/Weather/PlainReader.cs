using System.Globalization;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;

namespace Slabwright.Data.Weather;

/// <summary>Plain tables with a header, an hour to a row.</summary>
internal static class PlainReader
{
    private static readonly string[] Forms =
    [
        "yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd HH:mm", "yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd HH:mm:ss", "M/d/yyyy H:mm", "M/d/yyyy h:mm tt", "M/d/yyyy H:mm:ss",
    ];

    public static WeatherSeries? Read(string text, string name, WeatherFileOptions options, List<Finding> findings, out WeatherMapping? mapping)
    {
        var table = new WeatherTable(name, findings);
        mapping = options.Mapping;
        string[]? headers = null;
        var (hour, columns) = (-1, Array.Empty<(int Index, WeatherColumn Column)>());
        foreach (var row in WeatherTable.Lines(text))
        {
            if (headers is null)
            {
                headers = [.. row.Cells.Select(c => c.Text.Trim())];
                mapping ??= WeatherMapping.Guess(headers);
                if (mapping is null) break;
                if (!Find(headers, mapping, table, out hour, out columns)) return null;
                continue;
            }

            var stamp = WeatherTable.Cell(row, hour);
            if (!DateTime.TryParseExact(stamp, Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time) || time is not { Minute: 0, Second: 0 })
            {
                table.Add("CON-106", FindingLevel.Error, "The hour cannot be read; the row is not used.", row.Number, mapping!.HourHeader, stamp, "Write the start of the hour as 2026-04-01T22:00.");
                continue;
            }

            var reading = WeatherReading.Empty(row.Number, time);
            foreach (var (index, column) in columns) table.Read(reading, row, index, column);
            table.Rows.Add(reading);
        }

        if (mapping is null)
        {
            table.Add("CON-108", FindingLevel.Error, "No column gives the hour.", 1, null, headers is null ? null : string.Join(", ", headers), "Name a column hour_lst, or state which column holds the hour.");
            return null;
        }

        return WeatherIntake.Build(table.Rows, new()
        {
            File = name,
            Site = options.Site,
            MarkedAtEnd = options.MarkedAtEnd,
            Headers = columns.ToDictionary(c => c.Column.Variable, c => c.Column.Header),
            HourHeader = mapping.HourHeader,
            Checked = options.Checked,
        }, findings);
    }

    private static bool Find(string[] headers, WeatherMapping mapping, WeatherTable table, out int hour, out (int Index, WeatherColumn Column)[] columns)
    {
        hour = Array.FindIndex(headers, h => h.Equals(mapping.HourHeader, StringComparison.OrdinalIgnoreCase));
        var found = new List<(int, WeatherColumn)>();
        foreach (var column in mapping.Columns)
        {
            var index = Array.FindIndex(headers, h => h.Equals(column.Header, StringComparison.OrdinalIgnoreCase));
            if (index >= 0) found.Add((index, column));
            else table.Add("CON-108", FindingLevel.Error, "The table has no such column.", 1, column.Header, column.Header, $"Use one of: {string.Join(", ", headers)}.");
        }

        columns = [.. found];
        if (hour < 0) table.Add("CON-108", FindingLevel.Error, "The table has no such column for the hour.", 1, mapping.HourHeader, mapping.HourHeader, $"Use one of: {string.Join(", ", headers)}.");
        return hour >= 0;
    }
}
