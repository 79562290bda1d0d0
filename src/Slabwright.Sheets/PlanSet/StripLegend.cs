using System.Globalization;
using SkiaSharp;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;
using Slabwright.Core.Survey;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Strip;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>The legend column of a strip sheet: scale, signs, and the distress codes that occur on it.</summary>
internal sealed class StripLegend(Project project, JobUnits units, StripLayout layout, string scaleWords)
{
    private const float RowHeight = 13.4f;
    private const float Swatch = 30;
    private const float TextSize = 7;

    public void Draw(PaperPad pad, SKRect box, IEnumerable<StripModel> models)
    {
        pad.Line(box.Left - 5, box.Top, box.Left - 5, box.Bottom, 0.6f, PaperPad.Rule);
        var y = DrawScale(pad, box, box.Top + 8);
        y = Group(pad, box, y, "Work", Work());
        y = Group(pad, box, y, "New joints and sides", Joints());
        y = Group(pad, box, y, "Road today", RoadSigns());
        y = DrawDistresses(pad, box, y, models);
        DrawNotes(pad, box, y);
    }

    private float DrawScale(PaperPad pad, SKRect box, float y)
    {
        pad.Text("Scale " + scaleWords, box.Left, y, 8, Face.Bold);
        var (piece, unit, each) = units.System == UnitSystem.UsCustomary ? (10 * 0.3048, "ft", 10) : (2.5, "m", 2.5);
        var step = (float)(piece * layout.PointsPerMetre);
        var pieces = Math.Max(1, Math.Min(4, (int)((box.Width - 12) / step)));
        for (var i = 0; i < pieces; i++)
        {
            pad.Box(new SKRect(box.Left + i * step, y + 5, box.Left + (i + 1) * step, y + 9), i % 2 == 0 ? PaperPad.Ink : "#ffffff", PaperPad.Ink, 0.5f);
        }

        for (var i = 0; i <= pieces; i += pieces > 2 ? 2 : 1)
        {
            var text = (i * each).ToString("0.#", CultureInfo.InvariantCulture) + (i + (pieces > 2 ? 2 : 1) > pieces ? " " + unit : "");
            pad.Text(text, box.Left + i * step, y + 17, 6.4f, Face.Text, PaperPad.Ink, i == 0 ? Side.Left : Side.Centre);
        }

        ArrowMark.Travel(pad, box.Left, y + 27, 24);
        pad.Text("Direction of travel", box.Left + 30, y + 29.5f, TextSize);
        return y + 38;
    }

    private static float Group(PaperPad pad, SKRect box, float y, string title, IEnumerable<(string Text, StripShape[] Shapes)> signs)
    {
        y = Title(pad, box, y, title);
        foreach (var (text, shapes) in signs)
        {
            var painter = new StripPainter(pad, box.Left, y, 0, 1);
            foreach (var shape in shapes) painter.Draw(shape);
            var lines = TextFlow.Wrap(pad.Fonts, text, Face.Text, TextSize, box.Width - Swatch - 6);
            for (var i = 0; i < lines.Count; i++) pad.Text(lines[i], box.Left + Swatch + 6, y + 7.4f + i * 7.6f, TextSize);
            y += RowHeight + (lines.Count - 1) * 7.6f;
        }

        return y + 5;
    }

    private static float Title(PaperPad pad, SKRect box, float y, string title)
    {
        pad.Line(box.Left, y, box.Right, y, 0.5f, PaperPad.Rule);
        pad.Text(title, box.Left, y + 9.5f, 7.8f, Face.Bold);
        return y + 13.5f;
    }

    private static IEnumerable<(string Text, StripShape[] Shapes)> Work() =>
    [
        ("Full-depth repair (FD)", [Swatched(StripStyle.FullDepth), Outline()]),
        ("Slab replacement (SLAB)", [Swatched(StripStyle.SlabReplacement), Outline()]),
        ("Slab run (RUN)", [Swatched(StripStyle.SlabRun), Outline()]),
        ("Partial-depth repair", [Swatched(StripStyle.PartialDepth)]),
        ("Seal crack or joint", [Level(StripStyle.Seal)]),
    ];

