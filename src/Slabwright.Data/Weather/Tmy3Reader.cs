using System.Globalization;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;
using Slabwright.Core.Survey;

namespace Slabwright.Data.Weather;

/// <summary>Typical meteorological years, third edition: hours marked at their end, months of different years dated in one.</summary>
internal static class Tmy3Reader
{
    private static readonly (string Header, WeatherVariable Variable, double Factor)[] Original =
    [
        ("Dry-bulb (C)", WeatherVariable.Air, 1), ("Dew-point (C)", WeatherVariable.DewPoint, 1), ("RHum (%)", WeatherVariable.Humidity, 0.01), ("Wspd (m/s)", WeatherVariable.Wind, 1),
        ("GHI (W/m^2)", WeatherVariable.Sun, 1), ("TotCld (tenths)", WeatherVariable.Cloud, 0.1),
    ];

    private static readonly (string Header, WeatherVariable Variable, double Factor)[] Table =
    [
        ("air_temp_C", WeatherVariable.Air, 1), ("dew_point_C", WeatherVariable.DewPoint, 1), ("rel_humidity_pct", WeatherVariable.Humidity, 0.01),
        ("wind_speed_m_s", WeatherVariable.Wind, 1), ("ghi_W_m2", WeatherVariable.Sun, 1), ("total_cloud_tenths", WeatherVariable.Cloud, 0.1),
    ];

    /// <summary>The original layout: a line about the station, a header, then 8,760 rows.</summary>
    public static WeatherSeries? ReadOriginal(string text, string name, WeatherFileOptions options, List<Finding> findings)
    {
        var table = new WeatherTable(name, findings);
        var rows = WeatherTable.Lines(text).GetEnumerator();
        WeatherSite? site = null;
        var title = "";
        if (rows.MoveNext())
        {
            title = WeatherTable.Cell(rows.Current, 1);
            site = Site(rows.Current, [4, 5, 3, 6], table);
        }

        return Read(rows, Original, "Date (MM/DD/YYYY)", table, name, title, options.Site ?? site, findings, (row, columns) =>
        {
            var date = WeatherTable.Cell(row, columns["Date (MM/DD/YYYY)"]).Split('/');
            var hour = WeatherTable.Cell(row, columns["Time (HH:MM)"]).Split(':');
            return date.Length == 3 ? Stamp(options.TypicalYear, date[0], date[1], hour[0]) : null;
        });
    }

    /// <summary>A table with columns month, day and hour_ending_lst.</summary>
    public static WeatherSeries? ReadTable(string text, string name, WeatherFileOptions options, List<Finding> findings)
    {
        var table = new WeatherTable(name, findings);
        var rows = WeatherTable.Lines(text).GetEnumerator();
        return Read(rows, Table, "hour_ending_lst", table, name, "", options.Site, findings, (row, columns) =>
            columns.ContainsKey("month") && columns.ContainsKey("day")
                ? Stamp(options.TypicalYear, WeatherTable.Cell(row, columns["month"]), WeatherTable.Cell(row, columns["day"]), WeatherTable.Cell(row, columns["hour_ending_lst"]))
                : null);
    }

    /// <summary>A station line's latitude, longitude, offset from universal time and elevation, at the cells given.</summary>
    internal static WeatherSite? Site(RawRow row, int[] cells, WeatherTable table)
    {
        var numbers = new double[cells.Length];
        for (var i = 0; i < cells.Length; i++)
        {
            if (double.TryParse(WeatherTable.Cell(row, cells[i]), NumberStyles.Float, CultureInfo.InvariantCulture, out numbers[i])) continue;
            table.Add("CON-109", FindingLevel.Warning, "The station's place cannot be read; the sun's position is not known.", row.Number, null, WeatherTable.Cell(row, cells[i]),
                "Give latitude, longitude, hours from universal time and elevation as numbers.");
            return null;
        }

        return new(numbers[0], numbers[1], numbers[2], numbers[3]);
    }

    /// <summary>End of an hour numbered 1 to 24.</summary>
    internal static DateTime? Stamp(int year, string month, string day, string hour)
    {
        if (!int.TryParse(month, NumberStyles.None, CultureInfo.InvariantCulture, out var m) || !int.TryParse(day, NumberStyles.None, CultureInfo.InvariantCulture, out var d)
            || !int.TryParse(hour, NumberStyles.None, CultureInfo.InvariantCulture, out var h)) return null;
        if (m is < 1 or > 12 || d < 1 || d > DateTime.DaysInMonth(year, m) || h is < 1 or > 24) return null;
        return new DateTime(year, m, d, 0, 0, 0, DateTimeKind.Unspecified).AddHours(h);
    }

    private static WeatherSeries? Read(
        IEnumerator<RawRow> rows, (string Header, WeatherVariable Variable, double Factor)[] wanted, string hourHeader, WeatherTable table, string name, string title,
        WeatherSite? site, List<Finding> findings, Func<RawRow, Dictionary<string, int>, DateTime?> stamp)
    {
        if (!rows.MoveNext()) return null;
        var columns = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < rows.Current.Cells.Length; i++) columns.TryAdd(rows.Current.Cells[i].Text.Trim(), i);
        var used = wanted.Where(w => columns.ContainsKey(w.Header)).Select(w => (Index: columns[w.Header], Column: new WeatherColumn(w.Variable, w.Header, w.Factor))).ToArray();
        while (rows.MoveNext())
        {
            var row = rows.Current;
            if (stamp(row, columns) is not { } time)
            {
                table.Add("CON-106", FindingLevel.Error, "The hour cannot be read; the row is not used.", row.Number, hourHeader, WeatherTable.Cell(row, columns.GetValueOrDefault(hourHeader, -1)),
                    "Give month, day and an hour from 1 to 24.");
                continue;
            }

            var reading = WeatherReading.Empty(row.Number, time);
            foreach (var (index, column) in used) table.Read(reading, row, index, column);
            table.Rows.Add(reading);
        }

        return WeatherIntake.Build(table.Rows, new()
        {
            File = name, Name = title, Site = site, MarkedAtEnd = true, Typical = IsYear(table.Rows), Headers = used.ToDictionary(u => u.Column.Variable, u => u.Column.Header), HourHeader = hourHeader,
        }, findings);
    }

    /// <summary>True when the rows span a whole year, so that the last hour leads to the first.</summary>
    internal static bool IsYear(List<WeatherReading> rows) => rows.Count > 0 && (rows[^1].Time - rows[0].Time).TotalHours is 8759 or 8783;
}
