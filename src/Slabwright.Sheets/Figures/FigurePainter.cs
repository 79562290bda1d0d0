using System.Collections.Immutable;
using SkiaSharp;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.PlanSet;
using Slabwright.Sheets.Strip;

namespace Slabwright.Sheets.Figures;

/// <summary>Puts a figure on paper.</summary>
internal static class FigurePainter
{
    /// <summary>Ruler of the sheets' own typefaces.</summary>
    public static TextRuler RulerOf(PaperFonts fonts) => (text, size, bold) => fonts.Measure(text, bold ? Face.Bold : Face.Text, (float)size);

    /// <summary>Draws a figure with its upper left corner at a place.</summary>
    public static void Draw(PaperPad pad, Figure figure, float left, float top)
    {
        foreach (var shape in figure.Shapes) Draw(pad, shape, left, top);
    }

    private static void Draw(PaperPad pad, FigureShape shape, float left, float top)
    {
        var ink = FigureInk.Of(shape.Style);
        float[] dash = ink.Dash.IsDefaultOrEmpty ? [] : [.. ink.Dash.Select(d => (float)d)];
        switch (shape)
        {
            case FigureArea area:
                using (var path = PathOf(area.Rings, true, left, top))
                {
                    path.FillType = SKPathFillType.EvenOdd;
                    pad.Path(path, ink.Fill, null);
                    if (ink.Hatch != Hatch.None) HatchPainter.Draw(pad, path, ink.Hatch, ink.HatchInk!);
                    if (ink.Stroke is not null) pad.Path(path, null, ink.Stroke, (float)ink.Width, false, dash);
                }

                break;
            case FigureLine line:
                using (var path = PathOf([line.Points], false, left, top))
                {
                    pad.Path(path, null, ink.Stroke, (float)ink.Width, dash.Length > 0 && dash[0] < 0.5, dash);
                }

                break;
            case FigureCircle circle:
                pad.Dot(left + (float)circle.Centre.X, top + (float)circle.Centre.Y, (float)circle.Radius, ink.Fill, ink.Stroke, (float)ink.Width);
                break;
            case FigureText text:
                DrawText(pad, text, ink.Fill!, left + (float)text.Place.X, top + (float)text.Place.Y);
                break;
        }
    }

    private static void DrawText(PaperPad pad, FigureText text, string colour, float x, float y)
    {
        var face = text.Bold ? Face.Bold : Face.Text;
        if (text.Turned) pad.TurnedText(text.Text, x, y, (float)text.Size, 90, face, colour);
        else pad.Text(text.Text, x, y, (float)text.Size, face, colour, text.Anchor switch { FigureAnchor.Start => Side.Left, FigureAnchor.Middle => Side.Centre, _ => Side.Right });
    }

    private static SKPath PathOf(ImmutableArray<ImmutableArray<FigurePoint>> rings, bool close, float left, float top)
    {
        using var builder = new SKPathBuilder();
        foreach (var ring in rings)
        {
            builder.MoveTo(left + (float)ring[0].X, top + (float)ring[0].Y);
            for (var i = 1; i < ring.Length; i++) builder.LineTo(left + (float)ring[i].X, top + (float)ring[i].Y);
            if (close) builder.Close();
        }

        return builder.Detach();
    }
}
