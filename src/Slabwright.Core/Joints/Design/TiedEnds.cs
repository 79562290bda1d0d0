using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Joints.Design;

/// <summary>The tie bars of a tied end: deformed bars of 1 in (No. 8), 24 in long, over the full width at the dowel spacing.</summary>
/// <remarks>Size and length are common practice; one third of the length in the old slab is the Illinois Tollway's drawing of 2019.</remarks>
internal static class TiedEnds
{
    private const double Inch = 0.0254;

    public static SourceRef Embedment { get; } = new("IL-TOLLWAY-2019", "full-depth repair drawing, summary of revisions", SourceStatus.Verified);

    public static BarLayout Layout(Lane lane, double clearLeft, double clearRight, double thickness, JointLimits limits) => new()
    {
        Kind = BarKind.TieBar,
        Arrangement = BarArrangement.FullWidth,
        Diameter = Inch,
        Length = 24 * Inch,
        Embedment = 8 * Inch,
        Depth = thickness / 2,
        Offsets = BarRow.FullWidth(clearLeft, lane.Width - clearRight, limits.DowelSpacing.Value),
        Spacing = limits.DowelSpacing.Value,
    };
}
