using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Pavement;
using Slabwright.Core.Quantities;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Tests.Boundaries;
using static Slabwright.Tests.JointLayouts.Lanes;
using JointChecks = Slabwright.Core.Joints.Design.JointChecks;

namespace Slabwright.Tests.JointLayouts;

/// <summary>From lanes to the joints of repairs: ends, obstacles, money.</summary>
public sealed class PlannedJointsTests
{
    private static readonly Lane Reinforced = Worked.Lane(1, 600, JointKind.Dowelled, Worked.Every(40, 600)) with
    {
        Sections = [new PavementSection(0, 300 * Foot, PavementKind.JointedReinforced, 0.25, BaseKind.Granular), new PavementSection(300 * Foot, 600 * Foot, PavementKind.JointedPlain, 0.25, BaseKind.Granular)],
    };

    private static readonly BoundaryLimits Near = Worked.FhwaLimits with { LeastRemnant = Worked.Feet(2) };

    public static Road Road { get; } = Worked.Road(Reinforced) with { Traffic = new Traffic(8000, 0.1, 0.01) };

    public static RuleSet Rules { get; } = Worked.RuleSetOf(Near, Limits with { OneEndTiedUpTo = Worked.Feet(10) });

    private static readonly (ImmutableArray<LaneJointDesign> Lanes, ImmutableArray<Finding> Findings) Layouts =
        JointPlanner.Lanes(Road, Rules, Worked.Prices, JointSettings.Default);

    private static BoundaryOptions Options(JointSettings? settings = null) => BoundaryOptions.PlanOnly with
    {
        SpannedJointWeight = 0, UnmatchedEndWeight = 0, Bars = JointPlanner.Bars(Road, Rules, settings ?? JointSettings.Default, Layouts.Lanes),
    };

    private static BoundaryResult Cut(params RemovalDemand[] demands) => Worked.Plan(Road, demands, Rules, options: Options());

    private static JointPlan Joints(BoundaryResult plan, JointSettings? settings = null, params CoreSample[] cores) =>
        JointPlanner.Joints(Road, Rules, settings ?? JointSettings.Default, cores, Layouts.Lanes, plan.Repairs);

    [Fact]
    public void A_short_repair_of_reinforced_slabs_ties_the_end_at_the_shorter_piece_and_never_both()
    {
        var repair = Assert.Single(Cut(Worked.Demand(1, 52, 55)).Repairs);
        Assert.Equal((JointDesign.Tied, JointDesign.Dowelled), (repair.Start.Design, repair.End.Design));
        var other = Assert.Single(Cut(Worked.Demand(1, 68, 70)).Repairs);
        Assert.Equal((JointDesign.Dowelled, JointDesign.Tied), (other.Start.Design, other.End.Design));
        Assert.Equal((11, Layouts.Lanes[0].Used.Layout!.Bars), (other.End.Bars, other.Start.Bars));
    }

    [Theory]
    [InlineData(52, 66, "long")]
    [InlineData(372, 375, "plain slabs")]
    [InlineData(299, 303, "over both kinds")]
    public void Other_repairs_tie_no_end(double from, double to, string why)
    {
        var repair = Assert.Single(Cut(Worked.Demand(1, from, to)).Repairs);
        Assert.True((JointDesign.Dowelled, JointDesign.Dowelled) == (repair.Start.Design, repair.End.Design), why);
    }

    [Fact]
    public void The_project_may_keep_every_end_dowelled() =>
        Assert.Equal(0, JointPlanner.Bars(Road, Rules, new JointSettings { TieOneEnd = false }, Layouts.Lanes)[1].TieOneEndUpTo);

    [Fact]
    public void Every_joint_says_why_and_how_it_is_drilled()
    {
        var plan = Joints(Cut(Worked.Demand(1, 52, 55), Worked.Demand(1, 330, 334)));
        Assert.Equal(4, plan.Joints.Length);
        Assert.All(plan.Joints, j => Assert.NotEmpty(j.Reasons));
        Assert.All(plan.Joints, j => Assert.Equal(j.Bars!.Embedment, j.Drilling!.HoleDepth));
        Assert.All(plan.Joints, j => Assert.Equal(Enumerable.Range(1, j.Bars!.Bars), j.Drilling!.SetUps.SelectMany(s => s.Bars).Order()));
        var tied = plan.Joints.Single(j => j.Design == JointDesign.Tied);
        Assert.Equal(BarKind.TieBar, tied.Bars!.Kind);
        Assert.Equal(tied.Bars.Length / 3, tied.Bars.Embedment, 9);
        Assert.DoesNotContain(tied.Drilling!.Steps, s => s.Name == "grease");
        Assert.Contains(plan.Joints[^1].Drilling!.Steps, s => s.Name == "grease");
        Assert.Equal([(BarKind.Dowel, 3 * Layouts.Lanes[0].Used.Layout!.Bars), (BarKind.TieBar, 11)], plan.Holes.Select(h => (h.Kind, h.Holes)));
    }

