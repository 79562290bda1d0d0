using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Joints.Sealing;

/// <summary>How a joint is sealed.</summary>
public enum SealantKind
{
    /// <summary>Hot-poured rubberised asphalt.</summary>
    HotPour,

    /// <summary>Silicone, tooled or self-levelling.</summary>
    Silicone,

    /// <summary>Preformed compression seal.</summary>
    PreformedCompression,
}

/// <summary>What a family of sealants asks of its reservoir. Lengths m, temperatures °C, shares of one.</summary>
public sealed record SealantFamily
{
    /// <summary>The kind.</summary>
    public required SealantKind Kind { get; init; }

    /// <summary>Depth of the bead over its width; not used by preformed seals.</summary>
    public required Sourced<double> DepthOverWidth { get; init; }

    /// <summary>Least depth of the bead at mid-width, m.</summary>
    public required Sourced<double> LeastDepth { get; init; }

    /// <summary>Greatest depth of the bead, m.</summary>
    public required Sourced<double> MostDepth { get; init; }

    /// <summary>Narrowest reservoir, m.</summary>
    public required Sourced<double> LeastWidth { get; init; }

    /// <summary>Widest reservoir, m.</summary>
    public required Sourced<double> MostWidth { get; init; }

    /// <summary>Top of the sealant below the surface, m.</summary>
    public required Sourced<double> Recess { get; init; }

    /// <summary>Widening of the joint the bead may follow, as a share of its width when placed; not used by preformed seals.</summary>
    public required Sourced<double> AllowableStrain { get; init; }

    /// <summary>Narrowing of the joint the bead may follow, as a share of its width when placed; not used by preformed seals.</summary>
    public required Sourced<double> AllowableSqueeze { get; init; }

    /// <summary>Least working compression of a preformed seal, share of its uncompressed width.</summary>
    public required Sourced<double> LeastCompression { get; init; }

    /// <summary>Greatest working compression of a preformed seal, share of its uncompressed width.</summary>
    public required Sourced<double> MostCompression { get; init; }

    /// <summary>Air and slab at least this warm, and warming, when the seal goes in, °C.</summary>
    public required Sourced<double> LeastTemperature { get; init; }

    /// <summary>Diameter of the backer rod over the width of the joint; 0 where no rod is used.</summary>
    public required Sourced<double> RodOverWidth { get; init; }

    /// <summary>True for seals poured or gunned into the joint over a backer rod.</summary>
    public bool FieldMoulded => Kind != SealantKind.PreformedCompression;
}
