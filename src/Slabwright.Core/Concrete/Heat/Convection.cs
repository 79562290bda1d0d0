using Slabwright.Core.Concrete.Hydration;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>Laws of the heat carried off by air.</summary>
public enum ConvectionLaw
{
    /// <summary>By wind alone, two branches at 5 m/s.</summary>
    TwoBranch,

    /// <summary>By wind alone, for pavements, radiation to the sky included.</summary>
    Barber,

    /// <summary>By wind and by the warmth of the surface.</summary>
    ForcedAndFree,
}

/// <summary>Coefficients of convection, W/(m²·K).</summary>
public static class Convection
{
    /// <summary>5.6 + 4.0 V up to 5 m/s, 7.2 V^0.78 above.</summary>
    /// <remarks>Source: as in NISTIR 6551 (from memory). The branches differ by 1.3 % where they meet.</remarks>
    /// <param name="wind">Wind, m/s.</param>
    public static double TwoBranch(double wind) => wind <= 5 ? 5.6 + 4 * wind : 7.2 * Math.Pow(wind, 0.78);

    /// <summary>1.3 + 0.62 v^0.75 Btu/(h·ft²·°F), v in mph; includes radiation of the surface.</summary>
    /// <remarks>Source: Barber, HRB Bulletin 168, 1957.</remarks>
    /// <param name="wind">Wind, m/s.</param>
    public static double Barber(double wind) => 5.678263 * (1.3 + 0.62 * Math.Pow(wind / 0.44704, 0.75));

    /// <summary>698.24 [0.00144 Tm^0.3 U^0.7 + 0.00097 |Ts − Ta|^0.3], Tm the mean of surface and air in kelvin.</summary>
    /// <remarks>Source: National Academies record 14410 p. 34 (the scan is hard to read; kelvin is inferred).</remarks>
    /// <param name="wind">Wind, m/s.</param> <param name="surface">Surface temperature, °C.</param> <param name="air">Air temperature, °C.</param>
    public static double ForcedAndFree(double wind, double surface, double air) =>
        698.24 * (0.00144 * Math.Pow((surface + air) / 2 + EquivalentAge.Freezing, 0.3) * Math.Pow(wind, 0.7)
            + 0.00097 * Math.Pow(Math.Abs(surface - air), 0.3));

    /// <summary>Coefficient by a law.</summary>
    /// <param name="law">The law.</param> <param name="wind">Wind, m/s.</param>
    /// <param name="surface">Surface temperature, °C.</param> <param name="air">Air temperature, °C.</param>
    public static double By(ConvectionLaw law, double wind, double surface, double air) => law switch
    {
        ConvectionLaw.Barber => Barber(wind),
        ConvectionLaw.ForcedAndFree => ForcedAndFree(wind, surface, air),
        _ => TwoBranch(wind),
    };
}
