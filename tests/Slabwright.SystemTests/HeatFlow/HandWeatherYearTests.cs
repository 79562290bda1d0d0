using Slabwright.Core.Concrete.Weather;
using Slabwright.Data.Weather;

namespace Slabwright.SystemTests.HeatFlow;

public class HandWeatherYearTests
{
    /// <summary>
    /// Half cosine waves through the true low (before noon) and high (after it) of every day of a typical year (TMY3, station 723170), at 6:00
    /// and 15:00, against its hours: what a person may expect of weather by hand when low and high are right.
    /// </summary>
    [Fact]
    public void Hours_between_true_lows_and_highs_are_two_kelvin_off_on_the_mean()
    {
        var year = WeatherFile.Read(Path.Combine(AppContext.BaseDirectory, "data", "weather", "tmy3_723170_NC.csv")).Series!;
        var first = DateOnly.FromDateTime(year.Start);
        var made = HandWeather.Series(HandWeather.Days(first, 364, day =>
        {
            var hours = Enumerable.Range(0, 24).Select(h => year.At(year.SecondsTo(day.ToDateTime(new TimeOnly(h, 0)))).Air).ToArray();
            return new(hours[..12].Min(), 6, hours[12..].Max(), 15);
        }, 5, 2, 0.5), null, "");
        var errors = made.Hours.Select((h, i) => h.Air - year.At(year.SecondsTo(made.Start.AddHours(i))).Air).ToArray();
        var rms = Math.Sqrt(errors.Average(e => e * e));
        Assert.True(rms is > 0.5 and < 2.5, $"{rms:0.00} K");
        Assert.True(Math.Abs(errors.Average()) < 0.5, $"{errors.Average():0.00} K");
    }
}
