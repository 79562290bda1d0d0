namespace Slabwright.Core.Concrete.Weather;

/// <summary>What a weather file may give.</summary>
public enum WeatherVariable
{
    /// <summary>Air temperature, °C.</summary>
    Air,

    /// <summary>Relative humidity, share of 1.</summary>
    Humidity,

    /// <summary>Dew point, °C; gives the humidity where that is missing.</summary>
    DewPoint,

    /// <summary>Wind speed, m/s.</summary>
    Wind,

    /// <summary>Sun on a level surface, W/m².</summary>
    Sun,

    /// <summary>Cloud, share of 1.</summary>
    Cloud,

    /// <summary>Rain in the hour, m.</summary>
    Rain,

    /// <summary>Spread of the air temperature, K.</summary>
    AirSpread,

    /// <summary>Spread of the humidity, share of 1.</summary>
    HumiditySpread,

    /// <summary>Spread of the wind, m/s.</summary>
    WindSpread,

    /// <summary>Spread of the sun, share of its forecast.</summary>
    SunSpread,

    /// <summary>Spread of the cloud, share of 1.</summary>
    CloudSpread,
}

/// <summary>One row of a weather file, its numbers in SI, before anything is checked.</summary>
/// <param name="Row">Row of the file, counted from 1.</param>
/// <param name="Time">Local standard time the row is marked with.</param>
/// <param name="Values">Values by variable; NaN where the row gives none.</param>
public sealed record WeatherReading(long Row, DateTime Time, double[] Values)
{
    /// <summary>Number of variables.</summary>
    public static int Variables { get; } = Enum.GetValues<WeatherVariable>().Length;

    /// <summary>A row with nothing in it yet.</summary>
    public static WeatherReading Empty(long row, DateTime time)
    {
        var values = new double[Variables];
        Array.Fill(values, double.NaN);
        return new(row, time, values);
    }

    /// <summary>Value of a variable; NaN where there is none.</summary>
    public double this[WeatherVariable variable] => Values[(int)variable];
}

/// <summary>What a file is, as far as its rows do not say.</summary>
public sealed record WeatherOrigin
{
    /// <summary>File name for findings.</summary>
    public required string File { get; init; }

    /// <summary>Printed name; empty: the file.</summary>
    public string Name { get; init; } = "";

    /// <summary>Where it was taken; null when not known.</summary>
    public WeatherSite? Site { get; init; }

    /// <summary>True when rows are marked with the end of their hour: sun and rain then belong to the hour before the mark.</summary>
    public bool MarkedAtEnd { get; init; }

    /// <summary>True for a typical year put together from months of several: the last hour leads over to the first.</summary>
    public bool Typical { get; init; }

    /// <summary>Headers by variable, as the file spells them; variables it has no column for are not in it.</summary>
    public required IReadOnlyDictionary<WeatherVariable, string> Headers { get; init; }

    /// <summary>Header of the hour.</summary>
    public string HourHeader { get; init; } = "hour";

    /// <summary>True to look past values and order already named by another check of the same file.</summary>
    public bool Checked { get; init; }
}
