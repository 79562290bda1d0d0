using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Quantities;

/// <summary>Dowels and tie bars, counted each.</summary>
internal static class BarMeasure
{
    /// <summary>
    /// Tie bar spacing used where the rule set ties a side but names no spacing, m: 30 in. A finding says so.
    /// </summary>
    /// <remarks>Source: FHWA Concrete Pavement Preservation Guide (from memory).</remarks>
    public const double FallbackTieSpacing = 30 * 0.0254;

    /// <summary>Dowels drilled at the two ends.</summary>
    public static Measurement? Drilled(Repair repair) => Count(
        [(repair.Start.Design == JointDesign.Dowelled ? repair.Start.Bars : 0, "start"),
         (repair.End.Design == JointDesign.Dowelled ? repair.End.Bars : 0, "end")]);

    /// <summary>Dowels in baskets at joints inside.</summary>
    public static Measurement? Baskets(Repair repair)
    {
        var joints = repair.Intermediate.Where(j => j.Design == JointDesign.Dowelled && j.Bars > 0).ToImmutableArray();
        if (joints.IsEmpty) return null;
        var bars = joints.Sum(j => j.Bars);
        var same = joints.All(j => j.Bars == joints[0].Bars);
        var working = same ? $"{joints.Length} × {joints[0].Bars}" : string.Join(" + ", joints.Select(j => Text(j.Bars)));
        return new Measurement(bars, working, joints.Length == 1 ? "1 joint inside" : $"{joints.Length} joints inside");
    }

    /// <summary>Tie bars at tied ends and along tied sides.</summary>
    /// <param name="repair">The repair.</param> <param name="spacing">Spacing along a side, m.</param> <param name="units">Units of the item.</param>
    public static Measurement? Ties(Repair repair, double spacing, PayUnits units)
    {
        var parts = new List<(int Bars, string Where)>
        {
            (repair.Start.Design == JointDesign.Tied ? repair.Start.Bars : 0, "start"),
            (repair.End.Design == JointDesign.Tied ? repair.End.Bars : 0, "end"),
        };
        AddSide(parts, repair.LeftFace, spacing, units, "left");
        AddSide(parts, repair.RightFace, spacing, units, "right");
        return Count(parts);
    }

    /// <summary>Tie bars along a stretch: its length over the spacing, rounded up; bars stand half a division from the ends.</summary>
    /// <param name="length">Length of the stretch, m.</param> <param name="spacing">Greatest spacing, m.</param>
    public static int TiesAlong(double length, double spacing) => Ticks.CountUp(length, spacing);

    private static void AddSide(
        List<(int Bars, string Where)> parts, ImmutableArray<FaceStretch> side, double spacing, PayUnits units, string name)
    {
        foreach (var stretch in side.Where(s => s.Face == LongitudinalFace.Tied && s.To > s.From))
        {
            var length = stretch.To - stretch.From;
            parts.Add((TiesAlong(length, spacing), $"{name} {units.Of(length)} at {units.Of(spacing)} or less"));
        }
    }

    private static Measurement? Count(IEnumerable<(int Bars, string Where)> parts)
    {
        var counted = parts.Where(p => p.Bars > 0).ToList();
        if (counted.Count == 0) return null;
        return new Measurement(
            counted.Sum(p => p.Bars), string.Join(" + ", counted.Select(p => Text(p.Bars))), string.Join(", ", counted.Select(p => p.Where)));
    }

    private static string Text(int count) => count.ToString(CultureInfo.InvariantCulture);
}
