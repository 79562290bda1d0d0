using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Removal;

/// <summary>Lifting out: the pieces of each repair, their masses and pulls, pins, slings and crane.</summary>
public static class LiftPlanner
{
    private static readonly UnitPair Long = new(Units.Foot, Units.Metre);
    private static readonly UnitPair Mass = new(Units.Pound, Units.Kilogram);
    private static readonly double[] Angles = [90, 75, 60, 45, 30];

    /// <summary>Plans the lifts.</summary>
    /// <param name="road">The road; says whether a lane lies beside for the crane.</param>
    /// <param name="repairs">Its repairs.</param>
    /// <param name="settings">Pieces, allowances, slings, crane.</param>
    /// <param name="units">Units in sentences.</param>
    public static LiftPlan For(Road road, IReadOnlyList<Repair> repairs, LiftingSettings settings, UnitSystem units = UnitSystem.UsCustomary)
    {
        if (repairs.Count == 0) return LiftPlan.Empty;
        var findings = new List<Finding>(LiftCheck.Of(settings));
        if (!LiftCheck.Usable(settings)) return LiftPlan.Empty with { Cautions = LiftCautions.For(settings), Findings = [.. findings] };
        ImmutableArray<RepairLift> lifts = [.. repairs.Select(r => One(road, r, settings, units))];
        findings.AddRange(lifts.Zip(repairs).Where(p => !p.First.Passes).Select(p => TooHeavy(p.First, p.Second)));
        return new() { Repairs = lifts, Cautions = LiftCautions.For(settings), Findings = [.. findings] };
    }

    /// <summary>Forces on one of the equal pieces of a repair.</summary>
    /// <param name="repair">The repair.</param> <param name="layout">Its pieces.</param> <param name="settings">Allowances and slings.</param>
    public static LiftForces ForcesOf(Repair repair, LiftLayout layout, LiftingSettings settings)
    {
        var (length, width, thickness) = (repair.Length / layout.Along, repair.Width / layout.Across, repair.Thickness);
        var mass = LiftMechanics.PieceMass(length, width, thickness, settings.Density.Value);
        var wet = mass * (1 + settings.WaterShare.Value);
        var weight = wet * SlabTemperature.Gravity;
        var loose = LiftMechanics.BreakLoose(weight, length, width, thickness, settings.BaseBond.Value, settings.SideFriction.Value);
        var hanging = weight * settings.DynamicFactor.Value;
        var design = Math.Max(loose, hanging);
        var leg = LiftMechanics.LegTension(design, settings.CarryingLegs, settings.SlingAngle);
        var spread = HalfSpread(length, width, settings.Legs);
        return new()
        {
            Mass = mass,
            WetMass = wet,
            Weight = weight,
            BaseBond = settings.BaseBond.Value * length * width,
            SideFriction = loose - weight - settings.BaseBond.Value * length * width,
            BreakLoose = loose,
            Hanging = hanging,
            Design = design,
            HookLoad = design + (settings.Crane?.RiggingMass ?? 0) * SlabTemperature.Gravity,
            CarryingLegs = settings.CarryingLegs,
            LegPull = leg,
            PinStrength = leg * settings.AnchorFactor,
            GearStrength = leg * settings.GearFactor,
            HookHeight = spread * Math.Tan(Math.Min(settings.SlingAngle, 89 * Math.PI / 180)),
            LegLength = spread / Math.Cos(Math.Min(settings.SlingAngle, 89 * Math.PI / 180)),
        };
    }

    private static RepairLift One(Road road, Repair repair, LiftingSettings settings, UnitSystem units)
    {
        var layout = LiftLayout.Of(road, repair, settings);
        var forces = ForcesOf(repair, layout, settings);
        var crane = settings.Crane is { } machine ? CraneReach.Check(road, repair, layout, forces.HookLoad, machine) : null;
        return new()
        {
            RepairId = repair.Id,
            Lane = repair.Lane,
            Along = layout.Along,
            Across = layout.Across,
            Cuts = [.. Enumerable.Range(1, layout.Along - 1).Select(n => repair.From + n * repair.Length / layout.Along)],
            LongCuts = [.. Enumerable.Range(1, layout.Across - 1).Select(n => n * repair.Width / layout.Across)],
            Pieces = [.. Pieces(repair, layout, settings, crane)],
            Forces = forces,
            Slings = [.. Angles.Select(a => Row(forces.Design, settings.CarryingLegs, a * Math.PI / 180))],
            Crane = crane,
            Checks = LiftLimits.Of(road, repair, layout, settings),
            Reasons = Reasons(repair, layout, forces, settings, units),
        };
    }

