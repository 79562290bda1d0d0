using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Joints.Design;

/// <summary>Which joint of a repair.</summary>
public enum JointPosition
{
    /// <summary>At the start in the direction of travel.</summary>
    Start,

    /// <summary>Inside the repair.</summary>
    Inner,

    /// <summary>At the end in the direction of travel.</summary>
    End,
}

/// <summary>One gang-drill set-up: the bars drilled with the frame standing once.</summary>
/// <param name="Number">From 1, left to right.</param>
/// <param name="Bars">Numbers of the bars drilled, from 1 at the left edge.</param>
/// <param name="FrameAt">Offset of the frame's left drill from the lane's left edge, m.</param>
public sealed record GangSetUp(int Number, ImmutableArray<int> Bars, double FrameAt);

/// <summary>A tolerance or a step the crew keeps, with its source.</summary>
/// <param name="Name">What it is about, two or three words.</param>
/// <param name="Text">What to do or keep, with units.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record CrewNote(string Name, string Text, SourceRef Source);

/// <summary>How the holes of a joint are drilled and the bars anchored.</summary>
public sealed record DrillPlan
{
    /// <summary>Grout or epoxy, as printed.</summary>
    public required string Anchor { get; init; }

    /// <summary>Hole diameter, m.</summary>
    public required double HoleDiameter { get; init; }

    /// <summary>Hole depth, m.</summary>
    public required double HoleDepth { get; init; }

    /// <summary>Set-ups of the gang drill, left to right.</summary>
    public required ImmutableArray<GangSetUp> SetUps { get; init; }

    /// <summary>Tolerances of hole and bar.</summary>
    public required ImmutableArray<CrewNote> Tolerances { get; init; }

    /// <summary>Installation steps and checks in working order.</summary>
    public required ImmutableArray<CrewNote> Steps { get; init; }
}

/// <summary>One transverse joint of one repair as it is to be built.</summary>
public sealed record DesignedJoint
{
    /// <summary>The repair.</summary>
    public required string RepairId { get; init; }

    /// <summary>Start, inner or end.</summary>
    public required JointPosition Position { get; init; }

    /// <summary>Metres along the road.</summary>
    public required double At { get; init; }

    /// <summary>Lane number.</summary>
    public required int Lane { get; init; }

    /// <summary>Lane width, m.</summary>
    public required double LaneWidth { get; init; }

    /// <summary>Slab thickness, m.</summary>
    public required double Thickness { get; init; }

    /// <summary>How it carries load.</summary>
    public required JointDesign Design { get; init; }

    /// <summary>The bars; null where there are none.</summary>
    public required BarLayout? Bars { get; init; }

    /// <summary>Drilling into the old slab; null where no bar is drilled (bars in a basket, or none).</summary>
    public required DrillPlan? Drilling { get; init; }

    /// <summary>Why it is built so.</summary>
    public required ImmutableArray<Reason> Reasons { get; init; }
}

/// <summary>The load transfer chosen for a lane.</summary>
public sealed record LaneJointDesign
{
    /// <summary>Lane number.</summary>
    public required int Lane { get; init; }

    /// <summary>The governing conditions: those of the build-up with the least margin.</summary>
    public required JointConditions Conditions { get; init; }

    /// <summary>Everything looked at, cheapest first.</summary>
    public required ImmutableArray<JointAlternative> Alternatives { get; init; }

    /// <summary>The winner: the cheapest that keeps every limit; null when none does, and a finding says so.</summary>
    public required JointAlternative? Winner { get; init; }

    /// <summary>Why the winner won.</summary>
    public required ImmutableArray<Reason> Reasons { get; init; }

    /// <summary>What is built: the winner, or where none passes the one that comes nearest.</summary>
    public JointAlternative Used => Winner ?? JointDesigner.Nearest(Alternatives);
}

/// <summary>Holes of one size drilled on the whole job.</summary>
/// <param name="Kind">Dowel or tie bar.</param>
/// <param name="Anchor">What anchors the bars, as printed.</param>
/// <param name="BarDiameter">Bar, m.</param>
/// <param name="HoleDiameter">Hole, m.</param>
/// <param name="HoleDepth">Hole, m.</param>
/// <param name="Holes">How many.</param>
public sealed record HoleTotal(BarKind Kind, string Anchor, double BarDiameter, double HoleDiameter, double HoleDepth, int Holes);

/// <summary>What the Joints step hands on.</summary>
public sealed record JointPlan
{
    /// <summary>Nothing designed.</summary>
    public static JointPlan Empty { get; } = new() { Lanes = [], Joints = [], Findings = [] };

    /// <summary>The design of each lane.</summary>
    public required ImmutableArray<LaneJointDesign> Lanes { get; init; }

    /// <summary>Every transverse joint of every repair, in the order of the repairs.</summary>
    public required ImmutableArray<DesignedJoint> Joints { get; init; }

    /// <summary>What was wrong with inputs or could not be met.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Holes to drill across the job by size, dowels first, then by diameter and depth.</summary>
    public ImmutableArray<HoleTotal> Holes =>
    [
        .. Joints.Where(j => j is { Bars: not null, Drilling: not null })
            .GroupBy(j => (j.Bars!.Kind, j.Drilling!.Anchor, j.Bars.Diameter, j.Drilling.HoleDiameter, j.Drilling.HoleDepth))
            .OrderBy(g => g.Key.Kind).ThenBy(g => g.Key.Diameter).ThenBy(g => g.Key.HoleDepth)
            .Select(g => new HoleTotal(g.Key.Kind, g.Key.Anchor, g.Key.Diameter, g.Key.HoleDiameter, g.Key.HoleDepth, g.Sum(j => j.Bars!.Bars))),
    ];

    /// <summary>The repairs with the number of bars their joints really have: fewer where a place had no room for one.</summary>
    public ImmutableArray<Repair> Fit(IReadOnlyList<Repair> repairs)
    {
        var bars = Joints.ToLookup(j => j.RepairId);
        return [.. repairs.Select(r => bars[r.Id].Aggregate(r, Fitted))];
    }

    private static Repair Fitted(Repair repair, DesignedJoint joint)
    {
        var number = joint.Bars?.Bars ?? 0;
        return joint.Position switch
        {
            JointPosition.Start => repair with { Start = repair.Start with { Bars = number } },
            JointPosition.End => repair with { End = repair.End with { Bars = number } },
            _ => repair,
        };
    }
}
