namespace Slabwright.Core.Concrete.Weather;

/// <summary>Where the sun stands.</summary>
/// <param name="Zenith">Angle from straight up, rad, without refraction.</param>
/// <param name="Azimuth">Direction, rad clockwise from north.</param>
/// <param name="Distance">Distance from the earth, astronomical units.</param>
public readonly record struct SunPlace(double Zenith, double Azimuth, double Distance)
{
    /// <summary>Sine of the height above the horizon; negative at night.</summary>
    public double Height => Math.Cos(Zenith);
}

/// <summary>Position of the sun by the low-precision formulas of the Astronomical Almanac: within 0.01° from 1950 to 2050.</summary>
/// <remarks>Source: Michalsky, Solar Energy 40(3), 1988 (from memory); checked against the published example of Reda and Andreas and the extraterrestrial radiation of TMY3.</remarks>
public static class SunPosition
{
    private const double Degree = Math.PI / 180;

    /// <summary>Solar constant, W/m² (that of the TMY3 data).</summary>
    public const double SolarConstant = 1367;

    /// <summary>Sun at a place and time.</summary>
    /// <param name="site">The place.</param> <param name="localStandardTime">Local standard time, without daylight saving.</param>
    public static SunPlace At(WeatherSite site, DateTime localStandardTime)
    {
        var universal = localStandardTime.AddHours(-site.UtcOffset);
        var days = (universal - new DateTime(2000, 1, 1, 12, 0, 0, DateTimeKind.Unspecified)).TotalDays;
        var longitude = (280.460 + 0.9856474 * days) % 360;
        var anomaly = (357.528 + 0.9856003 * days) % 360 * Degree;
        var ecliptic = (longitude + 1.915 * Math.Sin(anomaly) + 0.020 * Math.Sin(2 * anomaly)) * Degree;
        var obliquity = (23.439 - 4e-7 * days) * Degree;
        var ascension = Math.Atan2(Math.Cos(obliquity) * Math.Sin(ecliptic), Math.Cos(ecliptic));
        var declination = Math.Asin(Math.Sin(obliquity) * Math.Sin(ecliptic));
        var distance = 1.00014 - 0.01671 * Math.Cos(anomaly) - 0.00014 * Math.Cos(2 * anomaly);

        var sidereal = (6.697375 + 0.0657098242 * days + universal.TimeOfDay.TotalHours) * 15 + site.Longitude;
        var hour = sidereal * Degree - ascension;
        var latitude = site.Latitude * Degree;
        var height = Math.Sin(declination) * Math.Sin(latitude) + Math.Cos(declination) * Math.Cos(latitude) * Math.Cos(hour);
        var azimuth = Math.Atan2(-Math.Sin(hour), Math.Tan(declination) * Math.Cos(latitude) - Math.Sin(latitude) * Math.Cos(hour));
        return new(Math.Acos(Math.Clamp(height, -1, 1)), azimuth < 0 ? azimuth + 2 * Math.PI : azimuth, distance);
    }

    /// <summary>Sun above the air on a level surface, mean of an hour, W/m².</summary>
    /// <param name="site">The place.</param> <param name="hour">Local standard time at which the hour begins.</param>
    public static double Extraterrestrial(WeatherSite site, DateTime hour) => HourMean(site, hour, s => s.Height * SolarConstant / (s.Distance * s.Distance));

    /// <summary>Mean over an hour of what the sun gives while it is up.</summary>
    internal static double HourMean(WeatherSite site, DateTime hour, Func<SunPlace, double> gives)
    {
        const int parts = 12;
        var sum = 0.0;
        for (var i = 0; i < parts; i++)
        {
            var sun = At(site, hour.AddMinutes((i + 0.5) * 60 / parts));
            if (sun.Height > 0) sum += gives(sun);
        }

        return sum / parts;
    }
}
