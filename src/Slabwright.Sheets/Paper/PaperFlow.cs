using SkiaSharp;

namespace Slabwright.Sheets.Paper;

/// <summary>A block of a flowing sheet.</summary>
internal abstract record FlowBlock;

/// <summary>A heading; stays with what follows.</summary>
internal sealed record FlowHeading(string Text) : FlowBlock;

/// <summary>A paragraph.</summary>
internal sealed record FlowText(string Text) : FlowBlock;

/// <summary>A table, broken where needed.</summary>
internal sealed record FlowTable(PaperTable Table) : FlowBlock;

/// <summary>A drawing of fixed height.</summary>
internal sealed record FlowDrawing(float Height, Action<PaperPad, SKRect> Draw) : FlowBlock;

/// <summary>Sets blocks one below the other in columns, sheet after sheet.</summary>
internal sealed class PaperFlow
{
    private const float Gutter = 26;
    private const float TextSize = 8.6f;
    private const float HeadingSize = 11.5f;
    private const float Gap = 14;

    private readonly PaperFonts fonts;
    private readonly SKRect body;
    private readonly int columns;
    private readonly List<List<Action<PaperPad>>> pages = [];
    private int column;
    private float y;

    public PaperFlow(PaperFonts fonts, SKRect body, int columns = 1)
    {
        this.fonts = fonts;
        this.body = body;
        this.columns = columns;
    }

    /// <summary>Width of one column.</summary>
    public float ColumnWidth => (body.Width - Gutter * (columns - 1)) / columns;

    private float Left => body.Left + column * (ColumnWidth + Gutter);

    /// <summary>Lays the blocks out; one drawing action a page.</summary>
    public List<Action<PaperPad>> Lay(IReadOnlyList<FlowBlock> blocks)
    {
        for (var i = 0; i < blocks.Count; i++)
        {
            switch (blocks[i])
            {
                case FlowHeading heading: LayHeading(heading, i + 1 < blocks.Count ? blocks[i + 1] : null); break;
                case FlowText text: LayText(text); break;
                case FlowTable table: LayTable(table.Table); break;
                case FlowDrawing drawing: LayDrawing(drawing); break;
            }
        }

        return [.. pages.Select(page => (Action<PaperPad>)(pad =>
        {
            foreach (var draw in page) draw(pad);
        }))];
    }

    private void LayHeading(FlowHeading heading, FlowBlock? next)
    {
        var keep = next switch
        {
            FlowDrawing drawing => drawing.Height,
            FlowTable table => table.Table.HeightOf(0, Math.Min(3, table.Table.Count)),
            FlowText text => Lines(text.Text).Count * TextSize * 1.35f,
            _ => 20,
        };
        MakeRoom(HeadingSize + 8 + keep);
        var (x, baseline) = (Left, y + HeadingSize);
        Add(pad => pad.Text(heading.Text, x, baseline, HeadingSize, Face.Bold));
        y += HeadingSize + 7;
    }

    private void LayText(FlowText text)
    {
        var lines = Lines(text.Text);
        MakeRoom(Math.Min(lines.Count, 4) * TextSize * 1.35f);
        foreach (var line in lines)
        {
            MakeRoom(TextSize * 1.35f);
            var (x, baseline) = (Left, y + TextSize);
            Add(pad => pad.Text(line, x, baseline, TextSize));
            y += TextSize * 1.35f;
        }

        y += 6;
    }

    private void LayTable(PaperTable table)
    {
        for (var from = 0; from < table.Count;)
        {
            MakeRoom(table.HeightOf(from, Math.Min(from + 1, table.Count)));
            var start = from;
            var to = table.Break(from, body.Bottom - y);
            var (x, top) = (Left, y);
            Add(pad => table.Draw(pad, x, top, start, to));
            y += table.HeightOf(from, to) + Gap;
            from = to;
        }
    }

    private void LayDrawing(FlowDrawing drawing)
    {
        MakeRoom(drawing.Height);
        var box = new SKRect(Left, y, Left + ColumnWidth, y + drawing.Height);
        Add(pad => drawing.Draw(pad, box));
        y += drawing.Height + Gap;
    }

    private List<string> Lines(string text) => TextFlow.Wrap(fonts, text, Face.Text, TextSize, ColumnWidth);

    private void MakeRoom(float height)
    {
        if (pages.Count > 0 && (y + height <= body.Bottom || y <= body.Top)) return;
        column++;
        if (pages.Count == 0 || column >= columns)
        {
            pages.Add([]);
            column = 0;
        }

        y = body.Top;
    }

    private void Add(Action<PaperPad> draw) => pages[^1].Add(draw);
}
