using Slabwright.Core.Boundaries;

namespace Slabwright.Core.Quantities;

/// <summary>Area of concrete and the volume of base below it.</summary>
internal static class AreaMeasure
{
    /// <summary>Repair area: length × full lane width.</summary>
    /// <remarks>Source: Iowa SUDAS 7040 (area by type); checks in closures-and-costs M11: 6 × 12 ft is 8.0 yd².</remarks>
    public static Measurement FullDepth(Repair repair, PayUnits units) => new(
        RepairArea(repair.Length, repair.Width), $"{units.Of(repair.Length)} × {units.Of(repair.Width)}{units.Divisor()}");

    /// <summary>Concrete in place of loose base: area × share × depth.</summary>
    /// <remarks>Source: Ohio DOT 255.04 (over-excavation is filled with concrete).</remarks>
    /// <param name="repair">The repair.</param> <param name="share">Share of the area with loose base, 0 to 1.</param>
    /// <param name="depth">Depth of loose base, m.</param> <param name="units">Units of the item.</param>
    public static Measurement? BaseConcrete(Repair repair, double share, double depth, PayUnits units)
    {
        var volume = RepairArea(repair.Length, repair.Width) * share * depth;
        if (volume <= 0) return null;
        var working = $"{units.Of(repair.Length)} × {units.Of(repair.Width)} × {PayUnits.Plain(share)} × {units.Of(depth)}{units.Divisor()}";
        return new Measurement(volume, working);
    }

    /// <summary>Area of a repair in square metres.</summary>
    /// <param name="length">Length along the road, m.</param> <param name="width">Full lane width, m.</param>
    public static double RepairArea(double length, double width) => length * width;

    /// <summary>Area paid for one repair: its own, or the least pay area where that is more.</summary>
    /// <remarks>Source: Iowa SUDAS 7040: a patch under 2 yd² is paid as 2 yd².</remarks>
    /// <param name="area">Area, m².</param> <param name="least">Least pay area, m².</param>
    public static double PayArea(double area, double least) => Math.Max(area, least);
}
