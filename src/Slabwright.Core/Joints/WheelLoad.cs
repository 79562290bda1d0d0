namespace Slabwright.Core.Joints;

/// <summary>
/// Closed forms for one wheel on a large slab on springs: stress at the bottom (interior, edge) or top (corner) and deflection, as
/// magnitudes. Loads in N, lengths in m, moduli in Pa and Pa/m, results in Pa and m.
/// </summary>
public static class WheelLoad
{
    private const double Euler = 0.57721566490153286;

    /// <summary>Radius that stands for the load in Westergaard's special theory: b = √(1.6 a² + h²) − 0.675 h where a &lt; 1.724 h, else a.</summary>
    /// <remarks>Source: NPTEL (IIT Bombay) lecture 29, p. 3.</remarks>
    public static double EquivalentRadius(double loadRadius, double thickness) => loadRadius < 1.724 * thickness
        ? Math.Sqrt(1.6 * loadRadius * loadRadius + thickness * thickness) - 0.675 * thickness
        : loadRadius;

    /// <summary>Interior stress, special theory with the supplementary term, Pa.</summary>
    /// <remarks>Source: Westergaard 1926 in the form of Ioannides, Thompson and Barenberg 1985, eq. A.3 (1a)–(1e).</remarks>
    public static double InteriorStress(double load, double loadRadius, double thickness, double poisson, double radius)
    {
        var b = EquivalentRadius(loadRadius, thickness);
        var ordinary = 3 * load * (1 + poisson) / (2 * Math.PI * thickness * thickness) * (Math.Log(2 * radius / b) + 0.5 - Euler);
        return ordinary + 3 * load * (1 + poisson) / (64 * thickness * thickness) * Math.Pow(b / radius, 2);
    }

    /// <summary>Interior deflection, m.</summary>
    /// <remarks>Source: Westergaard 1939; Huang 2004 ch. 4 (from memory). Within 3 in a million of the exact integral at a/l = 0.14.</remarks>
    public static double InteriorDeflection(double load, double loadRadius, double reaction, double radius)
    {
        var ratio = loadRadius / radius;
        return load / (8 * reaction * radius * radius) * (1 + (Math.Log(ratio / 2) + Euler - 1.25) * ratio * ratio / (2 * Math.PI));
    }

    /// <summary>Edge stress under a circle that touches the edge, Pa.</summary>
    /// <remarks>Source: Westergaard 1948 as recommended by Ioannides et al. 1985 (from memory).</remarks>
    public static double EdgeStressCircle(
        double load, double loadRadius, double thickness, double modulus, double poisson, double reaction, double radius) =>
        EdgeFactor(load, thickness, poisson) * (EdgeLog(loadRadius, thickness, modulus, reaction) + 1.84 - 4 * poisson / 3
            + (1 - poisson) / 2 + 1.18 * (1 + 2 * poisson) * loadRadius / radius);

    /// <summary>Edge stress under a half circle with its straight side on the edge, Pa.</summary>
    /// <remarks>Source: as <see cref="EdgeStressCircle"/> (from memory).</remarks>
    public static double EdgeStressHalfCircle(
        double load, double loadRadius, double thickness, double modulus, double poisson, double reaction, double radius) =>
        EdgeFactor(load, thickness, poisson) * (EdgeLog(loadRadius, thickness, modulus, reaction) + 3.84 - 4 * poisson / 3
            + (1 + 2 * poisson) * loadRadius / (2 * radius));

    /// <summary>Edge deflection under a circle that touches the edge, m.</summary>
    /// <remarks>Source: as <see cref="EdgeStressCircle"/> (from memory).</remarks>
    public static double EdgeDeflectionCircle(
        double load, double loadRadius, double thickness, double modulus, double poisson, double reaction, double radius) =>
        EdgeDeflection(load, thickness, modulus, poisson, reaction) * (1 - (0.76 + 0.4 * poisson) * loadRadius / radius);

    /// <summary>Edge deflection under a half circle with its straight side on the edge, m.</summary>
    /// <remarks>Source: as <see cref="EdgeStressCircle"/> (from memory).</remarks>
    public static double EdgeDeflectionHalfCircle(
        double load, double loadRadius, double thickness, double modulus, double poisson, double reaction, double radius) =>
        EdgeDeflection(load, thickness, modulus, poisson, reaction) * (1 - (0.323 + 0.17 * poisson) * loadRadius / radius);

    /// <summary>Corner stress, Westergaard 1926: 3P/h² [1 − (a√2/l)^0.6], Pa.</summary>
    /// <remarks>Source: Westergaard 1926 (from memory).</remarks>
    public static double CornerStress(double load, double loadRadius, double thickness, double radius) =>
        3 * load / (thickness * thickness) * (1 - Math.Pow(loadRadius * Math.Sqrt(2) / radius, 0.6));

    /// <summary>Corner deflection, Westergaard 1926, m.</summary>
    /// <remarks>Source: Westergaard 1926 (from memory).</remarks>
    public static double CornerDeflection(double load, double loadRadius, double reaction, double radius) =>
        load / (reaction * radius * radius) * (1.1 - 0.88 * loadRadius * Math.Sqrt(2) / radius);

    /// <summary>Corner stress fitted to plate finite elements, square of side 1.772 a, Pa.</summary>
    /// <remarks>Source: Ioannides et al. 1985 (from memory).</remarks>
    public static double CornerStressFitted(double load, double loadRadius, double thickness, double radius) =>
        3 * load / (thickness * thickness) * (1 - Math.Pow(1.772 * loadRadius / radius, 0.72));

    /// <summary>Corner deflection fitted to plate finite elements, m.</summary>
    /// <remarks>Source: Ioannides et al. 1985 (from memory).</remarks>
    public static double CornerDeflectionFitted(double load, double loadRadius, double reaction, double radius) =>
        load / (reaction * radius * radius) * (1.205 - 0.69 * 1.772 * loadRadius / radius);

    private static double EdgeFactor(double load, double thickness, double poisson) =>
        3 * (1 + poisson) * load / (Math.PI * (3 + poisson) * thickness * thickness);

    private static double EdgeLog(double loadRadius, double thickness, double modulus, double reaction) =>
        Math.Log(modulus * Math.Pow(thickness, 3) / (100 * reaction * Math.Pow(loadRadius, 4)));

    private static double EdgeDeflection(double load, double thickness, double modulus, double poisson, double reaction) =>
        Math.Sqrt(2 + 1.2 * poisson) * load / Math.Sqrt(modulus * Math.Pow(thickness, 3) * reaction);
}
