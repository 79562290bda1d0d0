using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints;
using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Pavement;
using Slabwright.Tests.Boundaries;
using Slabwright.Tests.JointSealing;

namespace Slabwright.Tests.JointRemoval;

/// <summary>Compression, closing kerfs and relief cuts.</summary>
public sealed class PressurePlannerTests
{
    private const double Foot = Worked.Foot;
    private const double Inch = 0.0254;
    private const double Psi = 6894.757293168361;
    private static readonly Road Long = Worked.Road(Worked.Lane(1, 6000, JointKind.Dowelled, Worked.Every(20, 6000)));

    private static readonly PressureSettings Hot = new()
    {
        ClosedAt = 20,
        Hours = [.. Enumerable.Range(0, 24).Select(h => new HourTemperature(h, 28 - 14 * Math.Cos((h - 3) * Math.PI / 12)))],
    };

    private static RepairPressure One(PressureSettings settings, double from, double to, Road? road = null)
    {
        Repair[] repairs = [SealPlannerTests.Repair(from, to)];
        var lifts = LiftPlanner.For(road ?? Long, repairs, LiftingSettings.Default);
        return Assert.Single(PressurePlanner.For(road ?? Long, repairs, settings, lifts).Repairs);
    }

    /// <summary>Elementary: 4e6 psi, 5.5e-6 per °F, 60 °F give 1320 psi, which friction 1.5 builds up in 845 ft; 50 ft set free close a kerf by 0.198 in.</summary>
    [Fact]
    public void The_elementary_figures_come_out()
    {
        var stress = 4e6 * Psi * 9.9e-6 * 60 / 1.8;
        Assert.Equal(1320, stress / Psi, 0.5);
        Assert.Equal(845, SlabBuckling.BuildUpLength(stress, 150 * 16.018463, 1.5) / Foot, 0.5);
        var bothSides = 2 * PressureMechanics.FaceMovement(stress, 4e6 * Psi, 50 * Foot, double.PositiveInfinity);
        Assert.Equal(0.198, bothSides / Inch, 0.0005);
    }

    /// <summary>The closed form against the released strain added up in small steps.</summary>
    [Theory]
    [InlineData(10)]
    [InlineData(45)]
    [InlineData(70)]
    [InlineData(99)]
    [InlineData(400)]
    public void Face_movement_is_the_released_strain(double toFreeEnd)
    {
        const double stress = 8e6, modulus = 28e9, buildUp = 50;
        var sum = 0.0;
        const int steps = 100_000;
        for (var i = 0; i < steps; i++)
        {
            var s = (i + 0.5) * toFreeEnd / steps;
            var before = Math.Min(stress, stress / buildUp * s);
            var after = Math.Min(before, stress / buildUp * Math.Min(s, toFreeEnd - s));
            sum += (before - after) / modulus * toFreeEnd / steps;
        }

        Assert.Equal(1, PressureMechanics.FaceMovement(stress, modulus, buildUp, toFreeEnd) / sum, 1e-6);
    }

    [Fact]
    public void Sawing_binds_in_the_hot_hours_and_not_below_the_temperature_stated()
    {
        var pressure = One(Hot, 3002, 3014);
        Assert.True(pressure.ReliefNeeded);
        Assert.All(pressure.Hours, h => Assert.Equal(h.Temperature > pressure.BindsAbove, h.Binds));
        Assert.Contains(pressure.Hours, h => h.Binds);
        Assert.Contains(pressure.Hours, h => !h.Binds);
        // Both sides unload 50 ft at most: α L ΔT = 3/64 in of play, so ΔT = 0.0469 in / (9.9e-6 · 600 in) = 7.89 K.
        Assert.Equal(20 + 3.0 / 64 / (9.9e-6 * 600), pressure.BindsAbove!.Value, 0.01);
    }

