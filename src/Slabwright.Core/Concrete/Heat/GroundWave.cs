using Slabwright.Core.Concrete.Weather;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>Yearly wave of the ground's temperature, from the air.</summary>
/// <param name="Mean">Mean of the year, °C.</param>
/// <param name="Amplitude">Half the swing of the air between summer and winter, K.</param>
/// <param name="WarmestDay">Day of the year on which the air is warmest, 0 on 1 January.</param>
public sealed record GroundWave(double Mean, double Amplitude, double WarmestDay)
{
    private const double Year = 365.2425;
    private const int WholeYear = 330 * 24;
    private const int MonthAround = 30 * 24;

    /// <summary>First harmonic of the air over a year of weather; with less, the mean of the month around a day and no wave.</summary>
    /// <param name="weather">Weather.</param> <param name="time">Local standard time of placing.</param>
    public static GroundWave From(WeatherSeries weather, DateTime time)
    {
        if (weather.Hours.Length < WholeYear)
        {
            var at = (int)Math.Clamp(weather.SecondsTo(time) / WeatherSeries.Hour, 0, weather.Hours.Length - 1);
            var (from, to) = (Math.Max(0, at - MonthAround), Math.Min(weather.Hours.Length, at + MonthAround));
            return new(weather.Hours[from..to].Average(h => h.Air), 0, 0);
        }

        var count = Math.Min(weather.Hours.Length, (int)(Year * 24));
        var (mean, cosine, sine) = (0.0, 0.0, 0.0);
        var first = DayOf(weather.Start);
        for (var i = 0; i < count; i++)
        {
            var angle = 2 * Math.PI * (first + i / 24.0) / Year;
            mean += weather.Hours[i].Air;
            cosine += weather.Hours[i].Air * Math.Cos(angle);
            sine += weather.Hours[i].Air * Math.Sin(angle);
        }

        (cosine, sine) = (2 * cosine / count, 2 * sine / count);
        var warmest = Math.Atan2(sine, cosine) / (2 * Math.PI) * Year;
        return new(mean / count, Math.Sqrt(cosine * cosine + sine * sine), warmest < 0 ? warmest + Year : warmest);
    }

    /// <summary>Temperature at a depth: the wave fades and lags as it goes down.</summary>
    /// <remarks>Source: Carslaw and Jaeger, sinusoidal surface temperature on a half-space (textbook).</remarks>
    /// <param name="time">Local standard time.</param> <param name="depth">Depth, m.</param> <param name="diffusivity">Of the ground, m²/s.</param>
    public double At(DateTime time, double depth, double diffusivity)
    {
        var omega = 2 * Math.PI / (Year * 86400);
        var phase = depth / Math.Sqrt(2 * diffusivity / omega);
        return Mean + Amplitude * Math.Exp(-phase) * Math.Cos(omega * 86400 * (DayOf(time) - WarmestDay) - phase);
    }

    private static double DayOf(DateTime time) => time.DayOfYear - 1 + time.TimeOfDay.TotalDays;
}
