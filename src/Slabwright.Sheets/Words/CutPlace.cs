using System.Globalization;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Pavement;

namespace Slabwright.Sheets.Words;

/// <summary>
/// Where a boundary cut lies as a crew finds it on the road: so far past or before the nearest transverse joint that is there today.
/// Distances are measured along the lane's centre, which matters where joints are skewed.
/// </summary>
/// <param name="JointNumber">The joint at the start of the slab with this number; one more than the slab count at the lane's end.</param>
/// <param name="Joint">The joint.</param>
/// <param name="Past">Metres from the joint to the cut; negative when the cut lies before the joint.</param>
public readonly record struct CutPlace(int JointNumber, TransverseJoint Joint, double Past)
{
    /// <summary>A cut this close to a joint is marked on the joint, m.</summary>
    private const double OnTheJoint = 0.013;

    /// <summary>True when the cut is marked on the joint itself.</summary>
    public bool IsOnJoint => Math.Abs(Past) <= OnTheJoint;

    /// <summary>The place of a cut relative to the nearest joint of its lane.</summary>
    public static CutPlace Of(Lane lane, double at)
    {
        var slab = lane.SlabAt(at);
        var (before, after) = (at - slab.Start.At, at - slab.End.At);
        return Math.Abs(before) <= Math.Abs(after)
            ? new CutPlace(slab.Number, slab.Start, before)
            : new CutPlace(slab.Number + 1, slab.End, after);
    }

    /// <summary>The cut at the start of a repair.</summary>
    public static CutPlace OfStart(Road road, Repair repair) => Of(road.LaneByNumber(repair.Lane), repair.From);

    /// <summary>The cut at the end of a repair.</summary>
    public static CutPlace OfEnd(Road road, Repair repair) => Of(road.LaneByNumber(repair.Lane), repair.To);

    /// <summary>The joint by the slabs it parts, e.g. <c>joint 122|123</c>.</summary>
    public string JointName(Lane lane)
    {
        var (left, right) = (JointNumber - 1, JointNumber);
        var name = SheetWords.Of(Joint.Kind);
        if (left < 1) return name + " before slab 1";
        return right > lane.SlabCount
            ? string.Create(CultureInfo.InvariantCulture, $"{name} after slab {left}")
            : string.Create(CultureInfo.InvariantCulture, $"{name} {left}|{right}");
    }

    /// <summary>The place in words, e.g. <c>3 ft 6 in past joint 122|123</c>.</summary>
    public string Describe(Lane lane, JobUnits units)
    {
        if (IsOnJoint) return "on " + JointName(lane);
        return $"{units.Taped(Past)} {(Past > 0 ? "past" : "before")} {JointName(lane)}";
    }
}
