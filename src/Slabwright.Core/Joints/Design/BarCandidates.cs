using System.Collections.Immutable;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Joints.Design;

/// <summary>Every way to set dowels across a lane: diameters and lengths to be had, over the full width or 3, 4, 5 in each wheel path.</summary>
internal static class BarCandidates
{
    private static readonly int[] PerPath = [3, 4, 5];

    /// <summary>All layouts, and null for a joint without dowels.</summary>
    public static ImmutableArray<BarLayout?> All(JointConditions c, JointLimits limits, JointInputs inputs)
    {
        var rows = Rows(c, limits.DowelSpacing.Value);
        var bars = from row in rows
                   from diameter in inputs.Diameters
                   from length in inputs.Lengths
                   select new BarLayout
                   {
                       Kind = BarKind.Dowel,
                       Arrangement = row.Arrangement,
                       Diameter = diameter,
                       Length = length,
                       Embedment = length / 2,
                       Depth = c.Thickness / 2,
                       Offsets = row.Offsets,
                       Spacing = limits.DowelSpacing.Value,
                   };
        return [null, .. bars];
    }

    /// <summary>Rows of bars that fit between the bounds of the lane; a row with the same bars as an earlier one is left out.</summary>
    private static List<(BarArrangement Arrangement, ImmutableArray<double> Offsets)> Rows(JointConditions c, double spacing)
    {
        var (first, last) = (c.ClearLeft, c.LaneWidth - c.ClearRight);
        var rows = new List<(BarArrangement, ImmutableArray<double>)>();
        foreach (var count in PerPath)
        {
            var offsets = BarRow.WheelPaths(first, last, spacing, count);
            if (!offsets.IsEmpty) rows.Add((BarArrangement.WheelPaths, offsets));
        }

        var full = BarRow.FullWidth(first, last, spacing);
        if (!full.IsEmpty) rows.Add((BarArrangement.FullWidth, full));
        return rows;
    }
}
