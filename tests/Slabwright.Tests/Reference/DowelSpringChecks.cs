using Slabwright.Core.Joints;
using static Slabwright.Tests.Reference.US;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Joint stiffness with dowels after Ioannides and Korovesis (from memory), worked independently: h 10 in, E 4 million psi, k 200 pci,
/// 1½-in bars at 12 in, joint 0.25 in, K 1.5 million pci, Es 29 million psi, ν 0.3.
/// </summary>
public sealed class DowelSpringChecks : ICheckRows
{
    private const string Source = "Ioannides and Korovesis 1990, 1992 (from memory); worked independently";
    private const double D = 1.5 * Inch;
    private const double Z = 0.25 * Inch;
    private const double K = 1.5e6 * Pci;
    private const double Steel = 29e6 * Psi;

    public IEnumerable<CheckRow> Rows()
    {
        var l = RelativeStiffness.Radius(4e6 * Psi, 10 * Inch, 0.15, 200 * Pci);
        yield return Row("l", 36.14, l / Inch, "in", 0.005);
        yield return Row("β", 0.5286, DowelBar.Beta(K, D, Steel) * Inch, "1/in", 0.00005);
        var bar = DowelBar.JointStiffness(K, D, Steel, 0.3, Z);
        yield return Row("stiffness of one bar D, published form", 1.941e6, bar / (Pound / Inch), "lb/in", 500);
        var r = LoadTransfer.Stiffness(bar, 12 * Inch, 200 * Pci, l);
        yield return Row("R", 22.4, r, "", 0.05);
        yield return Row("LTE, a/l 0.15", 0.906, LoadTransfer.Deflection(r, 0.15), "", 0.0005);
        yield return Row(
            "stiffness of one bar with two elastic sides", 9.2054e5, DowelSpring.TwoSided(K, D, Steel, 0.3, Z) / (Pound / Inch), "lb/in", 5,
            "the published form counts one face and no turning of the bar");
    }

    private static CheckRow Row(string what, double published, double ours, string unit, double tolerance, string remark = "") =>
        new("3 Dowels and load transfer", "E3.8", Source, what, published, ours, unit, tolerance, remark);
}
