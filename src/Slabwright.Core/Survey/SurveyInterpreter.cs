using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Survey;

/// <summary>
/// Makes a survey of a file's raw rows: finds the header, understands its columns, places every row on the road. Rows that cannot be used
/// become findings and the others are kept. Rows are read once, in order, and only what the survey keeps is kept.
/// </summary>
public static class SurveyInterpreter
{
    /// <summary>Rows looked at before the first is read, for header, decimal mark and units.</summary>
    private const int RowsSampled = 240;

    private static readonly HashSet<string> TotalWords =
        ["total", "totals", "subtotal", "grandtotal", "sum", "sums", "average", "mean", "totallength", "totalarea", "totalcount"];

    /// <summary>Reads distresses.</summary>
    /// <param name="source">The file's rows.</param>
    /// <param name="road">The road surveyed.</param>
    /// <param name="options">How to read.</param>
    /// <param name="log">Findings, with those of the file's reader already in it.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <param name="progress">Told the number of rows read, every thousand.</param>
    public static SurveyRecord ReadDistresses(
        RawSource source, Road road, SurveyImportOptions options, FindingLog log, CancellationToken cancellation = default,
        IProgress<long>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(log);
        var (distresses, numbers, assumed) = (new List<Distress>(), new List<long>(), new List<bool>());
        Run(source, road, options, log, false, cancellation, progress, (row, places) =>
        {
            var reader = new DistressReader(row, places, source.File);
            return () =>
            {
                if (reader.Read() is not { } read) return;
                distresses.Add(read.Distress);
                numbers.Add(row.Row.Number);
                assumed.Add(read.PlaceAssumed);
            };
        });
        var settled = RowIdentity.Settle(distresses, numbers, assumed, log);
        return new SurveyRecord(settled, [], log.ToFindings());
    }

    /// <summary>Reads cores.</summary>
    /// <param name="source">The file's rows.</param>
    /// <param name="road">The road cored.</param>
    /// <param name="options">How to read.</param>
    /// <param name="log">Findings, with those of the file's reader already in it.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <param name="progress">Told the number of rows read, every thousand.</param>
    public static SurveyRecord ReadCores(
        RawSource source, Road road, SurveyImportOptions options, FindingLog log, CancellationToken cancellation = default,
        IProgress<long>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(log);
        var cores = new List<CoreSample>();
        var taken = new HashSet<string>(StringComparer.Ordinal);
        Run(source, road, options, log, true, cancellation, progress, (row, places) =>
        {
            var reader = new CoreReader(row, places);
            return () =>
            {
                if (reader.Read() is { } core) cores.Add(CoreIdentity(core, taken, row));
            };
        });
        return new SurveyRecord([], [.. cores], log.ToFindings());
    }

    /// <summary>A core's own identifier, or one made of lane and decimetre, which does not change with row order.</summary>
    private static CoreSample CoreIdentity(CoreSample core, HashSet<string> taken, RowReader row)
    {
        if (core.Id.Length > 0 && taken.Add(core.Id)) return core;
        if (core.Id.Length > 0) row.Report(SurveyFaults.IdTwice, SurveyField.Id, $"The id \"{core.Id}\" occurs twice.");
        var stem = string.Create(CultureInfo.InvariantCulture, $"C{core.Lane}-{Math.Round(core.At * 10)}");
        var (id, ordinal) = (stem, 1);
        while (!taken.Add(id)) id = $"{stem}-{++ordinal}";
        return core with { Id = id };
    }

    private static void Run(
        RawSource source, Road road, SurveyImportOptions options, FindingLog log, bool cores, CancellationToken cancellation,
        IProgress<long>? progress, Func<RowReader, PlaceReader, Action> prepare)
    {
        ArgumentNullException.ThrowIfNull(road);
        ArgumentNullException.ThrowIfNull(options);
        using var rows = source.Rows.GetEnumerator();
        var sample = new List<RawRow>();
        while (sample.Count < RowsSampled && rows.MoveNext()) sample.Add(rows.Current);
        if (FindHeader(sample, options, log, cores) is not { } start) return;
        var header = sample[start];
        var bound = UnitsRow.Apply(HeaderFinder.Bind(header, cores, options, log), sample, ref start);
        if (!HasNeeded(bound, source, sample, road, cores, header, log)) return;
        var mark = options.DecimalMark != DecimalMark.Unknown ? options.DecimalMark : DecimalMarks.Tell(sample, start, bound, source.DecimalMark);
        var row = new RowReader(bound, options, mark, log);
        var system = options.CoordinateSystem.Length > 0 ? options.CoordinateSystem : source.CoordinateSystem;
        var plan = new PlanReader(road, row, system, sample.Any(r => !r.Points.IsEmpty), log);
        var read = prepare(row, new PlaceReader(road, row, plan));
        var width = header.Cells.Length;
        long count = 0;
        for (var i = start + 1; i < sample.Count; i++) ReadOne(sample[i]);
        while (rows.MoveNext()) ReadOne(rows.Current);
        progress?.Report(count);

        void ReadOne(RawRow raw)
        {
            if ((++count & 1023) == 0)
            {
                cancellation.ThrowIfCancellationRequested();
                progress?.Report(count);
            }

            if (IsPassedOver(raw, row, bound, log)) return;
            CheckShape(raw, width, log);
            row.MoveTo(raw);
            read();
        }
    }

