using Slabwright.Core.Joints;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Load-transfer fits against the exact integral of two half-plates joined by a shear spring (worked independently): the transfer by
/// deflection and by stress at each stiffness.
/// </summary>
public sealed class HalfPlateTransferChecks : ICheckRows
{
    private const string Fit = "Fit of FHWA-RD-02-088 (from memory) against the exact integral of two half-plates";
    private const string Crovetti = "Fit of Crovetti 1994 (from memory) against the exact integral of two half-plates";
    private const string Stress = "Stress fit of Hammons and Ioannides 1997 (from memory, low confidence) against the exact integral";

    private static readonly (double LoadRatio, double Stiffness, double Transfer, double Stress)[] Integral =
    [
        (0.1, 0.1, 0.080, 0.016), (0.1, 1, 0.417, 0.097), (0.1, 5, 0.724, 0.215), (0.1, 10, 0.817, 0.278), (0.1, 100, 0.962, 0.522),
        (0.3, 0.1, 0.082, 0.025), (0.3, 1, 0.428, 0.150), (0.3, 5, 0.742, 0.339), (0.3, 10, 0.835, 0.438), (0.3, 100, 0.972, 0.771),
    ];

    public IEnumerable<CheckRow> Rows()
    {
        foreach (var x in Integral)
        {
            yield return Row(Fit, $"LTE, a/l {x.LoadRatio}, R {x.Stiffness}", x.Transfer, LoadTransfer.Deflection(x.Stiffness, x.LoadRatio), 0.022);
        }

        foreach (var x in Integral.Where(x => x.Stiffness >= 1))
        {
            yield return Row(Crovetti, $"LTE, a/l {x.LoadRatio}, R {x.Stiffness}", x.Transfer, LoadTransfer.ByCrovetti(x.Stiffness), 0.045);
        }

        foreach (var x in Integral.Where(x => x.Stress <= LoadTransfer.MostStressTransfer))
        {
            yield return Row(
                Stress, $"LTE from stress transfer {x.Stress}, a/l {x.LoadRatio}", x.Transfer, LoadTransfer.FromStressTransfer(x.Stress, x.LoadRatio), 0.031);
        }
    }

    private static CheckRow Row(string source, string what, double published, double ours, double tolerance) =>
        new("3 Dowels and load transfer", "3.3", source, what, published, ours, "", tolerance, "a fit");
}
