namespace Slabwright.Core.Joints;

/// <summary>Opening of joints and the seals that follow it. SI; shares of one.</summary>
/// <remarks>
/// Source: FHWA pavement notebook ch. 3, preformed compression seals, p. 3.3.5–3.3.7. Openings measured in the LTPP programme were mostly
/// larger and irregular (TRB paper 513052, 1999).
/// </remarks>
public static class JointMovement
{
    /// <summary>C on granular base.</summary>
    public const double GranularRestraint = 0.80;

    /// <summary>C on stabilised base (from memory, AASHTO Guide 1993).</summary>
    public const double StabilisedRestraint = 0.65;

    /// <summary>Greatest change of opening for load transfer without dowels, m: 0.05 in (from memory).</summary>
    public const double UndowelledLimit = 0.05 * 0.0254;

    /// <summary>Greatest change of opening for load transfer with dowels, m: 0.25 in (from memory).</summary>
    public const double DowelledLimit = 0.25 * 0.0254;

    /// <summary>Change of a joint's opening, m: C L (α ΔT + ε).</summary>
    /// <param name="restraint">C: 0.80 on granular, 0.65 on stabilised base (the latter from memory).</param>
    /// <param name="length">Slab length, m.</param> <param name="expansion">α, 1/K.</param>
    /// <param name="range">Temperature range, K.</param> <param name="shrinkage">Drying shrinkage ε.</param>
    public static double Opening(double restraint, double length, double expansion, double range, double shrinkage) =>
        restraint * length * (expansion * range + shrinkage);

    /// <summary>Longest slab for a joint opening, m; the inverse of <see cref="Opening"/>.</summary>
    public static double LongestSlab(double opening, double restraint, double expansion, double range, double shrinkage) =>
        opening / (restraint * (expansion * range + shrinkage));

    /// <summary>Least uncompressed width of a preformed seal, m: ΔL/(Cmax − Cmin).</summary>
    public static double SealWidth(double opening, double least, double most) => opening / (most - least);

    /// <summary>Compression at installation: Cmin + (Tinst − Tmin)/(Tmax − Tmin) (Cmax − Cmin).</summary>
    public static double InstalledCompression(double installed, double coldest, double hottest, double least, double most) =>
        least + (installed - coldest) / (hottest - coldest) * (most - least);

    /// <summary>Saw width, m: (1 − Pc) W.</summary>
    public static double SawWidth(double compression, double sealWidth) => (1 - compression) * sealWidth;

    /// <summary>Mean opening for load transfer, m: L β [α (T_construction − T_mean) + ε], none while the joint is pressed shut.</summary>
    /// <remarks>
    /// Source: NCHRP 1-37A (from memory). β is printed as 0.85 and 0.65 for two kinds of base; which belongs to which could not be checked,
    /// so it is the caller's to choose.
    /// </remarks>
    /// <param name="share">β.</param> <param name="length">Slab length, m.</param> <param name="expansion">α, 1/K.</param>
    /// <param name="fall">Temperature at placing less mean temperature of the month, K; below 0 in hot months.</param>
    /// <param name="shrinkage">Shrinkage strain ε.</param>
    public static double MeanOpening(double share, double length, double expansion, double fall, double shrinkage) =>
        Math.Max(0, length * share * (expansion * fall + shrinkage));
}
