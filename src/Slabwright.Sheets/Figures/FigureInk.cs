using Slabwright.Sheets.Strip;

namespace Slabwright.Sheets.Figures;

/// <summary>The ink of every figure style; the same inks as the strip, so that a repair looks the same on every sheet.</summary>
public static class FigureInk
{
    private const string Rule = "#9aa0a6";

    private static readonly StripInk[] All = Build();

    /// <summary>The ink of a style.</summary>
    public static StripInk Of(FigureStyle style) => All[(int)style];

    private static StripInk[] Build()
    {
        var inks = new StripInk[Enum.GetValues<FigureStyle>().Length];
        foreach (var (style, ink) in Joints().Concat(Marks()).Concat(Charts()).Concat(Bands())) inks[(int)style] = ink;
        return inks;
    }

    private static IEnumerable<(FigureStyle Style, StripInk Ink)> Joints() =>
    [
        (FigureStyle.OldConcrete, new("#f3f2ee", null, Hatch: Hatch.Sparse, HatchInk: "#8a9097")),
        (FigureStyle.NewConcrete, StripInk.Of(StripStyle.FullDepth)),
        (FigureStyle.Base, new("#eceae4", null, Hatch: Hatch.Falling, HatchInk: "#a9adb1")),
        (FigureStyle.Surface, new(null, StripInk.Ink, 1.2)),
        (FigureStyle.LaneEdge, new(null, StripInk.Ink, 1.4)),
        (FigureStyle.WheelPath, new(null, StripInk.Quiet, 0.6, [5, 3])),
        (FigureStyle.BoundaryCut, StripInk.Of(StripStyle.BoundaryCut)),
        (FigureStyle.SawnJoint, new(null, StripInk.Removal, 1.1, [5, 2])),
        (FigureStyle.Hole, new("#ffffff", StripInk.Ink, 0.6)),
        (FigureStyle.Grout, new("#d3ece7", null, Hatch: Hatch.Dotted, HatchInk: "#3f9286")),
        (FigureStyle.BarAnchored, new("#3b424a", StripInk.Ink, 0.5)),
        (FigureStyle.BarFree, new("#ffffff", StripInk.Ink, 0.9)),
        (FigureStyle.Grease, new(null, StripInk.Surface, 1.3, [0.1, 2.4])),
        (FigureStyle.Rib, new(null, "#ffffff", 0.7)),
        (FigureStyle.Disc, new(StripInk.Surface, StripInk.Ink, 0.4)),
        (FigureStyle.Reservoir, new("#ffffff", StripInk.Ink, 0.7)),
        (FigureStyle.Sealant, new("#6b7278", StripInk.Ink, 0.6, Hatch: Hatch.Upright, HatchInk: "#3b424a")),
        (FigureStyle.Backer, new("#ffffff", StripInk.Ink, 0.7, Hatch: Hatch.Crossed, HatchInk: "#9aa0a6")),
        (FigureStyle.Board, new("#e5c9b3", StripInk.Removal, 0.8, Hatch: Hatch.Upright, HatchInk: "#b98a63")),
        (FigureStyle.Kerf, new("#ffffff", StripInk.Removal, 0.9)),
        (FigureStyle.Rigging, new(null, StripInk.Damage, 1.3)),
    ];

    private static IEnumerable<(FigureStyle Style, StripInk Ink)> Marks() =>
    [
        (FigureStyle.Note, new(StripInk.Ink, null)),
        (FigureStyle.QuietNote, new(StripInk.Quiet, null)),
        (FigureStyle.CentreLine, new(null, StripInk.Quiet, 0.5, [8, 2, 1.5, 2])),
        (FigureStyle.Dimension, new(null, StripInk.Ink, 0.5)),
        (FigureStyle.Extension, new(null, Rule, 0.35)),
        (FigureStyle.DrillFrame, new(null, StripInk.Damage, 1.3)),
        (FigureStyle.Balloon, new("#ffffff", StripInk.Ink, 0.7)),
    ];

    private static IEnumerable<(FigureStyle Style, StripInk Ink)> Charts() =>
    [
        (FigureStyle.Axis, new(null, StripInk.Ink, 0.8)),
        (FigureStyle.Grid, new(null, Rule, 0.35)),
        (FigureStyle.CurveFirst, new(null, StripInk.Removal, 1.6)),
        (FigureStyle.CurveSecond, new(null, StripInk.Damage, 1.5, [6, 3])),
        (FigureStyle.CurveThird, new(null, StripInk.Surface, 1.5, [8, 2.5, 1.5, 2.5])),
        (FigureStyle.CurveFourth, new(null, StripInk.Ink, 1.8, [0.1, 3])),
        (FigureStyle.CurveFifth, new(null, StripInk.NoCut, 1.4, [11, 3])),
        (FigureStyle.CurveSixth, new(null, StripInk.Quiet, 1.4, [7, 2, 1.5, 2, 1.5, 2])),
        (FigureStyle.CurveBefore, new(null, StripInk.Quiet, 0.9, [3, 2.4])),
        (FigureStyle.BandEdge, new(null, StripInk.Removal, 0.6)),
        (FigureStyle.ChanceBand, new("#f9e9de", null, Hatch: Hatch.Falling, HatchInk: "#e7bfa5")),
        (FigureStyle.ChanceBandUntested, new("#ffffff", null, Hatch: Hatch.Dotted, HatchInk: "#c98a66")),
        (FigureStyle.Deadline, new(null, StripInk.Ink, 2)),
        (FigureStyle.Limit, new(null, StripInk.Ink, 1.1, [3, 2])),
        (FigureStyle.Column, new("#c9cdd1", StripInk.Ink, 0.5)),
        (FigureStyle.ColumnBeyond, new("#fbe3d6", StripInk.Removal, 1, Hatch: Hatch.Crossed, HatchInk: "#dc8a66")),
        (FigureStyle.PointPasses, new("#3b424a", StripInk.Ink, 0.6)),
        (FigureStyle.PointFails, new("#ffffff", StripInk.Quiet, 0.9)),
        (FigureStyle.PointChosen, new(StripInk.Removal, "#ffffff", 0.8)),
        (FigureStyle.WinnerRing, new("#ffffff", StripInk.Removal, 1.3)),
        (FigureStyle.LabelGround, new("#ffffff", null)),
        (FigureStyle.Wheel, new(null, StripInk.Ink, 1.2)),
        (FigureStyle.Contour, new(null, "#3b424a", 0.5)),
        (FigureStyle.ContourZero, new(null, StripInk.Ink, 1.3)),
    ];

    /// <summary>One hue from light to dark, so that a black-and-white copy keeps the order.</summary>
    private static IEnumerable<(FigureStyle Style, StripInk Ink)> Bands()
    {
        string[] fills = ["#fdf4ec", "#fae6d5", "#f5d5bb", "#eec09d", "#e5a97f", "#d99063", "#c8764b", "#b25e38", "#974929", "#79371d"];
        return fills.Select((fill, i) => (FigureStyle.Band1 + i, new StripInk(fill, null)));
    }
}
