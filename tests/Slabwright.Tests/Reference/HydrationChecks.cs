using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Hydration;

namespace Slabwright.Tests.Reference;

/// <summary>Hydration: equations of Schindler and Folliard (from memory) worked out in Python from the published cement compositions.</summary>
public sealed class HydrationChecks : ICheckRows
{
    private const string Section = "C7 Hydration and its heat";
    private const string Paper = "Schindler and Folliard 2005, Schindler 2004 (equations from memory); worked independently";
    private const string Breugel = "Van Breugel, specific heat (equation from memory); worked independently";

    public IEnumerable<CheckRow> Rows() => [.. Parameters(), .. Degrees(), .. Blends(), .. Rate(), .. Rise(), .. Heat(), .. Set()];

    private static HydrationCurve Of(CementComposition cement, double ash = 0, double lime = 0, double slag = 0) =>
        HydrationEstimate.From(new(cement, 0.40, ash, lime, slag), 390);

    private static IEnumerable<CheckRow> Parameters()
    {
        (CementComposition Cement, double H, double Slope, double Time, double Energy)[] rows =
        [
            (CementComposition.TypeI, 484.6, .6742, 15.01, 46_626), (CementComposition.TypeIi, 468.3, .5857, 17.16, 43_642), (CementComposition.TypeIii, 481.4, .5880, 9.80, 51_881),
        ];
        foreach (var (cement, h, slope, time, energy) in rows)
        {
            var curve = Of(cement);
            yield return Row("S8", $"{cement.Name}: heat of hydration", h, curve.UltimateHeat / 1000, "J/g", 0.05);
            yield return Row("S8", $"{cement.Name}: degree in the end, w/c 0.40", .6943, curve.UltimateDegree, "", 0.00005);
            yield return Row("S8", $"{cement.Name}: slope β", slope, curve.Slope, "", 0.00005);
            yield return Row("S8", $"{cement.Name}: time τ", time, curve.Time / 3600, "h", 0.005);
            yield return Row("S8", $"{cement.Name}: activation energy", energy, curve.ActivationEnergy, "J/mol", 0.5);
        }
    }

    private static IEnumerable<CheckRow> Degrees()
    {
        double[] hours = [4, 6, 8, 12, 24, 72];
        (CementComposition Cement, double[] Degrees)[] rows =
        [
            (CementComposition.TypeI, [.0606, .1086, .1506, .2170, .3350, .4905]), (CementComposition.TypeIi, [.0664, .1091, .1454, .2023, .3053, .4508]),
            (CementComposition.TypeIii, [.1276, .1828, .2249, .2857, .3846, .5094]),
        ];
        return rows.SelectMany(r => hours.Select((h, i) => Row("S8", $"{r.Cement.Name}: degree at {h} h", r.Degrees[i], Of(r.Cement).DegreeOfHydration(h * 3600), "", 0.00006)));
    }

    private static IEnumerable<CheckRow> Blends()
    {
        var ash = Of(CementComposition.TypeI, ash: 0.2, lime: 0.2);
        yield return Row("S8", "Type I with 20 % ash (CaO 20 %): heat", 459.7, ash.UltimateHeat / 1000, "J/g", 0.05);
        yield return Row("S8", "the same: degree in the end", .7943, ash.UltimateDegree, "", 0.00005);
        yield return Row("S8", "the same: τ", 21.95, ash.Time / 3600, "h", 0.005);
        yield return Row("S8", "the same: activation energy", 41_730, ash.ActivationEnergy, "J/mol", 0.7);
        var slag = Of(CementComposition.TypeI, slag: 0.3);
        yield return Row("S8", "Type I with 30 % slag: heat", 477.5, slag.UltimateHeat / 1000, "J/g", 0.05);
        yield return Row("S8", "the same: degree in the end", .7843, slag.UltimateDegree, "", 0.00005);
        yield return Row("S8", "the same: β", .5552, slag.Slope, "", 0.00005);
        yield return Row("S8", "the same: τ", 28.93, slag.Time / 3600, "h", 0.005);
        yield return Row("S8", "the same: activation energy", 52_221, slag.ActivationEnergy, "J/mol", 0.5);
    }

    private static IEnumerable<CheckRow> Rate()
    {
        var curve = new HydrationCurve { UltimateHeat = 477_000, Cementitious = 390, UltimateDegree = 0.75, Slope = 0.9, Time = 12 * 3600, ActivationEnergy = 40_000, Reference = 23 };
        foreach (var (hours, watts) in ((double, double)[])[(4, 1594), (8, 1487), (12, 1069), (24, 456)])
            yield return Row("S9", $"heat rate at {hours} h and 23 °C", watts, curve.HeatRate(hours * 3600, 23), "W/m³", 0.5);
        yield return Row("S9", "age of the greatest rate", 5.231, curve.AgeOfGreatestHeat / 3600, "h", 0.0005);
        yield return Row("S9", "greatest rate", 1705, curve.HeatRate(curve.AgeOfGreatestHeat, 23), "W/m³", 0.5);
        yield return Row("S9", "rate at 40 °C over that at 23 °C", 2.4155, curve.HeatRate(3600, 40) / curve.HeatRate(3600, 23), "", 0.0001);
        yield return Row("S9", "age of a degree of 0.2759 (the inverse)", 12, curve.AgeAt(0.75 * Math.Exp(-1)) / 3600, "h", 1e-9);
    }

    private static IEnumerable<CheckRow> Rise()
    {
        foreach (var (cement, mass, day, end) in ((CementComposition, double, double, double)[])[(CementComposition.TypeI, 390, 26.4, 54.7), (CementComposition.TypeIii, 525, 40.5, 73.1)])
        {
            var curve = HydrationEstimate.From(new(cement, 0.40), mass);
            yield return Row("S10", $"{cement.Name}, {mass} kg/m³: rise without loss, 24 h", day, curve.AdiabaticRise(86400, 2.4e6), "K", 0.05);
            yield return Row("S10", $"{cement.Name}, {mass} kg/m³: rise in the end", end, curve.AdiabaticRise(double.PositiveInfinity, 2.4e6), "K", 0.05);
        }
    }

    private static IEnumerable<CheckRow> Heat()
    {
        var mix = new HydratingHeat(525, 210, 1457);
        foreach (var (degree, published) in ((double, double)[])[(0, 1111.8), (0.3, 1106.4), (0.7, 1099.3)])
            yield return new(Section, "S11", Breugel, $"specific heat at degree {degree}, 40 °C", published, mix.SpecificHeat(degree, 40), "J/(kg·K)", 1.0, "water taken at 4,186 J/(kg·K)");
    }

    private static IEnumerable<CheckRow> Set()
    {
        foreach (var (cement, initial, final) in ((CementComposition, double, double)[])[(CementComposition.TypeI, 3.98, 5.80), (CementComposition.TypeIi, 3.72, 5.74), (CementComposition.TypeIii, 2.14, 3.30)])
        {
            yield return Row("sect. 8", $"{cement.Name}: initial set at w/c 0.40", initial, Of(cement).AgeAt(HydrationRegression.InitialSet(0.4)) / 3600, "h", 0.006);
            yield return Row("sect. 8", $"{cement.Name}: final set at w/c 0.40", final, Of(cement).AgeAt(HydrationRegression.FinalSet(0.4)) / 3600, "h", 0.006);
        }
    }

    private static CheckRow Row(string item, string what, double published, double ours, string unit, double tolerance) => new(Section, item, Paper, what, published, ours, unit, tolerance);
}
