using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Pavement;

/// <summary>Checks on joint patterns and lists.</summary>
internal static class JointChecks
{
    /// <summary>Steepest skew taken as meant, metres along the road for a metre across.</summary>
    private const double SteepestSkew = 0.5;

    /// <summary>Slabs outside this range draw a warning, m.</summary>
    private const double ShortestUsual = 0.9, LongestUsual = 31;

    /// <summary>Patterns that can be laid out: spacings above 0, a modest skew, and no two on one stretch of a lane.</summary>
    public static ImmutableArray<JointPattern> Patterns(
        RoadLayout layout, ImmutableArray<LaneLayout> lanes, ImmutableArray<Finding>.Builder findings)
    {
        var good = new List<JointPattern>();
        foreach (var pattern in layout.Patterns)
        {
            if (pattern.Spacings.IsEmpty || pattern.Spacings.Any(s => !(s > 0))) findings.Add(Spacing(pattern));
            else if (Math.Abs(pattern.Skew) > SteepestSkew) findings.Add(Skew(pattern.Place, pattern.Skew));
            else if (!(pattern.From < pattern.To)) findings.Add(Backwards(pattern));
            else if (good.FirstOrDefault(g => Overlap(g, pattern, lanes)) is { } other) findings.Add(Twice(pattern, other));
            else good.Add(pattern);
        }

        return [.. good];
    }

    /// <summary>Listed joints lane by lane, sorted, without those off the lane and without doubles.</summary>
    public static Dictionary<int, ImmutableArray<TransverseJoint>> Listed(
        RoadLayout layout, ImmutableArray<LaneLayout> lanes, ImmutableArray<Finding>.Builder findings)
    {
        var byLane = layout.Joints.ToLookup(j => j.Lane);
        var result = new Dictionary<int, ImmutableArray<TransverseJoint>>();
        foreach (var lane in lanes)
        {
            var rows = byLane[lane.Number].Where(j => Fits(j, lane, findings)).ToList();
            var unsorted = rows.Zip(rows.Skip(1)).Where(p => p.Second.Joint.At < p.First.Joint.At).Select(p => p.Second).FirstOrDefault();
            if (unsorted is not null) findings.Add(Unsorted(unsorted));
            result[lane.Number] = WithoutDoubles([.. rows.OrderBy(r => r.Joint.At)], findings);
        }

        return result;
    }

    /// <summary>Warns of slabs too short or too long to be believed and of joints that cross.</summary>
    public static void Slabs(LaneLayout lane, ImmutableArray<TransverseJoint> joints, ImmutableArray<Finding>.Builder findings)
    {
        for (var i = 1; i < joints.Length; i++)
        {
            var (start, end) = (joints[i - 1], joints[i]);
            var place = lane.Place with { Lane = lane.Number, At = start.At };
            var deck = start.Kind == JointKind.PavementEnd && end.Kind == JointKind.PavementEnd;
            if (end.AtLeftEdge <= start.AtLeftEdge || end.AtRightEdge <= start.AtRightEdge) findings.Add(Crossing(place, start, end));
            else if (end.At - start.At < ShortestUsual) findings.Add(Length(place, i, end.At - start.At, "short"));
            else if (!deck && end.At - start.At > LongestUsual) findings.Add(Length(place, i, end.At - start.At, "long"));
        }
    }

    private static bool Fits(ListedJoint row, LaneLayout lane, ImmutableArray<Finding>.Builder findings)
    {
        var skew = row.Joint.SkewRun / lane.Width;
        if (row.Joint.At < lane.From - 1e-6 || row.Joint.At > lane.To + 1e-6) findings.Add(Outside(row, lane));
        else if (Math.Abs(skew) > SteepestSkew) findings.Add(Skew(row.Place, skew));
        else return true;
        return false;
    }

    private static ImmutableArray<TransverseJoint> WithoutDoubles(
        ImmutableArray<ListedJoint> rows, ImmutableArray<Finding>.Builder findings)
    {
        var joints = ImmutableArray.CreateBuilder<TransverseJoint>(rows.Length);
        foreach (var row in rows)
        {
            if (joints.Count > 0 && row.Joint.At - joints[^1].At < 0.001) findings.Add(Double(row));
            else joints.Add(row.Joint);
        }

        return joints.ToImmutable();
    }

