using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Numerics;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.Quantities;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using static Slabwright.Tests.Quantities.SampleWork;

namespace Slabwright.Tests.Quantities;

public class CostRangeTests
{
    private static readonly Triangular None = default;

    private static PriceList Prices(double low = 1, double high = 1) => new("USD",
    [
        Item(PayRole.FullDepthArea, Units.SquareYard, 200) with { LowShare = low, HighShare = high, RoundTo = 0.01 },
        Item(PayRole.RepairSetUp, Each, 300) with { LowShare = low, HighShare = high },
    ]);

    /// <summary>Plans each demand as a repair of its own length: cost is linear in growth and margin.</summary>
    private static BidSchedule Replan(IReadOnlyList<RemovalDemand> demands, PriceList prices)
    {
        var repairs = demands.Select((d, i) => Repair(d.From / Foot, d.To / Foot, lane: d.Lane, id: $"R{i}")).ToList();
        return BidSchedules.Build(TakeOff.Measure(Road(), repairs, [], prices, Joints, Settings), prices);
    }

    private static CostRangeInput Input(Triangular growth, Triangular margin, PriceList prices, int trials = 400, double news = 0, int seed = 1)
    {
        var demands = Enumerable.Range(0, 20).Select(i => new UncertainDemand(
            new RemovalDemand(1 + i % 2, (40 * i + 10) * Foot, (40 * i + 18) * Foot, Treatment.FullDepthRepair, [$"D{i}"], []),
            DistressType.CornerBreak, growth, margin, news));
        return new CostRangeInput(Road(), [.. demands], prices, trials, seed) { Plans = trials };
    }

    private static CostRange Run(CostRangeInput input) =>
        CostRangeSimulation.Run(input, d => Replan(d, input.Prices), null, TestContext.Current.CancellationToken);

    private static decimal Plan(CostRangeInput input) => Replan([.. input.Demands.Select(d => d.Demand)], input.Prices).Total;

    [Fact]
    public void Without_spread_every_quantile_is_the_plans_cost()
    {
        var input = Input(None, None, Prices());
        var range = Run(input);
        Assert.Equal([Plan(input)], new[] { range.P10, range.P50, range.P90, range.Mean, range.Costs[0], range.Costs[^1] }.Distinct());
        Assert.Empty(range.Drivers);
    }

    [Fact]
    public void Quantiles_are_in_order_and_more_spread_widens_the_range()
    {
        var narrow = Run(Input(new(0.2, 0.3, 0.5), None, Prices()));
        var wide = Run(Input(new(0, 0.3, 0.9), None, Prices()));
        var wider = Run(Input(new(0, 0.3, 0.9), new(0, 0.3, 0.6), Prices(0.8, 1.4)));
        Assert.True(narrow.P10 < narrow.P50 && narrow.P50 < narrow.P90);
        Assert.True(wide.P90 - wide.P10 > narrow.P90 - narrow.P10);
        Assert.True(wider.P90 - wider.P10 > wide.P90 - wide.P10);
        Assert.Equal(["Growth since the survey", "Hidden margin", "Unit prices"], wider.Drivers.Select(d => d.Name).Order());
        Assert.Equal(wider.Drivers.Select(d => d.HighCost - d.LowCost).OrderDescending(), wider.Drivers.Select(d => d.HighCost - d.LowCost));
        Assert.All(wider.Drivers, d => Assert.True(d.LowCost < d.HighCost));
    }

    [Fact]
    public void The_range_is_the_same_on_one_processor_and_on_many_and_changes_with_the_seed()
    {
        var input = Input(new(0, 0.3, 0.9), new(0, 0.3, 0.6), Prices(0.8, 1.4), trials: 64, news: 0.1);
        var one = Run(input with { Threads = 1 });
        var many = Run(input with { Threads = 4 });
        Assert.Equal(one.Costs, many.Costs);
        Assert.Equal(one.Items, many.Items);
        Assert.NotEqual(one.Costs, Run(input with { Seed = 2 }).Costs);
    }

    /// <summary>Few plans with many prices give the same range as a plan in every trial, within a few percent of its width.</summary>
    [Fact]
    public void A_plan_may_serve_several_trials()
    {
        var input = Input(new(0, 0.3, 0.9), new(0, 0.3, 0.6), Prices(0.8, 1.4), trials: 1000);
        var calls = 0;
        var few = CostRangeSimulation.Run(
            input with { Plans = 64 }, d => { Interlocked.Increment(ref calls); return Replan(d, input.Prices); }, null,
            TestContext.Current.CancellationToken);
        var all = Run(input);
        Assert.InRange(calls, 64, 64 + CostRangeSimulation.MostDriverPlans);
        Assert.Equal(1000, few.Costs.Length);
        var width = (double)(all.P90 - all.P10);
        Assert.InRange((double)Math.Abs(few.P10 - all.P10), 0, 0.12 * width);
        Assert.InRange((double)Math.Abs(few.P50 - all.P50), 0, 0.12 * width);
        Assert.InRange((double)Math.Abs(few.P90 - all.P90), 0, 0.12 * width);
        Assert.Equal(all.Drivers, few.Drivers);
    }

