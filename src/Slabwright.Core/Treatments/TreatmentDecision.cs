using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Treatments;

/// <summary>What to do about a distress, from least to most removal.</summary>
public enum Treatment
{
    /// <summary>Leave it alone.</summary>
    Leave,

    /// <summary>Clean and seal the crack or joint.</summary>
    Seal,

    /// <summary>Partial-depth repair: top of the slab only.</summary>
    PartialDepthRepair,

    /// <summary>Full-depth repair of part of a slab, over the full lane width.</summary>
    FullDepthRepair,

    /// <summary>Replace the whole slab.</summary>
    SlabReplacement,

    /// <summary>Replace several neighbouring slabs in one removal.</summary>
    SlabRun,
}

/// <summary>The engineer's own choice in place of what the rules called.</summary>
/// <param name="DistressId">Which distress.</param>
/// <param name="Treatment">The choice.</param>
/// <param name="Because">The reason, required and kept.</param>
/// <param name="By">Who decided.</param>
/// <param name="On">When, or null.</param>
public sealed record TreatmentOverride(string DistressId, Treatment Treatment, string Because, string By = "", DateOnly? On = null);

/// <summary>The decision for one distress with everything that led to it.</summary>
/// <param name="DistressId">Which distress.</param>
/// <param name="Treatment">What will be done.</param>
/// <param name="CalledByRules">What the rules called; differs from <paramref name="Treatment"/> only under an override.</param>
/// <param name="RuleSet">Identifier of the rule set.</param>
/// <param name="Reasons">Rule, source and inputs; the deciding rule first.</param>
/// <param name="Override">The engineer's override, or null.</param>
public sealed record TreatmentDecision(
    string DistressId,
    Treatment Treatment,
    Treatment CalledByRules,
    string RuleSet,
    ImmutableArray<Reason> Reasons,
    TreatmentOverride? Override = null);
