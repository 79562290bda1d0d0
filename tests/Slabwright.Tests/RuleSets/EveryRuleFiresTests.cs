using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Tests.Treatments;

namespace Slabwright.Tests.RuleSets;

/// <summary>No rule is there for nothing: for each a distress is built that it decides, switched on where it starts off.</summary>
public class EveryRuleFiresTests
{
    public static TheoryData<string, string> OwnRules()
    {
        var common = PublishedRuleSets.CommonPractice.Treatments.Select(r => r.Id).ToHashSet();
        var rules = new TheoryData<string, string>();
        foreach (var set in PublishedRuleSets.All)
        {
            foreach (var rule in set.Treatments.Where(r => set.Id == PublishedRuleSets.Default || !common.Contains(r.Id)))
                rules.Add(set.Id, rule.Id);
        }

        return rules;
    }

    [Theory, MemberData(nameof(OwnRules))]
    public void Fires(string setId, string ruleId)
    {
        var set = PublishedRuleSets.Find(setId)!;
        var on = set with { Treatments = [.. set.Treatments.Select(r => r.Id == ruleId ? r with { On = true } : r)] };
        var rule = on.Treatments.Single(r => r.Id == ruleId);
        var road = Sample.Road(overlay: rule.ThroughOverlay == true ? 0.05 : 0,
            kind: rule.PlainPavement == false ? PavementKind.JointedReinforced : PavementKind.JointedPlain);
        var decision = Sample.Decide(on, road, Meeting(rule)).Decisions[0];
        Assert.Equal((ruleId, rule.Treatment), (decision.Reasons[0].Rule, decision.Treatment));
    }

    private static Distress[] Meeting(TreatmentRule rule)
    {
        if (rule.OtherCallsInSlabFrom is { } others)
            return [.. Enumerable.Range(0, others + 1).Select(i => One(rule, 5) with { Id = $"D{i}" })];
        return [.. Enumerable.Range(0, rule.DamagedSlabsInRowFrom ?? 1).Select(i => One(rule, 5 + i))];
    }

    private static Distress One(TreatmentRule rule, int slab)
    {
        var thickness = 9 * Sample.Inch;
        var distress = rule.IsSlabRule
            ? Sample.Distress(DistressType.TransverseCracking, Severity.High, slab) with { Faulting = 0.02 }
            : Sample.Distress(rule.Types[0], rule.AtLeast ?? rule.AtMost ?? Severity.None, slab);
        var share = rule.DepthShareFrom ?? rule.DepthShareUpTo ?? rule.DepthShareOver + 0.01;
        return distress with
        {
            Depth = rule.DepthUpTo ?? share * thickness,
            Width = rule.WidthUpTo ?? rule.WidthOver + 0.001,
            Faulting = rule.FaultingFrom ?? distress.Faulting,
            Cause = rule.Causes.IsEmpty ? DistressCause.Unknown : rule.Causes[0],
            BesideEarlierRepair = rule.BesideEarlierRepair ?? false,
        };
    }
}
