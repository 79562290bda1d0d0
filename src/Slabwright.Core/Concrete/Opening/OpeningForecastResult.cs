using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>Strength at one hour after placing.</summary>
/// <param name="Hours">Hours after placing.</param>
/// <param name="Temperature">Temperature at the governing place, °C.</param>
/// <param name="Maturity">Maturity there, on the scale of the curve.</param>
/// <param name="Strength">5 %, 50 % and 95 % of the trials, Pa.</param>
/// <param name="Chance">Chance that the criterion is met by now.</param>
/// <param name="Governs">The place that lags behind.</param>
public sealed record StrengthHour(
    double Hours, double Temperature, double Maturity, StrengthBand Strength, double Chance, SlabPlace Governs);

/// <summary>The opening time as a distribution.</summary>
public sealed record OpeningForecastResult
{
    /// <summary>What it was made for.</summary>
    public required OpeningCase Case { get; init; }

    /// <summary>Hours after placing at which each trial opens, rising; infinity for those that do not within the hours computed.</summary>
    public required ImmutableArray<double> Openings { get; init; }

    /// <summary>Earliest hours after placing with the confidence asked for; null when not within the hours computed.</summary>
    public required double? Earliest { get; init; }

    /// <summary>Strength over time.</summary>
    public required ImmutableArray<StrengthHour> Hours { get; init; }

    /// <summary>True when the opening lies before the first tested age of the curve: an extrapolation, and said so in <see cref="Findings"/>.</summary>
    public required bool BeforeFirstTested { get; init; }

    /// <summary>How the numbers came about.</summary>
    public required ImmutableArray<Reason> Reasons { get; init; }

    /// <summary>What speaks against relying on it.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Chance that the criterion is met by some hours after placing.</summary>
    public double ChanceBy(double hours)
    {
        var count = Openings.BinarySearch(hours, Comparer<double>.Create((a, b) => a <= b ? -1 : 1));
        return (double)~count / Openings.Length;
    }

    /// <summary>Hours after placing at which a share of the trials has opened; null when not within the hours computed.</summary>
    public double? HoursAt(double share)
    {
        var rank = Math.Clamp((int)Math.Ceiling(share * Openings.Length - 1e-9), 1, Openings.Length) - 1;
        return double.IsFinite(Openings[rank]) ? Openings[rank] : null;
    }
}
