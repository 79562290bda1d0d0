using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Pavement;

/// <summary>Checks on lanes as described; every finding says what to mend.</summary>
internal static class LaneChecks
{
    /// <summary>Widths outside this range draw a warning, m.</summary>
    private const double NarrowestUsual = 2.4, WidestUsual = 5.5;

    /// <summary>The lanes that can be built, in order of number.</summary>
    public static ImmutableArray<LaneLayout> Lanes(RoadLayout layout, ImmutableArray<Finding>.Builder findings)
    {
        var good = new SortedDictionary<int, LaneLayout>();
        foreach (var lane in layout.Lanes)
        {
            if (lane.Number < 1 || good.ContainsKey(lane.Number)) findings.Add(TwiceOrBelowOne(lane));
            else if (lane.Width is not (> 0 and < 30)) findings.Add(Width(lane, FindingLevel.Error));
            else if (!(lane.From < lane.To && lane.From >= 0 && lane.To <= layout.Length + 1e-6)) findings.Add(OffTheRoad(lane, layout.Length));
            else
            {
                if (lane.Width is < NarrowestUsual or > WidestUsual) findings.Add(Width(lane, FindingLevel.Warning));
                good.Add(lane.Number, lane);
            }
        }

        foreach (var number in good.Keys.Where(n => n > 1 && !good.ContainsKey(n - 1))) findings.Add(Skipped(good[number]));
        return [.. good.Values];
    }

    /// <summary>Rows that speak of a lane the road does not have.</summary>
    public static void Orphans(RoadLayout layout, ImmutableArray<LaneLayout> good, ImmutableArray<Finding>.Builder findings)
    {
        var numbers = good.Select(l => l.Number).ToHashSet();
        var named = layout.Joints.Select(j => (j.Lane, j.Place))
            .Concat(layout.Sections.Select(s => (s.Lane, s.Place)))
            .Concat(layout.EarlierRepairs.Select(r => (r.Lane, r.Place)))
            .Concat(layout.Patterns.SelectMany(p => p.Lanes.Select(l => (Lane: l, p.Place))));
        foreach (var (lane, place) in named.Where(n => !numbers.Contains(n.Lane)))
        {
            findings.Add(new("ROAD-024", FindingLevel.Error, $"There is no lane {Text(lane)} on this road.", place, Text(lane),
                "Give the number of a lane in lanes.csv, or add the lane there."));
        }
    }

    internal static string Text(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private static Finding TwiceOrBelowOne(LaneLayout lane) => new(
        "ROAD-020", FindingLevel.Error,
        lane.Number < 1 ? "Lanes number from 1 at the left." : $"Lane {Text(lane.Number)} is described twice; the first description holds.",
        lane.Place, Text(lane.Number), "Give each lane one row with its own number, counted from the left in the direction of travel.");

    private static Finding Skipped(LaneLayout lane) => new(
        "ROAD-021", FindingLevel.Warning, $"Lane {Text(lane.Number)} has no lane {Text(lane.Number - 1)} to its left.",
        lane.Place, Text(lane.Number), "Number the lanes without a gap, from the left in the direction of travel.");

    private static Finding Width(LaneLayout lane, FindingLevel level) => new(
        "ROAD-022", level, "The lane's width is not one a road lane has.", lane.Place with { Lane = lane.Number },
        Text(lane.Width) + " m", "Check the width and its unit in the column name.",
        $"{Text(NarrowestUsual)} to {Text(WidestUsual)} m", "common practice");

    private static Finding OffTheRoad(LaneLayout lane, double length) => new(
        "ROAD-023", FindingLevel.Error, "The lane does not lie on the road from a start to a later end.", lane.Place with { Lane = lane.Number },
        $"{Text(lane.From)} to {Text(lane.To)} m", "Let the lane start before it ends, between the start and the end of the road.",
        $"0 to {Text(length)} m");
}
