using System.Collections.Immutable;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Evidence;

namespace Slabwright.Tests.HeatFlow;

public sealed class HydrationFitTests
{
    private const double Energy = 42_000, Reference = 23;

    private static readonly HydrationCurve True = new()
    {
        Cementitious = 400, UltimateHeat = 380_000, UltimateDegree = 1, Time = 6 * 3600, Slope = 1.4, ActivationEnergy = Energy, Reference = Reference,
    };

    private static double[] Hours => [1, 2, 3, 4, 6, 8, 12, 18, 24, 48, 72];

    [Fact]
    public void An_exact_heat_curve_gives_its_parameters_back()
    {
        var heats = Hours.Select(h => True.UltimateHeat * True.DegreeOfHydration(h * 3600 * True.AgeRate(30))).ToArray();
        var points = HeatCurve.Isothermal([.. Hours.Select(h => h * 3600)], heats, 30, Energy, Reference);
        var fit = HydrationFit.Of(points, 400, Energy, Reference, "bath at 30 °C");
        Assert.Empty(fit.Findings);
        Assert.Equal(380_000, fit.Curve!.UltimateHeat, 1);
        Assert.Equal(6 * 3600, fit.Curve.Time, 0.5);
        Assert.Equal(1.4, fit.Curve.Slope, 1e-5);
        Assert.Equal(HydrationOrigin.Measured, fit.Curve.Origin);
        Assert.True(fit.Scatter < 1);
        Assert.Contains("scatter", Assert.Single(fit.Curve.Reasons).Inputs.Select(i => i.Name));
    }

    /// <summary>A specimen in a box, its temperatures stepped from the true curve: the heat worked back is the heat put in.</summary>
    [Fact]
    public void Temperatures_of_an_insulated_specimen_give_its_heat()
    {
        const double capacity = 12_000, loss = 0.05, cementitious = 2, around = 21, step = 60;
        var (times, temperatures) = (new List<double> { 0 }, new List<double> { 23 });
        var (age, freed) = (0.0, 0.0);
        for (var i = 0; i < 48 * 60; i++)
        {
            var now = temperatures[^1];
            var next = now;
            for (var pass = 0; pass < 30; pass++)
            {
                var then = age + step * True.AgeRate((now + next) / 2);
                var heat = cementitious * True.UltimateHeat * (True.DegreeOfHydration(then) - True.DegreeOfHydration(age));
                next = now + (heat - loss * ((now + next) / 2 - around) * step) / capacity;
            }

            age += step * True.AgeRate((now + next) / 2);
            freed = cementitious * True.UltimateHeat * True.DegreeOfHydration(age);
            times.Add(times[^1] + step);
            temperatures.Add(next);
        }

        var points = HeatCurve.SemiAdiabatic(times.ToArray(), temperatures.ToArray(), around, capacity, loss, cementitious, Energy, Reference);
        Assert.True(temperatures.Max() > 45);
        Assert.Equal(freed / cementitious, points[^1].Heat, 1e-3 * freed);
        var fit = HydrationFit.Of([.. points.Where((_, i) => i % 30 == 0)], 400, Energy, Reference, "box");
        Assert.Equal(6 * 3600, fit.Curve!.Time, 5);
        Assert.Equal(1.4, fit.Curve.Slope, 1e-3);
    }

    [Fact]
    public void Points_that_allow_no_curve_are_named()
    {
        ImmutableArray<HeatPoint> few = [new(3600, 10_000), new(7200, 50_000)];
        var fit = HydrationFit.Of(few, 400, Energy, Reference, "few.csv");
        Assert.Null(fit.Curve);
        var finding = Assert.Single(fit.Findings);
        Assert.Equal(("CON-115", FindingLevel.Error, "few.csv"), (finding.Code, finding.Level, finding.Place.File));

        ImmutableArray<HeatPoint> falling = [.. Hours.Select((h, i) => new HeatPoint(h * 3600, i == 6 ? 1_000 : True.UltimateHeat * True.DegreeOfHydration(h * 3600)))];
        Assert.Contains(HydrationFit.Of(falling, 400, Energy, Reference, "x").Findings, f => f.Code == "CON-116" && f.Place.Row == 7);

        ImmutableArray<HeatPoint> early = [.. new[] { 1.0, 2, 3, 4, 5, 6 }.Select(h => new HeatPoint(h * 3600, True.UltimateHeat * True.DegreeOfHydration(h * 3600)))];
        Assert.Contains(HydrationFit.Of(early, 400, Energy, Reference, "x").Findings, f => f.Code == "CON-118");
    }

    [Fact]
    public void Chloride_shortens_by_the_published_observation()
    {
        var plain = HydrationEstimate.From(new(CementComposition.TypeI, 0.40), 390);
        var factor = AcceleratorFactor.CalciumChloride(0.02, plain.ActivationEnergy);
        var fast = HydrationEstimate.From(new(CementComposition.TypeI, 0.40), 390, factor);
        Assert.Equal(HydrationOrigin.CompositionAccelerated, fast.Origin);
        // at 50 °F with chloride as at 70 °F without
        Assert.Equal(plain.DegreeOfHydration(8 * 3600 * plain.AgeRate(190.0 / 9)), fast.DegreeOfHydration(8 * 3600 * fast.AgeRate(10)), 1e-9);
        Assert.Equal(1, AcceleratorFactor.CalciumChloride(0, plain.ActivationEnergy).TimeFactor);
        Assert.Contains(fast.Reasons, r => r.Rule == "accelerator");
    }
}
