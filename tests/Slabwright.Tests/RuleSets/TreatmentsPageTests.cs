using Slabwright.Core.Measures;
using Slabwright.Core.RuleSets;
using Slabwright.Tests.Rules;

namespace Slabwright.Tests.RuleSets;

/// <summary>docs/steps/treatments.md: its sample is read, and it names every set, limit and condition.</summary>
public class TreatmentsPageTests
{
    private static readonly string Page = File.ReadAllText(Repository.PathOf("docs", "steps", "treatments.md"));

    [Fact]
    public void The_sample_file_reads_without_a_finding()
    {
        var start = Page.IndexOf("```json", StringComparison.Ordinal) + "```json".Length;
        var (set, findings) = RuleSetFile.Parse(Page[start..Page.IndexOf("```", start, StringComparison.Ordinal)], "our-road.json");
        Assert.Empty(findings);
        Assert.Equal(8 * 0.3048, set!.Boundaries.LeastLength.Value, 12);
        Assert.Null(set.Boundaries.LeastGap);
        Assert.Equal(0.25, set.Treatments.Single(r => r.Id == "OUR-POPOUTS").DepthShareOver);
    }

    [Fact]
    public void The_page_names_every_published_set_and_limit()
    {
        var names = PublishedRuleSets.All.Select(s => s.Id)
            .Concat(PublishedRuleSets.All.SelectMany(s => StatedLimits.Of(s, UnitSystem.Si)).Select(l => l.Key.Split('.')[1]))
            .Concat(PublishedRuleSets.All.SelectMany(s => s.Offered).Select(o => o.Key.Split('.')[1]))
            .Distinct().ToList();
        Assert.True(names.Count > 20);
        Assert.All(names, name => Assert.Contains($"`{name}`", Page, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_source_of_a_rule_or_limit_stands_in_docs_sources()
    {
        var sources = File.ReadAllText(Repository.PathOf("docs", "sources.md"));
        var tags = PublishedRuleSets.All.SelectMany(s => s.Treatments.Select(r => r.Source.Tag)
            .Concat(StatedLimits.Of(s, UnitSystem.Si).Select(l => l.Source.Tag)).Concat(s.Offered.Select(o => o.Source.Tag))).Distinct();
        Assert.All(tags, tag => Assert.Contains($"| {tag} |", sources, StringComparison.Ordinal));
    }
}
