using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Treatments;

namespace Slabwright.Core.Job;

/// <summary>
/// What the rules cost that shape the demands rather than the cuts: the hidden margin and the rules on whole slabs. Each is dropped, the
/// demands are made anew, and their cheapest plan is held against the cheapest plan under all rules, both at the price list alone.
/// </summary>
internal static class DemandRuleCosts
{
    /// <summary>One row for each such rule the rule set has.</summary>
    /// <param name="project">The project.</param>
    /// <param name="decisions">Its treatments.</param>
    /// <param name="cost">Least price-list cost of a set of demands.</param>
    public static ImmutableArray<RuleCost> Of(
        Project project, ImmutableArray<TreatmentDecision> decisions, Func<ImmutableArray<RemovalDemand>, decimal> cost)
    {
        var limits = project.RuleSet.Boundaries;
        var all = cost(Demands(limits));
        var rows = ImmutableArray.CreateBuilder<RuleCost>();
        foreach (var (rule, sentence, without) in Dropped(project, limits))
        {
            var least = cost(Demands(without));
            rows.Add(new RuleCost(rule, sentence, least, all - least));
        }

        return rows.ToImmutable();

        ImmutableArray<RemovalDemand> Demands(BoundaryLimits these) => Planner.Demand(project, decisions, these).Demands;
    }

    private static IEnumerable<(string Rule, string Sentence, BoundaryLimits Without)> Dropped(Project project, BoundaryLimits limits)
    {
        var margin = project.Road.Climate.FreezeThaw ? limits.HiddenMarginFreezeThaw : limits.HiddenMargin;
        if (margin.Value > 0)
        {
            var none = margin with { Value = 0 };
            yield return ("hidden margin",
                $"A repair reaches {BoundaryWords.Length(margin.Value)} beyond the visible damage at each end ({margin.Source}).",
                limits with { HiddenMargin = none, HiddenMarginFreezeThaw = none });
        }

        if (limits.WholeSlabBelow is { } whole)
        {
            yield return ("whole slab below", $"Slabs shorter than {BoundaryWords.Length(whole.Value)} are replaced whole ({whole.Source}).",
                limits with { WholeSlabBelow = null });
        }

        if (limits.PartOnlyWithinHalfSlab is { Value: true } half)
        {
            yield return ("part within half a slab", $"Part of a slab is replaced only where the damage lies within one half of it ({half.Source}).",
                limits with { PartOnlyWithinHalfSlab = null });
        }
    }
}
