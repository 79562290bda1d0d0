using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Removal;

/// <summary>Pressure met when sawing: whether and when boundary cuts bind, and where a relief cut goes first.</summary>
public static class PressurePlanner
{
    private const double HottestLookedAt = 80;

    /// <summary>Looks at every repair.</summary>
    /// <param name="road">The road; its pavement ends and expansion joints are free ends.</param>
    /// <param name="repairs">Its repairs.</param>
    /// <param name="settings">Temperatures, concrete, blade, rules of the relief cut.</param>
    /// <param name="lifts">The lift cuts a relief cut can take the place of.</param>
    /// <param name="units">Units in sentences.</param>
    /// <param name="hours">Slab temperatures by hour; those of the settings when null.</param>
    public static PressurePlan For(
        Road road, IReadOnlyList<Repair> repairs, PressureSettings settings, LiftPlan lifts, UnitSystem units = UnitSystem.UsCustomary,
        IReadOnlyList<HourTemperature>? hours = null)
    {
        if (repairs.Count == 0) return PressurePlan.Empty;
        if (hours is not null) settings = settings with { Hours = [.. hours] };
        ImmutableArray<Finding> findings = [.. PressureCheck.Of(settings)];
        if (!PressureCheck.Usable(settings)) return PressurePlan.Empty with { Findings = findings };
        ImmutableArray<HourTemperature> day = settings.Hours.IsEmpty
            ? [.. Enumerable.Range(0, 24).Select(h => new HourTemperature(h, settings.AssumedTemperature.Value))]
            : [.. settings.Hours.OrderBy(h => h.Hour)];
        var cuts = lifts.Repairs.ToDictionary(l => l.RepairId, l => l.Cuts, StringComparer.Ordinal);
        var ends = road.Lanes.ToDictionary(l => l.Number, FreeEnds);
        ImmutableArray<RepairPressure> all =
            [.. repairs.Select(r => One(r, ends[r.Lane], cuts.GetValueOrDefault(r.Id, []), day, settings, units))];
        return new()
        {
            Repairs = all,
            Hours = day,
            HoursFrom = settings.HoursFrom.Length > 0 ? settings.HoursFrom : settings.Hours.IsEmpty ? "assumed, the same all day" : "as the project states them",
            Notes = all.Any(r => r.ReliefNeeded) ? ReliefCuts.Notes(settings, units) : [],
            Findings = [.. findings, .. all.Zip(repairs).Where(p => p.First.ReliefNeeded).SelectMany(p => Findings(p.First, p.Second, settings))],
        };
    }

    /// <summary>True for an hour in which the crew means to saw; the range may pass midnight.</summary>
    public static bool Saws(int hour, PressureSettings settings) => settings.SawFrom <= settings.SawTo
        ? hour >= settings.SawFrom && hour <= settings.SawTo
        : hour >= settings.SawFrom || hour <= settings.SawTo;

    private static double[] FreeEnds(Lane lane) =>
        [.. lane.Joints.Where(j => j.Kind is JointKind.Expansion or JointKind.PavementEnd).Select(j => j.At)];

