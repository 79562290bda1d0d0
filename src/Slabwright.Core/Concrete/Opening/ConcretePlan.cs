using System.Collections.Immutable;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Night;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>One mix on one night.</summary>
public sealed record MixNight
{
    /// <summary>The mix.</summary>
    public required ConcreteMix Mix { get; init; }

    /// <summary>The night.</summary>
    public required WorkNight Night { get; init; }

    /// <summary>The forecast; null when the mix has no curve or the weather does not reach over the night: the findings say which.</summary>
    public required OpeningForecastResult? Forecast { get; init; }

    /// <summary>Earliest clock time of opening with the confidence asked for; null when not within the hours computed.</summary>
    public required DateTime? OpensAt { get; init; }

    /// <summary>Chance that it opens by the deadline, 0 to 1.</summary>
    public required double? ChanceByDeadline { get; init; }

    /// <summary>Latest clock time of placing that still opens by the deadline with the confidence asked for; null when none does.</summary>
    public required DateTime? LastPlacing { get; init; }

    /// <summary>Cost of a cubic metre in the project's currency; null when no price is known.</summary>
    public required decimal? CostPerCubicMetre { get; init; }

    /// <summary>Median hours to opening by the other maturity function; null when not to be had. The two differ most when concrete is hot.</summary>
    public double? MedianByOtherLaw { get; init; }

    /// <summary>Evaporation from the fresh surface while it is placed and what it calls for; null without weather.</summary>
    public EvaporationCall? Evaporation { get; init; }

    /// <summary>When a joint inside the repair can be sawn, hours after placing; null without a forecast.</summary>
    public SawWindow? SawWindow { get; init; }

    /// <summary>Fatigue that traffic uses from opening to the end of the forecast; null without traffic or opening.</summary>
    public EarlyTrafficResult? EarlyTraffic { get; init; }

    /// <summary>What speaks against relying on it.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }
}

/// <summary>What the look at concrete hands on.</summary>
public sealed record ConcretePlan
{
    /// <summary>Nothing looked at.</summary>
    public static ConcretePlan Empty { get; } = new() { MixNights = [], Curves = [], Findings = [] };

    /// <summary>Every mix on every night, nights first.</summary>
    public required ImmutableArray<MixNight> MixNights { get; init; }

    /// <summary>Strength curve of each mix that has one, by mix.</summary>
    public required ImmutableArray<MixCurve> Curves { get; init; }

    /// <summary>Nights worked: what their readings and specimens say.</summary>
    public ImmutableArray<NightResult> Nights { get; init; } = [];

    /// <summary>Check specimens against the curve, by mix; mixes without check specimens are not in it.</summary>
    public ImmutableSortedDictionary<string, CurveValidationResult> Validations { get; init; } = ImmutableSortedDictionary<string, CurveValidationResult>.Empty;

    /// <summary>Strength over pulse velocity, by mix, in the kind of its strength curve; mixes without velocities are not in it.</summary>
    public ImmutableSortedDictionary<string, PulseVelocityCurve> PulseCurves { get; init; } = ImmutableSortedDictionary<string, PulseVelocityCurve>.Empty;

    /// <summary>Hydration of each mix the temperatures were computed with, by mix; special rapid cements without measured heat are not in it.</summary>
    public ImmutableSortedDictionary<string, HydrationCurve> Hydration { get; init; } = ImmutableSortedDictionary<string, HydrationCurve>.Empty;

    /// <summary>Slab thickness the nights were computed for, m.</summary>
    public double Thickness { get; init; }

    /// <summary>What was wrong or is missing.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Said on every page that carries an opening time.</summary>
    public static ImmutableArray<string> Cautions { get; } =
    [
        "Wet concrete is caustic and burns skin and eyes: wear gloves, boots and eye protection, wash at once.",
        "Traffic on weak concrete can break a slab and hurt people. A forecast does not open a lane: the evidence of the night does.",
        "Accelerators set fast in heat: try the dose on a trial batch at the temperature of the night, and have retarder at hand.",
        "Local specifications and the engineer in charge decide.",
    ];
}
