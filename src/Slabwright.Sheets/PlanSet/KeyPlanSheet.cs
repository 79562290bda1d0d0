using System.Globalization;
using SkiaSharp;
using Slabwright.Core.Job;
using Slabwright.Core.Pavement;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Strip;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>A stretch of road and the sheet that shows it.</summary>
internal readonly record struct SheetStretch(double From, double To, int Sheet);

/// <summary>
/// The key plan: the alignment in plan with sheet boundaries, repairs, stations, scale bar and north arrow; and the road straightened
/// below it, which also serves roads without an alignment.
/// </summary>
internal sealed class KeyPlanSheet(Project project, RepairPlan plan, SheetFrame frame)
{
    private const float BarRow = 58;

    private readonly JobUnits units = JobUnits.Of(project.UnitSystem);
    private readonly Road road = project.Road;

    /// <summary>The sheet; the stretches become known when all sheets have their numbers.</summary>
    public SheetDraft Draft(Func<IReadOnlyList<SheetStretch>> stretches) =>
        new("Key plan", $"{road.Stationing.Format(0)} to {road.Stationing.Format(road.Length)}", (pad, _) => Draw(pad, stretches()));

    private void Draw(PaperPad pad, IReadOnlyList<SheetStretch> stretches)
    {
        var body = frame.Body;
        var isTrue = road.Alignment is { Elements.IsEmpty: false };
        var rows = Math.Clamp((int)Math.Ceiling(road.Length / 2500), 1, isTrue ? 4 : 10);
        var top = isTrue ? body.Bottom - rows * BarRow - 12 : body.Top + 4;
        if (isTrue) DrawPlan(pad, new SKRect(body.Left, body.Top, body.Right, top - 10), stretches);
        pad.Text(isTrue ? "Straightened" : "Straightened; the project has no alignment", body.Left, top + 8, 9, Face.Bold);
        DrawKey(pad, body.Left + 240, top + 8);
        for (var i = 0; i < rows; i++) DrawBar(pad, body, top + 42 + i * BarRow, road.Length * i / rows, road.Length * (i + 1) / rows, stretches);
    }

    private static void DrawKey(PaperPad pad, float x, float y)
    {
        pad.Line(x, y - 3, x + 14, y - 3, 3, StripInk.Removal);
        pad.Text("full-depth work", x + 18, y, 8);
        pad.Line(x + 96, y - 3, x + 110, y - 3, 3, StripInk.Surface);
        pad.Text("partial-depth repair or seal", x + 114, y, 8);
        pad.Line(x + 230, y - 3, x + 244, y - 3, 5, "#d9c2d5");
        pad.Text("no-cut zone", x + 248, y, 8);
        pad.Box(new SKRect(x + 308, y - 8, x + 320, y), "#ffffff", PaperPad.Ink, 0.7f);
        pad.Text("number of the sheet that shows the stretch", x + 324, y, 8);
    }

    private void DrawBar(PaperPad pad, SKRect body, float y, double from, double to, IReadOnlyList<SheetStretch> stretches)
    {
        float X(double at) => body.Left + (float)((Math.Clamp(at, from, to) - from) / (to - from)) * body.Width;
        foreach (var zone in road.NoCutZones.Where(z => z.To > from && z.From < to)) pad.Box(new SKRect(X(zone.From), y - 9, X(zone.To), y + 9), "#d9c2d5");
        pad.Box(new SKRect(X(from), y - 9, X(to), y + 9), null, PaperPad.Ink, 0.7f);
        foreach (var work in plan.SurfaceWorks.Where(w => w.To >= from && w.From <= to)) Mark(pad, X(work.From), X(work.To), LaneY(work.Lane, y), StripInk.Surface);
        foreach (var repair in plan.Boundaries.Repairs.Where(r => r.To >= from && r.From <= to)) Mark(pad, X(repair.From), X(repair.To), LaneY(repair.Lane, y), StripInk.Removal);
        foreach (var tick in StationTicks.Of(road.Stationing, from, to, (to - from) / 16))
        {
            pad.Line(X(tick.At), y + 9, X(tick.At), y + (tick.Label.Length > 0 ? 14 : 12), 0.6f);
            if (tick.Label.Length > 0 && !tick.IsEquation && X(tick.At) > body.Left + 16 && X(tick.At) < body.Right - 16) pad.Text(tick.Label, X(tick.At), y + 22, 7, Face.Text, PaperPad.Ink, Side.Centre);
        }

        var last = float.NegativeInfinity;
        foreach (var stretch in stretches.Where(s => s.To > from && s.From < to))
        {
            var middle = (X(stretch.From) + X(stretch.To)) / 2;
            foreach (var end in new[] { stretch.From, stretch.To }.Where(e => e >= from && e <= to)) pad.Line(X(end), y - 14, X(end), y + 9, 0.5f, PaperPad.Ink, 2, 1.5f);
            if (middle - last < 17) continue;
            SheetMark(pad, middle, y - 17, stretch.Sheet);
            last = middle;
        }
    }

