using Slabwright.Core.Joints;
using static Slabwright.Tests.Reference.US;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Wheel-load closed forms against Huang 2004, examples 4.2 to 4.4 (from memory), and against exact integrals of the plate on springs
/// (worked independently by numerical integration). k 100 pci, h 10 in, a 6 in, P 10,000 lb, E 4 million psi, µ 0.15.
/// </summary>
public sealed class WestergaardChecks : ICheckRows
{
    private const string Section = "1 Wheel load";
    private const string Huang = "Huang 2004, examples 4.2 to 4.4 (from memory)";
    private const string Exact = "Exact integrals of the plate on springs; worked independently";
    private const double P = 10_000 * Pound;
    private const double A = 6 * Inch;
    private const double H = 10 * Inch;
    private const double E = 4e6 * Psi;
    private const double K = 100 * Pci;

    private static readonly double L = RelativeStiffness.Radius(E, H, 0.15, K);

    public IEnumerable<CheckRow> Rows() => [.. Corner(), .. Interior(), .. Edge(), .. Integrals(), .. Beside()];

    private static IEnumerable<CheckRow> Corner()
    {
        yield return Row("E1.1", "radius of relative stiffness", 42.97, L / Inch, "in", 0.005);
        yield return Row("E1.1", "corner stress, Westergaard", 186.6, WheelLoad.CornerStress(P, A, H, L) / Psi, "psi", 0.1);
        yield return Row("E1.1", "corner deflection, Westergaard", 0.0502, WheelLoad.CornerDeflection(P, A, K, L) / Inch, "in", 0.00005);
        yield return Row("E1.1", "corner stress, Ioannides", 190.3, WheelLoad.CornerStressFitted(P, A, H, L) / Psi, "psi", 0.1);
        yield return Row("E1.1", "corner deflection, Ioannides", 0.0560, WheelLoad.CornerDeflectionFitted(P, A, K, L) / Inch, "in", 0.00005);
    }

    private static IEnumerable<CheckRow> Interior()
    {
        yield return Row("E1.2", "equivalent radius b", 5.804, WheelLoad.EquivalentRadius(A, H) / Inch, "in", 0.0005);
        yield return Row("E1.2", "interior stress, short form", 143.7, WheelShortForms.InteriorStress(P, A, H, L) / Psi, "psi", 0.05);
        yield return Row(
            "E1.2", "interior stress, long form", 143.7, WheelLoad.InteriorStress(P, A, H, 0.15, L) / Psi, "psi", 0.2,
            "the short form leaves out the supplementary term of 0.10 psi");
        yield return Row("E1.2", "interior deflection", 0.0067, WheelLoad.InteriorDeflection(P, A, K, L) / Inch, "in", 0.00005);
    }

    private static IEnumerable<CheckRow> Edge()
    {
        yield return Row("E1.3", "edge stress, circle, short form", 279.4, WheelShortForms.EdgeStressCircle(P, A, H, L) / Psi, "psi", 0.05);
        yield return Row("E1.3", "edge deflection, circle, short form", 0.0207, WheelShortForms.EdgeDeflectionCircle(P, A, K, L) / Inch, "in", 0.00005);
        yield return Row("E1.3", "edge stress, half circle, short form", 330.0, WheelShortForms.EdgeStressHalfCircle(P, A, H, L) / Psi, "psi", 0.05);
        yield return Row("E1.3", "edge deflection, half circle, short form", 0.0222, WheelShortForms.EdgeDeflectionHalfCircle(P, A, K, L) / Inch, "in", 0.00005);
        const string Rounded = "the short form rounds its constants";
        yield return Row("E1.3", "edge stress, circle, long form", 279.4, WheelLoad.EdgeStressCircle(P, A, H, E, 0.15, K, L) / Psi, "psi", 0.15, Rounded);
        yield return Row("E1.3", "edge deflection, circle, long form", 0.0207, WheelLoad.EdgeDeflectionCircle(P, A, H, E, 0.15, K, L) / Inch, "in", 0.00005);
        yield return Row("E1.3", "edge stress, half circle, long form", 330.0, WheelLoad.EdgeStressHalfCircle(P, A, H, E, 0.15, K, L) / Psi, "psi", 0.1, Rounded);
        yield return Row("E1.3", "edge deflection, half circle, long form", 0.0222, WheelLoad.EdgeDeflectionHalfCircle(P, A, H, E, 0.15, K, L) / Inch, "in", 0.00005);
    }

    private static IEnumerable<CheckRow> Integrals()
    {
        yield return Row("9.3", "interior deflection of E1.2", 0.00669902, WheelLoad.InteriorDeflection(P, A, K, L) / Inch, "in", 2e-8, "", Exact);

        // A plate thin enough that the special theory does not apply (a > 1.724 h), at the same a/l.
        var thin = A / 2;
        yield return Row(
            "9.3", "interior stress of E1.2 by the ordinary theory with supplementary term", 142.0283,
            WheelLoad.InteriorStress(P, A, thin, 0.15, L) * thin * thin / (H * H) / Psi, "psi", 0.0006, "", Exact);
        foreach (var (poisson, factor) in new[] { (0.0, 0.408248), (0.15, 0.431438), (0.20, 0.440640) })
        {
            var radius = RelativeStiffness.Radius(E, H, poisson, K);
            var deflection = WheelLoad.EdgeDeflectionCircle(P, 1e-9, H, E, poisson, K, radius);
            yield return Row(
                "9.4", $"edge deflection of a point load, µ {poisson:0.00}, in P/(k l²)", factor, deflection * K * radius * radius / P, "", 0.0012,
                "the closed form is an approximation", Exact);
        }
    }

    private static IEnumerable<CheckRow> Beside()
    {
        const string Independent = "Formulas of section 1 (from memory); worked independently";
        yield return Row("1.1", "edge stress of 1926, data of E1.3", 219.470, WheelShortForms.EdgeStress1926(P, A, H, L) / Psi, "psi", 0.001, "", Independent);
        yield return Row("1.1", "greatest corner stress at, Westergaard", 38.191, CornerCrack.Westergaard(A, L) / Inch, "in", 0.001, "", Independent);
        yield return Row("1.1", "greatest corner stress at, Indian texts", 41.428, CornerCrack.IndianTexts(A, L) / Inch, "in", 0.001, "", Independent);
        yield return Row("1.1", "greatest corner stress at, Ioannides", 35.267, CornerCrack.Ioannides(A, L) / Inch, "in", 0.001, "", Independent);
        yield return Row(
            "1.1", "circle of dual tyres, 2 × 4500 lb, 80 psi, 13.5 in", 7.7353, WheelImprint.DualRadius(4500 * Pound, 80 * Psi, 13.5 * Inch) / Inch, "in", 0.0001,
            "", Independent);
        yield return Row(
            "1.1", "length of a tyre print, 4500 lb, 80 psi", 10.3737, WheelImprint.Length(4500 / 80.0 * Inch * Inch) / Inch, "in", 0.0001, "", Independent);
    }

    private static CheckRow Row(
        string item, string what, double published, double ours, string unit, double tolerance, string remark = "", string source = Huang) =>
        new(Section, item, source, what, published, ours, unit, tolerance, remark);
}
