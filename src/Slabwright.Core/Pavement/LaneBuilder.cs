using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Pavement;

/// <summary>Builds lanes with sorted joints from the way people describe them, and says what does not fit.</summary>
public static class LaneBuilder
{
    /// <summary>Two lines closer than this are one joint, m: half a foot, the care with which joints are paced out.</summary>
    public const double SameJoint = 0.1524;

    /// <summary>Builds every lane that can be built.</summary>
    public static LaneBuildResult Build(RoadLayout layout)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var good = LaneChecks.Lanes(layout, findings);
        var patterns = JointChecks.Patterns(layout, good, findings);
        var listed = JointChecks.Listed(layout, good, findings);
        var lanes = ImmutableArray.CreateBuilder<Lane>();
        foreach (var lane in good)
        {
            var sections = SectionChecks.Sections(layout, lane, findings);
            var repairs = SectionChecks.EarlierRepairs(layout, lane, findings);
            var joints = Joints(layout, lane, ToLeftEdge(good, lane), patterns, listed[lane.Number], repairs);
            JointChecks.Slabs(lane, joints, findings);
            if (sections.IsEmpty) continue;
            lanes.Add(new Lane
            {
                Number = lane.Number,
                Width = lane.Width,
                From = lane.From,
                To = lane.To,
                LeftEdge = lane.LeftEdge,
                RightEdge = lane.RightEdge,
                Joints = joints,
                Sections = sections,
                EarlierRepairs = repairs,
            });
        }

        LaneChecks.Orphans(layout, good, findings);
        return new(lanes.ToImmutable(), findings.ToImmutable());
    }

    private static double ToLeftEdge(ImmutableArray<LaneLayout> lanes, LaneLayout lane) =>
        lanes.Where(l => l.Number < lane.Number).Sum(l => l.Width);

    private static ImmutableArray<TransverseJoint> Joints(
        RoadLayout layout, LaneLayout lane, double toLeftEdge, ImmutableArray<JointPattern> patterns,
        ImmutableArray<TransverseJoint> listed, ImmutableArray<EarlierRepair> repairs)
    {
        var bridges = layout.Bridges.Where(b => b.To > lane.From && b.From < lane.To).ToImmutableArray();
        var lines = new JointLines();
        lines.Add(new(lane.From, JointKind.PavementEnd), SameJoint);
        lines.Add(new(lane.To, JointKind.PavementEnd), SameJoint);
        foreach (var joint in listed.Where(j => j.Kind == JointKind.PavementEnd)) lines.Add(joint, SameJoint);
        foreach (var line in bridges.SelectMany(LinesOf).Where(j => j.At > lane.From && j.At < lane.To)) lines.Add(line, SameJoint);
        foreach (var at in repairs.SelectMany(r => new[] { r.From, r.To }))
            lines.Add(listed.FirstOrDefault(j => IsEdge(j, at), new(at, JointKind.EarlierRepairEdge)), SameJoint);
        foreach (var joint in listed) lines.Add(joint, 0);
        foreach (var pattern in patterns.Where(p => p.Lanes.IsEmpty || p.Lanes.Contains(lane.Number)))
            AddPattern(lines, pattern, lane, toLeftEdge, bridges, repairs);
        return lines.InOrder();
    }

    private static bool IsEdge(TransverseJoint joint, double at) =>
        joint.Kind == JointKind.EarlierRepairEdge && Math.Abs(joint.At - at) <= SameJoint;

    private static IEnumerable<TransverseJoint> LinesOf(BridgeDeck bridge)
    {
        if (bridge.ApproachSlab > 0) yield return new(bridge.From - bridge.ApproachSlab, JointKind.Expansion);
        yield return new(bridge.From, JointKind.PavementEnd);
        yield return new(bridge.To, JointKind.PavementEnd);
        if (bridge.ApproachSlab > 0) yield return new(bridge.To + bridge.ApproachSlab, JointKind.Expansion);
    }

    private static void AddPattern(
        JointLines lines, JointPattern pattern, LaneLayout lane, double toLeftEdge, ImmutableArray<BridgeDeck> bridges, ImmutableArray<EarlierRepair> repairs)
    {
        var remainder = JointPatternLines.Remainder(pattern);
        var given = new JointLines(lines);
        foreach (var joint in JointPatternLines.Of(pattern, toLeftEdge, lane.Width))
        {
            var inside = joint.First > lane.From && joint.Last < lane.To;
            var onBridge = bridges.Any(b => joint.Last > b.From - b.ApproachSlab && joint.First < b.To + b.ApproachSlab);
            var inRepair = repairs.Any(r => joint.At > r.From && joint.At < r.To);
            if (inside && !onBridge && !inRepair && !given.Near(joint.At, remainder).Any(l => Math.Abs(l.At - joint.At) <= Room(l.Kind, remainder)))
                lines.Add(joint, 0);
        }
    }

    /// <summary>Pattern lines keep half a slab away from the ends of the concrete and from expansion joints, and give way to a listed joint.</summary>
    private static double Room(JointKind kind, double remainder) =>
        kind is JointKind.PavementEnd or JointKind.Expansion ? remainder : SameJoint;
}
