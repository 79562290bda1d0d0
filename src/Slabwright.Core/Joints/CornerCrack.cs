namespace Slabwright.Core.Joints;

/// <summary>
/// Distance from the corner, along its bisector, to the greatest stress at the top: about where a corner breaks off. m. Three published
/// versions that do not agree.
/// </summary>
public static class CornerCrack
{
    /// <summary>2 √(√2 a l) = 2.378 √(a l).</summary>
    /// <remarks>Source: Westergaard 1926 (from memory).</remarks>
    /// <param name="loadRadius">a, m.</param> <param name="radius">Radius of relative stiffness l, m.</param>
    public static double Westergaard(double loadRadius, double radius) => 2 * Math.Sqrt(Math.Sqrt(2) * loadRadius * radius);

    /// <summary>2.58 √(a l), as Indian texts print it.</summary>
    /// <remarks>Source: rigid pavement quiz (IRC-QUIZ).</remarks>
    /// <inheritdoc cref="Westergaard" path="/param"/>
    public static double IndianTexts(double loadRadius, double radius) => 2.58 * Math.Sqrt(loadRadius * radius);

    /// <summary>1.80 c^0.32 l^0.59 in inches, c = 1.772 a, fitted to plate finite elements.</summary>
    /// <remarks>Source: Ioannides et al. 1985 (from memory). The powers add up to 0.91: it holds in inches only.</remarks>
    /// <inheritdoc cref="Westergaard" path="/param"/>
    public static double Ioannides(double loadRadius, double radius) =>
        1.80 * Math.Pow(1.772 * loadRadius / 0.0254, 0.32) * Math.Pow(radius / 0.0254, 0.59) * 0.0254;
}

/// <summary>Where a wheel stands on a slab.</summary>
public enum LoadPlace
{
    /// <summary>Far from edges.</summary>
    Interior,

    /// <summary>At an edge, far from corners.</summary>
    Edge,

    /// <summary>At a corner.</summary>
    Corner,
}

/// <summary>How large a slab must be for the closed forms, which take it as endless.</summary>
/// <remarks>Source: Ioannides et al. 1985 (from memory).</remarks>
public static class LargeSlab
{
    /// <summary>Least side of the slab over the radius of relative stiffness, for bending and for deflection.</summary>
    public static (double Bending, double Deflection) LeastRatio(LoadPlace place) => place switch
    {
        LoadPlace.Interior => (3.5, 8.0),
        LoadPlace.Edge => (5.0, 8.0),
        LoadPlace.Corner => (4.0, 5.0),
        _ => throw new ArgumentOutOfRangeException(nameof(place)),
    };

    /// <summary>Whether a slab is large enough, for bending and for deflection.</summary>
    /// <param name="place">Where the wheel stands.</param> <param name="side">Shorter side, m.</param> <param name="radius">l, m.</param>
    public static (bool Bending, bool Deflection) Holds(LoadPlace place, double side, double radius)
    {
        var (bending, deflection) = LeastRatio(place);
        return (side >= bending * radius, side >= deflection * radius);
    }
}
