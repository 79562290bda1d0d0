namespace Slabwright.Core.Joints;

/// <summary>The length that scales every response of a slab on springs.</summary>
public static class RelativeStiffness
{
    /// <summary>Radius of relative stiffness l = [E h³ / (12 (1 − µ²) k)]^¼, m.</summary>
    /// <remarks>Source: Westergaard 1926, as given in NPTEL (IIT Bombay) lecture 29, eq. 29.1. Thin elastic plate on springs.</remarks>
    /// <param name="modulus">Young's modulus of concrete, Pa.</param> <param name="thickness">Slab thickness, m.</param>
    /// <param name="poisson">Poisson's ratio, 0 to 0.5.</param> <param name="reaction">Modulus of foundation reaction, Pa/m.</param>
    public static double Radius(double modulus, double thickness, double poisson, double reaction) =>
        Math.Pow(modulus * Math.Pow(thickness, 3) / (12 * (1 - poisson * poisson) * reaction), 0.25);
}