    private static bool Overlap(JointPattern a, JointPattern b, ImmutableArray<LaneLayout> lanes) =>
        a.From < b.To - 1e-6 && b.From < a.To - 1e-6
        && lanes.Any(l => (a.Lanes.IsEmpty || a.Lanes.Contains(l.Number)) && (b.Lanes.IsEmpty || b.Lanes.Contains(l.Number))
            && Math.Min(a.To, Math.Min(b.To, l.To)) > Math.Max(a.From, Math.Max(b.From, l.From)) + 1e-6);

    private static Finding Unsorted(ListedJoint row) => new(
        "ROAD-030", FindingLevel.Note, "The joints of the lane are not in order along the road; they were sorted.",
        row.Place with { Lane = row.Lane, At = row.Joint.At }, null, "Nothing needs doing; check the row if a place was mistyped.");

    private static Finding Double(ListedJoint row) => new(
        "ROAD-031", FindingLevel.Warning, "Two joints of the lane stand at the same place; the second is left out.",
        row.Place with { Lane = row.Lane, At = row.Joint.At }, null, "Remove one of the two rows, or mend the place of one.");

    private static Finding Spacing(JointPattern pattern) => new(
        "ROAD-032", FindingLevel.Error, "A joint pattern needs at least one spacing and every spacing above 0.", pattern.Place,
        string.Join(", ", pattern.Spacings.Select(s => LaneChecks.Text(s) + " m")), "Give the spacings in order, for example 13, 19, 18, 12 ft.");

    private static Finding Outside(ListedJoint row, LaneLayout lane) => new(
        "ROAD-033", FindingLevel.Error, "The joint does not lie in its lane.", row.Place with { Lane = row.Lane, At = row.Joint.At },
        LaneChecks.Text(row.Joint.At) + " m", "Check lane and place; the lane's concrete starts and ends as lanes.csv says.",
        $"{LaneChecks.Text(lane.From)} to {LaneChecks.Text(lane.To)} m");

    private static Finding Skew(FindingPlace place, double skew) => new(
        "ROAD-034", FindingLevel.Error, "The joint is skewed more than a joint is.", place, $"{LaneChecks.Text(skew)} along for 1 across",
        "Give the skew as run along the road over width across, for example 1:6.", "0.5 (1:2)", "common practice");

    private static Finding Length(FindingPlace place, int slab, double length, string how) => new(
        "ROAD-035", FindingLevel.Warning, $"Slab {LaneChecks.Text(slab)} of the lane is very {how}.", place, LaneChecks.Text(length) + " m",
        how == "short" ? "Check whether two rows mean the same joint." : "Check whether a joint is missing from the list.",
        $"{LaneChecks.Text(ShortestUsual)} to {LaneChecks.Text(LongestUsual)} m", "common practice");

    private static Finding Backwards(JointPattern pattern) => new(
        "ROAD-036", FindingLevel.Error, "The joint pattern ends before it starts.", pattern.Place,
        $"{LaneChecks.Text(pattern.From)} to {LaneChecks.Text(pattern.To)} m", "Give the start first, in the direction of travel.");

    private static Finding Twice(JointPattern pattern, JointPattern other) => new(
        "ROAD-037", FindingLevel.Error, "Two joint patterns cover the same stretch of a lane; the first holds and this one is not used.",
        pattern.Place, $"{LaneChecks.Text(pattern.From)} to {LaneChecks.Text(pattern.To)} m",
        "Let one pattern end where the next begins.", $"the other runs from {LaneChecks.Text(other.From)} to {LaneChecks.Text(other.To)} m");

    private static Finding Crossing(FindingPlace place, TransverseJoint start, TransverseJoint end) => new(
        "ROAD-038", FindingLevel.Error, "Two joints cross inside the lane, so the slab between them has no shape.", place,
        $"{LaneChecks.Text(start.At)} m and {LaneChecks.Text(end.At)} m", "Check the places and the sign of the skew of both joints.");
}
