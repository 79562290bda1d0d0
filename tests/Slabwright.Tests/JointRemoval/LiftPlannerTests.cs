using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.Quantities;
using Slabwright.Tests.Boundaries;
using Slabwright.Tests.JointSealing;

namespace Slabwright.Tests.JointRemoval;

/// <summary>Lift pieces, their pulls and the crane.</summary>
public sealed class LiftPlannerTests
{
    private const double Foot = Worked.Foot;
    private static readonly Road TwoLanes = Worked.Road(
        Worked.Lane(1, 600, JointKind.Dowelled, Worked.Every(20, 600)), Worked.Lane(2, 600, JointKind.Dowelled, Worked.Every(20, 600)));

    private static readonly CraneSetting Crane = new()
    {
        Name = "invented 25 t truck crane",
        Chart = [new(3, 12_000), new(4, 9_000), new(6, 5_500), new(8, 3_600), new(10, 2_500)],
    };

    private static Repair Repair(double from, double to, double thickness = 0.25) => SealPlannerTests.Repair(from, to, thickness: thickness);

    private static RepairLift One(LiftingSettings settings, double from = 62, double to = 74, double thickness = 0.25) =>
        Assert.Single(LiftPlanner.For(TwoLanes, [Repair(from, to, thickness)], settings).Repairs);

    [Fact]
    public void Twelve_feet_come_out_in_two_pieces_that_tile_the_repair()
    {
        var lift = One(LiftingSettings.Default);
        Assert.Equal((2, 1), (lift.Along, lift.Across));
        Assert.Equal([68.0], lift.Cuts.Select(c => Math.Round(c / Foot, 6)));
        Assert.Equal(12 * 12 * Foot * Foot, lift.Pieces.Sum(p => (p.To - p.From) * (p.RightOffset - p.LeftOffset)), 1e-9);
        Assert.All(lift.Pieces, p => Assert.Equal(4, p.Pins.Length));
        Assert.All(lift.Pieces, p => Assert.All(p.Pins, pin => Assert.True(pin.Along > p.From && pin.Along < p.To && pin.Offset > p.LeftOffset && pin.Offset < p.RightOffset)));
    }

    [Fact]
    public void Forces_are_the_sum_of_what_they_are_made_of()
    {
        // 6 × 12 ft, 0.25 m: 1.8288 × 3.6576 × 0.25 × 2402.8 = 4018.1 kg; 3 % water; 1 kPa below and at the sides.
        var forces = One(LiftingSettings.Default).Forces;
        Assert.Equal(4018.1, forces.Mass, 0.1);
        Assert.Equal(4018.1 * 1.03 * 9.80665, forces.Weight, 1.0);
        Assert.Equal(1000 * 1.8288 * 3.6576, forces.BaseBond, 1e-6);
        Assert.Equal(1000 * 2 * (1.8288 + 3.6576) * 0.25, forces.SideFriction, 1e-6);
        Assert.Equal(forces.Weight + forces.BaseBond + forces.SideFriction, forces.BreakLoose, 1e-6);
        Assert.Equal(Math.Max(forces.BreakLoose, 1.3 * forces.Weight), forces.Design, 1e-6);
        Assert.Equal(2, forces.CarryingLegs);
        Assert.Equal(forces.Design / (2 * Math.Sin(Math.PI / 3)), forces.LegPull, 1e-6);
        Assert.Equal(4 * forces.LegPull, forces.PinStrength, 1e-6);
        Assert.Equal(5 * forces.LegPull, forces.GearStrength, 1e-6);
    }

    [Fact]
    public void A_spreader_lets_all_legs_carry_and_flat_slings_are_refused()
    {
        Assert.Equal(4, One(LiftingSettings.Default with { Equalised = true }).Forces.CarryingLegs);
        Assert.Equal([90.0, 75, 60, 45, 30], One(LiftingSettings.Default).Slings.Select(s => Math.Round(s.Angle * 180 / Math.PI, 6)));
        var flat = LiftPlanner.For(TwoLanes, [Repair(62, 74)], LiftingSettings.Default with { SlingAngle = 29 * Math.PI / 180 });
        Assert.Empty(flat.Repairs);
        Assert.Contains(flat.Findings, f => f is { Code: "JNT-060", Level: FindingLevel.Error });
    }

