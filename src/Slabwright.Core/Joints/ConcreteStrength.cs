namespace Slabwright.Core.Joints;

/// <summary>Modulus of rupture and Young's modulus from compressive strength. Pa.</summary>
/// <remarks>Correlations with wide scatter; a test of the concrete itself is better.</remarks>
public static class ConcreteStrength
{
    private const double Psi = 6894.757293168361;

    /// <summary>Modulus of rupture: 9.5 √f'c in psi.</summary>
    /// <remarks>Source: NCHRP 1-37A (from memory).</remarks>
    /// <param name="strength">Cylinder strength f'c, Pa.</param>
    public static double RuptureBySquareRoot(double strength) => 9.5 * Math.Sqrt(strength / Psi) * Psi;

    /// <summary>Modulus of rupture: 2.3 f'c^⅔ in psi.</summary>
    /// <remarks>Source: NCHRP 1-37A chapters on concrete (from memory).</remarks>
    /// <param name="strength">Cylinder strength f'c, Pa.</param>
    public static double RuptureByTwoThirds(double strength) => 2.3 * Math.Pow(strength / Psi, 2.0 / 3) * Psi;

    /// <summary>Young's modulus: 57,000 √f'c in psi.</summary>
    /// <remarks>Source: ACI 318 for normal-weight concrete (from memory).</remarks>
    /// <param name="strength">Cylinder strength f'c, Pa.</param>
    public static double Modulus(double strength) => 57_000 * Math.Sqrt(strength / Psi) * Psi;
}
