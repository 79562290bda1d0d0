using System.Collections.Immutable;
using System.Diagnostics;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Night;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Tests.HeatFlow;

namespace Slabwright.Tests.ConcreteWork;

public class ConcretePlanTests
{
    private static readonly EarlyTrafficLoads Loads = new(40, 54e6, 3.66, 690_000);

    [Fact]
    public void Every_mix_and_night_has_its_saw_window_curing_calls_and_early_traffic()
    {
        var row = Assert.Single(Plan(ConcreteStudyTests.Job(1) with { Traffic = Loads }).MixNights);
        Assert.NotNull(row.SawWindow!.From);
        Assert.NotEmpty(row.Evaporation!.Measures);
        Assert.InRange(row.EarlyTraffic!.FirstRatio, 0.2, 1.5);
        Assert.Contains(row.EarlyTraffic.Reasons, r => r.Rule == "early axles");
        Assert.Null(Assert.Single(Plan(ConcreteStudyTests.Job(1)).MixNights).EarlyTraffic);
    }

    [Fact]
    public void Stresses_between_the_knots_are_those_of_the_plate()
    {
        var study = new EarlyTrafficStudy(Loads, 1.8, 0.23);
        var input = new EarlyTrafficInput { Length = 1.8, Width = 3.66, Thickness = 0.23, Reaction = 54e6, AxlesPerHour = 40, RuptureByHour = [2e6] };
        foreach (var modulus in new[] { 8e9, 14e9, 21e9, 30e9 })
            Assert.Equal(1, study.Stress(modulus) / EarlyTraffic.EdgeStress(input, modulus), 0.005);
    }

    [Fact]
    public void Traffic_is_that_of_the_busiest_lane_by_the_hour()
    {
        var plan = Plan(ConcreteStudyTests.Job(1) with { Traffic = Loads });
        var twice = Plan(ConcreteStudyTests.Job(1) with { Traffic = Loads with { AxlesPerHour = 80 } });
        Assert.Equal(2 * plan.MixNights[0].EarlyTraffic!.Damage, twice.MixNights[0].EarlyTraffic!.Damage, 1e-9);
    }

    [Fact]
    public void Check_specimens_and_pulse_velocities_are_held_against_the_curve()
    {
        var job = ConcreteStudyTests.Job(1);
        var breaks = job.Settings.Breaks.Select(b => b with { PulseVelocity = 3000 + 300 * Math.Log(b.Strength / 1e6) }).ToImmutableArray();
        var far = breaks.Add(new StrengthBreak(SimpleSlab.Mix.Id, StrengthKind.Compressive, 12, 14e6) { IsCheck = true });
        var plan = Plan(job with { Settings = job.Settings with { Breaks = far } });
        Assert.Equal(CurveVerdict.Renew, plan.Validations[SimpleSlab.Mix.Id].Verdict);
        Assert.Contains(plan.Findings, f => f.Code == "CON-052");
        Assert.Equal(20e6, plan.PulseCurves[SimpleSlab.Mix.Id].Strength(3000 + 300 * Math.Log(20)), 1e5);
    }

    [Fact]
    public void Measured_heat_goes_before_composition_and_is_called_user_fitted()
    {
        var job = ConcreteStudyTests.Job(1);
        var rapid = SimpleSlab.Mix with { CementKind = CementKind.SpecialRapid };
        var breaks = job.Settings.Breaks;
        var without = Plan(job with { Settings = job.Settings with { Mixes = [rapid] } });
        Assert.Contains(without.Findings, f => f.Code == "CON-036");
        Assert.Empty(without.Hydration);
        var with = Plan(job with { Settings = job.Settings with { Mixes = [rapid], HeatCurves = Heat(23, 40_000).AddRange(Heat(38, 40_000)) } });
        Assert.DoesNotContain(with.Findings, f => f.Code == "CON-036");
        Assert.Contains(with.MixNights[0].Forecast!.Reasons, r => r.Sentence.StartsWith("User-fitted", StringComparison.Ordinal));
        Assert.True(with.MixNights[0].OpensAt < without.MixNights[0].OpensAt);
        var curve = with.Hydration[rapid.Id];
        Assert.Equal(HydrationOrigin.Measured, curve.Origin);
        Assert.Equal(40_000, curve.ActivationEnergy, 400.0);
        Assert.Equal(300_000, curve.UltimateHeat, 3000.0);
        Assert.Equal(3 * 3600, curve.Time, 60.0);
    }

