using System.Collections.Immutable;

namespace Slabwright.Core.Survey;

/// <summary>Tells a file's decimal mark from its numbers.</summary>
internal static class DecimalMarks
{
    /// <summary>The mark the sampled numbers show; where they show none or both, what the file's form suggests.</summary>
    /// <param name="sample">First rows.</param>
    /// <param name="header">Index of the header.</param>
    /// <param name="columns">Columns.</param>
    /// <param name="suggested">What the delimiter suggests.</param>
    public static DecimalMark Tell(List<RawRow> sample, int header, ImmutableArray<BoundColumn> columns, DecimalMark suggested)
    {
        var (points, commas) = (0, 0);
        foreach (var row in sample.Skip(header + 1))
        {
            foreach (var column in columns)
            {
                if (column.Index >= row.Cells.Length || !IsNumeric(column.Column.Kind)) continue;
                var cell = row.Cells[column.Index];
                if (cell.Number is not null) continue;
                var shown = Shown(cell.Text);
                points += shown == DecimalMark.Point ? 1 : 0;
                commas += shown == DecimalMark.Comma ? 1 : 0;
            }
        }

        return (points, commas) switch
        {
            ( > 0, 0) => DecimalMark.Point,
            (0, > 0) => DecimalMark.Comma,
            (0, 0) => suggested,
            _ => DecimalMark.Unknown,
        };
    }

    private static bool IsNumeric(ColumnKind kind) => kind is not (ColumnKind.Text or ColumnKind.Day or ColumnKind.YesNo);

    /// <summary>The decimal mark one number shows beyond doubt.</summary>
    private static DecimalMark Shown(string text)
    {
        var (point, comma) = (text.LastIndexOf('.'), text.LastIndexOf(','));
        if (point >= 0 && comma >= 0) return point > comma ? DecimalMark.Point : DecimalMark.Comma;
        var at = Math.Max(point, comma);
        if (at < 0) return DecimalMark.Unknown;
        var (before, after) = (0, 0);
        for (var i = at - 1; i >= 0 && char.IsAsciiDigit(text[i]); i--) before++;
        for (var i = at + 1; i < text.Length && char.IsAsciiDigit(text[i]); i++) after++;
        if (after == 0 || (after == 3 && before is > 0 and <= 3 && text[at - before] != '0')) return DecimalMark.Unknown;
        return point >= 0 ? DecimalMark.Point : DecimalMark.Comma;
    }
}
