using SkiaSharp;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Strip;

namespace Slabwright.Sheets.PlanSet;

/// <summary>Puts the strip's shapes on paper: scale, inks and hatches.</summary>
/// <param name="Pad">Paper.</param>
/// <param name="X0">Where <paramref name="From"/> lies, pt.</param>
/// <param name="Y0">Where offset 0 lies, pt.</param>
/// <param name="From">Metres along the road.</param>
/// <param name="PointsPerMetre">Scale.</param>
internal readonly record struct StripPainter(PaperPad Pad, float X0, float Y0, double From, double PointsPerMetre)
{
    public float X(double at) => X0 + (float)((at - From) * PointsPerMetre);

    public float Y(double offset) => Y0 + (float)(offset * PointsPerMetre);

    public SKPoint Point(StripPoint p) => new(X(p.At), Y(p.Offset));

    /// <summary>Draws shapes clipped to a box.</summary>
    public void Draw(IEnumerable<StripShape> shapes, SKRect clip)
    {
        Pad.Canvas.Save();
        Pad.Canvas.ClipRect(clip);
        foreach (var shape in shapes) Draw(shape);
        Pad.Canvas.Restore();
    }

    public void Draw(StripShape shape)
    {
        var ink = StripInk.Of(shape.Style);
        switch (shape)
        {
            case StripArea area:
                using (var outline = PathOf(area.Outline, true))
                {
                    Pad.Path(outline, ink.Fill, null);
                    if (ink.Hatch != Hatch.None) HatchPainter.Draw(Pad, outline, ink.Hatch, ink.HatchInk!);
                    if (ink.Stroke is not null) Pad.Path(outline, null, ink.Stroke, (float)ink.Width, false, DashOf(ink));
                }

                break;
            case StripLine line:
                using (var path = PathOf(line.Points, false))
                {
                    Pad.Path(path, null, ink.Stroke, (float)ink.Width, !ink.Dash.IsDefaultOrEmpty && ink.Dash[0] < 0.5, DashOf(ink));
                }

                break;
            case StripDot dot:
                var centre = Point(dot.Centre);
                Pad.Dot(centre.X, centre.Y, shape.Style == StripStyle.Core ? 2 : 0.9f, ink.Fill, ink.Stroke, Math.Min(0.8f, (float)ink.Width));
                break;
        }
    }

    private SKPath PathOf(IReadOnlyList<StripPoint> points, bool close)
    {
        using var builder = new SKPathBuilder();
        builder.MoveTo(Point(points[0]));
        for (var i = 1; i < points.Count; i++) builder.LineTo(Point(points[i]));
        if (close) builder.Close();
        return builder.Detach();
    }

    private static float[] DashOf(StripInk ink) => ink.Dash.IsDefaultOrEmpty ? [] : [.. ink.Dash.Select(d => (float)d)];
}

/// <summary>Fills an outline with a line pattern. The lines start from the paper's corner, so that neighbouring areas line up.</summary>
internal static class HatchPainter
{
    public static void Draw(PaperPad pad, SKPath outline, Hatch hatch, string colour)
    {
        var box = outline.Bounds;
        pad.Canvas.Save();
        pad.Canvas.ClipPath(outline);
        switch (hatch)
        {
            case Hatch.Rising: Slanted(pad, box, 5, 1, colour); break;
            case Hatch.Crossed: Slanted(pad, box, 5.5f, 1, colour); Slanted(pad, box, 5.5f, -1, colour); break;
            case Hatch.Woven: Slanted(pad, box, 3.5f, 1, colour); Level(pad, box, 5, colour); break;
            case Hatch.Falling: Slanted(pad, box, 7, -1, colour); break;
            case Hatch.Upright: Upright(pad, box, 2.5f, colour); break;
            case Hatch.Dotted: Dots(pad, box, 3.6f, colour); break;
            case Hatch.Sparse: Dots(pad, box, 9, colour); break;
        }

        pad.Canvas.Restore();
    }

    private static void Slanted(PaperPad pad, SKRect box, float gap, int direction, string colour)
    {
        using var builder = new SKPathBuilder();
        var (low, high) = direction > 0 ? (box.Left + box.Top, box.Right + box.Bottom) : (box.Left - box.Bottom, box.Right - box.Top);
        for (var c = MathF.Ceiling(low / gap) * gap; c <= high; c += gap)
        {
            builder.MoveTo(c - direction * box.Top, box.Top);
            builder.LineTo(c - direction * box.Bottom, box.Bottom);
        }

        using var path = builder.Detach();
        pad.Path(path, null, colour, 0.5f);
    }

    private static void Level(PaperPad pad, SKRect box, float gap, string colour)
    {
        using var builder = new SKPathBuilder();
        for (var y = MathF.Ceiling(box.Top / gap) * gap; y <= box.Bottom; y += gap)
        {
            builder.MoveTo(box.Left, y);
            builder.LineTo(box.Right, y);
        }

        using var path = builder.Detach();
        pad.Path(path, null, colour, 0.5f);
    }

    private static void Upright(PaperPad pad, SKRect box, float gap, string colour)
    {
        using var builder = new SKPathBuilder();
        for (var x = MathF.Ceiling(box.Left / gap) * gap; x <= box.Right; x += gap)
        {
            builder.MoveTo(x, box.Top);
            builder.LineTo(x, box.Bottom);
        }

        using var path = builder.Detach();
        pad.Path(path, null, colour, 0.5f);
    }

    /// <summary>Dots as one path of very short lines with round ends: a tenth of the bytes of circles.</summary>
    private static void Dots(PaperPad pad, SKRect box, float gap, string colour)
    {
        using var builder = new SKPathBuilder();
        for (var y = MathF.Ceiling(box.Top / gap) * gap; y <= box.Bottom; y += gap)
        {
            for (var x = MathF.Ceiling(box.Left / gap) * gap; x <= box.Right; x += gap)
            {
                builder.MoveTo(x, y);
                builder.LineTo(x + 0.02f, y);
            }
        }

        using var path = builder.Detach();
        pad.Path(path, null, colour, 1.1f, true);
    }
}
