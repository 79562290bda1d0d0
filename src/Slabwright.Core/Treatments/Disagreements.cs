using System.Collections.Immutable;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;

namespace Slabwright.Core.Treatments;

/// <summary>Finds where rule sets call for different treatments.</summary>
public static class Disagreements
{
    /// <summary>The distresses for which the sets do not all call for the same, in survey order, with every set's call.</summary>
    /// <param name="road">The road.</param>
    /// <param name="survey">The survey.</param>
    /// <param name="ruleSets">The sets to compare.</param>
    public static ImmutableArray<Disagreement> Find(Road road, SurveyRecord survey, IReadOnlyList<RuleSet> ruleSets)
    {
        var bySet = ruleSets
            .Select(set => TreatmentRules.Decide(road, survey, set, [], UnitSystem.Si).Decisions)
            .ToList();
        if (bySet.Count < 2) return [];
        var found = ImmutableArray.CreateBuilder<Disagreement>();
        for (var i = 0; i < bySet[0].Length; i++)
        {
            var calls = bySet.Select(decisions => decisions[i]).ToList();
            if (calls.TrueForAll(c => c.Treatment == calls[0].Treatment)) continue;
            found.Add(new Disagreement(calls[0].DistressId,
                [.. calls.Select(c => new RuleSetCall(c.RuleSet, c.Treatment, c.Reasons[0].Rule))]));
        }

        return found.ToImmutable();
    }
}
