using System.Collections.Immutable;

namespace Slabwright.Core.Survey;

/// <summary>Growth of one distress type: how fast damage lengthens along the road and how many new ones appear.</summary>
/// <param name="Type">Distress type, or null for all types not named.</param>
/// <param name="LengthPerYearLow">Low growth at each end, m a year.</param>
/// <param name="LengthPerYearLikely">Likely growth at each end, m a year.</param>
/// <param name="LengthPerYearHigh">High growth at each end, m a year.</param>
/// <param name="NewPerYear">New distresses a year as a share of those surveyed.</param>
public sealed record GrowthRate(
    DistressType? Type, double LengthPerYearLow, double LengthPerYearLikely, double LengthPerYearHigh, double NewPerYear);

/// <summary>Growth between survey and work, by distress type. Shown as a range, never hidden in a single number.</summary>
/// <param name="Rates">Rates by type; a row with a null type is the default.</param>
public sealed record GrowthModel(ImmutableArray<GrowthRate> Rates)
{
    /// <summary>No growth.</summary>
    public static GrowthModel None { get; } = new([]);

    /// <summary>The rate of a type, or null when it does not grow.</summary>
    public GrowthRate? RateOf(DistressType type) =>
        Rates.FirstOrDefault(r => r.Type == type) ?? Rates.FirstOrDefault(r => r.Type is null);
}
