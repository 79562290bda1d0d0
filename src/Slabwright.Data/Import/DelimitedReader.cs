using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Slabwright.Core.Survey;

namespace Slabwright.Data.Import;

/// <summary>
/// Reads delimited text row by row, by RFC 4180 where the text keeps to it and with good sense where it does not: any line end,
/// quotation marks inside bare cells (inch marks), bare quotation marks inside quoted cells, and a mark that opens and never closes, which
/// is then a letter like any other so that it costs no row but its own. Never throws for what the text holds.
/// </summary>
internal sealed class DelimitedReader(TextReader text, char delimiter)
{
    /// <summary>A quoted cell longer than this, or over more lines, is taken for a mark that was never closed.</summary>
    private const int LongestQuoted = 8192;
    private const int MostLines = 32;
    private const int LongestCell = 1 << 20;
    private const int End = -1;

    private readonly CharFeed feed = new(text);
    private readonly List<RawCell> cells = [];
    private readonly List<char> cell = [];
    private string? trouble;

    /// <summary>The rows; lines with nothing on them are left out but counted.</summary>
    public IEnumerable<RawRow> Rows()
    {
        while (feed.Peek() != End)
        {
            var line = feed.Line;
            if (ReadRow() is { } row) yield return new RawRow(line, row, [], trouble);
        }
    }

    private ImmutableArray<RawCell>? ReadRow()
    {
        cells.Clear();
        trouble = null;
        while (true)
        {
            var ending = ReadCell();
            cells.Add(new RawCell(cell.Count == 0 ? "" : new string(CollectionsMarshal.AsSpan(cell))));
            if (ending == delimiter) continue;
            if (cells.Count == 1 && cells[0].Text.AsSpan().Trim().Length == 0) return null;
            return ImmutableCollectionsMarshal.AsImmutableArray(cells.ToArray());
        }
    }

    /// <summary>Reads a cell and returns what ended it: the delimiter, a line feed or the end.</summary>
    private int ReadCell()
    {
        cell.Clear();
        var bare = false;
        while (true)
        {
            var c = feed.Next();
            if (c == delimiter || c == '\n' || c == End) return c;
            if (c == '"' && !bare)
            {
                if (ReadQuoted() is { } ending) return ending;
                bare = true;
                trouble = "A quotation mark is not closed; it was read as a letter.";
                Add('"');
                continue;
            }

            bare |= c != ' ';
            Add((char)c);
        }
    }

    /// <summary>Reads on behind an opening mark and returns what ended the cell; null when it never closes, back behind the mark.</summary>
    private int? ReadQuoted()
    {
        feed.Remember();
        var (start, lines) = (cell.Count, feed.Line);
        cell.Clear();
        while (cell.Count < LongestQuoted && feed.Line - lines < MostLines)
        {
            var c = feed.Next();
            if (c == End) break;
            if (c != '"')
            {
                Add((char)c);
                continue;
            }

            var next = feed.Peek();
            if (next == '"')
            {
                feed.Next();
                Add('"');
            }
            else if (Closes() is { } ending)
            {
                feed.Forget();
                return ending;
            }
            else if (feed.Line > lines)
            {
                break;
            }
            else
            {
                trouble = "A quotation mark inside a quoted cell is not doubled; it was read as a letter.";
                Add('"');
            }
        }

        feed.GoBack();
        cell.Clear();
        for (var i = 0; i < start; i++) cell.Add(' ');
        return null;
    }

    /// <summary>What ends the cell behind a closing mark and spaces, or null when something else follows.</summary>
    private int? Closes()
    {
        var spaces = 0;
        while (feed.Peek() == ' ' && delimiter != ' ')
        {
            feed.Next();
            spaces++;
        }

        var next = feed.Peek();
        if (next == delimiter || next == '\n' || next == End) return feed.Next();
        if (spaces > 0) feed.PutBack(spaces);
        return null;
    }

    private void Add(char c)
    {
        if (cell.Count < LongestCell) cell.Add(c);
        else trouble = "A cell is longer than a million characters; the rest was left out.";
    }
}
