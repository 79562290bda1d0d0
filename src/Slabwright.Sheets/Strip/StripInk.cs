using System.Collections.Immutable;

namespace Slabwright.Sheets.Strip;

/// <summary>Line patterns that fill an area, so that colour never carries meaning alone.</summary>
public enum Hatch
{
    /// <summary>No pattern.</summary>
    None,

    /// <summary>Lines rising to the right.</summary>
    Rising,

    /// <summary>Lines rising and falling.</summary>
    Crossed,

    /// <summary>Rising lines close together, and lines along the road.</summary>
    Woven,

    /// <summary>Dots.</summary>
    Dotted,

    /// <summary>Dots far apart.</summary>
    Sparse,

    /// <summary>Wide falling lines.</summary>
    Falling,

    /// <summary>Close lines across the road.</summary>
    Upright,
}

/// <summary>The ink of a style: fill, hatch and stroke. Widths and dashes in points (1/72 in).</summary>
/// <param name="Fill">Fill colour <c>#rrggbb</c>, or null.</param>
/// <param name="Stroke">Stroke colour <c>#rrggbb</c>, or null.</param>
/// <param name="Width">Stroke width, pt.</param>
/// <param name="Dash">Dash lengths, pt; empty for a full line.</param>
/// <param name="Hatch">Pattern.</param>
/// <param name="HatchInk">Colour of the pattern, or null.</param>
public sealed record StripInk(
    string? Fill, string? Stroke, double Width = 0, ImmutableArray<double> Dash = default, Hatch Hatch = Hatch.None, string? HatchInk = null)
{
    /// <summary>Dark ink of texts and lines.</summary>
    public const string Ink = "#16191d";

    /// <summary>Quiet ink of joints and slab numbers.</summary>
    public const string Quiet = "#5d6670";

    /// <summary>Ink of removal.</summary>
    public const string Removal = "#b23a0e";

    /// <summary>Ink of surface works.</summary>
    public const string Surface = "#0b6a5e";

    /// <summary>Ink of distresses.</summary>
    public const string Damage = "#27379b";

    /// <summary>Ink of no-cut zones.</summary>
    public const string NoCut = "#7a1f6a";

    private static readonly StripInk[] All = Build();

    /// <summary>The ink of a style.</summary>
    public static StripInk Of(StripStyle style) => All[(int)style];

    private static StripInk[] Build()
    {
        var inks = new StripInk[Enum.GetValues<StripStyle>().Length];
        foreach (var (style, ink) in Road().Concat(Work()).Concat(Details())) inks[(int)style] = ink;
        return inks;
    }

    private static IEnumerable<(StripStyle Style, StripInk Ink)> Road() =>
    [
        (StripStyle.Lane, new("#f3f2ee", null)),
        (StripStyle.Overlay, new("#dcdcda", null, Hatch: Hatch.Sparse, HatchInk: "#8a9097")),
        (StripStyle.AsphaltShoulder, new("#d5d7d9", null)),
        (StripStyle.ConcreteShoulder, new("#e8e7e1", "#9aa0a6", 0.3)),
        (StripStyle.OtherEdge, new("#ffffff", "#9aa0a6", 0.3, [1, 1.5])),
        (StripStyle.EarlierRepair, new("#e2e0d6", "#5d6670", 0.5)),
        (StripStyle.Feature, new(null, Quiet, 0.8)),
        (StripStyle.NoCutZone, new(null, NoCut, 0.8, [4, 2], Hatch.Falling, "#c79ac0")),
        (StripStyle.JointDowelled, new(null, Quiet, 0.5)),
        (StripStyle.JointUndowelled, new(null, Quiet, 0.5, [3, 1.5])),
        (StripStyle.WorkingCrack, new(null, Quiet, 0.6, [1.2, 1.2])),
        (StripStyle.JointHeavy, new(null, Ink, 1.4)),
        (StripStyle.EarlierRepairEdge, new(null, Quiet, 0.9)),
        (StripStyle.LaneLineTied, new(null, Ink, 0.6)),
        (StripStyle.LaneLineUntied, new(null, Ink, 0.6, [6, 2])),
        (StripStyle.PavementEdge, new(null, Ink, 0.9)),
    ];

    private static IEnumerable<(StripStyle Style, StripInk Ink)> Work() =>
    [
        (StripStyle.FullDepth, new("#fbe3d6", null, Hatch: Hatch.Rising, HatchInk: "#dc8a66")),
        (StripStyle.SlabReplacement, new("#fbe3d6", null, Hatch: Hatch.Crossed, HatchInk: "#dc8a66")),
        (StripStyle.SlabRun, new("#f7d2bf", null, Hatch: Hatch.Woven, HatchInk: "#d07a53")),
        (StripStyle.PartialDepth, new("#d3ece7", Surface, 0.9, [2.5, 1.2], Hatch.Dotted, "#3f9286")),
        (StripStyle.Seal, new(null, Surface, 1.8, [0.1, 2.6])),
    ];

    private static IEnumerable<(StripStyle Style, StripInk Ink)> Details() =>
    [
        (StripStyle.BoundaryCut, new(null, Removal, 1.5)),
        (StripStyle.IntermediateJoint, new(null, Removal, 0.8, [4, 1.5])),
        (StripStyle.Dowel, new(null, Ink, 0.7)),
        (StripStyle.TieBar, new(null, Ink, 1.1)),
        (StripStyle.Isolation, new(null, Removal, 2.4, [5, 1.2])),
        (StripStyle.EdgeForm, new(null, Removal, 1.5, [1.5, 1.5])),
        (StripStyle.ShoulderStrip, new("#b9bdc1", null, Hatch: Hatch.Upright, HatchInk: "#7f868d")),
        (StripStyle.DistressLow, new(null, Damage, 0.5, Hatch: Hatch.None)),
        (StripStyle.DistressModerate, new(null, Damage, 0.9)),
        (StripStyle.DistressHigh, new(null, Damage, 1.4)),
        (StripStyle.Core, new("#ffffff", Ink, 0.8)),
    ];
}
