using System.Collections.Immutable;
using Slabwright.Sheets.Strip;

namespace Slabwright.Sheets.Figures;

/// <summary>Bands from light to dark, the lines between them with their values, and the key of a contour map.</summary>
/// <param name="figure">Figure to draw on; the map begins at its zero.</param>
/// <param name="levels">Least and greatest value, and the step of the levels.</param>
/// <param name="width">Width of the map.</param>
/// <param name="height">Height of the map.</param>
/// <param name="size">Type size.</param>
internal sealed class ContourDrawing(FigureBuilder figure, PlotScale levels, double width, double height, double size)
{
    /// <summary>Most bands of a map.</summary>
    public const int MostBands = 10;

    private readonly ImmutableArray<double> bounds = [.. levels.Ticks().Where(t => t > levels.First + levels.Step * 1e-6 && t < levels.Last - levels.Step * 1e-6)];
    private readonly List<(double Level, List<ImmutableArray<FigurePoint>> Parts)> lines = [];
    private readonly TextBoxes labels = new();

    /// <summary>Levels over the finite values of a map.</summary>
    public static PlotScale LevelsOf(IEnumerable<double> values)
    {
        var (least, greatest) = values.Where(double.IsFinite).Aggregate((double.PositiveInfinity, double.NegativeInfinity), (m, v) => (Math.Min(m.Item1, v), Math.Max(m.Item2, v)));
        if (!(least <= greatest)) (least, greatest) = (0, 0);
        return PlotScale.Exact(least, greatest, 0, 1, MostBands - 1);
    }

    /// <summary>Bands and lines of a field.</summary>
    public void Draw(ContourRings rings)
    {
        Band(rings.Above(double.MinValue), 0);
        for (var i = 0; i < bounds.Length; i++)
        {
            var found = rings.Above(bounds[i]);
            Band(found, i + 1);
            lines.Add((bounds[i], [.. found.SelectMany(Inside)]));
        }

        foreach (var (level, parts) in lines)
        {
            foreach (var part in parts) figure.Line(Math.Abs(level) < levels.Step * 1e-6 ? FigureStyle.ContourZero : FigureStyle.Contour, part);
        }
    }

    /// <summary>Keeps labels of levels away from a box.</summary>
    public void Keep(double left, double top, double boxWidth, double boxHeight) => labels.Take(left, top, boxWidth, boxHeight);

    /// <summary>Each level's value on its longest line, where it finds room.</summary>
    public void Label()
    {
        foreach (var (level, parts) in lines) Label(level, parts);
    }

    /// <summary>Swatches from the highest band down, the bounds between them.</summary>
    public void Key(string unit)
    {
        var text = size * 0.9;
        var (left, y) = (width + text * 1.4, text * 1.6);
        figure.Text(unit, left, text * 0.8, text, FigureAnchor.Start, true);
        figure.Text(Fine(levels.Last), left + text * 2.3, y + text * 0.35, text);
        var step = Math.Clamp(Math.Max(height, 130) / (bounds.Length + 2), text * 1.15, text * 1.9);
        for (var i = bounds.Length; i >= 0; i--)
        {
            figure.Box(StyleOf(i), left, y, left + text * 1.8, y + step);
            figure.Line(FigureStyle.Contour, left, y, left + text * 1.8, y);
            y += step;
            figure.Text(i == 0 ? Fine(levels.First) : levels.Text(bounds[i - 1]), left + text * 2.3, y + text * 0.35, text);
        }

        figure.Line(FigureStyle.Contour, left, y, left + text * 1.8, y);
    }

    /// <summary>An end of the range, with one figure more than the levels.</summary>
    public string Fine(double value) => (levels with { Step = levels.Step / 10 }).Text(value);

    private void Band(List<ImmutableArray<ContourPoint>> rings, int index)
    {
        if (rings.Count > 0) figure.Rings(StyleOf(index), [.. rings.Select(r => r.Select(p => p.Place).ToImmutableArray())]);
    }

    private FigureStyle StyleOf(int index) => FigureStyle.Band1 + (bounds.Length == 0 ? 4 : (int)Math.Round((MostBands - 1.0) * index / bounds.Length));

    private void Label(double level, List<ImmutableArray<FigurePoint>> parts)
    {
        var (text, type) = (levels.Text(level), size * 0.85);
        var (wide, high) = (figure.Measure(text, type) + 4, type * 1.1);
        foreach (var part in parts.OrderByDescending(LengthOf))
        {
            foreach (var share in new[] { 0.5, 0.3, 0.7, 0.4, 0.6, 0.2, 0.8 })
            {
                var p = part[(int)((part.Length - 1) * share)];
                if (p.X - wide / 2 < 1 || p.X + wide / 2 > width - 1 || p.Y - high / 2 < 1 || p.Y + high / 2 > height - 1) continue;
                if (!labels.TryTake(p.X - wide / 2, p.Y - high / 2, wide, high)) continue;
                figure.Box(FigureStyle.LabelGround, p.X - wide / 2, p.Y - high / 2, p.X + wide / 2, p.Y + high / 2);
                figure.Text(text, p.X, p.Y + type * 0.35, type, FigureAnchor.Middle);
                return;
            }
        }
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

    private static double LengthOf(ImmutableArray<FigurePoint> part)
    {
        var length = 0.0;
        for (var i = 1; i < part.Length; i++) length += Math.Sqrt(Math.Pow(part[i].X - part[i - 1].X, 2) + Math.Pow(part[i].Y - part[i - 1].Y, 2));
        return length;
    }
}
