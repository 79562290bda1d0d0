using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Joints.Sealing;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.SystemTests.Sheets;

/// <summary>Seals, lifts and pressure written by hand for the hand-made plan: round figures, not designs.</summary>
internal static class HandMadeRemoval
{
    private static readonly UnitPair Small = new(Units.Inch, Units.Millimetre);
    private static readonly UnitPair Heavy = new(Units.ShortTon, Units.Tonne);
    private static readonly SourceRef Practice = SourceRef.CommonPractice;

    public static SealPlan Seals(Project project, JointPlan joints)
    {
        if (joints.Joints.IsEmpty) return SealPlan.Empty;
        var lanes = joints.Joints.Select(j => j.Lane).Distinct().Order().ToList();
        var sealed_ = joints.Joints.Select(j => Sealed(j, lanes.IndexOf(j.Lane))).ToImmutableArray();
        return new SealPlan
        {
            Joints = sealed_,
            Reservoirs = [.. lanes.Select(lane => Reservoir(project, lane, sealed_.First(j => j.Lane == lane), sealed_.Count(j => j.Lane == lane)))],
            Notes = [new CrewNote("faces", "Both faces sawn, blasted and dry; seal on the day they are cleaned.", Practice), new CrewNote("rod", "Rod at an even depth, not stretched, not pierced.", Practice)],
            Findings = [],
        };
    }

    private static SealedJoint Sealed(DesignedJoint j, int reservoir) => new()
    {
        RepairId = j.RepairId, Lane = j.Lane, Position = j.Position, At = j.At, Works = j.Design != JointDesign.Tied, OldLength = 5.5, NewLength = 1.8288,
        PerKelvin = 2.9e-5, Shrinkage = 0.0005, Movement = 0.0028, Reservoir = j.Design == JointDesign.Tied ? -1 : reservoir,
    };

    private static Reservoir Reservoir(Project project, int lane, SealedJoint governing, int joints)
    {
        var isPreformed = lane == 2;
        var family = SealantFamilies.Of(isPreformed ? SealantKind.PreformedCompression : SealantKind.Silicone);
        return new Reservoir
        {
            Lane = lane, From = 0, To = project.Road.Length, Thickness = 0.254, Base = BaseKind.Granular, Family = family, Governing = governing, Joints = joints,
            Alternatives = [], Chosen = lane == 4 ? null : Chosen(isPreformed), DesignTemperature = 15, Recess = 0.00635, MatchesSurrounding = true,
            Table = lane == 4 ? [] : [.. Enumerable.Range(0, 7).Select(i => Row(i, isPreformed))],
            Reasons = [new Reason("movement", "The joint that moves most governs.", Practice, [])],
        };
    }

    private static ReservoirAlternative Chosen(bool isPreformed) => new()
    {
        Width = 0.009525, SealDepth = isPreformed ? 0.02 : 0.00635, SawDepth = isPreformed ? 0.0381 : 0.0254, SealSize = isPreformed ? 0.0175 : null, Rod = isPreformed ? null : 0.0127,
        ShapeFactor = isPreformed ? null : 0.67, WidestOpening = 0.0114, NarrowestOpening = 0.0083, SurfaceStrain = isPreformed ? null : 0.31,
        Checks = [new LimitCheck("widening at the coldest", 0.00187, 0.0095, LimitSense.AtMost, Small, Practice), new LimitCheck("width, least", 0.009525, 0.00635, LimitSense.AtLeast, Small, Practice)],
    };

    private static InstallationRow Row(int i, bool isPreformed) => new(
        -5 + i * 5.0, i == 6 ? null : 0.0079375 + i * 0.0003, 0.0105 - i * 0.0003, isPreformed ? 0.3 + i * 0.04 : null, isPreformed ? null : 0.05 + i * 0.04, isPreformed ? null : 0.3 - i * 0.04, i < 5);

    public static LiftPlan Lifts(Project project, ImmutableArray<Repair> repairs) => new()
    {
        Repairs = [.. repairs.Select((r, i) => Lift(r, i))],
        Cautions = repairs.IsEmpty ? [] : [new CrewNote("straight up", "Lift straight up; a swinging piece breaks the edges that stay.", Practice), new CrewNote("people", "Nobody under or beside the piece.", Practice)],
        Findings = [],
    };

