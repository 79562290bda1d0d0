using System.Collections.Immutable;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Measures;

namespace Slabwright.Data.Weather;

/// <summary>Which column of a weather table gives a variable, and in which unit.</summary>
/// <param name="Variable">The variable.</param>
/// <param name="Header">Header as the file spells it.</param>
/// <param name="Factor">Value in SI over value in the file.</param>
/// <param name="Offset">Value in SI of a 0 in the file.</param>
public sealed record WeatherColumn(WeatherVariable Variable, string Header, double Factor = 1, double Offset = 0);

/// <summary>How a weather table is laid out; guessed from its header, or stated and remembered.</summary>
/// <param name="HourHeader">Column with the local standard time, as 2026-04-01T22:00 or one of the usual forms.</param>
/// <param name="Columns">The other columns.</param>
public sealed record WeatherMapping(string HourHeader, ImmutableArray<WeatherColumn> Columns)
{
    private static readonly (string Ending, double Factor, double Offset)[] Temperatures =
        [("f", Units.Fahrenheit.Factor, Units.Fahrenheit.Offset), ("degf", Units.Fahrenheit.Factor, Units.Fahrenheit.Offset), ("c", 1, 0), ("degc", 1, 0), ("k", 1, -273.15)];

    private static readonly (string Ending, double Factor, double Offset)[] Speeds =
        [("mph", 0.44704, 0), ("miperh", 0.44704, 0), ("mpers", 1, 0), ("ms", 1, 0), ("kmh", 1 / 3.6, 0), ("kmperh", 1 / 3.6, 0), ("kt", 0.514444, 0), ("knots", 0.514444, 0)];

    private static readonly (string Ending, double Factor, double Offset)[] Shares = [("share", 1, 0), ("pct", 0.01, 0), ("percent", 0.01, 0), ("tenths", 0.1, 0), ("oktas", 0.125, 0)];

    private static readonly (string Ending, double Factor, double Offset)[] Fluxes = [("wperm2", 1, 0), ("wm2", 1, 0)];

    private static readonly (string Ending, double Factor, double Offset)[] Depths = [("in", 0.0254, 0), ("mm", 0.001, 0), ("m", 1, 0)];

    private static readonly (string Ending, double Factor, double Offset)[] Differences = [("f", 5.0 / 9, 0), ("degf", 5.0 / 9, 0), ("c", 1, 0), ("degc", 1, 0), ("k", 1, 0)];

    private static readonly (WeatherVariable Variable, string[] Names, (string Ending, double Factor, double Offset)[] Units)[] Known =
    [
        (WeatherVariable.AirSpread, ["airtempsd", "tempsd", "airspread"], Differences),
        (WeatherVariable.HumiditySpread, ["humiditysd", "relhumiditysd", "humidityspread"], Shares),
        (WeatherVariable.WindSpread, ["windsd", "windspeedsd", "windspread"], Speeds),
        (WeatherVariable.SunSpread, ["sunsd", "sunspread"], Shares),
        (WeatherVariable.CloudSpread, ["cloudsd", "cloudspread"], Shares),
        (WeatherVariable.Air, ["airtemp", "airtemperature", "temperature", "temp", "drybulb"], Temperatures),
        (WeatherVariable.Humidity, ["humidity", "relhumidity", "relativehumidity", "rh"], Shares),
        (WeatherVariable.DewPoint, ["dewpoint", "dewpointtemperature"], Temperatures),
        (WeatherVariable.Wind, ["wind", "windspeed"], Speeds),
        (WeatherVariable.Sun, ["sun", "ghi", "solar", "globalhorizontalradiation"], Fluxes),
        (WeatherVariable.Cloud, ["cloud", "cloudcover", "totalcloud", "skycover"], Shares),
        (WeatherVariable.Rain, ["rain", "precipitation", "precip"], Depths),
    ];

    private static readonly string[] HourNames = ["hourlst", "hour", "time", "datetime", "timestamp", "date", "localtime"];

    /// <summary>Guesses from a header: names with their unit at the end, such as <c>air_temp_f</c> or <c>Wind speed (mph)</c>; null without an hour.</summary>
    /// <param name="headers">Header cells.</param>
    public static WeatherMapping? Guess(IReadOnlyList<string> headers)
    {
        var hour = headers.FirstOrDefault(h => HourNames.Contains(Letters(h), StringComparer.Ordinal));
        if (hour is null) return null;
        var columns = headers.Select(Guess).OfType<WeatherColumn>().DistinctBy(c => c.Variable).ToImmutableArray();
        return new(hour, columns);
    }

    /// <summary>The column a header stands for, or null.</summary>
    public static WeatherColumn? Guess(string header)
    {
        var letters = Letters(header);
        foreach (var (variable, names, units) in Known)
        {
            foreach (var (ending, factor, offset) in units)
            {
                if (names.Any(n => letters == n + ending)) return new(variable, header, factor, offset);
            }
        }

        return null;
    }

    private static string Letters(string header) =>
        string.Concat(header.ToLowerInvariant().Replace("°", "deg", StringComparison.Ordinal).Replace("²", "2", StringComparison.Ordinal).Replace("%", "pct", StringComparison.Ordinal)
            .Replace("/", "per", StringComparison.Ordinal).Where(char.IsLetterOrDigit));
}
