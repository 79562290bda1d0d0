using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Job;
using Slabwright.Data.Folder;
using Slabwright.Examples.Marrowby;

namespace Slabwright.SystemTests.Folder;

/// <summary>Mixes, breaks and the concrete part of project.json.</summary>
public sealed class ConcreteFolderTests
{
    private static readonly DateOnly Today = new(2026, 4, 1);
    private static readonly string Demo = Examples.PathOf(MarrowbyParkway.FolderName);

    [Fact]
    public void The_demo_forecasts_every_mix_on_every_night()
    {
        var project = ProjectFolder.Read(Demo, Today).Project!;
        var plan = Planner.Concrete(project, [], TestContext.Current.CancellationToken);
        Assert.Equal(project.Settings.Concrete.Mixes.Length * project.Settings.Concrete.Nights.Length, plan.MixNights.Length);
        Assert.All(plan.MixNights, m => Assert.NotNull(m.Forecast));
        var first = plan.MixNights.Where(m => m.Night == project.Settings.Concrete.Nights[0]).ToDictionary(m => m.Mix.Id);
        Assert.True(first["FAST"].ChanceByDeadline > first["NIGHT"].ChanceByDeadline);
        Assert.True(first["NIGHT"].ChanceByDeadline >= first["PLAIN"].ChanceByDeadline);
        Assert.NotNull(first["FAST"].LastPlacing);
        Assert.NotNull(first["FAST"].MedianByOtherLaw);
        Assert.True(first["FAST"].CostPerCubicMetre > first["PLAIN"].CostPerCubicMetre);
        Assert.Contains(plan.Findings, f => f.Code == "CON-064");
        Assert.Contains(plan.Findings, f => f.Code == "CON-023" && f.Value == "PLAIN");
    }

    [Fact]
    public void Saw_hours_come_from_the_weather_where_the_project_gives_none()
    {
        var project = ProjectFolder.Read(Demo, Today).Project!;
        var hours = Planner.PressureOf(project, 0.23).Hours;
        Assert.Equal(24, hours.Length);
        Assert.True(hours.Max(h => h.Temperature) > hours.Min(h => h.Temperature) + 2);
        Assert.InRange(hours.Average(h => h.Temperature), 8, 35);
        Assert.Empty(Planner.PressureOf(project with { Weather = null }, 0.23).Hours);
    }

    [Fact]
    public void Saw_hours_are_those_of_the_hottest_night_on_the_clock()
    {
        var project = ProjectFolder.Read(Demo, Today).Project!;
        Project With(Func<ConcreteSettings, ConcreteSettings> change) =>
            project with { Settings = project.Settings with { Concrete = change(project.Settings.Concrete) } };
        double Hottest(Project p) => Planner.PressureOf(p, 0.23).Hours.Max(h => h.Temperature);
        var each = project.Settings.Concrete.Nights.Select(n => Hottest(With(c => c with { Nights = [n] }))).ToArray();
        Assert.True(each.Max() > each.Min() + 1, "The nights must differ, else any would do.");
        Assert.Equal(each.Max(), Hottest(project), 9);
        Assert.Equal(each.Max(), Hottest(With(c => c with { Nights = [.. c.Nights.Reverse()] })), 9);

        var standard = Planner.PressureOf(With(c => c with { ClockAhead = 0 }), 0.23).Hours;
        var clock = Planner.PressureOf(project, 0.23);
        Assert.Equal(standard.Single(h => h.Hour == 12).Temperature, clock.Hours.Single(h => h.Hour == 13).Temperature, 9);
        Assert.Contains("with the weather of 2024", clock.HoursFrom, StringComparison.Ordinal);
    }

    [Fact]
    public void A_colder_forecast_never_opens_the_demo_earlier()
    {
        var project = ProjectFolder.Read(Demo, Today).Project!;
        var cold = project with { Weather = project.Weather!.Shifted(-8) };
        var pairs = Planner.Concrete(project, [], TestContext.Current.CancellationToken).MixNights.Zip(Planner.Concrete(cold, [], TestContext.Current.CancellationToken).MixNights);
        Assert.All(pairs, p => Assert.True((p.Second.OpensAt ?? DateTime.MaxValue) >= (p.First.OpensAt ?? DateTime.MaxValue)));
    }

