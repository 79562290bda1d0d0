namespace Slabwright.Core.Numerics;

/// <summary>The standard normal distribution.</summary>
public static class Normal
{
    /// <summary>Probability of a value up to <paramref name="x"/>.</summary>
    /// <remarks>Source: Hart's rational approximation as given by West 2005 (from memory); checked against MathNet.Numerics.</remarks>
    public static double Cumulative(double x)
    {
        var z = Math.Abs(x);
        if (z > 37) return x > 0 ? 1 : 0;
        var tail = z < 7.07106781186547 ? Math.Exp(-z * z / 2) * Rational(z) : Math.Exp(-z * z / 2) / Fraction(z) / 2.506628274631;
        return x > 0 ? 1 - tail : tail;
    }

    /// <summary>The value not exceeded with a probability strictly between 0 and 1.</summary>
    /// <remarks>Source: Acklam's rational approximation (from memory) with one Halley step; checked against MathNet.Numerics.</remarks>
    public static double Quantile(double probability)
    {
        var x = Start(probability);
        var error = Cumulative(x) - probability;
        var step = error * Math.Sqrt(2 * Math.PI) * Math.Exp(x * x / 2);
        return x - step / (1 + x * step / 2);
    }

    private static double Rational(double z) =>
        Polynomial(z, [3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871, 221.213596169931, 220.206867912376])
        / Polynomial(z,
            [8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674, 637.333633378831, 793.826512519948, 440.413735824752]);

    private static double Fraction(double z) => z + 1 / (z + 2 / (z + 3 / (z + 4 / (z + 0.65))));

    private static double Start(double p)
    {
        const double Low = 0.02425;
        if (p < Low) return Tail(Math.Sqrt(-2 * Math.Log(p)));
        if (p > 1 - Low) return -Tail(Math.Sqrt(-2 * Math.Log(1 - p)));
        var q = p - 0.5;
        var r = q * q;
        return q * Polynomial(r,
                [-39.69683028665376, 220.9460984245205, -275.9285104469687, 138.3577518672690, -30.66479806614716, 2.506628277459239])
            / Polynomial(r, [-54.47609879822406, 161.5858368580409, -155.6989798598866, 66.80131188771972, -13.28068155288572, 1]);
    }

    private static double Tail(double q) =>
        Polynomial(q,
            [-7.784894002430293e-3, -0.3223964580411365, -2.400758277161838, -2.549732539343734, 4.374664141464968, 2.938163982698783])
        / Polynomial(q, [7.784695709041462e-3, 0.3224671290700398, 2.445134137142996, 3.754408661907416, 1]);

    private static double Polynomial(double x, ReadOnlySpan<double> coefficients)
    {
        var value = 0.0;
        foreach (var coefficient in coefficients) value = value * x + coefficient;
        return value;
    }
}
