using Slabwright.Core.Concrete.Weather;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>Weather of another year in place of that of a day.</summary>
public static class WeatherYear
{
    /// <summary>The series, moved by whole years so that it holds a day; as it is where it holds the day already, or none of its years does.</summary>
    /// <param name="weather">Weather.</param> <param name="day">The day.</param>
    /// <returns>The series, and the year it was taken from where it was moved.</returns>
    public static (WeatherSeries Weather, int? Year) On(WeatherSeries weather, DateOnly day)
    {
        var start = day.ToDateTime(TimeOnly.MinValue);
        if (weather.Hours.IsEmpty || (start >= weather.Start && start <= weather.End)) return (weather, null);
        for (var year = weather.Start.Year; year <= weather.End.Year; year++)
        {
            var same = day.AddYears(year - day.Year).ToDateTime(TimeOnly.MinValue);
            if (same >= weather.Start && same <= weather.End) return (weather with { Start = weather.Start + (start - same) }, year);
        }

        return (weather, null);
    }
}
