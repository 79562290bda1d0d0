using System.Globalization;
using Slabwright.Core.Job;
using Slabwright.Core.Quantities;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>Bid schedule, totals, cost range, what each rule costs, and where larger removal takes over.</summary>
internal sealed class QuantitySheets(Project project, RepairPlan plan, SheetFrame frame, PaperFonts fonts)
{
    private readonly JobUnits units = JobUnits.Of(project.UnitSystem);
    private readonly string currency = project.Prices.Currency;
    private readonly float width = new PaperFlow(fonts, frame.Body, 2).ColumnWidth;

    public IEnumerable<SheetDraft> Drafts()
    {
        var blocks = new List<FlowBlock> { new FlowHeading("Bid schedule"), new FlowTable(BidTable()) };
        blocks.Add(new FlowText("Measured quantities are summed from the take-off and rounded up to each item's pay step. The workbook holds the same schedule with live formulas, and the take-off line by line."));
        AddGroups(blocks, "Totals by kind", plan.Quantities.ByKind);
        AddGroups(blocks, "Totals by station", plan.Quantities.ByStation);
        AddRange(blocks);
        AddRules(blocks);
        AddCurve(blocks);
        return FlowSheets.Of("Quantities and cost", new PaperFlow(fonts, frame.Body, 2).Lay(blocks));
    }

    private PaperTable BidTable()
    {
        PaperColumn[] columns =
        [
            new("Item", 46), new("Description", 170), new("Unit", 42), new("Measured", 54, Side.Right), new("Pay\nquantity", 52, Side.Right),
            new($"Unit price\n{currency}", 54, Side.Right), new($"Amount\n{currency}", 70, Side.Right),
        ];
        var rows = plan.Quantities.Schedule.Lines.Select(l => new PaperRow(
            [l.Item.Code, JobUnits.Raised(l.Name), JobUnits.Symbol(l.Item.Unit), JobUnits.Number(l.Measured, 2), JobUnits.Number(l.Pay, Decimals(l.Item.RoundTo)), JobUnits.Cents(l.UnitPrice), JobUnits.Cents(l.Amount)]))
            .Append(new PaperRow(["", "Total", "", "", "", "", JobUnits.Cents(plan.Quantities.Schedule.Total)], RowTone.Total));
        return new PaperTable(fonts, columns, rows, width, 8);
    }

    private static int Decimals(double step) => step >= 1 ? 0 : step >= 0.1 ? 1 : 2;

    private void AddGroups(List<FlowBlock> blocks, string title, IReadOnlyList<GroupTotal> groups)
    {
        if (groups.Count == 0) return;
        PaperColumn[] columns =
        [
            new(title, 190), new("Works", 44, Side.Right), new($"Area, {JobUnits.Symbol(units.Area)}", 60, Side.Right), new($"Measure × price, {currency}", 90, Side.Right),
        ];
        var rows = groups.Select(g => new PaperRow([g.Name, N(g.Count), units.AreaNumber(g.Area), JobUnits.Cents(g.Amount)]))
            .Append(new PaperRow(["Total", N(groups.Sum(g => g.Count)), units.AreaNumber(groups.Sum(g => g.Area)), JobUnits.Cents(groups.Sum(g => g.Amount))], RowTone.Total));
        blocks.Add(new FlowTable(new PaperTable(fonts, columns, rows, width, 8)));
    }

    private void AddRange(List<FlowBlock> blocks)
    {
        if (plan.Quantities.Range is not { } range) return;
        blocks.Add(new FlowHeading("Cost range"));
        blocks.Add(new FlowDrawing(132, (pad, box) => CostCharts.Distribution(pad, box, range, currency, plan.Quantities.Schedule.Total)));
        if (!range.Drivers.IsEmpty)
        {
            blocks.Add(new FlowHeading("What moves the cost: median cost with each driver at its P10 and P90"));
            blocks.Add(new FlowDrawing(CostCharts.DriversHeight(range), (pad, box) => CostCharts.Drivers(pad, box, range, currency)));
        }

        if (range.Items.IsEmpty) return;
        PaperColumn[] columns = [new("Item", 50), new("Range of quantities", 190), new("P10", 56, Side.Right), new("P50", 56, Side.Right), new("P90", 56, Side.Right)];
        var rows = range.Items.Select(i => new PaperRow([i.ItemCode, i.Name, JobUnits.Number(i.P10, 1), JobUnits.Number(i.P50, 1), JobUnits.Number(i.P90, 1)]));
        blocks.Add(new FlowTable(new PaperTable(fonts, columns, rows, width, 8)));
    }

    private void AddRules(List<FlowBlock> blocks)
    {
        if (plan.Boundaries.RuleCosts.IsEmpty) return;
        blocks.Add(new FlowHeading("What each rule costs"));
        blocks.Add(new FlowText("The least cost with the rule against the least cost without it, all other rules kept. For discussion with the owner, not a licence to drop a rule."));
        PaperColumn[] columns = [new("Rule", 90), new("What it asks", 210), new($"Without it, {currency}", 70, Side.Right), new($"It costs, {currency}", 66, Side.Right)];
        var rows = plan.Boundaries.RuleCosts.OrderByDescending(r => r.Cost)
            .Select(r => new PaperRow([r.Rule, r.Sentence, JobUnits.Cents(r.CostWithout), JobUnits.Cents(r.Cost)]));
        blocks.Add(new FlowTable(new PaperTable(fonts, columns, rows, width, 8)));
    }

    private void AddCurve(List<FlowBlock> blocks)
    {
        if (plan.Boundaries.CostCurve.Length >= 2)
        {
            blocks.Add(new FlowHeading("From spot repairs to full replacement"));
            blocks.Add(new FlowDrawing(170, (pad, box) => CostCharts.Curve(pad, box, plan.Boundaries.CostCurve, units, currency)));
        }

        if (plan.Boundaries.LargeRemovals.IsEmpty) return;
        PaperColumn[] columns =
        [
            new("Where one large removal is near", 150), new("Lane", 30, Side.Right), new($"Separate, {currency}", 66, Side.Right), new($"In one, {currency}", 66, Side.Right), new("Plan takes", 66),
        ];
        var rows = plan.Boundaries.LargeRemovals.Select(l => new PaperRow(
            [$"{project.Road.Stationing.Format(l.From)} to {project.Road.Stationing.Format(l.To)}", N(l.Lane), JobUnits.Cents(l.SpotCost), JobUnits.Cents(l.RunCost), l.Chosen ? "one removal" : "separate repairs"]));
        blocks.Add(new FlowTable(new PaperTable(fonts, columns, rows, width, 8)));
    }

    private static string N(int value) => value.ToString("N0", CultureInfo.InvariantCulture);
}
