using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Treatments;
using static Slabwright.Tests.Boundaries.Worked;

namespace Slabwright.Tests.Boundaries;

/// <summary>Cases worked by hand, in feet: dowelled joints every 15 ft unless a case says otherwise.</summary>
public sealed class WorkedCaseTests
{
    private static readonly Road OneLane = Road(Lane(1, 300, JointKind.Dowelled, Every(15, 300)));

    [Fact]
    public void A_crack_in_a_long_slab_gets_the_least_length()
    {
        var road = Road(Lane(1, 120, JointKind.Dowelled, [40, 80]));
        var repair = Assert.Single(Plan(road, [Demand(1, 60, 60.5)]).Repairs);
        Assert.Equal(6, repair.Length / Foot, 6);
        Assert.Equal(Treatment.FullDepthRepair, repair.Kind);
        Assert.Contains(repair.Reasons, r => r.Rule == "least length");
    }

    [Fact]
    public void A_cut_keeps_six_feet_from_the_joint_or_takes_it_out_by_one_foot()
    {
        // Slab 30 to 45. Cuts inside it lie between 36 and 39, 3 ft apart, so one end must pass a joint: 37 to 46 is 9 ft, 29 to 39 is 10 ft.
        Assert.Equal([(37, 46)], Ends(Plan(OneLane, [Demand(1, 37, 38.5)])));
    }

    [Fact]
    public void The_lesser_of_ten_feet_and_half_the_slab_is_enough_where_the_rules_say_so()
    {
        // UFC 3-270-04 (2001) sec 4.3: least length the lesser of 10 ft and half the slab, 2 ft to a joint. Half of 15 ft is 7.5 ft, on 1 ft marks 8 ft.
        var limits = FhwaLimits with { LeastLength = Feet(10), LeastLengthUndowelled = null, LeastRemnant = Feet(2), LeastGap = Feet(2) };
        var half = limits with { LeastLengthOrHalfSlab = new Sourced<bool>(true, limits.LeastLength.Source) };
        RemovalDemand[] demands = [Demand(1, 36.5, 37.5)];
        var (ten, eight) = (Plan(OneLane, demands, RuleSetOf(limits)), Plan(OneLane, demands, RuleSetOf(half)));
        Assert.Equal(10, Assert.Single(ten.Repairs).Length / Foot, 6);
        Assert.Equal(8, Assert.Single(eight.Repairs).Length / Foot, 6);
        Assert.Empty(BoundaryChecker.Check(OneLane, demands, half, Foot, eight.Repairs));
        Assert.Contains(BoundaryChecker.Check(OneLane, demands, limits, Foot, eight.Repairs), f => f.Code == "BND-021");
    }

    [Fact]
    public void A_broken_joint_is_taken_out_with_a_foot_to_spare()
    {
        // Demand 59 to 61 about the joint at 60: 6 ft long, at least 59 to 61, both joints beside (45, 75) more than 6 ft away.
        var repair = Assert.Single(Plan(OneLane, [Demand(1, 59, 61)]).Repairs);
        Assert.Equal(6, repair.Length / Foot, 6);
        Assert.InRange(repair.From / Foot, 55 - 1e-6, 59 + 1e-6);
        Assert.Empty(repair.Intermediate);
    }

    [Fact]
    public void A_slab_between_dowelled_joints_comes_out_with_both_joints()
    {
        var repair = Assert.Single(Plan(OneLane, [Demand(1, 60, 75)]).Repairs);
        Assert.Equal((59, 76), Ends(Plan(OneLane, [Demand(1, 60, 75)]))[0]);
        Assert.Equal(Treatment.SlabReplacement, repair.Kind);
        Assert.Equal(11, repair.Start.Bars);
    }

    [Fact]
    public void A_slab_between_undowelled_joints_comes_out_at_them()
    {
        var road = Road(Lane(1, 150, JointKind.Undowelled, Every(15, 150)));
        var repair = Assert.Single(Plan(road, [Demand(1, 60, 75)]).Repairs);
        Assert.Equal((60, 75), (Math.Round(repair.From / Foot, 6), Math.Round(repair.To / Foot, 6)));
        Assert.Equal(JointDesign.Undowelled, repair.Start.Design);
        Assert.True(repair.End.AtExistingJoint);
        Assert.Equal(0, repair.End.Bars);
    }