    [Theory]
    [InlineData("mixes.csv", "FAST,Marrowby Fast,four hours,type iii,900", "FAST,Marrowby Fast,four hours,type iii,9000", "ROAD-009", "cement")]
    [InlineData("mixes.csv", "0.055", "0.55", "ROAD-009", "air_share")]
    [InlineData("mixes.csv", "type iii,710", "type six,710", "ROAD-008", "cement_kind")]
    [InlineData("mixes.csv", ",979,", ",1400,", "CON-010", "fine")]
    [InlineData("heat_curves.csv", "FAST,1,", "FASTER,1,", "CON-073", "mix")]
    [InlineData("heat_curves.csv", "FAST,2,", "FAST,two,", "ROAD-007", "age_h")]
    [InlineData("night_readings.csv", "2-011,FAST,2026-05-04 22:10,P1,mid depth,2026-05-04 22:40", "2-011,FAST,2026-05-04 22:10,P1,half way down,2026-05-04 22:40", "ROAD-008", "place")]
    [InlineData("night_readings.csv", "2-011,FAST,2026-05-04 22:10,P1,mid depth,2026-05-04 22:40", "2-011,FAST,2026-05-04 22:10,P1,mid depth,at 22:40", "ROAD-090", "at")]
    [InlineData("night_readings.csv", "2-011,FAST,2026-05-04 22:10,P1,mid depth,2026-05-04 22:40", "2-011,FAST,2026-05-14 22:10,P1,mid depth,2026-05-04 22:40", "CON-076", "placed_at")]
    [InlineData("night_specimens.csv", "2026-05-04,2-011,compressive,4.5,2420", "2026-05-04,2-010,compressive,4.5,2420", "CON-077", "repair")]
    [InlineData("night_specimens.csv", "compressive,4.5,2420,,158", "compressive,4.5,2420,,", "CON-078", "curing_temp")]
    [InlineData("breaks.csv", "FAST,compressive,3,870", "FASTER,compressive,3,870", "CON-073", "mix")]
    [InlineData("breaks.csv", "NIGHT,compressive,4,430", "NIGHT,compressive,4,twelve", "ROAD-007", "strength_psi")]
    [InlineData("project.json", "\"confidence\": 0.95", "\"confidence\": 1.95", "ROAD-009", "concrete.confidence")]
    [InlineData("project.json", "\"placing_from\": \"20:30\"", "\"placing_from\": \"late\"", "CON-070", "concrete.nights[0].placing_from")]
    [InlineData("project.json", "\"from_h\": 1,", "\"from_h\": 3, \"to_h\": 2,", "CON-071", "concrete.blanket.to_h")]
    [InlineData("project.json", "\"placed_at\": \"23:00\", \"open_by\": \"09:00\"", "\"placed_at\": \"10:00\", \"open_by\": \"09:00\"", "CON-072", "concrete.nights[2].placed_at")]
    public void A_mistake_is_named_with_its_place(string file, string from, string to, string code, string field)
    {
        using var folder = TemporaryFolder.CopyOf(Demo);
        folder.Change(file, from, to);
        var finding = ProjectFolder.Read(folder.Path, Today).Findings.FirstOrDefault(f => f.Code == code && f.Place.Field == field);
        Assert.True(finding is not null, $"No finding {code} at {field}.");
        Assert.Equal(file, finding.Place.File);
        if (file.EndsWith(".csv", StringComparison.Ordinal)) Assert.True(finding.Place.Row > 1);
    }

