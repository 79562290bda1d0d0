using Slabwright.Core.Evidence;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Joints.Sealing;

/// <summary>The three families with their published or remembered figures; docs/sources.md says what was read and what is to be confirmed.</summary>
public static class SealantFamilies
{
    private const double Inch = 0.0254;
    private static readonly SourceRef Practice = new("FHWA-RD-99-146", "reservoir and sealant tables", SourceStatus.FromMemory);
    private static readonly SourceRef Notebook = new("NB-33", "preformed compression seals", SourceStatus.Verified);
    private static readonly SourceRef Unused = SourceRef.CommonPractice;
    private static readonly SourceRef Confirm = new("common practice", "to be confirmed by the maker", SourceStatus.CommonPractice);

    /// <summary>Hot-poured rubberised asphalt: as deep as wide.</summary>
    public static SealantFamily HotPour { get; } = new()
    {
        Kind = SealantKind.HotPour,
        DepthOverWidth = new(1, Practice),
        LeastDepth = new(0.5 * Inch, Confirm),
        MostDepth = new(1 * Inch, Confirm),
        LeastWidth = new(0.25 * Inch, Confirm),
        MostWidth = new(1 * Inch, Confirm),
        Recess = new(0.25 * Inch, Practice),
        AllowableStrain = new(0.20, Practice),
        AllowableSqueeze = new(0.50, Confirm),
        LeastCompression = new(0, Unused),
        MostCompression = new(0, Unused),
        LeastTemperature = new(40.0 / 9, Practice),
        RodOverWidth = new(1.25, Practice),
    };

    /// <summary>Silicone: half as deep as wide.</summary>
    public static SealantFamily Silicone { get; } = new()
    {
        Kind = SealantKind.Silicone,
        DepthOverWidth = new(0.5, Practice),
        LeastDepth = new(0.25 * Inch, Practice),
        MostDepth = new(0.5 * Inch, Practice),
        LeastWidth = new(0.25 * Inch, Confirm),
        MostWidth = new(1 * Inch, Confirm),
        Recess = new(0.375 * Inch, Practice),
        AllowableStrain = new(0.50, Practice),
        AllowableSqueeze = new(0.50, Confirm),
        LeastCompression = new(0, Unused),
        MostCompression = new(0, Unused),
        LeastTemperature = new(40.0 / 9, Practice),
        RodOverWidth = new(1.25, Practice),
    };

    /// <summary>Preformed compression seal: works between 20 and 55 % compression.</summary>
    public static SealantFamily PreformedCompression { get; } = new()
    {
        Kind = SealantKind.PreformedCompression,
        DepthOverWidth = new(0, Unused),
        LeastDepth = new(0, Unused),
        MostDepth = new(0, Unused),
        LeastWidth = new(0.125 * Inch, Confirm),
        MostWidth = new(1.5 * Inch, Confirm),
        Recess = new(0.25 * Inch, Confirm),
        AllowableStrain = new(0, Unused),
        AllowableSqueeze = new(0, Unused),
        LeastCompression = new(0.20, Notebook),
        MostCompression = new(0.55, Notebook),
        LeastTemperature = new(0, new SourceRef("NB-31", "air and pavement above freezing", SourceStatus.Verified)),
        RodOverWidth = new(0, Unused),
    };

    /// <summary>The family of a kind.</summary>
    public static SealantFamily Of(SealantKind kind) => kind switch
    {
        SealantKind.HotPour => HotPour,
        SealantKind.Silicone => Silicone,
        _ => PreformedCompression,
    };
}