    [Fact]
    public void A_crew_that_saws_only_in_the_cool_hours_needs_no_relief()
    {
        Assert.False(One(Hot with { SawFrom = 22, SawTo = 7 }, 3002, 3014).ReliefNeeded);
        Assert.True(PressurePlanner.Saws(23, Hot with { SawFrom = 22, SawTo = 7 }));
        Assert.False(PressurePlanner.Saws(12, Hot with { SawFrom = 22, SawTo = 7 }));
    }

    [Fact]
    public void The_relief_cut_takes_the_place_of_a_lift_cut_where_one_lies_well_inside()
    {
        var cut = Assert.Single(One(Hot, 3002, 3014).Reliefs);
        Assert.True(cut.AtLiftCut);
        Assert.Equal(3008, cut.At / Foot, 1e-6);
        Assert.Equal(0.25 + Inch / 2, cut.Depth, 1e-9);
    }

    [Fact]
    public void Else_it_stands_eighteen_inches_inside_and_in_the_middle_of_a_short_repair()
    {
        var usual = Assert.Single(One(Hot, 3002, 3008).Reliefs);
        Assert.Equal(18, Math.Min(usual.ToStart, usual.ToEnd) / Inch, 1e-6);
        Assert.False(usual.AtLiftCut);
        var small = Assert.Single(One(Hot, 3002, 3004).Reliefs);
        Assert.Equal(3003, small.At / Foot, 1e-6);
    }

    [Fact]
    public void Both_boundaries_of_a_long_repair_are_free_with_their_relief_cuts()
    {
        var pressure = One(Hot, 3002, 3062);
        Assert.Equal(2, pressure.Reliefs.Length);
        Assert.All(pressure.Reliefs, r => Assert.True(r.ToStart >= 18 * Inch - 1e-9 && r.ToEnd >= 18 * Inch - 1e-9));
        Assert.DoesNotContain(pressure.Hours, h => h.BindsAfterRelief);
        Assert.All(pressure.Checks, c => Assert.True(c.Holds));
    }

    [Fact]
    public void A_repair_too_short_for_a_relief_cut_is_an_error()
    {
        Repair[] repairs = [SealPlannerTests.Repair(3002, 3003)];
        var plan = PressurePlanner.For(Long, repairs, Hot, LiftPlan.Empty);
        Assert.Contains(plan.Findings, f => f is { Code: "JNT-076", Level: FindingLevel.Error });
        Assert.Empty(plan.Repairs[0].Reliefs);
    }

    [Fact]
    public void A_free_end_near_by_takes_pressure_off()
    {
        var far = One(Hot, 3002, 3014);
        var near = One(Hot, 10, 22);
        Assert.True(near.Hours.Max(h => h.Closure) < far.Hours.Max(h => h.Closure));
        Assert.Equal(10, near.UnloadsBehind / Foot, 1e-6);
    }

    [Fact]
    public void Temperatures_by_hour_can_come_from_elsewhere()
    {
        Repair[] repairs = [SealPlannerTests.Repair(3002, 3014)];
        var cool = PressurePlanner.For(Long, repairs, Hot, LiftPlan.Empty, hours: [new(1, 10), new(2, 12)]);
        Assert.False(cool.Repairs[0].ReliefNeeded);
        Assert.Equal(2, cool.Hours.Length);
    }

    [Fact]
    public void Bad_settings_get_findings()
    {
        Assert.Contains(Findings(Hot with { Modulus = new(0, SourceRef.Project) }), f => f.Code == "JNT-070");
        Assert.Contains(Findings(Hot with { Kerf = new(0.001, SourceRef.Project) }), f => f.Code == "JNT-071");
        Assert.Contains(Findings(Hot with { Hours = [new(3, 20), new(3, 21)] }), f => f.Code == "JNT-072");
        Assert.Equal(["JNT-073", "JNT-074"], Findings(PressureSettings.Default).Where(f => f.Level == FindingLevel.Note).Select(f => f.Code));

        static IEnumerable<Finding> Findings(PressureSettings settings) =>
            PressurePlanner.For(Long, [SealPlannerTests.Repair(3002, 3014)], settings, LiftPlan.Empty).Findings;
    }
}