    private static RepairPressure One(
        Repair repair, double[] ends, ImmutableArray<double> liftCuts, ImmutableArray<HourTemperature> day, PressureSettings settings, UnitSystem units)
    {
        var behind = ends.Where(e => e <= repair.From + 1e-6).Select(e => repair.From - e).DefaultIfEmpty(double.PositiveInfinity).Min();
        var ahead = ends.Where(e => e >= repair.To - 1e-6).Select(e => e - repair.To).DefaultIfEmpty(double.PositiveInfinity).Min();
        var side = new Sides(Math.Max(0, behind), Math.Max(0, ahead), repair.Length);
        var warmest = day.Where(h => Saws(h.Hour, settings)).Select(h => h.Temperature).DefaultIfEmpty(double.MinValue).Max();
        var needed = side.Closure(warmest, settings) > Play(settings);
        var places = needed ? ReliefCuts.Place(repair, liftCuts, settings, strip => side.ClosureBeside(strip, warmest, settings) <= Play(settings)) : [];
        var strip = Strip(repair, places, settings);
        var hottest = day.Max(h => h.Temperature);
        ImmutableArray<ReliefCut> reliefs = [.. places.Select(p => Relief(repair, p.At, p.AtLiftCut, side.Closure(hottest, settings), settings))];
        return new()
        {
            RepairId = repair.Id,
            Lane = repair.Lane,
            UnloadsBehind = Math.Min(behind, side.BuildUp(hottest, settings)),
            UnloadsAhead = Math.Min(ahead, side.BuildUp(hottest, settings)),
            BindsAbove = BindsAbove(side, settings),
            Hours = [.. day.Select(h => Hour(h, side, strip, settings))],
            ReliefNeeded = needed,
            Reliefs = reliefs,
            Checks = [.. reliefs.SelectMany(r => ReliefCuts.Checks(r, repair, settings))],
            Reasons = Reasons(settings, units),
        };
    }

    /// <summary>How far a kerf may close before it holds the blade, m.</summary>
    private static double Play(PressureSettings settings) => settings.Kerf.Value - settings.BladeCore.Value;

    /// <summary>Concrete between a boundary and the relief cut nearest to it, m: the worse of the two boundaries; null without a relief cut.</summary>
    private static double? Strip(Repair repair, ImmutableArray<(double At, bool AtLiftCut)> places, PressureSettings settings) => places.IsEmpty
        ? null
        : Math.Max(places[0].At - repair.From, repair.To - places[^1].At) - settings.ReliefKerf.Value / 2;

    private static ReliefCut Relief(Repair repair, double at, bool atLiftCut, double closure, PressureSettings settings)
    {
        var half = settings.ReliefKerf.Value / 2;
        return new(at, settings.ReliefKerf.Value, repair.Thickness + settings.BaseBite.Value, at - half - repair.From, repair.To - at - half, atLiftCut, closure);
    }

    private static SawingHour Hour(HourTemperature hour, Sides side, double? strip, PressureSettings settings)
    {
        var stress = Sides.Stress(hour.Temperature, settings);
        var closure = side.Closure(hour.Temperature, settings);
        var after = strip is { } length ? side.ClosureBeside(length, hour.Temperature, settings) : closure;
        return new(hour.Hour, hour.Temperature, stress, closure, closure > Play(settings), after > Play(settings));
    }

    /// <summary>Slab temperature at which the closure reaches the play of the blade, °C, by halving; null when it does not.</summary>
    private static double? BindsAbove(Sides side, PressureSettings settings)
    {
        var gap = Play(settings);
        var (low, high) = (settings.ClosedAt ?? settings.AssumedClosedAt.Value, HottestLookedAt);
        if (high <= low || side.Closure(high, settings) <= gap) return null;
        for (var n = 0; n < 50; n++)
        {
            var middle = (low + high) / 2;
            if (side.Closure(middle, settings) > gap) high = middle;
            else low = middle;
        }

        return (low + high) / 2;
    }

