using System.Globalization;
using SkiaSharp;
using Slabwright.Core.Job;
using Slabwright.Core.Joints.Design;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>For each lane: what was looked at, under which conditions, what governs, and why the winner won.</summary>
internal sealed class AlternativeSheets(Project project, RepairPlan plan, SheetFrame frame, PaperFonts fonts)
{
    private const float Gutter = 24;
    private const float ChartShare = 0.56f;

    private readonly JobUnits units = JobUnits.Of(project.UnitSystem);
    private readonly JointPlan joints = plan.Joints;

    public IEnumerable<SheetDraft> Drafts() => joints.Lanes.Where(l => !l.Alternatives.IsEmpty).SelectMany(Lane);

    private IEnumerable<SheetDraft> Lane(LaneJointDesign lane)
    {
        var title = $"Load transfer, lane {N(lane.Lane)}";
        var chartWidth = frame.Body.Width * ChartShare;
        var chart = AlternativesChart.Draw(lane, units, project.Prices.Currency, new PlotOptions
        {
            Width = chartWidth, TextSize = 8.4, GreatestHeight = 250, Ruler = FigurePainter.RulerOf(fonts),
        });
        var conditions = ConditionTable(lane, frame.Body.Width - chartWidth - Gutter);
        var height = (float)Math.Max(chart.Height + 18, conditions.HeightOf(0, conditions.Count) + 18);
        var head = new FlowDrawing(height, (pad, box) =>
        {
            pad.Text("Cost against life", box.Left, box.Top + 9, 11.5f, Face.Bold);
            FigurePainter.Draw(pad, chart, box.Left, box.Top + 18);
            pad.Text("Conditions: the build-up with the least margin", box.Left + chartWidth + Gutter, box.Top + 9, 11.5f, Face.Bold);
            conditions.Draw(pad, box.Left + chartWidth + Gutter, box.Top + 16, 0, conditions.Count);
        });
        var blocks = new List<FlowBlock> { head, new FlowHeading(lane.Winner is null ? "Why none was chosen" : "Why this one was chosen"), new FlowTable(ReasonTable(lane)) };
        blocks.Add(new FlowHeading("Everything looked at, cheapest first"));
        blocks.Add(new FlowTable(AlternativeTable(lane)));
        blocks.Add(new FlowText("Bearing, transfer, deflection and stress by plate finite elements; closed bearing by one dowel under its share of the load with a reach of 1.0 and of 1.8 times the radius of relative stiffness. "
            + "Faulting and life are for ranking, not a forecast of one joint. Share used: 100 % is the limit. “Not reached”: the faulting limit is not reached within the years looked at."));
        return FlowSheets.Of(title, new PaperFlow(fonts, frame.Body).Lay(blocks));
    }

    private PaperTable ReasonTable(LaneJointDesign lane)
    {
        PaperColumn[] columns = [new("Reason", 110), new("In words", 470), new("Inputs", 300), new("Source", 150)];
        var rows = lane.Reasons.Select(r => new PaperRow([r.Rule, r.Sentence, string.Join("; ", r.Inputs.Select(i => $"{i.Name} {i.Value}")), r.Source.ToString()]));
        return new PaperTable(fonts, columns, rows, frame.Body.Width, 7.6f);
    }

    private PaperTable AlternativeTable(LaneJointDesign lane)
    {
        var (stress, small) = (units.Stress.Symbol, units.Thickness.Symbol);
        PaperColumn[] columns =
        [
            new("Bars", 26, Side.Right), new("Arrangement", 56), new($"Diameter", 46, Side.Right), new("Length", 42, Side.Right), new($"Bearing\n{stress}", 40, Side.Right),
            new($"Closed, 1.0 l\n{stress}", 48, Side.Right), new($"Closed, 1.8 l\n{stress}", 48, Side.Right), new("Transfer\n%", 38, Side.Right), new($"Deflection\n{small}", 44, Side.Right),
            new($"Stress\n{stress}", 38, Side.Right), new($"Faulting\n{small}", 40, Side.Right), new("Fatigue\ndamage", 38, Side.Right), new("Life\nyears", 40, Side.Right), new($"One joint\n{project.Prices.Currency}", 48, Side.Right),
            new("Governing limit", 214), new("Share\nused", 38, Side.Right), new("Keeps all", 40),
        ];
        return new PaperTable(fonts, columns, lane.Alternatives.Select(a => Row(a, a == lane.Winner)), frame.Body.Width, 7.2f);
    }

    private PaperRow Row(JointAlternative a, bool isWinner) => new(
    [
        a.Layout is { } bars ? N(bars.Bars) : "none", a.Layout is { } b ? JointWords.Of(b.Arrangement) : "–", a.Layout is { } d ? units.Detail(d.Diameter) : "–", a.Layout is { } l ? units.Detail(l.Length) : "–",
        a.Layout is null ? "–" : units.StressNumber(a.Bearing), a.Layout is null ? "–" : units.StressNumber(a.ClosedBearing.Reach10), a.Layout is null ? "–" : units.StressNumber(a.ClosedBearing.Reach18),
        JobUnits.Number(a.DeflectionTransfer * 100, 1), units.MovementNumber(a.Deflection), units.StressNumber(a.Stress), units.MovementNumber(a.Faulting), DamageText(a.Damage), LifeText(a.Life),
        JobUnits.Cents(a.CostPerJoint), CheckWords.Of(a.Governing, units), CheckWords.Use(a.Governing), isWinner ? "chosen" : a.Passes ? "yes" : "no",
    ], isWinner ? RowTone.Strong : RowTone.Normal);

    private static string DamageText(double damage) => damage == 0 ? "0" : damage < 0.0005 ? "< 0.001" : damage > 999 ? "> 999" : JobUnits.Number(damage, 3);

    private static string LifeText(double life) => double.IsInfinity(life) ? "not reached" : JobUnits.Number(life, 1);

    private PaperTable ConditionTable(LaneJointDesign lane, float width)
    {
        PaperColumn[] columns = [new("Condition", 150), new("Value", 110, Side.Right), new("Source", 130)];
        return new PaperTable(fonts, columns, ConditionRows.Of(lane.Conditions, joints.Findings, units).Select(c => new PaperRow([c.Name, c.Value, c.Source])), width, 7.2f);
    }

    private static string N(int value) => value.ToString(CultureInfo.InvariantCulture);
}
