using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Concrete.Night;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Survey;
using Slabwright.Data.Import;

namespace Slabwright.Data.Night;

/// <summary>What was read from a logger file.</summary>
/// <param name="Probes">Probes, one a temperature column; empty when nothing could be read.</param>
/// <param name="Columns">How the columns were read, to be remembered; null when they could not be told.</param>
/// <param name="Headers">Headers of the file, for mapping by hand.</param>
/// <param name="Findings">What was wrong or assumed.</param>
public sealed record LoggerReadResult(ImmutableArray<Probe> Probes, RememberedColumns? Columns, ImmutableArray<string> Headers, ImmutableArray<Finding> Findings);

/// <summary>
/// Reads maturity loggers' CSV files and pasted tables of any layout: lines before the header are passed over, the time may stand in one
/// column or two, each temperature column is a probe. A layout mapped once is known again by its headers.
/// </summary>
public static class LoggerReader
{
    private const int RowsLooked = 60;

    /// <summary>Reads a file or pasted text.</summary>
    /// <param name="text">The text.</param> <param name="file">File name for findings; null when pasted.</param>
    /// <param name="remembered">Layouts mapped before.</param> <param name="units">Units taken where a header names none.</param>
    /// <param name="mapping">A mapping made by hand, which wins; null: remembered or found out.</param>
    public static LoggerReadResult Read(string text, string? file, IReadOnlyList<RememberedColumns> remembered, UnitSystem units, RememberedColumns? mapping = null)
    {
        var findings = new List<Finding>();
        var delimiter = LoggerLayout.Delimiter(text);
        var rows = new DelimitedReader(new StringReader(text), delimiter).Rows().Select(r => (Line: r.Number, Cells: r.Cells.Select(c => c.Text.Trim()).ToArray())).ToList();
        var header = LoggerLayout.HeaderOf(rows.Take(RowsLooked).Select(r => r.Cells).ToList());
        if (header < 0)
        {
            findings.Add(new("CON-080", FindingLevel.Error, "No header with times and temperatures below it was found.", new(file), null,
                "Give a table with a header row, a column of times and a column of temperatures."));
            return new([], null, [], [.. findings]);
        }

        var headers = rows[header].Cells;
        var body = rows.Skip(header + 1).Where(r => r.Cells.Any(c => c.Length > 0)).ToList();
        var key = string.Join('|', headers);
        var columns = mapping ?? remembered.FirstOrDefault(m => m.Headers == key) ?? LoggerLayout.Tell(headers, [.. body.Select(r => r.Cells)], units, file, findings);
        if (columns is null) return new([], null, [.. headers], [.. findings]);
        columns = columns with { Headers = key };
        var probes = Probes(headers, body, columns, delimiter != ',', file, findings);
        return new(probes, columns, [.. headers], [.. findings]);
    }

    private static ImmutableArray<Probe> Probes(
        string[] headers, List<(long Line, string[] Cells)> body, RememberedColumns columns, bool decimalComma, string? file, List<Finding> findings)
    {
        var (time, date) = (Array.IndexOf(headers, columns.Time), columns.Date is null ? -1 : Array.IndexOf(headers, columns.Date));
        if (time < 0 || (columns.Date is not null && date < 0))
        {
            findings.Add(new("CON-081", FindingLevel.Error, "The column of times is not in the file.", new(file, Field: columns.Time), null, "Map the columns of this file anew."));
            return [];
        }

        var times = Times(body, time, date, columns.TimeForm, file, findings);
        return
        [
            .. columns.Channels.Select(channel => (channel, Index: Array.IndexOf(headers, channel.Header))).Where(c => c.Index >= 0).Select(c => new Probe(c.channel.Header, c.channel.Place,
                [.. body.Select((row, i) => (row, At: times[i])).Where(r => r.At is not null).Select(r => new ProbeReading(r.At!.Value, Temperature(r.row.Cells, c.Index, columns.Fahrenheit, decimalComma), r.row.Line))])),
        ];
    }

    private static DateTime?[] Times(List<(long Line, string[] Cells)> body, int time, int date, string? form, string? file, List<Finding> findings)
    {
        var texts = body.Select(r => LoggerLayout.TimeText(r.Cells, time, date)).ToArray();
        var filled = texts.Where(t => t.Length > 0).ToArray();
        form ??= LoggerTime.FormOf([.. filled.Take(RowsLooked)], dayFirst: false) ?? "";
        var bad = 0;
        var times = new DateTime?[texts.Length];
        for (var i = 0; i < texts.Length; i++)
        {
            if (LoggerTime.TryRead(texts[i], form, out var at)) times[i] = at;
            else if (bad++ < 5)
            {
                findings.Add(new("CON-084", FindingLevel.Warning, "The time of a reading cannot be read; the row is left out.", new(file, body[i].Line, "time"), texts[i],
                    "Write every time in one form, e.g. 2026-09-14 23:30."));
            }
        }

        return times;
    }

    private static double? Temperature(string[] cells, int index, bool fahrenheit, bool decimalComma)
    {
        if (index >= cells.Length || LoggerLayout.Number(cells[index], decimalComma) is not { } value) return null;
        return fahrenheit ? Units.Fahrenheit.ToBase(value) : value;
    }
}
