using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>Thermal properties of concrete.</summary>
public sealed record ConcreteHeat
{
    private static readonly SourceRef Bentz = new("NISTIR-6551", "node 5", SourceStatus.Verified);

    /// <summary>The defaults.</summary>
    public static ConcreteHeat Default { get; } = new();

    /// <summary>Conductivity of mature concrete, W/(m·K).</summary>
    public Sourced<double> Conductivity { get; init; } = new(1.5, Bentz);

    /// <summary>Density, kg/m³.</summary>
    public Sourced<double> Density { get; init; } = new(2350, Bentz);

    /// <summary>Specific heat, J/(kg·K), where <see cref="Ingredients"/> do not give it.</summary>
    public Sourced<double> SpecificHeat { get; init; } = new(1000, Bentz);

    /// <summary>True when fresh concrete conducts more than mature: k = ku (1.33 − 0.33 α).</summary>
    public Sourced<bool> ConductivityFollowsHydration { get; init; } = new(true, new SourceRef("SCHINDLER-2002", "k of hydrating concrete", SourceStatus.FromMemory));

    /// <summary>Ingredients that give the specific heat while hydrating; null: <see cref="SpecificHeat"/> holds throughout.</summary>
    public HydratingHeat? Ingredients { get; init; }

    /// <summary>Conductivity at a degree of hydration, W/(m·K).</summary>
    public double ConductivityAt(double degree) => ConductivityFollowsHydration.Value ? Conductivity.Value * (1.33 - 0.33 * degree) : Conductivity.Value;

    /// <summary>Heat capacity, J/(m³·K), at a degree of hydration and a temperature in °C.</summary>
    public double CapacityAt(double degree, double temperature) =>
        Density.Value * (Ingredients is { } mix ? mix.SpecificHeat(degree, temperature) : SpecificHeat.Value);
}

/// <summary>What the specific heat of hydrating concrete is made of; masses in kg/m³, specific heats in J/(kg·K).</summary>
/// <param name="Cement">Cementitious material.</param> <param name="Water">Water.</param> <param name="Aggregate">Aggregate.</param>
/// <param name="CementHeat">Specific heat of cement.</param> <param name="AggregateHeat">Specific heat of aggregate.</param>
/// <param name="WaterHeat">Specific heat of water.</param>
public sealed record HydratingHeat(double Cement, double Water, double Aggregate, double CementHeat = 750, double AggregateHeat = 800, double WaterHeat = 4186)
{
    /// <summary>c = [Wc α c_ref + Wc (1 − α) cc + Wa ca + Ww cw]/ρ with c_ref = 8.4 T + 339, J/(kg·K).</summary>
    /// <remarks>Source: Van Breugel (from memory).</remarks>
    /// <param name="degree">Degree of hydration.</param> <param name="temperature">Temperature, °C.</param>
    public double SpecificHeat(double degree, double temperature) =>
        (Cement * (degree * (8.4 * temperature + 339) + (1 - degree) * CementHeat) + Aggregate * AggregateHeat + Water * WaterHeat) / (Cement + Water + Aggregate);
}

/// <summary>A layer below the slab.</summary>
/// <param name="Name">Printed name.</param>
/// <param name="Thickness">Thickness, m.</param>
/// <param name="Conductivity">W/(m·K).</param>
/// <param name="Density">kg/m³.</param>
/// <param name="SpecificHeat">J/(kg·K).</param>
/// <param name="Source">Where the values come from.</param>
public sealed record GroundLayer(string Name, double Thickness, double Conductivity, double Density, double SpecificHeat, SourceRef Source)
{
    private static readonly SourceRef Range = new("textbook range", "middle of granular base and moist fine subgrade", SourceStatus.FromMemory);

    /// <summary>Granular base, 150 mm.</summary>
    public static GroundLayer GranularBase { get; } = new("granular base", 0.15, 2.0, 2100, 900, Range);

    /// <summary>Moist fine subgrade down to 2 m below the base.</summary>
    public static GroundLayer MoistSubgrade { get; } = new("moist fine subgrade", 1.85, 1.35, 1700, 1250, Range);

    /// <summary>Base and subgrade, 2 m together.</summary>
    public static ImmutableArray<GroundLayer> Usual { get; } = [GranularBase, MoistSubgrade];
}
