using System.Collections.Immutable;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Survey;

/// <summary>A column of a file and what it means.</summary>
/// <param name="Index">Place in the row, from 0.</param>
/// <param name="Heading">Heading as the file spells it.</param>
/// <param name="Column">What it means.</param>
/// <param name="Unit">Unit the heading states, or null.</param>
/// <param name="IsStation">True when the heading says that its places are stations.</param>
internal sealed record BoundColumn(int Index, string Heading, SurveyColumn Column, Unit? Unit, bool IsStation);

/// <summary>A heading as understood: a column with its unit, or a unit that is not known.</summary>
internal readonly record struct Heading(SurveyColumn? Column, Unit? Unit, string? UnknownUnit);

/// <summary>Finds the header among a file's first rows and understands its headings.</summary>
public static class HeaderFinder
{
    /// <summary>How many rows from the top may hold the header.</summary>
    public const int RowsSearched = 40;

    /// <summary>Headings a row must have in common with the known ones to be a header.</summary>
    private const int LeastKnown = 2;

    private static readonly string[] StationWords = ["station", "sta", "stationing", "stn", "milepost", "mp", "chainage", "bmp", "emp", "post"];

    /// <summary>How much a row looks like a header: the number of different columns it names, 0 when it is none.</summary>
    /// <param name="row">A row.</param>
    /// <param name="cores">True for a core file.</param>
    /// <param name="options">Headings of the user's own.</param>
    public static int Score(RawRow row, bool cores, SurveyImportOptions options)
    {
        ArgumentNullException.ThrowIfNull(row);
        ArgumentNullException.ThrowIfNull(options);
        var fields = new HashSet<SurveyField>();
        foreach (var cell in row.Cells)
        {
            if (cell.IsBlank || cell.Number is not null || cell.Day is not null) continue;
            if (Understand(cell.Text, cores, options).Column is { } column) fields.Add(column.Field);
        }

        return fields.Count >= LeastKnown ? fields.Count : 0;
    }

    /// <summary>Index of the row that looks most like a header, the first of equals; −1 when none does.</summary>
    /// <param name="rows">The first rows of a file.</param>
    /// <param name="cores">True for a core file.</param>
    /// <param name="options">Headings of the user's own.</param>
    public static int Find(IReadOnlyList<RawRow> rows, bool cores, SurveyImportOptions options)
    {
        ArgumentNullException.ThrowIfNull(rows);
        var (best, most) = (-1, 0);
        for (var i = 0; i < rows.Count && i < RowsSearched; i++)
        {
            var score = Score(rows[i], cores, options);
            if (score > most) (best, most) = (i, score);
        }

        return best;
    }

    /// <summary>Binds a header's columns; what is not understood becomes a finding.</summary>
    internal static ImmutableArray<BoundColumn> Bind(RawRow header, bool cores, SurveyImportOptions options, FindingLog log)
    {
        var bound = new Dictionary<SurveyField, BoundColumn>();
        for (var i = 0; i < header.Cells.Length; i++)
        {
            var text = header.Cells[i].Text.Trim();
            if (text.Length == 0 || options.Headings.Any(h => Same(h.Key, text) && h.Value.Length == 0)) continue;
            var heading = Understand(text, cores, options);
            if (heading.UnknownUnit is { } unit)
            {
                log.Add(SurveyFaults.UnitUnknown, $"The heading \"{text}\" states a unit that is not known; the column was not used.",
                    header.Number, text, unit);
            }
            else if (heading.Column is not { } column)
            {
                var near = SurveyColumns.Nearest(text, cores);
                log.Add(SurveyFaults.HeadingUnknown, $"The heading \"{text}\" is not known; the column was not used.", header.Number, text, text,
                    near is null ? null : $"Rename it to \"{near}\" if that is meant.");
            }
            else if (!bound.TryAdd(column.Field, new BoundColumn(i, text, column, heading.Unit, IsStation(text))))
            {
                var first = bound[column.Field].Heading;
                log.Add(SurveyFaults.HeadingTwice, $"\"{text}\" means the same as \"{first}\"; the first was used.", header.Number, text, text);
            }
        }

        return [.. bound.Values.OrderBy(b => b.Index)];
    }

    /// <summary>Understands a heading: the user's own, a known one, or a known one with its unit.</summary>
    internal static Heading Understand(string text, bool cores, SurveyImportOptions options)
    {
        if (text.Length > 80) return default;
        foreach (var (own, name) in options.Headings)
        {
            if (Same(own, text)) return Understand(name, cores, options with { Headings = options.Headings.Clear() });
        }

        if (SurveyColumns.Find(text, cores) is { } column) return new(column, null, null);
        var open = text.IndexOfAny(['(', '[', '{']);
        if (open > 0 && SurveyColumns.Find(text[..open], cores) is { } named) return WithUnit(named, text[(open + 1)..].Trim(')', ']', '}', ' '));
        return Suffixed(text, cores);
    }

    private static Heading WithUnit(SurveyColumn column, string unitText)
    {
        var words = unitText.Split([' ', ',', ';'], StringSplitOptions.RemoveEmptyEntries).Prepend(unitText);
        foreach (var word in words)
        {
            if (MeasureText.TryUnit(word, out var unit) && Fits(column.Kind, unit)) return new(column, unit, null);
        }

        var strict = column.Kind is ColumnKind.LongLength or ColumnKind.SmallLength or ColumnKind.Depth or ColumnKind.Area;
        return strict ? new(null, null, unitText) : new(column, null, null);
    }

    private static Heading Suffixed(string text, bool cores)
    {
        var words = Words.Split(text);
        for (var last = 1; last <= 2 && last < words.Count; last++)
        {
            if (SurveyColumns.Find(string.Join(' ', words.SkipLast(last)), cores) is not { } column) continue;
            if (MeasureText.TryUnit(string.Join(' ', words.TakeLast(last)), out var unit) && Fits(column.Kind, unit)) return new(column, unit, null);
        }

        return default;
    }

    /// <summary>True when a column can be measured in a unit. Words may carry a length: the place in the slab.</summary>
    internal static bool Fits(ColumnKind kind, Unit unit) => kind switch
    {
        ColumnKind.Area => unit.Dimension == Dimension.Area,
        ColumnKind.Whole or ColumnKind.Day or ColumnKind.YesNo => false,
        ColumnKind.Depth => unit.Dimension is Dimension.Length or Dimension.Share,
        _ => unit.Dimension == Dimension.Length,
    };

    private static bool IsStation(string heading) =>
        Words.Split(heading).Any(w => StationWords.Contains(w, StringComparer.OrdinalIgnoreCase))
        || heading.Contains("station", StringComparison.OrdinalIgnoreCase) || heading.Contains("milepost", StringComparison.OrdinalIgnoreCase);

    private static bool Same(string a, string b) => string.Equals(a.Trim(), b.Trim(), StringComparison.OrdinalIgnoreCase);
}
