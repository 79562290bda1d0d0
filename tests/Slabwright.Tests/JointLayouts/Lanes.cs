using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;

namespace Slabwright.Tests.JointLayouts;

/// <summary>Joints to design: a common highway lane, changed where a test needs it.</summary>
internal static class Lanes
{
    public const double Inch = 0.0254;
    public const double Foot = 0.3048;
    public const decimal Price = 20;

    public static JointLimits Limits => PublishedRuleSets.CommonPractice.Joints;

    public static JointConditions Highway { get; } = new()
    {
        Thickness = 10 * Inch,
        LaneWidth = 12 * Foot,
        OldSlab = 20 * Foot,
        Repair = 6 * Foot,
        Modulus = Units.Psi.ToBase(4e6),
        Poisson = 0.15,
        Strength = Units.Psi.ToBase(4000),
        Rupture = Units.Psi.ToBase(650),
        Reaction = Units.Pci.ToBase(150),
        Expansion = Units.PerFahrenheit.ToBase(5.5e-6),
        Base = BaseKind.Granular,
        Drainage = 1,
        Climate = new Climate(true, 300, 0.9),
        Temperatures = (-18, 49),
        DowelSupport = Units.Pci.ToBase(1.5e6),
        SteelModulus = Units.Psi.ToBase(29e6),
        JointWidth = 0.0015,
        OuterEdge = LaneEdge.AsphaltShoulder,
        Traffic = [new(1, Units.Kip.ToBase(12), 700), new(1, Units.Kip.ToBase(20), 105), new(2, Units.Kip.ToBase(34), 455)],
        EquivalentAxlesPerDay = 1300,
        Growth = 0.02,
        DesignYears = 20,
        TrucksPerDay = 700,
        BuildUp = "10 in",
    };

    public static LaneJointDesign Design(params JointConditions[] buildUps) => JointDesigner.Design(buildUps, Limits, null, Price);

    /// <summary>A row of dowels over a 12 ft lane.</summary>
    public static BarLayout Row(params double[] inches) => new()
    {
        Kind = BarKind.Dowel,
        Arrangement = BarArrangement.FullWidth,
        Diameter = 1.5 * Inch,
        Length = 18 * Inch,
        Embedment = 9 * Inch,
        Depth = 5 * Inch,
        Offsets = [.. inches.Select(i => i * Inch)],
        Spacing = 12 * Inch,
    };

    public static Sourced<T> Of<T>(T value) => new(value, SourceRef.Project);
}
