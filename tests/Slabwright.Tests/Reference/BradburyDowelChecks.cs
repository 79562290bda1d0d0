using Slabwright.Core.Joints;

namespace Slabwright.Tests.Reference;

/// <summary>
/// NPTEL IIT Bombay lecture 29 p. 12: P 5000 kg, l 80 cm, h 25 cm, z 2 cm, Fs/Ff/Fb 1000/1400/100 kg/cm², d 2.5 cm. The page picks a 45-cm
/// bar, 43 cm of it in concrete.
/// </summary>
public sealed class BradburyDowelChecks : ICheckRows
{
    private const double Kgf = 9.80665;
    private const double PerSquare = 98066.5;

    public IEnumerable<CheckRow> Rows()
    {
        var balanced = BradburyDowel.BalancedLength(0.025, 1400 * PerSquare, 100 * PerSquare, 0.02);
        yield return Row("balanced length", 40.5, balanced.Length * 100, "cm", 0.05);
        var bending = BradburyDowel.Bending(0.025, 1400 * PerSquare, 0.43, 0.02) / Kgf;
        yield return Row("capacity in shear", 4906, BradburyDowel.Shear(0.025, 1000 * PerSquare) / Kgf, "kg", 0.5);
        yield return Row("capacity in bearing", 804, BradburyDowel.Bearing(0.025, 100 * PerSquare, 0.43, 0.02) / Kgf, "kg", 0.5);
        yield return Row("capacity in bending", 722, bending, "kg", 0.5);
        yield return Row("bars' worth needed", 2.77, BradburyDowel.CarriedShare * 5000 / bending, "", 0.005);
        yield return Row("bars' worth at 35 cm, reach 1.8 l", 2.57, DowelBar.GroupSum(0.35, DowelBar.FribergReach * 0.80, 1), "", 0.005);
        yield return Row("bars' worth at 30 cm", 2.92, DowelBar.GroupSum(0.30, DowelBar.FribergReach * 0.80, 1), "", 0.005);
    }

    /// <summary>At the balanced length bending and bearing carry the same.</summary>
    [Fact]
    public void The_balanced_length_balances()
    {
        var found = BradburyDowel.BalancedLength(0.025, 1400 * PerSquare, 100 * PerSquare, 0.02);
        Assert.True(found.Converged);
        Assert.InRange(found.Iterations, 2, 30);
        Assert.Equal(
            1, BradburyDowel.Bending(0.025, 1400 * PerSquare, found.Length, 0.02) / BradburyDowel.Bearing(0.025, 100 * PerSquare, found.Length, 0.02), 1e-4);
    }

    private static CheckRow Row(string what, double published, double ours, string unit, double tolerance) =>
        new("3 Dowels and load transfer", "E3.7", "NPTEL IIT Bombay lecture 29 p. 12, Bradbury's method", what, published, ours, unit, tolerance);
}
