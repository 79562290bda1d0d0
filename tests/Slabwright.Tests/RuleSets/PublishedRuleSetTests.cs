using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.RuleSets;

namespace Slabwright.Tests.RuleSets;

public class PublishedRuleSetTests
{
    public static TheoryData<string> Ids => [.. PublishedRuleSets.All.Select(s => s.Id)];

    [Fact]
    public void Common_practice_comes_first_and_at_least_four_published_alternatives_follow()
    {
        Assert.Equal(PublishedRuleSets.Default, PublishedRuleSets.All[0].Id);
        Assert.Contains(PublishedRuleSets.All, s => s.Id == "fhwa");
        Assert.True(PublishedRuleSets.All.Length >= 5);
        Assert.Equal(PublishedRuleSets.All.Length, PublishedRuleSets.All.Select(s => s.Id).Distinct().Count());
    }

    [Theory, MemberData(nameof(Ids))]
    public void Nothing_known_only_from_memory_is_on(string id)
    {
        var set = PublishedRuleSets.Find(id)!;
        Assert.DoesNotContain(set.Treatments, r => r.On && r.Source.Status == SourceStatus.FromMemory);
        Assert.DoesNotContain(StatedLimits.Of(set, UnitSystem.Si), l => l.Source.Status == SourceStatus.FromMemory);
    }

    [Theory, MemberData(nameof(Ids))]
    public void Every_rule_and_limit_has_a_sentence_and_a_source(string id)
    {
        var set = PublishedRuleSets.Find(id)!;
        Assert.NotEmpty(set.SilentAbout);
        Assert.All(set.Treatments, r => Assert.True(r.Sentence.EndsWith('.') && r.Source.Tag.Length > 0, r.Id));
        Assert.All(StatedLimits.Of(set, UnitSystem.Si), l => Assert.True(l.Sentence.EndsWith('.') && l.Source.Tag.Length > 0, l.Key));
    }

    [Theory, MemberData(nameof(Ids))]
    public void A_written_set_reads_back_the_same(string id)
    {
        var set = PublishedRuleSets.Find(id)!;
        var text = RuleSetFile.Write(set);
        var (again, findings) = RuleSetFile.Parse(text, "again.json");
        Assert.Empty(findings);
        Assert.Equal(text, RuleSetFile.Write(again!));
        Assert.Equal(set.Treatments.Select(r => (r.Id, r.On, r.Treatment)), again!.Treatments.Select(r => (r.Id, r.On, r.Treatment)));
        Assert.Equal(set.Boundaries, again.Boundaries);
        Assert.Equal(set.Joints.DiametersByThickness, again.Joints.DiametersByThickness);
        Assert.Equal(set.Joints with { DiametersByThickness = [] }, again.Joints with { DiametersByThickness = [] });
    }

    [Fact]
    public void Limits_a_set_is_silent_about_come_from_common_practice_with_their_own_source()
    {
        var ohio = PublishedRuleSets.Find("ohio")!;
        Assert.Equal(10 * 0.3048, ohio.Joints.TieLongitudinalFrom!.Value);
        Assert.Equal("ODOT-255", ohio.Joints.TieLongitudinalFrom.Source.Tag);
        Assert.Equal(SourceRef.CommonPractice.Tag, ohio.Boundaries.LeastLength.Source.Tag);
        Assert.Equal("common-practice", ohio.FillsFrom);
    }
}
