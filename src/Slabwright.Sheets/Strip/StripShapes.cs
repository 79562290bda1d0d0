using System.Collections.Immutable;

namespace Slabwright.Sheets.Strip;

/// <summary>A point of the strip in road coordinates.</summary>
/// <param name="At">Metres along the road.</param>
/// <param name="Offset">Metres to the right of the left edge of lane 1, looking in the direction of travel.</param>
public readonly record struct StripPoint(double At, double Offset);

/// <summary>What a shape stands for; fixes its ink (see <see cref="StripInk"/>).</summary>
public enum StripStyle
{
    /// <summary>Concrete of a lane.</summary>
    Lane,

    /// <summary>Asphalt over the concrete.</summary>
    Overlay,

    /// <summary>Asphalt shoulder.</summary>
    AsphaltShoulder,

    /// <summary>Concrete shoulder.</summary>
    ConcreteShoulder,

    /// <summary>Curb, soil or gravel.</summary>
    OtherEdge,

    /// <summary>Earlier full-depth repair.</summary>
    EarlierRepair,

    /// <summary>Bridge, ramp or mark.</summary>
    Feature,

    /// <summary>No-cut zone.</summary>
    NoCutZone,

    /// <summary>Transverse joint with dowels.</summary>
    JointDowelled,

    /// <summary>Transverse joint without dowels.</summary>
    JointUndowelled,

    /// <summary>Working crack.</summary>
    WorkingCrack,

    /// <summary>Expansion joint or pavement end.</summary>
    JointHeavy,

    /// <summary>Edge of an earlier repair.</summary>
    EarlierRepairEdge,

    /// <summary>Tied longitudinal joint between lanes.</summary>
    LaneLineTied,

    /// <summary>Untied longitudinal joint between lanes.</summary>
    LaneLineUntied,

    /// <summary>Outer edge of the concrete.</summary>
    PavementEdge,

    /// <summary>Full-depth repair.</summary>
    FullDepth,

    /// <summary>Slab replacement.</summary>
    SlabReplacement,

    /// <summary>Slab run.</summary>
    SlabRun,

    /// <summary>Partial-depth repair.</summary>
    PartialDepth,

    /// <summary>Crack or joint to seal.</summary>
    Seal,

    /// <summary>Boundary cut around a repair.</summary>
    BoundaryCut,

    /// <summary>New joint inside a repair.</summary>
    IntermediateJoint,

    /// <summary>Dowel.</summary>
    Dowel,

    /// <summary>Tie bar.</summary>
    TieBar,

    /// <summary>Isolation board, at an end or along a side.</summary>
    Isolation,

    /// <summary>Edge form along a side.</summary>
    EdgeForm,

    /// <summary>Shoulder strip taken out and put back.</summary>
    ShoulderStrip,

    /// <summary>Distress of low severity, or of a type without severities.</summary>
    DistressLow,

    /// <summary>Distress of moderate severity.</summary>
    DistressModerate,

    /// <summary>Distress of high severity.</summary>
    DistressHigh,

    /// <summary>Core.</summary>
    Core,
}

/// <summary>What a text in the strip names.</summary>
public enum NoteKind
{
    /// <summary>Identifier of a repair.</summary>
    Repair,

    /// <summary>Identifier of a surface work.</summary>
    SurfaceWork,

    /// <summary>Code and severity of a distress.</summary>
    Distress,

    /// <summary>Slab number.</summary>
    SlabNumber,

    /// <summary>Bridge, ramp or mark.</summary>
    Feature,

    /// <summary>No-cut zone.</summary>
    NoCutZone,

    /// <summary>Core.</summary>
    Core,
}

/// <summary>A thing to draw. Shapes come in drawing order: later ones lie on top.</summary>
/// <param name="Style">What it stands for.</param>
/// <param name="Ref">Identifier of the repair, surface work or distress it belongs to; empty for the road itself.</param>
public abstract record StripShape(StripStyle Style, string Ref);

/// <summary>A filled outline.</summary>
/// <param name="Outline">Corners in order; the last joins the first.</param>
/// <param name="Style">What it stands for.</param>
/// <param name="Ref">What it belongs to.</param>
public sealed record StripArea(ImmutableArray<StripPoint> Outline, StripStyle Style, string Ref = "") : StripShape(Style, Ref);

/// <summary>A line through its points.</summary>
/// <param name="Points">Points in order.</param>
/// <param name="Style">What it stands for.</param>
/// <param name="Ref">What it belongs to.</param>
public sealed record StripLine(ImmutableArray<StripPoint> Points, StripStyle Style, string Ref = "") : StripShape(Style, Ref);

/// <summary>A dot, drawn at one size whatever the scale.</summary>
/// <param name="Centre">Where.</param>
/// <param name="Style">What it stands for.</param>
/// <param name="Ref">What it belongs to.</param>
public sealed record StripDot(StripPoint Centre, StripStyle Style, string Ref = "") : StripShape(Style, Ref);

/// <summary>A text that belongs at a place; the drawing decides where it fits.</summary>
/// <param name="Place">Middle of what it names.</param>
/// <param name="Extent">Length along the road of what it names, m.</param>
/// <param name="Lane">Lane number, or 0 when it belongs to no single lane.</param>
/// <param name="Kind">What it names.</param>
/// <param name="Text">The text.</param>
/// <param name="Ref">What it belongs to.</param>
public sealed record StripNote(StripPoint Place, double Extent, int Lane, NoteKind Kind, string Text, string Ref = "");

/// <summary>Where one lane lies across the strip.</summary>
/// <param name="Lane">Lane number.</param>
/// <param name="Left">Offset of its left edge, m.</param>
/// <param name="Right">Offset of its right edge, m.</param>
public readonly record struct LaneBand(int Lane, double Left, double Right)
{
    /// <summary>Offset of its centre, m.</summary>
    public double Middle => (Left + Right) / 2;

    /// <summary>Width, m.</summary>
    public double Width => Right - Left;
}

/// <summary>A stretch of the road as drawable shapes in road coordinates, without any scale or paper.</summary>
/// <param name="From">Metres along the road.</param>
/// <param name="To">Metres along the road.</param>
/// <param name="Left">Least offset drawn, m: the left shoulder's outer edge.</param>
/// <param name="Right">Greatest offset drawn, m.</param>
/// <param name="Lanes">Lanes that have concrete here, from the left.</param>
/// <param name="Shapes">Shapes in drawing order.</param>
/// <param name="Notes">Texts.</param>
public sealed record StripModel(
    double From,
    double To,
    double Left,
    double Right,
    ImmutableArray<LaneBand> Lanes,
    ImmutableArray<StripShape> Shapes,
    ImmutableArray<StripNote> Notes);
