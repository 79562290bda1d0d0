using Slabwright.Core.Concrete.Weather;

namespace Slabwright.Tests.HeatFlow;

public class HandWeatherTests
{
    private static readonly DateOnly First = new(2026, 5, 1);
    private static readonly WeatherSite Site = new(40, -90, -6);

    private static WeatherSeries Series(WeatherSite? site = null) =>
        HandWeather.Series(HandWeather.Days(First, 4, d => d.Day == 3 ? new(8, 6, 20, 15) : new(12, 6, 24, 15), 7, 3, 0.5), site, "by hand");

    [Fact]
    public void Air_goes_through_every_low_and_high_and_never_beyond()
    {
        var series = Series();
        Assert.Equal(First.ToDateTime(new TimeOnly(6, 0)), series.Start);
        Assert.Equal([12.0, 24, 12, 24, 8, 20, 12, 24], new[] { 0, 9, 24, 33, 48, 57, 72, 81 }.Select(i => Math.Round(series.Hours[i].Air, 9)));
        Assert.All(series.Hours, h => Assert.InRange(h.Air, 8, 24));
        Assert.Equal(82, series.Hours.Length);
    }

    /// <summary>Half a cosine wave has its mean in the middle: the mean of a rise is that of low and high.</summary>
    [Fact]
    public void The_mean_of_a_rise_is_the_middle()
    {
        Assert.Equal(18, HandWeather.Between(12, 24, 0.5), 1e-12);
        Assert.Equal(18, Enumerable.Range(0, 1000).Average(i => HandWeather.Between(12, 24, (i + 0.5) / 1000)), 1e-9);
        Assert.Equal(12 + 12 * (1 - Math.Sqrt(0.5)) / 2, HandWeather.Between(12, 24, 0.25), 1e-12);
    }

    [Fact]
    public void Humidity_follows_the_dew_point_and_saturates_below_it()
    {
        var series = Series();
        Assert.Equal(Sky.Humidity(12, 7), series.Hours[0].Humidity, 1e-12);
        Assert.True(series.Hours[9].Humidity < series.Hours[0].Humidity);
        var damp = HandWeather.Series(HandWeather.Days(First, 2, _ => new(2, 6, 20, 15), 7, 3, 0.5), null, "");
        Assert.Equal(1, damp.Hours[0].Humidity);
    }

    [Fact]
    public void The_sun_shines_by_day_where_the_place_is_known()
    {
        Assert.All(Series().Hours, h => Assert.Equal(0, h.Sun));
        var sunny = Series(Site);
        var noon = sunny.At(sunny.SecondsTo(First.AddDays(1).ToDateTime(new TimeOnly(12, 0))));
        Assert.InRange(noon.Sun, 500, 900);
        Assert.Equal(0, sunny.At(sunny.SecondsTo(First.AddDays(1).ToDateTime(new TimeOnly(23, 0)))).Sun);
    }
}
