using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Joints.Sealing;

/// <summary>Choices and inputs for sealing the repair joints. SI; temperatures are mean temperatures of the slab.</summary>
public sealed record SealingSettings
{
    private const double Inch = 0.0254;
    private static readonly SourceRef Assumed = new("assumption", "to be confirmed by the project", SourceStatus.CommonPractice);

    /// <summary>Defaults.</summary>
    public static SealingSettings Default { get; } = new();

    /// <summary>The sealant of the transverse joints.</summary>
    public SealantFamily Sealant { get; init; } = SealantFamilies.Silicone;

    /// <summary>Coldest slab temperature of the year, °C; null when not given.</summary>
    public double? Coldest { get; init; }

    /// <summary>Hottest slab temperature of the year, °C; null when not given.</summary>
    public double? Hottest { get; init; }

    /// <summary>Taken where the project gives no coldest, °C: 14 °F, the example of NB-33.</summary>
    public Sourced<double> AssumedColdest { get; init; } = new(-10, Assumed);

    /// <summary>Taken where the project gives no hottest, °C: 104 °F.</summary>
    public Sourced<double> AssumedHottest { get; init; } = new(40, Assumed);

    /// <summary>Coldest slab temperature joints are sawn and sealed at, °C.</summary>
    public Sourced<double> SealFrom { get; init; } = new(10, Assumed);

    /// <summary>Hottest slab temperature joints are sawn and sealed at, °C.</summary>
    public Sourced<double> SealTo { get; init; } = new(30, Assumed);

    /// <summary>Thermal expansion of the old concrete, 1/K: 5.5 millionths per °F.</summary>
    public Sourced<double> OldExpansion { get; init; } = new(9.9e-6, new SourceRef("NB-33", "typical value", SourceStatus.Verified));

    /// <summary>Thermal expansion of the repair's concrete, 1/K.</summary>
    public Sourced<double> NewExpansion { get; init; } = new(9.9e-6, new SourceRef("NB-33", "typical value", SourceStatus.Verified));

    /// <summary>Shrinkage still to come in the old concrete.</summary>
    public Sourced<double> OldShrinkage { get; init; } = new(1e-4, new SourceRef("NB-33", "resealing", SourceStatus.Verified));

    /// <summary>Shrinkage of the repair's concrete; 4.5e-4 goes with an indirect tensile strength of 500 psi.</summary>
    public Sourced<double> NewShrinkage { get; init; } = new(4.5e-4, new SourceRef("AASHTO-1993", "shrinkage by tensile strength", SourceStatus.FromMemory));

    /// <summary>Base factor C of the joint opening; null: by what the slab rests on, see <see cref="BaseFactors"/>.</summary>
    public double? BaseFactor { get; init; }

    /// <summary>Width of the surrounding joints' reservoirs, m; null when not known.</summary>
    public double? SurroundingWidth { get; init; }

    /// <summary>Saw widths come in multiples of this, m.</summary>
    public double WidthStep { get; init; } = Inch / 16;

    /// <summary>Least depth of the widening cut where one joint face could bear on the other at a point, m: 2 in.</summary>
    public Sourced<double> LeastSawDepth { get; init; } = new(2 * Inch, SourceRef.CommonPractice);

    /// <summary>Uncompressed widths of preformed seals, m, rising; their height is taken as their width.</summary>
    public Sourced<ImmutableArray<double>> SealSizes { get; init; } = new(
        [7 * Inch / 16, 9 * Inch / 16, 11 * Inch / 16, 13 * Inch / 16, 1 * Inch, 1.25 * Inch, 1.625 * Inch, 2 * Inch, 2.5 * Inch, 3 * Inch],
        new SourceRef("common practice", "sizes made; to be confirmed by the maker", SourceStatus.CommonPractice));

    /// <summary>Saw width of a preformed seal is kept to this, m: 1/16 in.</summary>
    public Sourced<double> SawTolerance { get; init; } = new(Inch / 16, new SourceRef("NB-32", "tolerance of the saw width", SourceStatus.Verified));

    /// <summary>Coldest and hottest slab temperature used, °C: the project's own, or the assumed ones where either is missing or they are the wrong way round.</summary>
    public (double Coldest, double Hottest) Range =>
        Coldest is { } cold && Hottest is { } hot && cold < hot ? (cold, hot) : (AssumedColdest.Value, AssumedHottest.Value);

    /// <summary>Slab temperature the chosen saw width is meant for, °C: the middle of the range joints are sealed in.</summary>
    public double DesignTemperature => (SealFrom.Value + SealTo.Value) / 2;

    /// <summary>The base factor for a base.</summary>
    public Sourced<double> FactorFor(BaseKind kind) => BaseFactor is { } given ? new(given, SourceRef.Project) : BaseFactors.For(kind);
}

/// <summary>The base factor C of the joint opening by what the slab rests on.</summary>
public static class BaseFactors
{
    private static readonly SourceRef Granular = new("NB-33", "granular base", SourceStatus.Verified);
    private static readonly SourceRef Stabilised = new("AASHTO-1993", "stabilised base", SourceStatus.FromMemory);
    private static readonly SourceRef AsGranular = new("NB-33", "no figure for this base; that of granular base taken", SourceStatus.CommonPractice);

    /// <summary>C for a base: 0.80 granular, 0.65 stabilised.</summary>
    public static Sourced<double> For(BaseKind kind) => kind switch
    {
        BaseKind.CementTreated or BaseKind.AsphaltTreated => new(0.65, Stabilised),
        BaseKind.Granular => new(0.80, Granular),
        _ => new(0.80, AsGranular),
    };
}