    [Fact]
    public void Cement_grout_wants_a_wet_hole_and_epoxy_a_dry_one()
    {
        var plan = Cut(Worked.Demand(1, 330, 334));
        var epoxy = Joints(plan, new JointSettings { Anchor = BarAnchor.Epoxy }).Joints[0].Drilling!;
        var grout = Joints(plan, new JointSettings { Anchor = BarAnchor.CementGrout }).Joints[0].Drilling!;
        Assert.Contains(epoxy.Steps, s => s.Name == "dry");
        Assert.Contains(grout.Steps, s => s.Name == "wet");
        Assert.Equal(Layouts.Lanes[0].Used.Layout!.Diameter + Inch / 8, epoxy.HoleDiameter, 9);
        Assert.Equal(Inch / 8, grout.HoleDiameter - epoxy.HoleDiameter, 9);
    }

    [Fact]
    public void A_bar_moves_off_a_core_hole_and_stays_in_the_lane()
    {
        var plan = Cut(Worked.Demand(1, 330, 334));
        var start = plan.Repairs[0].From;
        var core = new CoreSample("C1", 1, start - 0.1, 24 * Inch, null, null, null);
        var joint = Joints(plan, null, core).Joints[0];
        Assert.Contains(joint.Reasons, r => r.Rule == "bar moved");
        Assert.Equal(8, joint.Bars!.Bars);
        Assert.All(joint.Bars.Offsets, x => Assert.True(Math.Abs(x - 24 * Inch) >= 4 * Inch));
        Assert.Empty(JointChecks.Layout(joint.Bars, joint.LaneWidth, joint.Thickness));
        var away = new CoreSample("C1", 1, start + 0.5, 24 * Inch, null, null, null);
        Assert.DoesNotContain(Joints(plan, null, away).Joints[0].Reasons, r => r.Rule == "bar moved");
    }

    [Fact]
    public void Where_there_is_no_room_the_bar_is_left_out_and_somebody_is_told()
    {
        var plan = Cut(Worked.Demand(1, 330, 334));
        var at = plan.Repairs[0].From;
        var settings = new JointSettings { KeepOuts = [new("duct", null, at - 1, at, 15 * Inch, 33 * Inch)] };
        var joints = Joints(plan, settings);
        Assert.Equal(7, joints.Joints[0].Bars!.Bars);
        Assert.Contains(joints.Joints[0].Reasons, r => r.Rule == "bar left out" && r.Sentence.Contains("duct", StringComparison.Ordinal));
        Assert.Contains(joints.Findings, f => f.Code == "JNT-022");
        Assert.Equal(7, joints.Fit(plan.Repairs)[0].Start.Bars);
        Assert.Equal(8, joints.Fit(plan.Repairs)[0].End.Bars);
    }

    [Fact]
    public void Beside_an_old_joint_that_stays_the_row_goes_half_a_spacing_over()
    {
        var lane = Reinforced;
        var repair = Assert.Single(Cut(Worked.Demand(1, 330, 334)).Repairs);
        var close = lane with { Joints = [.. lane.Joints.Append(new TransverseJoint(repair.From - 0.4, JointKind.Dowelled)).OrderBy(j => j.At)] };
        var joint = JointPlanner.Joints(Road with { Lanes = [close] }, Rules, JointSettings.Default, [], Layouts.Lanes, [repair]).Joints[0];
        Assert.Contains(joint.Reasons, r => r.Rule == "clear of old dowels");
        var old = Layouts.Lanes[0].Used.Layout!.Offsets;
        Assert.All(joint.Bars!.Offsets, x => Assert.All(old, o => Assert.True(Math.Abs(x - o) > 5.9 * Inch)));
    }

    [Fact]
    public void Defaults_are_noted_with_their_source_and_given_values_are_not()
    {
        Assert.Contains(Layouts.Findings, f => f is { Code: "JNT-001", Place.Field: "joints.dowel_support", Source: not null });
        var (_, findings) = JointPlanner.Lanes(Road, Rules, Worked.Prices, new JointSettings { DowelSupport = 4e11, Reaction = 5e7 });
        Assert.DoesNotContain(findings, f => f.Place.Field is "joints.dowel_support" or "joints.reaction");
        Assert.Contains(findings, f => f.Place.Field == "joints.modulus");
    }

    [Fact]
    public void Without_traffic_a_number_is_assumed_and_told()
    {
        var (lanes, findings) = JointPlanner.Lanes(Road with { Traffic = null }, Rules, Worked.Prices, JointSettings.Default);
        Assert.Contains(findings, f => f is { Code: "JNT-002", Level: FindingLevel.Warning });
        Assert.Equal(500, lanes[0].Conditions.TrucksPerDay);
    }

    [Fact]
    public void Optimum_pricing_and_take_off_agree_with_tied_ends()
    {
        var plan = Cut(Worked.Demand(1, 52, 55), Worked.Demand(1, 140, 143), Worked.Demand(1, 330, 334), Worked.Demand(1, 450, 480));
        Assert.Contains(plan.Repairs, r => r.Start.Design == JointDesign.Tied || r.End.Design == JointDesign.Tied);
        var lines = TakeOff.Measure(Road, plan.Repairs, [], Worked.Prices, Rules.Joints, new MeasurementSettings(null, 0, 0, 300)).Where(l => l.WorkId.Length > 0);
        Assert.InRange(lines.Sum(l => l.Amount) - plan.Cost, -0.1m, 0.1m);
        foreach (var repair in plan.Repairs)
        {
            Assert.NotEqual((JointDesign.Tied, JointDesign.Tied), (repair.Start.Design, repair.End.Design));
            Assert.Contains(new[] { repair.Start, repair.End }, j => j.Design != JointDesign.Tied);
        }
    }
}
