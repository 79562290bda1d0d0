using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Numerics;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;

namespace Slabwright.Core.Quantities;

/// <summary>What the cost range is simulated from.</summary>
/// <param name="Road">The road.</param>
/// <param name="Demands">Demands with their ranges.</param>
/// <param name="Prices">Prices with their ranges.</param>
/// <param name="Trials">Number of trials, 1 or more.</param>
/// <param name="Seed">Seed; the same seed gives the same range on any number of processors.</param>
public sealed record CostRangeInput(Road Road, ImmutableArray<UncertainDemand> Demands, PriceList Prices, int Trials, int Seed)
{
    /// <summary>Processors used at most; null for all.</summary>
    public int? Threads { get; init; }
}

/// <summary>
/// The cost as a distribution. In each trial every demand takes a growth and a hidden margin from its range, new distresses appear,
/// the boundaries are planned anew on those demands, and unit prices are drawn. The common levels of growth, new distresses, margin
/// and prices are stratified over the trials. Quantiles are nearest ranks (<see cref="Samples.Quantile"/>): P10 is the least trial
/// cost that at least one trial in ten does not exceed.
/// </summary>
public static class CostRangeSimulation
{
    private const int GrowthLevels = 1;
    private const int NewLevels = 2;
    private const int MarginLevels = 3;
    private const int PriceLevels = 4;
    private const int ItemPriceStream = 15;

    /// <summary>Runs the trials.</summary>
    /// <param name="input">Road, demands, prices, trials and seed.</param>
    /// <param name="replan">Plans the boundaries for demands and measures them; called from several threads at once.</param>
    /// <param name="progress">Called with the number of trials done so far, from any thread; may be null.</param>
    /// <param name="cancel">Stops the run.</param>
    public static CostRange Run(
        CostRangeInput input,
        Func<IReadOnlyList<RemovalDemand>, BidSchedule> replan,
        Action<int>? progress = null,
        CancellationToken cancel = default)
    {
        var random = new CounterRandom(input.Seed);
        var sampler = new DemandSampler(input.Road, input.Demands, random);
        var plan = replan([.. input.Demands.Select(d => d.Demand)]);
        BidSchedule Schedule(int trial, DriverLevels at) => sampler.Sample(trial, at) is { } demands ? replan(demands) : plan;
        var levels = Levels(random, input.Trials);
        var trials = new Trial[input.Trials];
        var done = 0;
        var options = new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = input.Threads ?? -1 };
        Parallel.For(0, input.Trials, options, t =>
        {
            var schedule = Schedule(t, levels[t]);
            trials[t] = new Trial(schedule, Cost(schedule, input.Prices, i => ItemLevel(random, t, i, levels[t].Prices)));
            progress?.Invoke(Interlocked.Increment(ref done));
        });
        return Summary(input, trials, Drivers(input, sampler, Schedule));
    }

    private sealed record Trial(BidSchedule Schedule, decimal Cost);

    private static DriverLevels[] Levels(CounterRandom random, int trials)
    {
        var growth = random.Stratified(GrowthLevels, trials);
        var news = random.Stratified(NewLevels, trials);
        var margin = random.Stratified(MarginLevels, trials);
        var prices = random.Stratified(PriceLevels, trials);
        return [.. Enumerable.Range(0, trials).Select(t => new DriverLevels(growth[t], news[t], margin[t], prices[t]))];
    }

    private static double ItemLevel(CounterRandom random, int trial, int item, double common) =>
        Samples.Tied(random.Uniform(ItemPriceStream, trial, item), common, DemandSampler.CommonWeight);

    /// <summary>Cost of a schedule with each item's price at a level of its range, every amount to the cent.</summary>
    private static decimal Cost(BidSchedule schedule, PriceList prices, Func<int, double> level)
    {
        var shares = new Dictionary<string, decimal>();
        for (var i = 0; i < prices.Items.Length; i++)
        {
            var item = prices.Items[i];
            var range = new Triangular(item.LowShare, 1, item.HighShare);
            shares[item.Code] = range.High > range.Low ? (decimal)range.Quantile(level(i)) : 1;
        }

        return schedule.Lines.Sum(l => BidSchedules.Amount(l.Pay, l.UnitPrice * shares[l.Item.Code]));
    }

    private static ImmutableArray<CostDriver> Drivers(
        CostRangeInput input, DemandSampler sampler, Func<int, DriverLevels, BidSchedule> schedule)
    {
        var (growth, news, margin) = sampler.Varies();
        var prices = input.Prices.Items.Any(i => i.HighShare > i.LowShare);
        var median = new DriverLevels(0.5, 0.5, 0.5, 0.5);
        decimal At(DriverLevels levels) => Cost(schedule(-1, levels), input.Prices, _ => levels.Prices);
        var drivers = new (bool Varies, string Name, Func<double, DriverLevels> Hold)[]
        {
            (growth, "Growth since the survey", q => median with { Growth = q }),
            (news, "New distresses", q => median with { New = q }),
            (margin, "Hidden margin", q => median with { Margin = q }),
            (prices, "Unit prices", q => median with { Prices = q }),
        };
        return
        [
            .. drivers.Where(d => d.Varies).Select(d => new CostDriver(d.Name, At(d.Hold(0.1)), At(d.Hold(0.9))))
                .OrderByDescending(d => Math.Abs(d.HighCost - d.LowCost)),
        ];
    }

    private static CostRange Summary(CostRangeInput input, Trial[] trials, ImmutableArray<CostDriver> drivers)
    {
        ImmutableArray<decimal> costs = [.. trials.Select(t => t.Cost).Order()];
        var items = input.Prices.Items.Select(i => Range(i, trials)).Where(r => r.P90 > 0);
        return new CostRange(
            Samples.Quantile(costs, 0.1), Samples.Quantile(costs, 0.5), Samples.Quantile(costs, 0.9),
            decimal.Round(costs.Average(), 2, MidpointRounding.AwayFromZero), input.Trials, input.Seed, [.. items], drivers, costs);
    }

    private static QuantityRange Range(PayItem item, Trial[] trials)
    {
        var sorted = trials.Select(t => t.Schedule.Lines.Where(l => l.Item.Code == item.Code).Sum(l => l.Pay)).Order().ToList();
        return new QuantityRange(
            item.Code, item.Name, Samples.Quantile(sorted, 0.1), Samples.Quantile(sorted, 0.5), Samples.Quantile(sorted, 0.9));
    }
}
