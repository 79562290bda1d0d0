using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Joints.Sealing;

/// <summary>How far the governing joint opens and closes from the temperature it is sealed at.</summary>
/// <param name="PerKelvin">Opening for one kelvin of cooling, m/K.</param>
/// <param name="Shrinkage">Opening by shrinkage, m.</param>
/// <param name="Coldest">°C.</param>
/// <param name="Hottest">°C.</param>
internal readonly record struct JointTravel(double PerKelvin, double Shrinkage, double Coldest, double Hottest)
{
    /// <summary>From the hottest before shrinkage to the coldest after it, m.</summary>
    public double Whole => PerKelvin * (Hottest - Coldest) + Shrinkage;

    /// <summary>Widening from a temperature to the coldest, m.</summary>
    public double Opens(double from) => PerKelvin * (from - Coldest) + Shrinkage;

    /// <summary>Narrowing from a temperature to the hottest, m; shrinkage not counted on.</summary>
    public double Closes(double from) => PerKelvin * (Hottest - from);
}

/// <summary>Goes through the widths a saw can cut, and the sizes of seal made, and holds each against the family's limits.</summary>
internal static class ReservoirSearch
{
    private static readonly UnitPair Percent = new(Units.Percent);
    private static readonly UnitPair Small = new(Units.Inch, Units.Millimetre);

    /// <summary>Every reservoir looked at.</summary>
    public static ImmutableArray<ReservoirAlternative> All(JointTravel travel, SealingSettings settings) =>
        settings.Sealant.FieldMoulded ? Moulded(travel, settings) : Preformed(travel, settings);

    /// <summary>The narrowest saw step that holds when sealed at one temperature, m; null when none does.</summary>
    public static double? WidthAt(double temperature, JointTravel travel, SealingSettings settings)
    {
        foreach (var width in Widths(settings))
        {
            if (Bead(width, travel.Opens(temperature), travel.Closes(temperature), settings).Passes) return width;
        }

        return null;
    }

    /// <summary>The bead of one width, sealed anywhere in the range of temperatures the crew seals in.</summary>
    private static ImmutableArray<ReservoirAlternative> Moulded(JointTravel travel, SealingSettings settings)
    {
        var (opens, closes) = (travel.Opens(settings.SealTo.Value), travel.Closes(settings.SealFrom.Value));
        return [.. Widths(settings).Select(w => Bead(w, opens, closes, settings))];
    }

    /// <summary>One width of bead held against widening and narrowing.</summary>
    public static ReservoirAlternative Bead(double width, double opens, double closes, SealingSettings settings)
    {
        var family = settings.Sealant;
        var depth = BeadDepth(width, settings);
        var rod = StepUp(family.RodOverWidth.Value * width, 2 * settings.WidthStep);
        var sawDepth = StepUp(Math.Max(family.Recess.Value + depth + rod, settings.LeastSawDepth.Value), settings.WidthStep);
        return new()
        {
            Width = width,
            SealDepth = depth,
            SawDepth = sawDepth,
            SealSize = null,
            Rod = rod,
            ShapeFactor = depth / width,
            WidestOpening = width + opens,
            NarrowestOpening = width - closes,
            SurfaceStrain = SealMechanics.SurfaceStrain(width, depth, Math.Max(0, opens)),
            Checks =
            [
                Most("widening at the coldest", opens / width, family.AllowableStrain, Percent),
                Most("narrowing at the hottest", closes / width, family.AllowableSqueeze, Percent),
                Most("bulge at the hottest, below the surface", SealMechanics.Bulge(width, depth, Math.Max(0, closes)), family.Recess, Small),
                Most("depth of the bead", depth, family.MostDepth, Small),
            ],
        };
    }

    private static ImmutableArray<ReservoirAlternative> Preformed(JointTravel travel, SealingSettings settings) =>
        [.. settings.SealSizes.Value.Select(size => BestCut(size, travel, settings)).OfType<ReservoirAlternative>()];

    /// <summary>The saw step that suits one size of seal best; null when no step lies within its working range.</summary>
    private static ReservoirAlternative? BestCut(double size, JointTravel travel, SealingSettings settings)
    {
        var family = settings.Sealant;
        var first = (int)Math.Ceiling((1 - family.MostCompression.Value) * size / settings.WidthStep - 1e-9);
        var last = (int)Math.Floor((1 - family.LeastCompression.Value) * size / settings.WidthStep + 1e-9);
        ReservoirAlternative? best = null;
        for (var n = Math.Max(1, first); n <= last; n++)
        {
            var cut = Squeezed(size, n * settings.WidthStep, travel, settings.DesignTemperature, settings);
            if (best is null || cut.Governing.Use < best.Governing.Use) best = cut;
        }

        return best;
    }

    /// <summary>One size of preformed seal in one saw cut, sealed at one temperature.</summary>
    public static ReservoirAlternative Squeezed(double size, double width, JointTravel travel, double temperature, SealingSettings settings)
    {
        var family = settings.Sealant;
        var (widest, narrowest) = (width + travel.Opens(temperature), width - travel.Closes(temperature));
        var sawDepth = StepUp(Math.Max(family.Recess.Value + size, settings.LeastSawDepth.Value), settings.WidthStep);
        return new()
        {
            Width = width,
            SealDepth = size,
            SawDepth = sawDepth,
            SealSize = size,
            Rod = null,
            ShapeFactor = null,
            WidestOpening = widest,
            NarrowestOpening = narrowest,
            SurfaceStrain = null,
            Checks =
            [
                new("compression at the coldest", 1 - widest / size, family.LeastCompression.Value, LimitSense.AtLeast, Percent, family.LeastCompression.Source),
                Most("compression at the hottest", 1 - narrowest / size, family.MostCompression, Percent),
                Most("widest saw cut", width, family.MostWidth, Small),
            ],
        };
    }

    /// <summary>Depth of the bead: the family's share of the width, but no shallower than the family allows, in saw steps.</summary>
    private static double BeadDepth(double width, SealingSettings settings) =>
        StepUp(Math.Max(settings.Sealant.DepthOverWidth.Value * width, settings.Sealant.LeastDepth.Value), settings.WidthStep);

    private static IEnumerable<double> Widths(SealingSettings settings)
    {
        var step = settings.WidthStep;
        var first = (int)Math.Ceiling(settings.Sealant.LeastWidth.Value / step - 1e-9);
        var last = (int)Math.Floor(settings.Sealant.MostWidth.Value / step + 1e-9);
        for (var n = first; n <= last; n++) yield return n * step;
    }

    private static double StepUp(double length, double step) => Math.Ceiling(length / step - 1e-9) * step;

    private static LimitCheck Most(string name, double value, Sourced<double> limit, UnitPair units) =>
        new(name, value, limit.Value, LimitSense.AtMost, units, limit.Source);
}
