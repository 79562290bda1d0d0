using System.Collections.Immutable;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Joints;

/// <summary>Curves of one quantity along a line, told apart by their dashes as well as their colour.</summary>
internal static class SectionPlot
{
    private const double AspectRatio = 0.42;

    public static Figure Draw(ResponseSection section, PlotOptions options)
    {
        var figure = new FigureBuilder(options.Ruler);
        var size = options.TextSize;
        var width = options.Width - size * 7;
        var height = Math.Min(width * AspectRatio, options.GreatestHeight);
        double[] places = [.. section.Curves.SelectMany(c => c.Along).Select(section.LengthUnit.FromBase)];
        double[] values = [.. section.Curves.SelectMany(c => c.Values).Where(double.IsFinite).Select(section.Unit.FromBase), 0, .. LimitOf(section)];
        var x = PlotScale.Exact(places.Min(), places.Max(), 0, width, 8);
        var (top, bottom) = section.IsDownward ? (height, 0.0) : (0.0, height);
        var y = PlotScale.Round(values.Min(), values.Max(), bottom, top, 6);
        PlotAxes.Upright(figure, y, 0, size, $"{section.Quantity}, {JobUnits.Symbol(section.Unit)}", width);
        PlotAxes.Level(figure, x, height, size, $"{section.AxisName}, {section.LengthUnit.Symbol}");
        if (section.Limit is { } drawn)
        {
            var level = y.At(section.Unit.FromBase(drawn.Value));
            figure.Line(FigureStyle.Limit, 0, level, width, level);
        }

        DrawPlaces(figure, section, x, height, size);
        for (var i = 0; i < section.Curves.Length; i++) DrawCurve(figure, section, i, x, y);
        if (section.Limit is { } limit)
        {
            figure.Text(limit.Name, 8, y.At(section.Unit.FromBase(limit.Value)) - 5, size * 0.9, FigureAnchor.Start, true);
            figure.ClearUnderLast();
        }

        DrawLegend(figure, section, size);
        return figure.Build(section.Title, Describe(section));
    }

    private static double[] LimitOf(ResponseSection section) => section.Limit is { } limit ? [section.Unit.FromBase(limit.Value)] : [];

    private static void DrawPlaces(FigureBuilder figure, ResponseSection section, PlotScale x, double height, double size)
    {
        foreach (var place in section.Places)
        {
            var at = x.At(section.LengthUnit.FromBase(place.Value));
            figure.Line(FigureStyle.CentreLine, at, 0, at, height);
            figure.TurnedText(place.Name, at + size * 0.7, height - figure.Measure(place.Name, size * 0.85) / 2 - 6, size * 0.85, FigureStyle.QuietNote);
            figure.ClearUnderLast();
        }
    }

    private static void DrawCurve(FigureBuilder figure, ResponseSection section, int index, PlotScale x, PlotScale y)
    {
        var curve = section.Curves[index];
        var part = ImmutableArray.CreateBuilder<FigurePoint>();
        for (var i = 0; i <= curve.Along.Length; i++)
        {
            if (i < curve.Along.Length && double.IsFinite(curve.Values[i]))
            {
                part.Add(new FigurePoint(x.At(section.LengthUnit.FromBase(curve.Along[i])), y.At(section.Unit.FromBase(curve.Values[i]))));
                continue;
            }

            if (part.Count > 1) figure.Line(FigureStyle.CurveFirst + index % 3, part.ToImmutable());
            part.Clear();
        }
    }

    private static void DrawLegend(FigureBuilder figure, ResponseSection section, double size)
    {
        var (x, y) = (0.0, -size * 1.2);
        for (var i = 0; i < section.Curves.Length; i++)
        {
            figure.Line(FigureStyle.CurveFirst + i % 3, x, y, x + 30, y);
            figure.Text(section.Curves[i].Name, x + 36, y + size * 0.35, size * 0.9);
            x += 36 + figure.Measure(section.Curves[i].Name, size * 0.9) + 22;
        }
    }

    private static string Describe(ResponseSection section) => string.Join(" ", section.Curves.Where(c => c.Values.Any(double.IsFinite)).Select(c =>
    {
        var finite = c.Values.Where(double.IsFinite).ToList();
        return $"{c.Name}: {section.Quantity.ToLowerInvariant()} from {Number(section, finite.Min())} to {Number(section, finite.Max())} {JobUnits.Symbol(section.Unit)}.";
    }));

    private static string Number(ResponseSection section, double value) => section.Unit.FromBase(value).ToString("G4", System.Globalization.CultureInfo.InvariantCulture);
}