    private float LaneY(int lane, float y) => y - 9 + 18 * ((float)lane - 0.5f) / Math.Max(1, road.Lanes.Length);

    private void Mark(PaperPad pad, float from, float to, float y, string colour)
    {
        var height = Math.Max(1.5f, 18f / Math.Max(1, road.Lanes.Length) - 3);
        var spread = Math.Max(0, 1.1f - (to - from)) / 2;
        pad.Box(new SKRect(from - spread, y - height / 2, to + spread, y + height / 2), colour);
    }

    private static void SheetMark(PaperPad pad, float x, float y, int sheet)
    {
        pad.Box(new SKRect(x - 7, y - 6, x + 7, y + 4), "#ffffff", PaperPad.Ink, 0.7f);
        pad.Text(sheet.ToString(CultureInfo.InvariantCulture), x, y + 2, 7.4f, Face.Bold, PaperPad.Ink, Side.Centre);
    }

    private void DrawPlan(PaperPad pad, SKRect box, IReadOnlyList<SheetStretch> stretches)
    {
        var view = PlanView.Of(road, new SKRect(box.Left + 70, box.Top + 34, box.Right - 70, box.Bottom - 40));
        using (var line = view.Line(0, road.Length, 0)) pad.Path(line, null, PaperPad.Ink, 1.1f);
        foreach (var work in plan.SurfaceWorks) DrawWork(pad, view, work.From, work.To, -4, StripInk.Surface);
        foreach (var repair in plan.Boundaries.Repairs) DrawWork(pad, view, repair.From, repair.To, 4, StripInk.Removal);
        foreach (var tick in StationTicks.Of(road.Stationing, 0, road.Length, 60 / view.PointsPerMetre).Where(t => t.Label.Length > 0 && !t.IsEquation))
        {
            var (at, beside) = (view.At(tick.At, -5), view.At(tick.At, -20));
            pad.Line(view.At(tick.At, 0).X, view.At(tick.At, 0).Y, at.X, at.Y, 0.8f);
            pad.Text(tick.Label, beside.X, beside.Y + 2.5f, 7.4f, Face.Text, PaperPad.Ink, Side.Centre);
        }

        var last = new SKPoint(float.MinValue, 0);
        foreach (var stretch in stretches)
        {
            foreach (var end in new[] { stretch.From, stretch.To })
            {
                var (a, b) = (view.At(end, -3), view.At(end, 12));
                pad.Line(a.X, a.Y, b.X, b.Y, 0.6f);
            }

            var mark = view.At((stretch.From + stretch.To) / 2, 20);
            if (SKPoint.Distance(mark, last) < 18) continue;
            SheetMark(pad, mark.X, mark.Y, stretch.Sheet);
            last = mark;
        }

        DrawFeatures(pad, view);
        ArrowMark.North(pad, box.Right - 26, box.Top + 30, 38, 90);
        DrawScale(pad, box, view.PointsPerMetre);
    }

    private static void DrawWork(PaperPad pad, PlanView view, double from, double to, float offset, string colour)
    {
        var least = 1.2 / view.PointsPerMetre;
        var spread = Math.Max(0, least - (to - from)) / 2;
        using var line = view.Line(from - spread, to + spread, offset);
        pad.Path(line, null, colour, 3.4f);
    }

