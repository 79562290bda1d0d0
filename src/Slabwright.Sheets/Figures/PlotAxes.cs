namespace Slabwright.Sheets.Figures;

/// <summary>Axes of charts: ticks, figures and the name with its unit.</summary>
internal static class PlotAxes
{
    /// <summary>A level axis below the plot.</summary>
    public static void Level(FigureBuilder figure, PlotScale scale, double y, double size, string name)
    {
        figure.Line(FigureStyle.Axis, scale.Start, y, scale.End, y);
        foreach (var tick in scale.Ticks())
        {
            figure.Line(FigureStyle.Axis, scale.At(tick), y, scale.At(tick), y + 4);
            figure.Text(scale.Text(tick), scale.At(tick), y + 5 + size * 0.85, size * 0.9, FigureAnchor.Middle);
        }

        figure.Text(name, (scale.Start + scale.End) / 2, y + 9 + size * 2, size, FigureAnchor.Middle);
    }

    /// <summary>An upright axis left of the plot.</summary>
    public static void Upright(FigureBuilder figure, PlotScale scale, double x, double size, string name, double gridRight = double.NaN)
    {
        var widest = 0.0;
        foreach (var tick in scale.Ticks())
        {
            var y = scale.At(tick);
            if (!double.IsNaN(gridRight)) figure.Line(FigureStyle.Grid, x, y, gridRight, y);
            figure.Line(FigureStyle.Axis, x - 4, y, x, y);
            figure.Text(scale.Text(tick), x - 6, y + size * 0.32, size * 0.9, FigureAnchor.End);
            widest = Math.Max(widest, figure.Measure(scale.Text(tick), size * 0.9));
        }

        figure.Line(FigureStyle.Axis, x, scale.Start, x, scale.End);
        figure.TurnedText(name, x - 12 - widest - size * 0.5, (scale.Start + scale.End) / 2, size);
    }
}
