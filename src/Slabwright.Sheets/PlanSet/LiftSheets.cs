using System.Globalization;
using SkiaSharp;
using Slabwright.Core.Job;
using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Measures;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>Lifting out: the heaviest piece drawn with its slings, cautions, pull by sling angle, and every repair's pieces and crane check.</summary>
internal sealed class LiftSheets(Project project, RepairPlan plan, SheetFrame frame, PaperFonts fonts)
{
    private const float DrawingHeight = 236;

    private readonly JobUnits units = JobUnits.Of(project.UnitSystem);
    private readonly LiftPlan lifts = plan.Lifts;

    public IEnumerable<SheetDraft> Drafts()
    {
        if (lifts.Repairs.IsEmpty) return [];
        var heaviest = lifts.Repairs.MaxBy(r => r.Forces.Mass)!;
        var blocks = new List<FlowBlock>
        {
            new FlowHeading($"Heaviest pieces: {heaviest.RepairId}, {SheetWords.Count(heaviest.Pieces.Length, "piece")} of {units.MassText(heaviest.Forces.Mass)}"),
            new FlowDrawing(DrawingHeight, (pad, box) => DrawHeaviest(pad, box, heaviest)),
        };
        if (!lifts.Cautions.IsEmpty) blocks.Add(new FlowTable(CrewNotes.Table(fonts, "Caution", lifts.Cautions, frame.Body.Width)));
        blocks.Add(new FlowHeading("Pull in the slings by their angle from level"));
        blocks.Add(new FlowTable(SlingTable()));
        blocks.Add(new FlowHeading("Every repair"));
        blocks.Add(new FlowTable(RepairTable()));
        blocks.Add(new FlowText("Masses and pulls are of one piece; all pieces of a repair are alike. Break loose: weight with water, bond at the base and friction at the sawn sides. Hook: the greater of breaking loose and hanging, with the rigging. "
            + "Pin and gear: strength they must have, factors included. Crane: what the chart allows at the radius of the furthest piece against what hangs on the hook."));
        return FlowSheets.Of("Lifting out", new PaperFlow(fonts, frame.Body).Lay(blocks));
    }

    private void DrawHeaviest(PaperPad pad, SKRect box, RepairLift lift)
    {
        var repair = plan.Boundaries.Repairs.First(r => r.Id == lift.RepairId);
        var reliefs = plan.Pressure.Repairs.FirstOrDefault(p => p.RepairId == lift.RepairId)?.Reliefs ?? [];
        var ruler = FigurePainter.RulerOf(fonts);
        var fromAbove = FigureFit.Within(box.Width * 0.55, box.Height - 12, s => RemovalFigure.Draw(repair, lift, reliefs, units, s, ruler));
        var sling = FigureFit.Within(box.Width * 0.4, box.Height - 12, s => SlingFigure.Draw(lift.Pieces[0], repair.Thickness, lift.Forces, units, s, ruler));
        pad.Text("from above, travel to the right; to scale", box.Left, box.Top + 6, 7.4f, Face.Text, PaperPad.Quiet);
        FigurePainter.Draw(pad, fromAbove, box.Left, box.Top + 12);
        var right = box.Left + Math.Max((float)fromAbove.Width + 90, box.Width * 0.3f);
        pad.Text("one piece on its slings, seen along the road; to scale", right, box.Top + 6, 7.4f, Face.Text, PaperPad.Quiet);
        FigurePainter.Draw(pad, sling, right, box.Top + 12);
    }

