using SkiaSharp;

namespace Slabwright.Sheets.Paper;

/// <summary>Arrows on the sheets.</summary>
internal static class ArrowMark
{
    /// <summary>Arrow in the direction of travel.</summary>
    public static void Travel(PaperPad pad, float x, float y, float length)
    {
        pad.Line(x, y, x + length - 4, y, 0.9f);
        Head(pad, x + length, y, 0, 5);
    }

    /// <summary>North arrow about a centre; degrees anticlockwise from the right.</summary>
    public static void North(PaperPad pad, float x, float y, float size, float degrees)
    {
        var (dx, dy) = (MathF.Cos(degrees * MathF.PI / 180), -MathF.Sin(degrees * MathF.PI / 180));
        var half = size / 2;
        pad.Line(x - dx * half, y - dy * half, x + dx * (half - 4), y + dy * (half - 4), 1);
        Head(pad, x + dx * half, y + dy * half, degrees, 7);
        pad.Text("N", x - dx * (half + 5), y - dy * (half + 5) + 2.6f, 7.5f, Face.Bold, PaperPad.Ink, Side.Centre);
    }

    private static void Head(PaperPad pad, float x, float y, float degrees, float size)
    {
        var angle = degrees * MathF.PI / 180;
        var (dx, dy) = (MathF.Cos(angle), -MathF.Sin(angle));
        using var builder = new SKPathBuilder();
        builder.MoveTo(x, y);
        builder.LineTo(x - dx * size - dy * size * 0.36f, y - dy * size + dx * size * 0.36f);
        builder.LineTo(x - dx * size + dy * size * 0.36f, y - dy * size - dx * size * 0.36f);
        builder.Close();
        using var path = builder.Detach();
        pad.Path(path, PaperPad.Ink, null);
    }
}
