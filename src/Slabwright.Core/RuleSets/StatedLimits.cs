using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.RuleSets;

/// <summary>A limit of a rule set, ready to print.</summary>
/// <param name="Key">Its name in the file, e.g. <c>boundaries.least_length</c>.</param>
/// <param name="Name">Its name in words, e.g. <c>least length</c>.</param>
/// <param name="Value">Value with its unit.</param>
/// <param name="Sentence">What it says.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record StatedLimit(string Key, string Name, string Value, string Sentence, SourceRef Source);

/// <summary>Lists the limits of a rule set for screens and sheets.</summary>
public static class StatedLimits
{
    /// <summary>The limits that bind, in the order of the file.</summary>
    /// <param name="set">The rule set.</param>
    /// <param name="units">Units of the printed values.</param>
    public static ImmutableArray<StatedLimit> Of(RuleSet set, UnitSystem units)
    {
        var limits = LimitTable.FromSet(set);
        return [.. LimitTable.Rows.Where(row => limits.ContainsKey(row.Path)).Select(row =>
        {
            var limit = limits[row.Path];
            return new StatedLimit(row.Path, row.Key.Replace('_', ' '), Print(row.Shape, limit.Value!.Value, units), limit.Sentence,
                limit.Source);
        })];
    }

    private static string Print(LimitShape shape, double value, UnitSystem units) => shape switch
    {
        LimitShape.YesNo => value != 0 ? "yes" : "no",
        LimitShape.Length => PrintLength(value, units),
        _ => value.ToString(CultureInfo.InvariantCulture),
    };

    /// <summary>Feet and inches, or metres and millimetres: the small unit below a foot and a half.</summary>
    private static string PrintLength(double metres, UnitSystem units)
    {
        var small = metres < 1.5 * Units.Foot.Factor;
        if (units == UnitSystem.UsCustomary) return small ? Units.Inch.Format(metres, 2) : Units.Foot.Format(metres);
        return small ? Units.Millimetre.Format(metres, 0) : Units.Metre.Format(metres, 2);
    }
}
