using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Survey;

/// <summary>Places a row in the slab it names: at its start, middle or end, at a distance, or where its type suggests.</summary>
internal static class InSlabReader
{
    /// <summary>The stretch of the row.</summary>
    /// <param name="row">Row.</param>
    /// <param name="slab">The slab it names.</param>
    /// <param name="spread">How its type lies on the lane.</param>
    /// <param name="along">Length along the road, m, where given.</param>
    /// <param name="assumed">True when the place in the slab had to be assumed.</param>
    public static (double From, double To) Read(RowReader row, Slab slab, DistressSpread spread, double? along, out bool assumed)
    {
        assumed = false;
        var text = row.Text(SurveyField.InSlab);
        if (!Words.MeansNothing(text))
        {
            if (ByWord(Words.Key(text), slab, along) is { } told) return told;
            if (Distance(row) is { } distance && distance <= slab.Length + 0.3048) return (slab.Start.At + distance, slab.Start.At + distance + (along ?? 0));
            row.Report(SurveyFaults.WordUnknown, SurveyField.InSlab, $"\"{text}\" is no place in slab {slab.Number}, which is {row.Length(slab.Length)} long.",
                "Write start, middle or end, or the distance from the joint the slab starts at.", lane: slab.Lane);
        }

        assumed = true;
        var (what, stretch) = Assumed(slab, spread, along);
        row.Report(SurveyFaults.PlaceAssumed, SurveyField.Slab, $"Only the slab is given; {what} was taken.", lane: slab.Lane, at: slab.Start.At);
        return stretch;
    }

    private static (string What, (double From, double To) Stretch) Assumed(Slab slab, DistressSpread spread, double? along)
    {
        if (spread == DistressSpread.AtJoint) return ("the joint it starts at", (slab.Start.At, slab.Start.At + (along ?? 0)));
        if (spread == DistressSpread.Across || along is not null) return ("its middle", Centred(slab, along));
        return ("the whole slab", (slab.Start.At, slab.End.At));
    }

    private static (double From, double To)? ByWord(string key, Slab slab, double? along) => key switch
    {
        "start" or "s" or "approach" or "approachend" or "begin" or "beginning" or "startjoint" or "near" or "first" =>
            (slab.Start.At, slab.Start.At + (along ?? 0)),
        "middle" or "mid" or "m" or "midslab" or "midpanel" or "center" or "centre" or "c" => Centred(slab, along),
        "end" or "e" or "leave" or "leaveend" or "far" or "last" or "endjoint" => (slab.End.At - (along ?? 0), slab.End.At),
        "whole" or "all" or "full" or "wholeslab" or "entire" or "entireslab" or "fullslab" => (slab.Start.At, slab.End.At),
        _ => null,
    };

    private static (double From, double To) Centred(Slab slab, double? along)
    {
        var middle = (slab.Start.At + slab.End.At) / 2;
        return (middle - (along ?? 0) / 2, middle + (along ?? 0) / 2);
    }

    private static double? Distance(RowReader row)
    {
        var column = row.Column(SurveyField.InSlab)!;
        var cell = row.Cell(SurveyField.InSlab);
        var (value, unit) = (cell.Number ?? 0, (Unit?)null);
        if (cell.Number is null && MeasureText.Read(cell.Text, row.Mark, out value, out unit) != MeasureEnding.Read) return null;
        unit ??= column.Unit ?? SurveyColumns.DefaultUnit(ColumnKind.LongLength, row.UnitSystem)!;
        return unit.Dimension == Dimension.Length && value >= 0 ? unit.ToBase(value) : null;
    }
}
