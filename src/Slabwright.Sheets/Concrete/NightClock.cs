using System.Globalization;
using Slabwright.Core.Concrete.Opening;

namespace Slabwright.Sheets.Concrete;

/// <summary>Turns times of the computations, which are in standard time, into clock times of the project.</summary>
/// <param name="Night">The night of work.</param>
/// <param name="ClockAhead">Hours the clock runs ahead of standard time.</param>
public sealed record NightClock(WorkNight Night, double ClockAhead)
{
    /// <summary>Clock time of a standard time.</summary>
    public DateTime Of(DateTime standard) => standard.AddHours(ClockAhead);

    /// <summary>Clock time some hours after the placing of a forecast.</summary>
    public DateTime Of(OpeningForecastResult forecast, double hours) => Of(forecast.Case.Heat.PlacedAt).AddHours(hours);

    /// <summary>Hours from the placing of a forecast to the deadline.</summary>
    public double HoursToDeadline(OpeningForecastResult forecast) => (Night.Deadline - Of(forecast.Case.Heat.PlacedAt)).TotalHours;

    /// <summary>Hour and minute, e.g. <c>03:10</c>.</summary>
    public static string Hour(DateTime clock) => clock.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>Day and hour, e.g. <c>Tue 5 May 03:10</c>.</summary>
    public static string Full(DateTime clock) => clock.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);

    /// <summary>The day, e.g. <c>Tue 5 May 2026</c>.</summary>
    public static string Day(DateTime clock) => clock.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);
}
