namespace Slabwright.Core.Concrete.Weather;

/// <summary>Sun on a level slab from its height and the cloud, for weather that does not give it.</summary>
public static class SlabSun
{
    /// <summary>Clear sky: 910 sin h − 30 W/m², none below the height where that is negative.</summary>
    /// <remarks>Source: Kasten and Czeplak, Solar Energy 24, 1980 (from memory; Hamburg). Held against the TMY3 stations in docs/heat-measured.md.</remarks>
    /// <param name="height">Sine of the sun's height.</param>
    public static double Clear(double height) => Math.Max(0, 910 * height - 30);

    /// <summary>Clear sky times 1 − 0.75 N^3.4.</summary>
    /// <remarks>Source: Kasten and Czeplak 1980 (from memory).</remarks>
    /// <param name="height">Sine of the sun's height.</param> <param name="cloud">Cloud, share of 1.</param>
    public static double Clouded(double height, double cloud) => Clear(height) * (1 - 0.75 * Math.Pow(cloud, 3.4));

    /// <summary>Mean over the hour that begins at a time, W/m².</summary>
    /// <param name="site">The place.</param> <param name="hour">Local standard time.</param> <param name="cloud">Cloud, share of 1.</param>
    public static double Mean(WeatherSite site, DateTime hour, double cloud) => SunPosition.HourMean(site, hour, s => Clouded(s.Height, cloud));
}
