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
    /// <summary>
    /// Draws of demands that are planned anew; each serves several trials with prices of their own. As many as trials, or more, plans
    /// anew in every trial. Planning is the slow part, and 64 stratified draws settle P10 and P90 within a few percent of the range.
    /// </summary>
    public int Plans { get; init; } = 64;

    /// <summary>Processors used at most; null for all.</summary>
    public int? Threads { get; init; }
}

/// <summary>
/// The cost as a distribution. Every demand takes a growth and a hidden margin from its range and new distresses appear; the boundaries
/// are planned anew on those demands; unit prices are drawn trial by trial. The common levels of growth, new distresses and margin are
/// stratified over the plans, that of prices over the trials. Quantiles are nearest ranks (<see cref="Samples.Quantile"/>): P10 is the
/// least trial cost that at least one trial in ten does not exceed.
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
    /// <param name="progress">Called with the number of plans done so far, from any thread; may be null.</param>
    /// <param name="cancel">Stops the run.</param>
    public static CostRange Run(
        CostRangeInput input,
        Func<IReadOnlyList<RemovalDemand>, BidSchedule> replan,
        Action<int>? progress = null,
        CancellationToken cancel = default)
    {
        var random = new CounterRandom(input.Seed);
        var sampler = new DemandSampler(input.Road, input.Demands, random);
        var drivers = CostDrivers.Of(sampler, input.Prices);
        var count = Math.Clamp(input.Plans, 1, input.Trials);
        DriverLevels[] levels = [.. Levels(random, count), .. drivers.Scenarios];
        var plan = new Lazy<BidSchedule>(() => replan([.. input.Demands.Select(d => d.Demand)]));
        var schedules = new BidSchedule[levels.Length];
        var done = 0;
        var options = new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = input.Threads ?? -1 };
        Parallel.For(0, levels.Length, options, n =>
        {
            var demands = sampler.Sample(n < count ? n : DemandSampler.AllCommon, levels[n]);
            schedules[n] = demands is null ? plan.Value : replan(demands);
            progress?.Invoke(Interlocked.Increment(ref done));
        });
        var trials = Trials(input, random, schedules.AsSpan(0, count));
        return Summary(input, trials, drivers.Compare(schedules.AsSpan(count), (s, level) => Cost(s, input.Prices, _ => level)));
    }

    /// <summary>Numbers of plans a run asks for besides those of its trials: the median and each driver at its P10 and P90.</summary>
    public const int MostDriverPlans = 7;

    private static Trial[] Trials(CostRangeInput input, CounterRandom random, ReadOnlySpan<BidSchedule> schedules)
    {
        var common = random.Stratified(PriceLevels, input.Trials);
        var trials = new Trial[input.Trials];
        for (var t = 0; t < trials.Length; t++)
        {
            var (trial, schedule) = (t, schedules[t % schedules.Length]);
            trials[t] = new Trial(schedule, Cost(schedule, input.Prices, i => ItemLevel(random, trial, i, common[trial])));
        }

        return trials;
    }

    private sealed record Trial(BidSchedule Schedule, decimal Cost);

    private static DriverLevels[] Levels(CounterRandom random, int plans)
    {
        var growth = random.Stratified(GrowthLevels, plans);
        var news = random.Stratified(NewLevels, plans);
        var margin = random.Stratified(MarginLevels, plans);
        return [.. Enumerable.Range(0, plans).Select(n => new DriverLevels(growth[n], news[n], margin[n]))];
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
