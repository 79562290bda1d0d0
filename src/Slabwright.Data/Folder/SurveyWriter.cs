using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Survey;

namespace Slabwright.Data.Folder;

/// <summary>Writes survey and cores with the headings the importer reads.</summary>
internal static class SurveyWriter
{
    public static string Survey(SurveyRecord survey, FolderUnits units)
    {
        var (l, s, a) = (units.Long, units.Small, units.System == UnitSystem.Si ? Units.SquareMetre : Units.SquareFoot);
        var table = new CsvText();
        table.Add("id", "lane", "type", "severity", $"from_{l}", $"to_{l}", $"offset_from_{l}", $"offset_to_{l}", $"length_{l}", $"width_{s}", $"depth_{s}", $"faulting_{s}",
            $"area_{a.Symbol}", $"widening_below_{s}", "count", "cause", "beside_earlier_repair", "through_overlay", "date", "note");
        foreach (var d in survey.Distresses)
        {
            table.Add(d.Id, Whole(d.Lane), TradeWords.Of(d.Type), d.Severity == Severity.None ? "" : TradeWords.Of(d.Severity),
                Cell(d.From, units.LongUnit), Cell(d.To, units.LongUnit), Cell(d.OffsetFrom, units.LongUnit), Cell(d.OffsetTo, units.LongUnit), Cell(d.Length, units.LongUnit),
                Cell(d.Width, units.SmallUnit), Cell(d.Depth, units.SmallUnit), Cell(d.Faulting, units.SmallUnit), Cell(d.Area, a), Cell(d.WideningBelow, units.SmallUnit),
                Whole(d.Count), d.Cause == DistressCause.Unknown ? "" : TradeWords.Of(d.Cause), YesNo(d.BesideEarlierRepair), YesNo(d.ThroughOverlay),
                d.SurveyedOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), d.Note);
        }

        return table.ToString();
    }

    public static string Cores(SurveyRecord survey, FolderUnits units)
    {
        var table = new CsvText();
        table.Add("id", "lane", $"at_{units.Long}", $"offset_{units.Long}", $"thickness_{units.Small}", $"depth_{units.Small}", $"widening_below_{units.Small}", "note");
        foreach (var c in survey.Cores)
        {
            table.Add(c.Id, Whole(c.Lane), Cell(c.At, units.LongUnit), Cell(c.Offset, units.LongUnit), Cell(c.Thickness, units.SmallUnit), Cell(c.DepthOfDamage, units.SmallUnit),
                Cell(c.WideningBelow, units.SmallUnit), c.Note);
        }

        return table.ToString();
    }

    /// <summary>
    /// A measure in the column's unit, with as few digits as bring the value back through plain multiplication by the unit's factor;
    /// where no number does, in the base unit with its symbol.
    /// </summary>
    private static string Cell(double? value, Unit unit)
    {
        if (value is not { } given) return "";
        for (var decimals = 0; decimals <= 15; decimals++)
        {
            var text = Math.Round(unit.FromBase(given), decimals).ToString("0.################", CultureInfo.InvariantCulture);
            if (unit.ToBase(double.Parse(text, CultureInfo.InvariantCulture)).Equals(given)) return text;
        }

        return given.ToString("R", CultureInfo.InvariantCulture) + (unit.Dimension == Dimension.Area ? " m2" : " m");
    }

    private static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string YesNo(bool value) => value ? "yes" : "";
}
