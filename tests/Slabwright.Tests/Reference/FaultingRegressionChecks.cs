using Slabwright.Core.Joints;
using Slabwright.Core.Joints.Faulting;
using static Slabwright.Tests.Reference.US;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Closed regressions of faulting (coefficients from memory) at one set of inputs, worked independently: 10 million axles, Cd 1, 15 ft,
/// 500 °F·days, 30 in a year, unstabilised base, 20 years, k 200 pci. Two regressions of different origin meeting at a bearing of 2500 psi
/// supports the remembered coefficients.
/// </summary>
public sealed class FaultingRegressionChecks : ICheckRows
{
    private const string Aashto = "AASHTO Supplement 1998 (from memory); worked independently";
    private const string Study = "FHWA-RD-89-136, 1990 (from memory); worked independently";
    private const string Early = "Report P-020, 1994 (from memory); worked independently";

    public IEnumerable<CheckRow> Rows()
    {
        foreach (var (psi, aashto, study) in new[] { (1500.0, 0.0509, -0.0009), (2500, 0.0771, 0.0771), (4000, 0.1408, 0.1684) })
        {
            var x = At(psi);
            yield return Row(Aashto, $"dowelled, bearing {psi} psi", aashto, FaultingRegression.Aashto1998Dowelled(x));
            yield return Row(
                Study, $"dowelled, bearing {psi} psi", study, FaultingRegression.PerformanceStudy1990(x),
                study < 0 ? "negative: no more than none" : "");
        }

        yield return Row(Aashto, "without dowels, 10 in, 30 hot days", 0.1047, FaultingRegression.Aashto1998Undowelled(At(0)));
        yield return Row(Early, "dowelled, 1¼ in, no edge support", 0.0257, FaultingRegression.EarlyAnalysisDowelled(At(0)));
        var opening = FaultingRegression.Opening(0.80, 15 * Foot, 5.5e-6 / Fahrenheit, 80 * Fahrenheit);
        yield return Bearing("joint opening, 15 ft, granular, range 80 °F", 0.0533, opening / Inch, "in", 0.00005);
        yield return Bearing("share f of the load on the outer dowel, l 36.1 in", 0.499, 24 / (36.1 + 12), "", 0.0005);
        yield return Bearing(
            "bearing stress, 1¼ in, l 36.1 in", 1991, FaultingRegression.BearingStress(1.25 * Inch, 36.1 * Inch, opening) / Psi, "psi", 1.5);
    }

    private static RegressionInputs At(double psi) => new()
    {
        EquivalentAxles = 10e6, Age = 20, Drainage = 1, Bearing = psi * Psi, JointSpacing = 15 * Foot, Thickness = 10 * Inch,
        FreezingIndex = 500 * Fahrenheit, Precipitation = 30 * Inch, HotDays = 30, Reaction = 200 * Pci, DowelDiameter = 1.25 * Inch,
    };

    private static CheckRow Row(string source, string what, double published, double ours, string remark = "") =>
        new("6 Faulting", "6.2", source, what, published, ours / Inch, "in", 0.00006, remark);

    private static CheckRow Bearing(string what, double published, double ours, string unit, double tolerance) =>
        new("6 Faulting", "6.2", Study, what, published, ours, unit, tolerance);
}
