using Slabwright.Core.Concrete.Hydration;

namespace Slabwright.Core.Concrete.Weather;

/// <summary>Laws of the long-wave radiation of the sky.</summary>
public enum SkyLaw
{
    /// <summary>Emissivity from dew point and cloud: Clark and Allen, cloud after Walton.</summary>
    ClarkAllen,

    /// <summary>Sky temperature from dew point and hour, clear sky: Berdahl and Martin.</summary>
    BerdahlMartin,

    /// <summary>Sky 11 K colder than the air: EN ISO 52016, mid latitudes.</summary>
    ElevenBelowAir,
}

/// <summary>Humidity of the air and radiation of the sky.</summary>
public static class Sky
{
    /// <summary>Stefan–Boltzmann constant, W/(m²·K⁴).</summary>
    public const double StefanBoltzmann = 5.670374419e-8;

    /// <summary>Dew point, °C.</summary>
    /// <remarks>Source: Magnus form with the constants of Alduchov and Eskridge 1996 (from memory); air drier than 1 % counts as 1 %.</remarks>
    /// <param name="air">Air temperature, °C.</param> <param name="humidity">Relative humidity, share of 1.</param>
    public static double DewPoint(double air, double humidity)
    {
        var g = Math.Log(Math.Max(humidity, 0.01)) + 17.625 * air / (243.04 + air);
        return 243.04 * g / (17.625 - g);
    }

    /// <summary>Relative humidity of a dew point, share of 1; the inverse of <see cref="DewPoint"/>.</summary>
    /// <param name="air">Air temperature, °C.</param> <param name="dewPoint">Dew point, °C.</param>
    public static double Humidity(double air, double dewPoint) =>
        Math.Exp(17.625 * dewPoint / (243.04 + dewPoint) - 17.625 * air / (243.04 + air));

    /// <summary>Emissivity of the sky: (0.787 + 0.764 ln(Td/273)) (1 + 0.0224 N − 0.0035 N² + 0.00028 N³), N in tenths.</summary>
    /// <remarks>Source: Clark and Allen; cloud term in Walton, NBSIR 83-2655.</remarks>
    /// <param name="dewPoint">Dew point, °C.</param> <param name="cloud">Cloud, share of 1.</param>
    public static double ClarkAllenEmissivity(double dewPoint, double cloud)
    {
        var n = 10 * cloud;
        return (0.787 + 0.764 * Math.Log((dewPoint + EquivalentAge.Freezing) / 273)) * (1 + n * (0.0224 + n * (-0.0035 + n * 0.00028)));
    }

    /// <summary>Emissivity of a clear sky by dew point and hour: 0.711 + 0.0056 Td + 0.000073 Td² + 0.013 cos(π t/12).</summary>
    /// <remarks>Source: Berdahl and Martin form, as quoted in the project's concrete reference.</remarks>
    /// <param name="dewPoint">Dew point, °C.</param> <param name="hour">Hours after midnight.</param>
    public static double BerdahlMartinEmissivity(double dewPoint, double hour) =>
        0.711 + dewPoint * (0.0056 + 0.000073 * dewPoint) + 0.013 * Math.Cos(Math.PI * hour / 12);

    /// <summary>Long-wave radiation that comes down from the sky, W/m².</summary>
    /// <param name="law">The law.</param> <param name="weather">Weather.</param> <param name="hour">Hours after midnight.</param>
    public static double Incoming(SkyLaw law, in WeatherHour weather, double hour)
    {
        var air = weather.Air + EquivalentAge.Freezing;
        if (law == SkyLaw.ElevenBelowAir) return StefanBoltzmann * Math.Pow(air - 11, 4);
        var dewPoint = DewPoint(weather.Air, weather.Humidity);
        var emissivity = law == SkyLaw.ClarkAllen ? ClarkAllenEmissivity(dewPoint, weather.Cloud) : BerdahlMartinEmissivity(dewPoint, hour);
        return emissivity * StefanBoltzmann * air * air * air * air;
    }
}
