using System.Collections.Immutable;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Maps;

namespace Slabwright.Sheets.Joints;

/// <summary>The layers of the joint drawing file.</summary>
internal static class JointDxfLayers
{
    public const string Slabs = "JOINT-SLABS";
    public const string Hatch = "JOINT-HATCH";
    public const string LaneEdges = "JOINT-LANE-EDGES";
    public const string Cuts = "JOINT-CUTS";
    public const string WheelPaths = "JOINT-WHEEL-PATHS";
    public const string Holes = "JOINT-HOLES";
    public const string Bars = "JOINT-BARS";
    public const string SetUps = "JOINT-DRILL-SET-UPS";
    public const string Seal = "JOINT-SEAL";
    public const string CentreLines = "JOINT-CENTRE-LINES";
    public const string Dimensions = "JOINT-DIMENSIONS";
    public const string Text = "JOINT-TEXT";

    public static ImmutableArray<DxfLayer> All { get; } =
    [
        new(Slabs, 8, "CONTINUOUS", "Outlines of old slab, new concrete and base"),
        new(Hatch, 30, "CONTINUOUS", "Hatch of the new concrete"),
        new(LaneEdges, 7, "CONTINUOUS", "Lane edges and top of the slab"),
        new(Cuts, 1, "CONTINUOUS", "Boundary cut or joint inside the repair"),
        new(WheelPaths, 8, "DASHED", "Wheel paths"),
        new(Holes, 5, "CONTINUOUS", "Drilled holes, grout and disc"),
        new(Bars, 3, "CONTINUOUS", "Bars, at their true size and place"),
        new(SetUps, 5, "CONTINUOUS", "Drill set-ups"),
        new(Seal, 4, "CONTINUOUS", "Reservoir, sealant and board"),
        new(CentreLines, 8, "DASHED", "Centre line of the bars"),
        new(Dimensions, 7, "CONTINUOUS", "Dimension and extension lines"),
        new(Text, 7, "CONTINUOUS", "Words and figures"),
    ];

    /// <summary>Layer of a style, or null for what only screens and paper show.</summary>
    public static string? Of(FigureStyle style) => style switch
    {
        FigureStyle.OldConcrete or FigureStyle.NewConcrete or FigureStyle.Base => Slabs,
        FigureStyle.LaneEdge or FigureStyle.Surface => LaneEdges,
        FigureStyle.BoundaryCut or FigureStyle.SawnJoint => Cuts,
        FigureStyle.WheelPath => WheelPaths,
        FigureStyle.Hole or FigureStyle.Disc => Holes,
        FigureStyle.BarAnchored or FigureStyle.BarFree => Bars,
        FigureStyle.DrillFrame => SetUps,
        FigureStyle.Reservoir or FigureStyle.Sealant or FigureStyle.Backer or FigureStyle.Board => Seal,
        FigureStyle.CentreLine => CentreLines,
        FigureStyle.Dimension or FigureStyle.Extension or FigureStyle.Balloon or FigureStyle.Axis or FigureStyle.PointPasses => Dimensions,
        FigureStyle.Note or FigureStyle.QuietNote => Text,
        _ => null,
    };
}
