using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Sealing;

/// <summary>How far one repair joint opens and closes.</summary>
public sealed record SealedJoint
{
    /// <summary>The repair.</summary>
    public required string RepairId { get; init; }

    /// <summary>Lane number.</summary>
    public required int Lane { get; init; }

    /// <summary>Start, inner or end.</summary>
    public required JointPosition Position { get; init; }

    /// <summary>Metres along the road.</summary>
    public required double At { get; init; }

    /// <summary>False for a tied joint: it is held closed and its slabs move at the next working joints.</summary>
    public required bool Works { get; init; }

    /// <summary>Old concrete whose movement comes to this joint, m: half of it on each side up to the next working joints.</summary>
    public required double OldLength { get; init; }

    /// <summary>New concrete whose movement comes to this joint, m.</summary>
    public required double NewLength { get; init; }

    /// <summary>Change of opening for one kelvin, m/K.</summary>
    public required double PerKelvin { get; init; }

    /// <summary>Opening by shrinkage still to come, m.</summary>
    public required double Shrinkage { get; init; }

    /// <summary>Change of opening from the hottest to the coldest slab temperature with the shrinkage, m.</summary>
    public required double Movement { get; init; }

    /// <summary>Index of its reservoir in <see cref="SealPlan.Reservoirs"/>; −1 for a tied joint, which takes the same saw cut but does not move.</summary>
    public required int Reservoir { get; init; }
}

/// <summary>One width of reservoir or size of seal, with all it was checked for.</summary>
public sealed record ReservoirAlternative
{
    /// <summary>Saw width at the slab temperature the joint is sawn at, m.</summary>
    public required double Width { get; init; }

    /// <summary>Depth of the bead, or height of the preformed seal, m.</summary>
    public required double SealDepth { get; init; }

    /// <summary>Depth of the widening cut below the surface, m: what recess, seal and rod need, and no less than the least depth.</summary>
    public required double SawDepth { get; init; }

    /// <summary>Uncompressed width of the preformed seal, m; null for sealants moulded in the joint.</summary>
    public required double? SealSize { get; init; }

    /// <summary>Diameter of the backer rod, m; null where no rod is used.</summary>
    public required double? Rod { get; init; }

    /// <summary>Depth over width of the bead; null for preformed seals.</summary>
    public required double? ShapeFactor { get; init; }

    /// <summary>Joint width at the coldest, shrinkage done, m.</summary>
    public required double WidestOpening { get; init; }

    /// <summary>Joint width at the hottest, before any shrinkage, m.</summary>
    public required double NarrowestOpening { get; init; }

    /// <summary>Lengthening along the bead's curved surface at the coldest, share; null for preformed seals. For information: the allowable strains are those of the width.</summary>
    public required double? SurfaceStrain { get; init; }

    /// <summary>Every limit with its value.</summary>
    public required ImmutableArray<LimitCheck> Checks { get; init; }

    /// <summary>The limit nearest to being reached, or furthest exceeded.</summary>
    public LimitCheck Governing => Checks.MaxBy(c => c.Use)!;

    /// <summary>True when every limit holds.</summary>
    public bool Passes => Checks.All(c => c.Holds);
}

/// <summary>One line of the crew's table: what holds when the joint is sawn and sealed at this slab temperature.</summary>
/// <param name="SlabTemperature">°C.</param>
/// <param name="SawWidth">Saw width for this temperature alone, m: the narrowest saw step that holds, or for a preformed seal the width by its design equation; null when none does.</param>
/// <param name="JointWidth">Width at this temperature of a joint sawn to the chosen width at the design temperature, m.</param>
/// <param name="Compression">Compression of the preformed seal at that width; null for sealants moulded in the joint.</param>
/// <param name="ColdStrain">Widening to the coldest as a share, when the chosen width is sawn and sealed at this temperature; null for preformed seals.</param>
/// <param name="HotSqueeze">Narrowing to the hottest as a share, likewise; null for preformed seals.</param>
/// <param name="Holds">True when the chosen saw width, sawn and sealed at this temperature, keeps every limit.</param>
public sealed record InstallationRow(
    double SlabTemperature, double? SawWidth, double JointWidth, double? Compression, double? ColdStrain, double? HotSqueeze, bool Holds);

/// <summary>The reservoir of the transverse repair joints on one build-up of one lane.</summary>
public sealed record Reservoir
{
    /// <summary>Lane number.</summary>
    public required int Lane { get; init; }

    /// <summary>Where the build-up begins, metres along the road.</summary>
    public required double From { get; init; }

    /// <summary>Where it ends, metres along the road.</summary>
    public required double To { get; init; }

    /// <summary>Slab thickness, m.</summary>
    public required double Thickness { get; init; }

    /// <summary>What the slab rests on.</summary>
    public required BaseKind Base { get; init; }

    /// <summary>The sealant.</summary>
    public required SealantFamily Family { get; init; }

    /// <summary>The joint that moves most: it governs.</summary>
    public required SealedJoint Governing { get; init; }

    /// <summary>Joints sealed so.</summary>
    public required int Joints { get; init; }

    /// <summary>Everything looked at: by size of the seal, then by width.</summary>
    public required ImmutableArray<ReservoirAlternative> Alternatives { get; init; }

    /// <summary>The reservoir to saw; null when none holds, and a finding says so.</summary>
    public required ReservoirAlternative? Chosen { get; init; }

    /// <summary>Slab temperature the chosen width is meant for, °C.</summary>
    public required double DesignTemperature { get; init; }

    /// <summary>Top of the seal below the surface, m.</summary>
    public required double Recess { get; init; }

    /// <summary>True when the chosen width is that of the surrounding joints; null when that is not known.</summary>
    public required bool? MatchesSurrounding { get; init; }

    /// <summary>The crew's table, coldest first; empty when no reservoir holds.</summary>
    public required ImmutableArray<InstallationRow> Table { get; init; }

    /// <summary>How the numbers came about.</summary>
    public required ImmutableArray<Reason> Reasons { get; init; }
}

/// <summary>What the sealing of the repair joints hands on.</summary>
public sealed record SealPlan
{
    /// <summary>Nothing to seal.</summary>
    public static SealPlan Empty { get; } = new() { Joints = [], Reservoirs = [], Notes = [], Findings = [] };

    /// <summary>Every transverse repair joint, in the order of the repairs.</summary>
    public required ImmutableArray<SealedJoint> Joints { get; init; }

    /// <summary>The reservoirs, by lane, then along the road.</summary>
    public required ImmutableArray<Reservoir> Reservoirs { get; init; }

    /// <summary>Steps and checks for the crew, in working order.</summary>
    public required ImmutableArray<CrewNote> Notes { get; init; }

    /// <summary>What was wrong with inputs or could not be met.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }
}
