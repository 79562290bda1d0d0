using System.Collections.Immutable;
using Slabwright.Core.Measures;
using Slabwright.Core.Treatments;

namespace Slabwright.Sheets.Maps;

/// <summary>Hatch of a repair by its kind: rising lines, crossed lines, or crossed lines with lines along the road.</summary>
internal static class DxfHatch
{
    /// <summary>Distance of the hatch lines, m on the ground.</summary>
    private const double Spacing = 0.45;

    public static void Write(DxfText dxf, string layer, ImmutableArray<MapPoint> ring, Treatment kind, Unit unit)
    {
        double[] angles = kind switch
        {
            Treatment.SlabReplacement => [45, 135],
            Treatment.SlabRun => [45, 135, 0],
            _ => [45],
        };
        Write(dxf, layer, ring[..^1], angles, unit.FromBase(Spacing));
    }

    /// <summary>A hatch of straight lines.</summary>
    /// <param name="dxf">The file.</param>
    /// <param name="layer">Its layer.</param>
    /// <param name="ring">Corners, the first not repeated.</param>
    /// <param name="angles">Directions of the lines, degrees.</param>
    /// <param name="spacing">Distance of the lines, in the file's unit.</param>
    public static void Write(DxfText dxf, string layer, ImmutableArray<MapPoint> ring, ReadOnlySpan<double> angles, double spacing)
    {
        dxf.Entity("HATCH", layer, "AcDbHatch").Point(10, new MapPoint(0, 0)).Put(210, 0.0).Put(220, 0.0).Put(230, 1.0);
        dxf.Put(2, "REPAIR").Put(70, 0).Put(71, 0).Put(91, 1).Put(92, 2).Put(72, 0).Put(73, 1).Put(93, ring.Length);
        foreach (var point in ring) dxf.Put(10, point.X).Put(20, point.Y);
        dxf.Put(97, 0).Put(75, 0).Put(76, 0).Put(52, 0.0).Put(41, 1.0).Put(77, 0).Put(78, angles.Length);
        foreach (var angle in angles) PatternLine(dxf, angle, spacing);
        dxf.Put(98, 0);
    }

    private static void PatternLine(DxfText dxf, double degrees, double spacing)
    {
        var radians = degrees * Math.PI / 180;
        dxf.Put(53, degrees).Put(43, 0.0).Put(44, 0.0).Put(45, -spacing * Math.Sin(radians)).Put(46, spacing * Math.Cos(radians)).Put(79, 0);
    }
}
