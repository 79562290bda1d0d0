using System.Globalization;
using System.Text;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Data.Weather;

namespace Slabwright.SystemTests.HeatFlow;

/// <summary>What was observed and published beside what the models say, good or bad, written into docs/heat-measured.md.</summary>
public sealed class MeasuredPageTests
{
    private static readonly HydrationCurve TypeI = HydrationEstimate.From(new(CementComposition.TypeI, 0.40), 390);
    private static readonly HydrationCurve TypeIii = HydrationEstimate.From(new(CementComposition.TypeIii, 0.40), 390);

    /// <summary>One observation; <see cref="Within"/> is what the page says of it, and the test holds the page to it.</summary>
    private sealed record Observation(string What, string Source, double Observed, double Predicted, string Unit, double Band, bool Within);

    private static IEnumerable<Observation> Observations()
    {
        const string Readymix = "ready-mix supplier's page on cold weather (libertyreadymix.com): setting takes twice as long 20 °F colder";
        yield return new("setting at 50 °F over setting at 70 °F, Type I", Readymix, 2, TypeI.AgeRate(190.0 / 9) / TypeI.AgeRate(10), "", 0.25, true);
        const string Handbook = "supplier handbook quoted in a stored page: set shortened by up to two thirds";
        var chloride = AcceleratorFactor.CalciumChloride(0.02, TypeI.ActivationEnergy).TimeFactor;
        yield return new("setting with 2 % calcium chloride over setting without, least", Handbook, 1.0 / 3, chloride, "", 0.25, false);
        const string Guide = "FHWA full-depth repair guidance (full4.cfm): initial set in 30 min on a warm day with accelerator";
        var fast = TypeIii with { Time = TypeIii.Time * chloride };
        yield return new("earliest initial set, Type III, 2 % calcium chloride, concrete at 35 °C", Guide, 30, fast.AgeAt(HydrationRegression.InitialSet(0.40)) / fast.AgeRate(35) / 60, "min", 0.25, true);
        const string Ratios = "Concrete Construction, what Type III does for strength: one-day strength 190 % of Type I";
        double Gain(HydrationCurve c) => c.DegreeOfHydration(86_400) - 0.43 * 0.40;
        yield return new("one-day strength of Type III over Type I, by degree above 0.43 w/c", Ratios, 1.90, Gain(TypeIii) / Gain(TypeI), "", 0.10, false);
    }

    /// <summary>Run the tests with SLABWRIGHT_WRITE_DOCS=1 to write docs/heat-measured.md anew.</summary>
    [Fact]
    public void The_page_in_docs_is_what_the_models_give()
    {
        var observations = Observations().ToArray();
        Assert.All(observations, o => Assert.True(o.Within == Math.Abs(o.Predicted / o.Observed - 1) <= o.Band, $"{o.What}: {o.Predicted}"));
        var page = Page(observations, SunRows());
        var path = Path.Combine(SourceTree.Root, "docs", "heat-measured.md");
        if (Environment.GetEnvironmentVariable("SLABWRIGHT_WRITE_DOCS") == "1") File.WriteAllText(path, page);
        Assert.True(File.ReadAllText(path).ReplaceLineEndings("\n") == page, "docs/heat-measured.md is not what the models give; run the tests with SLABWRIGHT_WRITE_DOCS=1.");
    }

    private static string Page(Observation[] observations, (string Sky, int Hours, double Measured, double Bias, double Deviation)[] sun)
    {
        var page = new StringBuilder();
        void Line(FormattableString line) => page.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
        Line($"# Heat, setting and sun: observed against predicted");
        Line($"");
        Line($"Written by the tests from what the models give; do not edit (`tests/Slabwright.SystemTests/HeatFlow/MeasuredPageTests.cs`). Errors are shown");
        Line($"as they are: misses stay on the page until a better model or an input of the mix mends them.");
        Line($"");
        Line($"**Temperatures of repair slabs.** No published table of measured time and temperature of a repair slab could be read, so the heat model has not");
        Line($"been held against a measured slab. It agrees with textbook solutions and a stiff integrator on the same equations");
        Line($"([checks](concrete-checks.md), [steps](steps/concrete-heat.md)), which says that the equations are solved, not that coefficients fit a site. Set");
        Line($"surface, base and cement to what you have, and compare with your own loggers on the first nights.");
        Line($"");
        Line($"Strengths are compared in [concrete-measured](concrete-measured.md).");
        Line($"");
        Line($"## Setting and early gain");
        Line($"");
        Line($"| what | observed | predicted | deviation | within | source |");
        Line($"| --- | --- | --- | --- | --- | --- |");
        foreach (var o in observations)
            Line($"| {o.What} | {o.Observed:0.00} {o.Unit} | {o.Predicted:0.00} {o.Unit} | {100 * (o.Predicted / o.Observed - 1):+0;-0} % | {(o.Within ? "yes" : "**no**")}, {100 * o.Band:0} % | {o.Source} |");
        Line($"");
        Line($"Hydration alone does not tell early strength or the effect of accelerators: fit heat to a measured curve of the mix, and strength to breaks. For any");
        Line($"early prediction by composition a published comparison of 210 cylinders gives measured over predicted 0.97 ± 0.22 (IJCSM 2016,");
        Line($"s40069-016-0147-6): that spread is the honest width.");
        Line($"");
        Line($"## Sun on a level surface");
        Line($"");
        Line($"Kasten and Czeplak's formula for weather that gives no sun, by cloud, against the typical year of Greensboro, North Carolina (TMY3, daylight hours");
        Line($"with the sun 10° or more up, W/m²). TMY3 sun is itself mostly modelled from satellite and cloud.");
        Line($"");
        Line($"| cloud | hours | mean in the file | formula less file | standard deviation |");
        Line($"| --- | --- | --- | --- | --- |");
        foreach (var row in sun) Line($"| {row.Sky} | {row.Hours} | {row.Measured:0} | {row.Bias:+0;-0} | {row.Deviation:0} |");
        return page.ToString();
    }

    private static (string Sky, int Hours, double Measured, double Bias, double Deviation)[] SunRows()
    {
        var site = new WeatherSite(36.1, -79.95, -5, 273);
        var series = WeatherFile.Read(Path.Combine(AppContext.BaseDirectory, "data", "weather", "tmy3_723170_NC.csv"), new() { Site = site }).Series!;
        var hours = Enumerable.Range(0, series.Hours.Length)
            .Select(i => (Hour: series.Start.AddHours(i), series.Hours[i].Cloud, series.Hours[i].Sun))
            .Where(h => SunPosition.At(site, h.Hour.AddMinutes(30)).Height > Math.Sin(10 * Math.PI / 180))
            .Select(h => (h.Cloud, h.Sun, Error: SlabSun.Mean(site, h.Hour, h.Cloud) - h.Sun)).ToArray();
        return [Row("0 to 2 tenths", 0, 0.2), Row("3 to 7 tenths", 0.3, 0.7), Row("8 to 10 tenths", 0.8, 1), Row("all", 0, 1)];

        (string, int, double, double, double) Row(string sky, double least, double most)
        {
            var some = hours.Where(h => h.Cloud > least - 0.05 && h.Cloud < most + 0.05).ToArray();
            var bias = some.Average(h => h.Error);
            return (sky, some.Length, some.Average(h => h.Sun), bias, Math.Sqrt(some.Average(h => (h.Error - bias) * (h.Error - bias))));
        }
    }
}
