using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Tests.HeatFlow;

namespace Slabwright.Tests.ConcreteWork;

/// <summary>The lag of one section laid on columns, against sections computed for every trial.</summary>
public class SectionLagTests
{
    private static readonly HeatCase Planned = new(SimpleSlab.Mix, Invented.Start.AddDays(15).AddHours(22), 22, 0.23, 24) { RepairLength = 1.8 };

    [Fact]
    public void Edges_by_the_lag_mature_as_in_a_section_run_for_every_air_and_placing_temperature()
    {
        var lagging = new WeatherSlabHeat(Invented.Weather()).Around(Planned);
        var section = new WeatherSlabHeat(Invented.Weather()) { RepairLength = 1.8 };
        var worst = 0.0;
        foreach (var air in new[] { -3.4, 0, 3.4 })
        {
            foreach (var placing in new[] { -3.4, 0, 3.4 })
            {
                var heatCase = Planned with { AirShift = air, PlacingTemperature = 22 + placing };
                var (ours, full) = (EdgeOf(lagging.Run(heatCase)), EdgeOf(section.Run(heatCase)));
                foreach (var maturity in new[] { 4.0, 7, 10, 14 })
                    worst = Math.Max(worst, Math.Abs(MaturityScale.Age.HoursTo(maturity, ours.History)!.Value - MaturityScale.Age.HoursTo(maturity, full.History)!.Value));
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"greatest difference {worst:0.000} h");
        Assert.InRange(worst, 1e-6, 0.2);
    }

    [Fact]
    public void Edge_and_corner_lag_and_the_corner_most()
    {
        var heat = new WeatherSlabHeat(Invented.Weather());
        var places = heat.Around(Planned).Run(Planned);
        double Of(SlabPlace place) => places.Where(p => p.Place == place).Min(p => MaturityScale.Age.Of([.. p.History.TakeWhile(t => t.Hours <= 8)]));
        Assert.True(Of(SlabPlace.Edge) < Of(SlabPlace.MidDepth));
        Assert.True(Of(SlabPlace.Corner) < Of(SlabPlace.Edge));
        var question = SimpleSlab.Case() with { Heat = Planned };
        var column = OpeningForecast.Run(question with { Heat = Planned with { RepairLength = null } }, heat);
        var whole = OpeningForecast.Run(question, heat);
        Assert.True(whole.Earliest > column.Earliest);
        Assert.Equal(SlabPlace.Corner, whole.Hours[16].Governs);
        Assert.Contains(whole.Reasons, r => r.Rule == "edge and corner");
        Assert.DoesNotContain(column.Reasons, r => r.Rule == "edge and corner");
    }

    [Fact]
    public void A_corner_between_slabs_as_warm_as_the_repair_does_not_lag()
    {
        // Old concrete that hydrates nowhere, placed at the road's own temperature: nothing is colder than anything else along the road.
        var weather = Invented.Weather(swing: 0) with { Hours = [.. Invented.Weather(swing: 0).Hours.Select(h => h with { Sun = 0 })] };
        var column = new SlabColumn { Thickness = 0.23, Covers = CoverSchedule.Dry };
        var run = Invented.Run(weather, 12);
        run = run with { Before = column.SpinUp(run) };
        run = run with { PlacingTemperature = run.Before.At(0.115) };
        var plain = new WeatherSlabHeat(weather).Run(Planned with { Hours = 12 });
        var lagged = SectionLag.Of(column, run, 1.8, null).With(plain, plain, 0);
        foreach (var place in new[] { SlabPlace.Edge, SlabPlace.Corner })
        {
            foreach (var (a, b) in lagged.First(p => p.Place == place).History.Zip(lagged.First(p => p.Place == (place == SlabPlace.Edge ? SlabPlace.MidDepth : SlabPlace.Surface)).History))
                Assert.Equal(b.Temperature, a.Temperature, 1.5);
        }
    }

    [Fact]
    public void A_form_in_cold_air_lags_more_than_an_old_slab_and_stripping_it_early_more_still()
    {
        var cold = Invented.Weather(air: 2, swing: 2, wind: 8);
        double At(EdgeFormCover? form) => new WeatherSlabHeat(cold).Around(Planned with { Form = form }).Run(Planned).Where(p => p.Place == SlabPlace.Edge)
            .Min(p => MaturityScale.Age.Of(p.History));
        var (stays, stripped) = (At(new EdgeFormCover(double.PositiveInfinity, 0.15)), At(new EdgeFormCover(4, 0.15)));
        Assert.True(stripped < stays);
        Assert.True(stripped < At(null));
    }

    private static PlaceHistory EdgeOf(IEnumerable<PlaceHistory> places) => places.First(p => p.Place == SlabPlace.Edge);
}
