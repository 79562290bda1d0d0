using System.Collections.Immutable;

namespace Slabwright.Core.Treatments;

/// <summary>A distress about which the rule sets do not agree.</summary>
/// <param name="DistressId">Which distress.</param>
/// <param name="Calls">What each rule set calls for, with the rule that decided.</param>
public sealed record Disagreement(string DistressId, ImmutableArray<RuleSetCall> Calls);

/// <summary>What one rule set calls for.</summary>
/// <param name="RuleSet">Identifier of the set.</param>
/// <param name="Treatment">Its call.</param>
/// <param name="Rule">Identifier of the deciding rule.</param>
public sealed record RuleSetCall(string RuleSet, Treatment Treatment, string Rule);
