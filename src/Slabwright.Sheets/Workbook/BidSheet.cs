using System.Collections.Immutable;
using Slabwright.Core.Job;
using Slabwright.Core.Quantities;
using Slabwright.Sheets.Words;
using SpreadCheetah;
using SpreadCheetah.Worksheets;

namespace Slabwright.Sheets.Workbook;

/// <summary>
/// The Bid sheet. Columns: code, item, unit, measured (sum of the take-off lines with this bid line's key), pay step, pay quantity
/// (measured rounded up to the step), unit price, amount. The estimator changes prices here, quantities on the take-off sheet.
/// </summary>
internal static class BidSheet
{
    /// <summary>Row of the column headings; bid lines follow.</summary>
    public const int HeaderRow = 5;

    public const string Name = "Bid";

    public static async Task WriteAsync(Spreadsheet book, CellStyles styles, Project project, RepairPlan plan, SheetOptions options)
    {
        var sheet = new WorksheetOptions { FrozenRows = HeaderRow };
        double[] widths = [12, 54, 10, 14, 10, 14, 14, 16, 18];
        for (var i = 0; i < widths.Length; i++) sheet.Column(i + 1).Width = widths[i];
        await book.StartWorksheetAsync(Name, sheet).ConfigureAwait(false);
        await WriteHeadAsync(book, styles, project, options).ConfigureAwait(false);
        var lines = plan.Quantities.Schedule.Lines;
        for (var i = 0; i < lines.Length; i++) await book.AddRowAsync(LineCells(lines[i], i, styles, plan.Quantities)).ConfigureAwait(false);
        await WriteTotalAsync(book, styles, plan.Quantities.Schedule).ConfigureAwait(false);
    }

    /// <summary>Key that ties a take-off line to its bid line: item code, and the price where an item has size classes.</summary>
    public static string KeyOf(BidLine line) => line.SizeClass is { } size ? $"{line.Item.Code}#{FormulaText.N(size + 1)}" : line.Item.Code;

    private static async Task WriteHeadAsync(Spreadsheet book, CellStyles styles, Project project, SheetOptions options)
    {
        await book.AddRowAsync([new Cell(project.Name, styles.Title)]).ConfigureAwait(false);
        var day = options.PrintedOn.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        await book.AddRowAsync([new Cell($"Bid schedule, revision {options.Revision}, printed {day}. Prices in {project.Prices.Currency}.", styles.Text)]).ConfigureAwait(false);
        await book.AddRowAsync([new Cell("Measured is summed from the Take-off sheet and rounded up to the pay step. Change prices here and quantities there: the totals follow.", styles.Text)]).ConfigureAwait(false);
        await book.AddRowAsync(Array.Empty<Cell>()).ConfigureAwait(false);
        string[] names = ["Item", "Description", "Unit", "Measured", "Pay step", "Pay quantity", "Unit price", "Amount", "Key"];
        await book.AddRowAsync([.. names.Select(n => new Cell(n, styles.Header))]).ConfigureAwait(false);
    }

    private static Cell[] LineCells(BidLine line, int index, CellStyles styles, QuantityResult quantities)
    {
        var row = FormulaText.N(HeaderRow + 1 + index);
        var last = FormulaText.N(TakeOffSheet.HeaderRow + Math.Max(quantities.TakeOff.Length, 1));
        var first = FormulaText.N(TakeOffSheet.HeaderRow + 1);
        var sum = $"SUMIFS('{TakeOffSheet.Name}'!$E${first}:$E${last},'{TakeOffSheet.Name}'!$I${first}:$I${last},I{row})";
        var places = FormulaText.N(9);
        return
        [
            new Cell(line.Item.Code, styles.Text),
            new Cell(line.Name, styles.Text),
            new Cell(JobUnits.Symbol(line.Item.Unit), styles.Text),
            new Cell(new Formula(sum), line.Measured, styles.Measure),
            new Cell(line.Item.RoundTo, styles.Exact),
            new Cell(new Formula($"ROUND(ROUNDUP(ROUND(D{row}/E{row},{places}),0)*E{row},{places})"), line.Pay, styles.Exact),
            new Cell((double)line.UnitPrice, styles.Money),
            new Cell(new Formula($"ROUND(F{row}*G{row},2)"), (double)line.Amount, styles.Money),
            new Cell(KeyOf(line), styles.Text),
        ];
    }

