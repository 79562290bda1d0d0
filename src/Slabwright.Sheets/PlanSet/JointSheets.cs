using System.Globalization;
using SkiaSharp;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>One drilling sheet for each distinct layout, then the schedule that says which joint is built after which.</summary>
internal sealed class JointSheets(Project project, RepairPlan plan, SheetFrame frame, PaperFonts fonts)
{
    private const float Gutter = 22;
    private const float LeastNotes = 300;
    private const float NoteSize = 8;

    private readonly JobUnits units = JobUnits.Of(project.UnitSystem);
    private readonly JointPlan joints = plan.Joints;

    public IEnumerable<SheetDraft> Drafts()
    {
        var groups = JointLayouts.Of(joints);
        foreach (var group in groups) yield return Layout(group);
        if (joints.Joints.IsEmpty) yield break;
        foreach (var draft in Schedule(groups)) yield return draft;
    }

    private SheetDraft Layout(JointLayoutGroup group)
    {
        var joint = group.Sample;
        var reservoir = SealWords.ReservoirOf(plan.Seals, joint);
        var (across, acrossWords) = Fit(scale => JointAcross.Draw(joint, Options(scale, scale, reservoir)), frame.Body.Width - Gutter - LeastNotes, frame.Body.Height * 0.6f, AcrossScales());
        var room = frame.Body.Bottom - (frame.Body.Top + (float)across.Height + 58);
        var (section, sectionWords) = Fit(scale => JointSection.Draw(joint, Options(scale, scale, reservoir)), (float)Math.Max(across.Width, 560), room, SectionScales());
        var detail = $"{group.Mark}: lane {N(joint.Lane)}, {JointWords.Of(group.Bars, units)}, slab {units.Detail(joint.Thickness)}";
        return new SheetDraft(joint.Drilling is null ? "Joint layout" : "Drilling layout", detail, (pad, _) =>
        {
            var (left, top) = (frame.Body.Left, frame.Body.Top);
            Heading(pad, "Plan and face", acrossWords, left, top);
            FigurePainter.Draw(pad, across, left, top + 18);
            var lower = top + 18 + (float)across.Height + 24;
            Heading(pad, "Section through one bar", sectionWords, left, lower);
            FigurePainter.Draw(pad, section, left, lower + 16);
            var right = left + (float)Math.Max(across.Width, section.Width) + Gutter;
            DrawNotes(pad, group, new SKRect(right, top, frame.Body.Right, frame.Body.Bottom));
        });
    }

    private JointDrawingOptions Options(double across, double section, JointReservoir? reservoir) =>
        new(project.UnitSystem, across, section) { Reservoir = reservoir, Ruler = FigurePainter.RulerOf(fonts), KeyWidth = 220 };

    private static void Heading(PaperPad pad, string title, string scale, float x, float y)
    {
        pad.Text(title, x, y + 9, 10.5f, Face.Bold);
        pad.Text(scale, x + pad.Fonts.Measure(title, Face.Bold, 10.5f) + 8, y + 9, 8, Face.Text, PaperPad.Quiet);
    }

    /// <summary>The largest scale whose figure keeps a width and height.</summary>
    private static (Figure Figure, string Words) Fit(Func<double, Figure> draw, float width, float height, (int Ratio, string Words)[] scales)
    {
        Figure? figure = null;
        foreach (var (ratio, words) in scales)
        {
            figure = draw(72 / 0.0254 / ratio);
            if (figure.Width <= width && figure.Height <= height || ratio == scales[^1].Ratio) return (figure, words);
        }

        return (figure!, "");
    }

    private (int Ratio, string Words)[] AcrossScales() => project.UnitSystem == UnitSystem.Si
        ? [(15, "1:15"), (20, "1:20"), (25, "1:25"), (50, "1:50")]
        : [(16, "3/4 in = 1 ft"), (24, "1/2 in = 1 ft"), (32, "3/8 in = 1 ft"), (48, "1/4 in = 1 ft")];

