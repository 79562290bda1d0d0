using System.Globalization;

namespace Slabwright.Core.Handbook;

/// <summary>Reads clock times and days as people type them.</summary>
public static class ClockText
{
    private static readonly string[] Forms = ["H:mm", "HH:mm", "h:mm tt", "h:mmtt", "h tt", "htt"];

    /// <summary>Reads <c>22:00</c>, <c>5:00</c>, <c>10 pm</c> or <c>10:30 pm</c>.</summary>
    /// <param name="text">The text.</param> <param name="time">The time.</param>
    public static bool TryRead(string? text, out TimeOnly time) =>
        TimeOnly.TryParseExact(text?.Trim(), Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out time);

    /// <summary>Reads <c>2026-05-04</c>.</summary>
    /// <param name="text">The text.</param> <param name="day">The day.</param>
    public static bool TryDay(string? text, out DateOnly day) =>
        DateOnly.TryParseExact(text?.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day);

    /// <summary>A clock time for print, e.g. <c>3:10</c>.</summary>
    /// <param name="time">The time; seconds are rounded away.</param>
    public static string Of(DateTime time) => time.AddSeconds(30).ToString("H:mm", CultureInfo.InvariantCulture);

    /// <summary>An opening is told on the safe side: the next whole minute.</summary>
    /// <param name="time">Clock time.</param>
    public static DateTime NextMinute(DateTime time) => new((time.Ticks + TimeSpan.TicksPerMinute - 1) / TimeSpan.TicksPerMinute * TimeSpan.TicksPerMinute, time.Kind);

    /// <summary>A last placing is told on the safe side: the whole minute before.</summary>
    /// <param name="time">Clock time.</param>
    public static DateTime MinuteBefore(DateTime time) => new(time.Ticks / TimeSpan.TicksPerMinute * TimeSpan.TicksPerMinute, time.Kind);

    /// <summary>A day for print, e.g. <c>Monday 4 May 2026</c>.</summary>
    /// <param name="day">The day.</param>
    public static string Of(DateOnly day) => day.ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A span for print, e.g. <c>1:05 h</c> for an hour and five minutes.</summary>
    /// <param name="hours">Hours, 0 or more.</param>
    public static string OfSpan(double hours)
    {
        var minutes = (int)Math.Round(60 * hours);
        return string.Create(CultureInfo.InvariantCulture, $"{minutes / 60}:{minutes % 60:00} h");
    }
}