    private static RepairLift Lift(Repair r, int index)
    {
        var along = Math.Max(1, (int)Math.Ceiling(r.Length / 1.8289));
        var across = index % 6 == 5 ? 2 : 1;
        var (length, width) = (r.Length / along, r.Width / across);
        ImmutableArray<LiftPiece> pieces = [.. Enumerable.Range(0, along * across).Select(n => Piece(r, n, across, length, width))];
        var mass = length * width * r.Thickness * 2402.8;
        return new RepairLift
        {
            RepairId = r.Id, Lane = r.Lane, Along = along, Across = across, Cuts = [.. Enumerable.Range(1, along - 1).Select(i => r.From + i * length)], LongCuts = across == 2 ? [width] : [],
            Pieces = pieces, Forces = Forces(mass, width), Slings = [.. new[] { 90, 75, 60, 45, 30 }.Select(a => new SlingRow(Units.Degree.ToBase(a), mass * 12 / (2 * Math.Sin(Units.Degree.ToBase(a))), mass))],
            Crane = index % 3 == 0 ? null : new CraneCheck(9, index % 4 == 1 ? null : 9000, index % 4 == 1 ? null : 6750, mass * 1.2, index % 4 == 1 ? null : 6750 / (mass * 1.2) - 1, new LanePoint(r.From, -2)),
            Checks = [new LimitCheck("mass of a piece", mass, 6000, LimitSense.AtMost, Heavy, Practice)],
            Reasons = [],
        };
    }

    private static LiftPiece Piece(Repair r, int n, int across, double length, double width)
    {
        var (start, left) = (r.From + n / across * length, n % across * width);
        return new LiftPiece(n + 1, start, start + length, left, left + width,
            [.. from a in new[] { 0.2, 0.8 } from b in new[] { 0.2, 0.8 } select new LanePoint(start + a * length, left + b * width)], 8.5);
    }

    private static LiftForces Forces(double mass, double width)
    {
        var weight = mass * 1.03 * 9.80665;
        var spread = width * 0.3;
        return new LiftForces
        {
            Mass = mass, WetMass = mass * 1.03, Weight = weight, BaseBond = 6000, SideFriction = 2500, BreakLoose = weight + 8500, Hanging = weight * 1.3, Design = weight * 1.3, HookLoad = weight * 1.3 + 2450,
            CarryingLegs = 2, LegPull = weight * 1.3 / (2 * Math.Sin(Math.PI / 3)), PinStrength = weight * 2.6, GearStrength = weight * 3.75, HookHeight = spread * Math.Sqrt(3), LegLength = spread * 2,
        };
    }

    public static PressurePlan Pressure(ImmutableArray<Repair> repairs, LiftPlan lifts)
    {
        ImmutableArray<HourTemperature> hours = [.. Enumerable.Range(0, 24).Select(h => new HourTemperature(h, 27 + 12 * Math.Sin((h - 9) * Math.PI / 12)))];
        return new PressurePlan
        {
            Repairs = [.. repairs.Zip(lifts.Repairs, (r, l) => Pressed(r, l, hours))],
            Hours = hours,
            Notes = repairs.IsEmpty ? [] : [new CrewNote("where", "At least 18 in inside the boundary, never nearer than 8 in.", new SourceRef("UFC-3-270-04", "sec. 4.5", SourceStatus.Verified))],
            Findings = [],
        };
    }

    private static RepairPressure Pressed(Repair r, RepairLift lift, ImmutableArray<HourTemperature> hours)
    {
        var needed = r.Length > 2.5;
        return new RepairPressure
        {
            RepairId = r.Id, Lane = r.Lane, UnloadsBehind = 15.24, UnloadsAhead = 9.1, BindsAbove = needed ? 34.5 : null,
            Hours = [.. hours.Select(h => new SawingHour(h.Hour, h.Temperature, Math.Max(0, h.Temperature - 25) * 2.7e5, Math.Max(0, h.Temperature - 25) * 1.2e-4, needed && h.Temperature > 34.5, needed && h.Temperature > 38))],
            ReliefNeeded = needed,
            Reliefs = !needed ? [] : r.Length > 6 ? [Cut(r.From + 0.7, lift.Along > 3), Cut(r.To - 0.7, false)] : [Cut(r.From + 0.7, false)],
            Checks = [],
            Reasons = [],
        };

        ReliefCut Cut(double at, bool isLiftCut) => new(at, 0.0381, r.Thickness + 0.0127, at - r.From - 0.019, r.To - at - 0.019, isLiftCut, 0.003);
    }
}
