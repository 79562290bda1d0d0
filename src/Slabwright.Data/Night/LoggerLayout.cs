using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Data.Night;

/// <summary>Finds out how a logger file is laid out. What is assumed is said.</summary>
internal static class LoggerLayout
{
    private static readonly string[] NotConcrete = ["air", "ambient", "battery", "humid", "rh", "volt", "matur", "ttf", "strength", "psi", "mpa", "index", "record", "scan", "#", "no."];
    private static readonly string[] Temperatures = ["temp", "°", "deg", "probe", "sensor", "channel", "ch", "thermo", "tc", "(c)", "(f)"];

    private static readonly (string Word, SlabPlace Place)[] Places =
    [
        ("corner", SlabPlace.Corner), ("edge", SlabPlace.Edge), ("surface", SlabPlace.Surface), ("top", SlabPlace.Surface), ("bottom", SlabPlace.Bottom),
        ("base", SlabPlace.Bottom), ("mid", SlabPlace.MidDepth), ("cent", SlabPlace.MidDepth),
    ];

    /// <summary>What parts the cells: the mark that most lines hold equally often.</summary>
    public static char Delimiter(string text)
    {
        var lines = text.Split('\n').Where(l => l.Trim().Length > 0).TakeLast(40).ToArray();
        return new[] { '\t', ';', ',' }.MaxBy(d => lines.Count(l => l.Contains(d)) * 10 + (d == ',' ? 0 : 1));
    }

    /// <summary>The row above the first that holds a time and a number; -1 when there is none.</summary>
    public static int HeaderOf(List<string[]> rows)
    {
        for (var i = 1; i < rows.Count; i++)
        {
            if (TimeColumns(rows[i]) is not var (time, date) || !rows[i].Where((c, k) => k != time && k != date).Any(c => Number(c, true) is not null)) continue;
            return rows[i - 1].Length > 1 ? i - 1 : -1;
        }

        return -1;
    }

    /// <summary>The mapping of a layout not seen before; null with a finding when it cannot be told.</summary>
    public static RememberedColumns? Tell(string[] headers, List<string[]> body, UnitSystem units, string? file, List<Finding> findings)
    {
        if (body.Select(TimeColumns).FirstOrDefault(t => t is not null) is not var (time, date))
        {
            findings.Add(new("CON-081", FindingLevel.Error, "The column of times is not in the file.", new(file), null, "Map the columns by hand."));
            return null;
        }

        var texts = body.Select(r => TimeText(r, time, date)).Where(t => t.Length > 0).Take(500).ToArray();
        var form = Form(texts, units, headers[time], file, findings);
        var channels = headers.Select((h, i) => (Header: h, Index: i)).Where(h => h.Index != time && h.Index != date && IsTemperature(h.Header, h.Index, body)).ToArray();
        if (channels.Length == 0)
        {
            findings.Add(new("CON-085", FindingLevel.Error, "No column of concrete temperatures was found.", new(file), string.Join(", ", headers), "Map the columns by hand."));
            return null;
        }

        var fahrenheit = Fahrenheit(channels.Select(c => c.Header), units, file, findings);
        return new("", headers[time], date < 0 ? null : headers[date], form, fahrenheit, [.. channels.Select(c => new RememberedChannel(c.Header, PlaceOf(c.Header, file, findings)))]);
    }

    /// <summary>Text of a row's time, the day before the clock where they stand apart.</summary>
    public static string TimeText(string[] cells, int time, int date) =>
        time >= cells.Length || date >= cells.Length ? "" : date < 0 ? cells[time] : $"{cells[date]} {cells[time]}".Trim();

    /// <summary>A number, with a decimal comma where cells are not parted by commas.</summary>
    public static double? Number(string text, bool decimalComma)
    {
        var plain = decimalComma && !text.Contains('.') ? text.Replace(',', '.') : text;
        return double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value : null;
    }

    private static (int Time, int Date)? TimeColumns(string[] cells)
    {
        for (var i = 0; i < cells.Length; i++)
            if (LoggerTime.FormOf([cells[i]], false) is not null) return (i, -1);
        for (var i = 0; i + 1 < cells.Length; i++)
            if (LoggerTime.FormOf([$"{cells[i]} {cells[i + 1]}"], false) is not null) return (i + 1, i);
        return null;
    }

    private static string? Form(string[] texts, UnitSystem units, string header, string? file, List<Finding> findings)
    {
        var form = LoggerTime.FormOf(texts, units == UnitSystem.Si);
        if (form is not null && LoggerTime.IsAmbiguous(texts, form))
        {
            findings.Add(new("CON-086", FindingLevel.Warning, "Day and month can be told either way in this file.", new(file, Field: header), texts[0],
                form.StartsWith('d') ? "Day before month was taken; map the column by hand if that is wrong." : "Month before day was taken; map the column by hand if that is wrong."));
        }

        return form;
    }

    private static bool IsTemperature(string header, int index, List<string[]> body)
    {
        var lower = header.ToLowerInvariant();
        if (lower.Length == 0 || NotConcrete.Any(w => lower.Contains(w, StringComparison.Ordinal) && !lower.Contains("temp", StringComparison.Ordinal)) || lower.Contains("ambient", StringComparison.Ordinal) || lower.StartsWith("air", StringComparison.Ordinal)) return false;
        var named = Temperatures.Any(w => lower.Contains(w, StringComparison.Ordinal)) || Places.Any(p => lower.Contains(p.Word, StringComparison.Ordinal));
        return named && body.Count(r => index < r.Length && Number(r[index], true) is not null) >= 0.3 * body.Count;
    }

    private static bool Fahrenheit(IEnumerable<string> headers, UnitSystem units, string? file, List<Finding> findings)
    {
        var all = string.Join(' ', headers).ToLowerInvariant();
        if (all.Contains("°f", StringComparison.Ordinal) || all.Contains("(f)", StringComparison.Ordinal) || all.Contains("deg f", StringComparison.Ordinal) || all.Contains("_f", StringComparison.Ordinal)) return true;
        if (all.Contains("°c", StringComparison.Ordinal) || all.Contains("(c)", StringComparison.Ordinal) || all.Contains("deg c", StringComparison.Ordinal) || all.Contains("_c", StringComparison.Ordinal)) return false;
        findings.Add(new("CON-083", FindingLevel.Warning, "The headers do not say whether temperatures are °C or °F.", new(file), null,
            units == UnitSystem.Si ? "°C was taken, as in the project; map the columns by hand if that is wrong." : "°F was taken, as in the project; map the columns by hand if that is wrong."));
        return units != UnitSystem.Si;
    }

    private static SlabPlace PlaceOf(string header, string? file, List<Finding> findings)
    {
        foreach (var (word, place) in Places)
            if (header.Contains(word, StringComparison.OrdinalIgnoreCase)) return place;
        findings.Add(new("CON-082", FindingLevel.Note, "The header does not say where the probe sits; mid-depth was taken.", new(file, Field: header), header,
            "Set the place of the probe: the forecast needs the place that lags behind."));
        return SlabPlace.MidDepth;
    }
}
