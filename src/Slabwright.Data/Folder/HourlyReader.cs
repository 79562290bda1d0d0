using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Sylvan.Data.Csv;

namespace Slabwright.Data.Folder;

/// <summary>Checks the hourly files. They are kept in the folder as they are; later steps read them.</summary>
internal static class HourlyReader
{
    private const int ListedAtMost = 20;
    private const string Form = "yyyy-MM-dd'T'HH:mm";

    private static readonly FolderScene Nowhere = new(0, new Stationing { Style = StationStyle.Metres }, UnitSystem.Si);

    /// <summary>Limits of what an hour can bring.</summary>
    private static readonly Limit[] Limits =
    [
        new("volume_veh_per_h", 0, 30_000), new("truck_share", 0, 1), new("air_temp_f", -80, 140), new("air_temp_c", -60, 60),
        new("humidity_share", 0, 1), new("wind_mph", 0, 250), new("wind_m_per_s", 0, 110), new("sun_w_per_m2", 0, 1_500), new("cloud_share", 0, 1),
        new("rain_in", 0, 15), new("rain_mm", 0, 400), new("air_temp_sd_f", 0, 40), new("air_temp_sd_c", 0, 22), new("humidity_sd_share", 0, 1),
        new("wind_sd_mph", 0, 60), new("wind_sd_m_per_s", 0, 27), new("sun_sd_share", 0, 1), new("cloud_sd_share", 0, 1),
    ];

    private readonly record struct Limit(string Column, double Least, double Most, bool Required = false);

    /// <summary>Names hours that cannot be read, are out of order, doubled, missing or out of range.</summary>
    public static void Check(string folder, List<Finding> findings)
    {
        foreach (var file in FolderFormat.Kept) Check(folder, file, findings);
    }

    private static void Check(string folder, FolderFile file, List<Finding> findings)
    {
        var own = new List<Finding>();
        var limits = Limits.Join(file.Columns, l => l.Column, c => c.Name, (l, c) => l with { Required = c.Required }).ToArray();
        DateTime? before = null;
        FolderTable.Scan(folder, file, own, (table, reader, line) =>
        {
            if (IsPlain(table, reader, limits, before, out var hour)) before = hour;
            else if (table.RowOf(reader, line, Nowhere) is { } row) before = Check(row, limits, before, own);
        });
        findings.AddRange(own.Take(ListedAtMost));
        if (own.Count <= ListedAtMost) return;
        findings.Add(new("ROAD-094", FindingLevel.Note, "The file has more findings than are listed.", new(file.Name), Text(own.Count - ListedAtMost) + " more",
            "Mend those listed and read again."));
    }

    /// <summary>True for the next hour with every number in range: nearly every row, settled without making text of it.</summary>
    private static bool IsPlain(FolderTable table, CsvDataReader reader, Limit[] limits, DateTime? before, out DateTime hour)
    {
        hour = default;
        var first = table.IndexOf("hour_lst");
        if (first < 0 || first >= reader.RowFieldCount || !DateTime.TryParseExact(reader.GetFieldSpan(first), Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out hour)) return false;
        if (hour.Minute != 0 || (before is { } last && hour != last.AddHours(1))) return false;
        foreach (var (column, least, most, required) in limits)
        {
            var index = table.IndexOf(column);
            if (index < 0) continue;
            if (index >= reader.RowFieldCount || reader.GetFieldSpan(index).IsEmpty)
            {
                if (required) return false;
                continue;
            }

            if (!double.TryParse(reader.GetFieldSpan(index), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !(value >= least && value <= most)) return false;
        }

        return true;
    }

    private static DateTime? Check(FolderRow row, Limit[] limits, DateTime? before, List<Finding> own)
    {
        foreach (var (column, least, most, _) in limits)
        {
            if (row.Number(column) is { } value && !(value >= least && value <= most))
                row.Bad("ROAD-093", "The value is not one an hour can bring.", column, Text(value), "Check the value and the unit in the column's name.", $"{Text(least)} to {Text(most)}");
        }

        if (row.Hour("hour_lst") is not { } hour) return before;
        if (hour <= before)
        {
            row.Bad("ROAD-091", "The hour is not after the one before.", "hour_lst", hour.ToString("s", CultureInfo.InvariantCulture),
                "Sort the rows and remove doubled hours; use standard time all year.");
            return before;
        }

        if (before is { } last && hour != last.AddHours(1)) own.Add(Gap(row, last, hour));
        return hour;
    }

    private static Finding Gap(FolderRow row, DateTime before, DateTime hour) => new(
        "ROAD-092", FindingLevel.Warning, "Hours are missing before this row.", row.Place with { Field = "hour_lst" },
        Text((hour - before).TotalHours - 1) + " h", "Add the hours, or say in your notes why there are none.");

    private static string Text(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
