using Slabwright.Core.Prices;
using Slabwright.Core.Quantities;
using Slabwright.Tests.Rules;

namespace Slabwright.Tests.Quantities;

public class MeasurementRuleTests
{
    [Fact]
    public void Every_role_has_one_rule() =>
        Assert.Equal(Enum.GetValues<PayRole>().Order(), MeasurementRules.All.Select(r => r.Role).Order());

    [Fact]
    public void The_page_prints_every_rule_with_its_source()
    {
        var page = File.ReadAllText(Repository.PathOf("docs", "steps", "quantities.md"));
        Assert.All(MeasurementRules.All, r => Assert.Contains($"| {r.Role} | {r.Sentence} | {r.Source} |", page));
    }
}
