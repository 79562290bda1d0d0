using System.Text.Json.Serialization;

namespace Slabwright.Core.Measures;

/// <summary>The two units a value is printed in; both have the same dimension.</summary>
/// <param name="Customary">US customary unit.</param>
/// <param name="Si">SI unit.</param>
[method: JsonConstructor]
public sealed record UnitPair(Unit Customary, Unit Si)
{
    /// <summary>The same unit in both systems.</summary>
    public UnitPair(Unit both) : this(both, both) { }

    /// <summary>The unit of a system.</summary>
    public Unit In(UnitSystem system) => system == UnitSystem.Si ? Si : Customary;
}