    [Fact]
    public void Heat_of_one_bath_alone_says_what_is_assumed_and_falling_heat_is_named_by_its_row()
    {
        var job = ConcreteStudyTests.Job(1);
        var heats = Heat(23, 40_000).ToArray();
        heats[4] = heats[4] with { Heat = 1000, Row = 6 };
        var plan = Plan(job with { Settings = job.Settings with { Mixes = [SimpleSlab.Mix with { CementKind = CementKind.SpecialRapid }], HeatCurves = [.. heats] } });
        Assert.Contains(plan.Findings, f => f.Code == "CON-119");
        Assert.Contains(plan.Findings, f => f is { Code: "CON-116", Place: { File: "heat_curves.csv", Row: 6 } });
        var few = Plan(job with { Settings = job.Settings with { HeatCurves = [.. heats.Take(2)] } });
        Assert.Contains(few.Findings, f => f is { Code: "CON-115", Place.File: "heat_curves.csv" });
        Assert.Equal(HydrationOrigin.Composition, few.Hydration[SimpleSlab.Mix.Id].Origin);
    }

    [Fact]
    public void A_mix_costs_what_its_ingredients_cost_or_says_which_price_is_missing()
    {
        var job = ConcreteStudyTests.Job(1);
        var mix = SimpleSlab.Mix with { Price = null, Accelerator = Accelerator.NonChloride, AcceleratorDose = 0.02 };
        ImmutableArray<IngredientPrice> prices =
        [
            new(Ingredient.Cement, null, 0.14m), new(Ingredient.Cement, CementKind.TypeIii, 0.18m), new(Ingredient.Coarse, null, 0.02m), new(Ingredient.Fine, null, 0.015m),
            new(Ingredient.Accelerator, null, 1.9m),
        ];
        ConcretePlan Of(ImmutableArray<IngredientPrice> given) => Plan(job with { Settings = job.Settings with { Mixes = [mix], IngredientPrices = given } });
        Assert.Equal(480 * 0.18m + 1000 * 0.02m + 640 * 0.015m + 9.6m * 1.9m, Of(prices).MixNights[0].CostPerCubicMetre);
        var missing = Of(prices.RemoveAt(4));
        Assert.Null(missing.MixNights[0].CostPerCubicMetre);
        Assert.Contains(missing.Findings, f => f.Code == "CON-065" && f.Value!.EndsWith("accelerator", StringComparison.Ordinal));
        Assert.Equal(190, Plan(job with { Settings = job.Settings with { IngredientPrices = prices } }).MixNights[0].CostPerCubicMetre);
    }

    [Fact]
    public void The_spread_of_the_forecast_stands_in_place_of_the_projects()
    {
        var job = ConcreteStudyTests.Job(1);
        OpeningForecastResult Of(WeatherSpread spread) => Plan(job with { Weather = job.Weather! with { Spreads = [.. job.Weather.Hours.Select(_ => spread)] } }).MixNights[0].Forecast!;
        var own = Of(new WeatherSpread(4, 0, 0, 0, 0));
        Assert.Equal(4, own.Case.Spread.Air, 0.15);
        Assert.NotNull(own.Case.Spread.Because);
        Assert.True(Of(new WeatherSpread(4, 0, 1.5, 0, 0.3)).Case.Spread.Air > own.Case.Spread.Air);
        Assert.True(Of(new WeatherSpread(4, 0, 0, 0, 0)).Earliest > Of(new WeatherSpread(0.5, 0, 0, 0, 0)).Earliest);
        var windy = Of(new WeatherSpread(0, 0, 1.5, 0, 0));
        Assert.True(windy.Case.Spread.Air > job.Settings.Spread.Air);
        Assert.Contains(windy.Case.Spread.Because!.Inputs, i => i.Name == "air of the project");
        Assert.Equal(job.Settings.Spread, Of(default).Case.Spread);
    }

