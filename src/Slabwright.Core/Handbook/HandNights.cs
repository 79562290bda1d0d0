using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Handbook;

/// <summary>A day on which a night begins, with its own low and high where they were typed.</summary>
internal sealed record TypedNight(DateOnly Day, double? Low, double? High);

/// <summary>Nights and weather as typed.</summary>
internal static partial class HandNights
{
    /// <summary>Days of weather before the first night, so that the road's temperatures are found.</summary>
    private const int DaysBefore = 15;

    private const int DaysAfter = 5;

    /// <summary>The nights; those that cannot be read become findings.</summary>
    public static ImmutableArray<TypedNight> Days(HandReading reading)
    {
        if (reading.Text("night") is not { } list)
        {
            reading.Add("HBK-002", "The nights (night) are missing.", "night", null, "Give the day on which the night begins, e.g. --night 2026-05-04.");
            return [];
        }

        var days = list.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(t => One(t, reading)).OfType<TypedNight>().OrderBy(n => n.Day).ToImmutableArray();
        if (!days.IsEmpty && days[^1].Day.DayNumber - days[0].Day.DayNumber > 60)
            reading.Add("CON-133", "The nights lie more than 60 days apart; weather by hand does not hold for so long.", "night", list, "Ask for them apart, or give --weather.");
        return days;
    }

    /// <summary>A night with the clock times given.</summary>
    public static WorkNight Night(TypedNight day, HandReading reading)
    {
        var placed = reading.Clock("placed-at");
        return new WorkNight(day.Day, reading.Has("placing-from") ? reading.Clock("placing-from") : placed.AddHours(-2), reading.Clock("open-by")) { PlacedAt = placed };
    }

    /// <summary>Weather from low and high, or from the forecast typed, the same day after day; null with findings.</summary>
    public static WeatherSeries? Weather(HandReading reading, ImmutableArray<TypedNight> nights)
    {
        if (nights.IsEmpty || reading.IsWrong) return null;
        var first = nights[0].Day.AddDays(-DaysBefore);
        var days = nights[^1].Day.DayNumber - first.DayNumber + DaysAfter;
        var ahead = reading.Hours("clock-ahead");
        if (reading.Text("forecast") is { } text)
        {
            var day = Forecast(text, reading);
            if (day.Length == 0) return null;
            return Made([.. Enumerable.Range(0, days).SelectMany(d => day.Select(p => p with { At = p.At.AddDays(first.DayNumber + d).AddHours(-ahead) }))], reading);
        }

        var (lowAt, highAt) = (Hour(reading.Clock("low-at"), ahead), Hour(reading.Clock("high-at"), ahead));
        if (reading.IsWrong) return null;
        foreach (var night in nights.Where(n => (n.Low ?? reading["low"]) > (n.High ?? reading["high"])))
            reading.Add("CON-138", "The low is above the high.", night.Low is null ? "low" : "night", Text(night.Low ?? reading["low"], reading), "Give the lowest air of the night as low.");
        if (reading.IsWrong) return null;
        DayRange Range(DateOnly day) => new(LowOf(lowAt < 12 ? day.AddDays(-1) : day), lowAt, NightOf(day).High ?? reading["high"], highAt);
        double LowOf(DateOnly day) => NightOf(day).Low ?? reading["low"];
        TypedNight NightOf(DateOnly day) => nights.LastOrDefault(n => n.Day <= day) ?? nights[0];
        var placing = AirAt(Range(nights[0].Day), Hour(reading.Clock("placed-at"), ahead));
        return Made(HandWeather.Days(first, days, Range, Sky.DewPoint(placing, reading["humidity"]), reading["wind"], reading["cloud"]), reading);
    }

    private static WeatherSeries Made(ImmutableArray<WeatherPoint> points, HandReading reading) =>
        HandWeather.Series([.. points.OrderBy(p => p.At)], Site(reading), "weather by hand");

    private static WeatherSite Site(HandReading reading)
    {
        var latitude = reading["latitude"] / Units.Degree.Factor;
        if (reading.Number("longitude") is not { } east) return new(latitude, 0, 0);
        var longitude = east / Units.Degree.Factor;
        return new(latitude, longitude, reading.Number("utc-offset") is { } offset ? offset / HandInputs.Hour : Math.Round(longitude / 15));
    }

    /// <summary>Air at an hour of a day on which low and high come back at the same hours.</summary>
    private static double AirAt(DayRange range, double hour)
    {
        var rise = (range.HighAt - range.LowAt + 24) % 24;
        var since = (hour - range.LowAt + 24) % 24;
        return since <= rise ? HandWeather.Between(range.Low, range.High, since / rise) : HandWeather.Between(range.High, range.Low, (since - rise) / (24 - rise));
    }

