using Slabwright.Core.Measures;
using Slabwright.Sheets.Figures;

namespace Slabwright.Sheets.Joints;

/// <summary>The cut at the top of a joint.</summary>
/// <param name="Width">Width of the reservoir, m.</param>
/// <param name="Depth">Depth of the reservoir, m.</param>
/// <param name="SawDepth">Depth of the first saw cut of a joint inside a repair, m; null at boundary cuts, which go through the slab.</param>
public sealed record JointReservoir(double Width, double Depth, double? SawDepth = null);

/// <summary>How a joint is drawn.</summary>
/// <param name="Units">Units of its dimensions.</param>
/// <param name="AcrossScale">Points a metre of plan and face.</param>
/// <param name="SectionScale">Points a metre of the section through one bar.</param>
public sealed record JointDrawingOptions(UnitSystem Units, double AcrossScale, double SectionScale)
{
    /// <summary>Reservoir at the top of the joint, or null where none is designed.</summary>
    public JointReservoir? Reservoir { get; init; }

    /// <summary>Measures texts.</summary>
    public TextRuler Ruler { get; init; } = FigureBuilder.ScreenRuler;

    /// <summary>Width of the key beside the section, points.</summary>
    public double KeyWidth { get; init; } = 230;
}
