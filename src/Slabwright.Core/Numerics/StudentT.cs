namespace Slabwright.Core.Numerics;

/// <summary>Student's distribution, for bands from few results.</summary>
public static class StudentT
{
    /// <summary>Probability of a value up to <paramref name="t"/>.</summary>
    /// <remarks>Source: regularised incomplete beta function by Lentz's continued fraction; checked against MathNet.Numerics.</remarks>
    /// <param name="t">The value.</param> <param name="freedom">Degrees of freedom, above 0.</param>
    public static double Cumulative(double t, double freedom)
    {
        var tail = 0.5 * IncompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5);
        return t > 0 ? 1 - tail : tail;
    }

    /// <summary>The value not exceeded with a probability strictly between 0 and 1, by bisection to 1e-12.</summary>
    /// <param name="probability">The probability.</param> <param name="freedom">Degrees of freedom, above 0.</param>
    public static double Quantile(double probability, double freedom)
    {
        if (probability < 0.5) return -Quantile(1 - probability, freedom);
        var (low, high) = (0.0, 1.0);
        while (Cumulative(high, freedom) < probability && high < 1e12) (low, high) = (high, high * 2);
        while (high - low > 1e-12 * Math.Max(1, high))
        {
            var middle = (low + high) / 2;
            if (middle == low || middle == high) break;
            if (Cumulative(middle, freedom) < probability) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    private static double IncompleteBeta(double x, double a, double b)
    {
        if (x <= 0) return 0;
        if (x >= 1) return 1;
        var front = Math.Exp(LogGamma(a + b) - LogGamma(a) - LogGamma(b) + a * Math.Log(x) + b * Math.Log(1 - x));
        return x < (a + 1) / (a + b + 2) ? front * Fraction(x, a, b) / a : 1 - front * Fraction(1 - x, b, a) / b;
    }

    private static double Fraction(double x, double a, double b)
    {
        const double Tiny = 1e-300;
        var c = 1.0;
        var d = 1 / Away(1 - (a + b) * x / (a + 1));
        var h = d;
        for (var m = 1; m <= 500; m++)
        {
            var even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            d = 1 / Away(1 + even * d);
            c = Away(1 + even / c);
            h *= d * c;
            var odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = 1 / Away(1 + odd * d);
            c = Away(1 + odd / c);
            var step = d * c;
            h *= step;
            if (Math.Abs(step - 1) < 1e-15) break;
        }

        return h;

        static double Away(double value) => Math.Abs(value) < Tiny ? Tiny : value;
    }

    /// <summary>Natural logarithm of the gamma function, by Stirling's series after raising the argument above 10.</summary>
    private static double LogGamma(double x)
    {
        var shift = 0.0;
        while (x < 10) shift -= Math.Log(x++);
        var y = 1 / (x * x);
        var series = (1.0 / 12 - y * (1.0 / 360 - y * (1.0 / 1260 - y * (1.0 / 1680 - y / 1188)))) / x;
        return shift + (x - 0.5) * Math.Log(x) - x + 0.5 * Math.Log(2 * Math.PI) + series;
    }
}
