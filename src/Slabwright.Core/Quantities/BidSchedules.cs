using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Measures;
using Slabwright.Core.Prices;

namespace Slabwright.Core.Quantities;

/// <summary>Sums a take-off into bid lines: a line per pay item and size class, rounded up once per line, amounts to the cent.</summary>
public static class BidSchedules
{
    /// <summary>Rounding noise forgiven before a quantity is rounded up to the next step, as a share of the step.</summary>
    private const double StepTolerance = 1e-6;

    /// <summary>Builds the schedule. Items and classes without any quantity are left out.</summary>
    /// <param name="takeOff">Take-off lines.</param>
    /// <param name="prices">Price list; gives the bid order.</param>
    public static BidSchedule Build(IReadOnlyList<TakeOffLine> takeOff, PriceList prices)
    {
        var sums = new Dictionary<(string Code, int? Class), double>();
        foreach (var line in takeOff)
        {
            var key = (line.ItemCode, line.SizeClass);
            sums[key] = sums.GetValueOrDefault(key) + line.Measured;
        }

        var lines = ImmutableArray.CreateBuilder<BidLine>();
        foreach (var item in prices.Items)
        {
            foreach (var index in ClassesOf(item))
            {
                if (sums.TryGetValue((item.Code, index), out var measured) && measured > 0) lines.Add(Line(item, index, measured));
            }
        }

        return new BidSchedule(lines.ToImmutable(), lines.Sum(l => l.Amount));
    }

    /// <summary>Rounds a measured total up to a multiple of the item's step.</summary>
    /// <param name="measured">Measured total in pay units.</param> <param name="step">Step in pay units; 0 or less rounds nothing.</param>
    public static double RoundUp(double measured, double step)
    {
        if (step <= 0) return measured;
        var steps = Math.Ceiling(measured / step - StepTolerance);
        return (double)((decimal)steps * (decimal)step);
    }

    /// <summary>Quantity × price to the cent, half a cent up.</summary>
    public static decimal Amount(double quantity, decimal unitPrice) =>
        decimal.Round((decimal)quantity * unitPrice, 2, MidpointRounding.AwayFromZero);

    private static BidLine Line(PayItem item, int? index, double measured)
    {
        var price = index is { } i ? item.SizeClasses[i].UnitPrice : item.UnitPrice;
        var pay = RoundUp(measured, item.RoundTo);
        return new BidLine(item, index, NameOf(item, index), measured, pay, price, Amount(pay, price));
    }

    private static IEnumerable<int?> ClassesOf(PayItem item) =>
        item.SizeClasses.IsEmpty ? [null] : Enumerable.Range(0, item.SizeClasses.Length).Select(i => (int?)i);

    private static string NameOf(PayItem item, int? index)
    {
        if (index is not { } i || item.SizeClasses.Length < 2) return item.Name;
        var unit = item.Unit.Dimension == Dimension.Area ? item.Unit : Units.SquareMetre;
        var from = Text(item.SizeClasses[i].FromArea, unit);
        if (i == item.SizeClasses.Length - 1) return $"{item.Name}, {from} {unit.Symbol} and over";
        var to = Text(item.SizeClasses[i + 1].FromArea, unit);
        return i == 0 ? $"{item.Name}, under {to} {unit.Symbol}" : $"{item.Name}, {from} to under {to} {unit.Symbol}";
    }

    private static string Text(double area, Unit unit) =>
        Math.Round(unit.FromBase(area), 2).ToString("0.##", CultureInfo.InvariantCulture);
}
