using System.Globalization;
using Slabwright.Core.Pavement;
using Slabwright.Data.Folder;

namespace Slabwright.Examples.Marrowby;

/// <summary>Writes the survey as the crew would hand it in.</summary>
internal static class SurveyTable
{
    private static readonly DateOnly FirstDay = new(2025, 4, 14);

    public static CsvText Text(IReadOnlyList<SurveyRow> rows, Stationing stationing)
    {
        var table = new CsvText();
        table.Add("id", "lane", "type", "severity", "from_station", "to_station", "offset_from_ft", "offset_to_ft", "length_ft", "width_in", "depth_in",
            "faulting_in", "area_ft2", "widening_below_in", "count", "cause", "beside_earlier_repair", "through_overlay", "date", "note");
        foreach (var row in rows)
        {
            table.Add(row.Id, row.Lane.ToString(CultureInfo.InvariantCulture), row.Type, row.Severity,
                stationing.Format(row.From * 0.3048), stationing.Format(row.To * 0.3048),
                Files.Short(row.OffsetFrom, 1), Files.Short(row.OffsetTo, 1), Files.Short(row.Length, 1), Files.Short(row.Width, 3), Files.Short(row.Depth, 1),
                Files.Short(row.Faulting, 2), Files.Short(row.Area, 0), Files.Short(row.Widening, 1), Files.Short(row.Count, 0), row.Cause,
                row.BesideRepair ? "yes" : "", row.ThroughOverlay ? "yes" : "", Day(row).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), row.Note);
        }

        return table;
    }

    /// <summary>Two crews, a mile a day and lane; the second lane a week after the first.</summary>
    private static DateOnly Day(SurveyRow row) => FirstDay.AddDays((row.Lane == 1 ? 7 : 0) + (int)(row.From / 5280));
}
