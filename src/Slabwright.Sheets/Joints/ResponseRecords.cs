using System.Collections.Immutable;
using Slabwright.Core.Measures;
using Slabwright.Sheets.Figures;

namespace Slabwright.Sheets.Joints;

/// <summary>How a response is plotted.</summary>
public sealed record PlotOptions
{
    /// <summary>Width, px or points.</summary>
    public double Width { get; init; } = 700;

    /// <summary>Type size.</summary>
    public double TextSize { get; init; } = 12;

    /// <summary>Greatest height of the plotted area.</summary>
    public double GreatestHeight { get; init; } = 360;

    /// <summary>First part of the element ids inside, so that several plots can share a page.</summary>
    public string IdPrefix { get; init; } = "plot";

    /// <summary>Measures texts.</summary>
    public TextRuler Ruler { get; init; } = FigureBuilder.ScreenRuler;
}

/// <summary>A line laid over a contour map: a joint, a lane edge, a wheel. Coordinates as those of the field.</summary>
/// <param name="Points">Points, x along and y across, m.</param>
/// <param name="Style">Its ink.</param>
/// <param name="IsClosed">True to join the last point to the first.</param>
public sealed record PlotOverlay(ImmutableArray<FigurePoint> Points, FigureStyle Style, bool IsClosed = false);

/// <summary>A value over a rectangular grid of points on the slabs.</summary>
/// <param name="Title">What is plotted, e.g. <c>Deflection</c>.</param>
/// <param name="Along">Grid lines along the road, m, rising.</param>
/// <param name="Across">Grid lines from the left edge, m, rising.</param>
/// <param name="Values">Values, base unit: all of the first grid line across, then the second; NaN where there is no slab.</param>
/// <param name="Unit">Unit the values are printed in.</param>
/// <param name="LengthUnit">Unit of both axes.</param>
public sealed record ResponseField(
    string Title, ImmutableArray<double> Along, ImmutableArray<double> Across, ImmutableArray<double> Values, Unit Unit, Unit LengthUnit)
{
    /// <summary>Joints, edges and wheels drawn over the map.</summary>
    public ImmutableArray<PlotOverlay> Overlays { get; init; } = [];
}

/// <summary>A curve of a section plot.</summary>
/// <param name="Name">Name in the legend.</param>
/// <param name="Along">Places, m, rising.</param>
/// <param name="Values">Values, base unit; NaN interrupts the curve.</param>
public sealed record ResponseCurve(string Name, ImmutableArray<double> Along, ImmutableArray<double> Values);

/// <summary>A named place or level in a section plot.</summary>
/// <param name="Value">Where, base unit.</param>
/// <param name="Name">What it is.</param>
public readonly record struct ResponseMark(double Value, string Name);

/// <summary>One to three curves of one quantity along a line.</summary>
/// <param name="Title">What is plotted, e.g. <c>Deflection under the right wheel path</c>.</param>
/// <param name="AxisName">What the horizontal axis counts, e.g. <c>Along the road from the joint</c>.</param>
/// <param name="Quantity">What the vertical axis counts.</param>
/// <param name="Curves">The curves.</param>
/// <param name="Unit">Unit of the values.</param>
/// <param name="LengthUnit">Unit of the places.</param>
public sealed record ResponseSection(
    string Title, string AxisName, string Quantity, ImmutableArray<ResponseCurve> Curves, Unit Unit, Unit LengthUnit)
{
    /// <summary>True where greater values are drawn lower, as deflections are.</summary>
    public bool IsDownward { get; init; }

    /// <summary>A limit drawn as a level line, or null.</summary>
    public ResponseMark? Limit { get; init; }

    /// <summary>Upright lines at joints, edges or wheels.</summary>
    public ImmutableArray<ResponseMark> Places { get; init; } = [];
}

/// <summary>A value of each bar along the joint.</summary>
/// <param name="Title">What is plotted, e.g. <c>Shear on each bar</c>.</param>
/// <param name="Quantity">What the vertical axis counts.</param>
/// <param name="Offsets">Bar centres from the lane's left edge, m, rising.</param>
/// <param name="Values">Values, base unit.</param>
/// <param name="LaneWidth">Lane width, m.</param>
/// <param name="Unit">Unit of the values.</param>
/// <param name="LengthUnit">Unit of the offsets.</param>
public sealed record BarResponse(
    string Title, string Quantity, ImmutableArray<double> Offsets, ImmutableArray<double> Values, double LaneWidth, Unit Unit, Unit LengthUnit)
{
    /// <summary>A limit on the value's size, or null.</summary>
    public ResponseMark? Limit { get; init; }

    /// <summary>Wheels across the joint: middles, m.</summary>
    public ImmutableArray<double> Wheels { get; init; } = [];
}
