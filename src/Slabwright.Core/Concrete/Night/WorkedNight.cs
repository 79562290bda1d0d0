using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Night;

/// <summary>A night that was worked: readings of one placement and the specimens kept with it.</summary>
/// <param name="Day">Day on which the night began.</param>
/// <param name="Readings">Readings as they came, clock times of the project.</param>
/// <param name="Specimens">Specimens of the night.</param>
public sealed record WorkedNight(DateOnly Day, NightReadings Readings, ImmutableArray<StrengthBreak> Specimens);

/// <summary>What the readings of a night say.</summary>
public sealed record NightResult
{
    /// <summary>The night.</summary>
    public required WorkNight Night { get; init; }

    /// <summary>Mix placed.</summary>
    public required ConcreteMix Mix { get; init; }

    /// <summary>Readings as they came and specimens.</summary>
    public required WorkedNight Worked { get; init; }

    /// <summary>The readings checked: probes that are trusted and those that are not.</summary>
    public required CheckedReadings Checked { get; init; }

    /// <summary>Forecast before and after the readings; null when the night cannot be forecast.</summary>
    public required NightForecast? Forecast { get; init; }

    /// <summary>Clock time of opening by the forecast before the readings, with the confidence asked for.</summary>
    public DateTime? PriorOpensAt { get; init; }

    /// <summary>Clock time of opening with the readings, with the confidence asked for.</summary>
    public DateTime? OpensAt { get; init; }

    /// <summary>What the probes, the readings carried to the place that lags behind, and the specimens show, for the decision.</summary>
    public ImmutableArray<StrengthEvidence> Evidence { get; init; } = [];

    /// <summary>Specimens of the night against the curve.</summary>
    public CurveValidationResult? Validation { get; init; }

    /// <summary>What speaks against relying on it.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }
}
