using System.Collections.Immutable;
using Slabwright.Core.Job;
using Slabwright.Sheets.Tables;
using Slabwright.Sheets.Words;
using SpreadCheetah;
using SpreadCheetah.Worksheets;

namespace Slabwright.Sheets.Workbook;

/// <summary>
/// The bid schedule as an XLSX workbook with live formulas: measured quantities are summed from the take-off sheet, rounded up to each item's
/// pay step, and multiplied with prices the estimator may change. Every formula carries its value, so that readers that do not calculate show
/// the same figures.
/// </summary>
public static class WorkbookFile
{
    private const string MediaType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    /// <summary>Writes the workbook.</summary>
    public static SheetFile Write(Project project, RepairPlan plan, SheetOptions options)
    {
        using var stream = new MemoryStream(128 * 1024);
        WriteAsync(stream, project, plan, options).GetAwaiter().GetResult();
        return new SheetFile($"{options.BaseName}-bid-schedule.xlsx", MediaType, "Bid schedule as workbook", stream.ToArray());
    }

    private static async Task WriteAsync(Stream stream, Project project, RepairPlan plan, SheetOptions options)
    {
        var made = new SpreadCheetahOptions { DocumentProperties = null, BufferSize = 65536, CompressionLevel = SpreadCheetahCompressionLevel.Fastest };
        await using var book = await Spreadsheet.CreateNewAsync(stream, made).ConfigureAwait(false);
        var styles = CellStyles.Add(book);
        var tables = new JobTables(project, plan);
        await BidSheet.WriteAsync(book, styles, project, plan, options).ConfigureAwait(false);
        await TakeOffSheet.WriteAsync(book, styles, project, plan).ConfigureAwait(false);
        await TableSheet.WriteAsync(book, styles, "Repairs", plan.Boundaries.Repairs, tables.Repairs()).ConfigureAwait(false);
        await TableSheet.WriteAsync(book, styles, "Surface works", plan.SurfaceWorks, tables.SurfaceWorks()).ConfigureAwait(false);
        var joints = new JointTables(project, plan);
        await TableSheet.WriteAsync(book, styles, "Joints", plan.Joints.Joints, joints.Joints()).ConfigureAwait(false);
        await TableSheet.WriteAsync(book, styles, "Alternatives", joints.AlternativeRows, joints.Alternatives()).ConfigureAwait(false);
        await TableSheet.WriteAsync(book, styles, "Seals", plan.Seals.Joints, joints.Seals()).ConfigureAwait(false);
        await TableSheet.WriteAsync(book, styles, "Lift pieces", joints.PieceRows, joints.Pieces()).ConfigureAwait(false);
        await TableSheet.WriteAsync(book, styles, "Reasons", plan.Decisions, tables.Decisions()).ConfigureAwait(false);
        await TableSheet.WriteAsync(book, styles, "Findings", plan.Findings, tables.Findings()).ConfigureAwait(false);
        await book.FinishAsync().ConfigureAwait(false);
    }
}

/// <summary>A plain table sheet with a frozen, filtered header.</summary>
internal static class TableSheet
{
    public static async Task WriteAsync<T>(
        Spreadsheet book, CellStyles styles, string name, ImmutableArray<T> rows, ImmutableArray<Field<T>> fields)
    {
        var options = new WorksheetOptions { FrozenRows = 1, AutoFilter = new AutoFilterOptions($"A1:{SpreadsheetUtility.GetColumnName(fields.Length)}{FormulaText.N(rows.Length + 1)}") };
        for (var i = 0; i < fields.Length; i++) options.Column(i + 1).Width = WidthOf(fields[i], rows);
        await book.StartWorksheetAsync(name, options).ConfigureAwait(false);
        await book.AddRowAsync([.. fields.Select(f => new Cell(f.Name, styles.Header))]).ConfigureAwait(false);
        var cells = new Cell[fields.Length];
        foreach (var row in rows)
        {
            for (var i = 0; i < fields.Length; i++) cells[i] = CellOf(fields[i].Read(row), styles);
            await book.AddRowAsync(cells).ConfigureAwait(false);
        }
    }

    private static Cell CellOf(object? value, CellStyles styles) => value switch
    {
        null => new Cell((string?)null, styles.Text),
        double number => new Cell(number, styles.Exact),
        long whole => new Cell(whole, styles.Whole),
        var text => new Cell(text.ToString(), styles.Wrapped),
    };

    private static double WidthOf<T>(Field<T> field, ImmutableArray<T> rows)
    {
        var longest = field.Name.Length;
        foreach (var row in rows.Take(200)) longest = Math.Max(longest, field.Read(row)?.ToString()?.Length ?? 0);
        return Math.Clamp(longest + 2, 8, field.Type == FieldType.Text ? 60 : 16);
    }
}
