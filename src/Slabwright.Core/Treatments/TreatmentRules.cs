using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;

namespace Slabwright.Core.Treatments;

/// <summary>What the treatments step hands on.</summary>
/// <param name="Decisions">A decision for each distress on the road, in survey order.</param>
/// <param name="Findings">What could not be tried or used, with the mend.</param>
public sealed record TreatmentResult(ImmutableArray<TreatmentDecision> Decisions, ImmutableArray<Finding> Findings);

/// <summary>Decides a treatment for every distress by the rules of one set.</summary>
/// <remarks>
/// First pass: the rules that look at one distress, in order; the first that holds decides. Second pass: for distresses that call for
/// full-depth work, the rules that look at the slab, in order; the first that holds takes over. Overrides win, and what the engineer chose
/// is what counts for the other distresses of the slab.
/// </remarks>
public static class TreatmentRules
{
    /// <summary>Decides every distress of a survey.</summary>
    /// <param name="road">The road.</param>
    /// <param name="survey">The survey.</param>
    /// <param name="rules">The rule set in force.</param>
    /// <param name="overrides">The engineer's own decisions.</param>
    /// <param name="units">Units of the printed inputs.</param>
    public static TreatmentResult Decide(
        Road road, SurveyRecord survey, RuleSet rules, ImmutableArray<TreatmentOverride> overrides, UnitSystem units)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var facts = OnRoad(road, survey, findings);
        var onRules = rules.Treatments.Where(r => r.On).ToList();
        var distressRules = RulesByType.Of(onRules.Where(r => !r.IsSlabRule));
        var slabRules = RulesByType.Of(onRules.Where(r => r.IsSlabRule));
        var first = facts.ConvertAll(f => FirstCall.Of(f, distressRules[f.Distress.Type]));
        var chosen = OverrideBook.Open(overrides, facts, findings);
        var called = SlabCalls.Of(first, c => c.Treatment);
        var standing = SlabCalls.Of(first, chosen.StandingFor);
        var decisions = ImmutableArray.CreateBuilder<TreatmentDecision>(first.Count);
        foreach (var call in first)
        {
            var calls = chosen.Has(call) ? called : standing;
            var decision = Decided(call, calls, slabRules[call.Facts.Distress.Type], rules.Id, units);
            if (call.Finding() is { } finding) findings.Add(finding);
            decisions.Add(chosen.Apply(decision));
        }

        return new TreatmentResult(decisions.ToImmutable(), findings.ToImmutable());
    }

    private static List<DistressFacts> OnRoad(Road road, SurveyRecord survey, ImmutableArray<Finding>.Builder findings)
    {
        var lanes = road.Lanes.ToDictionary(l => l.Number);
        var causes = MaterialCauses(survey);
        var cores = new CoreDepths(survey.Cores);
        var facts = new List<DistressFacts>(survey.Distresses.Length);
        foreach (var distress in survey.Distresses)
        {
            if (lanes.TryGetValue(distress.Lane, out var lane))
            {
                var cause = causes.GetValueOrDefault((distress.Lane, distress.Slab));
                facts.Add(DistressFacts.Of(distress, lane, road.Climate, cause, cores.DeepestAt(distress)));
                continue;
            }

            findings.Add(new Finding("TRT-020", FindingLevel.Error, $"Distress {distress.Id} lies in a lane the road does not have.",
                new FindingPlace(Lane: distress.Lane, At: distress.From), null,
                "Correct the lane in the survey or add the lane to the road."));
        }

        return facts;
    }

    /// <summary>Slabs in which the survey saw durability cracking or reactive aggregate.</summary>
    private static Dictionary<(int Lane, int Slab), DistressCause> MaterialCauses(SurveyRecord survey)
    {
        var causes = new Dictionary<(int Lane, int Slab), DistressCause>();
        foreach (var distress in survey.Distresses)
        {
            if (distress.Type == DistressType.DurabilityCracking)
                causes.TryAdd((distress.Lane, distress.Slab), DistressCause.DurabilityCracking);
            if (distress.Type == DistressType.ReactiveAggregate)
                causes.TryAdd((distress.Lane, distress.Slab), DistressCause.ReactiveAggregate);
        }

        return causes;
    }

    private static TreatmentDecision Decided(
        FirstCall call, SlabCalls calls, ImmutableArray<TreatmentRule> slabRules, string ruleSet, UnitSystem units)
    {
        var reasons = call.Reasons(units);
        if (call.CallsFullDepth)
        {
            var slab = call.Facts.Slab;
            var facts = call.Facts with
            {
                OtherCallsInSlab = calls.In(slab.Lane, slab.Number) - 1,
                DamagedSlabsInRow = calls.RowOf(slab.Lane, slab.Number),
            };
            if (slabRules.FirstOrDefault(r => RuleTrial.Try(r, facts) == TrialOutcome.Holds) is { } rule)
            {
                var reason = new Reason(rule.Id, FirstCall.Sentence(rule), rule.Source, facts.SlabInputs(units));
                return new TreatmentDecision(
                    call.Facts.Distress.Id, rule.Treatment, rule.Treatment, ruleSet, reasons.Insert(0, reason));
            }
        }

        return new TreatmentDecision(call.Facts.Distress.Id, call.Treatment, call.Treatment, ruleSet, reasons);
    }
}
