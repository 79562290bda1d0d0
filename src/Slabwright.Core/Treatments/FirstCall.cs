using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Treatments;

/// <summary>What the rules that look at one distress call for.</summary>
/// <param name="Facts">The distress and its place.</param>
/// <param name="Rule">The deciding rule; null when none speaks of the distress.</param>
/// <param name="TakenAsMet">True when the deciding rule needs an input that was not measured and is taken as met.</param>
/// <param name="Untried">Rules before the deciding one that could not be tried and would have called for something else.</param>
internal sealed record FirstCall(DistressFacts Facts, TreatmentRule? Rule, bool TakenAsMet, ImmutableArray<TreatmentRule> Untried)
{
    public Treatment Treatment => Rule?.Treatment ?? Treatment.Leave;

    public bool CallsFullDepth => Treatment >= Treatment.FullDepthRepair;

    /// <summary>
    /// Tries the rules in order. When none holds, the rule of most removal among those that could not be tried is taken as met: the safe
    /// side until somebody measures.
    /// </summary>
    public static FirstCall Of(DistressFacts facts, ImmutableArray<TreatmentRule> rules)
    {
        var untried = new List<TreatmentRule>();
        foreach (var rule in rules)
        {
            var outcome = RuleTrial.Try(rule, facts);
            if (outcome == TrialOutcome.Holds)
                return new FirstCall(facts, rule, false, [.. untried.Where(r => r.Treatment != rule.Treatment)]);
            if (outcome == TrialOutcome.NotMeasured) untried.Add(rule);
        }

        var most = untried.MaxBy(r => r.Treatment);
        return new FirstCall(facts, most, most is not null, [.. untried.Where(r => r.Treatment != most?.Treatment)]);
    }

    public ImmutableArray<Reason> Reasons(UnitSystem units)
    {
        var inputs = Facts.Inputs(units);
        if (Rule is null)
            return [new Reason("no rule", "No rule of the set speaks of this distress; it is left alone.", SourceRef.Project, inputs)];
        var sentence = TakenAsMet ? $"{Sentence(Rule)} Taken as met: {Missing(Rule)} not measured." : Sentence(Rule);
        var reasons = ImmutableArray.Create(new Reason(Rule.Id, sentence, Rule.Source, inputs));
        return reasons.AddRange(Untried.Select(r => new Reason(
            r.Id, $"Could not be tried, {Missing(r)} not measured: {r.Sentence}", r.Source)));
    }

    /// <summary>A finding when something not measured could change the call, or when no rule speaks of the distress.</summary>
    public Finding? Finding()
    {
        var place = new FindingPlace(Lane: Facts.Distress.Lane, At: Facts.Distress.From);
        var what = $"{TradeWords.Of(Facts.Distress.Type)} {Facts.Distress.Id}";
        if (Rule is null)
        {
            return new Finding("TRT-023", FindingLevel.Warning, $"No rule speaks of {what}; it is left alone.", place, null,
                "Add a rule to the project's rule set or override the decision.");
        }

        if (TakenAsMet)
        {
            return new Finding("TRT-022", FindingLevel.Warning,
                $"{what}: {Missing(Rule)} not measured, and no rule decides without it; rule {Rule.Id} is taken as met.", place, null,
                $"Measure the {Missing(Rule)} or override the decision.");
        }

        if (Untried.IsEmpty) return null;
        var missing = string.Join(" and ", Untried.SelectMany(r => RuleTrial.Missing(r, Facts)).Distinct());
        return new Finding("TRT-021", FindingLevel.Note,
            $"{what}: {missing} not measured, so rule {string.Join(", ", Untried.Select(r => r.Id))} could not be tried; "
            + $"rule {Rule.Id} decides.", place, null, $"Measure the {missing} where the treatment matters.");
    }

    /// <summary>The rule's sentence with its warning.</summary>
    public static string Sentence(TreatmentRule rule) => rule.Warning is null ? rule.Sentence : $"{rule.Sentence} {rule.Warning}";

    private string Missing(TreatmentRule rule) => string.Join(" and ", RuleTrial.Missing(rule, Facts));
}
