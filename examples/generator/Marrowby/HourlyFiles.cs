using System.Globalization;
using Slabwright.Data.Folder;

namespace Slabwright.Examples.Marrowby;

/// <summary>Invented hourly traffic and weather of a year, in local standard time without daylight saving.</summary>
internal static class HourlyFiles
{
    private static readonly DateTime FirstHour = new(2024, 1, 1);
    private const int Hours = 366 * 24;

    /// <summary>Share of the day's traffic in each hour, working days.</summary>
    private static readonly double[] WorkDay =
    [
        0.009, 0.006, 0.005, 0.006, 0.011, 0.027, 0.056, 0.078, 0.070, 0.053, 0.049, 0.051,
        0.053, 0.054, 0.059, 0.069, 0.078, 0.080, 0.060, 0.042, 0.031, 0.024, 0.017, 0.012,
    ];

    /// <summary>The same, Saturdays and Sundays.</summary>
    private static readonly double[] WeekEnd =
    [
        0.017, 0.011, 0.008, 0.007, 0.007, 0.011, 0.019, 0.030, 0.044, 0.057, 0.066, 0.071,
        0.074, 0.075, 0.075, 0.074, 0.072, 0.067, 0.057, 0.047, 0.039, 0.031, 0.024, 0.017,
    ];

    public static CsvText Traffic()
    {
        var dice = new Dice(8_101);
        var table = new CsvText();
        table.Add("hour_lst", "volume_veh_per_h", "truck_share");
        for (var i = 0; i < Hours; i++)
        {
            var hour = FirstHour.AddHours(i);
            var weekEnd = hour.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday;
            var day = 21_400 * (weekEnd ? 0.84 : 1.07) * (1 + 0.09 * Season(hour, 200));
            var volume = day * (weekEnd ? WeekEnd : WorkDay)[hour.Hour] * (1 + 0.05 * dice.Bell());
            var trucks = (hour.Hour is < 5 or > 21 ? 0.31 : 0.125) * (weekEnd ? 0.6 : 1) * (1 + 0.06 * dice.Bell());
            table.Add(Stamp(hour), Files.Text(Math.Max(0, Math.Round(volume)), 0).TrimEnd('.'), Files.Text(Math.Clamp(trucks, 0, 1), 3));
        }

        return table;
    }

    public static CsvText Weather()
    {
        var dice = new Dice(8_102);
        var table = new CsvText();
        table.Add("hour_lst", "air_temp_f", "humidity_share", "wind_mph", "sun_w_per_m2", "cloud_share", "rain_in");
        var (front, cloud) = (0.0, 0.5);
        for (var i = 0; i < Hours; i++)
        {
            var hour = FirstHour.AddHours(i);
            front = 0.985 * front + 1.1 * dice.Bell();
            cloud = Math.Clamp(0.93 * cloud + 0.035 + 0.1 * dice.Bell(), 0, 1);
            var air = 49.5 + 22.5 * Season(hour, 205) + (1 - 0.6 * cloud) * 7.5 * Wave((hour.Hour - 15) / 24.0) + front;
            var sun = Sun(hour) * (1 - 0.72 * cloud * cloud);
            var rain = cloud > 0.86 && dice.Chance(0.24) ? 0.01 + 0.16 * dice.Next() * dice.Next() : 0;
            var humidity = Math.Clamp(0.58 + 0.26 * cloud - 0.13 * Wave((hour.Hour - 15) / 24.0) + 0.03 * dice.Bell(), 0.2, 1);
            var wind = Math.Max(0, 8.5 + 2 * Wave((hour.Hour - 14) / 24.0) + 3.1 * dice.Bell());
            table.Add(Stamp(hour), Files.Text(air, 1), Files.Text(humidity, 2), Files.Text(wind, 1), Files.Text(Math.Round(sun), 0).TrimEnd('.'), Files.Text(cloud, 2),
                Files.Short(rain, 2));
        }

        return table;
    }

    private static string Stamp(DateTime hour) => hour.ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture);

    /// <summary>+1 on the warmest (or busiest) day of the year, -1 half a year away.</summary>
    private static double Season(DateTime hour, int peakDay) => Wave((hour.DayOfYear - peakDay) / 366.0);

    private static double Wave(double turns) => Math.Cos(2 * Math.PI * turns);

    /// <summary>Sun on a level surface under a clear sky at 44 degrees north, W/m²; a plain sine of the sun's height.</summary>
    private static double Sun(DateTime hour)
    {
        const double latitude = 44 * Math.PI / 180;
        var declination = 23.45 * Math.PI / 180 * Math.Sin(2 * Math.PI * (284 + hour.DayOfYear) / 365);
        var height = Math.Sin(latitude) * Math.Sin(declination) + Math.Cos(latitude) * Math.Cos(declination) * Math.Cos((hour.Hour - 12) * Math.PI / 12);
        return height <= 0 ? 0 : 1_020 * height;
    }
}