    [Fact]
    public void Repairs_nearer_than_the_gap_become_one()
    {
        // Slab 0 to 60: two cracks 8 ft apart need 6 ft each; 5 ft at most would stay between, less than the gap of 6 ft.
        var road = Road(Lane(1, 120, JointKind.Dowelled, [60]));
        Assert.Equal([(20, 32)], Ends(Plan(road, [Demand(1, 20, 22, "A"), Demand(1, 30, 32, "B")])));
    }

    [Fact]
    public void Repairs_far_enough_apart_stay_two_until_a_repair_costs_more_than_the_gap()
    {
        // Alone 6 ft each, 12 ft of old slab between. Keeping it is dearer once a repair's set-up exceeds removing 12 ft.
        var road = Road(Lane(1, 120, JointKind.Dowelled, [60]));
        RemovalDemand[] demands = [Demand(1, 14, 20, "A"), Demand(1, 32, 38, "B")];
        Assert.Equal([(14, 20), (32, 38)], Ends(Plan(road, demands)));
        var dear = With(Item(PayRole.RepairSetUp, Units.One, 3500));
        Assert.Equal([(14, 38)], Ends(Plan(road, demands, prices: dear)));
    }

    [Fact]
    public void A_skewed_joint_is_wholly_in_or_wholly_out()
    {
        // Joint at 60 skewed over 2 ft (59 to 61). Demand 57 to 60 must take the band and a foot more: 62 at least; 6 ft is 56 to 62 or 57 to 63.
        var road = Road(Lane(1, 120, JointKind.Dowelled, [30, 60, 90], skew: 2));
        var (from, to) = Assert.Single(Ends(Plan(road, [Demand(1, 57, 60)])));
        Assert.True(to >= 62 && from <= 57 && Math.Abs(to - from - 6) < 1e-6, $"{from} to {to}");
    }

    [Fact]
    public void No_cut_falls_in_a_no_cut_zone()
    {
        var road = OneLane with { NoCutZones = [new NoCutZone("loops", null, 50 * Foot, 64 * Foot)] };
        // 66 and up leaves 6 ft or more to 75 only at 69 and below; the start must lie at or before 50: 50 is 5 ft past 45, so 39 or 44.
        var (from, to) = Assert.Single(Ends(Plan(road, [Demand(1, 59, 61)])));
        Assert.True(from <= 50 && to >= 64, $"{from} to {to}");
        Assert.Equal((44, 64), (from, to));
    }

    [Fact]
    public void A_demand_that_no_cut_can_enclose_is_reported_and_the_rest_planned()
    {
        var road = OneLane with { NoCutZones = [new NoCutZone("bridge approach", 1, -1, 30 * Foot)] };
        var result = Plan(road, [Demand(1, 10, 12, "A"), Demand(1, 159, 161, "B")]);
        Assert.Equal("BND-011", Assert.Single(result.Findings).Code);
        Assert.Equal("B", Assert.Single(Assert.Single(result.Repairs).DistressIds));
    }

    [Fact]
    public void A_longer_repair_is_taken_when_its_price_class_makes_it_cheaper()
    {
        // 12 ft wide: 6 ft is 8 yd2. From 10 yd2 (7.5 ft) the price falls from 180 to 120: 7.5 ft at 120 is 1,200 against 8 at 180, 1,440.
        var road = Road(Lane(1, 120, JointKind.Dowelled, [40, 80]));
        var classes = Item(PayRole.FullDepthArea, Units.SquareYard, 180) with
        {
            SizeClasses = [new SizeClass(0, 180), new SizeClass(Units.SquareYard.ToBase(10), 120)],
        };
        var repair = Assert.Single(Plan(road, [Demand(1, 60, 61)], prices: With(classes), step: 0.5).Repairs);
        Assert.Equal(7.5, repair.Length / Foot, 6);
        Assert.Contains(repair.Reasons, r => r.Rule == "price class");
    }

    [Fact]
    public void Old_joints_are_made_again_and_long_panels_split()
    {
        var limits = FhwaLimits with { LongestUnjointed = Feet(16) };
        // 51 to 99 keeps the joints at 60, 75 and 90: 9, 15, 15 and 9 ft. A 24 ft panel would be two of 12.
        var repair = Assert.Single(Plan(OneLane, [Demand(1, 51, 99)], RuleSetOf(limits)).Repairs);
        Assert.Equal([60, 75, 90], repair.Intermediate.Select(j => Math.Round(j.At / Foot, 3)));
        Assert.All(repair.Intermediate, j => Assert.True(j.AtExistingJoint && j.Bars == 11));
        var bare = Road(Lane(1, 120, JointKind.Dowelled, [100]));
        var split = Assert.Single(Plan(bare, [Demand(1, 30, 54)], RuleSetOf(limits)).Repairs);
        Assert.Equal([42], split.Intermediate.Select(j => Math.Round(j.At / Foot, 3)));
    }

