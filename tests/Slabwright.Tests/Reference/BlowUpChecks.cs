using Slabwright.Core.Joints;
using static Slabwright.Tests.Reference.US;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Restrained expansion and blow-up, worked independently (the least force of the arch from a table of lengths): E 4 million psi,
/// α 5.5e-6 1/°F, 150 lb/ft³. The hinged strip on springs is the known result a paper of 2025 converges to.
/// </summary>
public sealed class BlowUpChecks : ICheckRows
{
    private const double E = 4e6 * Psi;
    private const double Alpha = 5.5e-6 / Fahrenheit;

    public IEnumerable<CheckRow> Rows()
    {
        const string Elementary = "Elementary mechanics; worked independently";
        yield return Row(Elementary, "full restraint, 60 °F", 1320, SlabTemperature.RestrainedStress(E, Alpha, 60 * Fahrenheit) / Psi, "psi", 0.5);
        yield return Row(Elementary, "full restraint, 30 GPa, 10e-6, 40 K", 12.0, SlabTemperature.RestrainedStress(30e9, 10e-6, 40) / 1e6, "MPa", 0.001);
        yield return Row(Elementary, "length that builds 1320 psi up, f 1.5", 845, SlabBuckling.BuildUpLength(1320 * Psi, 150 * Pcf, 1.5) / Foot, "ft", 0.5);
        yield return Row(Elementary, "free movement, 50 ft, 60 °F", 0.198, SlabTemperature.FreeMovement(Alpha, 50 * Foot, 60 * Fahrenheit) / Inch, "in", 0.00001);
        yield return Row(
            "Strip on springs with a hinge (Infrastructures 2025, 10(4), 86); worked independently", "buckling stress, 10 in, k 100 pci", 18_257,
            SlabBuckling.OnSpringsHinged(E, 10 * Inch, 100 * Pci) / Psi, "psi", 0.5);
        foreach (var (inches, friction, degrees) in new[] { (8.0, 1.5, 86.0), (10, 1.5, 97), (12, 1.5, 107), (8, 1.0, 80), (10, 1.0, 90), (12, 1.0, 100) })
        {
            yield return Row(
                "Hobbs 1981 (form read, constants from memory); worked independently", $"safe rise, {inches} in, f {friction:0.0}", degrees,
                SlabBuckling.Arch(E, inches * Inch, Alpha, 150 * Pcf, friction).SafeRise / Fahrenheit, "°F", 0.5, "least value on a table of lengths");
        }
    }

    private static CheckRow Row(string source, string what, double published, double ours, string unit, double tolerance, string remark = "") =>
        new("7 Pressure and blow-up", "7", source, what, published, ours, unit, tolerance, remark);
}
