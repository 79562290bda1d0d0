using System.Collections.Immutable;

namespace Slabwright.Core.Joints;

/// <summary>Friction coefficient between slab and what it rests on.</summary>
/// <param name="Surface">What the slab rests on.</param> <param name="Coefficient">Friction coefficient.</param>
public readonly record struct SurfaceFriction(string Surface, double Coefficient)
{
    /// <summary>AASHTO table.</summary>
    /// <remarks>
    /// Source: AASHTO Guide 1993 (from memory). 1.5 is the customary value; 1.06 to 2.10 was measured under 6-in slabs of 20 to 100 ft, and
    /// far more on cement-treated base.
    /// </remarks>
    public static ImmutableArray<SurfaceFriction> Aashto { get; } =
    [
        new("surface treatment", 2.2), new("lime stabilised", 1.8), new("asphalt stabilised", 1.8), new("cement stabilised", 1.8),
        new("river gravel", 1.5), new("crushed stone", 1.5), new("sandstone", 1.2), new("natural subgrade", 0.9),
    ];
}
