using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.Core.RuleSets;

/// <summary>A value with the place it comes from.</summary>
/// <param name="Value">The value; lengths in metres.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Sourced<T>(T Value, SourceRef Source)
{
    /// <summary>What the limit says, in one sentence of our own; empty where the value speaks for itself.</summary>
    public string Sentence { get; init; } = "";
}

/// <summary>
/// The limits repair boundaries must keep. A null member means the rule set is silent and the rule does not bind.
/// </summary>
public sealed record BoundaryLimits
{
    /// <summary>Least length of a repair, m.</summary>
    public required Sourced<double> LeastLength { get; init; }

    /// <summary>True where a repair may be as short as half its slab, when that is less than <see cref="LeastLength"/>.</summary>
    public Sourced<bool>? LeastLengthOrHalfSlab { get; init; }

    /// <summary>Least length where both ends rely on aggregate interlock, m.</summary>
    public Sourced<double>? LeastLengthUndowelled { get; init; }

    /// <summary>Least old slab left between a cut and the next transverse joint, crack or earlier repair, m.</summary>
    public Sourced<double>? LeastRemnant { get; init; }

    /// <summary>Least old slab left between two repairs in a lane, m.</summary>
    public Sourced<double>? LeastGap { get; init; }

    /// <summary>How far a cut must pass a dowelled joint so that the old joint is taken out, m.</summary>
    public Sourced<double>? ExtendPastDowelledJoint { get; init; }

    /// <summary>True where a repair may end exactly at an undowelled joint or working crack.</summary>
    public Sourced<bool>? EndAtUndowelledJoint { get; init; }

    /// <summary>Slabs shorter than this are replaced whole, m.</summary>
    public Sourced<double>? WholeSlabBelow { get; init; }

    /// <summary>True where part of a slab may be replaced only if the damage lies within one half of it.</summary>
    public Sourced<bool>? PartOnlyWithinHalfSlab { get; init; }

    /// <summary>Longest concrete without a transverse joint inside a repair, m.</summary>
    public Sourced<double>? LongestUnjointed { get; init; }

    /// <summary>Longest concrete without a joint as a multiple of thickness on granular base (24 means 24 T).</summary>
    public Sourced<double>? UnjointedThicknessesGranular { get; init; }

    /// <summary>The same on a treated base.</summary>
    public Sourced<double>? UnjointedThicknessesTreated { get; init; }

    /// <summary>Length added at each end for damage hidden at the bottom where slabs freeze and thaw, m.</summary>
    public required Sourced<double> HiddenMarginFreezeThaw { get; init; }

    /// <summary>The same elsewhere, m.</summary>
    public required Sourced<double> HiddenMargin { get; init; }
}

/// <summary>A least dowel diameter from a slab thickness on.</summary>
/// <param name="Over">Holds for slabs at least this thick, m.</param>
/// <param name="Exclusive">True where the slab must be thicker than <paramref name="Over"/>.</param>
/// <param name="Diameter">Least diameter, m.</param>
/// <param name="Sentence">What the row says.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="On">False for rows from memory until the engineer takes them over.</param>
public sealed record DiameterStep(double Over, bool Exclusive, double Diameter, string Sentence, SourceRef Source, bool On = true)
{
    /// <summary>True when the row speaks of a slab of this thickness; a tenth of a millimetre is forgiven.</summary>
    public bool Holds(double thickness) => On && (Exclusive ? thickness > Over + 1e-4 : thickness >= Over - 1e-4);
}

/// <summary>What the rule set asks of new joints.</summary>
public sealed record JointLimits
{
    /// <summary>Dowels in each wheel path; null where bars run over the full width.</summary>
    public Sourced<int>? DowelsPerWheelPath { get; init; }

    /// <summary>Dowel spacing, m.</summary>
    public required Sourced<double> DowelSpacing { get; init; }

    /// <summary>Least dowel diameter, m.</summary>
    public required Sourced<double> LeastDowelDiameter { get; init; }

    /// <summary>Dowel diameter for heavy traffic, m; null where silent.</summary>
    public Sourced<double>? HeavyTrafficDowelDiameter { get; init; }

    /// <summary>Dowels in each wheel path where traffic is heavy; null where the set makes no difference.</summary>
    public Sourced<int>? HeavyTrafficDowelsPerWheelPath { get; init; }

