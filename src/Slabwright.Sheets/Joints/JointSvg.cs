using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Joints;

/// <summary>How a joint is put on a screen.</summary>
/// <param name="WidthPx">Width the drawing may take, px.</param>
/// <param name="Units">Units of its dimensions.</param>
public sealed record JointSvgOptions(double WidthPx, UnitSystem Units)
{
    /// <summary>Reservoir at the top of the joint, or null where none is designed.</summary>
    public JointReservoir? Reservoir { get; init; }

    /// <summary>First part of the element ids inside, so that several drawings can share a page.</summary>
    public string IdPrefix { get; init; } = "joint";
}

/// <summary>The joint drawing as an SVG element: plan, face and section, with <c>data-ref="bar-3"</c> on everything of a bar.</summary>
public static class JointSvg
{
    private const double LeftNames = 92;
    private const double RightNames = 140;
    private const double SectionMargins = 96;

    /// <summary>Screens show the drawing's small print half as large again.</summary>
    private const double Zoom = 1.5;

    /// <summary>Draws a joint.</summary>
    /// <param name="joint">The joint as designed.</param>
    /// <param name="options">Width, units and the like.</param>
    public static string Draw(DesignedJoint joint, JointSvgOptions options)
    {
        ArgumentNullException.ThrowIfNull(joint);
        ArgumentNullException.ThrowIfNull(options);
        var width = options.WidthPx / Zoom;
        var key = Math.Clamp(width * 0.34, 130, 300);
        var across = Math.Max(40, width - LeftNames - RightNames) / joint.LaneWidth;
        var section = Math.Max(60, width - SectionMargins - key) / JointSection.LengthOf(joint);
        var drawing = new JointDrawingOptions(options.Units, across, Math.Min(section, across * 5)) { Reservoir = options.Reservoir, KeyWidth = key };
        var figure = Figure.Stack(JointWords.Title(joint), JointWords.Describe(joint, JobUnits.Of(options.Units)), 22,
            JointAcross.Draw(joint, drawing), JointSection.Draw(joint, drawing));
        return FigureSvg.Write(figure, options.IdPrefix, "joint-drawing", Zoom);
    }
}
