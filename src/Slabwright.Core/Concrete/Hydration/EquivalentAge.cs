namespace Slabwright.Core.Concrete.Hydration;

/// <summary>Equivalent age by the Arrhenius law: time at a reference temperature that hydrates as much as the real history. The one place of this law.</summary>
public static class EquivalentAge
{
    /// <summary>Universal gas constant, J/(mol·K).</summary>
    public const double GasConstant = 8.314;

    /// <summary>0 °C in kelvin.</summary>
    public const double Freezing = 273.15;

    /// <summary>Time at the reference temperature worth one unit of time at another: exp[−E/R (1/T − 1/Tr)].</summary>
    /// <remarks>Source: Freiesleben Hansen and Pedersen, as in ASTM C1074 (from memory).</remarks>
    /// <param name="activationEnergy">Activation energy, J/mol.</param>
    /// <param name="temperature">Concrete temperature, °C.</param> <param name="reference">Reference temperature, °C.</param>
    public static double Factor(double activationEnergy, double temperature, double reference) =>
        Math.Exp(-activationEnergy / GasConstant * (1 / (temperature + Freezing) - 1 / (reference + Freezing)));

    /// <summary>Activation energy that grows in the cold: 33.5 kJ/mol from 20 °C on, 1.47 kJ/mol more for each kelvin below.</summary>
    /// <remarks>Source: Freiesleben Hansen and Pedersen 1977 (from memory).</remarks>
    /// <param name="temperature">Concrete temperature, °C.</param>
    public static double FreieslebenHansenEnergy(double temperature) => temperature >= 20 ? 33_500 : 33_500 + 1_470 * (20 - temperature);

    /// <summary>Equivalent age after each reading; between two readings their mean temperature holds.</summary>
    /// <remarks>Source: summation of ASTM C1074 (from memory).</remarks>
    /// <param name="times">Times of the readings, rising; any unit, which is that of the result.</param>
    /// <param name="temperatures">Temperatures at those times, °C.</param>
    /// <param name="activationEnergy">Activation energy, J/mol.</param> <param name="reference">Reference temperature, °C.</param>
    public static double[] Along(ReadOnlySpan<double> times, ReadOnlySpan<double> temperatures, double activationEnergy, double reference)
    {
        var ages = new double[times.Length];
        for (var i = 1; i < ages.Length; i++)
            ages[i] = ages[i - 1] + Factor(activationEnergy, (temperatures[i] + temperatures[i - 1]) / 2, reference) * (times[i] - times[i - 1]);
        return ages;
    }
}
