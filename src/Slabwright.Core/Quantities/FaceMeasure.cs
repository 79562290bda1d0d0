using System.Collections.Immutable;
using Slabwright.Core.Boundaries;

namespace Slabwright.Core.Quantities;

/// <summary>Lengths along the two long sides of a repair.</summary>
internal static class FaceMeasure
{
    /// <summary>Sides that face concrete; an edge shared by two repairs counts with the lane to the left, that is on its right side.</summary>
    /// <remarks>Source: MoDOT EPG 613.1, the joint between lanes is measured once.</remarks>
    /// <param name="repair">The repair.</param> <param name="units">Units of the item.</param>
    /// <param name="tellTieBars">True to say how much of the cut runs through tie bars.</param>
    public static Measurement? FacingConcrete(Repair repair, PayUnits units, bool tellTieBars)
    {
        var left = Length(repair.LeftFace, f => f is LongitudinalFace.Isolated or LongitudinalFace.Tied);
        var right = Length(repair.RightFace, FacesConcrete);
        var remarks = new List<string>();
        var severed = tellTieBars ? SeveredLength(repair) : 0;
        if (severed > 0) remarks.Add($"{units.Of(severed)} through tie bars");
        AddShared(remarks, repair, units);
        return Sum(left, right, units, string.Join("; ", remarks));
    }

    /// <summary>Sides with a given face.</summary>
    public static Measurement? With(Repair repair, PayUnits units, Func<LongitudinalFace, bool> wanted) =>
        Sum(Length(repair.LeftFace, wanted), Length(repair.RightFace, wanted), units, "");

    /// <summary>True for a face against old or new concrete.</summary>
    public static bool FacesConcrete(LongitudinalFace face) =>
        face is LongitudinalFace.Isolated or LongitudinalFace.Tied or LongitudinalFace.SharedWithRepair;

    /// <summary>True for a face made with an edge form.</summary>
    public static bool Formed(LongitudinalFace face) => face is LongitudinalFace.FormedAgainstShoulder or LongitudinalFace.Formed;

    /// <summary>Length of the stretches with a wanted face, m.</summary>
    public static double Length(ImmutableArray<FaceStretch> side, Func<LongitudinalFace, bool> wanted) =>
        side.Where(s => wanted(s.Face)).Sum(s => s.To - s.From);

    private static double SeveredLength(Repair repair) =>
        Severed(repair.LeftFace, f => f is LongitudinalFace.Isolated or LongitudinalFace.Tied) + Severed(repair.RightFace, FacesConcrete);

    private static double Severed(ImmutableArray<FaceStretch> side, Func<LongitudinalFace, bool> wanted) =>
        side.Where(s => s.TieBarsSevered && wanted(s.Face)).Sum(s => s.To - s.From);

    private static void AddShared(List<string> remarks, Repair repair, PayUnits units)
    {
        var here = Length(repair.RightFace, f => f == LongitudinalFace.SharedWithRepair);
        var there = Length(repair.LeftFace, f => f == LongitudinalFace.SharedWithRepair);
        if (here > 0) remarks.Add($"{units.Of(here)} shared with the repair to the right, counted here");
        if (there > 0) remarks.Add($"{units.Of(there)} shared with the repair to the left, counted there");
    }

    private static Measurement? Sum(double left, double right, PayUnits units, string remark)
    {
        if (left + right <= 0) return null;
        var parts = new List<string>(2);
        if (left > 0) parts.Add($"left {units.Of(left)}");
        if (right > 0) parts.Add($"right {units.Of(right)}");
        var divisor = units.Divisor();
        var sum = string.Join(" + ", parts);
        return new Measurement(left + right, divisor.Length > 0 && parts.Count > 1 ? $"({sum}){divisor}" : sum + divisor, remark);
    }
}
