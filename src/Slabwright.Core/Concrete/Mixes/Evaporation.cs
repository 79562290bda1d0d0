using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Mixes;

/// <summary>Water a fresh concrete surface loses to the air.</summary>
public static class Evaporation
{
    /// <summary>Kilograms on a square metre and hour that one kg/(m²·s) makes.</summary>
    private const double PerHour = 3600;

    /// <summary>Evaporation by the formula behind the curing chart, kg/(m²·h).</summary>
    /// <remarks>
    /// Source: Uno, ACI Materials Journal 95-M34, 1998, in the form that turns units exactly. The chart rests on lake data; its error is
    /// about 40 %. Wind at 0.5 m above the surface.
    /// </remarks>
    /// <param name="concrete">Concrete temperature, °C.</param> <param name="air">Air temperature, °C.</param>
    /// <param name="humidity">Relative humidity, share of 1.</param> <param name="wind">Wind, m/s.</param>
    public static double Rate(double concrete, double air, double humidity, double wind) =>
        5.275 * (Math.Pow(concrete + 17.778, 2.5) - humidity * Math.Pow(air + 17.778, 2.5)) * (wind * 3.6 + 4.02336) * 1e-6;

    /// <summary>The same by the rounded constants the paper prints, kg/(m²·h).</summary>
    /// <remarks>Source: Uno 1998.</remarks>
    /// <param name="concrete">Concrete temperature, °C.</param> <param name="air">Air temperature, °C.</param>
    /// <param name="humidity">Relative humidity, share of 1.</param> <param name="wind">Wind, m/s.</param>
    public static double RoundedRate(double concrete, double air, double humidity, double wind) =>
        5 * (Math.Pow(concrete + 18, 2.5) - humidity * Math.Pow(air + 18, 2.5)) * (wind * 3.6 + 4) * 1e-6;

    /// <summary>Evaporation by vapour pressures, kg/(m²·h).</summary>
    /// <remarks>Source: Menzel 1954 (from memory): 0.315 (e0 − r ea)(0.253 + 0.060 V), kPa and km/h.</remarks>
    /// <param name="concrete">Concrete temperature, °C.</param> <param name="air">Air temperature, °C.</param>
    /// <param name="humidity">Relative humidity, share of 1.</param> <param name="wind">Wind, m/s.</param>
    public static double MenzelRate(double concrete, double air, double humidity, double wind) =>
        0.315 * (VapourPressure(concrete) - humidity * VapourPressure(air)) * (0.253 + 0.060 * wind * 3.6);

    /// <summary>Pressure of saturated vapour over water, kPa.</summary>
    /// <remarks>Source: 0.61078 exp[17.27 T/(T + 237.3)], Tetens 1930 (from memory).</remarks>
    /// <param name="temperature">°C.</param>
    public static double VapourPressure(double temperature) => 0.61078 * Math.Exp(17.27 * temperature / (temperature + 237.3));

    /// <summary>Wind near the surface from wind at 10 m: the power law with 1/7, 0.5 m over open ground.</summary>
    /// <remarks>Common practice; sheltered sites have less.</remarks>
    /// <param name="wind">Wind at 10 m, m/s.</param>
    public static double NearSurface(double wind) => wind * Math.Pow(0.5 / 10, 1.0 / 7);

    /// <summary>Heat the surface loses, W/m²: rate times 2.45 MJ/kg.</summary>
    /// <param name="rate">Evaporation, kg/(m²·h).</param>
    public static double HeatLoss(double rate) => rate * 2.45e6 / PerHour;
}

/// <summary>A measure of curing or protection that the weather calls for.</summary>
/// <param name="Measure">What to do.</param>
/// <param name="Because">Why.</param>
public sealed record CuringMeasure(string Measure, Reason Because);

/// <summary>Evaporation while placing and what it calls for.</summary>
/// <param name="Rate">Evaporation, kg/(m²·h).</param>
/// <param name="Limit">Limit it is held against, kg/(m²·h).</param>
/// <param name="Measures">What is called for.</param>
public sealed record EvaporationCall(double Rate, double Limit, ImmutableArray<CuringMeasure> Measures)
{
    /// <summary>True when the rate is above the limit.</summary>
    public bool IsHigh => Rate > Limit;
}