    /// <summary>Trucks a day in a lane from which its traffic is heavy; null where the set names none, and no lane is.</summary>
    public Sourced<double>? HeavyTrafficFrom { get; init; }

    /// <summary>Least diameter as a share of slab thickness; null where silent.</summary>
    public Sourced<double>? DiameterPerThickness { get; init; }

    /// <summary>Least diameters by slab thickness, rising; the last row that speaks of a slab holds. Empty where silent.</summary>
    public ImmutableArray<DiameterStep> DiametersByThickness { get; init; } = [];

    /// <summary>Least dowel length, m; null where silent.</summary>
    public Sourced<double>? LeastDowelLength { get; init; }

    /// <summary>Least embedment on each side of the joint, m; null where silent.</summary>
    public Sourced<double>? LeastEmbedment { get; init; }

    /// <summary>Least distance of a dowel from the back of a curb, m; null where silent.</summary>
    public Sourced<double>? ClearOfCurb { get; init; }

    /// <summary>Slabs thinner than this may go without dowels where <see cref="UndowelledBelowTrucks"/> allows it too, m; null: never.</summary>
    public Sourced<double>? UndowelledBelowThickness { get; init; }

    /// <summary>Fewer trucks a day in the lane than this may go without dowels; null: never.</summary>
    public Sourced<double>? UndowelledBelowTrucks { get; init; }

    /// <summary>Least deflection transfer of a dowelled joint, share; null where silent.</summary>
    public Sourced<double>? LeastTransfer { get; init; }

    /// <summary>Greatest mean faulting at the end of the design years, m; null where silent.</summary>
    public Sourced<double>? GreatestFaulting { get; init; }

    /// <summary>Repairs at least this long are tied along the lane joint; null where faces are always isolated, m.</summary>
    public Sourced<double>? TieLongitudinalFrom { get; init; }

    /// <summary>Tie bar spacing along the longitudinal face, m.</summary>
    public Sourced<double>? TieBarSpacing { get; init; }

    /// <summary>Repairs up to this length may have one end tied, m; null where both ends work.</summary>
    public Sourced<double>? OneEndTiedUpTo { get; init; }

    /// <summary>True where joints sawn inside a repair carry dowels.</summary>
    public required Sourced<bool> DowelIntermediateJoints { get; init; }

    /// <summary>Dowels the set states for a joint, before any design: per wheel path, or full width at the spacing.</summary>
    /// <param name="width">Lane width, m.</param>
    public int StatedDowels(double width) => DowelsPerWheelPath is { } perPath
        ? 2 * perPath.Value
        : BarRow.FullWidthCount(width, BarRow.EdgeDistance, DowelSpacing.Value);
}

/// <summary>
/// One treatment rule. Every condition that is not null must hold; rules are tried in order and the first that holds decides. Rules that
/// look at the slab (<see cref="IsSlabRule"/>) are tried in a second pass, on distresses that call for full-depth work by themselves.
/// </summary>
public sealed record TreatmentRule
{
    /// <summary>Identifier, unique in the set.</summary>
    public required string Id { get; init; }

    /// <summary>What the rule says, in one sentence of our own.</summary>
    public required string Sentence { get; init; }

    /// <summary>Distress types it speaks of; empty means all.</summary>
    public ImmutableArray<DistressType> Types { get; init; } = [];

    /// <summary>Least severity it holds for.</summary>
    public Severity? AtLeast { get; init; }

    /// <summary>Greatest severity it holds for.</summary>
    public Severity? AtMost { get; init; }

    /// <summary>Depth above this share of slab thickness, exclusive.</summary>
    public double? DepthShareOver { get; init; }

    /// <summary>Greatest depth as a share of slab thickness, inclusive.</summary>
    public double? DepthShareUpTo { get; init; }

    /// <summary>Least depth as a share of slab thickness, inclusive; 1 means through the slab.</summary>
    public double? DepthShareFrom { get; init; }

    /// <summary>Greatest depth, m, inclusive.</summary>
    public double? DepthUpTo { get; init; }

    /// <summary>True: depth must be known; false: must be unknown.</summary>
    public bool? DepthKnown { get; init; }

    /// <summary>Width above this, m, exclusive.</summary>
    public double? WidthOver { get; init; }

