using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Survey;

/// <summary>Where a row lies.</summary>
/// <param name="Lane">Lane.</param>
/// <param name="From">Metres along the road.</param>
/// <param name="To">Metres along the road, not before <paramref name="From"/>.</param>
/// <param name="Slab">Slab number.</param>
/// <param name="Left">Left side from the lane's left edge, m.</param>
/// <param name="Right">Right side from the lane's left edge, m.</param>
/// <param name="Assumed">True when only the slab was given.</param>
internal readonly record struct RowPlace(Lane Lane, double From, double To, int Slab, double? Left, double? Right, bool Assumed);

/// <summary>Finds where a row lies: by station, coordinates, joint or slab, in this order; what does not agree becomes a finding.</summary>
internal sealed class PlaceReader(Road road, RowReader row, PlanReader plan)
{
    /// <summary>Station and slab may differ by this before it is a finding, m: a foot, as stations are paced. Common practice.</summary>
    private const double SlabTolerance = 0.3048;

    /// <summary>Points may lie this far outside the lanes, m: what hand-held positioning is good for. Common practice.</summary>
    private const double PointTolerance = 1.5;

    private readonly Dictionary<string, Lane?> lanes = new(StringComparer.Ordinal);
    private bool laneAssumptionTold;

    /// <summary>The place of the current row; null when it has none that can be used, with the findings told.</summary>
    /// <param name="spread">How the type lies on the lane.</param>
    public RowPlace? Read(DistressSpread spread)
    {
        var points = plan.Locate(row);
        if (FindLane(points) is not { } lane) return null;
        var slab = Numbered(SurveyField.Slab, lane.SlabCount, SurveyFaults.SlabUnknown, "slab", lane);
        var joint = Numbered(SurveyField.Joint, lane.Joints.Length, SurveyFaults.JointUnknown, "joint", lane);
        var along = row.Size(SurveyField.Extent) ?? (spread is DistressSpread.Across or DistressSpread.AtJoint ? null : row.Size(SurveyField.Length));
        if (Stretch(spread, lane, slab, joint, along, points, out var assumed) is not { } stretch) return null;
        if (!OnConcrete(lane, ref stretch)) return null;
        var (left, right) = AcrossReader.Read(row, lane);
        if (left is null && points is { } p) (left, right) = Across(p, lane);
        return new RowPlace(lane, stretch.From, stretch.To, SlabOf(lane, slab, stretch), left, right, assumed);
    }

    private Lane? FindLane(LocatedPoints? points)
    {
        var near = points is { } p ? LaneOffsets.LaneAt(road, (p.Left + p.Right) / 2, PointTolerance) : null;
        if (row.Has(SurveyField.Lane))
        {
            var lane = Named(row.Text(SurveyField.Lane));
            if (lane is null)
            {
                row.Report(SurveyFaults.LaneUnknown, SurveyField.Lane, $"The road has no lane \"{row.Text(SurveyField.Lane)}\".",
                    $"Use a lane number from {road.Lanes[0].Number} to {road.Lanes[^1].Number}, counted from the left in the direction of travel.");
            }
            else if (points is not null && near != lane)
            {
                row.Report(SurveyFaults.LaneDisagrees, SurveyField.Lane,
                    near is null ? "The coordinates lie outside every lane." : $"The coordinates lie in lane {near.Number}.", lane: lane.Number);
            }

            return lane;
        }

        if (points is { } outside)
        {
            if (near is null) row.Report(SurveyFaults.OutsideLanes, SurveyField.East,
                $"The point lies {row.Length(outside.Left)} beside the centre line, outside every lane.", at: outside.From);
            return near;
        }

        if (road.Lanes.Length == 1)
        {
            if (!laneAssumptionTold) row.Report(SurveyFaults.LaneAssumed, SurveyField.Lane);
            laneAssumptionTold = true;
            return road.Lanes[0];
        }

        row.Report(SurveyFaults.ValueMissing, SurveyField.Lane, "The row names no lane.");
        return null;
    }

    private Lane? Named(string text)
    {
        if (lanes.TryGetValue(text, out var lane)) return lane;
        lane = LaneReader.Find(road, text);
        if (lanes.Count < 1000) lanes[text] = lane;
        return lane;
    }

    private int? Numbered(SurveyField field, int most, SurveyFault fault, string what, Lane lane)
    {
        if (!row.TryWhole(field, out var number))
        {
            row.Report(SurveyFaults.NumberUnreadable, field, $"\"{row.Text(field)}\" is no {what} number.");
            return null;
        }

        if (number is not { } n || (n >= 1 && n <= most)) return number;
        row.Report(fault, field, $"Lane {lane.Number} has no {what} {n}.", $"Use a number from 1 to {most}.", lane: lane.Number);
        return null;
    }

    private (double From, double To)? Stretch(
        DistressSpread spread, Lane lane, int? slab, int? joint, double? along, LocatedPoints? points, out bool assumed)
    {
        assumed = false;
        var startField = row.Has(SurveyField.From) ? SurveyField.From : SurveyField.At;
        var hasStation = row.Has(startField) || row.Has(SurveyField.To);
        var dropped = false;
        if (hasStation && ByStation(startField, lane, slab, along, out dropped) is { } stations) return Agreed(lane, slab, stations);
        if (dropped) return null;
        if (points is { } p) return Agreed(lane, slab, p.To - p.From < 0.01 && along is { } a ? (p.From, p.From + a) : (p.From, p.To));
        if (joint is { } j) return AboutJoint(lane, lane.Joints[j - 1].At, along ?? 0);

        if (slab is { } s) return InSlabReader.Read(row, lane.SlabByNumber(s), spread, along, out assumed);
        if (!hasStation) row.Report(SurveyFaults.ValueMissing, SurveyField.At, "The row names no place.",
            "Give a station, a slab number, a joint number or coordinates.", lane: lane.Number);
        return null;
    }

