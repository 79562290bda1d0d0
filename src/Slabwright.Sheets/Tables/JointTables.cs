using System.Collections.Immutable;
using Slabwright.Core.Job;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Joints.Sealing;
using Slabwright.Core.Measures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Tables;

/// <summary>One alternative of one lane.</summary>
internal sealed record LaneAlternative(LaneJointDesign Lane, JointAlternative Alternative);

/// <summary>One piece of one repair.</summary>
internal sealed record RepairPiece(RepairLift Lift, LiftPiece Piece);

/// <summary>The tables of the joints: which rows, which fields. Files only differ in how they write them.</summary>
internal sealed class JointTables(Project project, RepairPlan plan)
{
    private readonly JobUnits units = JobUnits.Of(project.UnitSystem);
    private readonly Dictionary<(string Repair, double At), string> marks = JointLayouts.MarksOf(plan.Joints);

    public ImmutableArray<LaneAlternative> AlternativeRows => [.. plan.Joints.Lanes.SelectMany(l => l.Alternatives.Select(a => new LaneAlternative(l, a)))];

    public ImmutableArray<RepairPiece> PieceRows => [.. plan.Lifts.Repairs.SelectMany(r => r.Pieces.Select(p => new RepairPiece(r, p)))];

    public ImmutableArray<Field<DesignedJoint>> Joints() =>
    [
        Field<DesignedJoint>.Text("repair", j => j.RepairId),
        Field<DesignedJoint>.Text("position", j => JointWords.Of(j.Position)),
        Field<DesignedJoint>.Whole("lane", j => j.Lane),
        Field<DesignedJoint>.Text("station", j => Station(j.At)),
        Field<DesignedJoint>.Measure("at", units.Length, 4, j => j.At),
        Field<DesignedJoint>.Text("design", j => SheetWords.Of(j.Design)),
        Field<DesignedJoint>.Text("layout", j => marks.GetValueOrDefault((j.RepairId, j.At))),
        Field<DesignedJoint>.Whole("bars", j => j.Bars?.Bars ?? 0),
        Field<DesignedJoint>.Text("bar_kind", j => j.Bars is { } b ? b.Kind == BarKind.Dowel ? "dowel" : "tie bar" : null),
        Field<DesignedJoint>.Text("arrangement", j => j.Bars is { } b ? JointWords.Of(b.Arrangement) : null),
        Field<DesignedJoint>.Measure("diameter", units.Thickness, 4, j => j.Bars?.Diameter),
        Field<DesignedJoint>.Measure("length", units.Thickness, 3, j => j.Bars?.Length),
        Field<DesignedJoint>.Measure("embedment", units.Thickness, 3, j => j.Bars?.Embedment),
        Field<DesignedJoint>.Measure("centre_depth", units.Thickness, 3, j => j.Bars?.Depth),
        Field<DesignedJoint>.Measure("spacing", units.Thickness, 3, j => j.Bars?.Spacing),
        Field<DesignedJoint>.Text($"offsets_{units.Thickness.Symbol}", j => j.Bars is { } b ? string.Join("; ", b.Offsets.Select(o => JobUnits.Plain(units.Thickness.FromBase(o), 3))) : null),
        Field<DesignedJoint>.Text("anchor", j => j.Drilling?.Anchor),
        Field<DesignedJoint>.Measure("hole_diameter", units.Thickness, 4, j => j.Drilling?.HoleDiameter),
        Field<DesignedJoint>.Measure("hole_depth", units.Thickness, 3, j => j.Drilling?.HoleDepth),
        Field<DesignedJoint>.Whole("drill_set_ups", j => j.Drilling?.SetUps.Length),
    ];

    public ImmutableArray<Field<LaneAlternative>> Alternatives() =>
    [
        Field<LaneAlternative>.Whole("lane", r => r.Lane.Lane),
        Field<LaneAlternative>.Text("chosen", r => r.Alternative == r.Lane.Winner ? "yes" : "no"),
        Field<LaneAlternative>.Text("keeps_all_limits", r => r.Alternative.Passes ? "yes" : "no"),
        Field<LaneAlternative>.Whole("bars", r => r.Alternative.Layout?.Bars ?? 0),
        Field<LaneAlternative>.Text("arrangement", r => r.Alternative.Layout is { } b ? JointWords.Of(b.Arrangement) : null),
        Field<LaneAlternative>.Measure("diameter", units.Thickness, 4, r => r.Alternative.Layout?.Diameter),
        Field<LaneAlternative>.Measure("length", units.Thickness, 3, r => r.Alternative.Layout?.Length),
        Field<LaneAlternative>.Measure("bearing", units.Stress, 2, r => r.Alternative.Layout is null ? null : r.Alternative.Bearing),
        Field<LaneAlternative>.Measure("bearing_closed_reach_1_0", units.Stress, 2, r => r.Alternative.Layout is null ? null : r.Alternative.ClosedBearing.Reach10),
        Field<LaneAlternative>.Measure("bearing_closed_reach_1_8", units.Stress, 2, r => r.Alternative.Layout is null ? null : r.Alternative.ClosedBearing.Reach18),
        Field<LaneAlternative>.Number("deflection_transfer_percent", 2, r => r.Alternative.DeflectionTransfer * 100),
        Field<LaneAlternative>.Measure("deflection", units.Thickness, 5, r => r.Alternative.Deflection),
        Field<LaneAlternative>.Measure("stress", units.Stress, 3, r => r.Alternative.Stress),
        Field<LaneAlternative>.Measure("faulting", units.Thickness, 4, r => r.Alternative.Faulting),
        Field<LaneAlternative>.Number("fatigue_damage", 6, r => r.Alternative.Damage),
        Field<LaneAlternative>.Number("life_years", 2, r => double.IsFinite(r.Alternative.Life) ? r.Alternative.Life : null),
        Field<LaneAlternative>.Number($"cost_of_one_joint_{project.Prices.Currency}", 2, r => (double)r.Alternative.CostPerJoint),
        Field<LaneAlternative>.Text("governing_limit", r => CheckWords.Of(r.Alternative.Governing, units)),
        Field<LaneAlternative>.Number("share_used_percent", 1, r => double.IsFinite(r.Alternative.Governing.Use) ? r.Alternative.Governing.Use * 100 : null),
        Field<LaneAlternative>.Text("source_of_the_limit", r => r.Alternative.Governing.Source.ToString()),
    ];