    private (int Ratio, string Words)[] SectionScales() => project.UnitSystem == UnitSystem.Si
        ? [(4, "1:4"), (5, "1:5"), (10, "1:10"), (20, "1:20")]
        : [(4, "3 in = 1 ft"), (6, "2 in = 1 ft"), (8, "1 1/2 in = 1 ft"), (12, "1 in = 1 ft"), (16, "3/4 in = 1 ft")];

    private void DrawNotes(PaperPad pad, JointLayoutGroup group, SKRect box)
    {
        pad.Line(box.Left - Gutter / 2, box.Top, box.Left - Gutter / 2, box.Bottom, 0.6f, PaperPad.Rule);
        var y = DrawMark(pad, group, box);
        if (group.Sample.Drilling is { } drilling)
        {
            y = CautionBox(pad, box, y - 4);
            y = NoteList(pad, box, y, "Tolerances", drilling.Tolerances, false);
            y = NoteList(pad, box, y, "Installation and checks, in order", drilling.Steps, true);
        }

        DrawServed(pad, group, box, y);
    }

    private float DrawMark(PaperPad pad, JointLayoutGroup group, SKRect box)
    {
        var (joint, bars) = (group.Sample, group.Bars);
        pad.Text(group.Mark, box.Left, box.Top + 22, 26, Face.Bold);
        var x = box.Left + pad.Fonts.Measure(group.Mark, Face.Bold, 26) + 12;
        pad.Text($"{SheetWords.Of(joint.Design)}, lane {N(joint.Lane)}", x, box.Top + 10, 11, Face.Bold);
        pad.Text($"serves {SheetWords.Count(group.Joints.Length, "joint")}", x, box.Top + 22, 9);
        var y = box.Top + 38;
        foreach (var (name, value) in Facts(joint, bars))
        {
            pad.Text(name, box.Left, y, NoteSize, Face.Text, PaperPad.Quiet);
            y = pad.Paragraph(value, box.Left + 92, y, box.Width - 92, NoteSize, Face.Bold, PaperPad.Ink, 1.25f) + 1.5f;
        }

        return y + 8;
    }

    private IEnumerable<(string Name, string Value)> Facts(DesignedJoint joint, BarLayout bars)
    {
        yield return ("Bars", JointWords.Of(bars, units));
        yield return ("Spacing", $"{units.Detail(bars.Spacing)} centre to centre{(bars.Arrangement == BarArrangement.WheelPaths ? " within a wheel path" : "")}");
        yield return ("Centre below top", units.Detail(bars.Depth));
        yield return ("In the old slab", joint.Drilling is null ? "nothing is drilled: bars stand in a basket" : units.Detail(bars.Embedment));
        if (joint.Drilling is not { } drilling) yield break;
        yield return ("Hole", $"{units.Detail(drilling.HoleDiameter)} diameter, {units.Detail(drilling.HoleDepth)} deep");
        yield return ("Anchored with", drilling.Anchor);
        yield return ("Drill set-ups", $"{N(drilling.SetUps.Length)} a joint");
        yield return ("Left and right", joint.Position == JointPosition.Start && joint.Drilling is not null
            ? "always from the lane’s left edge as traffic sees it. At a start joint the crew in the repair faces the other way: left is to its right."
            : "always from the lane’s left edge as traffic sees it.");
    }

    private static float CautionBox(PaperPad pad, SKRect box, float y)
    {
        const string text = "Drilling concrete throws respirable silica. Shroud and vacuum on the drill frame, respirators for everybody at it, outdoors too. Clean holes with a filtered vacuum; where the specification asks for air, catch the dust and stand clear of the mouth. 29 CFR 1926.1153, Table 1 (from memory), or the local rule where stricter.";
        var lines = TextFlow.Wrap(pad.Fonts, text, Face.Text, NoteSize, box.Width - 34);
        var height = lines.Count * NoteSize * 1.25f + 21;
        pad.Box(new SKRect(box.Left, y, box.Right, y + height), "#ffffff", PaperPad.Ink, 1.2f);
        Cautions.WarningSign(pad, box.Left + 7, y + 16);
        pad.Text("Silica dust", box.Left + 26, y + 12.5f, 9.2f, Face.Bold);
        pad.Paragraph(text, box.Left + 26, y + 23, box.Width - 34, NoteSize, Face.Text, PaperPad.Ink, 1.25f);
        return y + height + 16;
    }

