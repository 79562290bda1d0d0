using SkiaSharp;
using Slabwright.Core.Job;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Strip;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>One row of a strip sheet: laid out once, drawn where the sheet puts it.</summary>
internal sealed class StripRowDrawing
{
    /// <summary>Room left of the row for lane numbers, pt.</summary>
    public const float Gutter = 36;

    private const float RulerHeight = 15;
    private const float NoteHeight = 13;
    private const float LabelGap = 7;

    private readonly Project project;
    private readonly StripRow row;
    private readonly StripModel model;
    private readonly JobUnits units;
    private readonly double scale;
    private readonly List<StripLabel> above = [];
    private readonly List<StripLabel> below = [];
    private readonly int tiersAbove;
    private readonly int tiersBelow;
    private readonly float labelHeight;

    public StripRowDrawing(Project project, RepairPlan plan, StripRow row, double pointsPerMetre, PaperFonts fonts, JobUnits units)
    {
        (this.project, this.row, this.units, scale) = (project, row, units, pointsPerMetre);
        model = StripBuilder.Build(project, plan, row.From, row.To);
        var lanes = model.Lanes.Length;
        foreach (var repair in plan.Boundaries.Repairs.Where(r => r.To > row.From && r.From < row.To))
        {
            var middle = (Math.Max(repair.From, row.From) + Math.Min(repair.To, row.To)) / 2;
            var label = StripLabel.Of(project, repair, fonts, units, (float)((middle - row.From) * scale));
            (LaneIndex(repair.Lane) < (lanes + 1) / 2 ? above : below).Add(label);
        }

        var right = Math.Max((float)((row.To - row.From) * scale), 120);
        tiersAbove = StripLabelPlacing.Place(above, 0, right, fonts);
        tiersBelow = StripLabelPlacing.Place(below, 0, right, fonts);
        labelHeight = 3 * StripLabel.Leading + 2;
        Height = (row.SkippedFrom is null ? 0 : NoteHeight) + TopBand + RulerHeight + LanesHeight + BottomBand + 8;
    }

    /// <summary>Height the row needs, pt.</summary>
    public float Height { get; }

    public StripModel Model => model;

    private float LanesHeight => (float)((model.Right - model.Left) * scale);

    private float TopBand => tiersAbove == 0 ? 0 : tiersAbove * labelHeight + LabelGap;

    private float BottomBand => Math.Max(tiersBelow == 0 ? 0 : tiersBelow * labelHeight + LabelGap, IsTrue ? 22 : 0);

    private bool IsTrue => project.Road.Alignment is { Elements.IsEmpty: false };

    private int LaneIndex(int lane)
    {
        for (var i = 0; i < model.Lanes.Length; i++)
        {
            if (model.Lanes[i].Lane == lane) return i;
        }

        return 0;
    }

    /// <summary>Draws the row with its upper left corner at a point.</summary>
    public void Draw(PaperPad pad, float left, float top)
    {
        if (row.SkippedFrom is { } skipped)
        {
            pad.Text(SkippedWords(skipped), left + Gutter, top + 9, 7.5f, Face.Text, PaperPad.Quiet);
            top += NoteHeight;
        }

        var lanesTop = top + TopBand + RulerHeight;
        var painter = new StripPainter(pad, left + Gutter, lanesTop - (float)(model.Left * scale), row.From, scale);
        var clip = new SKRect(painter.X(row.From), lanesTop, painter.X(row.To), lanesTop + LanesHeight);
        painter.Draw(model.Shapes, clip);
        DrawEnds(pad, clip);
        DrawLabels(pad, above, painter, true, lanesTop - RulerHeight, lanesTop);
        DrawLabels(pad, below, painter, false, lanesTop + LanesHeight, lanesTop + LanesHeight);
        DrawRuler(pad, painter, lanesTop);
        StripRowNotes.Draw(painter, model, clip);
        DrawGutter(pad, painter, left, lanesTop + LanesHeight);
    }

    private string SkippedWords(double from) =>
        $"Not drawn: station {project.Road.Stationing.Format(from)} to {project.Road.Stationing.Format(row.From)} ({units.WholeLength(row.From - from)}), no work.";

