using System.Collections.Immutable;
using Slabwright.Core.Prices;

namespace Slabwright.Core.Quantities;

/// <summary>One measured quantity of one pay item at one repair or surface work.</summary>
/// <param name="ItemCode">Pay item.</param>
/// <param name="WorkId">Repair or surface work; empty for job-wide items.</param>
/// <param name="Measured">Quantity in pay units, unrounded.</param>
/// <param name="Working">How it was measured, e.g. <c>6.0 ft × 12.0 ft ÷ 9 = 8.00 yd2</c>.</param>
/// <param name="UnitPrice">Price per pay unit that applies here (size class).</param>
public sealed record TakeOffLine(string ItemCode, string WorkId, double Measured, string Working, decimal UnitPrice)
{
    /// <summary>Index of the price's size class, or null when one price holds for all sizes.</summary>
    public int? SizeClass { get; init; }

    /// <summary>Measured × unit price, unrounded.</summary>
    public decimal Amount => (decimal)Measured * UnitPrice;
}

/// <summary>One line of the bid schedule.</summary>
/// <param name="Item">Pay item.</param>
/// <param name="SizeClass">Index of the size class, or null.</param>
/// <param name="Name">Printed name, size class included.</param>
/// <param name="Measured">Sum of the take-off in pay units.</param>
/// <param name="Pay">Rounded by the item's rule.</param>
/// <param name="UnitPrice">Price per pay unit.</param>
/// <param name="Amount">Pay × unit price, to the cent.</param>
public sealed record BidLine(PayItem Item, int? SizeClass, string Name, double Measured, double Pay, decimal UnitPrice, decimal Amount);

/// <summary>The bid schedule with its totals.</summary>
/// <param name="Lines">Lines in bid order.</param>
/// <param name="Total">Sum of the amounts.</param>
public sealed record BidSchedule(ImmutableArray<BidLine> Lines, decimal Total);

/// <summary>A sum of money by some grouping.</summary>
/// <param name="Name">Group, e.g. a kind of work or a station range.</param>
/// <param name="Count">Works in it.</param>
/// <param name="Area">Area, m².</param>
/// <param name="Amount">Money, unrounded measure × price.</param>
public sealed record GroupTotal(string Name, int Count, double Area, decimal Amount);

/// <summary>Range of one pay item in the cost range.</summary>
/// <param name="ItemCode">Pay item.</param>
/// <param name="Name">Printed name.</param>
/// <param name="P10">Quantity not exceeded in one trial of ten, pay units.</param>
/// <param name="P50">Median quantity.</param>
/// <param name="P90">Quantity not exceeded in nine trials of ten.</param>
public sealed record QuantityRange(string ItemCode, string Name, double P10, double P50, double P90);

/// <summary>The cost as a distribution: growth since the survey, hidden margin and prices, trial by trial.</summary>
/// <param name="P10">Cost not exceeded in one trial of ten.</param>
/// <param name="P50">Median cost.</param>
/// <param name="P90">Cost not exceeded in nine trials of ten.</param>
/// <param name="Mean">Mean cost.</param>
/// <param name="Trials">Number of trials.</param>
/// <param name="Seed">Seed of the generator.</param>
/// <param name="Items">Ranges by pay item.</param>
/// <param name="Drivers">What moves the cost, widest swing first: growth, new distresses, hidden margin, prices.</param>
/// <param name="Costs">All trial costs, sorted, for drawing.</param>
public sealed record CostRange(
    decimal P10,
    decimal P50,
    decimal P90,
    decimal Mean,
    int Trials,
    int Seed,
    ImmutableArray<QuantityRange> Items,
    ImmutableArray<CostDriver> Drivers,
    ImmutableArray<decimal> Costs);

/// <summary>One driver of the cost range.</summary>
/// <param name="Name">What varies.</param>
/// <param name="LowCost">Cost with it at its P10 and everything else at its median.</param>
/// <param name="HighCost">Cost with it at its P90 and everything else at its median.</param>
public sealed record CostDriver(string Name, decimal LowCost, decimal HighCost);

/// <summary>Everything the Quantities step hands on.</summary>
/// <param name="TakeOff">Take-off line by line.</param>
/// <param name="Schedule">Bid schedule.</param>
/// <param name="ByKind">Totals by kind of work.</param>
/// <param name="ByStation">Totals by station range.</param>
/// <param name="Range">Cost range, or null when not asked for.</param>
public sealed record QuantityResult(
    ImmutableArray<TakeOffLine> TakeOff,
    BidSchedule Schedule,
    ImmutableArray<GroupTotal> ByKind,
    ImmutableArray<GroupTotal> ByStation,
    CostRange? Range);
