using System.Collections.Immutable;
using Slabwright.Core.Numerics;

namespace Slabwright.Core.Concrete.Maturity;

/// <summary>Strength over pulse velocity, fitted to specimens of the mix: second evidence beside maturity.</summary>
/// <param name="Kind">Which strength.</param>
/// <param name="Factor">a of S = a exp(b v), Pa.</param>
/// <param name="Rate">b, s/m.</param>
/// <param name="LogResidual">Standard deviation of the logarithm of strength about the curve; NaN with two results.</param>
/// <param name="Count">Results.</param>
/// <param name="Least">Least velocity tested, m/s.</param>
/// <param name="Most">Greatest velocity tested, m/s.</param>
/// <param name="MeanVelocity">Mean of the velocities, m/s.</param>
/// <param name="Squares">Sum of squared deviations of the velocities, m²/s².</param>
public sealed record PulseVelocityCurve(
    StrengthKind Kind, double Factor, double Rate, double LogResidual, int Count, double Least, double Most, double MeanVelocity, double Squares)
{
    /// <summary>Strength at a velocity, Pa.</summary>
    /// <remarks>Common practice: the exponential form is fitted to each mix; no general constants hold.</remarks>
    /// <param name="velocity">m/s.</param>
    public double Strength(double velocity) => Factor * Math.Exp(Rate * velocity);

    /// <summary>True when a velocity lies outside those tested.</summary>
    public bool IsOutside(double velocity) => velocity < Least || velocity > Most;

    /// <summary>Two-sided band of a single result.</summary>
    /// <param name="velocity">m/s.</param> <param name="confidence">Chance of the band.</param>
    public StrengthBand Band(double velocity, double confidence)
    {
        var middle = Strength(velocity);
        if (Count < 3) return new(0, middle, double.PositiveInfinity);
        var distance = velocity - MeanVelocity;
        var deviation = LogResidual * Math.Sqrt(1 + 1.0 / Count + distance * distance / Squares);
        var factor = Math.Exp(StudentT.Quantile((1 + confidence) / 2, Count - 2) * deviation);
        return new(middle / factor, middle, middle * factor);
    }

    /// <summary>Fits the logarithm of strength by a straight line over velocity; null with fewer than two velocities.</summary>
    /// <param name="breaks">Specimens; those without a velocity are passed over.</param> <param name="kind">Which strength.</param>
    public static PulseVelocityCurve? Fit(IEnumerable<StrengthBreak> breaks, StrengthKind kind)
    {
        ImmutableArray<(double V, double Y)> points =
            [.. breaks.Where(b => b.Kind == kind && b.PulseVelocity is > 0 && b.Strength > 0).Select(b => (b.PulseVelocity!.Value, Math.Log(b.Strength)))];
        if (points.Select(p => p.V).Distinct().Count() < 2) return null;
        var (meanV, meanY) = (points.Average(p => p.V), points.Average(p => p.Y));
        var squares = points.Sum(p => (p.V - meanV) * (p.V - meanV));
        var rate = points.Sum(p => (p.V - meanV) * (p.Y - meanY)) / squares;
        var left = points.Sum(p => Math.Pow(p.Y - meanY - rate * (p.V - meanV), 2));
        var residual = points.Length > 2 ? Math.Sqrt(left / (points.Length - 2)) : double.NaN;
        return new(kind, Math.Exp(meanY - rate * meanV), rate, residual, points.Length, points.Min(p => p.V), points.Max(p => p.V), meanV, squares);
    }
}