    [Fact]
    public void The_demo_night_is_read_with_its_faulty_probe_named_and_moves_the_forecast()
    {
        var project = ProjectFolder.Read(Demo, Today).Project!;
        var plan = Planner.Concrete(project, Planner.Plan(project, PlanOptions.Whole with { Studies = false, Range = false, Concrete = false }, null, TestContext.Current.CancellationToken).Boundaries.Repairs, TestContext.Current.CancellationToken);
        var night = Assert.Single(plan.Nights);
        Assert.NotNull(night.Forecast);
        Assert.Equal("FAST", night.Mix.Id);
        Assert.Equal(2, night.Worked.Specimens.Length);
        Assert.Equal(["P1", "P2"], night.Checked.Probes.Where(p => p.Trusted && night.Forecast!.Readings.Any(r => r.Name == p.Name)).Select(p => p.Name).Take(2));
        Assert.Contains(plan.Findings, f => f is { Code: "CON-045", Place: { File: "night_readings.csv", Row: > 20 } });
        Assert.NotEqual(night.PriorOpensAt, night.OpensAt);
        Assert.Contains(night.Evidence, e => e.AtGoverningPlace);
        Assert.DoesNotContain(plan.Findings, f => f.Code == "CON-038" && f.Place.Field == "FAST");
        Assert.Contains(plan.Findings, f => f.Code == "CON-038" && f.Place.Field == "NIGHT");
        TestContext.Current.TestOutputHelper?.WriteLine($"night: prior {night.PriorOpensAt} now {night.OpensAt} air {night.Forecast!.Now.Air:0.0} placing {night.Forecast.Now.Placing:0.0} lot {night.Forecast.Lot}");
        foreach (var e in night.Evidence) TestContext.Current.TestOutputHelper?.WriteLine(e.Sentence);
    }

    [Fact]
    public void Prices_of_ingredients_and_a_forecast_with_spread_are_read()
    {
        using var folder = TemporaryFolder.CopyOf(Demo);
        File.WriteAllText(Path.Combine(folder.Path, "ingredient_prices.csv"), "ingredient,cement_kind,price_per_t,price_per_lb\ncement,,150,\ncement,type iii,190,\ncoarse,,24,\nfine,,20,\naccelerator,,,0.9\ncoarse,,25,\nfine,type i,25,\nwater,,1,1\n");
        var weather = Path.Combine(folder.Path, "weather_hourly.csv");
        var lines = File.ReadAllLines(weather);
        File.WriteAllLines(weather, lines.Select((l, i) => l + (i == 0 ? ",air_temp_sd_f" : ",5.4")));
        folder.Change("mixes.csv", ",176", ",");
        var read = ProjectFolder.Read(folder.Path, Today);
        Assert.Equal(["ROAD-018", "CON-079", "ROAD-017"], read.Findings.Where(f => f.Place.File == "ingredient_prices.csv").Select(f => f.Code));
        Assert.DoesNotContain(read.Findings, f => f.Place.File == "weather_hourly.csv");
        var concrete = read.Project!.Settings.Concrete;
        Assert.Equal(0.9m / 0.45359237m, concrete.IngredientPrices.Single(p => p.Ingredient == Ingredient.Accelerator).PerKilogram, 6);
        var early = Planner.Concrete(read.Project, [], TestContext.Current.CancellationToken).MixNights.First(m => m.Mix.Id == "EARLY");
        var mix = early.Mix;
        Assert.Equal(decimal.Round((decimal)mix.Cement * 0.19m + (decimal)mix.Coarse * 0.024m + (decimal)mix.Fine * 0.02m, 2), early.CostPerCubicMetre);
        Assert.Equal(3, early.Forecast!.Case.Spread.Air, 0.2);
    }

    [Fact]
    public void Settings_that_are_written_come_back()
    {
        var project = ProjectFolder.Read(Demo, Today).Project!;
        var concrete = project.Settings.Concrete with
        {
            CriterionKind = StrengthKind.CentrePointFlexural, CriterionStrength = 2.0e6, LeastAge = 4.5, Maturity = MaturityKind.TemperatureTimeFactor,
            Blanket = new BlanketCover(1, 6, 0.5), Form = new EdgeFormCover(5, 0.2, 3.5),
            IngredientPrices = [new(Ingredient.Cement, CementKind.TypeIii, 0.187m), new(Ingredient.Water, null, 0.001m)], LoggerColumns = [new RememberedColumns("a|b", "a", null, "H:mm", true, [new RememberedChannel("b", SlabPlace.Corner)])],
        };
        using var folder = new TemporaryFolder();
        ProjectFolder.Write(project with { Settings = project.Settings with { Concrete = concrete } }, folder.Path);
        var back = ProjectFolder.Read(folder.Path, Today).Project!.Settings.Concrete;
        Assert.Empty(DeepComparison.Differences(concrete, back, "concrete", _ => false));
    }
}
