using System.Collections.Immutable;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Joints;

/// <summary>A contour map to scale: bands from light to dark, lines between them with their values, and a key.</summary>
internal sealed class ContourPlot
{
    private readonly ResponseField map;
    private readonly PlotOptions options;
    private readonly FigureBuilder figure;
    private readonly double[] shown;
    private readonly double scale;
    private readonly PlotScale levels;

    private ContourPlot(ResponseField map, PlotOptions options)
    {
        this.map = map;
        this.options = options;
        figure = new FigureBuilder(options.Ruler);
        shown = [.. map.Values.Select(v => double.IsNaN(v) ? double.NaN : map.Unit.FromBase(v))];
        levels = ContourDrawing.LevelsOf(shown);
        var room = options.Width - options.TextSize * 13;
        scale = Math.Min(room / Math.Max(Extent(map.Along), 0.1), options.GreatestHeight / Math.Max(Extent(map.Across), 0.1));
    }

    private double Height => Extent(map.Across) * scale;

    private double Width => Extent(map.Along) * scale;

    public static Figure Draw(ResponseField map, PlotOptions options) => new ContourPlot(map, options).Draw();

    private static double Extent(ImmutableArray<double> lines) => lines[^1] - lines[0];

    private Figure Draw()
    {
        var contours = new ContourDrawing(figure, levels, Width, Height, options.TextSize);
        contours.Draw(new ContourRings([.. map.Along.Select(X)], [.. map.Across.Select(Y)], shown));
        foreach (var overlay in map.Overlays) Overlay(overlay);
        contours.Label();
        DrawAxes();
        contours.Key(JobUnits.Symbol(map.Unit));
        return figure.Build($"{map.Title}, {JobUnits.Symbol(map.Unit)}",
            $"Contour map of {map.Title.ToLowerInvariant()} over {JobUnits.Number(map.LengthUnit.FromBase(Extent(map.Along)), 1)} {map.LengthUnit.Symbol} along and {JobUnits.Number(map.LengthUnit.FromBase(Extent(map.Across)), 1)} {map.LengthUnit.Symbol} across, from {contours.Fine(levels.First)} to {contours.Fine(levels.Last)} {JobUnits.Symbol(map.Unit)}.", scale);
    }

    private void Overlay(PlotOverlay overlay)
    {
        ImmutableArray<FigurePoint> points = [.. overlay.Points.Select(p => new FigurePoint(X(p.X), Y(p.Y)))];
        figure.Line(overlay.Style, overlay.IsClosed ? points.Add(points[0]) : points);
    }

    private void DrawAxes()
    {
        figure.Line(FigureStyle.Axis, new FigurePoint(0, 0), new FigurePoint(Width, 0), new FigurePoint(Width, Height), new FigurePoint(0, Height), new FigurePoint(0, 0));
        var unit = map.LengthUnit;
        var along = PlotScale.Exact(unit.FromBase(map.Along[0]), unit.FromBase(map.Along[^1]), 0, Width, 8);
        PlotAxes.Level(figure, along, Height, options.TextSize, $"Along the road, {unit.Symbol}");
        var across = PlotScale.Exact(unit.FromBase(map.Across[0]), unit.FromBase(map.Across[^1]), 0, Height, Math.Max(2, (int)(Height / 40)));
        PlotAxes.Upright(figure, across, 0, options.TextSize, $"From the left edge, {unit.Symbol}");
    }

    private double X(double along) => (along - map.Along[0]) * scale;

    private double Y(double across) => (across - map.Across[0]) * scale;
}