    [Fact]
    public void Repairs_side_by_side_share_their_edge()
    {
        var road = Road(Lane(1, 120, JointKind.Dowelled, [40, 80]), Lane(2, 120, JointKind.Dowelled, [40, 80]));
        var both = Plan(road, [Demand(1, 60, 61, "A"), Demand(2, 60, 61, "B")]);
        Assert.Equal(both.Repairs[0].From, both.Repairs[1].From, 6);
        Assert.All(both.Repairs, r => Assert.Equal(1, r.Group));
        Assert.Equal(LongitudinalFace.SharedWithRepair, Assert.Single(both.Repairs[0].RightFace).Face);
        // Apart each has 6 ft of cut, seal and board on the lane line; together the cut and seal once, no board: 6 × (4 + 2 + 3 + 3) saved.
        var alone = Plan(road, [Demand(1, 60, 61)]).Cost + Plan(road, [Demand(2, 60, 61)]).Cost;
        Assert.InRange(alone - both.Cost - 72, -0.02m, 0.02m);
    }

    [Fact]
    public void A_small_repair_costs_what_the_hand_sum_says()
    {
        // 6 × 12 ft = 8.0 yd2: 1,440; set-up 300; two cuts and seals of 12 ft 144; 22 dowels 264; concrete shoulder 6 × (4 + 2 + 3) = 54;
        // asphalt side 6 × (5 + 2) = 42. Sum 2,244.
        var road = Road(Lane(1, 120, JointKind.Dowelled, [40, 80]));
        Assert.Equal(2244.00m, Plan(road, [Demand(1, 60, 61)]).Cost);
    }

    [Fact]
    public void An_end_lines_up_with_the_neighbour_when_the_weight_says_so()
    {
        var road = Road(Lane(1, 120, JointKind.Dowelled, [40, 80]), Lane(2, 120, JointKind.Dowelled, [40, 59, 80]));
        var options = BoundaryOptions.PlanOnly with { SpannedJointWeight = 0, UnmatchedEndWeight = 50 };
        var repair = Assert.Single(Plan(road, [Demand(1, 60, 61)], options: options).Repairs);
        Assert.Equal(59, repair.From / Foot, 6);
    }

    [Fact]
    public void A_ramp_lane_starts_where_its_concrete_starts()
    {
        var ramp = Lane(2, 120, JointKind.Dowelled, [80]) with { From = 60 * Foot };
        ramp = ramp with { Joints = [new TransverseJoint(60 * Foot, JointKind.PavementEnd), .. ramp.Joints.Skip(1)] };
        var road = Road(Lane(1, 120, JointKind.Dowelled, [40, 80]), ramp);
        var result = Plan(road, [Demand(2, 60, 62)]);
        var repair = Assert.Single(result.Repairs);
        Assert.Equal((60, 66), (Math.Round(repair.From / Foot, 6), Math.Round(repair.To / Foot, 6)));
        Assert.Equal(JointDesign.Isolated, repair.Start.Design);
        var beside = Assert.Single(Plan(road, [Demand(1, 57, 63)]).Repairs);
        Assert.Equal([LongitudinalFace.FormedAgainstShoulder, LongitudinalFace.Isolated], beside.RightFace.Select(f => f.Face));
    }

    [Fact]
    public void Missing_area_price_is_a_finding()
    {
        var bare = Prices with { Items = [.. Prices.Items.Where(i => i.Role != PayRole.FullDepthArea)] };
        var result = BoundaryPlanner.Plan(OneLane, [Demand(1, 59, 61)], RuleSetOf(), bare, Foot, BoundaryOptions.PlanOnly, TestContext.Current.CancellationToken);
        Assert.Contains(result.Findings, f => f is { Code: "BND-013", Level: FindingLevel.Warning });
        Assert.Single(result.Repairs);
    }

    [Fact]
    public void A_demand_off_the_concrete_is_a_finding()
    {
        var result = Plan(OneLane, [Demand(1, 290, 310), Demand(3, 10, 12, "X"), Demand(1, 59, 61, "B")]);
        Assert.Equal(["BND-010", "BND-010"], result.Findings.Select(f => f.Code));
        Assert.Single(result.Repairs);
    }
}
