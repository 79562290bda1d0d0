using System.Text;
using Slabwright.Sheets;

namespace Slabwright.SystemTests.Sheets;

/// <summary>The set as a whole: every format is there, nothing is empty, and the same input gives the same plan set.</summary>
public sealed class SheetSetTests
{
    private static readonly SheetOptions Options = new(new DateOnly(2026, 4, 1)) { Version = "1.2.3" };

    [Fact]
    public void EveryFormatIsWritten()
    {
        var (project, plan) = new HandMadeJob().Build();
        var files = SheetSet.Write(project, plan, Options);
        Assert.Equal(
            [
                "plan-bid-schedule.csv", "plan-bid-schedule.xlsx", "plan-decisions.csv", "plan-distresses.geojson", "plan-findings.csv", "plan-joint-alternatives.csv", "plan-joint-layouts.dxf",
                "plan-joint-seals.csv", "plan-joints.csv", "plan-joints.geojson", "plan-lift-pieces.csv", "plan-partial-depth.geojson", "plan-plan-set.pdf", "plan-repair-joints.geojson", "plan-repairs.csv", "plan-repairs.geojson", "plan-seals.geojson", "plan-slabs.geojson",
                "plan-surface-works.csv", "plan-take-off.csv", "plan.dxf", "plan.gpkg",
            ],
            files.Select(f => f.Name).Order(StringComparer.Ordinal));
        Assert.All(files, f => Assert.True(f.Content.Length > 100, f.Name));
        Assert.Equal("%PDF-", Encoding.ASCII.GetString(files.Single(f => f.Name.EndsWith(".pdf", StringComparison.Ordinal)).Content, 0, 5));
    }

    [Fact]
    public void TheSameInputGivesTheSameBytes()
    {
        var (project, plan) = new HandMadeJob { Repairs = 5 }.Build();
        var (first, second) = (SheetSet.Write(project, plan, Options), SheetSet.Write(project, plan, Options));
        foreach (var (a, b) in first.Zip(second).Where(p => !p.First.Name.EndsWith(".xlsx", StringComparison.Ordinal)))
        {
            Assert.True(a.Content.AsSpan().SequenceEqual(b.Content), a.Name);
        }
    }

    [Fact]
    public void TextThatASpreadsheetWouldCalculateIsHeldBack()
    {
        var (project, plan) = new HandMadeJob().Build();
        var first = plan.Decisions[0];
        var told = plan with { Decisions = plan.Decisions.SetItem(0, first with { Override = new(first.DistressId, first.Treatment, "=1+1", "@someone") }) };
        var tables = SheetSet.Write(project, told, Options).Where(f => f.Name.EndsWith(".csv", StringComparison.Ordinal))
            .Select(f => Encoding.UTF8.GetString(f.Content)).ToArray();
        Assert.Contains(tables, t => t.Contains("'=1+1", StringComparison.Ordinal) && t.Contains("'@someone", StringComparison.Ordinal));
        Assert.All(tables, t => Assert.DoesNotMatch("(?m)(^|,)\"?[=@]", t));
    }
}
