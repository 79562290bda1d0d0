using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Sealing;

/// <summary>Designs the reservoir of one build-up of one lane: choice, crew's table, reasons and findings.</summary>
internal static class Reservoirs
{
    private static readonly UnitPair Small = new(Units.Inch, Units.Millimetre);
    private static readonly UnitPair Warmth = new(Units.Fahrenheit, Units.Celsius);

    public static Reservoir Design(
        Lane lane, PavementSection section, ImmutableArray<SealedJoint> joints, int place, SealingSettings settings, UnitSystem units)
    {
        var governing = joints.MaxBy(j => j.Movement)! with { Reservoir = place };
        var (coldest, hottest) = settings.Range;
        var travel = new JointTravel(governing.PerKelvin, governing.Shrinkage, coldest, hottest);
        var alternatives = ReservoirSearch.All(travel, settings);
        var chosen = Choose(alternatives, settings);
        bool? matches = settings.SurroundingWidth is { } width && chosen is not null ? Same(chosen.Width, width, settings) : null;
        return new()
        {
            Lane = lane.Number,
            From = section.From,
            To = section.To,
            Thickness = section.Thickness,
            Base = section.Base,
            Family = settings.Sealant,
            Governing = governing,
            Joints = joints.Length,
            Alternatives = alternatives,
            Chosen = chosen,
            DesignTemperature = settings.DesignTemperature,
            Recess = settings.Sealant.Recess.Value,
            MatchesSurrounding = matches,
            Table = chosen is null ? [] : [.. Temperatures(settings, units).Select(t => Row(t, chosen, travel, settings))],
            Reasons = SealReasons.For(governing, section, chosen, settings, units),
        };
    }

    /// <summary>The width of the surrounding joints where it holds, else the first that holds: the smallest seal, the narrowest cut.</summary>
    private static ReservoirAlternative? Choose(ImmutableArray<ReservoirAlternative> alternatives, SealingSettings settings)
    {
        var holding = alternatives.Where(a => a.Passes).ToList();
        var matching = settings.SurroundingWidth is { } width ? holding.FirstOrDefault(a => Same(a.Width, width, settings)) : null;
        return matching ?? holding.FirstOrDefault();
    }

    private static bool Same(double one, double two, SealingSettings settings) => Math.Abs(one - two) < settings.WidthStep / 2;

    /// <summary>Round temperatures from the least the family is placed at to the hottest: every 10 °F or every 5 °C.</summary>
    private static IEnumerable<double> Temperatures(SealingSettings settings, UnitSystem units)
    {
        var (unit, step) = units == UnitSystem.Si ? (Units.Celsius, 5) : (Units.Fahrenheit, 10);
        var (coldest, hottest) = settings.Range;
        var first = (int)Math.Ceiling(unit.FromBase(Math.Max(settings.Sealant.LeastTemperature.Value, coldest)) / step - 1e-9);
        var last = (int)Math.Floor(unit.FromBase(hottest) / step + 1e-9);
        for (var n = first; n <= last; n++) yield return unit.ToBase(n * step);
    }

    private static InstallationRow Row(double temperature, ReservoirAlternative chosen, JointTravel travel, SealingSettings settings)
    {
        var jointWidth = chosen.Width - travel.PerKelvin * (temperature - settings.DesignTemperature);
        if (chosen.SealSize is { } size)
        {
            var (least, most) = (settings.Sealant.LeastCompression.Value, settings.Sealant.MostCompression.Value);
            var compression = JointMovement.InstalledCompression(temperature, travel.Coldest, travel.Hottest, least, most);
            var holds = ReservoirSearch.Squeezed(size, chosen.Width, travel, temperature, settings).Passes;
            return new(temperature, JointMovement.SawWidth(compression, size), jointWidth, 1 - jointWidth / size, null, null, holds);
        }

        var (opens, closes) = (travel.Opens(temperature), travel.Closes(temperature));
        return new(temperature, ReservoirSearch.WidthAt(temperature, travel, settings), jointWidth, null, opens / chosen.Width,
            closes / chosen.Width, ReservoirSearch.Bead(chosen.Width, opens, closes, settings).Passes);
    }

    /// <summary>What the engineer must know of a reservoir.</summary>
    public static IEnumerable<Finding> Findings(Reservoir reservoir, SealingSettings settings, UnitSystem units)
    {
        var place = new FindingPlace("project.json", Field: "sealing", Lane: reservoir.Lane, At: reservoir.Governing.At);
        var movement = MeasureWords.Of(reservoir.Governing.Movement, Small, units, 3);
        if (reservoir.Chosen is not { } chosen)
        {
            var nearest = reservoir.Alternatives.IsEmpty ? null : reservoir.Alternatives.MinBy(a => a.Governing.Use);
            yield return new("JNT-043", FindingLevel.Error,
                $"No reservoir for {TradeWords.Of(reservoir.Family.Kind)} follows the movement of the repair joints here; "
                + (nearest is null ? "no width lies within its limits." : $"the nearest fails on: {nearest.Governing.Name}."),
                place, movement, "Choose another sealant, seal in a narrower range of temperatures, or allow wider cuts.", null,
                nearest?.Governing.Source.ToString());
            yield break;
        }

        if (reservoir.MatchesSurrounding == false)
        {
            yield return new("JNT-044", FindingLevel.Note, "The reservoir is not as wide as those of the surrounding joints.", place,
                MeasureWords.Of(chosen.Width, Small, units, 3), "Widen the old joints beside the repair too, or choose a sealant that holds at their width.",
                MeasureWords.Of(settings.SurroundingWidth!.Value, Small, units, 3), "UFC-3-270-04, sec. 5.13");
        }

        if (settings.SealFrom.Value < reservoir.Family.LeastTemperature.Value - 1e-9)
        {
            yield return new("JNT-045", FindingLevel.Warning, "The range joints are sealed in begins below the least temperature of the sealant.", place,
                MeasureWords.Of(settings.SealFrom.Value, Warmth, units, 0), "Seal when the slab is warm enough.",
                MeasureWords.Of(reservoir.Family.LeastTemperature.Value, Warmth, units, 0), reservoir.Family.LeastTemperature.Source.ToString());
        }
    }
}

/// <summary>Values as sentences print them.</summary>
internal static class MeasureWords
{
    /// <summary>A base value with its unit; one decimal less in SI lengths, which are printed in millimetres.</summary>
    public static string Of(double value, UnitPair units, UnitSystem system, int decimals) =>
        units.In(system).Format(value, system == UnitSystem.Si && units.Si.Dimension == Dimension.Length ? Math.Max(0, decimals - 2) : decimals);

    /// <summary>A share in percent.</summary>
    public static string Percent(double share) => (100 * share).ToString("0.#", CultureInfo.InvariantCulture) + " %";
}