    /// <summary>Greatest width, m, inclusive.</summary>
    public double? WidthUpTo { get; init; }

    /// <summary>True: width must be known; false: must be unknown.</summary>
    public bool? WidthKnown { get; init; }

    /// <summary>Least faulting, m, inclusive; the size counts, not the direction.</summary>
    public double? FaultingFrom { get; init; }

    /// <summary>True: faulting must be known; false: must be unknown.</summary>
    public bool? FaultingKnown { get; init; }

    /// <summary>Causes it holds for; empty means all.</summary>
    public ImmutableArray<DistressCause> Causes { get; init; } = [];

    /// <summary>Pavement kinds it holds for: null both, true plain only, false reinforced only.</summary>
    public bool? PlainPavement { get; init; }

    /// <summary>Slab at least this long, m.</summary>
    public double? SlabFrom { get; init; }

    /// <summary>Slab at most this long, m.</summary>
    public double? SlabUpTo { get; init; }

    /// <summary>
    /// The distress itself calls for full-depth work and so do at least this many others in the same slab; 0 holds for every distress that
    /// calls for full-depth work.
    /// </summary>
    public int? OtherCallsInSlabFrom { get; init; }

    /// <summary>
    /// The distress itself calls for full-depth work and so do others in at least this many neighbouring slabs in a row, this one included.
    /// </summary>
    public int? DamagedSlabsInRowFrom { get; init; }

    /// <summary>Beside or in an earlier repair.</summary>
    public bool? BesideEarlierRepair { get; init; }

    /// <summary>Through an asphalt overlay.</summary>
    public bool? ThroughOverlay { get; init; }

    /// <summary>Freeze–thaw climate.</summary>
    public bool? FreezeThaw { get; init; }

    /// <summary>What the rule calls for.</summary>
    public required Treatment Treatment { get; init; }

    /// <summary>A warning to print beside the decision, e.g. that the repair is temporary.</summary>
    public string? Warning { get; init; }

    /// <summary>Where the rule comes from.</summary>
    public required SourceRef Source { get; init; }

    /// <summary>False for rules from memory until the engineer switches them on.</summary>
    public bool On { get; init; } = true;

    /// <summary>True for rules that ask about other distresses of the slab or about the slabs beside it.</summary>
    public bool IsSlabRule => OtherCallsInSlabFrom is not null || DamagedSlabsInRowFrom is not null;
}

/// <summary>A limit a rule set knows but does not use until the engineer switches it on, as a rule from memory.</summary>
/// <param name="Key">Its name in the file, e.g. <c>boundaries.longest_unjointed</c>; the name to switch it on by.</param>
/// <param name="Value">Value with its unit, as the file gives it.</param>
/// <param name="Sentence">What it says.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record OfferedLimit(string Key, string Value, string Sentence, SourceRef Source)
{
    /// <summary>The value in base units: metres, a plain number, or 1 and 0 for yes and no.</summary>
    public double BaseValue { get; init; }
}

/// <summary>A set of rules for one project: readable data with a source on every row.</summary>
public sealed record RuleSet
{
    /// <summary>Identifier used in project files.</summary>
    public required string Id { get; init; }

    /// <summary>Printed name.</summary>
    public required string Name { get; init; }

    /// <summary>What the set is and what it is silent about.</summary>
    public required string Summary { get; init; }

    /// <summary>Identifier of the set whose rules and limits fill in where this one is silent; null where none does.</summary>
    public string? FillsFrom { get; init; }

    /// <summary>What the publication says nothing about, in words.</summary>
    public ImmutableArray<string> SilentAbout { get; init; } = [];

    /// <summary>Limits known but switched off.</summary>
    public ImmutableArray<OfferedLimit> Offered { get; init; } = [];

    /// <summary>Treatment rules in order: the set's own, then those that fill in.</summary>
    public required ImmutableArray<TreatmentRule> Treatments { get; init; }

    /// <summary>Limits for boundaries.</summary>
    public required BoundaryLimits Boundaries { get; init; }

    /// <summary>Limits for joints.</summary>
    public required JointLimits Joints { get; init; }

    /// <summary>Strength and age at which traffic may return, thin slabs first.</summary>
    public ImmutableArray<OpeningRow> Opening { get; init; } = [];
}
