using Slabwright.Core.Concrete.Maturity;

namespace Slabwright.Tests.Reference;

/// <summary>Both maturity functions on worked histories, and published fits of strength over age.</summary>
public sealed class MaturityChecks : ICheckRows
{
    private const string ByHand = "worked independently from the equations of ASTM C1074 (from memory)";
    private const string Yeh = "I-C. Yeh, Cement and Concrete Research 28(12) 1998, open data (YEH-1998); fits worked independently";

    internal static readonly ConcreteTemperature[] History =
        [new(0, 26), new(1, 26.5), new(2, 28), new(3, 32), new(4, 38), new(5, 44), new(6, 48), new(8, 50), new(10, 48), new(12, 45)];

    private static readonly double[] Ages500 = [1, 3, 7, 14, 28, 90, 180, 270];
    private static readonly double[] Strengths500 = [12.64, 26.06, 33.21, 36.94, 44.09, 47.22, 51.04, 55.16];
    private static readonly double[] Ages525 = [3, 7, 14, 28, 90, 180, 270];
    private static readonly double[] Strengths525 = [33.80, 42.42, 48.40, 55.94, 58.78, 61.92, 67.11];

    public IEnumerable<CheckRow> Rows() => [.. Factors(), .. Ages(), .. Fits()];

    private static IEnumerable<CheckRow> Factors()
    {
        var sums = MaturityScale.Factor.Along(History);
        double[] printed = [36.25, 73.5, 113.5, 158.5, 209.5, 265.5, 383.5, 501.5, 614.5];
        for (var i = 0; i < printed.Length; i++)
            yield return Row("S1", ByHand, $"temperature–time factor from −10 °C after {History[i + 1].Hours} h", printed[i], sums[i + 1], "°C·h", 0.005);
        yield return Row("S1", ByHand, "the same from 0 °C after 12 h", 494.5, (MaturityScale.Factor with { Datum = 0 }).Of(History), "°C·h", 0.005);
        yield return Row("S1", ByHand, "hours to 300 °C·h", 6.58, MaturityScale.Factor.HoursTo(300, History)!.Value, "h", 0.006);
        yield return Row("S18", ByHand, "24 h at 73 °F, from −10 °C", 786.7, 24 * MaturityScale.Factor.Rate((73 - 32) / 1.8), "°C·h", 0.05);
        yield return Row("S18", ByHand, "hours to 100 °C·h at 20 °C", 3.33, 100 / MaturityScale.Factor.Rate(20), "h", 0.005);
    }

    private static IEnumerable<CheckRow> Ages()
    {
        var (at23, at20) = (MaturityScale.Age, MaturityScale.Age with { Reference = 20 });
        yield return Row("S1", ByHand, "equivalent age at 23 °C after 12 h, Q 5,000 K", 34.43, at23.Of(History), "h", 0.006);
        yield return Row("S1", ByHand, "equivalent age at 20 °C after 12 h, Q 5,000 K", 40.92, at20.Of(History), "h", 0.006);
        yield return Row("S1", ByHand, "equivalent age at 23 °C after 6 h", 11.885, at23.Of(History[..7]), "h", 0.0006);
        yield return Row("S1", ByHand, "equivalent age at 20 °C after 6 h", 14.126, at20.Of(History[..7]), "h", 0.0006);
        foreach (var (t, q20, q23) in new[] { (0, .2868, .2413), (10, .5475, .4606), (30, 1.7553, 1.4768), (40, 2.9723, 2.5006), (50, 4.8716, 4.0986), (60, 7.7513, 6.5214) })
        {
            yield return Row("S2", ByHand, $"age factor at {t} °C, Q 5,000 K, 20 °C", q20, at20.Rate(t), "", 0.00006);
            yield return Row("S2", ByHand, $"age factor at {t} °C, Q 5,000 K, 23 °C", q23, at23.Rate(t), "", 0.00006);
        }

        yield return Row("S2", ByHand, "age factor at 60 °C, 40 kJ/mol, 23 °C", 6.0749, (at23 with { ActivationEnergy = 40_000 }).Rate(60), "", 0.001);
    }

