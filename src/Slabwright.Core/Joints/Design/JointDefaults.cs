using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Design;

/// <summary>A value taken because the project gives none.</summary>
/// <param name="Field">Property of project.json that would set it, e.g. <c>joints.reaction</c>.</param>
/// <param name="Name">What it is.</param>
/// <param name="Value">Base unit.</param>
/// <param name="Units">Units it is printed in.</param>
/// <param name="Source">Where the value comes from.</param>
public sealed record JointDefault(string Field, string Name, double Value, UnitPair Units, SourceRef Source);

/// <summary>Values taken where the project is silent, each with its source. Most are common practice and meant to be replaced.</summary>
public static class JointDefaults
{
    private const double Inch = 0.0254;

    private static readonly UnitPair Stress = new(Units.Psi, Units.Megapascal);
    private static readonly UnitPair Reactions = new(Units.Pci, Units.MegapascalPerMetre);
    private static readonly UnitPair Plain = new(Units.One);
    private static readonly UnitPair Small = new(Units.Inch, Units.Millimetre);
    private static readonly UnitPair Warmth = new(Units.Fahrenheit, Units.Celsius);
    private static readonly SourceRef Lecture = new("DOWEL-LECTURE", "modulus of dowel support", SourceStatus.Verified);
    private static readonly SourceRef Huang = new("HUANG-2004", "ch. 4", SourceStatus.FromMemory);

    /// <summary>Young's modulus of concrete: 4,000,000 psi.</summary>
    public static JointDefault Modulus { get; } = Of("modulus", "modulus of concrete", Units.Psi.ToBase(4e6), Stress);

    /// <summary>Poisson's ratio: 0.15.</summary>
    public static JointDefault Poisson { get; } = Of("poisson", "Poisson's ratio of concrete", 0.15, Plain);

    /// <summary>Cylinder strength: 4,000 psi.</summary>
    public static JointDefault Strength { get; } = Of("strength", "strength of concrete", Units.Psi.ToBase(4000), Stress);

    /// <summary>Modulus of rupture: 650 psi.</summary>
    public static JointDefault Rupture { get; } = Of("rupture", "modulus of rupture", Units.Psi.ToBase(650), Stress);

    /// <summary>Thermal expansion: 5.5 millionths a degree Fahrenheit, as in the FHWA pavement notebook's example.</summary>
    public static JointDefault Expansion { get; } = Of("expansion", "thermal expansion of concrete", Units.PerFahrenheit.ToBase(5.5e-6),
        new(Units.PerFahrenheit, Units.PerKelvin), new("NB-33", "p. 3.3.7, example A", SourceStatus.Verified));

    /// <summary>Drying shrinkage: one in ten thousand, as in the same example.</summary>
    public static JointDefault Shrinkage { get; } =
        Of("shrinkage", "drying shrinkage", 1e-4, Plain, new("NB-33", "p. 3.3.7, example A", SourceStatus.Verified));

    /// <summary>Drainage coefficient: 1.</summary>
    public static JointDefault Drainage { get; } = Of("drainage", "drainage coefficient Cd", 1, Plain);

    /// <summary>Modulus of dowel support: 1,500,000 pci.</summary>
    public static JointDefault DowelSupport { get; } =
        Of("dowel_support", "modulus of dowel support", Units.Pci.ToBase(1.5e6), Reactions, Lecture);

    /// <summary>Young's modulus of steel: 29,000,000 psi.</summary>
    public static JointDefault SteelModulus { get; } = Of("steel_modulus", "modulus of steel", Units.Psi.ToBase(29e6), Stress, Huang);

    /// <summary>Years: 20.</summary>
    public static JointDefault DesignYears { get; } = Of("design_years", "design years", 20, Plain);

    /// <summary>Tyre pressure: 100 psi.</summary>
    public static JointDefault TyrePressure { get; } = Of("tyre_pressure", "tyre pressure", Units.Psi.ToBase(100), Stress);

    /// <summary>Hottest slab: 120 °F.</summary>
    public static JointDefault Hottest { get; } = Of("hottest", "hottest slab", Units.Fahrenheit.ToBase(120), Warmth);

    /// <summary>Width of a curb: 6 in.</summary>
    public static JointDefault CurbWidth { get; } = Of("curb_width", "lane edge to back of curb", 6 * Inch, Small);

    /// <summary>Drills of a gang drill: 4.</summary>
    public static JointDefault GangDrills { get; } = Of("gang_drills", "drills of the gang drill", 4, Plain);

    /// <summary>Spacing of its drills: 12 in.</summary>
    public static JointDefault GangSpacing { get; } = Of("gang_spacing", "spacing of the drills", 12 * Inch, Small);

    /// <summary>Share of the direction's trucks in the only lane: all.</summary>
    public static JointDefault LaneShare { get; } = Of("lane_share", "share of trucks in the lane", 1, Plain);

    /// <summary>Trucks a day in the lane where the project gives no traffic at all: 500.</summary>
    public static JointDefault TrucksPerDay { get; } = Of("axles", "trucks a day in the lane", 500, Plain);

    /// <summary>Diameters to be had: 1, 1¼, 1½, 1¾ in.</summary>
    public static ImmutableArray<double> Diameters { get; } = [Inch, 1.25 * Inch, 1.5 * Inch, 1.75 * Inch];

    /// <summary>Lengths to be had: 14, 16, 18 in.</summary>
    public static ImmutableArray<double> Lengths { get; } = [14 * Inch, 16 * Inch, 18 * Inch];

    /// <summary>Axle passes of a common truck: steering axle, singles at 20 kip, tandems empty and at 34 kip.</summary>
    /// <remarks>
    /// An assumption in the shape of a mixed highway stream at the US federal limits of 20 and 34 kip (23 CFR 658.17, from memory); about
    /// 1.8 equivalent axles on 10 in of concrete.
    /// </remarks>
    public static ImmutableArray<AxleClass> PerTruck { get; } =
    [
        new(1, Units.Kip.ToBase(12), 1), new(1, Units.Kip.ToBase(20), 0.15),
        new(2, Units.Kip.ToBase(20), 0.8), new(2, Units.Kip.ToBase(34), 0.65),
    ];

    /// <summary>k by what the slab rests on: subgrade 100, granular or permeable 150, asphalt treated 200, cement treated 250 pci.</summary>
    public static JointDefault Reaction(BaseKind kind) => Of("reaction", $"k, base {TradeWords.Of(kind)}", Units.Pci.ToBase(kind switch
    {
        BaseKind.Subgrade => 100,
        BaseKind.CementTreated => 250,
        BaseKind.AsphaltTreated => 200,
        _ => 150,
    }), Reactions);

    /// <summary>Coldest slab: 0 °F where slabs freeze and thaw, 25 °F elsewhere.</summary>
    public static JointDefault Coldest(Climate climate) =>
        Of("coldest", "coldest slab", Units.Fahrenheit.ToBase(climate.FreezeThaw ? 0 : 25), Warmth);

    private static JointDefault Of(string field, string name, double value, UnitPair units, SourceRef? source = null) =>
        new("joints." + field, name, value, units, source ?? SourceRef.CommonPractice);
}