    /// <summary>A length even about a joint; at the ends of the concrete all of it lies on the slab's side.</summary>
    private static (double From, double To) AboutJoint(Lane lane, double at, double length)
    {
        var from = Math.Max(lane.From, Math.Min(at - length / 2, lane.To - length));
        return (from, from + length);
    }

    /// <summary>By stations; null when they cannot be used, and then <paramref name="dropped"/> tells whether the row is lost with them.</summary>
    private (double From, double To)? ByStation(SurveyField startField, Lane lane, int? slab, double? along, out bool dropped)
    {
        var starts = StationReader.Places(row, startField, road.Stationing);
        var ends = StationReader.Places(row, SurveyField.To, road.Stationing);
        dropped = false;
        var start = Single(startField, starts, lane, slab, ref dropped);
        var end = Single(SurveyField.To, ends, lane, slab, ref dropped);
        if (row.Has(SurveyField.To) && row.Has(startField) && (start is null || end is null)) dropped |= slab is null;
        if (start is { } a && end is { } b) return Ordered(startField, a, b, along);
        if (dropped || (row.Has(SurveyField.To) && row.Has(startField))) return null;
        if (start is { } from) return (from, from + (along ?? 0));
        return end is { } to ? (to - (along ?? 0), to) : null;
    }

    private (double From, double To) Ordered(SurveyField startField, double from, double to, double? along)
    {
        if (from > to)
        {
            row.Report(SurveyFaults.Reversed, startField, $"The row ends {row.Length(from - to)} before it starts; the two were swapped.", at: to);
            (from, to) = (to, from);
        }

        if (row.Has(SurveyField.Extent) && along is { } length && Math.Abs(length - (to - from)) > SlabTolerance)
        {
            row.Report(SurveyFaults.ExtentDisagrees, SurveyField.Extent,
                $"The length of {row.Length(length)} does not agree with from and to, which are {row.Length(to - from)} apart.", at: from);
        }

        return (from, to);
    }

    /// <summary>The one place a station can mean here; more than one becomes a finding.</summary>
    private double? Single(SurveyField field, ImmutableArray<double> places, Lane lane, int? slab, ref bool dropped)
    {
        if (places.Length < 2) return places.IsEmpty ? null : places[0];
        var fits = places.Where(at => slab is { } s ? IsOn(lane.SlabByNumber(s), at) : at >= lane.From && at <= lane.To).ToList();
        if (fits.Count == 1) return fits[0];
        var list = string.Join(" and ", (fits.Count > 1 ? fits : [.. places]).Select(at => $"{row.Length(at)}"));
        row.Report(SurveyFaults.StationAmbiguous, field, $"The station stands for {list} from the road's start.", lane: lane.Number);
        dropped = true;
        return null;
    }

    private (double From, double To) Agreed(Lane lane, int? slab, (double From, double To) stretch)
    {
        if (slab is not { } number) return stretch;
        var named = lane.SlabByNumber(number);
        if (stretch.To >= named.Start.First - SlabTolerance && stretch.From <= named.End.Last + SlabTolerance) return stretch;
        row.Report(SurveyFaults.PlacesDisagree, SurveyField.Slab,
            $"The place {road.Stationing.Format(stretch.From)} is on slab {lane.SlabAt(stretch.From).Number}, not on slab {number}.",
            lane: lane.Number, at: stretch.From);
        return stretch;
    }

    /// <summary>Checks that the stretch is on the road and on the lane's concrete; a station's own rounding is not held against it.</summary>
    private bool OnConcrete(Lane lane, ref (double From, double To) stretch)
    {
        var slack = road.Stationing.HalfLastDigit;
        var place = $"{road.Stationing.Format(stretch.From)} to {road.Stationing.Format(stretch.To)}";
        if (stretch.From < -slack || stretch.To > road.Length + slack)
        {
            row.Report(SurveyFaults.BeyondRoad, sentence: $"The row, {place}, lies {(stretch.From < -slack ? "before the start" : "past the end")} of the road.",
                lane: lane.Number, at: stretch.From, limit: $"{row.Length(0)} to {row.Length(road.Length)}");
            return false;
        }

        if (stretch.From < lane.From - slack || stretch.To > lane.To + slack)
        {
            row.Report(SurveyFaults.BeyondLane, sentence: $"The row, {place}, lies where lane {lane.Number} has no concrete.",
                lane: lane.Number, at: stretch.From, limit: $"{Words.Number(lane.From)} to {row.Length(lane.To)}");
            return false;
        }

        stretch = (Math.Clamp(stretch.From, lane.From, lane.To), Math.Clamp(stretch.To, lane.From, lane.To));
        return true;
    }

    /// <summary>The slab named where the stretch touches it, otherwise the slab under the stretch's middle.</summary>
    private static int SlabOf(Lane lane, int? named, (double From, double To) stretch) =>
        named is { } n && stretch.To >= lane.SlabByNumber(n).Start.First - SlabTolerance && stretch.From <= lane.SlabByNumber(n).End.Last + SlabTolerance
            ? n : lane.SlabAt((stretch.From + stretch.To) / 2).Number;

    private static bool IsOn(Slab slab, double at) => at >= slab.Start.First - SlabTolerance && at <= slab.End.Last + SlabTolerance;

    private (double? Left, double? Right) Across(LocatedPoints points, Lane lane)
    {
        var edge = LaneOffsets.LeftEdge(road, lane.Number);
        var (left, right) = (points.Left - edge, points.Right - edge);
        return left < 0 || right > lane.Width ? (null, null) : (left, right);
    }
}
