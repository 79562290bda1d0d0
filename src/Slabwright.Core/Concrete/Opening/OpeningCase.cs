using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>What is not known beforehand. Standard deviations of normal distributions.</summary>
public sealed record OpeningSpread
{
    /// <summary>Nothing varies.</summary>
    public static OpeningSpread None { get; } = new() { Air = 0, Placing = 0, Strength = 0 };

    /// <summary>Air temperature against the forecast, K.</summary>
    public double Air { get; init; } = 2;

    /// <summary>Placing temperature against the one planned, K.</summary>
    public double Placing { get; init; } = 2;

    /// <summary>Strength of the mix on the night against the curve, share: batches, water, air.</summary>
    public double Strength { get; init; } = 0.08;

    /// <summary>Where the spread of the air comes from when it is not the project's own; null: the project says it.</summary>
    public Reason? Because { get; init; }
}

/// <summary>What a forecast is made for.</summary>
public sealed record OpeningCase
{
    /// <summary>Mix, hour and temperature of placing, thickness, cover and hours to compute.</summary>
    public required HeatCase Heat { get; init; }

    /// <summary>Strength over maturity.</summary>
    public required StrengthCurve Curve { get; init; }

    /// <summary>What must be reached.</summary>
    public required OpeningCriterion Criterion { get; init; }

    /// <summary>What varies.</summary>
    public OpeningSpread Spread { get; init; } = new();

    /// <summary>Strength of this lot over the curve; 1 before any specimen, moved by <c>NightUpdate</c>.</summary>
    public double StrengthFactor { get; init; } = 1;

    /// <summary>Hydration the temperatures are computed with; null: none, or not said.</summary>
    public HydrationCurve? Hydration { get; init; }

    /// <summary>Trials.</summary>
    public int Trials { get; init; } = 2000;

    /// <summary>Seed of the trials.</summary>
    public long Seed { get; init; } = 20260401;
}
