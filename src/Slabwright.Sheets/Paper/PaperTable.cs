using SkiaSharp;

namespace Slabwright.Sheets.Paper;

/// <summary>A column of a table.</summary>
/// <param name="Head">Heading; may hold line feeds.</param>
/// <param name="Share">Share of the table's width.</param>
/// <param name="Side">Where values stand; numbers stand right.</param>
internal sealed record PaperColumn(string Head, float Share, Side Side = Side.Left);

/// <summary>How a row is set.</summary>
internal enum RowTone
{
    Normal,
    Strong,
    Total,
    Group,
}

/// <summary>A row of a table.</summary>
/// <param name="Cells">Texts, one a column; a group row has one text over the whole width.</param>
/// <param name="Tone">How it is set.</param>
internal sealed record PaperRow(string[] Cells, RowTone Tone = RowTone.Normal);

/// <summary>
/// A ruled table that breaks across pages and repeats its headings. Rows are never split; a group heading stays with the row below it.
/// </summary>
internal sealed class PaperTable
{
    private const float Pad = 5f;

    private readonly PaperColumn[] columns;
    private readonly float[] lefts;
    private readonly float[] widths;
    private readonly List<string>[] heads;
    private readonly List<(PaperRow Row, List<string>[] Lines, float Height)> rows = [];
    private readonly float size;
    private readonly float leading;

    public PaperTable(PaperFonts fonts, PaperColumn[] columns, IEnumerable<PaperRow> rows, float width, float size = 7.6f)
    {
        this.columns = columns;
        this.size = size;
        leading = size * 1.22f;
        Width = width;
        var total = columns.Sum(c => c.Share);
        widths = [.. columns.Select(c => width * c.Share / total)];
        lefts = new float[columns.Length];
        for (var i = 1; i < columns.Length; i++) lefts[i] = lefts[i - 1] + widths[i - 1];
        heads = [.. columns.Select((c, i) => TextFlow.Wrap(fonts, c.Head, Face.Bold, size - 0.6f, widths[i] - 2 * Pad))];
        HeadHeight = heads.Max(h => h.Count) * (size - 0.6f) * 1.2f + 7;
        foreach (var row in rows) this.rows.Add(Lay(fonts, row));
    }

    public float Width { get; }

    public float HeadHeight { get; }

    public int Count => rows.Count;

    /// <summary>Height of some rows with their heading.</summary>
    public float HeightOf(int from, int to)
    {
        var height = HeadHeight;
        for (var i = from; i < to; i++) height += rows[i].Height;
        return height;
    }

    /// <summary>First row that no longer fits a height when rows start at one; at least one row is always taken.</summary>
    public int Break(int from, float height)
    {
        var (at, left) = (from, height - HeadHeight);
        while (at < rows.Count && rows[at].Height <= left) left -= rows[at++].Height;
        while (at > from + 1 && at < rows.Count && rows[at - 1].Row.Tone == RowTone.Group) at--;
        return Math.Max(at, from + 1);
    }

    /// <summary>Draws rows with the heading above and returns the y below.</summary>
    public float Draw(PaperPad pad, float x, float y, int from, int to)
    {
        y = DrawHead(pad, x, y);
        for (var i = from; i < to; i++)
        {
            DrawRow(pad, x, y, rows[i], i);
            y += rows[i].Height;
        }

        pad.Line(x, y, x + Width, y, 0.8f);
        return y;
    }

    private (PaperRow Row, List<string>[] Lines, float Height) Lay(PaperFonts fonts, PaperRow row)
    {
        if (row.Tone == RowTone.Group)
        {
            var words = TextFlow.Wrap(fonts, row.Cells[0], Face.Bold, size, Width - 2 * Pad);
            return (row, [words], words.Count * leading + 6);
        }

        var face = FaceOf(row.Tone);
        var lines = columns.Select((_, i) => TextFlow.Wrap(fonts, row.Cells[i], face, size, widths[i] - 2 * Pad)).ToArray();
        return (row, lines, lines.Max(l => l.Count) * leading + 3.6f);
    }

    private float DrawHead(PaperPad pad, float x, float y)
    {
        pad.Box(new SKRect(x, y, x + Width, y + HeadHeight), PaperPad.Ink);
        var lead = (size - 0.6f) * 1.2f;
        for (var i = 0; i < columns.Length; i++)
        {
            var baseline = y + HeadHeight - 4.5f - (heads[i].Count - 1) * lead;
            foreach (var line in heads[i])
            {
                Place(pad, line, i, x, baseline, size - 0.6f, Face.Bold, "#ffffff");
                baseline += lead;
            }
        }

        return y + HeadHeight;
    }

    private void DrawRow(PaperPad pad, float x, float y, (PaperRow Row, List<string>[] Lines, float Height) row, int index)
    {
        if (row.Row.Tone == RowTone.Group) pad.Box(new SKRect(x, y, x + Width, y + row.Height), PaperPad.Faint);
        else if (row.Row.Tone == RowTone.Total) pad.Line(x, y, x + Width, y, 0.8f);
        else if (index > 0) pad.Line(x, y, x + Width, y, 0.25f, PaperPad.Rule);
        var face = FaceOf(row.Row.Tone);
        for (var i = 0; i < row.Lines.Length; i++)
        {
            var baseline = y + size + (row.Row.Tone == RowTone.Group ? 2.6f : 1.4f);
            foreach (var line in row.Lines[i])
            {
                if (row.Row.Tone == RowTone.Group) pad.Text(line, x + Pad, baseline, size, face);
                else Place(pad, line, i, x, baseline, size, face, PaperPad.Ink);
                baseline += leading;
            }
        }
    }

    private void Place(PaperPad pad, string text, int column, float x, float baseline, float textSize, Face face, string colour)
    {
        var at = columns[column].Side switch
        {
            Side.Left => x + lefts[column] + Pad,
            Side.Right => x + lefts[column] + widths[column] - Pad,
            _ => x + lefts[column] + widths[column] / 2,
        };
        pad.Text(text, at, baseline, textSize, face, colour, columns[column].Side);
    }

    private static Face FaceOf(RowTone tone) => tone == RowTone.Normal ? Face.Text : Face.Bold;
}