    public ImmutableArray<Field<RepairPiece>> Pieces() =>
    [
        Field<RepairPiece>.Text("repair", p => p.Lift.RepairId),
        Field<RepairPiece>.Whole("lane", p => p.Lift.Lane),
        Field<RepairPiece>.Whole("piece", p => p.Piece.Number),
        Field<RepairPiece>.Text("from_station", p => Station(p.Piece.From)),
        Field<RepairPiece>.Text("to_station", p => Station(p.Piece.To)),
        Field<RepairPiece>.Measure("length", units.Length, 3, p => p.Piece.To - p.Piece.From),
        Field<RepairPiece>.Measure("left_offset", units.Length, 3, p => p.Piece.LeftOffset),
        Field<RepairPiece>.Measure("right_offset", units.Length, 3, p => p.Piece.RightOffset),
        Field<RepairPiece>.Measure("mass", units.Mass, 3, p => p.Lift.Forces.Mass),
        Field<RepairPiece>.Measure("mass_with_water", units.Mass, 3, p => p.Lift.Forces.WetMass),
        Field<RepairPiece>.Measure("hook_load", units.Force, 2, p => p.Lift.Forces.HookLoad),
        Field<RepairPiece>.Measure("leg_pull", units.Force, 2, p => p.Lift.Forces.LegPull),
        Field<RepairPiece>.Measure("pin_strength_needed", units.Force, 2, p => p.Lift.Forces.PinStrength),
        Field<RepairPiece>.Measure("gear_strength_needed", units.Force, 2, p => p.Lift.Forces.GearStrength),
        Field<RepairPiece>.Measure("radius", units.Length, 2, p => p.Piece.Radius),
        Field<RepairPiece>.Text("within_the_load_chart", p => p.Lift.Crane is { } c ? c.Holds ? "yes" : "no" : null),
        Field<RepairPiece>.Text($"pins_from_first_cut_and_left_edge_{units.Length.Symbol}", p => string.Join("; ", p.Piece.Pins.Select(pin =>
            $"{JobUnits.Plain(units.Length.FromBase(pin.Along - p.Lift.Pieces[0].From), 2)} {JobUnits.Plain(units.Length.FromBase(pin.Offset), 2)}"))),
    ];

    public ImmutableArray<Field<SealedJoint>> Seals() =>
    [
        Field<SealedJoint>.Text("repair", j => j.RepairId),
        Field<SealedJoint>.Text("position", j => JointWords.Of(j.Position)),
        Field<SealedJoint>.Whole("lane", j => j.Lane),
        Field<SealedJoint>.Text("station", j => Station(j.At)),
        Field<SealedJoint>.Text("works", j => j.Works ? "yes" : "no"),
        Field<SealedJoint>.Measure("old_concrete_moving", units.Length, 3, j => j.OldLength),
        Field<SealedJoint>.Measure("new_concrete_moving", units.Length, 3, j => j.NewLength),
        Field<SealedJoint>.Measure("shrinkage", units.Thickness, 4, j => j.Shrinkage),
        Field<SealedJoint>.Measure("movement", units.Thickness, 4, j => j.Movement),
        Field<SealedJoint>.Text("seal", j => j.Reservoir >= 0 ? SealWords.MarkOf(j.Reservoir) : null),
        Field<SealedJoint>.Text("sealant", j => Of(j) is { } r ? SealWords.Of(r.Family.Kind) : null),
        Field<SealedJoint>.Measure("saw_width", units.Thickness, 4, j => Of(j)?.Chosen?.Width),
        Field<SealedJoint>.Measure("saw_depth", units.Thickness, 4, j => Of(j)?.Chosen?.SawDepth),
        Field<SealedJoint>.Measure("seal_depth", units.Thickness, 4, j => Of(j)?.Chosen?.SealDepth),
        Field<SealedJoint>.Measure("seal_width_before", units.Thickness, 4, j => Of(j)?.Chosen?.SealSize),
        Field<SealedJoint>.Measure("rod", units.Thickness, 4, j => Of(j)?.Chosen?.Rod),
        Field<SealedJoint>.Measure("recess", units.Thickness, 4, j => Of(j) is { Chosen: not null } r ? r.Recess : null),
        Field<SealedJoint>.Measure("slab_temperature", new Unit(units.Temperature == Units.Fahrenheit ? "degF" : "degC", Dimension.Temperature, units.Temperature.Factor, units.Temperature.Offset), 1, j => Of(j)?.DesignTemperature),
    ];

    private Reservoir? Of(SealedJoint joint) => joint.Reservoir >= 0 ? plan.Seals.Reservoirs[joint.Reservoir] : null;

    private string Station(double at) => project.Road.Stationing.Format(at);
}
