using SkiaSharp;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Strip;

namespace Slabwright.Sheets.PlanSet;

/// <summary>
/// Texts inside the lanes: repair numbers first, then slab numbers in the slab's lower left corner, surface works, zones, distress codes.
/// Each tries its places in turn; a distress code that finds none is left out, its drawing stays.
/// </summary>
internal static class StripRowNotes
{
    private static readonly NoteKind[] Order =
        [NoteKind.Repair, NoteKind.SlabNumber, NoteKind.SurfaceWork, NoteKind.NoCutZone, NoteKind.Feature, NoteKind.Core, NoteKind.Distress];

    private static readonly float[] Shifts = [0, -9, 9, -18, 18, -27, 27];
    private static readonly float[] Heights = [0.25f, 0.72f, 0.5f, 0.14f, 0.86f];

    public static void Draw(StripPainter painter, StripModel model, SKRect clip)
    {
        var boxes = new TextBoxes();
        foreach (var kind in Order)
        {
            foreach (var note in model.Notes)
            {
                if (note.Kind == kind) Draw(painter, model, note, clip, boxes);
            }
        }
    }

    private static void Draw(StripPainter painter, StripModel model, StripNote note, SKRect clip, TextBoxes boxes)
    {
        switch (note.Kind)
        {
            case NoteKind.Repair: Repair(painter, note, clip, boxes); break;
            case NoteKind.SlabNumber: SlabNumber(painter, note, clip, boxes); break;
            case NoteKind.Feature: Feature(painter, model, note, clip, boxes); break;
            default: Floating(painter, model, note, clip, boxes); break;
        }
    }

    private static void Repair(StripPainter painter, StripNote note, SKRect clip, TextBoxes boxes)
    {
        const float size = 7;
        var width = painter.Pad.Fonts.Measure(note.Text, Face.Bold, size);
        var room = (float)(note.Extent * painter.PointsPerMetre) - 4;
        var (x, y) = (Math.Clamp(painter.X(note.Place.At), clip.Left + 4, clip.Right - 4), painter.Y(note.Place.Offset));
        if (width + 2 <= room)
        {
            if (boxes.TryTake(x - width / 2 - 1, y - size / 2, width + 2, size)) Over(painter.Pad, note.Text, x, y + size * 0.36f, size, Face.Bold, PaperPad.Ink, "#ffffff");
            return;
        }

        if (room < size - 2 || !boxes.TryTake(x - size / 2, y - width / 2 - 1, size, width + 2)) return;
        painter.Pad.Box(new SKRect(x - size * 0.46f, y - width / 2 - 1, x + size * 0.46f, y + width / 2 + 1), "#ffffff");
        painter.Pad.TurnedText(note.Text, x, y, size, 90, Face.Bold);
    }

    private static void SlabNumber(StripPainter painter, StripNote note, SKRect clip, TextBoxes boxes)
    {
        const float size = 5.4f;
        var width = painter.Pad.Fonts.Measure(note.Text, Face.Text, size);
        var x = painter.X(note.Place.At - note.Extent / 2) + 2;
        var y = painter.Y(note.Place.Offset) - 2;
        if (note.Extent * painter.PointsPerMetre < width + 4 || x < clip.Left || x + width > clip.Right) return;
        if (boxes.TryTake(x, y - size, width, size)) Over(painter.Pad, note.Text, x + width / 2, y, size, Face.Text, PaperPad.Quiet, "#f3f2ee");
    }

    /// <summary>Features are named at the left shoulder, over the place they cover.</summary>
    private static void Feature(StripPainter painter, StripModel model, StripNote note, SKRect clip, TextBoxes boxes)
    {
        const float size = 6;
        var width = painter.Pad.Fonts.Measure(note.Text, Face.Text, size);
        var x = Math.Clamp(painter.X(note.Place.At), clip.Left + width / 2 + 2, Math.Max(clip.Left + width / 2 + 2, clip.Right - width / 2 - 2));
        var y = painter.Y(model.Left) + size + 1.5f;
        if (boxes.TryTake(x - width / 2, y - size, width, size)) Over(painter.Pad, note.Text, x, y, size, Face.Text, PaperPad.Ink, "#ffffff");
    }

    private static void Floating(StripPainter painter, StripModel model, StripNote note, SKRect clip, TextBoxes boxes)
    {
        var (size, face, colour, back) = note.Kind switch
        {
            NoteKind.SurfaceWork => (6.6f, Face.Bold, StripInk.Surface, "#ffffff"),
            NoteKind.NoCutZone => (6f, Face.Bold, StripInk.NoCut, "#ffffff"),
            NoteKind.Core => (5.4f, Face.Text, PaperPad.Ink, "#f3f2ee"),
            _ => (5.6f, Face.Bold, StripInk.Damage, "#f3f2ee"),
        };
        var width = painter.Pad.Fonts.Measure(note.Text, face, size);
        var (left, right) = BandOf(model, note.Lane);
        foreach (var height in Heights)
        {
            var y = painter.Y(left + (right - left) * height) + size * 0.36f;
            foreach (var shift in Shifts)
            {
                var x = painter.X(note.Place.At) + shift;
                if (x - width / 2 < clip.Left || x + width / 2 > clip.Right) continue;
                if (!boxes.TryTake(x - width / 2 - 0.8f, y - size * 0.8f, width + 1.6f, size)) continue;
                Over(painter.Pad, note.Text, x, y, size, face, colour, back);
                return;
            }
        }
    }

    private static (double Left, double Right) BandOf(StripModel model, int lane)
    {
        foreach (var band in model.Lanes)
        {
            if (band.Lane == lane) return (band.Left, band.Right);
        }

        return (0, model.Lanes.IsEmpty ? 0 : model.Lanes[^1].Right);
    }

    private static void Over(PaperPad pad, string text, float x, float y, float size, Face face, string colour, string back)
    {
        var width = pad.Fonts.Measure(text, face, size);
        pad.Box(new SKRect(x - width / 2 - 0.8f, y - size * 0.76f, x + width / 2 + 0.8f, y + size * 0.1f), back);
        pad.Text(text, x, y, size, face, colour, Side.Centre);
    }
}
