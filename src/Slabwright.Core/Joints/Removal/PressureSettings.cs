using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Joints.Removal;

/// <summary>Choices and inputs for slabs under pressure. SI; temperatures are mean temperatures of the slab.</summary>
public sealed record PressureSettings
{
    private const double Inch = 0.0254;
    private static readonly SourceRef Assumed = new("assumption", "to be confirmed by the project", SourceStatus.CommonPractice);
    private static readonly SourceRef Manual = new("UFC-3-270-04", "sec. 4.5", SourceStatus.Verified);

    /// <summary>Defaults.</summary>
    public static PressureSettings Default { get; } = new();

    /// <summary>Slab temperature at which the joints are closed and pressure begins, °C; null when not given.</summary>
    public double? ClosedAt { get; init; }

    /// <summary>Taken where the project gives none, °C: 77 °F.</summary>
    public Sourced<double> AssumedClosedAt { get; init; } = new(25, Assumed);

    /// <summary>Slab temperature by hour of the hottest working day; empty when not given.</summary>
    public ImmutableArray<HourTemperature> Hours { get; init; } = [];

    /// <summary>Where the hours come from, for print; empty where the project states them.</summary>
    public string HoursFrom { get; init; } = "";

    /// <summary>Taken where the project gives no hours, °C: 104 °F all day.</summary>
    public Sourced<double> AssumedTemperature { get; init; } = new(40, Assumed);

    /// <summary>First hour in which the crew saws, 0 to 23.</summary>
    public int SawFrom { get; init; }

    /// <summary>Last hour in which the crew saws, 0 to 23; may be before the first, past midnight.</summary>
    public int SawTo { get; init; } = 23;

    /// <summary>Young's modulus of the old concrete, Pa.</summary>
    public Sourced<double> Modulus { get; init; } = new(4e6 * 6894.757293168361, SourceRef.CommonPractice);

    /// <summary>Thermal expansion of the old concrete, 1/K.</summary>
    public Sourced<double> Expansion { get; init; } = new(9.9e-6, new SourceRef("NB-33", "typical value", SourceStatus.Verified));

    /// <summary>Density, kg/m³.</summary>
    public Sourced<double> Density { get; init; } = new(LiftCount.Density, SourceRef.CommonPractice);

    /// <summary>Friction between slab and base.</summary>
    public Sourced<double> Friction { get; init; } = new(1.5, new SourceRef("SEAINT-1998", "customary value", SourceStatus.Verified));

    /// <summary>Length that unloads into a cut on each side at most, m: the lane beside, still whole and tied, holds the rest.</summary>
    public Sourced<double> UnloadedLength { get; init; } = new(50 * 0.3048, Assumed);

    /// <summary>Kerf of the boundary saw, m.</summary>
    public Sourced<double> Kerf { get; init; } = new(3 * Inch / 16, Assumed);

    /// <summary>Thickness of the blade's core, m: the kerf may close down to it.</summary>
    public Sourced<double> BladeCore { get; init; } = new(9 * Inch / 64, Assumed);

    /// <summary>Kerf of the wheel saw, m: at least 1½ in.</summary>
    public Sourced<double> ReliefKerf { get; init; } = new(1.5 * Inch, Manual);

    /// <summary>Wheel-saw cut this far inside a boundary, m: 18 in.</summary>
    public Sourced<double> ReliefInset { get; init; } = new(18 * Inch, Manual);

    /// <summary>Never nearer to a boundary than this, m: 8 in, because of fine cracks along the wheel saw.</summary>
    public Sourced<double> LeastInset { get; init; } = new(8 * Inch, Manual);

    /// <summary>No deeper into the base than this, m: ½ in.</summary>
    public Sourced<double> BaseBite { get; init; } = new(0.5 * Inch, SourceRef.CommonPractice);
}
