namespace Slabwright.Core.Numerics.Heat;

/// <summary>
/// Coefficients of a two-stage method of second order that takes conduction implicitly (L-stable) and sources explicitly:
/// ARS(2,2,2).
/// </summary>
/// <remarks>Source: Ascher, Ruuth and Spiteri, Applied Numerical Mathematics 25, 1997, sect. 2.6 (from memory); the order is measured in the tests.</remarks>
public static class ImplicitExplicit
{
    /// <summary>Implicit weight of a stage γ = 1 − 1/√2.</summary>
    public const double Gamma = 0.29289321881345247560;

    /// <summary>Explicit weight of the start δ = 1 − 1/(2γ) = −1/√2.</summary>
    public const double Delta = -0.70710678118654752440;

    /// <summary>(1 − γ)/γ: what the first stage brings into the second.</summary>
    public const double Carry = (1 - Gamma) / Gamma;
}