    private static float NoteList(PaperPad pad, SKRect box, float y, string title, IReadOnlyList<CrewNote> notes, bool isNumbered)
    {
        if (notes.Count == 0) return y;
        pad.Text(title, box.Left, y, 9.6f, Face.Bold);
        y += 12;
        for (var i = 0; i < notes.Count; i++)
        {
            if (isNumbered) pad.Text(N(i + 1), box.Left + 10, y, NoteSize, Face.Bold, PaperPad.Ink, Side.Right);
            else pad.Dot(box.Left + 6, y - 2.6f, 1.4f, PaperPad.Ink);
            y = pad.Paragraph($"{SheetWords.Capital(notes[i].Name)}: {notes[i].Text} [{notes[i].Source}]", box.Left + 15, y, box.Width - 15, NoteSize, Face.Text, PaperPad.Ink, 1.22f) + 2;
        }

        return y + 8;
    }

    /// <summary>The joints this sheet serves, in short; the schedule has their stations.</summary>
    private static void DrawServed(PaperPad pad, JointLayoutGroup group, SKRect box, float y)
    {
        var words = string.Join("; ", group.Joints.GroupBy(j => j.RepairId).Select(g => $"{g.Key} {string.Join(" + ", g.Select(j => JointWords.Of(j.Position)).Distinct())}"));
        var lines = TextFlow.Wrap(pad.Fonts, words, Face.Text, NoteSize, box.Width);
        var room = (int)((box.Bottom - y - 14) / (NoteSize * 1.22f));
        if (room < 1) return;
        pad.Text("Serves", box.Left, y, 9.6f, Face.Bold);
        if (lines.Count > room) words = "the joints marked " + group.Mark + " in the joint schedule";
        pad.Paragraph(words, box.Left, y + 12, box.Width, NoteSize, Face.Text, PaperPad.Ink, 1.22f);
    }

    /// <summary>Every joint with its layout, in columns: a group for each layout, then the joints without bars.</summary>
    private IEnumerable<SheetDraft> Schedule(IReadOnlyList<JointLayoutGroup> groups)
    {
        var flow = new PaperFlow(fonts, frame.Body, 3);
        PaperColumn[] columns = [new("Repair", 54), new("Joint", 44), new("Station", 78), new("Kind", 66), new("Bars", 34, Side.Right), new("Drill\nset-ups", 40, Side.Right)];
        var rows = new List<PaperRow>();
        foreach (var group in groups)
        {
            rows.Add(new PaperRow([$"{group.Mark}: lane {N(group.Sample.Lane)}, {JointWords.Of(group.Bars, units)}"], RowTone.Group));
            rows.AddRange(group.Joints.Select(Row));
        }

        var bare = joints.Joints.Where(j => j.Bars is null).ToList();
        if (bare.Count > 0) rows.Add(new PaperRow(["Joints without bars"], RowTone.Group));
        rows.AddRange(bare.Select(Row));
        rows.Add(new PaperRow(["Total", SheetWords.Count(joints.Joints.Length, "joint"), "", "", N(joints.Joints.Sum(j => j.Bars?.Bars ?? 0)), N(joints.Joints.Sum(j => j.Drilling?.SetUps.Length ?? 0))], RowTone.Total));
        return FlowSheets.Of("Joint schedule", flow.Lay([new FlowTable(new PaperTable(fonts, columns, rows, flow.ColumnWidth, 7.6f))]));
    }

    private PaperRow Row(DesignedJoint j) => new(
        [j.RepairId, JointWords.Of(j.Position), project.Road.Stationing.Format(j.At), SheetWords.Of(j.Design), j.Bars is { } b ? N(b.Bars) : "–", j.Drilling is { } d ? N(d.SetUps.Length) : "–"]);

    private static string N(int value) => value.ToString(CultureInfo.InvariantCulture);
}
