using Slabwright.Core.Joints;
using static Slabwright.Tests.Reference.US;

namespace Slabwright.Tests.Reference;

/// <summary>
/// FHWA pavement notebook ch. 3, preformed compression seal, example A (p. 3.3.7): 60-ft slabs on granular base, 14 to 90 °F,
/// α 5.5e-6 1/°F, ε 1e-4, seal range 20 to 55 %. A 1-in seal was chosen.
/// </summary>
public sealed class FhwaSealChecks : ICheckRows
{
    public IEnumerable<CheckRow> Rows()
    {
        var opening = JointMovement.Opening(JointMovement.GranularRestraint, 60 * Foot, 5.5e-6 / Fahrenheit, 76 * Fahrenheit, 1e-4);
        yield return Row("change of opening", 0.3, opening / Inch, "in", 0.005, "printed to one digit");
        yield return Row("least width of the seal for 0.3 in", 0.86, JointMovement.SealWidth(0.3 * Inch, 0.20, 0.55) / Inch, "in", 0.005);
        foreach (var (fahrenheit, compression, inches) in new[] { (80.0, 0.50, 0.5), (40, 0.32, 0.68) })
        {
            var installed = JointMovement.InstalledCompression(Celsius(fahrenheit), Celsius(14), Celsius(90), 0.20, 0.55);
            yield return Row($"compression when sealed at {fahrenheit} °F", compression, installed, "", 0.005);
            yield return Row($"saw width at {fahrenheit} °F, 1-in seal", inches, JointMovement.SawWidth(installed, Inch) / Inch, "in", 0.005);
        }
    }

    private static double Celsius(double fahrenheit) => (fahrenheit - 32) * Fahrenheit;

    private static CheckRow Row(string what, double published, double ours, string unit, double tolerance, string remark = "") => new(
        "4 Tie bars, opening, seals", "E4.3", "FHWA pavement notebook ch. 3, example A (p. 3.3.7)", what, published, ours, unit, tolerance, remark);
}
