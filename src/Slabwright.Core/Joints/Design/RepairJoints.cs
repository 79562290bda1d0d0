using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Joints.Design;

/// <summary>The transverse joints of repairs: bars, drilling and reasons.</summary>
internal sealed class RepairJoints(
    Road road, RuleSet rules, JointInputs inputs, BarClearance clearance, ImmutableArray<LaneJointDesign> lanes)
{
    private static readonly SourceRef Guide = new("FHWA-CPPG", "full-depth repair", SourceStatus.FromMemory);

    private readonly Dictionary<int, LaneJointDesign> _lanes = lanes.ToDictionary(l => l.Lane);

    public List<Finding> Findings { get; } = [];

    public IEnumerable<DesignedJoint> Of(Repair repair)
    {
        if (!_lanes.TryGetValue(repair.Lane, out var design)) return [];
        var lane = road.LaneByNumber(repair.Lane);
        return
        [
            End(repair, lane, design, repair.Start, JointPosition.Start),
            .. repair.Intermediate.Select(j => Inner(repair, design, j)),
            End(repair, lane, design, repair.End, JointPosition.End),
        ];
    }

    private DesignedJoint End(Repair repair, Lane lane, LaneJointDesign design, RepairJoint joint, JointPosition position)
    {
        var reasons = ImmutableArray.CreateBuilder<Reason>();
        reasons.Add(Why(repair, lane, joint));
        var thickness = lane.SectionAt(position == JointPosition.Start ? joint.At - 1e-6 : joint.At).Thickness;
        var bars = Bars(design, lane, joint.Design, thickness);
        if (bars is not null)
        {
            var (clear, told) = clearance.Clear(
                bars, new OldFace(lane, joint.At, position == JointPosition.Start), design.Conditions.ClearLeft, design.Conditions.ClearRight);
            bars = clear;
            reasons.AddRange(told);
            if (clear.Bars < joint.Bars) Findings.Add(Fewer(repair, joint, clear.Bars));
        }

        if (Skewed(lane, joint.At) is { } skew) reasons.Add(skew);
        return Joint(repair, position, joint, thickness, bars, bars is null ? null : DrillPlans.Of(bars, repair.Width, inputs), reasons.ToImmutable());
    }

    private DesignedJoint Inner(Repair repair, LaneJointDesign design, RepairJoint joint)
    {
        var bars = joint.Design == JointDesign.Dowelled ? Bars(design, null, joint.Design, repair.Thickness) : null;
        var where = joint.AtExistingJoint ? "where an old joint stood" : "between the joints, since the concrete would be too long without";
        var reason = bars is not null
            ? new Reason("inner joint dowelled", $"Made {where}; the lane's dowels in a basket set before the concrete, nothing drilled.",
                rules.Joints.DowelIntermediateJoints.Source)
            : new Reason("inner joint undowelled", $"Sawn {where}; the rule set puts no dowels in joints inside a repair.",
                rules.Joints.DowelIntermediateJoints.Source);
        return Joint(repair, JointPosition.Inner, joint, repair.Thickness, bars, null, [reason]);
    }

    private BarLayout? Bars(LaneJointDesign design, Lane? lane, JointDesign how, double thickness) => how switch
    {
        JointDesign.Dowelled => design.Used.Layout is { } layout ? layout with { Depth = thickness / 2 } : null,
        JointDesign.Tied => TiedEnds.Layout(lane!, design.Conditions.ClearLeft, design.Conditions.ClearRight, thickness, rules.Joints),
        _ => null,
    };

    private Reason Why(Repair repair, Lane lane, RepairJoint joint)
    {
        var length = new ReasonInput("length of the repair", JointWords.Long(repair.Length));
        return joint.Design switch
        {
            JointDesign.Dowelled => new("working joint", "Dowels drilled into the old slab: the joint opens and closes and carries load. " + OtherEnd(repair, lane),
                rules.Joints.OneEndTiedUpTo?.Source ?? Guide, [length]),
            JointDesign.Tied => new("one end tied", "Tied to the shorter old piece, so that the panel tied together stays short and the working joint at the other "
                + "end opens least. The other end always works: both are never tied.", rules.Joints.OneEndTiedUpTo?.Source ?? Guide,
                [length, new("tied up to", JointWords.Long(rules.Joints.OneEndTiedUpTo?.Value ?? 0))]),
            JointDesign.Isolated => new("isolated at a structure", "An expansion joint or the end of the pavement: filler full depth, no load transfer.",
                new("NB-12", "T 5040.30 sec. 7", SourceStatus.Verified), [length]),
            _ => joint.AtExistingJoint
                ? new("old undowelled joint stays", "The repair ends at an old joint without dowels, which the rule set lets be the boundary; interlock carries "
                    + "the load as at its neighbours.", rules.Boundaries.EndAtUndowelledJoint?.Source ?? SourceRef.CommonPractice, [length])
                : new("no dowels", "The lane goes without dowels: thin slab and few trucks, as the rule set allows.",
                    rules.Joints.UndowelledBelowThickness?.Source ?? SourceRef.CommonPractice, [length]),
        };
    }

    private string OtherEnd(Repair repair, Lane lane)
    {
        if (repair.Start.Design == JointDesign.Tied || repair.End.Design == JointDesign.Tied) return "The other end is tied, so this one works.";
        if (rules.Joints.OneEndTiedUpTo is not { } upTo || !inputs.Settings.TieOneEnd) return "The rules tie no end.";
        if (repair.Length > upTo.Value) return $"Longer than {JointWords.Long(upTo.Value)}, so no end is tied.";
        return lane.SectionAt(repair.From).Kind == PavementKind.JointedPlain ? "Plain slabs: both ends work." : "Only one end is dowelled, so none is tied.";
    }

    /// <summary>A skewed joint near an end, of this lane or beside it, told so that nobody skews the cut.</summary>
    private static Reason? Skewed(Lane lane, double at)
    {
        var joint = lane.Joints.Where(j => j.SkewRun != 0).OrderBy(j => Math.Abs(j.At - at)).FirstOrDefault();
        if (joint.SkewRun == 0 || Math.Abs(joint.At - at) > lane.Width) return null;
        return new("end square to the lane", $"The old joint {JointWords.Long(Math.Abs(joint.At - at))} away is skewed; the cut and its bars stand square to the lane.",
            Guide, [new("skew run across the lane", JointWords.Long(Math.Abs(joint.SkewRun)))]);
    }

    private Finding Fewer(Repair repair, RepairJoint joint, int bars) => new(
        "JNT-022", FindingLevel.Warning, $"A joint of {repair.Id} has room for {bars} of {joint.Bars} bars.", new FindingPlace(Lane: repair.Lane, At: joint.At),
        road.Stationing.Format(joint.At), "Move the cut, or have the place checked: with fewer bars each carries more.");

    private static DesignedJoint Joint(
        Repair repair, JointPosition position, RepairJoint joint, double thickness, BarLayout? bars, DrillPlan? drilling, ImmutableArray<Reason> reasons) => new()
    {
        RepairId = repair.Id,
        Position = position,
        At = joint.At,
        Lane = repair.Lane,
        LaneWidth = repair.Width,
        Thickness = thickness,
        Design = joint.Design,
        Bars = bars,
        Drilling = drilling,
        Reasons = reasons,
    };
}
