using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Night;

/// <summary>Kinds of evidence of strength.</summary>
public enum EvidenceKind
{
    /// <summary>Maturity of a probe on the curve of the mix.</summary>
    Maturity,

    /// <summary>Cylinders or beams kept with the slab and broken.</summary>
    Specimens,

    /// <summary>Pulse velocity on its own curve.</summary>
    PulseVelocity,
}

/// <summary>One piece of evidence laid before the decision.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="At">When taken, local time.</param>
/// <param name="Test">How the strength is expressed.</param>
/// <param name="Strength">Strength it shows, Pa.</param>
/// <param name="Sentence">What was done, in one sentence.</param>
public sealed record StrengthEvidence(EvidenceKind Kind, DateTime At, StrengthKind Test, double Strength, string Sentence)
{
    /// <summary>Lower end of the strength at the confidence asked for, Pa; null where the evidence has no band.</summary>
    public double? Low { get; init; }

    /// <summary>True where it is read off a curve before its first tested age.</summary>
    public bool BeforeFirstTested { get; init; }

    /// <summary>True where the probe sits at the place that lags behind.</summary>
    public bool AtGoverningPlace { get; init; }

    /// <summary>True where no probe sits there: readings of other places are carried to it by computation.</summary>
    public bool Carried { get; init; }
}

/// <summary>Outcome of the question whether to open.</summary>
public enum OpeningVerdict
{
    /// <summary>Everything asked for is there.</summary>
    Open,

    /// <summary>Something is missing.</summary>
    StayClosed,

    /// <summary>Opened by the engineer against the rule, for a reason that is kept.</summary>
    OpenByOverride,
}

/// <summary>The decision kept on record: criterion, evidence, name and time. A refusal says what is missing.</summary>
public sealed record OpeningRecord
{
    /// <summary>Repair or placement.</summary>
    public required string Repair { get; init; }

    /// <summary>The verdict.</summary>
    public required OpeningVerdict Verdict { get; init; }

    /// <summary>What was asked for.</summary>
    public required OpeningCriterion Criterion { get; init; }

    /// <summary>What was laid before it.</summary>
    public required ImmutableArray<StrengthEvidence> Evidence { get; init; }

    /// <summary>Who decided.</summary>
    public required string By { get; init; }

    /// <summary>When, local time.</summary>
    public required DateTime At { get; init; }

    /// <summary>Hours since placing.</summary>
    public required double Age { get; init; }

    /// <summary>What is missing, one sentence each; empty when opened by the rule.</summary>
    public required ImmutableArray<string> Missing { get; init; }

    /// <summary>Reason of an override; null without one.</summary>
    public string? OverrideReason { get; init; }

    /// <summary>Why.</summary>
    public required ImmutableArray<Reason> Reasons { get; init; }
}