    private static SlingRow Row(double pull, int legs, double angle)
    {
        var leg = LiftMechanics.LegTension(pull, legs, angle);
        return new(angle, leg, leg * Math.Cos(angle));
    }

    private static IEnumerable<LiftPiece> Pieces(Repair repair, LiftLayout layout, LiftingSettings settings, CraneCheck? crane)
    {
        var (length, width) = (repair.Length / layout.Along, repair.Width / layout.Across);
        for (var n = 0; n < layout.Pieces; n++)
        {
            var (row, column) = (n / layout.Across, n % layout.Across);
            var (from, left) = (repair.From + row * length, column * width);
            double? radius = crane is null ? null : CraneReach.Radius(repair, layout, row, column, crane.Stand, settings.Crane!);
            yield return new(n + 1, from, from + length, left, left + width, Pins(from, length, left, width, settings.Legs), radius);
        }
    }

    private static ImmutableArray<LanePoint> Pins(double from, double length, double left, double width, int legs)
    {
        var (near, far) = (from + LiftMechanics.PinInset * length, from + (1 - LiftMechanics.PinInset) * length);
        var (one, two) = (left + LiftMechanics.PinInset * width, left + (1 - LiftMechanics.PinInset) * width);
        var middle = left + width / 2;
        return legs switch
        {
            1 => [new(from + length / 2, middle)],
            2 => [new(near, middle), new(far, middle)],
            _ => [new(near, one), new(near, two), new(far, one), new(far, two)],
        };
    }

    private static double HalfSpread(double length, double width, int legs)
    {
        const double share = 1 - 2 * LiftMechanics.PinInset;
        return legs switch { 1 => 0, 2 => share * length / 2, _ => share * Math.Sqrt(length * length + width * width) / 2 };
    }

    private static ImmutableArray<Reason> Reasons(Repair repair, LiftLayout layout, LiftForces forces, LiftingSettings settings, UnitSystem units)
    {
        var byLength = LiftCount.Pieces(repair.Length, settings.LongestPiece.Value);
        var more = layout.Pieces > byLength ? $"; {byLength} would do by length, mass asks for more" : "";
        return
        [
            new("lift pieces", $"{layout.Along} along and {layout.Across} across, all alike, none longer than {MeasureWords(settings.LongestPiece.Value, Long)}{more}.",
                settings.LongestPiece.Source, [new("length", MeasureWords(repair.Length, Long)), new("mass of a piece", MeasureWords(forces.Mass, Mass))]),
            new("pull at the first inch", "Weight with water, bond at the base and friction at the sides. No published figure for an old slab on its base: the allowances are to be confirmed by a trial lift.",
                settings.BaseBond.Source,
                [
                    new("water", settings.WaterShare.Value.ToString("P0", CultureInfo.InvariantCulture)),
                    new("base bond", new UnitPair(Units.Psi, Units.Kilopascal).In(units).Format(settings.BaseBond.Value, 2)),
                    new("side friction", new UnitPair(Units.Psi, Units.Kilopascal).In(units).Format(settings.SideFriction.Value, 2)),
                ]),
            new("legs that carry", settings.Equalised
                ? $"All {settings.Legs} legs carry alike through a spreader or sheaves."
                : $"{settings.CarryingLegs} of {settings.Legs} legs are taken to carry: with independent legs the load is not shared evenly.",
                new SourceRef("PRECAST-LIFTING", "3.3–3.6", SourceStatus.Verified)),
            new("factors", $"Anchors {settings.AnchorFactor:0.##} times, slings and gear {settings.GearFactor:0.##} times the pull ({TradeWords.Of(settings.Practice)}).", settings.PracticeSource),
        ];

        string MeasureWords(double value, UnitPair pair) => pair.In(units).Format(value, pair == Mass ? 0 : 2);
    }

    private static Finding TooHeavy(RepairLift lift, Repair repair)
    {
        var worst = lift.Checks.MaxBy(c => c.Use)!;
        return new("JNT-062", FindingLevel.Error, $"{lift.RepairId} cannot be lifted out within the limits, even in {lift.Pieces.Length} pieces: {worst.Name}.",
            new FindingPlace("project.json", Field: "lifting", Lane: lift.Lane, At: repair.From), worst.Units.Si.Format(worst.Value, 1),
            "Choose a larger crane, stand nearer, use stronger pins or slings, or allow shorter pieces.", worst.Units.Si.Format(worst.Limit, 1), worst.Source.ToString());
    }
}
