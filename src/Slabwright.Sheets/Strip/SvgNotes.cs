using System.Globalization;
using System.Text;

namespace Slabwright.Sheets.Strip;

/// <summary>The texts of the strip on a screen: each is drawn only where it finds room, the most important first.</summary>
internal static class SvgNotes
{
    private static readonly NoteKind[] Order =
        [NoteKind.Repair, NoteKind.NoCutZone, NoteKind.SurfaceWork, NoteKind.Feature, NoteKind.Distress, NoteKind.SlabNumber];

    public static void Append(StringBuilder svg, StripModel model, SvgView view)
    {
        svg.Append("<g class=\"strip-notes\" text-anchor=\"middle\" paint-order=\"stroke\" stroke=\"var(--strip-lane-fill, #f3f2ee)\" stroke-width=\"2.5\">");
        var boxes = new TextBoxes();
        foreach (var kind in Order)
        {
            foreach (var note in model.Notes.Where(n => n.Kind == kind)) AppendNote(svg, note, view, boxes);
        }

        svg.Append("</g>");
    }

    private static void AppendNote(StringBuilder svg, StripNote note, SvgView view, TextBoxes boxes)
    {
        var size = note.Kind is NoteKind.SlabNumber ? 9.0 : 10.5;
        var width = note.Text.Length * size * 0.56;
        var (x, middle) = (view.X(note.Place.At), view.Y(note.Place.Offset));
        if (note.Kind is NoteKind.SlabNumber && width > note.Extent * view.PxPerMetre - 6) return;
        if (x - width / 2 < 0 || x + width / 2 > view.WidthPx) return;
        foreach (var y in Heights(note.Kind, middle, size))
        {
            if (!boxes.TryTake(x - width / 2, y - size * 0.8, width, size)) continue;
            var weight = note.Kind is NoteKind.Repair ? " font-weight=\"600\"" : "";
            var data = note.Ref.Length > 0 ? $" data-ref=\"{SvgText.Escape(note.Ref)}\"" : "";
            svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{view.N(x)}\" y=\"{view.N(y)}\" font-size=\"{view.N(size)}\"{weight}{data} fill=\"{Colour(note.Kind)}\">");
            svg.Append(SvgText.Escape(note.Text)).Append("</text>");
            return;
        }
    }

    private static double[] Heights(NoteKind kind, double middle, double size) => kind switch
    {
        NoteKind.SlabNumber => [middle - 2.5],
        NoteKind.Feature => [middle + size],
        NoteKind.Repair => [middle + size * 0.35],
        _ => [middle - size * 0.75, middle + size * 1.4, middle + size * 0.35],
    };

    private static string Colour(NoteKind kind) => kind switch
    {
        NoteKind.Repair => $"var(--strip-note-repair, {StripInk.Ink})",
        NoteKind.SurfaceWork => $"var(--strip-note-work, {StripInk.Surface})",
        NoteKind.Distress => $"var(--strip-note-distress, {StripInk.Damage})",
        NoteKind.NoCutZone => $"var(--strip-note-no-cut, {StripInk.NoCut})",
        _ => $"var(--strip-note-quiet, {StripInk.Quiet})",
    };
}
