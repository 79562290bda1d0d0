using System.Collections.Immutable;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;

namespace Slabwright.Core.Treatments;

/// <summary>The rules that may speak of each distress type, in order, so that a long survey does not try every rule on every row.</summary>
internal sealed class RulesByType
{
    private readonly ImmutableArray<TreatmentRule>[] _rules;

    private RulesByType(ImmutableArray<TreatmentRule>[] rules) => _rules = rules;

    public ImmutableArray<TreatmentRule> this[DistressType type] => _rules[(int)type];

    public static RulesByType Of(IEnumerable<TreatmentRule> rules)
    {
        var all = rules.ToList();
        return new RulesByType([.. Enum.GetValues<DistressType>()
            .Select(type => all.Where(r => r.Types.IsEmpty || r.Types.Contains(type)).ToImmutableArray())]);
    }
}