    private static TypedNight? One(string text, HandReading reading)
    {
        var parts = NightForm().Match(text);
        if (parts.Success && ClockText.TryDay(parts.Groups["day"].Value, out var day))
        {
            if (!parts.Groups["low"].Success) return new(day, null, null);
            var unit = Entry.Temperature.In(reading.System);
            if (MeasureText.Read(parts.Groups["low"].Value, unit, out var low) == MeasureReading.Read && MeasureText.Read(parts.Groups["high"].Value, unit, out var high) == MeasureReading.Read
                && low is > -50 and < 50 && high is > -50 and < 60) return new(day, low, high);
        }

        reading.Add("CON-133", "This is not a night.", "night", text, "Write the day on which it begins, with its low and high where it has its own: \"2026-05-04; 2026-05-05 45 °F to 66 °F\".");
        return null;
    }

    /// <summary>The points of a forecast on day 0 of the calendar; a variable not typed holds from the point before, else from the options.</summary>
    private static ImmutableArray<WeatherPoint> Forecast(string text, HandReading reading)
    {
        var points = ImmutableArray.CreateBuilder<WeatherPoint>();
        var before = (Humidity: reading["humidity"], Wind: reading["wind"], Cloud: reading["cloud"]);
        foreach (var item in text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var form = PointForm().Match(item);
            if (!form.Success || !ClockText.TryRead(form.Groups["clock"].Value, out var clock) || Values(form.Groups["rest"].Value, before, reading.System) is not var (air, now))
            {
                reading.Add("CON-134", "This is not a clock time with the air and, where known, humidity, wind and cloud.", "forecast", item, "Write e.g. \"22:00 58 °F 70 % 5 mph 40 %; 2:00 52 °F\".");
                continue;
            }

            before = now;
            points.Add(new(DateTime.MinValue.Add(clock.ToTimeSpan()), air, Sky.DewPoint(air, now.Humidity), now.Wind, now.Cloud));
        }

        if (points.Count < 2 && !reading.IsWrong) reading.Add("CON-134", "A forecast needs two clock times at the least.", "forecast", text, "Give the evening, the coldest hour and the next noon.");
        if (points.DistinctBy(p => p.At).Count() < points.Count) reading.Add("CON-134", "A clock time stands twice.", "forecast", text, "Give each time once.");
        return reading.IsWrong ? [] : [.. points.OrderBy(p => p.At)];
    }

    private static (double Air, (double Humidity, double Wind, double Cloud) Now)? Values(string text, (double Humidity, double Wind, double Cloud) now, UnitSystem system)
    {
        var (temperature, speed) = (Entry.Temperature.In(system), Entry.Speed.In(system));
        var (air, shares) = ((double?)null, 0);
        foreach (Match part in MeasureForm().Matches(text))
        {
            var measure = part.Value.Trim();
            if (air is null && MeasureText.Read(measure, temperature, out var warm) == MeasureReading.Read) air = warm;
            else if (measure.EndsWith('%') && MeasureText.Read(measure, Units.Percent, out var share) == MeasureReading.Read && share is >= 0 and <= 1 && shares++ < 2)
                now = shares == 1 ? now with { Humidity = Math.Max(0.02, share) } : now with { Cloud = share };
            else if (MeasureText.Read(measure, speed, out var wind) == MeasureReading.Read && wind is >= 0 and <= 40) now = now with { Wind = wind };
            else return null;
        }

        return air is { } read and > -50 and < 60 && MeasureForm().Replace(text, "").Trim(' ', ',').Length == 0 ? (read, now) : null;
    }

    private static double Hour(TimeOnly clock, double ahead) => (clock.ToTimeSpan().TotalHours - ahead + 24) % 24;

    private static string Text(double air, HandReading reading) => MeasureText.Write(air, Entry.Temperature.In(reading.System));

    [GeneratedRegex(@"^(?<day>\d{4}-\d\d?-\d\d?)(?:\s+(?<low>[^;]+?)\s+to\s+(?<high>[^;]+))?$", RegexOptions.CultureInvariant)]
    private static partial Regex NightForm();

    [GeneratedRegex(@"^(?<clock>\d{1,2}:\d\d(?:\s*[ap]m)?|\d{1,2}\s*[ap]m)\s+(?<rest>.+)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex PointForm();

    [GeneratedRegex(@"[+-]?\d+(?:\.\d+)?\s*(?:%|[^\d\s,;%+-]+)?\s*")]
    private static partial Regex MeasureForm();
}
