using System.Globalization;
using SkiaSharp;
using Slabwright.Sheets.Strip;

namespace Slabwright.Sheets.Paper;

/// <summary>Where a text stands relative to its point.</summary>
internal enum Side
{
    Left,
    Centre,
    Right,
}

/// <summary>One sheet of paper to draw on. Lengths in points, 1/72 in; y grows downwards.</summary>
internal sealed class PaperPad(SKCanvas canvas, PaperFonts fonts) : IDisposable
{
    public const string Ink = StripInk.Ink;
    public const string Quiet = StripInk.Quiet;
    public const string Rule = "#9aa0a6";
    public const string Faint = "#eceae4";

    private static readonly Dictionary<string, SKColor> Colours = [];

    private readonly SKPaint fill = new() { Style = SKPaintStyle.Fill, IsAntialias = true };
    private readonly SKPaint stroke = new() { Style = SKPaintStyle.Stroke, IsAntialias = true };

    public PaperFonts Fonts => fonts;

    public SKCanvas Canvas => canvas;

    /// <summary>Writes one line; y is the baseline.</summary>
    public void Text(string text, float x, float y, float size, Face face = Face.Text, string colour = Ink, Side side = Side.Left)
    {
        if (text.Length == 0) return;
        var font = fonts.For(text, face, size);
        var left = side switch { Side.Left => x, Side.Right => x - font.MeasureText(text), _ => x - font.MeasureText(text) / 2 };
        fill.Color = ColourOf(colour);
        canvas.DrawText(text, left, y, SKTextAlign.Left, font, fill);
    }

    /// <summary>Writes one line turned anticlockwise about its middle.</summary>
    public void TurnedText(string text, float x, float y, float size, float degrees, Face face = Face.Text, string colour = Ink)
    {
        canvas.Save();
        canvas.Translate(x, y);
        canvas.RotateDegrees(-degrees);
        Text(text, 0, size * 0.35f, size, face, colour, Side.Centre);
        canvas.Restore();
    }

    /// <summary>Writes wrapped text and returns the baseline below it.</summary>
    public float Paragraph(string text, float x, float y, float width, float size, Face face = Face.Text, string colour = Ink, float leading = 1.3f)
    {
        foreach (var line in TextFlow.Wrap(fonts, text, face, size, width))
        {
            Text(line, x, y, size, face, colour);
            y += size * leading;
        }

        return y;
    }

    public void Line(float x1, float y1, float x2, float y2, float width, string colour = Ink, params float[] dash)
    {
        SetStroke(width, colour, dash);
        canvas.DrawLine(x1, y1, x2, y2, stroke);
        stroke.PathEffect = null;
    }

    public void Box(SKRect box, string? fillColour, string? strokeColour = null, float width = 0.5f)
    {
        if (fillColour is not null)
        {
            fill.Color = ColourOf(fillColour);
            canvas.DrawRect(box, fill);
        }

        if (strokeColour is null) return;
        SetStroke(width, strokeColour, []);
        canvas.DrawRect(box, stroke);
    }

    public void Path(SKPath path, string? fillColour, string? strokeColour = null, float width = 0.5f, bool roundEnds = false, params float[] dash)
    {
        if (fillColour is not null)
        {
            fill.Color = ColourOf(fillColour);
            canvas.DrawPath(path, fill);
        }

        if (strokeColour is null) return;
        SetStroke(width, strokeColour, dash);
        stroke.StrokeCap = roundEnds ? SKStrokeCap.Round : SKStrokeCap.Butt;
        canvas.DrawPath(path, stroke);
        stroke.StrokeCap = SKStrokeCap.Butt;
        stroke.PathEffect = null;
    }

    public void Dot(float x, float y, float radius, string? fillColour, string? strokeColour = null, float width = 0.5f)
    {
        if (fillColour is not null)
        {
            fill.Color = ColourOf(fillColour);
            canvas.DrawCircle(x, y, radius, fill);
        }

        if (strokeColour is null) return;
        SetStroke(width, strokeColour, []);
        canvas.DrawCircle(x, y, radius, stroke);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        fill.Dispose();
        stroke.Dispose();
    }

    private void SetStroke(float width, string colour, float[] dash)
    {
        stroke.Color = ColourOf(colour);
        stroke.StrokeWidth = width;
        stroke.PathEffect = dash.Length >= 2 ? SKPathEffect.CreateDash(dash, 0) : null;
    }

    private static SKColor ColourOf(string hex)
    {
        lock (Colours)
        {
            if (Colours.TryGetValue(hex, out var colour)) return colour;
            var value = uint.Parse(hex.AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
            return Colours[hex] = new SKColor(0xff000000 | value);
        }
    }
}
