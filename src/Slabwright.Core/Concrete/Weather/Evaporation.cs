namespace Slabwright.Core.Concrete.Weather;

/// <summary>Water that leaves a wet concrete surface, kg/(m²·h). Wind half a metre above the surface.</summary>
public static class Evaporation
{
    /// <summary>Heat of evaporation, J/kg (from memory).</summary>
    public const double LatentHeat = 2.45e6;

    /// <summary>5 ([Tc + 18]^2.5 − r [Ta + 18]^2.5)(V + 4) 10⁻⁶, V in km/h. Negative where water would condense.</summary>
    /// <remarks>Source: Uno, ACI Materials Journal 95-M34, 1998. Error about ±40 % (Hover): the chart behind it rests on lake data.</remarks>
    /// <param name="concrete">Surface temperature, °C, above −18.</param> <param name="air">Air temperature, °C, above −18.</param>
    /// <param name="humidity">Relative humidity, share of 1.</param> <param name="wind">Wind, m/s.</param>
    public static double Uno(double concrete, double air, double humidity, double wind) =>
        5e-6 * (Math.Pow(Math.Max(0, concrete + 18), 2.5) - humidity * Math.Pow(Math.Max(0, air + 18), 2.5)) * (3.6 * wind + 4);

    /// <summary>Its growth with the surface temperature, kg/(m²·h·K).</summary>
    /// <remarks>Derivative of <see cref="Uno"/>.</remarks>
    /// <param name="concrete">Surface temperature, °C.</param> <param name="wind">Wind, m/s.</param>
    public static double UnoSlope(double concrete, double wind) => 12.5e-6 * Math.Pow(Math.Max(0, concrete + 18), 1.5) * (3.6 * wind + 4);

    /// <summary>0.315 (e0 − r ea)(0.253 + 0.060 V), pressures in kPa, V in km/h.</summary>
    /// <remarks>Source: Menzel (from memory); vapour pressures by the Magnus form.</remarks>
    /// <param name="concrete">Surface temperature, °C.</param> <param name="air">Air temperature, °C.</param>
    /// <param name="humidity">Relative humidity, share of 1.</param> <param name="wind">Wind, m/s.</param>
    public static double Menzel(double concrete, double air, double humidity, double wind) =>
        0.315 * (VapourPressure(concrete) - humidity * VapourPressure(air)) * (0.253 + 0.060 * 3.6 * wind);

    /// <summary>Pressure of saturated vapour over water, kPa.</summary>
    /// <remarks>Source: Magnus form with the constants of Alduchov and Eskridge 1996 (from memory).</remarks>
    /// <param name="temperature">Temperature, °C.</param>
    public static double VapourPressure(double temperature) => 0.61094 * Math.Exp(17.625 * temperature / (243.04 + temperature));

    /// <summary>Wind half a metre above the ground from the wind at the mast, by the one-seventh power law (common practice).</summary>
    /// <param name="wind">Wind at the mast, m/s.</param> <param name="mast">Height of the mast, m.</param>
    public static double WindAtSurface(double wind, double mast = 10) => wind * Math.Pow(0.5 / mast, 1.0 / 7);
}
