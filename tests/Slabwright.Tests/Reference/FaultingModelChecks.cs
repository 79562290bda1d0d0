using Slabwright.Core.Joints.Faulting;
using static Slabwright.Tests.Reference.US;

namespace Slabwright.Tests.Reference;

/// <summary>
/// NCHRP 1-37A incremental faulting model: an arithmetic example worked independently from the formulas (which are from memory) with the
/// set of 2004, FR 0.10, corner lift 0.02 in, EROD 4, P200 40 %, 120 wet days, 1.5 psi, energy 0.05 lb/in in the first month.
/// </summary>
public sealed class FaultingModelChecks : ICheckRows
{
    private const string Section = "6 Faulting";
    private const string Source = "NCHRP 1-37A part 3 ch. 4 (from memory); example worked independently";

    /// <summary>The place of the example.</summary>
    public static FaultingSite Site { get; } = new()
    {
        Erodibility = 4, FrozenShare = 0.10, FinesShare = 0.40, WetDays = 120, Overburden = 1.5 * Psi, CornerLift = 0.02 * Inch,
    };

    public IEnumerable<CheckRow> Rows()
    {
        var set = FaultingCoefficients.Report2004;
        var month = FaultingModel.Run(set, Site, [0.05 * Pound / Inch], FaultingStep.Printed, growthShare: 1)[0];
        yield return Row("C12", 1.9086, FaultingModel.GreatestFactor(set, 0.10), "", 0.00005);
        yield return Row("C34", 0.002175, FaultingModel.GrowthFactor(set, 0.10), "", 0.0000005);
        yield return Row("log(1 + C5 5^EROD)", 5.1938, FaultingModel.Erosion(set, 4), "", 0.00005);
        yield return Row("greatest faulting before traffic", 0.1218, FaultingModel.FirstGreatest(set, Site) / Inch, "in", 0.00005);
        yield return Row("faulting of month 1", 1.6145e-6, month.Faulting / Inch, "in", 0.0005e-6);
        yield return Row("greatest faulting after month 1, as printed", 0.2378, month.Greatest / Inch, "in", 0.00005);
        foreach (var (later, name, growth, step, greatest) in new[]
        {
            (FaultingCoefficients.Manual2008, "set of 2008", 0.0026817, 1.2857e-06, 0.2751), (FaultingCoefficients.Recalibrated2015, "set of 2015", 0.0046668, 3.2768e-06, 0.9102),
        })
        {
            var first = FaultingModel.Run(later, Site, [0.05 * Pound / Inch], FaultingStep.Printed, growthShare: 1)[0];
            yield return Row($"C34, {name}", growth, FaultingModel.GrowthFactor(later, 0.10), "", 5e-8);
            yield return Row($"faulting of month 1, {name}", step, first.Faulting / Inch, "in", 5e-11);
            yield return Row($"greatest faulting after month 1, {name}", greatest, first.Greatest / Inch, "in", 0.00005);
        }

        yield return Row("new bars 120 d²/h, 1½ in in 10 in", 27, JointWear.NewBars(1.5 * Inch, 10 * Inch), "", 1e-9);
        yield return Row("the same from the older print, 152.8 Ad/h", 152.8 * Math.PI / 4 * 2.25 / 10, JointWear.NewBars(1.5 * Inch, 10 * Inch), "", 0.003);
        yield return Row(
            "worn bars from the older print, 210.0845 Ad/h − 19.8", 210.0845 * Math.PI / 4 * 2.25 / 10 - 19.8,
            JointWear.WornBars(1.5 * Inch, 10 * Inch), "", 0.02, "the newer print subtracts 19.812");
    }

    private static CheckRow Row(string what, double published, double ours, string unit, double tolerance, string remark = "") =>
        new(Section, "6.1", Source, what, published, ours, unit, tolerance, remark);
}
