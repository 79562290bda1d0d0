using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>What stands at an end of a repair.</summary>
public sealed record SectionSide
{
    /// <summary>An old slab against the new concrete.</summary>
    public static SectionSide OldSlab { get; } = new();

    /// <summary>Properties of the old concrete.</summary>
    public ConcreteHeat Concrete { get; init; } = ConcreteHeat.Default;

    /// <summary>Resistance of the contact between old and new, m²K/W: 0 for concrete cast against concrete, more with an isolation board.</summary>
    public double FaceResistance { get; init; }

    /// <summary>A form with open air behind in place of an old slab; null where old concrete stands.</summary>
    public EdgeForm? Form { get; init; }

    /// <summary>A form of boards.</summary>
    /// <param name="resistance">Thermal resistance, m²K/W.</param> <param name="strip">Seconds after placing at which it is taken off; infinity when it stays.</param>
    public static SectionSide Formed(double resistance = 0.15, double strip = double.PositiveInfinity) =>
        new() { Form = new(resistance, strip, new SourceRef("common practice", "18 mm of wood", SourceStatus.CommonPractice)) };
}

/// <summary>A form at the end of the concrete.</summary>
/// <param name="Resistance">Thermal resistance, m²K/W.</param>
/// <param name="Strip">Seconds after placing at which it is taken off; infinity when it stays.</param>
/// <param name="Source">Where the value comes from.</param>
public sealed record EdgeForm(double Resistance, double Strip, SourceRef Source);
