using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Measures;
using Slabwright.Core.Prices;
using Slabwright.Core.Quantities;
using Slabwright.Core.Treatments;
using static Slabwright.Tests.Quantities.SampleWork;

namespace Slabwright.Tests.Quantities;

public class TakeOffTests
{
    private static TakeOffLine? Measured(PayItem item, params Repair[] repairs) =>
        Lines(new PriceList("USD", [item]), repairs).SingleOrDefault();

    private static ImmutableArray<TakeOffLine> Lines(PriceList prices, params Repair[] repairs) =>
        TakeOff.Measure(Road(), repairs, [], prices, Joints, Settings);

    [Fact]
    public void A_longitudinal_side_against_asphalt_is_not_sawn_but_formed_and_its_strip_goes_out_and_back()
    {
        var repair = Repair(100, 110, left: LongitudinalFace.FormedAgainstShoulder);
        var lines = Lines(FullList(), repair).ToDictionary(l => l.ItemCode, l => l.Measured);
        Assert.Equal(10, lines["LongitudinalSawCut"], 9);
        Assert.Equal(10, lines["ShoulderStrip"], 9);
        Assert.Equal(10, lines["EdgeForm"], 9);
        Assert.Equal(10, lines["IsolationBoard"], 9);
        Assert.Equal(10, lines["LongitudinalSeal"], 9);
    }

    [Fact]
    public void A_curb_side_is_formed_without_a_shoulder_strip()
    {
        var lines = Lines(FullList(), Repair(0, 8, right: LongitudinalFace.Formed)).ToDictionary(l => l.ItemCode, l => l.Measured);
        Assert.Equal(8, lines["EdgeForm"], 9);
        Assert.DoesNotContain("ShoulderStrip", lines.Keys);
    }

    [Fact]
    public void A_shared_edge_is_measured_with_the_lane_to_the_left_only()
    {
        var left = Repair(0, 10, lane: 1, id: "R001", right: LongitudinalFace.SharedWithRepair);
        var right = Repair(0, 10, lane: 2, id: "R002", left: LongitudinalFace.SharedWithRepair);
        var lines = Lines(new PriceList("USD", [Item(PayRole.LongitudinalSawCut, Units.Foot, 4)]), right, left);
        Assert.Equal(["R001", "R002"], lines.Select(l => l.WorkId));
        Assert.Equal([20, 10], lines.Select(l => Math.Round(l.Measured, 9)));
        Assert.Equal("left 10.0 ft + right 10.0 ft = 20.00 ft; 10.0 ft shared with the repair to the right, counted here", lines[0].Working);
        Assert.Equal("right 10.0 ft = 10.00 ft; 10.0 ft shared with the repair to the left, counted there", lines[1].Working);
    }

    [Fact]
    public void Cuts_through_tie_bars_are_told()
    {
        var line = Measured(Item(PayRole.LongitudinalSawCut, Units.Foot, 4), Repair(0, 10, severed: true));
        Assert.Equal("left 10.0 ft + right 10.0 ft = 20.00 ft; 20.0 ft through tie bars", line!.Working);
    }

    [Theory]
    [InlineData(6, 0)]
    [InlineData(6.5, 12)]
    [InlineData(12, 12)]
    [InlineData(15, 24)]
    [InlineData(30, 48)]
    public void Internal_cuts_make_pieces_of_at_most_six_feet(double lengthFeet, double cutFeet)
    {
        var line = Measured(Item(PayRole.InternalSawCut, Units.Foot, 3), Repair(100, 100 + lengthFeet));
        Assert.Equal(cutFeet, line?.Measured ?? 0, 9);
    }

    [Fact]
    public void Dowels_count_at_dowelled_ends_and_ties_at_tied_ends()
    {
        var repair = Repair(0, 10) with { End = new RepairJoint(10 * Foot, JointDesign.Tied, false, 5) };
        var lines = Lines(FullList(), repair).ToDictionary(l => l.ItemCode);
        Assert.Equal("11 = 11 each; start", lines["DrilledDowel"].Working);
        Assert.Equal("5 = 5 each; end", lines["TieBar"].Working);
    }