    private static async Task WriteTotalAsync(Spreadsheet book, CellStyles styles, BidSchedule schedule)
    {
        var (first, last) = (FormulaText.N(HeaderRow + 1), FormulaText.N(HeaderRow + Math.Max(schedule.Lines.Length, 1)));
        var blank = new Cell((string?)null, styles.TotalText);
        await book.AddRowAsync(
        [
            blank, new Cell("Total", styles.TotalText), blank, blank, blank, blank, blank,
            new Cell(new Formula($"SUM(H{first}:H{last})"), (double)schedule.Total, styles.Total),
        ]).ConfigureAwait(false);
    }
}

/// <summary>The take-off sheet: one line a quantity, with the key of its bid line.</summary>
internal static class TakeOffSheet
{
    public const int HeaderRow = 1;

    public const string Name = "Take-off";

    public static async Task WriteAsync(Spreadsheet book, CellStyles styles, Project project, RepairPlan plan)
    {
        var lines = plan.Quantities.TakeOff;
        var sheet = new WorksheetOptions { FrozenRows = HeaderRow, AutoFilter = new AutoFilterOptions($"A1:I{FormulaText.N(lines.Length + 1)}") };
        double[] widths = [12, 46, 10, 12, 12, 10, 14, 52, 12];
        for (var i = 0; i < widths.Length; i++) sheet.Column(i + 1).Width = widths[i];
        await book.StartWorksheetAsync(Name, sheet).ConfigureAwait(false);
        string[] names = ["Item", "Description", "Work", "Unit", "Measured", "Unit price", "Amount", "Working", "Key"];
        await book.AddRowAsync([.. names.Select(n => new Cell(n, styles.Header))]).ConfigureAwait(false);
        var keys = TakeOffKeys.Of(plan.Quantities);
        var items = project.Prices.Items.ToDictionary(i => i.Code, StringComparer.Ordinal);
        var cells = new Cell[9];
        for (var i = 0; i < lines.Length; i++)
        {
            Fill(cells, lines[i], FormulaText.N(HeaderRow + 1 + i), keys[i], items.GetValueOrDefault(lines[i].ItemCode), styles);
            await book.AddRowAsync(cells).ConfigureAwait(false);
        }
    }

    private static void Fill(Cell[] cells, TakeOffLine line, string row, string key, Core.Prices.PayItem? item, CellStyles styles)
    {
        cells[0] = new Cell(line.ItemCode, styles.Text);
        cells[1] = new Cell(item?.Name, styles.Text);
        cells[2] = new Cell(line.WorkId.Length > 0 ? line.WorkId : "job", styles.Text);
        cells[3] = new Cell(item is null ? "" : JobUnits.Symbol(item.Unit), styles.Text);
        cells[4] = new Cell(line.Measured, styles.Exact);
        cells[5] = new Cell((double)line.UnitPrice, styles.Money);
        cells[6] = new Cell(new Formula($"E{row}*F{row}"), line.Measured * (double)line.UnitPrice, styles.Money);
        cells[7] = new Cell(line.Working, styles.Text);
        cells[8] = new Cell(key, styles.Text);
    }
}

/// <summary>Ties take-off lines to bid lines.</summary>
internal static class TakeOffKeys
{
    /// <summary>The key of each take-off line: its item, and the size class whose price it carries.</summary>
    public static ImmutableArray<string> Of(QuantityResult quantities)
    {
        var byItem = quantities.Schedule.Lines.GroupBy(l => l.Item.Code, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.ToList(), StringComparer.Ordinal);
        return [.. quantities.TakeOff.Select(t => byItem.TryGetValue(t.ItemCode, out var lines)
            ? BidSheet.KeyOf(lines.FirstOrDefault(l => l.UnitPrice == t.UnitPrice) ?? lines[0])
            : t.ItemCode)];
    }
}
