using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using ExcelDataReader;
using Slabwright.Core.Survey;

namespace Slabwright.Data.Import;

/// <summary>Workbooks: finds the sheet that looks like a survey, then streams its rows.</summary>
internal static class WorkbookReader
{
    /// <summary>Opens a workbook.</summary>
    public static OpenedTable Open(Stream stream, ReadRequest request)
    {
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        var sheet = FindSheet(stream, request);
        if (sheet is null) return OpenedTable.Nothing(request);
        var errors = WorkbookErrors.Find(stream, sheet);
        stream.Position = 0;
        var reader = Reader(stream);
        while (reader.Name != sheet && reader.NextResult()) { }
        var rows = errors.Count == 0 ? Rows(reader) : Rows(reader).Select(row => WithErrors(row, errors));
        return new OpenedTable(new RawSource(request.Log.File, Broken.Guard(rows, request.Log)), reader.Dispose);
    }

    private static IExcelDataReader Reader(Stream stream) =>
        ExcelReaderFactory.CreateReader(stream, new ExcelReaderConfiguration { LeaveOpen = true, FallbackEncoding = Encoding.Latin1 });

    /// <summary>The sheet named, or the one with the best header; the first when none has one, so that its finding can say so.</summary>
    private static string? FindSheet(Stream stream, ReadRequest request)
    {
        stream.Position = 0;
        using var reader = Reader(stream);
        var (best, most, names) = ((string?)null, -1, new List<string>());
        do
        {
            names.Add(reader.Name);
            var rows = Rows(reader).Take(HeaderFinder.RowsSearched).ToList();
            var header = HeaderFinder.Find(rows, request.Cores, request.Options);
            var score = header < 0 ? 0 : HeaderFinder.Score(rows[header], request.Cores, request.Options);
            if (score > most) (best, most) = (reader.Name, score);
        }
        while (reader.NextResult());

        if (request.Options.SheetOrLayer is { } wanted)
        {
            var named = names.Find(n => n.Equals(wanted, StringComparison.OrdinalIgnoreCase));
            if (named is null) request.Log.Add(SurveyFaults.Unreadable, $"The workbook has no sheet \"{wanted}\".", value: wanted, mend: $"Its sheets are {string.Join(", ", names)}.");
            return named;
        }

        if (names.Count > 1) request.Log.Add(SurveyFaults.SheetChosen, $"Of the {names.Count} sheets \"{best}\" was read.", value: best);
        return best;
    }

    private static IEnumerable<RawRow> Rows(IExcelDataReader reader)
    {
        for (long number = 1; reader.Read(); number++)
        {
            var cells = new RawCell[reader.FieldCount];
            for (var i = 0; i < cells.Length; i++) cells[i] = Cell(reader, i);
            yield return new RawRow(number, ImmutableCollectionsMarshal.AsImmutableArray(cells));
        }
    }

    private static RawRow WithErrors(RawRow row, Dictionary<(long Row, int Column), string> errors)
    {
        var cells = row.Cells;
        for (var i = 0; i < cells.Length; i++)
        {
            if (errors.TryGetValue((row.Number, i), out var error)) cells = cells.SetItem(i, new RawCell(error, IsError: true));
        }

        return cells == row.Cells ? row : row with { Cells = cells };
    }

    private static RawCell Cell(IExcelDataReader reader, int i)
    {
        return reader.GetValue(i) switch
        {
            null => RawCell.Empty,
            double number => Number(number, reader.GetNumberFormatString(i)),
            int whole => Number(whole, reader.GetNumberFormatString(i)),
            DateTime time => Day(time),
            bool flag => new RawCell(flag ? "yes" : "no"),
            TimeSpan span => new RawCell(span.ToString("c", CultureInfo.InvariantCulture)),
            var other => new RawCell(Convert.ToString(other, CultureInfo.InvariantCulture) ?? ""),
        };
    }

    /// <summary>A number; one that the sheet shows in percent is read as shown.</summary>
    private static RawCell Number(double number, string? format)
    {
        if (format is not null && format.Contains('%', StringComparison.Ordinal))
        {
            return new RawCell((number * 100).ToString("0.######", CultureInfo.InvariantCulture) + " %");
        }

        return new RawCell(number.ToString("R", CultureInfo.InvariantCulture), number);
    }

    private static RawCell Day(DateTime time) => new(time.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), null, DateOnly.FromDateTime(time));
}
