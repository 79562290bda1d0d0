using System.Collections.Immutable;

namespace Slabwright.Sheets.Maps;

/// <summary>A layer of the drawing.</summary>
/// <param name="Name">Layer name.</param>
/// <param name="Colour">Colour index of the format, 1 to 255.</param>
/// <param name="LineType">Line type.</param>
/// <param name="Holds">What it holds, for the documentation.</param>
internal sealed record DxfLayer(string Name, int Colour, string LineType, string Holds);

/// <summary>The layers of the drawing, named object first so that they sort together.</summary>
internal static class DxfLayers
{
    public const string LaneEdges = "LANE-EDGES";
    public const string Joints = "SLAB-JOINTS";
    public const string Cracks = "SLAB-CRACKS";
    public const string SlabText = "SLAB-TEXT";
    public const string Distress = "DISTRESS";
    public const string DistressText = "DISTRESS-TEXT";
    public const string Cuts = "REPAIR-CUTS";
    public const string NewJoints = "REPAIR-JOINTS";
    public const string Hatch = "REPAIR-HATCH";
    public const string RepairText = "REPAIR-TEXT";
    public const string Surface = "SURFACE-WORKS";
    public const string SurfaceText = "SURFACE-TEXT";
    public const string NoCut = "NO-CUT-ZONES";
    public const string Stations = "STATIONS";
    public const string Notes = "NOTES";

    public static ImmutableArray<DxfLayer> All { get; } =
    [
        new(LaneEdges, 7, "CONTINUOUS", "Lane edges"),
        new(Joints, 8, "CONTINUOUS", "Transverse joints, true skew"),
        new(Cracks, 8, "DASHED", "Working cracks"),
        new(SlabText, 8, "CONTINUOUS", "Slab numbers"),
        new(Distress, 5, "CONTINUOUS", "Distresses as surveyed"),
        new(DistressText, 5, "CONTINUOUS", "Distress codes and severity"),
        new(Cuts, 1, "CONTINUOUS", "Boundary cuts, one closed outline a repair"),
        new(NewJoints, 1, "DASHED", "New transverse joints inside repairs"),
        new(Hatch, 30, "CONTINUOUS", "Hatch by kind of repair"),
        new(RepairText, 1, "CONTINUOUS", "Repair numbers with stations and length"),
        new(Surface, 3, "CONTINUOUS", "Partial-depth repairs and seals"),
        new(SurfaceText, 3, "CONTINUOUS", "Numbers of surface works"),
        new(NoCut, 6, "DASHED", "No-cut zones"),
        new(Stations, 7, "CONTINUOUS", "Station ticks and figures"),
        new(Notes, 7, "CONTINUOUS", "What the drawing is"),
    ];
}