    [Fact]
    public void Worked_nights_say_what_they_showed_and_unknown_ones_are_named()
    {
        var job = ConcreteStudyTests.Job(1);
        var night = job.Settings.Nights[0];
        var placed = night.Placed.AddMinutes(15);
        var probe = new Probe("A", SlabPlace.MidDepth, [.. Enumerable.Range(0, 15).Select(i => new ProbeReading(placed.AddMinutes(30 * i), 21 + 2.2 * i - 0.06 * i * i, i + 2))]);
        var readings = new NightReadings { Repair = "1-03", Mix = SimpleSlab.Mix.Id, PlacedAt = placed, Probes = [probe], File = "night_readings.csv" };
        var worked = new WorkedNight(night.Day, readings, [new StrengthBreak(SimpleSlab.Mix.Id, StrengthKind.Compressive, 6.5, 11e6) { Factor = 250 }]);
        var plan = Plan(job with
        {
            Settings = job.Settings with { Worked = [worked, worked with { Day = night.Day.AddDays(40) }, worked with { Readings = readings with { Mix = "X" } }] },
        });
        var shown = Assert.Single(plan.Nights);
        Assert.Equal(placed.AddHours(shown.Forecast!.Posterior.Earliest!.Value), shown.OpensAt!.Value, TimeSpan.FromSeconds(1));
        Assert.NotEqual(shown.PriorOpensAt, shown.OpensAt);
        Assert.Contains(shown.Evidence, e => e is { Kind: EvidenceKind.Maturity, AtGoverningPlace: true });
        Assert.Contains(shown.Evidence, e => e.Kind == EvidenceKind.Specimens);
        var carried = shown.Evidence.Last(e => e.Kind == EvidenceKind.Maturity);
        Assert.True(carried.Low < carried.Strength);
        Assert.NotNull(shown.Validation);
        Assert.Contains(plan.Findings, f => f is { Code: "CON-074", Place.Row: 2 });
        Assert.Contains(plan.Findings, f => f is { Code: "CON-075", Place.Field: "mix" });
    }

    [Fact]
    public void The_time_a_plan_takes_is_told()
    {
        var job = ConcreteStudyTests.Job(1);
        var mixes = Enumerable.Range(0, 4).Select(i => SimpleSlab.Mix with { Id = "M" + i }).ToArray();
        var breaks = mixes.SelectMany(m => job.Settings.Breaks.Select(b => b with { Mix = m.Id }));
        job = job with
        {
            Traffic = Loads,
            Settings = job.Settings with { Mixes = [.. mixes], Breaks = [.. breaks], Trials = 2000, Nights = [.. Enumerable.Range(0, 3).Select(i => job.Settings.Nights[0] with { Day = new(2026, 9, 16 + i) })] },
        };
        Plan(job);
        var watch = Stopwatch.StartNew();
        var plan = Plan(job);
        TestContext.Current.TestOutputHelper?.WriteLine($"plan of 4 mixes on 3 nights {watch.Elapsed.TotalMilliseconds:0} ms");
        var study = ConcreteStudy.Of(job with { Settings = job.Settings with { Trials = 500 } });
        study.Answer(job.Settings.Nights[0], mixes[0], NightChange.None);
        watch.Restart();
        for (var i = 1; i <= 10; i++) study.Answer(job.Settings.Nights[0], mixes[0], new NightChange { Air = -0.1 * i });
        TestContext.Current.TestOutputHelper?.WriteLine($"answer {watch.Elapsed.TotalMilliseconds / 10:0.0} ms");
        Assert.Equal(12, plan.MixNights.Count(m => m.OpensAt is not null || m.Forecast is not null));
    }

    private static ConcretePlan Plan(ConcreteJob job) => ConcretePlanner.Plan(job, TestContext.Current.CancellationToken);

    /// <summary>Heat of a made-up mix: 300 kJ/kg in the end, 3 h, slope 1.1, at 23 °C.</summary>
    private static ImmutableArray<MeasuredHeat> Heat(double bath, double energy) =>
    [
        .. new[] { 1.0, 2, 3, 4, 6, 8, 12, 18, 24, 36, 48 }.Select((h, i) => new MeasuredHeat(
            SimpleSlab.Mix.Id, h, 300_000 * Math.Exp(-Math.Pow(3 / (h * EquivalentAge.Factor(energy, bath, 23)), 1.1)), bath) { Row = i + 2 }),
    ];
}
