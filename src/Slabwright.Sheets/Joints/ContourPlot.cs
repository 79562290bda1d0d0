using System.Collections.Immutable;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Strip;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Joints;

/// <summary>A contour map to scale: bands from light to dark, lines between them with their values, and a key.</summary>
internal sealed class ContourPlot
{
    private const int MostBands = 10;

    private readonly ResponseField map;
    private readonly PlotOptions options;
    private readonly FigureBuilder figure;
    private readonly double[] shown;
    private readonly double scale;
    private readonly PlotScale levels;
    private readonly TextBoxes labels = new();

    private ContourPlot(ResponseField map, PlotOptions options)
    {
        this.map = map;
        this.options = options;
        figure = new FigureBuilder(options.Ruler);
        shown = [.. map.Values.Select(v => double.IsNaN(v) ? double.NaN : map.Unit.FromBase(v))];
        var (least, greatest) = shown.Where(double.IsFinite).Aggregate((double.PositiveInfinity, double.NegativeInfinity), (m, v) => (Math.Min(m.Item1, v), Math.Max(m.Item2, v)));
        if (!(least <= greatest)) (least, greatest) = (0, 0);
        levels = PlotScale.Exact(least, greatest, 0, 1, MostBands - 1);
        var room = options.Width - options.TextSize * 13;
        scale = Math.Min(room / Math.Max(Extent(map.Along), 0.1), options.GreatestHeight / Math.Max(Extent(map.Across), 0.1));
    }

    private double Height => Extent(map.Across) * scale;

    private double Width => Extent(map.Along) * scale;

    public static Figure Draw(ResponseField map, PlotOptions options) => new ContourPlot(map, options).Draw();

    private static double Extent(ImmutableArray<double> lines) => lines[^1] - lines[0];

    private Figure Draw()
    {
        ImmutableArray<double> bounds = [.. levels.Ticks().Where(t => t > levels.First + levels.Step * 1e-6 && t < levels.Last - levels.Step * 1e-6)];
        var rings = new ContourRings([.. map.Along.Select(X)], [.. map.Across.Select(Y)], shown);
        Band(rings.Above(double.MinValue), 0, bounds.Length);
        var lines = new List<(double Level, List<ImmutableArray<FigurePoint>> Parts)>();
        for (var i = 0; i < bounds.Length; i++)
        {
            var found = rings.Above(bounds[i]);
            Band(found, i + 1, bounds.Length);
            lines.Add((bounds[i], [.. found.SelectMany(Inside)]));
        }

        foreach (var (level, parts) in lines)
        {
            foreach (var part in parts) figure.Line(Math.Abs(level) < levels.Step * 1e-6 ? FigureStyle.ContourZero : FigureStyle.Contour, part);
        }

        foreach (var overlay in map.Overlays) Overlay(overlay);
        foreach (var (level, parts) in lines) Label(level, parts);
        DrawAxes();
        DrawKey(bounds);
        return figure.Build($"{map.Title}, {JobUnits.Symbol(map.Unit)}",
            $"Contour map of {map.Title.ToLowerInvariant()} over {JobUnits.Number(map.LengthUnit.FromBase(Extent(map.Along)), 1)} {map.LengthUnit.Symbol} along and {JobUnits.Number(map.LengthUnit.FromBase(Extent(map.Across)), 1)} {map.LengthUnit.Symbol} across, from {Fine(levels.First)} to {Fine(levels.Last)} {JobUnits.Symbol(map.Unit)}.", scale);
    }

    private void Band(List<ImmutableArray<ContourPoint>> rings, int index, int count)
    {
        if (rings.Count == 0) return;
        var shade = count == 0 ? 4 : (int)Math.Round((MostBands - 1.0) * index / count);
        figure.Rings(FigureStyle.Band1 + shade, [.. rings.Select(r => r.Select(p => p.Place).ToImmutableArray())]);
    }

    /// <summary>The parts of a ring that do not follow the border.</summary>
    private static IEnumerable<ImmutableArray<FigurePoint>> Inside(ImmutableArray<ContourPoint> ring)
    {
        var first = Enumerable.Range(0, ring.Length).FirstOrDefault(i => ring[i].IsBorder, -1);
        if (first < 0)
        {
            yield return [.. ring.Select(p => p.Place), ring[0].Place];
            yield break;
        }

        var part = ImmutableArray.CreateBuilder<FigurePoint>();
        for (var i = 1; i <= ring.Length; i++)
        {
            var point = ring[(first + i) % ring.Length];
            if (!point.IsBorder) part.Add(point.Place);
            else if (part.Count > 1)
            {
                yield return part.ToImmutable();
                part.Clear();
            }
            else part.Clear();
        }
    }

    /// <summary>The level's value on its longest line, where it finds room.</summary>
    private void Label(double level, List<ImmutableArray<FigurePoint>> parts)
    {
        var text = levels.Text(level);
        var size = options.TextSize * 0.85;
        var (width, height) = (figure.Measure(text, size) + 4, size * 1.1);
        foreach (var part in parts.OrderByDescending(LengthOf))
        {
            foreach (var share in new[] { 0.5, 0.3, 0.7, 0.4, 0.6, 0.2, 0.8 })
            {
                var p = part[(int)((part.Length - 1) * share)];
                if (p.X - width / 2 < 1 || p.X + width / 2 > Width - 1 || p.Y - height / 2 < 1 || p.Y + height / 2 > Height - 1) continue;
                if (!labels.TryTake(p.X - width / 2, p.Y - height / 2, width, height)) continue;
                figure.Box(FigureStyle.LabelGround, p.X - width / 2, p.Y - height / 2, p.X + width / 2, p.Y + height / 2);
                figure.Text(text, p.X, p.Y + size * 0.35, size, FigureAnchor.Middle);
                return;
            }
        }
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

    /// <summary>Swatches from the highest band down, the bounds between them.</summary>
    private void DrawKey(ImmutableArray<double> bounds)
    {
        var size = options.TextSize * 0.9;
        var (left, y) = (Width + size * 1.4, size * 1.6);
        figure.Text(JobUnits.Symbol(map.Unit), left, size * 0.8, size, FigureAnchor.Start, true);
        figure.Text(Fine(levels.Last), left + size * 2.3, y + size * 0.35, size);
        var step = Math.Clamp(Math.Max(Height, 130) / (bounds.Length + 2), size * 1.15, size * 1.9);
        for (var i = bounds.Length; i >= 0; i--)
        {
            var shade = bounds.Length == 0 ? 4 : (int)Math.Round((MostBands - 1.0) * i / bounds.Length);
            figure.Box(FigureStyle.Band1 + shade, left, y, left + size * 1.8, y + step);
            figure.Line(FigureStyle.Contour, left, y, left + size * 1.8, y);
            y += step;
            figure.Text(i == 0 ? Fine(levels.First) : levels.Text(bounds[i - 1]), left + size * 2.3, y + size * 0.35, size);
        }

        figure.Line(FigureStyle.Contour, left, y, left + size * 1.8, y);
    }

    /// <summary>An end of the range, with one figure more than the levels.</summary>
    private string Fine(double value) => (levels with { Step = levels.Step / 10 }).Text(value);

    private double X(double along) => (along - map.Along[0]) * scale;

    private double Y(double across) => (across - map.Across[0]) * scale;

    private static double LengthOf(ImmutableArray<FigurePoint> part)
    {
        var length = 0.0;
        for (var i = 1; i < part.Length; i++) length += Math.Sqrt(Math.Pow(part[i].X - part[i - 1].X, 2) + Math.Pow(part[i].Y - part[i - 1].Y, 2));
        return length;
    }
}