    private static IEnumerable<(string Text, StripShape[] Shapes)> Joints() =>
    [
        ("Dowelled end", [Upright(StripStyle.BoundaryCut), Bar(StripStyle.Dowel, 3), Bar(StripStyle.Dowel, 7)]),
        ("Tied end", [Upright(StripStyle.BoundaryCut), Hooked(2.5), Hooked(6.5)]),
        ("Isolated end or side", [Level(StripStyle.Isolation)]),
        ("Edge form", [Level(StripStyle.EdgeForm)]),
        ("Shoulder strip out and back", [new StripArea([new(0, 2), new(Swatch, 2), new(Swatch, 7), new(0, 7)], StripStyle.ShoulderStrip)]),
        ("New joint inside", [Level(StripStyle.IntermediateJoint)]),
    ];

    private static IEnumerable<(string Text, StripShape[] Shapes)> RoadSigns() =>
    [
        ("Joint, dowelled", [Level(StripStyle.JointDowelled)]),
        ("Joint, not dowelled", [Level(StripStyle.JointUndowelled)]),
        ("Working crack", [Level(StripStyle.WorkingCrack)]),
        ("Expansion joint, pavement end", [Level(StripStyle.JointHeavy)]),
        ("Asphalt over concrete", [Swatched(StripStyle.Overlay)]),
        ("Earlier repair", [Swatched(StripStyle.EarlierRepair)]),
        ("Lane joint, tied", [Level(StripStyle.LaneLineTied)]),
        ("Lane joint, untied", [Level(StripStyle.LaneLineUntied)]),
        ("No-cut zone", [Swatched(StripStyle.NoCutZone)]),
        ("Core", [new StripDot(new(Swatch / 2, 5), StripStyle.Core)]),
    ];

    private float DrawDistresses(PaperPad pad, SKRect box, float y, IEnumerable<StripModel> models)
    {
        var ids = models.SelectMany(m => m.Notes).Where(n => n.Kind == NoteKind.Distress).Select(n => n.Ref).ToHashSet(StringComparer.Ordinal);
        var types = project.Survey.Distresses.Where(d => ids.Contains(d.Id)).Select(d => d.Type).Distinct().Order().ToList();
        y = Title(pad, box, y, "Distresses on this sheet");
        var x = box.Left;
        foreach (var (style, letter, word) in new[] { (StripStyle.DistressLow, "L", "low"), (StripStyle.DistressModerate, "M", "moderate"), (StripStyle.DistressHigh, "H", "high") })
        {
            new StripPainter(pad, x, y, 0, 1).Draw(new StripLine([new(0, 5), new(10, 5)], style));
            pad.Text($"{letter} {word}", x + 13, y + 7.4f, TextSize);
            x += word.Length > 4 ? 52 : 36;
        }

        y += RowHeight;
        foreach (var type in types)
        {
            if (y + 9 > box.Bottom - 46) break;
            pad.Text(SheetWords.CodeOf(type), box.Left, y + 6.4f, TextSize, Face.Bold, StripInk.Damage);
            pad.Text(TextFlow.Fit(pad.Fonts, SheetWords.Of(type), Face.Text, TextSize, box.Width - 18), box.Left + 18, y + 6.4f, TextSize);
            y += 9;
        }

        return y + 5;
    }

    private static void DrawNotes(PaperPad pad, SKRect box, float y)
    {
        const string text = "Shoulder width and bar positions are not to scale; numbers of bars are in the repair schedule. Distances from joints run along the lane's centre.";
        pad.Line(box.Left, y, box.Right, y, 0.5f, PaperPad.Rule);
        pad.Paragraph(text, box.Left, y + 9, box.Width, 6.4f, Face.Text, PaperPad.Quiet, 1.25f);
    }

    private static StripArea Swatched(StripStyle style) => new([new(0, 0), new(Swatch, 0), new(Swatch, 10), new(0, 10)], style);

    private static StripLine Outline() => new([new(0, 0), new(Swatch, 0), new(Swatch, 10), new(0, 10), new(0, 0)], StripStyle.BoundaryCut);

    private static StripLine Level(StripStyle style) => new([new(0, 5), new(Swatch, 5)], style);

    private static StripLine Upright(StripStyle style) => new([new(Swatch / 2, 0), new(Swatch / 2, 10)], style);

    private static StripLine Bar(StripStyle style, double y) => new([new(Swatch / 2 - 5, y), new(Swatch / 2 + 5, y)], style);

    private static StripLine Hooked(double y) => new(
        [new(Swatch / 2 - 5, y - 2), new(Swatch / 2 - 5, y), new(Swatch / 2 + 5, y), new(Swatch / 2 + 5, y + 2)], StripStyle.TieBar);
}
