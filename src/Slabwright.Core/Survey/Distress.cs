namespace Slabwright.Core.Survey;

/// <summary>
/// Distress types: the LTPP Distress Identification Manual list for jointed concrete (FHWA-HRT-13-092), and a few the repair rules of
/// published practice name besides.
/// </summary>
public enum DistressType
{
    /// <summary>LTPP 1: corner break.</summary>
    CornerBreak,

    /// <summary>LTPP 2: durability ("D") cracking.</summary>
    DurabilityCracking,

    /// <summary>LTPP 3: longitudinal cracking.</summary>
    LongitudinalCracking,

    /// <summary>LTPP 4: transverse cracking.</summary>
    TransverseCracking,

    /// <summary>LTPP 5a: transverse joint seal damage.</summary>
    TransverseJointSealDamage,

    /// <summary>LTPP 5b: longitudinal joint seal damage.</summary>
    LongitudinalJointSealDamage,

    /// <summary>LTPP 6: spalling of longitudinal joints.</summary>
    LongitudinalJointSpalling,

    /// <summary>LTPP 7: spalling of transverse joints.</summary>
    TransverseJointSpalling,

    /// <summary>LTPP 8a: map cracking.</summary>
    MapCracking,

    /// <summary>LTPP 8b: scaling.</summary>
    Scaling,

    /// <summary>LTPP 9: polished aggregate.</summary>
    PolishedAggregate,

    /// <summary>LTPP 10: popouts.</summary>
    Popouts,

    /// <summary>LTPP 11: blowup.</summary>
    Blowup,

    /// <summary>LTPP 12: faulting of a transverse joint or crack.</summary>
    Faulting,

    /// <summary>LTPP 13: lane-to-shoulder dropoff.</summary>
    LaneToShoulderDropoff,

    /// <summary>LTPP 14: lane-to-shoulder separation.</summary>
    LaneToShoulderSeparation,

    /// <summary>LTPP 15: patch or patch deterioration.</summary>
    PatchDeterioration,

    /// <summary>LTPP 16: water bleeding and pumping.</summary>
    WaterBleedingAndPumping,

    /// <summary>Beyond LTPP: a joint broken down over its depth (FHWA full-depth repair guidance, Table 1).</summary>
    JointDeterioration,

    /// <summary>Beyond LTPP: slab divided into four pieces or more (Army TM 5-623; TxDOT).</summary>
    ShatteredSlab,

    /// <summary>Beyond LTPP: distress from reactive aggregate (FHWA full-depth repair guidance, Table 1).</summary>
    ReactiveAggregate,

    /// <summary>Beyond LTPP: a joint or crack come through an asphalt overlay.</summary>
    ReflectionCracking,
}

/// <summary>Severity in the three LTPP steps; <see cref="None"/> for the types that have no severities.</summary>
public enum Severity
{
    /// <summary>The type has no severities.</summary>
    None,

    /// <summary>Low.</summary>
    Low,

    /// <summary>Moderate.</summary>
    Moderate,

    /// <summary>High.</summary>
    High,
}

/// <summary>What made the damage, as far as the survey knows.</summary>
public enum DistressCause
{
    /// <summary>Not stated.</summary>
    Unknown,

    /// <summary>Traffic load or loss of support.</summary>
    Load,

    /// <summary>The concrete itself: durability cracking.</summary>
    DurabilityCracking,

    /// <summary>The concrete itself: reactive aggregate.</summary>
    ReactiveAggregate,

    /// <summary>Locked or misaligned dowels, late sawing, incompressibles and the like.</summary>
    Joint,
}

/// <summary>
/// One distress as surveyed, placed on the road. Lengths are metres; anything the survey did not measure is null, never zero.
/// </summary>
public sealed record Distress
{
    /// <summary>Identifier, unique in the survey and stable when the file is read again.</summary>
    public required string Id { get; init; }

    /// <summary>Lane number from the left.</summary>
    public required int Lane { get; init; }

    /// <summary>What it is.</summary>
    public required DistressType Type { get; init; }

    /// <summary>How bad it is.</summary>
    public required Severity Severity { get; init; }

    /// <summary>Where it starts, metres along the road; not after <see cref="To"/>.</summary>
    public required double From { get; init; }

    /// <summary>Where it ends, metres along the road; equal to <see cref="From"/> for a line across the lane.</summary>
    public required double To { get; init; }

    /// <summary>Slab number in the lane.</summary>
    public required int Slab { get; init; }

    /// <summary>Left side of the damage, metres from the lane's left edge; null when not recorded.</summary>
    public double? OffsetFrom { get; init; }

    /// <summary>Right side of the damage, metres from the lane's left edge; null when not recorded.</summary>
    public double? OffsetTo { get; init; }

    /// <summary>Depth, m from the surface.</summary>
    public double? Depth { get; init; }

    /// <summary>Crack or spall width, m.</summary>
    public double? Width { get; init; }

    /// <summary>Length of crack or spall, m.</summary>
    public double? Length { get; init; }

    /// <summary>Area, m².</summary>
    public double? Area { get; init; }

    /// <summary>Faulting, m; positive when the approach side is higher.</summary>
    public double? Faulting { get; init; }

    /// <summary>Widening below the surface beyond what shows, m to each side, from coring or sounding.</summary>
    public double? WideningBelow { get; init; }

    /// <summary>Number of like things recorded in one row; 1 unless stated.</summary>
    public int Count { get; init; } = 1;

    /// <summary>What made it.</summary>
    public DistressCause Cause { get; init; }

    /// <summary>True when it sits in or beside an earlier repair.</summary>
    public bool BesideEarlierRepair { get; init; }

    /// <summary>True when it has come through an asphalt overlay.</summary>
    public bool ThroughOverlay { get; init; }

    /// <summary>Day it was seen.</summary>
    public required DateOnly SurveyedOn { get; init; }

    /// <summary>Surveyor's words.</summary>
    public string Note { get; init; } = "";

    /// <summary>File and row it came from.</summary>
    public string Origin { get; init; } = "";

    /// <summary>Length along the road, m.</summary>
    public double Extent => To - From;

    /// <summary>Middle of the distress, metres along the road.</summary>
    public double Middle => (From + To) / 2;
}

/// <summary>A core taken from the pavement.</summary>
/// <param name="Id">Identifier.</param>
/// <param name="Lane">Lane number.</param>
/// <param name="At">Metres along the road.</param>
/// <param name="Offset">Metres from the lane's left edge; null when not recorded.</param>
/// <param name="Thickness">Slab thickness, m; null when not measured.</param>
/// <param name="DepthOfDamage">Depth of cracked or loose concrete, m from the surface; null when not recorded.</param>
/// <param name="WideningBelow">Extent of bottom damage beyond what shows, m; null when not recorded.</param>
/// <param name="Note">Driller's words.</param>
public sealed record CoreSample(
    string Id, int Lane, double At, double? Offset, double? Thickness, double? DepthOfDamage, double? WideningBelow, string Note = "");
