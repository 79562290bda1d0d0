using Slabwright.Core.Boundaries;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Quantities;

/// <summary>Lengths across the lane: boundary cuts, cuts between lift pieces, seals.</summary>
internal static class CrossMeasure
{
    /// <summary>Longest lift piece, m: 6 ft.</summary>
    /// <remarks>Source: MoDOT EPG 613.1.1.</remarks>
    public const double LongestLiftPiece = 6 * 0.3048;

    /// <summary>Boundary cuts: two lane widths.</summary>
    public static Measurement BoundaryCuts(Repair repair, PayUnits units) => Times(2, repair.Width, units);

    /// <summary>Cuts between lift pieces; null where the repair is one piece.</summary>
    public static Measurement? InternalCuts(Repair repair, PayUnits units)
    {
        var cuts = LiftPieces(repair.Length, LongestLiftPiece) - 1;
        return cuts > 0 ? Times(cuts, repair.Width, units) with { Remark = $"{cuts + 1} lift pieces" } : null;
    }

    /// <summary>Seals at both ends and at every joint inside.</summary>
    public static Measurement Seals(Repair repair, PayUnits units) => Times(2 + repair.Intermediate.Length, repair.Width, units);

    /// <summary>Number of pieces a length is lifted in.</summary>
    /// <remarks>Source: MoDOT EPG 613.1.1, pieces about 6 ft long; counted to the tick so that 12 ft is exactly two pieces.</remarks>
    /// <param name="length">Length of the removal, m.</param> <param name="piece">Longest piece, m.</param>
    public static int LiftPieces(double length, double piece) => CountUp(length, piece);

    /// <summary>Joints needed inside a length so that no stretch is longer than a limit.</summary>
    /// <param name="length">Length of the repair, m.</param> <param name="longest">Longest stretch without a joint, m.</param>
    public static int JointsInside(double length, double longest) => CountUp(length, longest) - 1;

    /// <summary>How many parts of at most <paramref name="part"/> make <paramref name="whole"/>; both to the tick of 0.1 mm.</summary>
    public static int CountUp(double whole, double part)
    {
        var (total, step) = (Ticks.FromMetres(whole), Ticks.FromMetres(part));
        return (int)Math.Max(1, (total + step - 1) / step);
    }

    private static Measurement Times(int count, double width, PayUnits units) =>
        new(count * width, $"{count} × {units.Of(width)}{units.Divisor()}");
}
