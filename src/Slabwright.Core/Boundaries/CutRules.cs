using Slabwright.Core.Pavement;

namespace Slabwright.Core.Boundaries;

/// <summary>A legal place for a boundary cut.</summary>
/// <param name="At">Ticks.</param>
/// <param name="Standing">Kind of the joint it stands at, or null for a cut through the slab.</param>
internal readonly record struct Cut(long At, JointKind? Standing)
{
    /// <summary>True where drilled dowels carry the load.</summary>
    public bool Dowelled => CarriesDowels(Standing);

    public bool Undowelled => Standing == JointKind.Undowelled;

    public static bool CarriesDowels(JointKind? standing) =>
        standing is not (JointKind.Undowelled or JointKind.PavementEnd or JointKind.Expansion);
}

/// <summary>What forbids a cut.</summary>
internal enum CutBlock
{
    NoCutZone,
    Skew,
    AtJoint,
    Remnant,
    Pass,
}

/// <summary>
/// Where a lane may be cut. Whether a cut is legal depends on its place and on which side of it the concrete comes out, not on the
/// other end of the repair: distances to joints are measured to every joint, whatever else is removed.
/// </summary>
internal sealed class CutRules(BoundaryProblem problem, ProblemLane lane)
{
    private readonly ProblemLimits _limits = problem.Limits;
    private readonly long _reach = Math.Max(problem.Limits.LeastRemnant, Math.Max(problem.Limits.PassDowelled, problem.Limits.PassOther))
        + (lane.Joints.IsEmpty ? 0 : lane.Joints.Max(j => j.Last - j.First)) + 1;

    public ProblemLane Lane => lane;

    /// <summary>Index of the first joint at or after a place (by lane centre).</summary>
    public int JointFrom(long at)
    {
        var (low, high) = (0, lane.Joints.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (lane.Joints[middle].At < at) low = middle + 1;
            else high = middle;
        }

        return low;
    }

    /// <summary>Tests a place; <paramref name="removesAhead"/> is true for the first cut of a repair.</summary>
    public bool TryCut(long at, bool removesAhead, bool onMark, out Cut cut)
    {
        cut = default;
        if (at < lane.From || at > lane.To || InNoCut(at)) return false;
        JointKind? standing = null;
        for (var n = JointFrom(at - _reach); n < lane.Joints.Length && lane.Joints[n].At <= at + _reach; n++)
        {
            var joint = lane.Joints[n];
            if (joint.Square && joint.At == at && MayStand(joint.Kind)) standing = joint.Kind;
            else if (!Clears(joint, at, removesAhead)) return false;
        }

        cut = new Cut(at, standing);
        return onMark || standing is not null;
    }

    /// <summary>The rule that forbids a cut and the joint it speaks of, or null where the cut is legal.</summary>
    public (CutBlock Block, ProblemJoint Joint)? Blocker(long at, bool removesAhead)
    {
        if (InNoCut(at)) return (CutBlock.NoCutZone, default);
        for (var n = JointFrom(at - _reach); n < lane.Joints.Length && lane.Joints[n].At <= at + _reach; n++)
        {
            var joint = lane.Joints[n];
            if ((joint.Square && joint.At == at && MayStand(joint.Kind)) || Clears(joint, at, removesAhead)) continue;
            if (joint.First < at && at < joint.Last) return (CutBlock.Skew, joint);
            if (joint.First == at || joint.Last == at) return (CutBlock.AtJoint, joint);
            return (joint.First > at != removesAhead ? CutBlock.Remnant : CutBlock.Pass, joint);
        }

        return null;
    }

    private bool Clears(ProblemJoint joint, long at, bool removesAhead)
    {
        if (joint.First >= at) return joint.First - at >= Need(joint.Kind, removesAhead);
        if (joint.Last <= at) return at - joint.Last >= Need(joint.Kind, !removesAhead);
        return false;
    }

    private long Need(JointKind kind, bool removed)
    {
        if (!removed) return Math.Max(1, _limits.LeastRemnant);
        return Math.Max(1, kind == JointKind.Dowelled ? _limits.PassDowelled : _limits.PassOther);
    }

    private bool MayStand(JointKind kind) => kind switch
    {
        JointKind.PavementEnd or JointKind.EarlierRepairEdge or JointKind.Expansion => true,
        JointKind.Undowelled or JointKind.WorkingCrack => _limits.EndAtUndowelled,
        _ => false,
    };

    private bool InNoCut(long at)
    {
        foreach (var zone in lane.NoCut)
        {
            if (zone.From < at && at < zone.To) return true;
        }

        return false;
    }
}
