using System.Collections.Immutable;

namespace Slabwright.Sheets.Figures;

/// <summary>Width of a text at a size; regular or bold.</summary>
public delegate double TextRuler(string text, double size, bool bold);

/// <summary>Collects the shapes of a figure and knows how far they reach, texts included.</summary>
public sealed class FigureBuilder(TextRuler ruler)
{
    private readonly ImmutableArray<FigureShape>.Builder shapes = ImmutableArray.CreateBuilder<FigureShape>();
    private (double Left, double Top, double Right, double Bottom) box = (double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);

    /// <summary>Ruler for screens, where the face is not known: a width that most sans-serif faces stay below.</summary>
    public static TextRuler ScreenRuler { get; } = (text, size, bold) => text.Length * size * (bold ? 0.58 : 0.54);

    /// <summary>Rightmost place reached so far.</summary>
    public double Right => box.Right;

    /// <summary>Lowest place reached so far.</summary>
    public double Bottom => box.Bottom;

    /// <summary>Width of a text.</summary>
    public double Measure(string text, double size, bool bold = false) => ruler(text, size, bold);

    /// <summary>Adds an area with one ring.</summary>
    public void Area(FigureStyle style, string name, params ImmutableArray<FigurePoint> ring) => Rings(style, [ring], name);

    /// <summary>Adds an area with several rings.</summary>
    public void Rings(FigureStyle style, ImmutableArray<ImmutableArray<FigurePoint>> rings, string name = "")
    {
        foreach (var ring in rings) Reach(ring);
        shapes.Add(new FigureArea(rings, style, name));
    }

    /// <summary>Adds an upright rectangle.</summary>
    public void Box(FigureStyle style, double left, double top, double right, double bottom, string name = "") =>
        Area(style, name, new FigurePoint(left, top), new FigurePoint(right, top), new FigurePoint(right, bottom), new FigurePoint(left, bottom));

    /// <summary>Adds a line through points.</summary>
    public void Line(FigureStyle style, params ImmutableArray<FigurePoint> points)
    {
        Reach(points);
        shapes.Add(new FigureLine(points, style));
    }

    /// <summary>Adds a straight line.</summary>
    public void Line(FigureStyle style, double x1, double y1, double x2, double y2) => Line(style, new FigurePoint(x1, y1), new FigurePoint(x2, y2));

    /// <summary>Adds a circle.</summary>
    public void Circle(FigureStyle style, double x, double y, double radius, string name = "")
    {
        Reach([new(x - radius, y - radius), new(x + radius, y + radius)]);
        shapes.Add(new FigureCircle(new FigurePoint(x, y), radius, style, name));
    }

    /// <summary>Adds a text on a baseline.</summary>
    public void Text(string text, double x, double y, double size, FigureAnchor anchor = FigureAnchor.Start, bool bold = false, FigureStyle style = FigureStyle.Note)
    {
        if (text.Length == 0) return;
        Add(new FigureText(new FigurePoint(x, y), text, size, style) { Anchor = anchor, Bold = bold });
    }

    /// <summary>Adds a text that reads upwards, with its middle at a point.</summary>
    public void TurnedText(string text, double x, double y, double size, FigureStyle style = FigureStyle.Note, bool bold = false)
    {
        if (text.Length == 0) return;
        Add(new FigureText(new FigurePoint(x, y), text, size, style) { Anchor = FigureAnchor.Middle, Turned = true, Bold = bold });
    }

    /// <summary>Clears the ground under the text added last, where lines run behind it.</summary>
    public void ClearUnderLast()
    {
        if (shapes[^1] is not FigureText text) return;
        var at = FigureTexts.BoxOf(text, ruler);
        shapes.RemoveAt(shapes.Count - 1);
        Box(FigureStyle.LabelGround, at.Left - 1.5, at.Top, at.Right + 1.5, at.Bottom);
        shapes.Add(text);
    }

    /// <summary>The figure, moved so that it begins at its upper left corner.</summary>
    public Figure Build(string title, string description, double perMetre = 0)
    {
        var (dx, dy) = (-box.Left, -box.Top);
        return new Figure(title, description, box.Right - box.Left, box.Bottom - box.Top, new FigurePoint(dx, dy), perMetre, [.. shapes.Select(s => s.Moved(dx, dy))]);
    }

    private void Add(FigureText text)
    {
        var at = FigureTexts.BoxOf(text, ruler);
        Reach([new(at.Left, at.Top), new(at.Right, at.Bottom)]);
        shapes.Add(text);
    }

    private void Reach(ImmutableArray<FigurePoint> points)
    {
        foreach (var p in points)
        {
            box = (Math.Min(box.Left, p.X), Math.Min(box.Top, p.Y), Math.Max(box.Right, p.X), Math.Max(box.Bottom, p.Y));
        }
    }
}

/// <summary>Room a text takes.</summary>
public static class FigureTexts
{
    /// <summary>The box of a text: from its capitals' height to just below its baseline.</summary>
    public static (double Left, double Top, double Right, double Bottom) BoxOf(FigureText text, TextRuler ruler)
    {
        var width = ruler(text.Text, text.Size, text.Bold);
        var (x, y) = (text.Place.X, text.Place.Y);
        if (text.Turned) return (x - text.Size * 0.5, y - width / 2, x + text.Size * 0.5, y + width / 2);
        var left = text.Anchor switch { FigureAnchor.Start => x, FigureAnchor.Middle => x - width / 2, _ => x - width };
        return (left, y - text.Size * 0.78, left + width, y + text.Size * 0.22);
    }
}
