using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Joints.Faulting;

/// <summary>
/// One published set of coefficients of the incremental faulting model. A set is valid only with the deflection and climate models it was
/// fitted with; with other deflections use it to rank alternatives, not to foretell faulting.
/// </summary>
/// <param name="Name">Printed name.</param>
/// <param name="C1">Factor of the greatest faulting.</param> <param name="C2">Its growth with freezing.</param>
/// <param name="C3">Factor of the monthly growth.</param> <param name="C4">Its growth with freezing.</param>
/// <param name="C5">Weight of erosion.</param> <param name="C6">Power of erosion.</param>
/// <param name="C7">Growth of the greatest faulting with energy.</param> <param name="C8">Damage of dowels.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record FaultingCoefficients(
    string Name, double C1, double C2, double C3, double C4, double C5, double C6, double C7, double C8, SourceRef Source)
{
    /// <summary>Report of NCHRP 1-37A, 2004.</summary>
    public static FaultingCoefficients Report2004 { get; } = new(
        "1-37A report, 2004", 1.29, 1.1, 0.001725, 0.0008, 250, 0.4, 1.2, 400, new SourceRef("NCHRP-1-37A", "part 3 ch. 4", SourceStatus.FromMemory));

    /// <summary>Manual of practice 2008; one print has 0.002848 for C3.</summary>
    public static FaultingCoefficients Manual2008 { get; } = new(
        "manual of practice, 2008", 1.0184, 0.91656, 0.0021848, 0.0008837, 250, 0.4, 1.83312, 400,
        new SourceRef("MEPDG-2008", "faulting; one print has C3 0.002848", SourceStatus.FromMemory));

    /// <summary>Recalibration used from 2015 on.</summary>
    public static FaultingCoefficients Recalibrated2015 { get; } = new(
        "recalibrated, 2015", 0.595, 1.636, 0.00217, 0.00444, 250, 0.47, 7.3, 400,
        new SourceRef("MEPDG-2015", "faulting", SourceStatus.FromMemory));

    /// <summary>The three sets, oldest first.</summary>
    public static ImmutableArray<FaultingCoefficients> All { get; } = [Report2004, Manual2008, Recalibrated2015];
}

/// <summary>What the faulting model asks about the place. SI.</summary>
public sealed record FaultingSite
{
    /// <summary>Erodibility of the base, 1 (extremely resistant) to 5 (very erodible).</summary>
    public required double Erodibility { get; init; }

    /// <summary>Share of the time the top of the base is frozen.</summary>
    public required double FrozenShare { get; init; }

    /// <summary>Share of the subgrade finer than the No. 200 sieve (0.075 mm).</summary>
    public required double FinesShare { get; init; }

    /// <summary>Days a year with more than 0.1 in (2.5 mm) of rain.</summary>
    public required double WetDays { get; init; }

    /// <summary>Weight of slab and base on the subgrade, Pa.</summary>
    public required double Overburden { get; init; }

    /// <summary>Greatest mean monthly upward deflection of the corner by curling and warping, m.</summary>
    public required double CornerLift { get; init; }
}