    private static IEnumerable<CheckRow> Fits()
    {
        var all = Fit(StrengthForm.Hyperbolic, Ages500, Strengths500);
        yield return Row("S5", Yeh, "500/200, hyperbolic, end strength", 51.29, all.Parameters[0] / 1e6, "MPa", 0.006);
        yield return Row("S5", Yeh, "500/200, hyperbolic, k", 0.2783, all.Parameters[1], "1/d", 0.0001);
        yield return Row("S5", Yeh, "500/200, hyperbolic, root mean square", 2.56, RootMeanSquare(all), "MPa", 0.006);
        var exponential = Fit(StrengthForm.Exponential, Ages500, Strengths500);
        yield return Row("S5", Yeh, "500/200, exponential, end strength", 59.49, exponential.Parameters[0] / 1e6, "MPa", 0.02);
        yield return Row("S5", Yeh, "500/200, exponential, τ", 2.298, exponential.Parameters[1], "d", 0.002);
        yield return Row("S5", Yeh, "500/200, exponential, a", 0.4545, exponential.Parameters[2], "", 0.0003);
        yield return Row("S5", Yeh, "500/200, exponential, root mean square", 1.42, RootMeanSquare(exponential), "MPa", 0.006);
        var straight = Fit(StrengthForm.Logarithmic, Ages500, Strengths500);
        yield return Row("S5", Yeh, "500/200, logarithmic, a", 17.16, straight.Parameters[0] / 1e6, "MPa", 0.006);
        yield return Row("S5", Yeh, "500/200, logarithmic, b", 16.02, straight.Parameters[1] / 1e6, "MPa", 0.006);
        var young = Fit(StrengthForm.Hyperbolic, Ages500[..5], Strengths500[..5]);
        yield return Row("S5", Yeh, "500/200 up to 28 d, hyperbolic, end strength", 46.25, young.Parameters[0] / 1e6, "MPa", 0.006);
        yield return Row("S5", Yeh, "500/200 up to 28 d, hyperbolic, k", 0.3866, young.Parameters[1], "1/d", 0.0001);
        var rich = Fit(StrengthForm.Hyperbolic, Ages525, Strengths525);
        yield return Row("S6", Yeh, "525/189, hyperbolic, end strength", 63.13, rich.Parameters[0] / 1e6, "MPa", 0.006);
        yield return Row("S6", Yeh, "525/189, hyperbolic, k", 0.3154, rich.Parameters[1], "1/d", 0.0001);
        var richer = Fit(StrengthForm.Exponential, Ages525, Strengths525);
        yield return Row("S6", Yeh, "525/189, exponential, τ", 1.597, richer.Parameters[1], "d", 0.002);
        yield return Row("S7", Yeh, "480/192, hyperbolic, end strength", 53.97, Fit(StrengthForm.Hyperbolic, [3, 7, 28, 90], [24.40, 34.57, 43.94, 54.32]).Parameters[0] / 1e6, "MPa", 0.006);
        yield return Row("S7", Yeh, "393/192, hyperbolic, k", 0.1847, Fit(StrengthForm.Hyperbolic, [3, 7, 28, 90], [19.20, 27.74, 39.60, 48.85]).Parameters[1], "1/d", 0.0001);
    }

    private static StrengthCurve Fit(StrengthForm form, double[] ages, double[] strengths) => StrengthCurveFit.Fit(
        form, StrengthKind.Compressive, MaturityScale.Age, [.. ages.Zip(strengths, (a, s) => new MaturityStrength(a, s * 1e6))])!;

    private static double RootMeanSquare(StrengthCurve curve) => curve.Residual / 1e6 * Math.Sqrt((double)curve.Freedom / curve.Count);

    private static CheckRow Row(string item, string source, string what, double published, double ours, string unit, double tolerance) =>
        new(item is "S5" or "S6" or "S7" ? "C2 Strength over age" : "C1 Maturity", item, source, what, published, ours, unit, tolerance);
}
