namespace Slabwright.Core.Numerics;

/// <summary>The triangular distribution from low over likely to high; a single value where all three agree.</summary>
/// <param name="Low">Least value.</param> <param name="Likely">Most likely value.</param> <param name="High">Greatest value.</param>
public readonly record struct Triangular(double Low, double Likely, double High)
{
    /// <summary>True when low ≤ likely ≤ high and all are finite.</summary>
    public bool IsSound => Low <= Likely && Likely <= High && double.IsFinite(Low) && double.IsFinite(High);

    /// <summary>Mean of the three.</summary>
    public double Mean => (Low + Likely + High) / 3;

    /// <summary>The value not exceeded with a probability; the inverse of the cumulative distribution.</summary>
    /// <param name="probability">0 to 1.</param>
    public double Quantile(double probability)
    {
        var range = High - Low;
        if (range <= 0) return Likely;
        var rising = Likely - Low;
        return probability * range < rising
            ? Low + Math.Sqrt(probability * range * rising)
            : High - Math.Sqrt((1 - probability) * range * (High - Likely));
    }
}
