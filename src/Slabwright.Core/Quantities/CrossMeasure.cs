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
    public static Measurement? InternalCuts(Repair repair, LiftLayout layout, PayUnits units)
    {
        if (layout.Pieces == 1) return null;
        var across = layout.Along > 1 ? $"{layout.Along - 1} × {units.Of(repair.Width)}" : "";
        var along = layout.Across > 1 ? $"{layout.Across - 1} × {units.Of(repair.Length)}" : "";
        var (divisor, both) = (units.Divisor(), across.Length > 0 && along.Length > 0);
        var working = both ? divisor.Length > 0 ? $"({across} + {along})" : $"{across} + {along}" : across + along;
        return new(layout.CutLength(repair), working + divisor, $"{layout.Pieces} lift pieces");
    }

    /// <summary>Seals at both ends and at every joint inside.</summary>
    public static Measurement Seals(Repair repair, PayUnits units) => Times(2 + repair.Intermediate.Length, repair.Width, units);

    /// <summary>Joints needed inside a length so that no stretch is longer than a limit.</summary>
    /// <param name="length">Length of the repair, m.</param> <param name="longest">Longest stretch without a joint, m.</param>
    public static int JointsInside(double length, double longest) => Ticks.CountUp(length, longest) - 1;

    private static Measurement Times(int count, double width, PayUnits units) =>
        new(count * width, $"{count} × {units.Of(width)}{units.Divisor()}");
}
