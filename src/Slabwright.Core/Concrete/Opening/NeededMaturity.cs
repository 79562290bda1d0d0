using Slabwright.Core.Concrete.Maturity;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>
/// Strength of a trial and the maturity it needs. One standard normal number z stands for curve, results about it, conversion and lot
/// together: strength at maturity M is f S(M) max(0, 1 + z d(M)/S(M)), d the deviation of all four.
/// </summary>
internal sealed class NeededMaturity
{
    private const double Least = -4.5;
    private const double Step = 0.05;

    private readonly double[] _logs;

    /// <summary>Works out the maturity needed over z; straight between the steps.</summary>
    public NeededMaturity(OpeningCase question, double lotDeviation)
    {
        _logs = new double[(int)Math.Round(-2 * Least / Step) + 1];
        for (var i = 0; i < _logs.Length; i++) _logs[i] = Math.Log(Find(question, lotDeviation, Least + i * Step));

        // More strength never needs more maturity.
        for (var i = 1; i < _logs.Length; i++) _logs[i] = Math.Min(_logs[i], _logs[i - 1]);
    }

    /// <summary>Maturity needed at a draw; infinity when never enough.</summary>
    public double At(double z)
    {
        var place = Math.Clamp((z - Least) / Step, 0, _logs.Length - 1.000001);
        var (index, share) = ((int)place, place - (int)place);
        var (a, b) = (_logs[index], _logs[index + 1]);
        if (share == 0) return Math.Exp(a);
        return double.IsPositiveInfinity(a) || double.IsPositiveInfinity(b) ? double.PositiveInfinity : Math.Exp(a + share * (b - a));
    }

    /// <summary>Strength of a trial at a maturity, Pa.</summary>
    /// <param name="question">The case.</param> <param name="lotDeviation">Standard deviation of the lot, share.</param>
    /// <param name="maturity">Maturity.</param> <param name="z">Standard normal draw.</param>
    public static double Strength(OpeningCase question, double lotDeviation, double maturity, double z)
    {
        var middle = question.Curve.Strength(maturity);
        if (middle <= 0) return 0;
        var (own, lot) = (Share(question.Curve, maturity, middle), lotDeviation);
        return question.StrengthFactor * middle * Math.Max(0, 1 + z * Math.Sqrt(own * own + lot * lot));
    }

    /// <summary>
    /// Deviation of curve, scatter and conversion as a share of strength, no more than 0.6: before the youngest specimens the formula of
    /// the fit would let the error outgrow the strength itself.
    /// </summary>
    private static double Share(StrengthCurve curve, double maturity, double strength)
    {
        var linear = curve.Deviation(maturity) / strength;
        return Math.Min(0.6, linear);
    }

    private static double Find(OpeningCase question, double lotDeviation, double z)
    {
        var wanted = question.Criterion.Strength;
        var middle = question.Curve.MaturityFor(wanted / question.StrengthFactor);
        var high = double.IsFinite(middle) ? Math.Max(middle, 1e-6) : 1;
        for (var tries = 0; Strength(question, lotDeviation, high, z) < wanted; tries++)
        {
            high *= 1.5;
            if (tries > 60) return double.PositiveInfinity;
        }

        var low = 0.0;
        for (var i = 0; i < 60 && high - low > 1e-10 * high; i++)
        {
            var half = (low + high) / 2;
            if (Strength(question, lotDeviation, half, z) >= wanted) high = half;
            else low = half;
        }

        return high;
    }
}