    private static IEnumerable<Finding> Findings(RepairPressure pressure, Repair repair, PressureSettings settings)
    {
        var place = new FindingPlace("project.json", Field: "pressure", Lane: pressure.Lane, At: repair.From);
        var above = pressure.BindsAbove is { } warm ? Units.Celsius.Format(warm, 1) : null;
        if (pressure.Reliefs.IsEmpty)
        {
            yield return new("JNT-076", FindingLevel.Error, $"Sawing {repair.Id} will bind, and it is too short for a relief cut.", place,
                Units.Metre.Format(repair.Length, 2), "Saw it when the slab is cool, or cut relief outside after talking to the engineer.",
                Units.Metre.Format(2 * settings.LeastInset.Value + settings.ReliefKerf.Value, 2), settings.LeastInset.Source.ToString());
            yield break;
        }

        if (pressure.Hours.Any(h => h.BindsAfterRelief && Saws(h.Hour, settings)))
        {
            yield return new("JNT-077", FindingLevel.Warning, $"Sawing {repair.Id} may bind even after its relief cut in the hottest hours.", place, above,
                "Saw it in the cool hours.");
        }

        if (pressure.Checks.Any(c => !c.Holds))
        {
            var worst = pressure.Checks.MaxBy(c => c.Use)!;
            yield return new("JNT-078", FindingLevel.Warning, $"The relief cut of {repair.Id} does not keep a rule: {worst.Name}.", place,
                worst.Units.Si.Format(worst.Value, 1), "Saw in the cool hours instead, or cut relief twice.", worst.Units.Si.Format(worst.Limit, 1), worst.Source.ToString());
        }
    }

    private static ImmutableArray<Reason> Reasons(PressureSettings settings, UnitSystem units)
    {
        var (warmth, small, length) = (new UnitPair(Units.Fahrenheit, Units.Celsius), new UnitPair(Units.Inch, Units.Millimetre), new UnitPair(Units.Foot, Units.Metre));
        return
        [
            new("kerf closure",
                "Above the temperature at which joints are shut the slab is pressed by E α ΔT. A cut sets the concrete free on both sides as far as friction and the tied lane beside allow; the kerf closes by the strain set free, and binds when it closes onto the core of the blade.",
                new SourceRef("joints-sealing-and-removal", "pressure", SourceStatus.Computed),
                [
                    new("joints shut at", warmth.In(units).Format(settings.ClosedAt ?? settings.AssumedClosedAt.Value, 0)),
                    new("play of the blade", small.In(units).Format(Play(settings), units == UnitSystem.Si ? 1 : 3)),
                    new("unloads on each side at most", length.In(units).Format(settings.UnloadedLength.Value, 1)),
                    new("friction", settings.Friction.Value.ToString("0.0#", CultureInfo.InvariantCulture)),
                ]),
        ];
    }

    /// <summary>The concrete on both sides of a repair's boundary cuts, m to the nearest free end.</summary>
    private readonly record struct Sides(double Behind, double Ahead, double Length)
    {
        /// <summary>Stress with the joints shut, Pa.</summary>
        public static double Stress(double temperature, PressureSettings settings) => SlabTemperature.RestrainedStress(
            settings.Modulus.Value, settings.Expansion.Value, Math.Max(0, temperature - (settings.ClosedAt ?? settings.AssumedClosedAt.Value)));

        /// <summary>Length in which the stress builds up from a free end, m: by friction, or the project's length where that is shorter.</summary>
        public double BuildUp(double temperature, PressureSettings settings) => Math.Min(
            settings.UnloadedLength.Value, SlabBuckling.BuildUpLength(Stress(temperature, settings), settings.Density.Value, settings.Friction.Value));

        /// <summary>Closure of a boundary cut with a relief cut open this far from it, m.</summary>
        public double ClosureBeside(double strip, double temperature, PressureSettings settings) => PressureMechanics.ClosureAfterRelief(
            Stress(temperature, settings), settings.Modulus.Value, BuildUp(temperature, settings), strip, Math.Max(Behind, Ahead));

        /// <summary>Closure of the worse of the two boundary cuts, sawn first: both sides still whole, m.</summary>
        public double Closure(double temperature, PressureSettings settings)
        {
            var (stress, buildUp, modulus) = (Stress(temperature, settings), BuildUp(temperature, settings), settings.Modulus.Value);
            if (stress <= 0) return 0;
            return Math.Max(
                Side(Behind) + Side(Length + Ahead),
                Side(Behind + Length) + Side(Ahead));

            double Side(double toFreeEnd) => PressureMechanics.FaceMovement(stress, modulus, buildUp, toFreeEnd);
        }
    }
}
