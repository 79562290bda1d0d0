using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Sealing;

/// <summary>How the numbers of a reservoir came about.</summary>
internal static class SealReasons
{
    private static readonly UnitPair Small = new(Units.Inch, Units.Millimetre);
    private static readonly UnitPair Long = new(Units.Foot, Units.Metre);
    private static readonly UnitPair Warmth = new(Units.Fahrenheit, Units.Celsius);
    private static readonly SourceRef Page = new("joints-sealing-and-removal", "", SourceStatus.Computed);

    public static ImmutableArray<Reason> For(
        SealedJoint joint, PavementSection section, ReservoirAlternative? chosen, SealingSettings settings, UnitSystem units)
    {
        var reasons = ImmutableArray.CreateBuilder<Reason>();
        reasons.Add(Movement(joint, section, settings, units));
        if (chosen is null) return reasons.ToImmutable();
        reasons.Add(Width(chosen, settings, units));
        if (chosen.ShapeFactor is { } shape && Math.Abs(shape - settings.Sealant.DepthOverWidth.Value) > 0.01)
        {
            reasons.Add(new("shape factor",
                $"The bead is {In(chosen.SealDepth)} deep, {shape:0.00} of its width: saw steps and the least depth of the family make it deeper than {settings.Sealant.DepthOverWidth.Value:0.00}.",
                settings.Sealant.LeastDepth.Source));
        }

        reasons.Add(new("depth of the widening cut",
            $"{In(chosen.SawDepth)}: recess, seal and backer rod, and no less than {In(settings.LeastSawDepth.Value)} so that the faces cannot bear on a point near the surface.",
            settings.LeastSawDepth.Source, [new("recess", In(settings.Sealant.Recess.Value)), new("seal", In(chosen.SealDepth)), new("rod", chosen.Rod is { } rod ? In(rod) : "none")]));
        return reasons.ToImmutable();

        string In(double metres) => MeasureWords.Of(metres, Small, units, 3);
    }

    private static Reason Movement(SealedJoint joint, PavementSection section, SealingSettings settings, UnitSystem units)
    {
        var (coldest, hottest) = settings.Range;
        var factor = settings.FactorFor(section.Base);
        return new("joint movement",
            $"{joint.RepairId}, {TradeWords.Of(joint.Position)} joint, moves most: half of the concrete on each side up to the next working joint comes to it, "
            + $"C (α ΔT + ε) of {MeasureWords.Of(joint.OldLength, Long, units, 1)} old and {MeasureWords.Of(joint.NewLength, Long, units, 1)} new. Openings measured on roads were mostly larger and irregular.",
            factor.Source,
            [
                new("C", factor.Value.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture)),
                new("coldest", MeasureWords.Of(coldest, Warmth, units, 0)),
                new("hottest", MeasureWords.Of(hottest, Warmth, units, 0)),
                new("movement", MeasureWords.Of(joint.Movement, Small, units, 3)),
            ]);
    }

    private static Reason Width(ReservoirAlternative chosen, SealingSettings settings, UnitSystem units)
    {
        var width = MeasureWords.Of(chosen.Width, Small, units, 3);
        var what = chosen.SealSize is { } size
            ? $"The smallest seal made that stays within its working range is {MeasureWords.Of(size, Small, units, 3)} wide; the cut is {width}"
            : $"{width} is the {(settings.SurroundingWidth is { } other && Math.Abs(other - chosen.Width) < settings.WidthStep / 2 ? "width of the surrounding joints and holds" : "narrowest saw step that holds")}";
        return new("reservoir width", $"{what}; nearest to its limit: {chosen.Governing.Name}.", Page,
            [.. chosen.Checks.Select(c => new ReasonInput(c.Name, $"{Text(c, c.Value)}, limit {Text(c, c.Limit)} ({c.Source})"))]);

        string Text(LimitCheck check, double value) => MeasureWords.Of(value, check.Units, units, check.Units.Si.Dimension == Dimension.Share ? 1 : 3);
    }
}
