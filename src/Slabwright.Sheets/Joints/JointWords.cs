using System.Globalization;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Joints.Design;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Joints;

/// <summary>Words about joints and bars, the same on sheets, tables and screens.</summary>
public static class JointWords
{
    /// <summary>Which joint of its repair.</summary>
    public static string Of(JointPosition position) => position switch
    {
        JointPosition.Start => "start",
        JointPosition.Inner => "inside",
        _ => "end",
    };

    /// <summary>How bars stand along the joint.</summary>
    public static string Of(BarArrangement arrangement) => arrangement == BarArrangement.WheelPaths ? "wheel paths" : "full width";

    /// <summary>Bars in a line: <c>11 dowels 1 1/2 × 18 in</c>.</summary>
    public static string Of(BarLayout? bars, JobUnits units) => bars is null
        ? "no bars"
        : $"{SheetWords.Count(bars.Bars, bars.Kind == BarKind.Dowel ? "dowel" : "tie bar")} {Size(bars, units)}, {Of(bars.Arrangement)}";

    /// <summary>Diameter and length: <c>1 1/2 in × 18 in</c>.</summary>
    public static string Size(BarLayout bars, JobUnits units) => $"{units.Detail(bars.Diameter)} × {units.Detail(bars.Length)}";

    /// <summary>Numbers as ranges: <c>1–5, 7</c>.</summary>
    public static string Ranges(IReadOnlyList<int> numbers)
    {
        var sorted = numbers.Distinct().Order().ToList();
        var parts = new List<string>();
        for (var i = 0; i < sorted.Count;)
        {
            var last = i;
            while (last + 1 < sorted.Count && sorted[last + 1] == sorted[last] + 1) last++;
            parts.Add(last - i < 2 ? string.Join(", ", sorted.Skip(i).Take(last - i + 1).Select(N)) : $"{N(sorted[i])}–{N(sorted[last])}");
            i = last + 1;
        }

        return string.Join(", ", parts);
    }

    /// <summary>The joint's kind with what stands in it.</summary>
    public static string Title(DesignedJoint joint) => joint.Position == JointPosition.Inner
        ? $"{SheetWords.Of(joint.Design)} joint inside the repair"
        : $"{SheetWords.Of(joint.Design)} {Of(joint.Position)} joint";

    /// <summary>One or two sentences that tell the drawing to somebody who cannot see it.</summary>
    public static string Describe(DesignedJoint joint, JobUnits units)
    {
        var where = $"Lane {N(joint.Lane)}, {units.Running(joint.LaneWidth)} wide, slab {units.Detail(joint.Thickness)} thick.";
        if (joint.Bars is not { } bars) return $"{where} No bars.";
        var offsets = string.Join(", ", bars.Offsets.Select(units.Running));
        var drilled = joint.Drilling is { } d
            ? $" Holes {units.Detail(d.HoleDiameter)} wide and {units.Detail(d.HoleDepth)} deep, {units.Detail(bars.Embedment)} of bar in the old slab."
            : "";
        return $"{where} {Of(bars, units)}, centres {units.Detail(bars.Depth)} below the surface and {offsets} from the lane's left edge.{drilled}";
    }

    private static string N(int value) => value.ToString(CultureInfo.InvariantCulture);
}
