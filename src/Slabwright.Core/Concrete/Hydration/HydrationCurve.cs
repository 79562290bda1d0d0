using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Hydration;

/// <summary>How the parameters of a hydration curve were found.</summary>
public enum HydrationOrigin
{
    /// <summary>By published regressions on what is in the mix.</summary>
    Composition,

    /// <summary>By those regressions, with a factor for the accelerator.</summary>
    CompositionAccelerated,

    /// <summary>Fitted to heat measured on the mix; holds for that mix and the temperatures it was measured at.</summary>
    Measured,
}

/// <summary>
/// Hydration of a mix: three-parameter degree of hydration over equivalent age, the heat it frees and how temperature drives it. SI: ages in
/// seconds.
/// </summary>
/// <remarks>Source: form of Schindler and Folliard, ACI Materials Journal 102(1), 2005 (from memory).</remarks>
public sealed record HydrationCurve
{
    /// <summary>Cement, ash, slag and fume together, kg/m³ of concrete.</summary>
    public required double Cementitious { get; init; }

    /// <summary>Heat of complete hydration, J/kg of cementitious material.</summary>
    public required double UltimateHeat { get; init; }

    /// <summary>Degree of hydration reached in the end, 0 to 1.</summary>
    public required double UltimateDegree { get; init; }

    /// <summary>Hydration time parameter τ at the reference temperature, s.</summary>
    public required double Time { get; init; }

    /// <summary>Hydration slope parameter β.</summary>
    public required double Slope { get; init; }

    /// <summary>Apparent activation energy, J/mol.</summary>
    public required double ActivationEnergy { get; init; }

    /// <summary>Temperature the parameters hold at, °C: 21.1 °C (70 °F) for the published regressions (from memory).</summary>
    public double Reference { get; init; } = 21.1;

    /// <summary>Water over cementitious mass; for setting. NaN when not known.</summary>
    public double WaterCement { get; init; } = double.NaN;

    /// <summary>How the parameters were found.</summary>
    public HydrationOrigin Origin { get; init; } = HydrationOrigin.Composition;

    /// <summary>How each parameter came about.</summary>
    public ImmutableArray<Reason> Reasons { get; init; } = [];

    /// <summary>Heat of complete hydration in a cubic metre, J/m³.</summary>
    public double HeatPerVolume => Cementitious * UltimateHeat;

    /// <summary>Degree of hydration at an equivalent age: αu exp[−(τ/t)^β].</summary>
    /// <param name="equivalentAge">Equivalent age at <see cref="Reference"/>, s.</param>
    public double DegreeOfHydration(double equivalentAge) =>
        equivalentAge <= 0 ? 0 : UltimateDegree * Math.Exp(-Math.Pow(Time / equivalentAge, Slope));

    /// <summary>Equivalent age at which a degree is reached, s; infinity where it never is.</summary>
    public double AgeAt(double degree) =>
        degree <= 0 ? 0 : degree >= UltimateDegree ? double.PositiveInfinity : Time / Math.Pow(Math.Log(UltimateDegree / degree), 1 / Slope);

    /// <summary>Seconds of equivalent age gained in a second at a temperature.</summary>
    /// <param name="temperature">Concrete temperature, °C.</param>
    public double AgeRate(double temperature) => EquivalentAge.Factor(ActivationEnergy, temperature, Reference);

    /// <summary>Heat freed, W/m³: Hu C (τ/t)^β (β/t) α times the age factor.</summary>
    /// <remarks>Source: Schindler and Folliard 2005 (from memory); the derivative of the degree.</remarks>
    /// <param name="equivalentAge">Equivalent age, s.</param> <param name="temperature">Concrete temperature, °C.</param>
    public double HeatRate(double equivalentAge, double temperature) => equivalentAge <= 0
        ? 0
        : HeatPerVolume * Math.Pow(Time / equivalentAge, Slope) * Slope / equivalentAge * DegreeOfHydration(equivalentAge) * AgeRate(temperature);

    /// <summary>Equivalent age of the greatest heat rate at a steady reference temperature, s: τ [β/(1 + β)]^(1/β).</summary>
    /// <remarks>Derivation: the second derivative of the degree vanishes.</remarks>
    public double AgeOfGreatestHeat => Time * Math.Pow(Slope / (1 + Slope), 1 / Slope);

    /// <summary>Temperature rise without any loss, K, from placing to an equivalent age.</summary>
    /// <param name="equivalentAge">Equivalent age, s; infinity for the final rise.</param>
    /// <param name="capacity">Heat capacity of the concrete, J/(m³·K).</param>
    public double AdiabaticRise(double equivalentAge, double capacity) =>
        HeatPerVolume * (double.IsPositiveInfinity(equivalentAge) ? UltimateDegree : DegreeOfHydration(equivalentAge)) / capacity;
}