    [Fact]
    public void Basket_dowels_count_at_joints_inside()
    {
        var repair = Repair(0, 45) with
        {
            Intermediate = [new(15 * Foot, JointDesign.Dowelled, true, 11), new(30 * Foot, JointDesign.Dowelled, true, 11)],
        };
        var lines = Lines(FullList(), repair).ToDictionary(l => l.ItemCode);
        Assert.Equal("2 × 11 = 22 each; 2 joints inside", lines["BasketDowel"].Working);
        Assert.Equal("4 × 12.0 ft = 48.00 ft", lines["TransverseSeal"].Working);
        Assert.Equal("2 × 12.0 ft = 24.00 ft", lines["TransverseSawCut"].Working);
    }

    [Fact]
    public void Tie_bars_along_a_side_are_never_further_apart_than_the_spacing()
    {
        var line = Measured(Item(PayRole.TieBar, Each, 15), Repair(0, 16, left: LongitudinalFace.Tied));
        Assert.Equal(7, line!.Measured); // 16 ft over 2.5 ft is 6.4
        Assert.Equal("7 = 7 each; left 16.0 ft at 2.5 ft or less", line.Working);
    }

    [Fact]
    public void Least_pay_holds_for_each_repair()
    {
        var item = Item(PayRole.FullDepthArea, Units.SquareYard, 200) with { LeastPay = 2 };
        var line = Measured(item, Repair(0, 3, widthFeet: 4));
        Assert.Equal(2, line!.Measured);
        Assert.Equal("3.0 ft × 4.0 ft ÷ 9 = 1.33 yd2; paid as 2.00 yd2, the least", line.Working);
    }

    [Fact]
    public void The_size_class_follows_the_repairs_own_area_and_holds_for_all_of_it()
    {
        var item = Item(PayRole.FullDepthArea, Units.SquareYard, 300) with
        {
            SizeClasses = [new(0, 300), new(Units.SquareYard.ToBase(10), 250), new(Units.SquareYard.ToBase(20), 220)],
        };
        var lines = Lines(new PriceList("USD", [item]), Repair(0, 7, id: "A"), Repair(20, 27.5, id: "B"), Repair(40, 60, id: "C"));
        Assert.Equal([300m, 250m, 220m], lines.Select(l => l.UnitPrice));
        Assert.Equal([0, 1, 2], lines.Select(l => l.SizeClass));
    }

    [Fact]
    public void Loose_base_is_filled_with_concrete()
    {
        var settings = Settings with { LooseBaseShare = 0.25, LooseBaseDepth = 0.5 * Foot };
        var prices = new PriceList("USD", [Item(PayRole.BaseConcrete, Units.CubicYard, 180)]);
        var line = Assert.Single(TakeOff.Measure(Road(), [Repair(0, 9)], [], prices, Joints, settings));
        Assert.Equal(0.5, line.Measured, 9);
        Assert.Equal("9.0 ft × 12.0 ft × 0.25 × 0.5 ft ÷ 27 = 0.50 yd3", line.Working);
    }

    [Fact]
    public void Surface_works_and_the_job_have_their_own_lines()
    {
        var settings = Settings with { Nights = 14 };
        var lines = TakeOff.Measure(
            Road(), [], [Surface(Treatment.PartialDepthRepair, 3, 6, "P001"), Surface(Treatment.Seal, 12, 0, "S001")],
            FullList(), Joints, settings);
        Assert.Equal(["PartialDepthArea", "SealLength", "LumpSum", "TrafficControlNight"], lines.Select(l => l.ItemCode));
        Assert.Equal("6.0 ft2 ÷ 9 = 0.67 yd2", lines[0].Working);
        Assert.Equal("12.0 ft = 12.00 ft", lines[1].Working);
        Assert.Equal("14 = 14 each; nights", lines[3].Working);
    }

    [Fact]
    public void Metric_items_are_worked_in_metres()
    {
        var line = Measured(Item(PayRole.FullDepthArea, Units.SquareMetre, 200), Repair(0, 2 / Foot, widthFeet: 3.5 / Foot));
        Assert.Equal("2.0 m × 3.5 m = 7.00 m2", line!.Working);
    }

    [Fact]
    public void A_ramp_patched_in_two_halves_is_two_repairs()
    {
        var item = Item(PayRole.RepairSetUp, Each, 150);
        Assert.Equal(2, Lines(new PriceList("USD", [item]), Repair(0, 6, lane: 1, id: "A"), Repair(0, 6, lane: 2, id: "B")).Length);
    }
}
