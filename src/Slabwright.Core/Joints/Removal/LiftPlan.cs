using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;

namespace Slabwright.Core.Joints.Removal;

/// <summary>A point on the road: along it and across the lane.</summary>
/// <param name="Along">Metres along the road.</param>
/// <param name="Offset">Metres from the lane's left edge in the direction of travel.</param>
public sealed record LanePoint(double Along, double Offset);

/// <summary>One piece lifted out. All pieces of a repair are alike.</summary>
/// <param name="Number">From 1, in the direction of travel, then from the left.</param>
/// <param name="From">Metres along the road.</param>
/// <param name="To">Metres along the road.</param>
/// <param name="LeftOffset">Left side, metres from the lane's left edge.</param>
/// <param name="RightOffset">Right side, metres from the lane's left edge.</param>
/// <param name="Pins">Lift pins, at about a fifth of the piece from its sides.</param>
/// <param name="Radius">Crane radius to the middle of the piece, m; null without a crane.</param>
public sealed record LiftPiece(
    int Number, double From, double To, double LeftOffset, double RightOffset, ImmutableArray<LanePoint> Pins, double? Radius);

/// <summary>The pull in a sling leg at one angle.</summary>
/// <param name="Angle">From the horizontal, rad.</param>
/// <param name="Leg">Pull in each leg that carries, N.</param>
/// <param name="Pin">Pull across each pin, sideways, N.</param>
public sealed record SlingRow(double Angle, double Leg, double Pin);

/// <summary>Forces on one piece of a repair: the heaviest case of its equal pieces. SI.</summary>
public sealed record LiftForces
{
    /// <summary>Mass of the piece, dry, by volume, kg.</summary>
    public required double Mass { get; init; }

    /// <summary>Mass with water, kg.</summary>
    public required double WetMass { get; init; }

    /// <summary>Weight with water, N.</summary>
    public required double Weight { get; init; }

    /// <summary>Allowance for bond and suction at the base, N.</summary>
    public required double BaseBond { get; init; }

    /// <summary>Allowance for friction at the sawn sides, N.</summary>
    public required double SideFriction { get; init; }

    /// <summary>Pull to break the piece loose: weight and both allowances, N.</summary>
    public required double BreakLoose { get; init; }

    /// <summary>Pull when it hangs and swings: weight with the dynamic factor, N.</summary>
    public required double Hanging { get; init; }

    /// <summary>The greater of the two: what slings and pins are chosen for, N.</summary>
    public required double Design { get; init; }

    /// <summary>What the hook carries, N: the design pull and the rigging's own weight.</summary>
    public required double HookLoad { get; init; }

    /// <summary>Legs taken to carry: two of four unless the load is shared by spreader or sheaves.</summary>
    public required int CarryingLegs { get; init; }

    /// <summary>Pull in a leg at the project's sling angle, N.</summary>
    public required double LegPull { get; init; }

    /// <summary>Strength an anchor or pin must have, N: its pull times the anchor factor.</summary>
    public required double PinStrength { get; init; }

    /// <summary>Strength slings, hooks and shackles must have, N: the leg's pull times the hardware factor.</summary>
    public required double GearStrength { get; init; }

    /// <summary>Hook above the slab, m, for the pins' spread and the sling angle.</summary>
    public required double HookHeight { get; init; }

    /// <summary>Length of each sling leg, m.</summary>
    public required double LegLength { get; init; }
}

/// <summary>Whether the crane can lift the piece that lies furthest from it.</summary>
/// <param name="Radius">Radius to the furthest piece, m.</param>
/// <param name="ChartCapacity">Capacity of the chart at that radius, kg; null beyond the chart.</param>
/// <param name="Allowed">Share of it the project allows, kg; null beyond the chart.</param>
/// <param name="HookMass">What the hook carries, kg.</param>
/// <param name="Margin">Allowed over carried, less one: above or at 0 the lift is within the chart; null beyond it.</param>
/// <param name="Stand">Where the crane turns.</param>
public sealed record CraneCheck(double Radius, double? ChartCapacity, double? Allowed, double HookMass, double? Margin, LanePoint Stand)
{
    /// <summary>True when the lift is within the chart.</summary>
    public bool Holds => Margin >= 0;
}

/// <summary>How one repair is lifted out.</summary>
public sealed record RepairLift
{
    /// <summary>The repair.</summary>
    public required string RepairId { get; init; }

    /// <summary>Lane number.</summary>
    public required int Lane { get; init; }

    /// <summary>Pieces along the repair.</summary>
    public required int Along { get; init; }

    /// <summary>Pieces across the lane.</summary>
    public required int Across { get; init; }

    /// <summary>Transverse lift cuts inside the repair, metres along the road.</summary>
    public required ImmutableArray<double> Cuts { get; init; }

    /// <summary>Lengthwise lift cuts, metres from the lane's left edge; empty where pieces have the full width.</summary>
    public required ImmutableArray<double> LongCuts { get; init; }

    /// <summary>The pieces.</summary>
    public required ImmutableArray<LiftPiece> Pieces { get; init; }

    /// <summary>Forces on one of them.</summary>
    public required LiftForces Forces { get; init; }

    /// <summary>Pull in the slings by angle, 90° to 30°.</summary>
    public required ImmutableArray<SlingRow> Slings { get; init; }

    /// <summary>The crane; null when the project gives no load chart.</summary>
    public required CraneCheck? Crane { get; init; }

    /// <summary>Every limit with its value: length, mass, pins, slings, crane.</summary>
    public required ImmutableArray<LimitCheck> Checks { get; init; }

    /// <summary>True when every limit holds.</summary>
    public bool Passes => Checks.All(c => c.Holds);

    /// <summary>Why the pieces are as they are.</summary>
    public required ImmutableArray<Reason> Reasons { get; init; }
}

/// <summary>What the lifting out hands on.</summary>
public sealed record LiftPlan
{
    /// <summary>Nothing to lift.</summary>
    public static LiftPlan Empty { get; } = new() { Repairs = [], Cautions = [], Findings = [] };

    /// <summary>One entry for each repair, in their order.</summary>
    public required ImmutableArray<RepairLift> Repairs { get; init; }

    /// <summary>What keeps people alive; printed wherever a lift is.</summary>
    public required ImmutableArray<CrewNote> Cautions { get; init; }

    /// <summary>What was wrong with inputs or could not be met.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }
}
