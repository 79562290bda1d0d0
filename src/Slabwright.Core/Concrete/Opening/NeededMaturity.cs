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

    private const double GridStep = 0.02;
    private const int GridBelow = 150;
    private const int GridCount = 600;

    private readonly double[] _logs;

    /// <summary>Works out the maturity needed over z from strength and deviation on a grid of maturities; straight between the steps.</summary>
    public NeededMaturity(OpeningCase question, double lotDeviation)
    {
        var wanted = question.Criterion.Strength / question.StrengthFactor;
        var middle = question.Curve.MaturityFor(wanted);
        var start = Math.Log(double.IsFinite(middle) ? Math.Max(middle, 1e-6) : 1) - GridBelow * GridStep;
        var (strengths, spreads) = (new double[GridCount], new double[GridCount]);
        for (var k = 0; k < GridCount; k++) (strengths[k], spreads[k]) = Spread(question.Curve, lotDeviation, Math.Exp(start + k * GridStep));
        _logs = new double[(int)Math.Round(-2 * Least / Step) + 1];
        for (var i = 0; i < _logs.Length; i++) _logs[i] = Find(strengths, spreads, wanted, Least + i * Step, start);

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
        var (strength, spread) = Spread(question.Curve, lotDeviation, maturity);
        return question.StrengthFactor * strength * Math.Max(0, 1 + z * spread);
    }

    /// <summary>
    /// Strength of the curve and deviation of curve, scatter, conversion and lot as a share of it. That of the curve counts no more than 0.6: before the youngest
    /// specimens the formula of the fit would let the error outgrow the strength itself.
    /// </summary>
    public static (double Strength, double Spread) Spread(StrengthCurve curve, double lotDeviation, double maturity)
    {
        var strength = curve.Strength(maturity);
        if (strength <= 0) return (0, 0);
        var own = Math.Min(0.6, curve.Deviation(maturity) / strength);
        return (strength, Math.Sqrt(own * own + lotDeviation * lotDeviation));
    }

    private static double Find(double[] strengths, double[] spreads, double wanted, double z, double start)
    {
        var before = 0.0;
        for (var k = 0; k < strengths.Length; k++)
        {
            var here = strengths[k] * Math.Max(0, 1 + z * spreads[k]);
            if (here >= wanted) return k == 0 ? start : start + (k - 1 + (wanted - before) / (here - before)) * GridStep;
            before = here;
        }

        return double.PositiveInfinity;
    }
}
