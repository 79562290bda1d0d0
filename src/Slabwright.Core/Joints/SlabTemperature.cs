namespace Slabwright.Core.Joints;

/// <summary>Stress and movement of slabs by temperature: curling, friction, restraint. Magnitudes, SI.</summary>
public static class SlabTemperature
{
    /// <summary>Standard gravity, m/s².</summary>
    public const double Gravity = 9.80665;

    /// <summary>Bradbury's coefficient in closed form for a strip of width B: z = B/(l√8).</summary>
    /// <remarks>
    /// Source: Westergaard's strip solution that Bradbury's chart plots (form in NPTEL IIT Kanpur Module II lecture 2; standard form from
    /// memory). Chart readings in textbooks differ by up to 0.03.
    /// </remarks>
    /// <param name="relativeLength">Slab length or width over the radius of relative stiffness.</param>
    public static double CurlingCoefficient(double relativeLength)
    {
        var z = relativeLength / Math.Sqrt(8);
        return 1 - 2 * Math.Cos(z) * Math.Cosh(z) / (Math.Sin(2 * z) + Math.Sinh(2 * z)) * (Math.Tan(z) + Math.Tanh(z));
    }

    /// <summary>Curling stress in the interior of a finite slab, Pa: E α ΔT/2 · (Cx + µ Cy)/(1 − µ²).</summary>
    /// <remarks>Source: Bradbury, as in NPTEL IIT Bombay lecture 29 p. 5, eq. 1.</remarks>
    public static double InteriorCurling(double modulus, double expansion, double difference, double poisson, double along, double across) =>
        modulus * expansion * difference / 2 * (along + poisson * across) / (1 - poisson * poisson);

    /// <summary>Curling stress at mid-edge, Pa: C E α ΔT/2.</summary>
    /// <remarks>Source: Bradbury, as in NPTEL IIT Bombay lecture 29 p. 5, eq. 2.</remarks>
    public static double EdgeCurling(double modulus, double expansion, double difference, double coefficient) =>
        coefficient * modulus * expansion * difference / 2;

    /// <summary>Friction stress at mid-length of a slab free to slide, Pa: γ L f/2.</summary>
    /// <remarks>Source: lecture notes after IRC practice, eq. 29.6–29.9.</remarks>
    /// <param name="density">Concrete density, kg/m³.</param> <param name="length">Slab length, m.</param>
    /// <param name="friction">Friction coefficient.</param>
    public static double FrictionStress(double density, double length, double friction) => density * Gravity * length * friction / 2;

    /// <summary>Longest plain slab for an allowable tension, m: 2 s/(γ f).</summary>
    /// <remarks>Source: BHEL engineer trainee paper 2023, worked question.</remarks>
    public static double LongestSlab(double allowableTension, double density, double friction) =>
        2 * allowableTension / (density * Gravity * friction);

    /// <summary>Drag steel per width of slab, m²/m: γ h L f/(2 fs).</summary>
    /// <remarks>Source: drag formula, Structural Engineers Association mailing list 1998.</remarks>
    public static double DragSteel(double density, double thickness, double length, double friction, double steelStress) =>
        density * Gravity * thickness * length * friction / (2 * steelStress);

    /// <summary>Stress of a slab held from expanding, Pa: E α ΔT.</summary>
    /// <remarks>Elementary; full restraint along one direction.</remarks>
    public static double RestrainedStress(double modulus, double expansion, double rise) => modulus * expansion * rise;

    /// <summary>Free change of length, m: α L ΔT. A saw kerf closes by about this for the length it unloads.</summary>
    /// <remarks>Elementary thermal expansion.</remarks>
    public static double FreeMovement(double expansion, double length, double difference) => expansion * length * difference;
}
