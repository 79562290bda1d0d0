using System.Globalization;
using SkiaSharp;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Paper;

/// <summary>One sheet before it knows its number.</summary>
/// <param name="Title">Title in the header and the index.</param>
/// <param name="Detail">What is on it, e.g. its stations; may be empty.</param>
/// <param name="Draw">Draws the body.</param>
internal sealed record SheetDraft(string Title, string Detail, Action<PaperPad, SheetNumber> Draw);

/// <summary>Number of a sheet in the set.</summary>
internal readonly record struct SheetNumber(int Number, int Count);

/// <summary>
/// Paper size, margins, header and footer. US projects print on 11 × 17 in, SI projects on A3, both landscape, with a wider margin on the
/// left for binding.
/// </summary>
internal sealed class SheetFrame
{
    private const float Binding = 40;
    private const float Margin = 22;
    private const float HeaderHeight = 30;
    private const float FooterHeight = 24;

    private readonly Project project;
    private readonly SheetOptions options;

    public SheetFrame(Project project, SheetOptions options)
    {
        this.project = project;
        this.options = options;
        (Width, Height) = project.UnitSystem == UnitSystem.Si ? (1190.55f, 841.89f) : (1224, 792);
        Body = new SKRect(Binding, Margin + HeaderHeight + 8, Width - Margin, Height - Margin - FooterHeight - 6);
    }

    public float Width { get; }

    public float Height { get; }

    /// <summary>Where the sheet's own content goes.</summary>
    public SKRect Body { get; }

    public void Draw(PaperPad pad, SheetDraft draft, SheetNumber number)
    {
        DrawHeader(pad, draft);
        DrawFooter(pad, number);
    }

    private void DrawHeader(PaperPad pad, SheetDraft draft)
    {
        var (left, right, baseline) = (Binding, Width - Margin, Margin + 19);
        pad.Text(draft.Title, left, baseline, 15, Face.Bold);
        var after = left + pad.Fonts.Measure(draft.Title, Face.Bold, 15) + 12;
        var room = (right - after) * (draft.Detail.Length > 0 ? 0.5f : 0.95f);
        var name = TextFlow.Fit(pad.Fonts, project.Name, Face.Text, 9, room);
        pad.Text(name, right, baseline, 9, Face.Text, PaperPad.Quiet, Side.Right);
        var detailRoom = right - after - pad.Fonts.Measure(name, Face.Text, 9) - 16;
        pad.Text(TextFlow.Fit(pad.Fonts, draft.Detail, Face.Text, 11, detailRoom), after, baseline, 11);
        pad.Line(left, Margin + HeaderHeight, right, Margin + HeaderHeight, 1.6f);
    }

    private void DrawFooter(PaperPad pad, SheetNumber number)
    {
        var (left, right, top) = (Binding, Width - Margin, Height - Margin - FooterHeight);
        pad.Line(left, top, right, top, 0.8f);
        var day = options.PrintedOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        (string Name, string Value, float Share)[] cells =
        [
            ("Job", project.Name, 0.29f), ("Road", project.Road.Name, 0.17f), ("Units", JobUnits.Of(project.UnitSystem).Name, 0.14f),
            ("Rule set", project.RuleSet.Name, 0.17f), ("Printed", day, 0.07f), ("Revision", options.Revision, 0.06f),
        ];
        var x = left;
        foreach (var (name, value, share) in cells)
        {
            var width = (right - left) * share;
            pad.Text(name, x, top + 8.5f, 6, Face.Text, PaperPad.Quiet);
            pad.Text(TextFlow.Fit(pad.Fonts, value, Face.Text, 8.5f, width - 10), x, top + 19, 8.5f);
            x += width;
            pad.Line(x - 5, top + 3, x - 5, top + FooterHeight - 1, 0.4f, PaperPad.Rule);
        }

        var words = string.Create(CultureInfo.InvariantCulture, $"Sheet {number.Number} of {number.Count}");
        pad.Text(words, right, top + 17.5f, 13, Face.Bold, PaperPad.Ink, Side.Right);
    }
}