    [Fact]
    public void A_crane_that_cannot_take_the_pieces_gets_more_and_smaller_ones()
    {
        Assert.Equal(2, One(LiftingSettings.Default with { Crane = Crane }).Pieces.Length);
        var lift = One(LiftingSettings.Default with { Crane = Crane with { Share = new(0.5, SourceRef.Project) } });
        Assert.True(lift.Passes);
        Assert.True(lift.Pieces.Length > 2);
        Assert.True(lift.Crane!.Holds);
        // Beside the lane's middle: 12 ft across, and half the spread of the pieces' middles along.
        var along = (12 * Foot - 12 * Foot / lift.Along) / 2;
        Assert.Equal(Math.Sqrt(Math.Pow(12 * Foot + (lift.Across - 1) * 6 * Foot / lift.Across, 2) + along * along), lift.Crane.Radius, 1e-9);
        Assert.Equal(lift.Forces.HookLoad / 9.80665, lift.Crane.HookMass, 1e-9);
        Assert.Equal(0.5 * lift.Crane.ChartCapacity!.Value / lift.Crane.HookMass - 1, lift.Crane.Margin!.Value, 1e-9);
    }

    [Fact]
    public void Thicker_concrete_never_comes_out_in_fewer_pieces()
    {
        var settings = LiftingSettings.Default with { Crane = Crane };
        var pieces = new[] { 0.15, 0.20, 0.25, 0.30, 0.35 }.Select(t => One(settings, thickness: t).Pieces.Length).ToArray();
        Assert.Equal(pieces.Order(), pieces);
        Assert.True(pieces[0] < pieces[^1]);
    }

    [Fact]
    public void A_crane_too_small_for_any_piece_is_an_error_that_names_the_repair()
    {
        var small = Crane with { Chart = [new(3, 900), new(12, 300)] };
        var plan = LiftPlanner.For(TwoLanes, [Repair(62, 74)], LiftingSettings.Default with { Crane = small });
        Assert.Contains(plan.Findings, f => f.Code == "JNT-062" && f.Sentence.Contains("R1", StringComparison.Ordinal));
        var near = Crane with { Chart = [new(2, 9000), new(3, 8000)] };
        Assert.Null(LiftPlanner.For(TwoLanes, [Repair(62, 74)], LiftingSettings.Default with { Crane = near }).Repairs[0].Crane!.ChartCapacity);
    }

    [Fact]
    public void The_chart_is_read_at_the_next_radius_or_on_the_line_and_never_beyond()
    {
        Assert.Equal(5_500, LiftMechanics.ChartCapacity(Crane.Chart, 4.5, ChartReading.NextRow));
        Assert.Equal(9_000 - 0.25 * 3_500, LiftMechanics.ChartCapacity(Crane.Chart, 4.5, ChartReading.StraightLine));
        Assert.Equal(12_000, LiftMechanics.ChartCapacity(Crane.Chart, 1, ChartReading.StraightLine));
        Assert.Equal(2_500, LiftMechanics.ChartCapacity(Crane.Chart, 10, ChartReading.NextRow));
        Assert.Null(LiftMechanics.ChartCapacity(Crane.Chart, 10.01, ChartReading.StraightLine));
    }

    [Fact]
    public void Bad_settings_get_findings()
    {
        Assert.Contains(Findings(LiftingSettings.Default with { Crane = Crane with { Chart = [new(4, 100), new(3, 200)] } }), f => f.Code == "JNT-061");
        Assert.Contains(Findings(LiftingSettings.Default), f => f.Code == "JNT-063");
        Assert.Contains(Findings(LiftingSettings.Default with { Legs = 3 }), f => f.Code == "JNT-065");
        Assert.Contains(Findings(LiftingSettings.Default with { LongestPiece = new(0, SourceRef.Project) }), f => f.Code == "JNT-066");

        static IEnumerable<Finding> Findings(LiftingSettings settings) => LiftPlanner.For(TwoLanes, [Repair(62, 74)], settings).Findings;
    }

    [Fact]
    public void The_take_off_pays_for_the_cuts_the_crane_asks_for()
    {
        foreach (var settings in new[] { LiftingSettings.Default, LiftingSettings.Default with { Crane = Crane with { Share = new(0.4, SourceRef.Project) } } })
        {
            var lift = One(settings);
            var paid = TakeOff.Measure(
                TwoLanes, [Repair(62, 74)], [], Worked.Prices, Worked.Joints, new MeasurementSettings { Lifting = settings })
                .Single(l => l.ItemCode == nameof(PayRole.InternalSawCut)).Measured;
            Assert.Equal(lift.Cuts.Length * 12.0 + lift.LongCuts.Length * 12.0, paid, 1e-6);
        }
    }
}