    /// <summary>With a cost linear in length the mean is known: each end grows by the mean minus the likely value.</summary>
    [Fact]
    public void The_mean_agrees_with_the_mean_worked_by_hand()
    {
        var growth = new Triangular(0, 0.3, 0.9);
        var input = Input(growth, None, Prices(), trials: 4000);
        var perMetre = 200m * (decimal)(12 * Foot / Units.SquareYard.Factor);
        var byHand = Plan(input) + 20 * 2 * (decimal)(growth.Mean - growth.Likely) * perMetre;
        Assert.Equal((double)byHand, (double)Run(input).Mean, 0.002 * (double)byHand);
    }

    [Fact]
    public void The_mean_price_agrees_with_the_mean_worked_by_hand()
    {
        var input = Input(None, None, Prices(0.8, 1.5), trials: 4000);
        var byHand = (double)Plan(input) * (0.8 + 1 + 1.5) / 3;
        Assert.Equal(byHand, (double)Run(input).Mean, 0.002 * byHand);
    }

    [Fact]
    public void New_distresses_come_at_their_mean_number()
    {
        var input = Input(None, None, Prices(), trials: 2000, news: 0.15);
        var setUps = Run(input).Items.Single(i => i.ItemCode == "RepairSetUp");
        Assert.Equal(Enumerable.Range(0, 3).Select(i => 20.0 + Samples.PoissonQuantile(3, new[] { 0.1, 0.5, 0.9 }[i])),
            [setUps.P10, setUps.P50, setUps.P90]);
        Assert.Equal("New distresses", Assert.Single(Run(input).Drivers).Name);
    }

    [Fact]
    public void A_run_can_be_stopped_and_tells_its_progress()
    {
        var input = Input(new(0, 0.3, 0.9), None, Prices(), trials: 50);
        var seen = new System.Collections.Concurrent.ConcurrentBag<int>();
        CostRangeSimulation.Run(input, d => Replan(d, input.Prices), seen.Add, TestContext.Current.CancellationToken);
        Assert.Equal(Enumerable.Range(1, 53), seen.Order()); // 50 trials, the median, growth at P10 and P90
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => CostRangeSimulation.Run(input, d => Replan(d, input.Prices), null, stop.Token));
    }

    [Fact]
    public void A_margin_by_rule_varies_and_a_measured_one_does_not()
    {
        var byRule = Demand("D1", new Reason("hidden margin", "", SourceRef.CommonPractice));
        var measured = Demand("D2", new Reason("widening found", "", SourceRef.Project));
        var whole = Demand("D3", new Reason("hidden margin", "", SourceRef.CommonPractice)) with { Treatment = Treatment.SlabReplacement };
        var result = Uncertain([byRule, measured, whole], [], GrowthModel.None, 2);
        Assert.Equal(new Triangular(0, 0.3, 0.6), result.Demands[0].Margin);
        Assert.Equal(None, result.Demands[1].Margin);
        Assert.Equal(None, result.Demands[2].Margin);
    }

    [Fact]
    public void Three_cores_set_the_range_of_the_margin()
    {
        CoreSample Core(double? widening) => new("C", 1, 0, null, null, null, widening);
        Assert.Equal(new Triangular(0, 0.3, 0.6), UncertainDemands.MarginRange(0.3, [Core(0.1), Core(0.5), Core(null)]));
        Assert.Equal(new Triangular(0.1, 0.3, 0.5), UncertainDemands.MarginRange(0.3, [Core(0.1), Core(0.5), Core(0.2)]));
        Assert.Equal(new Triangular(0.3, 0.3, 0.5), UncertainDemands.MarginRange(0.3, [Core(0.4), Core(0.5), Core(0.45)]));
    }

    [Fact]
    public void Growth_is_the_rate_times_the_years_and_rates_out_of_order_are_told()
    {
        var growth = new GrowthModel([new(DistressType.CornerBreak, 0.1, 0.2, 0.4, 0.03), new(DistressType.Blowup, 0.5, 0.2, 0.4, 0)]);
        var result = Uncertain([Demand("D1")], [], growth, 2);
        Assert.Equal(new Triangular(0.2, 0.4, 0.8), result.Demands[0].Growth);
        Assert.Equal(1.03 * 1.03 - 1, result.Demands[0].NewExpected, 12);
        Assert.Equal("QTY-014", Assert.Single(result.Findings).Code);
        Assert.Equal(None, Uncertain([Demand("D1")], [], growth, 0).Demands[0].Growth);
    }

    private static RemovalDemand Demand(string id, params Reason[] reasons) =>
        new(1, 10 * Foot, 18 * Foot, Treatment.FullDepthRepair, [id], [.. reasons]);

    private static UncertainDemandResult Uncertain(RemovalDemand[] demands, CoreSample[] cores, GrowthModel growth, double years)
    {
        var survey = demands.Select(d => new Distress
        {
            Id = d.DistressIds[0], Lane = 1, Type = DistressType.CornerBreak, Severity = Severity.High, From = d.From, To = d.To, Slab = 1,
            SurveyedOn = new DateOnly(2026, 4, 1),
        }).ToList();
        var limits = new BoundaryLimits
        {
            LeastLength = new(1.8288, SourceRef.CommonPractice),
            HiddenMarginFreezeThaw = new(0.3, SourceRef.CommonPractice),
            HiddenMargin = new(0.1, SourceRef.CommonPractice),
        };
        return UncertainDemands.From(demands, survey, cores, new Climate(true), limits, growth, years);
    }
}