    private static int? FindHeader(List<RawRow> sample, SurveyImportOptions options, FindingLog log, bool cores)
    {
        var start = HeaderFinder.Find(sample, cores, options);
        if (start >= 0) return start;
        if (sample.All(r => r.IsBlank)) log.Add(SurveyFaults.Empty);
        else log.Add(SurveyFaults.NoHeader, row: sample[0].Number);
        return null;
    }

    private static bool HasNeeded(
        ImmutableArray<BoundColumn> bound, RawSource source, List<RawRow> sample, Road road, bool cores, RawRow header, FindingLog log)
    {
        bool Has(SurveyField field) => bound.Any(b => b.Column.Field == field);
        var points = sample.Any(r => !r.Points.IsEmpty) || (Has(SurveyField.East) && Has(SurveyField.North));
        var missing = new List<string>();
        if (!cores && !Has(SurveyField.Type)) missing.Add("type");
        if (!points && road.Lanes.Length > 1 && !Has(SurveyField.Lane)) missing.Add("lane");
        SurveyField[] places = [SurveyField.At, SurveyField.From, SurveyField.To, SurveyField.Slab, SurveyField.Joint];
        if (!points && !places.Any(Has)) missing.Add("a place (station, from, slab, joint or coordinates)");
        foreach (var column in missing) log.Add(SurveyFaults.ColumnMissing, $"The file {source.File} has no column for {column}.", header.Number, column);
        if (missing.Count == 0 && !cores && !Has(SurveyField.Date))
            log.Add(SurveyFaults.DateMissing, "The file has no date column; the fallback day was used.", header.Number, "date");
        return missing.Count == 0;
    }

    /// <summary>Blank rows, comments, repeated headers and rows of totals.</summary>
    private static bool IsPassedOver(RawRow raw, RowReader row, ImmutableArray<BoundColumn> bound, FindingLog log)
    {
        var first = raw.Cells.FirstOrDefault(c => !c.IsBlank);
        if (raw.IsBlank) return true;
        if (first.Number is not null || first.Day is not null) return false;
        var text = first.Text.AsSpan().Trim();
        if (IsComment(text)) return true;
        var known = row.Column(SurveyField.Type) is { } type && type.Index < raw.Cells.Length ? raw.Cells[type.Index].Text : "";
        if (bound.Length > 1 && bound.All(b => b.Index < raw.Cells.Length && raw.Cells[b.Index].Text.Trim() == b.Heading)) return true;
        if (text.Length is 0 or > 20 || !char.IsLetter(text[0]) || !TotalWords.Contains(Words.Key(text.ToString())) || DistressCatalog.TryFind(known, out _)) return false;
        log.Add(SurveyFaults.TotalsRow, row: raw.Number, value: text.ToString());
        return true;
    }

    private static bool IsComment(ReadOnlySpan<char> text) =>
        text.StartsWith("//") || (text.Length > 1 && text[0] == '#' && (text[1] is ' ' or '#' || char.IsLetter(text[1])));

    private static void CheckShape(RawRow raw, int width, FindingLog log)
    {
        if (raw.Trouble is not null) log.Add(SurveyFaults.RowMalformed, raw.Trouble, raw.Number);
        if (raw.Cells.Length < width) log.Add(SurveyFaults.RowTooShort, $"The row has {raw.Cells.Length} cells, the header {width}.", raw.Number);
        if (raw.Cells.Length <= width) return;
        foreach (var cell in raw.Cells.AsSpan()[width..])
        {
            if (cell.IsBlank) continue;
            log.Add(SurveyFaults.RowTooLong, $"The row has {raw.Cells.Length} cells, the header {width}.", raw.Number, value: cell.Text);
            return;
        }
    }
}