    private static void DrawEnds(PaperPad pad, SKRect clip)
    {
        pad.Line(clip.Left, clip.Top - 3, clip.Left, clip.Bottom + 3, 0.7f, PaperPad.Ink, 7, 2, 1.5f, 2);
        pad.Line(clip.Right, clip.Top - 3, clip.Right, clip.Bottom + 3, 0.7f, PaperPad.Ink, 7, 2, 1.5f, 2);
    }

    private void DrawLabels(PaperPad pad, List<StripLabel> labels, StripPainter painter, bool isAbove, float bandEdge, float leaderEdge)
    {
        foreach (var label in labels)
        {
            var x = painter.X0 + label.X;
            var y = isAbove
                ? bandEdge - LabelGap - label.Tier * labelHeight - label.Height + 2
                : bandEdge + LabelGap + label.Tier * labelHeight;
            var band = model.Lanes[LaneIndex(label.Repair.Lane)];
            var target = new SKPoint(painter.X0 + label.Target, painter.Y(isAbove ? band.Left : band.Right));
            var (near, end) = isAbove ? (bandEdge - LabelGap + 1, y + label.Height) : (bandEdge + LabelGap - 1, y - 1);
            var channel = painter.X0 + label.Channel;
            pad.Line(channel, end, channel, near, 0.4f, StripInk.Removal);
            pad.Line(channel, near, target.X, leaderEdge, 0.4f, StripInk.Removal);
            pad.Line(target.X, leaderEdge, target.X, target.Y, 0.4f, StripInk.Removal);
            for (var i = 0; i < label.Lines.Length; i++)
            {
                pad.Text(label.Lines[i], x, y + StripLabel.Size + i * StripLabel.Leading, StripLabel.Size, i == 0 ? Face.Bold : Face.Text);
            }
        }
    }

    private void DrawRuler(PaperPad pad, StripPainter painter, float lanesTop)
    {
        var least = 58 / scale;
        var boxes = new TextBoxes();
        foreach (var tick in StationTicks.Of(project.Road.Stationing, row.From, row.To, least))
        {
            var x = painter.X(tick.At);
            if (tick.IsEquation)
            {
                pad.Line(x, lanesTop - RulerHeight, x, lanesTop + LanesHeight, 0.9f, StripInk.NoCut, 2, 1.5f);
                continue;
            }

            pad.Line(x, lanesTop - (tick.Label.Length > 0 ? 5 : 3), x, lanesTop, 0.6f);
            if (tick.Label.Length == 0 || x < painter.X0 + 2 || x > painter.X(row.To) - 2) continue;
            var width = pad.Fonts.Measure(tick.Label, Face.Bold, 7.2f) + 4;
            if (boxes.TryTake(x - width / 2, 0, width, 1)) WriteOver(pad, tick.Label, x, lanesTop - 6.5f, 7.2f, PaperPad.Ink);
        }

        WriteOver(pad, project.Road.Stationing.Format(row.From), painter.X0 - 4, lanesTop - 6.5f, 6.4f, PaperPad.Quiet, Side.Right);
    }

    private static void WriteOver(PaperPad pad, string text, float x, float y, float size, string colour, Side side = Side.Centre)
    {
        var width = pad.Fonts.Measure(text, Face.Bold, size);
        var left = side == Side.Centre ? x - width / 2 : x - width;
        pad.Box(new SKRect(left - 1.5f, y - size * 0.8f, left + width + 1.5f, y + 1.2f), "#ffffff");
        pad.Text(text, left, y, size, Face.Bold, colour);
    }

    private void DrawGutter(PaperPad pad, StripPainter painter, float left, float lanesBottom)
    {
        foreach (var band in model.Lanes)
        {
            var y = painter.Y(band.Middle);
            pad.Text($"Lane {band.Lane.ToString(System.Globalization.CultureInfo.InvariantCulture)}", left + Gutter - 5, y + 1, 7.5f, Face.Bold, PaperPad.Ink, Side.Right);
            ArrowMark.Travel(pad, left + Gutter - 24, y + 7, 18);
        }

        if (!IsTrue) return;
        var heading = project.Road.Alignment!.PoseAt((row.From + row.To) / 2).Heading;
        ArrowMark.North(pad, left + 16, lanesBottom + 12, 17, (float)(90 - heading * 180 / Math.PI));
    }
}
