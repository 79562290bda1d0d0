using System.Collections.Immutable;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Design;

/// <summary>What holds a bar in its hole.</summary>
public enum BarAnchor
{
    /// <summary>Epoxy mortar or cartridge epoxy.</summary>
    Epoxy,

    /// <summary>Cement grout.</summary>
    CementGrout,
}

/// <summary>A place across the lane where no hole may be drilled, e.g. over a duct or a loop.</summary>
/// <param name="Name">What is there.</param>
/// <param name="Lane">Lane number; null for all lanes.</param>
/// <param name="From">Metres along the road.</param>
/// <param name="To">Metres along the road.</param>
/// <param name="Left">Nearest offset from the lane's left edge, m.</param>
/// <param name="Right">Furthest offset from the lane's left edge, m.</param>
public sealed record DrillKeepOut(string Name, int? Lane, double From, double To, double Left, double Right);

/// <summary>
/// How the price of a drilled dowel in the price list spreads over bars of another size: a fixed share for setting up, drilling and
/// anchoring, a share that goes with the volume of the hole, and a share that goes with the steel.
/// </summary>
/// <param name="Fixed">Share that does not depend on the bar.</param>
/// <param name="Hole">Share that goes with hole area times depth.</param>
/// <param name="Steel">Share that goes with bar area times length.</param>
/// <param name="Diameter">Diameter the price of the list stands for, m.</param>
/// <param name="Length">Length the price of the list stands for, m.</param>
public sealed record BarCostShares(double Fixed, double Hole, double Steel, double Diameter, double Length)
{
    /// <summary>Half fixed, 0.2 hole, 0.3 steel, for a bar of 1½ in by 18 in: an assumption to edit.</summary>
    public static BarCostShares Assumption { get; } = new(0.5, 0.2, 0.3, 1.5 * 0.0254, 18 * 0.0254);

    /// <summary>Cost of a bar as a share of the price in the list.</summary>
    /// <param name="diameter">m.</param> <param name="length">m.</param> <param name="embedment">m.</param>
    public double Of(double diameter, double length, double embedment)
    {
        var area = diameter * diameter / (Diameter * Diameter);
        return Fixed + Hole * area * embedment / (Length / 2) + Steel * area * length / Length;
    }
}

/// <summary>
/// What the project says about its joints. Null or empty members fall back to <see cref="JointDefaults"/>, and each fallback is a note.
/// SI.
/// </summary>
public sealed record JointSettings
{
    /// <summary>Nothing said.</summary>
    public static JointSettings Default { get; } = new();

    /// <summary>Young's modulus of concrete, Pa.</summary>
    public double? Modulus { get; init; }

    /// <summary>Poisson's ratio of concrete.</summary>
    public double? Poisson { get; init; }

    /// <summary>Cylinder strength of the weaker concrete, Pa.</summary>
    public double? Strength { get; init; }

    /// <summary>Modulus of rupture, Pa.</summary>
    public double? Rupture { get; init; }

    /// <summary>Modulus of foundation reaction k, Pa/m.</summary>
    public double? Reaction { get; init; }

    /// <summary>Thermal expansion of concrete, 1/K.</summary>
    public double? Expansion { get; init; }

    /// <summary>Drying shrinkage of new concrete, strain.</summary>
    public double? Shrinkage { get; init; }

    /// <summary>Drainage coefficient Cd.</summary>
    public double? Drainage { get; init; }

    /// <summary>Modulus of dowel support K, Pa/m.</summary>
    public double? DowelSupport { get; init; }

    /// <summary>Young's modulus of steel, Pa.</summary>
    public double? SteelModulus { get; init; }

    /// <summary>Coldest slab temperature of the year, °C.</summary>
    public double? Coldest { get; init; }

    /// <summary>Hottest slab temperature of the year, °C.</summary>
    public double? Hottest { get; init; }

    /// <summary>Years the joints are designed for.</summary>
    public double? DesignYears { get; init; }

    /// <summary>Axle classes in the design lane; empty: a common truck is assumed.</summary>
    public ImmutableArray<AxleClass> Axles { get; init; } = [];

    /// <summary>18-kip equivalent axles a day in the first year, design lane; axle classes are scaled to it where both are given.</summary>
    public double? EquivalentAxlesPerDay { get; init; }

    /// <summary>Equivalent axles of a truck.</summary>
    public double? TruckFactor { get; init; }

    /// <summary>Share of the direction's trucks in the design lane.</summary>
    public double? LaneShare { get; init; }

    /// <summary>Tyre pressure, Pa.</summary>
    public double? TyrePressure { get; init; }

    /// <summary>What anchors the bars.</summary>
    public BarAnchor? Anchor { get; init; }

    /// <summary>Drills of the gang drill.</summary>
    public int? GangDrills { get; init; }

    /// <summary>Spacing of its drills, m.</summary>
    public double? GangSpacing { get; init; }

    /// <summary>Bar diameters to be had, m; empty: the common sizes.</summary>
    public ImmutableArray<double> Diameters { get; init; } = [];

    /// <summary>Bar lengths to be had, m; empty: the common lengths.</summary>
    public ImmutableArray<double> Lengths { get; init; } = [];

    /// <summary>How the price of a dowel spreads over other sizes; null: <see cref="BarCostShares.Assumption"/>.</summary>
    public BarCostShares? Costs { get; init; }

    /// <summary>Distance from a lane edge at a curb to the back of the curb, m.</summary>
    public double? CurbWidth { get; init; }

    /// <summary>False keeps both ends of every repair dowelled even where the rule set lets one be tied.</summary>
    public bool TieOneEnd { get; init; } = true;

    /// <summary>Where no hole may be drilled.</summary>
    public ImmutableArray<DrillKeepOut> KeepOuts { get; init; } = [];
}
