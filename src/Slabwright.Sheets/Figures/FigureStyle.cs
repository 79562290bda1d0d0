namespace Slabwright.Sheets.Figures;

/// <summary>What a shape of a figure stands for.</summary>
public enum FigureStyle
{
    /// <summary>Words of the drawing.</summary>
    Note,

    /// <summary>Quiet words.</summary>
    QuietNote,

    /// <summary>Old slab that stays.</summary>
    OldConcrete,

    /// <summary>New concrete of the repair.</summary>
    NewConcrete,

    /// <summary>What the slab lies on.</summary>
    Base,

    /// <summary>Top of the slab.</summary>
    Surface,

    /// <summary>Edge of the lane.</summary>
    LaneEdge,

    /// <summary>Wheel path.</summary>
    WheelPath,

    /// <summary>Full-depth boundary cut.</summary>
    BoundaryCut,

    /// <summary>Joint inside a repair: sawn to part of the depth.</summary>
    SawnJoint,

    /// <summary>Drilled hole.</summary>
    Hole,

    /// <summary>Grout or epoxy around the bar.</summary>
    Grout,

    /// <summary>Bar in the hole.</summary>
    BarAnchored,

    /// <summary>Free half of a bar.</summary>
    BarFree,

    /// <summary>Coat of grease on the free half.</summary>
    Grease,

    /// <summary>Rib of a deformed bar.</summary>
    Rib,

    /// <summary>Retention disc.</summary>
    Disc,

    /// <summary>Joint reservoir, before it is filled.</summary>
    Reservoir,

    /// <summary>Sealant.</summary>
    Sealant,

    /// <summary>Backer rod.</summary>
    Backer,

    /// <summary>Isolation board or filler.</summary>
    Board,

    /// <summary>Centre line of bars.</summary>
    CentreLine,

    /// <summary>Dimension line and its ticks.</summary>
    Dimension,

    /// <summary>Line that leads from a thing to its dimension.</summary>
    Extension,

    /// <summary>Drill frame of one set-up.</summary>
    DrillFrame,

    /// <summary>Balloon with a number.</summary>
    Balloon,

    /// <summary>Saw kerf, closed or open.</summary>
    Kerf,

    /// <summary>Crane, sling or lift pin.</summary>
    Rigging,

    /// <summary>Axis of a chart.</summary>
    Axis,

    /// <summary>Grid line of a chart.</summary>
    Grid,

    /// <summary>First curve: full line.</summary>
    CurveFirst,

    /// <summary>Second curve: dashed line.</summary>
    CurveSecond,

    /// <summary>Third curve: dash and dot.</summary>
    CurveThird,

    /// <summary>Fourth curve: dotted line.</summary>
    CurveFourth,

    /// <summary>Fifth curve: long dashes.</summary>
    CurveFifth,

    /// <summary>Sixth curve: dash and two dots.</summary>
    CurveSixth,

    /// <summary>What was expected before: thin and dashed.</summary>
    CurveBefore,

    /// <summary>Edge of a band.</summary>
    BandEdge,

    /// <summary>Band between a low and a high chance.</summary>
    ChanceBand,

    /// <summary>The same where it is not held by tests.</summary>
    ChanceBandUntested,

    /// <summary>A limit.</summary>
    Limit,

    /// <summary>The time traffic returns.</summary>
    Deadline,

    /// <summary>Column of a chart.</summary>
    Column,

    /// <summary>Column beyond its limit.</summary>
    ColumnBeyond,

    /// <summary>What passes every check.</summary>
    PointPasses,

    /// <summary>What fails a check: hollow.</summary>
    PointFails,

    /// <summary>The one chosen.</summary>
    PointChosen,

    /// <summary>Ring around the one chosen.</summary>
    WinnerRing,

    /// <summary>Ground behind a label that lies on a drawing.</summary>
    LabelGround,

    /// <summary>Wheel on the slab.</summary>
    Wheel,

    /// <summary>Line between two bands of a contour map.</summary>
    Contour,

    /// <summary>Contour of the value zero.</summary>
    ContourZero,

    /// <summary>Band of a contour map, lightest.</summary>
    Band1,

    /// <summary>Band of a contour map.</summary>
    Band2,

    /// <summary>Band of a contour map.</summary>
    Band3,

    /// <summary>Band of a contour map.</summary>
    Band4,

    /// <summary>Band of a contour map.</summary>
    Band5,

    /// <summary>Band of a contour map.</summary>
    Band6,

    /// <summary>Band of a contour map.</summary>
    Band7,

    /// <summary>Band of a contour map.</summary>
    Band8,

    /// <summary>Band of a contour map.</summary>
    Band9,

    /// <summary>Band of a contour map, darkest.</summary>
    Band10,
}
