using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Weather;

/// <summary>
/// Hourly weather without holes, in local standard time without daylight saving. What the file did not give is listed in
/// <see cref="Gaps"/> and in <see cref="Findings"/>; nothing is filled unseen.
/// </summary>
public sealed record WeatherSeries
{
    /// <summary>Seconds in an hour.</summary>
    public const double Hour = 3600;

    /// <summary>Local standard time of the first hour.</summary>
    public required DateTime Start { get; init; }

    /// <summary>The hours, one after the other.</summary>
    public required ImmutableArray<WeatherHour> Hours { get; init; }

    /// <summary>Spread of a forecast, hour by hour; empty where none is given.</summary>
    public ImmutableArray<WeatherSpread> Spreads { get; init; } = [];

    /// <summary>Where it was taken; null when not said.</summary>
    public WeatherSite? Site { get; init; }

    /// <summary>Where it comes from, for print.</summary>
    public string Name { get; init; } = "";

    /// <summary>What was bridged.</summary>
    public ImmutableArray<WeatherGap> Gaps { get; init; } = [];

    /// <summary>What was wrong in the file.</summary>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <summary>Instant of the last hour: the series answers from <see cref="Start"/> to here.</summary>
    public DateTime End => Start.AddHours(Hours.Length - 1);

    /// <summary>Seconds from the start of the series to a time of day.</summary>
    public double SecondsTo(DateTime time) => (time - Start).TotalSeconds;

    /// <summary>True when the series answers for every instant of a span.</summary>
    public bool Covers(DateTime from, DateTime to) => Hours.Length > 0 && from >= Start && to <= End;

    /// <summary>Gaps that touch a span.</summary>
    public ImmutableArray<WeatherGap> GapsIn(DateTime from, DateTime to) => [.. Gaps.Where(g => g.From < to && g.From.AddHours(g.Hours) > from)];

    /// <summary>
    /// Weather at an instant: air, humidity, wind and cloud straight between the hours; sun and rain as in the hour, so that their sums
    /// over whole hours are those of the file.
    /// </summary>
    /// <param name="seconds">Seconds after <see cref="Start"/>; the first and last hour hold outside, which callers rule out with <see cref="Covers"/>.</param>
    public WeatherHour At(double seconds)
    {
        var place = Math.Clamp(seconds / Hour, 0, Hours.Length - 1);
        var index = Math.Min((int)place, Math.Max(0, Hours.Length - 2));
        var share = place - index;
        var a = Hours[index];
        if (share == 0 || Hours.Length == 1) return a;
        var b = Hours[index + 1];
        var held = share < 1 ? a : b;
        return new(a.Air + share * (b.Air - a.Air), a.Humidity + share * (b.Humidity - a.Humidity), a.Wind + share * (b.Wind - a.Wind), held.Sun,
            a.Cloud + share * (b.Cloud - a.Cloud), held.Rain);
    }

    /// <summary>
    /// The series as one draw from its spread: each hour moves by the draw times its own spread. Humidity and cloud stay within 0 and 1,
    /// wind and sun at or above 0: those are their physical limits.
    /// </summary>
    public WeatherSeries Drawn(WeatherDraw draw)
    {
        if (Spreads.IsEmpty) return this;
        var hours = ImmutableArray.CreateBuilder<WeatherHour>(Hours.Length);
        for (var i = 0; i < Hours.Length; i++)
        {
            var (h, s) = (Hours[i], Spreads[i]);
            hours.Add(h with
            {
                Air = h.Air + draw.Air * s.Air,
                Humidity = Math.Clamp(h.Humidity + draw.Humidity * s.Humidity, 0, 1),
                Wind = Math.Max(0, h.Wind + draw.Wind * s.Wind),
                Sun = Math.Max(0, h.Sun * (1 + draw.Sun * s.Sun)),
                Cloud = Math.Clamp(h.Cloud + draw.Cloud * s.Cloud, 0, 1),
            });
        }

        return this with { Hours = hours.MoveToImmutable(), Spreads = [] };
    }

    /// <summary>The series with air warmer and wind stronger throughout: what if it is 10 °F colder?</summary>
    /// <param name="air">Added to the air temperature, K.</param> <param name="windFactor">Times the wind.</param>
    public WeatherSeries Shifted(double air, double windFactor = 1) =>
        this with { Hours = [.. Hours.Select(h => h with { Air = h.Air + air, Wind = h.Wind * windFactor })] };

    /// <summary>The hours around a span alone, so that a change of them costs no more than the span.</summary>
    /// <param name="from">Begin.</param> <param name="to">End.</param>
    public WeatherSeries Between(DateTime from, DateTime to)
    {
        if (Hours.Length == 0) return this;
        var first = Math.Clamp((int)Math.Floor(SecondsTo(from) / Hour), 0, Hours.Length - 1);
        var end = Math.Clamp((int)Math.Ceiling(SecondsTo(to) / Hour) + 1, first + 1, Hours.Length);
        return this with { Start = Start.AddHours(first), Hours = Hours[first..end], Spreads = Spreads.IsEmpty ? Spreads : Spreads[first..end] };
    }

    /// <summary>
    /// A typical year moved to another: its first hour on 1 January. In a leap year the hours of 28 February come twice and are listed in
    /// <see cref="Gaps"/>.
    /// </summary>
    public WeatherSeries InYear(int year)
    {
        var start = new DateTime(year, 1, 1, 0, 0, 0, DateTimeKind.Unspecified).AddHours((Start - new DateTime(Start.Year, 1, 1, 0, 0, 0, DateTimeKind.Unspecified)).TotalHours);
        var moved = this with { Start = start, Gaps = [.. Gaps.Select(g => g with { From = start + (g.From - Start) })] };
        var leap = (int)Math.Round(moved.SecondsTo(new DateTime(year, 2, 28, 0, 0, 0, DateTimeKind.Unspecified)) / Hour);
        if (!DateTime.IsLeapYear(year) || DateTime.IsLeapYear(Start.Year) || leap < 0 || leap + 24 > Hours.Length) return moved;
        return moved with
        {
            Hours = Hours.InsertRange(leap, Hours[leap..(leap + 24)]),
            Spreads = Spreads.IsEmpty ? Spreads : Spreads.InsertRange(leap, Spreads[leap..(leap + 24)]),
            Gaps = moved.Gaps.Select(g => g.From >= start.AddHours(leap + 24) ? g with { From = g.From.AddHours(24) } : g).Append(new(start.AddHours(leap + 24), 24, "all")).ToImmutableArray(),
        };
    }
}
