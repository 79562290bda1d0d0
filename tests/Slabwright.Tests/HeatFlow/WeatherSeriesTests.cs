using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Numerics.Heat;

namespace Slabwright.Tests.HeatFlow;

public sealed class WeatherSeriesTests
{
    [Fact]
    public void Values_run_straight_between_hours_and_sun_keeps_its_sum()
    {
        var series = Invented.Weather(2);
        Assert.Equal(series.Hours[5], series.At(5 * 3600));
        Assert.Equal((series.Hours[5].Air + series.Hours[6].Air) / 2, series.At(5.5 * 3600).Air, 1e-12);
        var sum = Enumerable.Range(0, 48 * 60).Sum(m => series.At(60 * m + 30).Sun) / 60;
        Assert.Equal(series.Hours[..48].Sum(h => h.Sun), sum, 1e-6);
        Assert.True(series.Covers(series.Start, series.End));
        Assert.False(series.Covers(series.Start, series.End.AddMinutes(1)));
    }

    [Fact]
    public void A_draw_keeps_within_what_is_physical()
    {
        var series = Invented.Weather(1);
        series = series with { Spreads = [.. series.Hours.Select(_ => new WeatherSpread(2, 0.5, 5, 2, 0.9))] };
        var drawn = series.Drawn(new(1, 3, -3, -3, 3));
        Assert.All(drawn.Hours, h => Assert.True(h is { Wind: >= 0, Sun: >= 0, Humidity: >= 0 and <= 1, Cloud: >= 0 and <= 1 }));
        Assert.All(drawn.Hours.Zip(series.Hours), p => Assert.Equal(p.Second.Air + 2, p.First.Air, 1e-12));
        Assert.Equal(series.Hours, series.Drawn(default).Hours);
    }

    [Fact]
    public void A_typical_year_moves_into_a_leap_year()
    {
        var year = new WeatherSeries { Start = new DateTime(2026, 1, 1), Hours = [.. Enumerable.Range(0, 8760).Select(i => new WeatherHour(i, 0.5, 1, 0, 0))] };
        var leap = year.InYear(2028);
        Assert.Equal(8784, leap.Hours.Length);
        Assert.Equal(new DateTime(2028, 12, 31, 23, 0, 0), leap.End);
        Assert.Equal(58 * 24, leap.At(leap.SecondsTo(new DateTime(2028, 2, 28))).Air);
        Assert.Equal(58 * 24, leap.At(leap.SecondsTo(new DateTime(2028, 2, 29))).Air);
        Assert.Equal(59 * 24, leap.At(leap.SecondsTo(new DateTime(2028, 3, 1))).Air);
        Assert.Equal((new DateTime(2028, 2, 29), 24), (Assert.Single(leap.Gaps).From, leap.Gaps[0].Hours));
        Assert.Equal(8760, year.InYear(2027).Hours.Length);
    }

    [Fact]
    public void The_ground_below_follows_the_year_late_and_faintly()
    {
        var year = new WeatherSeries
        {
            Start = new DateTime(2026, 1, 1), Hours = [.. Enumerable.Range(0, 8760).Select(i => new WeatherHour(12 + 14 * Math.Cos(2 * Math.PI * (i / 24.0 - 200) / 365.2425) + 5 * Math.Sin(i * 2 * Math.PI / 24), 0.5, 1, 0, 0))],
        };
        var wave = GroundWave.From(year, new DateTime(2026, 5, 1));
        Assert.Equal(12, wave.Mean, 0.02);
        Assert.Equal(14, wave.Amplitude, 0.05);
        Assert.Equal(200, wave.WarmestDay, 0.3);
        // 2.25 m of a diffusivity of 6.35e-7: √(π a year) = 2.53 m → e^−0.889… worked independently
        var depth = Math.Sqrt(6.35e-7 * 365.2425 * 86400 / Math.PI);
        Assert.Equal(12 + 14 * Math.Exp(-1), wave.At(new DateTime(2026, 1, 1).AddDays(200 + 365.2425 / (2 * Math.PI)), depth, 6.35e-7), 0.05);
        var short_ = GroundWave.From(Invented.Weather(), Invented.Start.AddDays(10));
        Assert.Equal((16.0, 0.0), (Math.Round(short_.Mean, 1), short_.Amplitude));
    }

    [Fact]
    public void Covers_follow_one_another()
    {
        var schedule = CoverSchedule.WithBlanket(2 * 3600, 6 * 3600, 0.5);
        Assert.Equal(["bare and wet", "white curing compound", "insulating blanket", "white curing compound"], new[] { 0.0, 3600, 7200, 21600 }.Select(t => schedule.At(t).Name));
        Assert.Equal(0.5, schedule.At(3 * 3600).Resistance);
        Assert.Equal("bare and wet", schedule.At(3599).Name);
    }

    [Fact]
    public void Cells_fill_their_stretch_and_grow_from_its_faces()
    {
        foreach (var (length, first, growth) in ((double, double, double)[])[(0.23, 0.01, 1.4), (1.8, 0.01, 1.4), (0.005, 0.01, 1.4), (2, 0.02, 1.0)])
        {
            var cells = CellGrading.From(length, first, growth);
            Assert.Equal(length, cells.Sum(), 1e-12);
            Assert.All(cells.Zip(cells.Skip(1)), p => Assert.True(p.Second >= p.First * (1 - 1e-12)));
            Assert.Equal(length, CellGrading.Both(length, first, growth).Sum(), 1e-12);
        }
    }
}
