using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Hydration;

/// <summary>A factor on the hydration time τ for an accelerator.</summary>
/// <param name="TimeFactor">τ with over τ without; below 1 for an accelerator.</param>
/// <param name="Because">How it came about.</param>
public sealed record AcceleratorFactor(double TimeFactor, Reason Because)
{
    /// <summary>
    /// Calcium chloride: 2 % at 50 °F behaves about like plain concrete at 70 °F. At a steady temperature that is the age factor between
    /// the two, so τ falls by it; other doses in proportion in the exponent, which is our reading.
    /// </summary>
    /// <param name="dose">Calcium chloride, share of the cement's mass, 0 to 0.02.</param> <param name="activationEnergy">Of the mix, J/mol.</param>
    public static AcceleratorFactor CalciumChloride(double dose, double activationEnergy)
    {
        var factor = Math.Pow(EquivalentAge.Factor(activationEnergy, 10, 190.0 / 9), dose / 0.02);
        return new(factor, new Reason("accelerator", "2 % calcium chloride at 50 °F is taken to hydrate as plain concrete at 70 °F",
            new SourceRef("CACL2-HANDBOOK", "supplier handbook quoted in a stored page", SourceStatus.Verified),
            [new("dose", Number(dose * 100) + " %"), new("time factor", Number(factor))]));
    }

    /// <summary>A factor the engineer sets, for instance from set times with and without.</summary>
    /// <param name="timeFactor">τ with over τ without.</param>
    public static AcceleratorFactor Stated(double timeFactor) =>
        new(timeFactor, new Reason("accelerator", "time factor stated by the project", SourceRef.Project, [new("time factor", Number(timeFactor))]));

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}

/// <summary>Estimates a hydration curve from what is in the mix.</summary>
public static class HydrationEstimate
{
    /// <summary>Curve by the published regressions. Not for calcium sulphoaluminate and other special rapid cements: fit those to measured heat.</summary>
    /// <param name="binder">Cementitious material.</param> <param name="cementitious">Its mass, kg/m³ of concrete.</param>
    /// <param name="accelerator">Accelerator; null: none.</param>
    public static HydrationCurve From(Binder binder, double cementitious, AcceleratorFactor? accelerator = null)
    {
        var time = HydrationRegression.Time(binder) * (accelerator?.TimeFactor ?? 1);
        var curve = new HydrationCurve
        {
            Cementitious = cementitious,
            UltimateHeat = HydrationRegression.UltimateHeat(binder),
            UltimateDegree = HydrationRegression.UltimateDegree(binder),
            Slope = HydrationRegression.Slope(binder),
            Time = time,
            ActivationEnergy = HydrationRegression.ActivationEnergy(binder),
            WaterCement = binder.WaterCement,
            Origin = accelerator is null ? HydrationOrigin.Composition : HydrationOrigin.CompositionAccelerated,
        };
        return curve with { Reasons = Explain(curve, binder, accelerator) };
    }

    private static ImmutableArray<Reason> Explain(HydrationCurve curve, Binder binder, AcceleratorFactor? accelerator)
    {
        var paper = new SourceRef("SCHINDLER-2005", "ACI Materials Journal 102(1)", SourceStatus.FromMemory);
        ImmutableArray<ReasonInput> inputs = [new("cement", binder.Cement.Name), new("w/cm", Text(binder.WaterCement, "0.###")), new("cement composition", binder.Cement.Source.ToString())];
        var reasons = ImmutableArray.Create(
            new Reason("hydration-heat", $"heat of complete hydration {Text(curve.UltimateHeat / 1000, "0.0")} kJ/kg", paper, inputs),
            new Reason("hydration-degree", $"degree reached in the end {Text(curve.UltimateDegree, "0.000")}", paper, inputs),
            new Reason("hydration-slope", $"slope {Text(curve.Slope, "0.000")}", paper, inputs),
            new Reason("hydration-time", $"time {Text(curve.Time / 3600, "0.00")} h at {Text(curve.Reference, "0.0")} °C", paper, inputs),
            new Reason("hydration-energy", $"activation energy {Text(curve.ActivationEnergy / 1000, "0.0")} kJ/mol",
                new SourceRef("SCHINDLER-2004", "ACI Materials Journal 101(1)", SourceStatus.FromMemory), inputs));
        return accelerator is null ? reasons : reasons.Add(accelerator.Because);
    }

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
