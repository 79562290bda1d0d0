namespace Slabwright.Core.Joints;

/// <summary>Load transfer across a joint, as shares of one.</summary>
public static class LoadTransfer
{
    /// <summary>Dimensionless joint stiffness with dowels: R = D/(s k l).</summary>
    /// <remarks>Source: Ioannides and Korovesis 1992 (from memory).</remarks>
    /// <param name="barStiffness">Stiffness of one bar D, N/m.</param> <param name="spacing">Bar spacing s, m.</param>
    /// <param name="reaction">k, Pa/m.</param> <param name="radius">Radius of relative stiffness l, m.</param>
    public static double Stiffness(double barStiffness, double spacing, double reaction, double radius) =>
        barStiffness / (spacing * reaction * radius);

    /// <summary>Deflection transfer of a joint: 1/{1 + 10^[(0.214 − 0.183 a/l − log R)/1.18]}.</summary>
    /// <remarks>
    /// Source: fit used in FHWA-RD-02-088 (from memory). Within 0.022 of the exact integral for R 0.1 to 100 and a/l 0 to 0.3.
    /// </remarks>
    /// <param name="stiffness">Dimensionless joint stiffness R.</param> <param name="loadRatio">Load radius over radius of relative stiffness.</param>
    public static double Deflection(double stiffness, double loadRatio) =>
        1 / (1 + Math.Pow(10, (0.214 - 0.183 * loadRatio - Math.Log10(stiffness)) / 1.18));

    /// <summary>The ratio 2 d_u/(d_l + d_u) from the ratio d_u/d_l: 2/(1 + 1/LTE).</summary>
    /// <remarks>Source: FHWA-RD-02-088 eq. 1–2.</remarks>
    public static double Symmetric(double transfer) => 2 / (1 + 1 / transfer);
}
