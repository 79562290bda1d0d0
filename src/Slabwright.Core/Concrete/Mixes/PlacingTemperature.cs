using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Mixes;

/// <summary>An ingredient as it goes into the mixer.</summary>
/// <param name="Mass">Mass, kg (any one unit for all).</param> <param name="Temperature">Temperature, °C.</param>
public readonly record struct MixedIn(double Mass, double Temperature);

/// <summary>What goes into the mixer.</summary>
/// <param name="Aggregate">Aggregates, dry mass.</param> <param name="Cement">Cement and the like.</param>
/// <param name="Water">Water added, without the ice.</param> <param name="AggregateWater">Water that comes with the aggregates.</param>
/// <param name="Ice">Mass of ice; it goes in at 0 °C.</param>
public sealed record MixedParts(MixedIn Aggregate, MixedIn Cement, MixedIn Water, MixedIn AggregateWater = default, double Ice = 0);

/// <summary>Temperature of fresh concrete from its parts.</summary>
public static class PlacingTemperature
{
    /// <summary>Specific heat of solids over that of water, as the published equation rounds it.</summary>
    public const double SolidShare = 0.22;

    /// <summary>Melting heat of ice over the specific heat of water, K: 79.6 (112 °F less the 32 °F counted from).</summary>
    public const double IceMelting = 79.6;

    /// <summary>Temperature, °C: heat of all parts over their heat capacity; ice takes its melting heat.</summary>
    /// <remarks>Source: ACI 305R (from memory); latent heat by CRD-C 307-91.</remarks>
    public static double Of(MixedParts parts)
    {
        var solids = parts.Aggregate.Mass + parts.Cement.Mass;
        var heat = SolidShare * (parts.Aggregate.Mass * parts.Aggregate.Temperature + parts.Cement.Mass * parts.Cement.Temperature)
            + parts.Water.Mass * parts.Water.Temperature + parts.AggregateWater.Mass * parts.AggregateWater.Temperature - IceMelting * parts.Ice;
        return heat / (SolidShare * solids + parts.Water.Mass + parts.AggregateWater.Mass + parts.Ice);
    }

    /// <summary>Mean temperature of parts by their own specific heats, °C.</summary>
    /// <remarks>Source: heat balance of PCA Design and Control, hot weather (from memory).</remarks>
    /// <param name="parts">Mass, specific heat and temperature of each part.</param>
    public static double Balance(IEnumerable<(double Mass, double SpecificHeat, double Temperature)> parts)
    {
        var (heat, capacity) = (0.0, 0.0);
        foreach (var (mass, specificHeat, temperature) in parts)
        {
            heat += mass * specificHeat * temperature;
            capacity += mass * specificHeat;
        }

        return heat / capacity;
    }

    /// <summary>Ice that takes the place of as much water to bring the concrete to a temperature; null when more ice than water would be needed.</summary>
    /// <param name="parts">The parts without ice.</param> <param name="wanted">Temperature wanted, °C.</param>
    public static double? IceFor(MixedParts parts, double wanted)
    {
        var capacity = SolidShare * (parts.Aggregate.Mass + parts.Cement.Mass) + parts.Water.Mass + parts.AggregateWater.Mass;
        var now = Of(parts with { Ice = 0 });
        if (now <= wanted) return 0;
        var ice = capacity * (now - wanted) / (parts.Water.Temperature + IceMelting);
        return ice <= parts.Water.Mass ? ice : null;
    }

    /// <summary>What is doubtful about the parts or the temperature they make.</summary>
    public static ImmutableArray<Finding> Check(MixedParts parts)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var temperature = Of(parts);
        var water = parts.Water.Mass + parts.Ice;
        if (water > 0 && parts.Ice > 0.5 * water)
        {
            findings.Add(new("CON-002", FindingLevel.Warning, "Ice is more than half of the mixing water; the equation no longer holds.",
                new(Field: "ice"), FormattableString.Invariant($"{100 * parts.Ice / water:0} %"), "Cool the aggregates or the water instead.", "50 %"));
        }

        if (temperature > 35)
        {
            findings.Add(new("CON-003", FindingLevel.Warning, "The concrete is hotter than specifications let it be at discharge.",
                new(Field: "placing temperature"), FormattableString.Invariant($"{temperature:0.0} °C"), "Cool aggregates or water, use ice, or place at night.",
                "35 °C (95 °F)", "ACI-301"));
        }

        if (temperature < 10)
        {
            findings.Add(new("CON-004", FindingLevel.Warning, "The concrete is colder than slabs are placed in cold weather.",
                new(Field: "placing temperature"), FormattableString.Invariant($"{temperature:0.0} °C"), "Heat the mixing water, to about 60 °C at most, or the aggregates.",
                "10 °C (50 °F)", "CC-COLD"));
        }

        return findings.ToImmutable();
    }
}
