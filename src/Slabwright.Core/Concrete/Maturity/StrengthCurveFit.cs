using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Numerics;

namespace Slabwright.Core.Concrete.Maturity;

/// <summary>A strength at a maturity.</summary>
/// <param name="Maturity">Maturity on the scale of the curve.</param> <param name="Strength">Strength, Pa.</param>
public readonly record struct MaturityStrength(double Maturity, double Strength);

/// <summary>Fits strength over maturity to breaks, strengths themselves and not their inverses.</summary>
/// <remarks>The straight line through 1/S weights the weakest specimen most and gives other constants; it is only the first guess here.</remarks>
public static class StrengthCurveFit
{
    private const double Mega = 1e6;

    /// <summary>Fits one form; null with fewer results at different maturities than constants, or where no fit settles.</summary>
    /// <param name="form">Form.</param> <param name="kind">Which strength.</param> <param name="scale">Maturity of the points.</param>
    /// <param name="points">Results.</param>
    public static StrengthCurve? Fit(StrengthForm form, StrengthKind kind, MaturityScale scale, IReadOnlyList<MaturityStrength> points)
    {
        var sound = points.Where(p => p.Maturity > 0 && p.Strength > 0).OrderBy(p => p.Maturity).ToArray();
        var count = StrengthForms.ParameterCount(form);
        if (sound.Select(p => p.Maturity).Distinct().Count() < count) return null;
        var fit = LeastSquares.Fit(
            (q, i) => StrengthForms.Value(form, Constants(form, q), sound[i].Maturity), [.. sound.Select(p => p.Strength / Mega)], Start(form, sound));
        var constants = Constants(form, fit.Parameters);
        if (!fit.Settled || constants.Any(c => !double.IsFinite(c))) return null;
        var freedom = sound.Length - count;
        var variance = freedom > 0 ? fit.SumOfSquares / freedom : 0;
        return new StrengthCurve
        {
            Kind = kind,
            Form = form,
            Scale = scale,
            Parameters = [.. constants.Select((c, j) => IsStrength(form, j) ? c * Mega : c)],
            Covariance = freedom > 0 ? Covariance(form, fit.Covariance, count, variance) : [],
            Residual = Math.Sqrt(variance) * Mega,
            MeanTested = sound.Average(p => p.Strength),
            Count = sound.Length,
            FirstTested = sound[0].Maturity,
            LastTested = sound[^1].Maturity,
            Origin = CurveOrigin.Measured,
            Sentence = string.Create(CultureInfo.InvariantCulture, $"{Words(form)} curve by least squares through {sound.Length} results"),
        };
    }

    /// <summary>The form with the least scatter about it for the constants it takes; null when no form can be fitted.</summary>
    /// <remarks>Akaike's criterion with the correction for few results (from memory); of equal forms the one with fewer constants.</remarks>
    public static StrengthCurve? Best(StrengthKind kind, MaturityScale scale, IReadOnlyList<MaturityStrength> points) =>
        Enum.GetValues<StrengthForm>()
            .Where(f => f != StrengthForm.Logarithmic)
            .Select(f => Fit(f, kind, scale, points))
            .OfType<StrengthCurve>()
            .Where(c => c.Form == StrengthForm.Hyperbolic || c.Freedom >= 2)
            .MinBy(Criterion);

    private static double Criterion(StrengthCurve curve)
    {
        var (n, k) = (curve.Count, curve.Parameters.Length + 1);
        if (curve.Freedom <= 0) return double.MaxValue;
        var sum = Math.Max(curve.Residual / Mega, 1e-6) * Math.Max(curve.Residual / Mega, 1e-6) * curve.Freedom;
        var few = n - k - 1 > 0 ? 2.0 * k * (k + 1) / (n - k - 1) : 1000.0 * k;
        return n * Math.Log(sum / n) + 2 * k + few;
    }

    /// <summary>Name of a form in words.</summary>
    public static string Words(StrengthForm form) => form switch
    {
        StrengthForm.Hyperbolic => "hyperbolic",
        StrengthForm.HyperbolicFromSet => "hyperbolic, from set on,",
        StrengthForm.Exponential => "exponential",
        _ => "logarithmic",
    };

    private static double[] Constants(StrengthForm form, double[] fitted) =>
        [.. fitted.Select((q, j) => StrengthForms.IsLogarithm(form, j) ? Math.Exp(q) : q)];

    private static bool IsStrength(StrengthForm form, int constant) => constant == 0 || form == StrengthForm.Logarithmic;

    /// <summary>Covariance in Pa where a constant that is no logarithm is a strength.</summary>
    private static ImmutableArray<double> Covariance(StrengthForm form, double[] unit, int count, double variance)
    {
        if (unit.Length == 0) return [];
        var scaled = new double[unit.Length];
        for (var j = 0; j < count; j++)
            for (var k = 0; k < count; k++) scaled[j * count + k] = unit[j * count + k] * variance * Factor(j) * Factor(k);
        return [.. scaled];

        double Factor(int j) => form == StrengthForm.Logarithmic ? Mega : 1;
    }

    private static double[] Start(StrengthForm form, MaturityStrength[] points)
    {
        var most = points.Max(p => p.Strength) / Mega;
        var half = points.MinBy(p => Math.Abs(p.Strength / Mega - most / 2)).Maturity;
        return form switch
        {
            StrengthForm.Hyperbolic => [Math.Log(1.2 * most), Math.Log(1 / half)],
            StrengthForm.HyperbolicFromSet => [Math.Log(1.2 * most), Math.Log(1 / half), 0.3 * points[0].Maturity],
            StrengthForm.Exponential => [Math.Log(1.3 * most), Math.Log(half), Math.Log(0.6)],
            _ => [0, most / Math.Log10(Math.Max(10, points[^1].Maturity))],
        };
    }
}
