using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Joints.Design;

/// <summary>Finds bad input of a joint, from a project or by hand. Nothing is mended silently; a joint with an error is not designed.</summary>
public static class JointChecks
{
    private static readonly UnitPair Lengths = new(Units.Foot, Units.Metre);
    private static readonly UnitPair Reactions = new(Units.Pci, Units.MegapascalPerMetre);
    private static readonly UnitPair Warmth = new(Units.Fahrenheit, Units.Celsius);
    private static readonly UnitPair Expansions = new(Units.PerFahrenheit, Units.PerKelvin);

    private sealed record Bounds(string Field, string Name, double Value, double Over, double UpTo, UnitPair Units);

    /// <summary>What is wrong with the conditions of a joint.</summary>
    public static ImmutableArray<Finding> Conditions(JointConditions c)
    {
        var findings = new List<Finding>();
        foreach (var bound in Of(c))
        {
            if (double.IsFinite(bound.Value) && bound.Value > bound.Over && bound.Value <= bound.UpTo) continue;
            findings.Add(Bad("JNT-010", bound.Field, $"The {bound.Name} is not one a joint can have.", JointWords.Of(bound.Value, bound.Units),
                "Check the value and its unit.", $"above {JointWords.Of(bound.Over, bound.Units)}, at most {JointWords.Of(bound.UpTo, bound.Units)}"));
        }

        if (!(c.Temperatures.Hottest > c.Temperatures.Coldest))
        {
            findings.Add(Bad("JNT-011", "hottest", "The hottest slab is not warmer than the coldest.", JointWords.Of(c.Temperatures.Hottest, Warmth),
                "Give the coldest and the hottest slab temperature of the year.", "above " + JointWords.Of(c.Temperatures.Coldest, Warmth)));
        }

        foreach (var axle in c.Traffic.Where(a => a.Axles is < 1 or > 3 || !(a.Load > 0) || !(a.PerDay >= 0)))
        {
            findings.Add(Bad("JNT-012", "axles", "An axle class is not one axle of one to three with a load and a number of passes.",
                $"{axle.Axles} axles, {JointWords.Of(axle.Load, new(Units.Kip, Units.Kilonewton))}, {JointWords.Count(axle.PerDay)} a day",
                "Give 1, 2 or 3 axles, a load above 0 and passes a day of 0 or more."));
        }

        return [.. findings];
    }

    /// <summary>What is wrong with a layout in a lane: bars that overlap, lie outside the slab, or do not fit its thickness.</summary>
    /// <param name="layout">The bars.</param> <param name="width">Lane width, m.</param> <param name="thickness">Slab thickness, m.</param>
    public static ImmutableArray<Finding> Layout(BarLayout layout, double width, double thickness)
    {
        var findings = new List<Finding>();
        if (!(layout.Diameter > 0) || layout.Diameter > thickness / 2)
        {
            findings.Add(Bad("JNT-013", "diameter", "The bar is not one that fits the slab.", JointWords.Bar(layout.Diameter),
                "Give a diameter above 0 and at most half the slab thickness.", JointWords.Bar(thickness / 2)));
        }

        if (!(layout.Embedment > 0) || layout.Embedment >= layout.Length)
        {
            findings.Add(Bad("JNT-014", "embedment", "The bar does not reach into both slabs.", JointWords.Bar(layout.Embedment),
                "Give an embedment above 0 and shorter than the bar.", JointWords.Bar(layout.Length)));
        }

        if (layout.Depth - layout.Diameter / 2 <= 0 || layout.Depth + layout.Diameter / 2 >= thickness)
        {
            findings.Add(Bad("JNT-015", "depth", "The bars do not lie inside the slab.", JointWords.Bar(layout.Depth),
                "Give the depth of the bar's centre below the surface; mid-depth is usual.", "slab of " + JointWords.Bar(thickness)));
        }

        for (var n = 0; n < layout.Bars; n++) CheckBar(layout, n, width, findings);
        return [.. findings];
    }

    /// <summary>True when nothing found is an error.</summary>
    internal static bool Usable(IEnumerable<Finding> findings) => findings.All(f => f.Level != FindingLevel.Error);

    private static void CheckBar(BarLayout layout, int n, double width, List<Finding> findings)
    {
        var at = layout.Offsets[n];
        if (at - layout.Diameter / 2 < 0 || at + layout.Diameter / 2 > width)
        {
            findings.Add(Bad("JNT-016", $"offsets[{n}]", $"Bar {n + 1} lies outside the lane.", JointWords.Of(at, Lengths),
                "Measure offsets from the lane's left edge in the direction of travel.", "lane of " + JointWords.Of(width, Lengths)));
        }

        if (n > 0 && at - layout.Offsets[n - 1] <= layout.Diameter)
        {
            findings.Add(Bad("JNT-017", $"offsets[{n}]", $"Bar {n + 1} overlaps the bar before it, or the bars are not in order.",
                JointWords.Of(at, Lengths), "Give offsets rising from the left edge, further apart than the diameter.",
                "above " + JointWords.Of(layout.Offsets[n - 1] + layout.Diameter, Lengths)));
        }
    }

    private static IEnumerable<Bounds> Of(JointConditions c) =>
    [
        new("thickness", "slab thickness", c.Thickness, 0, 1, JointWords.Small),
        new("lane_width", "lane width", c.LaneWidth, 1, 10, Lengths),
        new("old_slab", "length of the old slab", c.OldSlab, 0, 200, Lengths),
        new("repair", "length of the repair", c.Repair, 0, 1000, Lengths),
        new("modulus", "modulus of concrete", c.Modulus, 1e9, 1e11, JointWords.Stress),
        new("poisson", "Poisson's ratio", c.Poisson, 0, 0.4999, JointWords.Plain),
        new("strength", "strength of concrete", c.Strength, 1e6, 2e8, JointWords.Stress),
        new("rupture", "modulus of rupture", c.Rupture, 1e5, 3e7, JointWords.Stress),
        new("reaction", "modulus of foundation reaction k", c.Reaction, 0, 1e9, Reactions),
        new("expansion", "thermal expansion", c.Expansion, 0, 1e-4, Expansions),
        new("drainage", "drainage coefficient", c.Drainage, 0, 2, JointWords.Plain),
        new("dowel_support", "modulus of dowel support", c.DowelSupport, 0, 1e13, Reactions),
        new("steel_modulus", "modulus of steel", c.SteelModulus, 1e10, 1e12, JointWords.Stress),
        new("joint_width", "joint width", c.JointWidth, 0, 0.1, JointWords.Small),
        new("tyre_pressure", "tyre pressure", c.TyrePressure, 1e4, 5e6, JointWords.Stress),
        new("design_years", "number of design years", c.DesignYears, 0, 100, JointWords.Plain),
        new("growth", "growth of traffic", c.Growth, -0.5, 0.5, JointWords.Plain),
        new("equivalent_axles_per_day", "number of equivalent axles a day", c.EquivalentAxlesPerDay, -1e-9, 1e6, JointWords.Plain),
    ];

    private static Finding Bad(string code, string field, string sentence, string value, string mend, string? limit = null) =>
        new(code, FindingLevel.Error, sentence, new FindingPlace(Field: "joints." + field), value, mend, limit);
}
