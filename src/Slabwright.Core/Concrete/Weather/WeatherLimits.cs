namespace Slabwright.Core.Concrete.Weather;

/// <summary>What an hour can bring. Values outside are not believed.</summary>
public static class WeatherLimits
{
    /// <summary>Least and greatest of a variable, SI. Common practice: a little beyond the records of inhabited places.</summary>
    public static (double Least, double Most, string Unit) Of(WeatherVariable variable) => variable switch
    {
        WeatherVariable.Air => (-60, 60, "°C"),
        WeatherVariable.DewPoint => (-80, 40, "°C"),
        WeatherVariable.Wind => (0, 110, "m/s"),
        WeatherVariable.Sun => (0, 1_500, "W/m²"),
        WeatherVariable.Rain => (0, 0.4, "m"),
        WeatherVariable.AirSpread => (0, 20, "K"),
        WeatherVariable.WindSpread => (0, 30, "m/s"),
        _ => (0, 1, "share"),
    };

    /// <summary>Value taken where a file does not give the variable at all; null where there must be one.</summary>
    public static double? WhenMissing(WeatherVariable variable) => variable switch
    {
        WeatherVariable.Humidity => 0.6,
        WeatherVariable.Wind => 2,
        WeatherVariable.Sun => 0,
        WeatherVariable.Cloud => 0.5,
        WeatherVariable.Air => null,
        _ => 0,
    };

    /// <summary>The variable in words.</summary>
    public static string Words(WeatherVariable variable) => Evidence.TradeWords.Of(variable) switch
    {
        "air" => "air temperature",
        var words => words,
    };
}
