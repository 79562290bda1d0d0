using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Joints;

/// <summary>
/// A law of concrete in bending. Each belongs to the stress calculation it was fitted with; their answers differ by orders of magnitude and
/// must never be mixed.
/// </summary>
public enum FatigueLaw
{
    /// <summary>Portland Cement Association 1984; endurance below 0.45.</summary>
    Pca1984,

    /// <summary>Zero-maintenance study 1977, half of the specimens failed.</summary>
    ZeroMaintenance50,

    /// <summary>Zero-maintenance study 1977, design curve for 24 % failed.</summary>
    ZeroMaintenance24,

    /// <summary>log N = 2.13 SR^−1.2.</summary>
    Power213,

    /// <summary>NCHRP 1-26.</summary>
    Nchrp126,

    /// <summary>Vesic and Saxena, from the road test.</summary>
    VesicSaxena,

    /// <summary>ARE, from the road test.</summary>
    Are,

    /// <summary>NCHRP 1-37A without the constant, as used since the manual of practice.</summary>
    Nchrp137A,

    /// <summary>NCHRP 1-37A report of 2004 with the constant 0.4371.</summary>
    Nchrp137AReport,
}

/// <summary>What one law says and where it comes from.</summary>
/// <param name="Law">The law.</param>
/// <param name="Name">Printed name.</param>
/// <param name="Expression">The formula, SR the ratio of stress to modulus of rupture.</param>
/// <param name="BelongsTo">The stress it was fitted with.</param>
/// <param name="MostRatio">Greatest ratio the law was given for; infinity where none was stated.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record FatigueLawFacts(FatigueLaw Law, string Name, string Expression, string BelongsTo, double MostRatio, SourceRef Source);

/// <summary>All laws of concrete in bending, one row each.</summary>
public static class FatigueLaws
{
    /// <summary>What is said wherever a law is used.</summary>
    public const string NeverMix =
        "A fatigue law holds only with the stress calculation it was fitted with; the laws differ by orders of magnitude and must not be mixed.";

    /// <summary>The laws in the order of the enumeration.</summary>
    public static ImmutableArray<FatigueLawFacts> All { get; } =
    [
        Row(FatigueLaw.Pca1984, "PCA 1984", "SR > 0.55: log N = (0.9718 − SR)/0.0828; SR > 0.45: N = [4.2577/(SR − 0.4325)]^3.268; else unlimited",
            "edge stress with the method's own tables", "PCA-1984"),
        Row(FatigueLaw.ZeroMaintenance50, "zero-maintenance, 50 %", "log N = 17.61 (1 − SR)", "edge stress from plate finite elements, load and curling",
            "FHWA-RD-77-111"),
        Row(FatigueLaw.ZeroMaintenance24, "zero-maintenance, 24 %", "log N = 16.61 − 17.61 SR", "as the 50 % law; design curve", "FHWA-RD-77-111"),
        Row(FatigueLaw.Power213, "2.13 SR^-1.2", "log N = 2.13 SR^−1.2", "edge stress; the author could not be confirmed", "FATIGUE-213"),
        Row(FatigueLaw.Nchrp126, "NCHRP 1-26", "log N = 2.8127 SR^−1.2214", "edge stress, load and curling", "NCHRP-1-26", 1.25),
        Row(FatigueLaw.VesicSaxena, "Vesic and Saxena", "N = 225,000 SR^−4", "stress by plate theory at the road test", "VESIC-SAXENA"),
        Row(FatigueLaw.Are, "ARE", "N = 23,440 SR^−3.21", "stress by layer theory at the road test", "ARE-1977"),
        Row(FatigueLaw.Nchrp137A, "NCHRP 1-37A", "log N = 2.0 SR^−1.22", "hourly stress of that procedure; manual of practice", "MEPDG-2008"),
        Row(FatigueLaw.Nchrp137AReport, "NCHRP 1-37A, report of 2004", "log N = 2.0 SR^−1.22 + 0.4371", "hourly stress of that procedure; report of 2004",
            "NCHRP-1-37A"),
    ];

    /// <summary>The row of a law.</summary>
    public static FatigueLawFacts Of(FatigueLaw law) => All[(int)law];

    private static FatigueLawFacts Row(
        FatigueLaw law, string name, string expression, string belongsTo, string tag, double most = double.PositiveInfinity) =>
        new(law, name, expression, belongsTo, most, new SourceRef(tag, "", SourceStatus.FromMemory));
}
