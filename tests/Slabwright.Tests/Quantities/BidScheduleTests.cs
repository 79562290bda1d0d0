using Slabwright.Core.Boundaries;
using Slabwright.Core.Measures;
using Slabwright.Core.Prices;
using Slabwright.Core.Quantities;
using Slabwright.Core.Treatments;
using static Slabwright.Tests.Quantities.SampleWork;

namespace Slabwright.Tests.Quantities;

public class BidScheduleTests
{
    private static readonly PayItem Area = Item(PayRole.FullDepthArea, Units.SquareYard, 300.10m) with
    {
        Name = "Full-depth repair",
        SizeClasses = [new(0, 300.10m), new(Units.SquareYard.ToBase(10), 250.05m)],
        RoundTo = 0.1,
    };

    [Fact]
    public void Each_size_class_is_a_line_rounded_up_once_with_its_amount_to_the_cent()
    {
        var prices = new PriceList("USD", [Area]);
        var repairs = new[] { Repair(0, 6.25, id: "A"), Repair(20, 26.25, id: "B"), Repair(40, 55, id: "C") };
        var schedule = BidSchedules.Build(TakeOff.Measure(Road(), repairs, [], prices, Joints, Settings), prices);
        Assert.Equal(["Full-depth repair, under 10 yd2", "Full-depth repair, 10 yd2 and over"], schedule.Lines.Select(l => l.Name));
        Assert.Equal(16.6667, schedule.Lines[0].Measured, 4);
        Assert.Equal(16.7, schedule.Lines[0].Pay, 12);
        Assert.Equal(5011.67m, schedule.Lines[0].Amount);
        Assert.Equal(20.0, schedule.Lines[1].Pay, 12);
        Assert.Equal(5001.00m, schedule.Lines[1].Amount);
        Assert.Equal(10012.67m, schedule.Total);
    }

    [Theory]
    [InlineData(8.0, 1, 8.0)]
    [InlineData(8.0000000001, 1, 8.0)]
    [InlineData(8.001, 1, 9.0)]
    [InlineData(8.01, 0.1, 8.1)]
    [InlineData(0.3, 0.1, 0.3)]
    [InlineData(101, 50, 150)]
    public void Totals_round_up_to_the_step(double measured, double step, double pay) =>
        Assert.Equal(pay, BidSchedules.RoundUp(measured, step));

    [Fact]
    public void Items_without_quantity_are_left_out_and_the_order_is_the_price_lists()
    {
        var prices = FullList();
        var schedule = BidSchedules.Build(TakeOff.Measure(Road(), [Repair(0, 6)], [], prices, Joints, Settings), prices);
        var order = prices.Items.Select(i => i.Code).Where(c => schedule.Lines.Any(l => l.Item.Code == c));
        Assert.Equal(order, schedule.Lines.Select(l => l.Item.Code));
        Assert.DoesNotContain(schedule.Lines, l => l.Item.Role is PayRole.InternalSawCut or PayRole.TieBar or PayRole.TrafficControlNight);
    }

    [Fact]
    public void Groups_by_kind_and_by_station_both_add_up_to_the_take_off()
    {
        var repairs = new[]
        {
            Repair(10, 16, id: "A"), Repair(190, 230, id: "B", kind: Treatment.SlabReplacement),
            Repair(500, 580, id: "C", kind: Treatment.SlabRun),
        };
        var works = new[] { Surface(Treatment.PartialDepthRepair, 3, 6, "P001"), Surface(Treatment.Seal, 12, 0, "S001") };
        var settings = Settings with { StationRange = 200 * Foot };
        var result = QuantityStep.Run(Road(), repairs, works, FullList(), Joints, settings);
        var total = result.TakeOff.Sum(l => (decimal)l.Measured * 10);
        Assert.Equal(total, result.ByKind.Sum(g => g.Amount), 6);
        Assert.Equal(total, result.ByStation.Sum(g => g.Amount), 6);
        Assert.Equal(
            ["Full-depth repair", "Slab replacement", "Slab run", "Partial-depth repair", "Seal", "Whole job"],
            result.ByKind.Select(g => g.Name));
        Assert.Equal(["0+00.0 to 2+00.0", "2+00.0 to 4+00.0", "4+00.0 to 6+00.0", "Whole job"], result.ByStation.Select(g => g.Name));
        Assert.Equal([3, 1, 1, 1], result.ByStation.Select(g => g.Count));
        Assert.Equal(6 * 12 + 40 * 12 + 80 * 12 + 6, result.ByKind.Sum(g => g.Area) / (Foot * Foot), 9);
    }
}
