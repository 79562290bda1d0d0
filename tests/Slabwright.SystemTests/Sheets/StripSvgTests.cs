using System.Xml.Linq;
using Slabwright.Sheets.Strip;

namespace Slabwright.SystemTests.Sheets;

/// <summary>The strip for screens is well-formed and shows every repair of its stretch, at any zoom.</summary>
public sealed class StripSvgTests
{
    [Theory]
    [InlineData(0, 1600, 1400)]
    [InlineData(0, 120, 900)]
    [InlineData(10, 14, 1000)]
    public void EveryRepairOfTheStretchIsThere(double from, double to, double width)
    {
        var (project, plan) = new HandMadeJob().Build();
        var svg = XDocument.Parse(StripSvg.Render(project, plan, from, to, new StripSvgOptions(width)));
        var refs = svg.Descendants().Select(e => (string?)e.Attribute("data-ref")).Where(r => r is not null).ToHashSet();
        var expected = plan.Boundaries.Repairs.Where(r => r.To >= from && r.From <= to).Select(r => r.Id).ToList();
        Assert.NotEmpty(expected);
        Assert.All(expected, id => Assert.Contains(id, refs));
        Assert.DoesNotContain(plan.Boundaries.Repairs.Where(r => r.From > to).Select(r => r.Id), id => refs.Contains(id));
    }

    [Fact]
    public void APlaceLiesWhereItsStationSays()
    {
        var (project, plan) = new HandMadeJob().Build();
        var repair = plan.Boundaries.Repairs[1];
        var svg = XDocument.Parse(StripSvg.Render(project, plan, 0, 200, new StripSvgOptions(2000)));
        var area = svg.Descendants().First(e => (string?)e.Attribute("data-ref") == repair.Id && ((string?)e.Attribute("class"))!.StartsWith("strip-full-depth", StringComparison.Ordinal));
        var x = double.Parse(((string)area.Attribute("d")!)[1..].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(repair.From * 10, x, 0.02);
    }
}
