using Slabwright.Core.Boundaries;
using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Quantities;

/// <summary>Lengths across the lane: boundary cuts, cuts between lift pieces, seals.</summary>
internal static class CrossMeasure
{
    /// <summary>Boundary cuts: two lane widths.</summary>
    public static Measurement BoundaryCuts(Repair repair, PayUnits units) => Times(2, repair.Width, units);

    /// <summary>Cuts between lift pieces; null where the repair is one piece.</summary>
    public static Measurement? InternalCuts(Repair repair, PayUnits units)
    {
        var cuts = LiftCount.Pieces(repair.Length, LiftCount.LongestPiece) - 1;
        return cuts > 0 ? Times(cuts, repair.Width, units) with { Remark = $"{cuts + 1} lift pieces" } : null;
    }

    /// <summary>Seals at both ends and at every joint inside.</summary>
    public static Measurement Seals(Repair repair, PayUnits units) => Times(2 + repair.Intermediate.Length, repair.Width, units);

    /// <summary>Joints needed inside a length so that no stretch is longer than a limit.</summary>
    /// <param name="length">Length of the repair, m.</param> <param name="longest">Longest stretch without a joint, m.</param>
    public static int JointsInside(double length, double longest) => Ticks.CountUp(length, longest) - 1;

    private static Measurement Times(int count, double width, PayUnits units) =>
        new(count * width, $"{count} × {units.Of(width)}{units.Divisor()}");
}
