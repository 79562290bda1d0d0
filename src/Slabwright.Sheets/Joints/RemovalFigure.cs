using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Joints.Removal;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Joints;

/// <summary>
/// A repair from above as it comes out, to scale: boundary cuts, lift cuts, pieces with their pins, and the relief cut. Travel runs to the
/// right, the lane's left edge is on top; the first boundary at the left edge is the figure's zero.
/// </summary>
public static class RemovalFigure
{
    private const double LabelSize = 7;

    /// <summary>Draws a repair.</summary>
    /// <param name="repair">The repair.</param>
    /// <param name="lift">How it is lifted out.</param>
    /// <param name="reliefs">Its relief cuts.</param>
    /// <param name="units">Units of the dimensions.</param>
    /// <param name="scale">Points a metre.</param>
    /// <param name="ruler">Measures texts.</param>
    public static Figure Draw(Repair repair, RepairLift lift, ImmutableArray<ReliefCut> reliefs, JobUnits units, double scale, TextRuler ruler)
    {
        ArgumentNullException.ThrowIfNull(repair);
        ArgumentNullException.ThrowIfNull(lift);
        ArgumentNullException.ThrowIfNull(units);
        var figure = new FigureBuilder(ruler);
        var (length, width) = (repair.Length * scale, repair.Width * scale);
        figure.Box(FigureStyle.NewConcrete, 0, 0, length, width, repair.Id);
        foreach (var cut in lift.Cuts) figure.Line(FigureStyle.SawnJoint, (cut - repair.From) * scale, 0, (cut - repair.From) * scale, width);
        foreach (var cut in lift.LongCuts) figure.Line(FigureStyle.SawnJoint, 0, cut * scale, length, cut * scale);
        foreach (var relief in reliefs) Relief(figure, relief, repair, width, scale, units);
        foreach (var piece in lift.Pieces) Piece(figure, piece, repair.From, scale);
        figure.Line(FigureStyle.BoundaryCut, 0, 0, 0, width);
        figure.Line(FigureStyle.BoundaryCut, length, 0, length, width);
        figure.Line(FigureStyle.LaneEdge, -14, 0, length + 14, 0);
        figure.Line(FigureStyle.LaneEdge, -14, width, length + 14, width);
        double[] along = [0, .. lift.Cuts.Order().Select(c => (c - repair.From) * scale), length];
        FigureDimensions.Chain(figure, along, width + 6, i => units.Running((along[i + 1] - along[i]) / scale));
        double[] across = [0, .. lift.LongCuts.Order().Select(c => c * scale), width];
        for (var i = 0; i + 1 < across.Length; i++) FigureDimensions.Upright(figure, length + 20, across[i], across[i + 1], units.Running((across[i + 1] - across[i]) / scale));
        var words = string.Concat(reliefs.Select(r => $" Relief cut {units.Running(r.ToStart)} inside the first boundary."));
        return figure.Build($"Lift pieces of {repair.Id}", $"{SheetWords.Count(lift.Pieces.Length, "piece")}, {lift.Along.ToString(CultureInfo.InvariantCulture)} along and {lift.Across.ToString(CultureInfo.InvariantCulture)} across.{words}", scale);
    }

    private static void Piece(FigureBuilder figure, LiftPiece piece, double from, double scale)
    {
        foreach (var pin in piece.Pins)
        {
            var (x, y) = ((pin.Along - from) * scale, pin.Offset * scale);
            figure.Circle(FigureStyle.Balloon, x, y, 2.4, $"pin-{piece.Number}");
            figure.Line(FigureStyle.Dimension, x - 3.6, y, x + 3.6, y);
            figure.Line(FigureStyle.Dimension, x, y - 3.6, x, y + 3.6);
        }

        var (mx, my) = (((piece.From + piece.To) / 2 - from) * scale, (piece.LeftOffset + piece.RightOffset) / 2 * scale);
        figure.Circle(FigureStyle.Balloon, mx, my, 6.5);
        figure.Text(piece.Number.ToString(CultureInfo.InvariantCulture), mx, my + 2.6, 7.4, FigureAnchor.Middle, true);
    }

    /// <summary>A relief cut, measured from the boundary it lies nearer to.</summary>
    private static void Relief(FigureBuilder figure, ReliefCut relief, Repair repair, double width, double scale, JobUnits units)
    {
        var (middle, half) = ((relief.At - repair.From) * scale, Math.Max(1, relief.Kerf * scale / 2));
        figure.Box(FigureStyle.Kerf, middle - half, 0, middle + half, width, "relief");
        figure.Text("relief cut", middle, -21, LabelSize, FigureAnchor.Middle, true);
        var isFirst = relief.ToStart <= relief.ToEnd;
        var (near, boundary) = isFirst ? (middle - half, 0.0) : (middle + half, repair.Length * scale);
        figure.Line(FigureStyle.Extension, near, -14, near, 0);
        figure.Line(FigureStyle.Extension, boundary, -14, boundary, 0);
        FigureDimensions.Level(figure, Math.Min(near, boundary), Math.Max(near, boundary), -10, units.Running(isFirst ? relief.ToStart : relief.ToEnd), isFirst);
    }
}