    /// <summary>Pieces of about the same pull share a row, which holds for the heaviest of them; one column for each angle.</summary>
    private PaperTable SlingTable()
    {
        var step = project.UnitSystem == UnitSystem.Si ? 5 : 1;
        var different = lifts.Repairs.GroupBy(r => (Math.Ceiling(units.Force.FromBase(r.Forces.Design) / step), r.Forces.CarryingLegs)).OrderByDescending(g => g.Key.Item1)
            .Select(g => (Ids: g.Select(r => r.RepairId).ToList(), Heaviest: g.MaxBy(r => r.Forces.Design)!)).ToList();
        var angles = different[0].Heaviest.Slings.Select(s => s.Angle).ToList();
        PaperColumn[] columns =
        [
            new("Repairs", 300), new($"Pull up to\n{units.Force.Symbol}", 50, Side.Right), new("Legs that\ncarry", 44, Side.Right),
            .. angles.Select(a => new PaperColumn($"{JobUnits.Number(Units.Degree.FromBase(a))}°\nleg, {units.Force.Symbol}", 54, Side.Right)),
        ];
        var rows = different.Select(g => new PaperRow(
        [
            SheetWords.Some(g.Ids), units.ForceNumber(g.Heaviest.Forces.Design), N(g.Heaviest.Forces.CarryingLegs), .. g.Heaviest.Slings.Select(s => units.ForceNumber(s.Leg)),
        ]));
        return new PaperTable(fonts, columns, rows, frame.Body.Width, 7.6f);
    }

    private PaperTable RepairTable()
    {
        var (mass, force, length) = (units.Mass.Symbol, units.Force.Symbol, units.Length.Symbol);
        PaperColumn[] columns =
        [
            new("Repair", 40), new("Lane", 28, Side.Right), new("Pieces\nlong × wide", 52), new($"One piece\n{length}", 62, Side.Right), new($"Mass\n{mass}", 36, Side.Right), new($"With water\n{mass}", 44, Side.Right),
            new($"Break loose\n{force}", 48, Side.Right), new($"Hook\n{force}", 38, Side.Right), new($"Leg\n{force}", 36, Side.Right), new($"Pin\n{force}", 36, Side.Right), new($"Gear\n{force}", 36, Side.Right),
            new($"Hook above\n{length}", 46, Side.Right), new($"Radius\n{length}", 40, Side.Right), new($"Allowed\n{mass}", 42, Side.Right), new($"On the hook\n{mass}", 48, Side.Right), new("Margin", 38, Side.Right),
            new("Limit nearest", 190), new("Keeps all", 40),
        ];
        return new PaperTable(fonts, columns, lifts.Repairs.Select(Row), frame.Body.Width, 7.2f);
    }

    private PaperRow Row(RepairLift r)
    {
        var (f, piece) = (r.Forces, r.Pieces[0]);
        var nearest = r.Checks.IsEmpty ? null : r.Checks.MaxBy(c => c.Use);
        return new PaperRow(
        [
            r.RepairId, N(r.Lane), $"{N(r.Along)} × {N(r.Across)}", $"{units.LengthNumber(piece.To - piece.From)} × {units.LengthNumber(piece.RightOffset - piece.LeftOffset)}",
            Mass(f.Mass), Mass(f.WetMass), units.ForceNumber(f.BreakLoose), units.ForceNumber(f.HookLoad), units.ForceNumber(f.LegPull), units.ForceNumber(f.PinStrength), units.ForceNumber(f.GearStrength),
            units.LengthNumber(f.HookHeight), r.Crane is { } c ? units.LengthNumber(c.Radius) : "no chart", r.Crane?.Allowed is { } allowed ? Mass(allowed) : r.Crane is null ? "–" : "beyond chart",
            r.Crane is { } h ? Mass(h.HookMass) : "–", r.Crane?.Margin is { } m ? JobUnits.Percent(m).Replace('-', '−') : "–",
            nearest is null ? "–" : $"{CheckWords.Of(nearest, units)} ({CheckWords.Use(nearest)})", r.Passes ? "yes" : "no",
        ], r.Passes ? RowTone.Normal : RowTone.Strong);
    }

    private string Mass(double kilograms) => JobUnits.Number(units.Mass.FromBase(kilograms), 2);

    private static string N(int value) => value.ToString(CultureInfo.InvariantCulture);
}
