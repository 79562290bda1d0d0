using Slabwright.Core.Concrete.Maturity;
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
    public void Settings_that_are_written_come_back()
    {
        var project = ProjectFolder.Read(Demo, Today).Project!;
        var concrete = project.Settings.Concrete with
        {
            CriterionKind = StrengthKind.CentrePointFlexural, CriterionStrength = 2.0e6, LeastAge = 4.5, Maturity = MaturityKind.TemperatureTimeFactor,
            Blanket = new BlanketCover(1, 6, 0.5), LoggerColumns = [new RememberedColumns("a|b", "a", null, "H:mm", true, [new RememberedChannel("b", SlabPlace.Corner)])],
        };
        using var folder = new TemporaryFolder();
        ProjectFolder.Write(project with { Settings = project.Settings with { Concrete = concrete } }, folder.Path);
        var back = ProjectFolder.Read(folder.Path, Today).Project!.Settings.Concrete;
        Assert.Empty(DeepComparison.Differences(concrete, back, "concrete", _ => false));
    }
}
