namespace Slabwright.Core.Numerics;

/// <summary>Quantiles of samples and of counts.</summary>
public static class Samples
{
    /// <summary>
    /// The least value of a sorted sample that at least the given share of the sample does not exceed (nearest rank, no interpolation).
    /// </summary>
    /// <remarks>Definition 1 of Hyndman and Fan, The American Statistician 50(4), 1996; MathNet calls it R1.</remarks>
    /// <param name="sorted">Sample, ascending, not empty.</param> <param name="share">0 to 1.</param>
    public static T Quantile<T>(IReadOnlyList<T> sorted, double share)
    {
        var rank = (int)Math.Ceiling(share * sorted.Count - 1e-9);
        return sorted[Math.Clamp(rank, 1, sorted.Count) - 1];
    }

    /// <summary>
    /// The count not exceeded with a probability when events happen independently at a mean number: the Poisson quantile; above a mean
    /// of 500 by the normal distribution.
    /// </summary>
    /// <param name="mean">Mean number, 0 or more.</param> <param name="probability">Strictly between 0 and 1.</param>
    public static int PoissonQuantile(double mean, double probability)
    {
        if (mean <= 0) return 0;
        if (mean > 500) return (int)Math.Max(0, Math.Round(mean + Math.Sqrt(mean) * Normal.Quantile(probability)));
        var term = Math.Exp(-mean);
        var sum = term;
        var count = 0;
        while (sum < probability && term > 0)
        {
            count++;
            term *= mean / count;
            sum += term;
        }

        return count;
    }

    /// <summary>
    /// Ties a draw of one's own to a draw common to all: both are probabilities, and so is the result, which is uniform too. A weight of
    /// 0 gives the own draw, 1 the common one.
    /// </summary>
    /// <remarks>One-factor Gaussian copula; the correlation between two results is the weight.</remarks>
    public static double Tied(double own, double common, double weight) =>
        Normal.Cumulative(Math.Sqrt(weight) * Normal.Quantile(common) + Math.Sqrt(1 - weight) * Normal.Quantile(own));
}
