using Slabwright.Core.Joints.Slabs;

namespace Slabwright.Core.Joints.Design;

/// <summary>
/// The slabs of a build-up for plate finite elements: the old slab, the repair and the slab behind it, one lane wide and free at its long
/// sides. The joint looked at lies at 0 along; across counts from the lane's left edge.
/// </summary>
/// <remarks>
/// The old slabs are modelled up to five radii of relative stiffness, beyond which a slab does not feel the joint. The far joint of the
/// repair has the stiffness of dowels of 1¼ in at 12 in whatever the bars looked at. Cut faces carry nothing by themselves.
/// </remarks>
public static class JointSlabs
{
    /// <summary>Index of the old slab before the joint.</summary>
    public const int Old = 0;

    /// <summary>Index of the repair.</summary>
    public const int Repair = 1;

    /// <summary>Index of the slab behind the repair.</summary>
    public const int Behind = 2;

    /// <summary>Radii of relative stiffness beyond which a slab is not modelled.</summary>
    internal const double Feels = 5;

    /// <summary>Diameter of the far joint's dowels, m.</summary>
    internal const double FarBar = 1.25 * 0.0254;

    private const double FarSpacing = 12 * 0.0254;
    private const double SteelPoisson = 0.3;

    /// <summary>The slabs of a build-up, with bars at the joint or without.</summary>
    /// <param name="conditions">The build-up.</param> <param name="bars">Bars at the joint; null for none.</param>
    /// <param name="mesh">How fine; the search's mesh when null.</param>
    /// <param name="whole">True to model the old slabs whole, for wheels far from the joint.</param>
    public static SlabSystem Of(JointConditions conditions, BarLayout? bars = null, SlabMesh? mesh = null, bool whole = false)
    {
        var c = conditions;
        var old = whole ? c.OldSlab : Math.Min(c.OldSlab, Feels * c.Radius);
        var far = DowelSpring.TwoSided(c.DowelSupport, FarBar, c.SteelModulus, SteelPoisson, c.JointWidth) / FarSpacing;
        return new SlabSystem
        {
            Pieces = [Piece(c, "old slab", -old, 0), Piece(c, "repair", 0, c.Repair), Piece(c, "slab behind", c.Repair, c.Repair + old)],
            Reaction = c.Reaction,
            Bars = bars is null ? [] : [.. bars.Offsets.Select(x => new SlabBar(Old, Repair, x, Bar(c, bars)))],
            Transverse = [new TransverseMeeting(Repair, Behind, far)],
            Mesh = mesh ?? SlabMesh.Coarse,
        };
    }

    /// <summary>One bar of a layout across the joint.</summary>
    /// <param name="conditions">Joint width, dowel support and steel.</param> <param name="bars">The layout.</param>
    public static GapBar Bar(JointConditions conditions, BarLayout bars) => Bar(conditions, bars.Diameter, bars.Embedment, Beyond(conditions, bars));

    internal static GapBar Bar(JointConditions c, double diameter, double first, double second) =>
        new(diameter, c.JointWidth, first, second, c.DowelSupport, c.SteelModulus, SteelPoisson);

    /// <summary>Length of a bar in the repair, m.</summary>
    internal static double Beyond(JointConditions c, BarLayout bars) => Math.Max(0.01, bars.Length - bars.Embedment - c.JointWidth);

    private static SlabPiece Piece(JointConditions c, string name, double from, double to) => new()
    {
        Name = name,
        From = from,
        To = to,
        Left = 0,
        Right = c.LaneWidth,
        Thickness = c.Thickness,
        Modulus = c.Modulus,
        Poisson = c.Poisson,
        Expansion = c.Expansion,
    };
}
