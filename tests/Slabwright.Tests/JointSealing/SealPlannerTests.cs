using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Sealing;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Treatments;
using Slabwright.Tests.Boundaries;

namespace Slabwright.Tests.JointSealing;

/// <summary>Movement of repair joints and the reservoirs that follow it.</summary>
public sealed class SealPlannerTests
{
    private const double Foot = Worked.Foot;
    private const double Inch = 0.0254;
    private static readonly Road TwentyFeet = Worked.Road(Worked.Lane(1, 600, JointKind.Dowelled, Worked.Every(20, 600)));

    private static readonly SealingSettings Winter = new()
    {
        Coldest = -10, Hottest = 40, SealFrom = new(10, SourceRef.Project), SealTo = new(30, SourceRef.Project),
    };

    internal static Repair Repair(double from, double to, JointDesign start = JointDesign.Dowelled, string id = "R1", double thickness = 0.25) => new()
    {
        Id = id, Lane = 1, From = from * Foot, To = to * Foot, Width = 12 * Foot, Thickness = thickness, Kind = Treatment.FullDepthRepair,
        Start = new(from * Foot, start, false, 11), End = new(to * Foot, JointDesign.Dowelled, false, 11),
        LeftFace = [new(from * Foot, to * Foot, LongitudinalFace.Formed, false)],
        RightFace = [new(from * Foot, to * Foot, LongitudinalFace.Formed, false)], DistressIds = ["D1"], Reasons = [],
    };

    [Fact]
    public void Half_of_each_neighbour_moves_at_a_joint()
    {
        var plan = SealPlanner.For(TwentyFeet, [Repair(66, 72)], Winter);
        Assert.Equal([(3.0, 3.0), (4.0, 3.0)], plan.Joints.Select(j => (Feet(j.OldLength), Feet(j.NewLength))));
        Assert.Equal(0.80 * 7 * Foot * 9.9e-6, plan.Joints[1].PerKelvin, 1e-12);
        Assert.Equal(0.80 * (4 * Foot * 1e-4 + 3 * Foot * 4.5e-4), plan.Joints[1].Shrinkage, 1e-12);
        Assert.Equal(plan.Joints[1].PerKelvin * 50 + plan.Joints[1].Shrinkage, plan.Joints[1].Movement, 1e-12);
    }

    [Fact]
    public void A_tied_joint_hands_its_movement_to_the_next_working_joints()
    {
        var plan = SealPlanner.For(TwentyFeet, [Repair(66, 72, JointDesign.Tied)], Winter);
        Assert.False(plan.Joints[0].Works);
        Assert.Equal(0, plan.Joints[0].Movement);
        Assert.Equal((3.0 + 4.0, 3.0), (Feet(plan.Joints[1].OldLength), Feet(plan.Joints[1].NewLength)));
    }

    [Fact]
    public void Joints_taken_out_by_a_repair_no_longer_part_the_slabs()
    {
        // 59 to 76 takes out the joints at 60; 40 to 59 is left behind, 76 to 80 ahead.
        var plan = SealPlanner.For(TwentyFeet, [Repair(59, 76)], Winter);
        Assert.Equal([(9.5, 8.5), (2.0, 8.5)], plan.Joints.Select(j => (Feet(j.OldLength), Feet(j.NewLength))));
    }

    [Fact]
    public void The_narrowest_step_that_holds_is_chosen_and_every_narrower_one_breaks_a_limit()
    {
        var reservoir = Assert.Single(SealPlanner.For(TwentyFeet, [Repair(66, 72)], Winter).Reservoirs);
        var chosen = reservoir.Chosen!;
        Assert.True(chosen.Passes);
        Assert.All(reservoir.Alternatives.Where(a => a.Width < chosen.Width - 1e-9), a => Assert.False(a.Passes));
        Assert.Equal(Math.Round(chosen.Width / (Inch / 16)), chosen.Width / (Inch / 16), 9);
        Assert.True(chosen.SawDepth >= 2 * Inch - 1e-9);
        var travel = reservoir.Governing;
        Assert.Equal(chosen.Width + travel.PerKelvin * 40 + travel.Shrinkage, chosen.WidestOpening, 1e-12);
        Assert.Equal(chosen.Width - travel.PerKelvin * 30, chosen.NarrowestOpening, 1e-12);
    }

