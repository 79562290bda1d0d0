using System.Collections.Immutable;

namespace Slabwright.Core.Concrete.Weather;

/// <summary>Weather known or guessed at one time, as a person writes it down.</summary>
/// <param name="At">Local standard time.</param>
/// <param name="Air">Air temperature, °C.</param>
/// <param name="DewPoint">Dew point, °C.</param>
/// <param name="Wind">Wind at 10 m, m/s.</param>
/// <param name="Cloud">Cloud, share of 1.</param>
public sealed record WeatherPoint(DateTime At, double Air, double DewPoint, double Wind, double Cloud);

/// <summary>Lowest and highest air of a day and when they come.</summary>
/// <param name="Low">Lowest air, °C.</param> <param name="LowAt">When, h after midnight, local standard time.</param>
/// <param name="High">Highest air, °C.</param> <param name="HighAt">When, h after midnight, local standard time.</param>
public sealed record DayRange(double Low, double LowAt, double High, double HighAt);

/// <summary>
/// Hourly weather from what is written down by hand: a few points in time, or the low and high of each day. Air goes in half cosine waves
/// from point to point, dew point, wind and cloud straight; the sun follows from its height and the cloud.
/// </summary>
/// <remarks>
/// Half cosine waves between the lowest and the highest air: de Wit and others 1978 (from memory). Held against hourly data in the tests: the
/// error of an hour on clear and cloudy days of a typical year is about 2 K.
/// </remarks>
public static class HandWeather
{
    /// <summary>Air between two points: half a cosine wave.</summary>
    /// <param name="before">Air at the point before, °C.</param> <param name="after">Air at the point after, °C.</param>
    /// <param name="share">Share of the time between them, 0 to 1.</param>
    public static double Between(double before, double after, double share) => before + (after - before) * (1 - Math.Cos(Math.PI * share)) / 2;

    /// <summary>Points of lows and highs, day after day.</summary>
    /// <param name="first">First day.</param> <param name="days">Number of days.</param> <param name="range">Low and high of a day.</param>
    /// <param name="dewPoint">Dew point, °C.</param> <param name="wind">Wind at 10 m, m/s.</param> <param name="cloud">Cloud, share of 1.</param>
    public static ImmutableArray<WeatherPoint> Days(DateOnly first, int days, Func<DateOnly, DayRange> range, double dewPoint, double wind, double cloud)
    {
        var points = ImmutableArray.CreateBuilder<WeatherPoint>(2 * days);
        for (var day = first; day < first.AddDays(days); day = day.AddDays(1))
        {
            var (r, midnight) = (range(day), day.ToDateTime(TimeOnly.MinValue));
            points.Add(new(midnight.AddHours(r.LowAt), r.Low, dewPoint, wind, cloud));
            points.Add(new(midnight.AddHours(r.HighAt), r.High, dewPoint, wind, cloud));
        }

        return [.. points.OrderBy(p => p.At)];
    }

    /// <summary>The hourly series from the first whole hour to the last that the points reach.</summary>
    /// <param name="points">Points, times rising; two at the least.</param> <param name="site">Where; null: no sun is reckoned with.</param> <param name="name">Printed name.</param>
    public static WeatherSeries Series(IReadOnlyList<WeatherPoint> points, WeatherSite? site, string name)
    {
        var start = points[0].At.Date.AddHours(Math.Ceiling(points[0].At.TimeOfDay.TotalHours - 1e-9));
        var count = (int)Math.Floor((points[^1].At - start).TotalHours + 1e-9) + 1;
        var hours = ImmutableArray.CreateBuilder<WeatherHour>(count);
        for (var (i, k) = (0, 0); i < count; i++)
        {
            var time = start.AddHours(i);
            while (k + 2 < points.Count && points[k + 1].At <= time) k++;
            hours.Add(At(points[k], points[k + 1], time, site));
        }

        return new WeatherSeries { Start = start, Hours = hours.MoveToImmutable(), Site = site, Name = name };
    }

    private static WeatherHour At(WeatherPoint a, WeatherPoint b, DateTime time, WeatherSite? site)
    {
        var share = Math.Clamp((time - a.At) / (b.At - a.At), 0, 1);
        var (air, cloud) = (Between(a.Air, b.Air, share), Straight(a.Cloud, b.Cloud));
        var humidity = Math.Min(1, Sky.Humidity(air, Straight(a.DewPoint, b.DewPoint)));
        return new(air, humidity, Straight(a.Wind, b.Wind), site is null ? 0 : SlabSun.Mean(site, time, cloud), cloud);

        double Straight(double from, double to) => from + share * (to - from);
    }
}
