using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;
using Slabwright.Core.Prices;
using Slabwright.Core.Quantities;

namespace Slabwright.SystemTests.Sheets;

/// <summary>Prices, take-off and bid schedule of the hand-made job, measured in a simple way of its own.</summary>
internal static class HandMadeQuantities
{
    public static PriceList Prices(UnitSystem units)
    {
        var us = units == UnitSystem.UsCustomary;
        var (area, length) = us ? (Units.SquareYard, Units.Foot) : (Units.SquareMetre, Units.Metre);
        return new PriceList(us ? "USD" : "EUR",
        [
            new PayItem
            {
                Code = "502-01", Name = "Full-depth concrete pavement repair", Role = PayRole.FullDepthArea, Unit = area, UnitPrice = 285m, RoundTo = 1,
                SizeClasses = [new SizeClass(0, 285m), new SizeClass(10, 240m)],
            },
            new PayItem { Code = "502-05", Name = "Full-depth saw cut, transverse", Role = PayRole.TransverseSawCut, Unit = length, UnitPrice = 6.75m, RoundTo = 1 },
            new PayItem { Code = "502-09", Name = "Dowel bar, drilled and anchored", Role = PayRole.DrilledDowel, Unit = new Unit("each", Dimension.None, 1), UnitPrice = 21.40m },
            new PayItem { Code = "503-01", Name = "Partial-depth repair", Role = PayRole.PartialDepthArea, Unit = area, UnitPrice = 610m, RoundTo = 0.1 },
            new PayItem { Code = "699-01", Name = "Mobilisation", Role = PayRole.LumpSum, Unit = new Unit("lump sum", Dimension.None, 1), UnitPrice = 48_000m },
        ]);
    }

    public static QuantityResult Build(Project project, ImmutableArray<Repair> repairs, ImmutableArray<SurfaceWork> works)
    {
        var items = project.Prices.Items;
        var lines = ImmutableArray.CreateBuilder<TakeOffLine>();
        foreach (var r in repairs)
        {
            lines.Add(Line(items[0], r.Id, items[0].Unit.FromBase(r.Area), items[0].PriceFor(r.Area), "length × width"));
            lines.Add(Line(items[1], r.Id, items[1].Unit.FromBase(2 * r.Width), items[1].UnitPrice, "2 × width"));
            lines.Add(Line(items[2], r.Id, r.Start.Bars + r.End.Bars, items[2].UnitPrice, "bars at both ends"));
        }

        foreach (var w in works.Where(w => w.Area > 0)) lines.Add(Line(items[3], w.Id, items[3].Unit.FromBase(w.Area), items[3].UnitPrice, "area"));
        lines.Add(new TakeOffLine(items[4].Code, "", 1, "lump sum", items[4].UnitPrice));
        var schedule = Schedule(project.Prices, lines.ToImmutable());
        return new QuantityResult(lines.ToImmutable(), schedule, ByKind(repairs, works), ByStation(project, repairs), Range(schedule.Total));
    }

    private static TakeOffLine Line(PayItem item, string work, double measured, decimal price, string working) =>
        new(item.Code, work, measured, $"{working} = {measured.ToString("0.00", CultureInfo.InvariantCulture)} {item.Unit.Symbol}", price);

    private static BidSchedule Schedule(PriceList prices, ImmutableArray<TakeOffLine> takeOff)
    {
        var lines = ImmutableArray.CreateBuilder<BidLine>();
        foreach (var item in prices.Items)
        {
            foreach (var (price, index) in (item.SizeClasses.IsEmpty ? [item.UnitPrice] : item.SizeClasses.Select(s => s.UnitPrice)).Select((p, i) => (p, i)))
            {
                var measured = takeOff.Where(t => t.ItemCode == item.Code && t.UnitPrice == price).Sum(t => t.Measured);
                var pay = Math.Round(Math.Ceiling(measured / item.RoundTo - 1e-9) * item.RoundTo, 6);
                var name = item.SizeClasses.IsEmpty ? item.Name : $"{item.Name}, {(index == 0 ? "under" : "from")} {item.Unit.Format(10, 1)}";
                lines.Add(new BidLine(item, item.SizeClasses.IsEmpty ? null : index, name, measured, pay, price, Math.Round((decimal)pay * price, 2)));
            }
        }

        return new BidSchedule(lines.ToImmutable(), lines.Sum(l => l.Amount));
    }

    private static ImmutableArray<GroupTotal> ByKind(ImmutableArray<Repair> repairs, ImmutableArray<SurfaceWork> works) =>
    [
        .. repairs.GroupBy(r => r.Kind).Select(g => new GroupTotal(g.Key.ToString(), g.Count(), g.Sum(r => r.Area), (decimal)g.Sum(r => r.Area) * 300m)),
        .. works.GroupBy(w => w.Treatment).Select(g => new GroupTotal(g.Key.ToString(), g.Count(), g.Sum(w => w.Area), (decimal)g.Sum(w => w.Area) * 700m)),
    ];

    private static ImmutableArray<GroupTotal> ByStation(Project project, ImmutableArray<Repair> repairs) =>
        [.. repairs.GroupBy(r => Math.Floor(r.From / project.Settings.StationRange)).Select(g => new GroupTotal(
            $"{project.Road.Stationing.Format(g.Key * project.Settings.StationRange)} to {project.Road.Stationing.Format((g.Key + 1) * project.Settings.StationRange)}",
            g.Count(), g.Sum(r => r.Area), (decimal)g.Sum(r => r.Area) * 300m))];

    private static CostRange Range(decimal total)
    {
        var costs = Enumerable.Range(0, 400).Select(i => total * (1m + 0.0007m * i + (i * 7919 % 61) / 1000m)).Order().ToImmutableArray();
        return new CostRange(costs[40], costs[200], costs[360], costs.Average(), 400, 11, [new QuantityRange("502-01", "Full-depth repair", 90, 110, 150)],
            [
                new CostDriver("Growth since the survey", total * 0.97m, total * 1.22m),
                new CostDriver("Hidden margin", total, total * 1.11m),
                new CostDriver("Prices", total * 1.01m, total * 1.08m),
            ], costs);
    }
}