    [Fact]
    public void The_width_of_the_surrounding_joints_is_kept_where_it_holds()
    {
        var same = SealPlanner.For(TwentyFeet, [Repair(66, 72)], Winter with { SurroundingWidth = 0.75 * Inch });
        Assert.Equal(0.75 * Inch, same.Reservoirs[0].Chosen!.Width, 1e-9);
        Assert.True(same.Reservoirs[0].MatchesSurrounding);
        var other = SealPlanner.For(TwentyFeet, [Repair(66, 72)], Winter with { SurroundingWidth = 0.0625 * Inch });
        Assert.False(other.Reservoirs[0].MatchesSurrounding);
        Assert.Contains(other.Findings, f => f.Code == "JNT-044");
    }

    [Theory]
    [InlineData(UnitSystem.UsCustomary)]
    [InlineData(UnitSystem.Si)]
    public void The_table_goes_by_round_temperatures_and_says_where_the_chosen_width_holds(UnitSystem units)
    {
        var reservoir = SealPlanner.For(TwentyFeet, [Repair(66, 72)], Winter, units).Reservoirs[0];
        var (unit, step) = units == UnitSystem.Si ? (Units.Celsius, 5) : (Units.Fahrenheit, 10);
        Assert.All(reservoir.Table, r => Assert.Equal(0, unit.FromBase(r.SlabTemperature) % step, 6));
        Assert.All(reservoir.Table.Where(r => r.SlabTemperature is >= 10 and <= 30), r => Assert.True(r.Holds));
        Assert.True(reservoir.Table.Zip(reservoir.Table.Skip(1)).All(p => p.First.JointWidth > p.Second.JointWidth && p.First.ColdStrain < p.Second.ColdStrain));
    }

    [Fact]
    public void Where_no_reservoir_follows_the_movement_a_finding_says_so()
    {
        var road = Worked.Road(Worked.Lane(1, 600, JointKind.Dowelled, [200, 400]));
        var plan = SealPlanner.For(road, [Repair(250, 260)], Winter with { Sealant = SealantFamilies.HotPour });
        Assert.Null(plan.Reservoirs[0].Chosen);
        Assert.Empty(plan.Reservoirs[0].Table);
        Assert.Contains(plan.Findings, f => f is { Code: "JNT-043", Level: FindingLevel.Error, Mend.Length: > 0 });
    }

    [Fact]
    public void Bad_temperatures_get_findings()
    {
        Assert.Contains(SealPlanner.For(TwentyFeet, [Repair(66, 72)], Winter with { Coldest = 45 }).Findings, f => f.Code == "JNT-040");
        Assert.Contains(SealPlanner.For(TwentyFeet, [Repair(66, 72)], SealingSettings.Default).Findings, f => f.Code == "JNT-041");
        Assert.Contains(SealPlanner.For(TwentyFeet, [Repair(66, 72)], Winter with { SealFrom = new(35, SourceRef.Project) }).Findings, f => f.Code == "JNT-042");
        Assert.Contains(
            SealPlanner.For(TwentyFeet, [Repair(66, 72)], Winter with { Sealant = SealantFamilies.PreformedCompression, SealSizes = new([0.03, 0.02], SourceRef.Project) }).Findings,
            f => f.Code == "JNT-047");
    }

    /// <summary>The bead keeps its area: what its two curved faces draw in is what the joint widens by, and their length is that of the curve walked in small steps.</summary>
    [Theory]
    [InlineData(0.5, 0.25, 0.1)]
    [InlineData(0.375, 0.375, 0.2)]
    [InlineData(1.0, 0.5, 0.4)]
    public void A_bead_keeps_its_area_and_its_face_is_a_parabola(double width, double depth, double opening)
    {
        var sag = SealMechanics.Sag(width, depth, opening);
        const int steps = 20_000;
        var (chord, area, length) = (width + opening, 0.0, 0.0);
        for (var i = 0; i < steps; i++)
        {
            var (x0, x1) = (i * chord / steps, (i + 1) * chord / steps);
            area += (Depth(x0) + Depth(x1)) / 2 * chord / steps;
            length += Math.Sqrt(Math.Pow(x1 - x0, 2) + Math.Pow((Depth(x1) - Depth(x0)) / 2, 2));
        }

        Assert.Equal(width * depth, area, 1e-6);
        Assert.Equal(length / width - 1, SealMechanics.SurfaceStrain(width, depth, opening), 1e-6);

        double Depth(double x) => depth - 2 * sag * 4 * x * (chord - x) / (chord * chord);
    }

    private static double Feet(double metres) => Math.Round(metres / Foot, 6);
}
