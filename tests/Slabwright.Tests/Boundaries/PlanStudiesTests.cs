using Slabwright.Core.Boundaries;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using static Slabwright.Tests.Boundaries.Worked;

namespace Slabwright.Tests.Boundaries;

/// <summary>Cost of rules, the curve and large removals, on cases with a hand answer.</summary>
public sealed class PlanStudiesTests
{
    private static readonly BoundaryOptions Plain = new() { SpannedJointWeight = 0, UnmatchedEndWeight = 0 };

    [Fact]
    public void The_least_length_costs_what_it_adds()
    {
        // A 2 ft demand on the marks in a long slab: 6 ft by the rule, 2 ft without. Each foot: 12/9 yd2 × 180 = 240, shoulder edge 9, asphalt edge 7.
        var road = Road(Lane(1, 120, JointKind.Dowelled, [40, 80]));
        var result = Plan(road, [Demand(1, 60, 62)], options: Plain);
        var rule = Assert.Single(result.RuleCosts, r => r.Rule == "least length");
        Assert.InRange(rule.Cost, 4 * 256m - 0.02m, 4 * 256m + 0.02m);
        Assert.All(result.RuleCosts, r => Assert.True(r.Cost >= 0, r.Rule));
    }

    [Fact]
    public void The_remnant_costs_what_it_adds()
    {
        // 37 to 46 (9 ft) by the rules; with a one-foot remnant 33 to 39 and the like: 6 ft.
        var road = Road(Lane(1, 300, JointKind.Dowelled, Every(15, 300)));
        var rule = Assert.Single(Plan(road, [Demand(1, 37, 38.5)], options: Plain).RuleCosts, r => r.Rule == "least remnant");
        Assert.InRange(rule.Cost, 3 * 256m + 36m - 0.02m, 3 * 256m + 36m + 0.02m);
    }

    [Fact]
    public void The_weights_show_their_price()
    {
        var road = Road(Lane(1, 300, JointKind.Dowelled, Every(15, 300)), Lane(2, 300, JointKind.Dowelled, Every(15, 300)));
        var result = Plan(road, [Demand(1, 37, 38.5), Demand(2, 60, 61)], options: new BoundaryOptions { UnmatchedEndWeight = 400 });
        Assert.True(Assert.Single(result.RuleCosts, r => r.Rule == "planning weights").Cost >= 0);
    }

    [Fact]
    public void The_curve_runs_from_the_plan_to_full_replacement()
    {
        var road = Road(Lane(1, 3000, JointKind.Dowelled, Every(15, 3000)), Lane(2, 3000, JointKind.Dowelled, Every(15, 3000)));
        var random = new Random(3);
        var demands = Enumerable.Range(0, 40).Select(n => (Lane: 1 + n % 2, From: random.NextDouble() * 2990))
            .Select(d => Demand(d.Lane, d.From, d.From + 2)).ToArray();
        var result = Plan(road, demands, options: Plain);
        var curve = result.CostCurve;
        Assert.True(curve.Length >= 8, $"{curve.Length} points");
        Assert.Equal(result.Cost, curve[0].Cost);
        Assert.Equal((1.0, 2), (Math.Round(curve[^1].ShareReplaced, 9), curve[^1].Repairs));
        for (var n = 1; n < curve.Length; n++)
        {
            Assert.True(curve[n].LengthReplaced > curve[n - 1].LengthReplaced);
            Assert.True(curve[n].Cost >= curve[0].Cost);
        }
    }

    [Fact]
    public void Large_removal_takes_over_where_demands_crowd()
    {
        var road = Road(Lane(1, 600, JointKind.Dowelled, [300]));
        RemovalDemand[] crowd = [Demand(1, 100, 106, "A"), Demand(1, 112, 118, "B"), Demand(1, 124, 130, "C"), Demand(1, 500, 506, "D")];
        var dear = With(Item(PayRole.RepairSetUp, Units.One, 2500));
        var removal = Assert.Single(Plan(road, crowd, prices: dear, options: Plain).LargeRemovals);
        Assert.Equal((100, 130), (Math.Round(removal.From / Foot, 6), Math.Round(removal.To / Foot, 6)));
        Assert.True(removal.Chosen && removal.RunCost < removal.SpotCost);
        // Three of 6 ft: each 8 yd2 1,440, set-up 2,500, ends 144, dowels 264, edges 6 × 16 = 96.
        Assert.InRange(removal.SpotCost - 3 * (1440m + 2500 + 144 + 264 + 96), -0.01m, 0.01m);
    }

    [Fact]
    public void Nearly_equal_large_removal_is_shown_but_not_chosen()
    {
        var road = Road(Lane(1, 600, JointKind.Dowelled, [300]));
        RemovalDemand[] pair = [Demand(1, 100, 106, "A"), Demand(1, 112, 118, "B")];
        // Apart: 2 × (1,440 + s + 504); one of 18 ft: 4,320 + s + 504 + 2 lift cuts of 12 ft at 3. With s = 800 apart costs 5,488, together 5,696.
        var prices = With(Item(PayRole.RepairSetUp, Units.One, 800));
        var removal = Assert.Single(Plan(road, pair, prices: prices, options: Plain).LargeRemovals);
        Assert.False(removal.Chosen);
        Assert.True(removal.RunCost > removal.SpotCost);
    }
}
