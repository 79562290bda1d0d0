namespace Slabwright.Sheets.Figures;

/// <summary>Dimension lines: between two places, along a row, and running from one edge.</summary>
internal static class FigureDimensions
{
    public const double TextSize = 7;
    private const double Tick = 2.4;

    /// <summary>A level dimension; the text stands on the line, or beside it where it does not fit between the ends.</summary>
    public static void Level(FigureBuilder figure, double x1, double x2, double y, string text, bool outsideLeft = false)
    {
        figure.Line(FigureStyle.Dimension, x1, y, x2, y);
        Slash(figure, x1, y);
        Slash(figure, x2, y);
        if (figure.Measure(text, TextSize) <= Math.Abs(x2 - x1) - 3) figure.Text(text, (x1 + x2) / 2, y - 2, TextSize, FigureAnchor.Middle);
        else if (outsideLeft) figure.Text(text, Math.Min(x1, x2) - 4, y + 2.4, TextSize, FigureAnchor.End);
        else figure.Text(text, Math.Max(x1, x2) + 4, y + 2.4, TextSize);
    }

    /// <summary>An upright dimension; the text stands level beside the line.</summary>
    public static void Upright(FigureBuilder figure, double x, double y1, double y2, string text, bool left = false)
    {
        figure.Line(FigureStyle.Dimension, x, y1, x, y2);
        Slash(figure, x, y1);
        Slash(figure, x, y2);
        figure.Text(text, x + (left ? -4 : 4), (y1 + y2) / 2 + 2.4, TextSize, left ? FigureAnchor.End : FigureAnchor.Start);
    }

    /// <summary>Dimensions one after another in a row; turned where one of them is too narrow for its text. Returns the row's height.</summary>
    public static double Chain(FigureBuilder figure, IReadOnlyList<double> places, double y, Func<int, string> text)
    {
        var room = Enumerable.Range(0, places.Count - 1).All(i => figure.Measure(text(i), TextSize) <= places[i + 1] - places[i] - 3);
        var height = room ? TextSize + 3 : Enumerable.Range(0, places.Count - 1).Max(i => figure.Measure(text(i), TextSize)) + 4;
        var line = y + height;
        figure.Line(FigureStyle.Dimension, places[0], line, places[^1], line);
        foreach (var x in places) Slash(figure, x, line);
        for (var i = 0; i + 1 < places.Count; i++)
        {
            var middle = (places[i] + places[i + 1]) / 2;
            if (room) figure.Text(text(i), middle, line - 2.4, TextSize, FigureAnchor.Middle);
            else figure.TurnedText(text(i), middle, line - 2 - figure.Measure(text(i), TextSize) / 2, TextSize);
        }

        return height + 3;
    }

    /// <summary>Running dimensions from the first place; every text stands under its own place. Returns the row's height.</summary>
    public static double Running(FigureBuilder figure, IReadOnlyList<double> places, double y, Func<int, string> text)
    {
        figure.Line(FigureStyle.Dimension, places[0], y, places[^1], y);
        foreach (var x in places) Slash(figure, x, y);
        var isRoomy = true;
        for (var i = 0; i + 1 < places.Count; i++)
        {
            isRoomy &= (figure.Measure(text(i), TextSize) + figure.Measure(text(i + 1), TextSize)) / 2 + 4 <= places[i + 1] - places[i];
        }

        var longest = Enumerable.Range(0, places.Count).Max(i => figure.Measure(text(i), TextSize));
        for (var i = 0; i < places.Count; i++)
        {
            if (isRoomy) figure.Text(text(i), places[i], y + TextSize + 3, TextSize, FigureAnchor.Middle);
            else figure.TurnedText(text(i), places[i], y + 5 + figure.Measure(text(i), TextSize) / 2, TextSize);
        }

        return (isRoomy ? TextSize + 5 : longest + 8) + 2;
    }

    /// <summary>A balloon with a number and a line to what it names.</summary>
    public static void Balloon(FigureBuilder figure, string number, double x, double y, double toX, double toY)
    {
        figure.Line(FigureStyle.Dimension, x, y, toX, toY);
        figure.Circle(FigureStyle.PointPasses, toX, toY, 1.1);
        figure.Circle(FigureStyle.Balloon, x, y, 6.2);
        figure.Text(number, x, y + 2.6, 7.4, FigureAnchor.Middle, true);
    }

    private static void Slash(FigureBuilder figure, double x, double y) =>
        figure.Line(FigureStyle.Dimension, x - Tick, y + Tick, x + Tick, y - Tick);
}