    private void DrawFeatures(PaperPad pad, PlanView view)
    {
        var boxes = new TextBoxes();
        foreach (var feature in road.Features)
        {
            var at = view.At((feature.From + feature.To) / 2, -3);
            var width = pad.Fonts.Measure(feature.Name, Face.Text, 7.6f);
            foreach (var away in new[] { -46f, -58, -70, -82, -94, -106 })
            {
                var beside = view.At((feature.From + feature.To) / 2, away);
                var left = beside.X < at.X ? beside.X - width : beside.X;
                if (!boxes.TryTake(left - 2, beside.Y - 10, width + 4, 10)) continue;
                pad.Line(at.X, at.Y, beside.X, beside.Y, 0.4f, PaperPad.Quiet);
                pad.Text(feature.Name, left, beside.Y - 3, 7.6f, Face.Text, PaperPad.Quiet);
                break;
            }
        }
    }

    private void DrawScale(PaperPad pad, SKRect box, double pointsPerMetre)
    {
        double[] lengths = units.System == Core.Measures.UnitSystem.Si ? [100, 200, 500, 1000, 2000, 5000] : [152.4, 304.8, 609.6, 1609.344, 3218.688, 8046.72];
        var length = lengths.LastOrDefault(l => l * pointsPerMetre <= 180, lengths[0]);
        var (width, y) = ((float)(length * pointsPerMetre), box.Bottom - 14);
        for (var i = 0; i < 4; i++)
        {
            pad.Box(new SKRect(box.Left + width * i / 4, y, box.Left + width * (i + 1) / 4, y + 4), i % 2 == 0 ? PaperPad.Ink : "#ffffff", PaperPad.Ink, 0.5f);
        }

        var words = length >= 1600 && units.System == Core.Measures.UnitSystem.UsCustomary ? units.DistanceText(length) : units.WholeLength(length);
        pad.Text("0", box.Left, y + 12, 7);
        pad.Text(words, box.Left + width, y + 12, 7, Face.Text, PaperPad.Ink, Side.Centre);
    }
}

/// <summary>The alignment fitted into a box with north up.</summary>
internal sealed class PlanView
{
    private readonly Alignment alignment;
    private readonly double left;
    private readonly double top;
    private readonly SKPoint corner;

    private PlanView(Alignment alignment, double left, double top, double scale, SKPoint corner) =>
        (this.alignment, this.left, this.top, PointsPerMetre, this.corner) = (alignment, left, top, scale, corner);

    public double PointsPerMetre { get; }

    public static PlanView Of(Road road, SKRect box)
    {
        var alignment = road.Alignment!;
        var points = Enumerable.Range(0, 401).Select(i => alignment.PoseAt(road.Length * i / 400).Point).ToList();
        var (west, east, south, north) = (points.Min(p => p.East), points.Max(p => p.East), points.Min(p => p.North), points.Max(p => p.North));
        var scale = Math.Min(box.Width / Math.Max(east - west, 1), box.Height / Math.Max(north - south, 1));
        var corner = new SKPoint(box.MidX - (float)((east - west) * scale / 2), box.MidY - (float)((north - south) * scale / 2));
        return new PlanView(alignment, west, north, scale, corner);
    }

    /// <summary>A place on paper, some points to the right of the direction of travel.</summary>
    public SKPoint At(double at, float right)
    {
        var pose = alignment.PoseAt(at);
        var (x, y) = (corner.X + (float)((pose.Point.East - left) * PointsPerMetre), corner.Y + (float)((top - pose.Point.North) * PointsPerMetre));
        return new SKPoint(x + right * (float)Math.Sin(pose.Heading), y + right * (float)Math.Cos(pose.Heading));
    }

    public SKPath Line(double from, double to, float right)
    {
        using var builder = new SKPathBuilder();
        builder.MoveTo(At(from, right));
        var pieces = Math.Clamp((int)((to - from) * PointsPerMetre / 2), 1, 800);
        for (var i = 1; i <= pieces; i++) builder.LineTo(At(from + (to - from) * i / pieces, right));
        return builder.Detach();
    }
}
