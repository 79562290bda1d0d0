namespace Slabwright.Core.Joints;

/// <summary>
/// The closed forms of <see cref="WheelLoad"/> with Poisson's ratio 0.15 put in, as the textbooks print them, and the edge of 1926. Use them
/// to check a calculation by hand; constants are rounded (0.03 %). N, m, Pa.
/// </summary>
/// <remarks>Source: Huang 2004 ch. 4; Westergaard 1926 and 1948 as in Ioannides et al. 1985 (from memory).</remarks>
public static class WheelShortForms
{
    /// <summary>Poisson's ratio these forms hold for.</summary>
    public const double Poisson = 0.15;

    /// <summary>Interior stress 0.316 P/h² [4 log(l/b) + 1.069], Pa.</summary>
    public static double InteriorStress(double load, double loadRadius, double thickness, double radius) =>
        0.316 * load / (thickness * thickness) * (4 * Log(radius, WheelLoad.EquivalentRadius(loadRadius, thickness)) + 1.069);

    /// <summary>Edge stress of 1926, 0.572 P/h² [4 log(l/b) + 0.359], Pa; lower than the later form, still in Indian texts.</summary>
    public static double EdgeStress1926(double load, double loadRadius, double thickness, double radius) =>
        0.572 * load / (thickness * thickness) * (4 * Log(radius, WheelLoad.EquivalentRadius(loadRadius, thickness)) + 0.359);

    /// <summary>Edge stress under a circle, 0.803 P/h² [4 log(l/a) + 0.666 a/l − 0.034], Pa.</summary>
    public static double EdgeStressCircle(double load, double loadRadius, double thickness, double radius) =>
        0.803 * load / (thickness * thickness) * (4 * Log(radius, loadRadius) + 0.666 * loadRadius / radius - 0.034);

    /// <summary>Edge stress under a half circle, 0.803 P/h² [4 log(l/a) + 0.282 a/l + 0.650], Pa.</summary>
    public static double EdgeStressHalfCircle(double load, double loadRadius, double thickness, double radius) =>
        0.803 * load / (thickness * thickness) * (4 * Log(radius, loadRadius) + 0.282 * loadRadius / radius + 0.650);

    /// <summary>Edge deflection under a circle, 0.431 P/(k l²) [1 − 0.82 a/l], m.</summary>
    public static double EdgeDeflectionCircle(double load, double loadRadius, double reaction, double radius) =>
        0.431 * load / (reaction * radius * radius) * (1 - 0.82 * loadRadius / radius);

    /// <summary>Edge deflection under a half circle, 0.431 P/(k l²) [1 − 0.349 a/l], m.</summary>
    public static double EdgeDeflectionHalfCircle(double load, double loadRadius, double reaction, double radius) =>
        0.431 * load / (reaction * radius * radius) * (1 - 0.349 * loadRadius / radius);

    private static double Log(double radius, double loadRadius) => Math.Log10(radius / loadRadius);
}
