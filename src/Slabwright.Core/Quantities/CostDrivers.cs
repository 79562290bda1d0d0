using System.Collections.Immutable;
using Slabwright.Core.Prices;

namespace Slabwright.Core.Quantities;

/// <summary>
/// What moves the cost: the cost with one driver at its P10 and P90 and everything else at its median. The first scenario is the median
/// of all; each driver that changes demands adds two; prices need the median only.
/// </summary>
internal sealed class CostDrivers
{
    private const double Low = 0.1;
    private const double High = 0.9;
    private const double Median = 0.5;

    private readonly List<string> _names = [];
    private readonly List<DriverLevels> _scenarios = [];
    private readonly bool _prices;

    private CostDrivers(bool prices) => _prices = prices;

    /// <summary>Scenarios to plan, in order.</summary>
    public IReadOnlyList<DriverLevels> Scenarios => _scenarios;

    /// <summary>The drivers that vary at all.</summary>
    public static CostDrivers Of(DemandSampler sampler, PriceList prices)
    {
        var (growth, news, margin) = sampler.Varies();
        var median = new DriverLevels(Median, Median, Median);
        var drivers = new CostDrivers(prices.Items.Any(i => i.HighShare > i.LowShare));
        if (growth || news || margin || drivers._prices) drivers._scenarios.Add(median);
        if (growth) drivers.Add("Growth since the survey", median with { Growth = Low }, median with { Growth = High });
        if (news) drivers.Add("New distresses", median with { New = Low }, median with { New = High });
        if (margin) drivers.Add("Hidden margin", median with { Margin = Low }, median with { Margin = High });
        return drivers;
    }

    /// <summary>Costs of the scenarios, widest swing first.</summary>
    /// <param name="schedules">Schedule of each scenario, in order.</param>
    /// <param name="cost">Cost of a schedule with all prices at a level of their ranges.</param>
    public ImmutableArray<CostDriver> Compare(ReadOnlySpan<BidSchedule> schedules, Func<BidSchedule, double, decimal> cost)
    {
        var drivers = new List<CostDriver>();
        for (var i = 0; i < _names.Count; i++)
        {
            drivers.Add(new CostDriver(_names[i], cost(schedules[1 + 2 * i], Median), cost(schedules[2 + 2 * i], Median)));
        }

        if (_prices) drivers.Add(new CostDriver("Unit prices", cost(schedules[0], Low), cost(schedules[0], High)));
        return [.. drivers.OrderByDescending(d => Math.Abs(d.HighCost - d.LowCost))];
    }

    private void Add(string name, DriverLevels low, DriverLevels high)
    {
        _names.Add(name);
        _scenarios.Add(low);
        _scenarios.Add(high);
    }
}
