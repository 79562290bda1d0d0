namespace Slabwright.Cli.Output;

/// <summary>A plain text table: left for words, right for numbers, two spaces between columns.</summary>
/// <param name="headers">Column heads; a head that ends in <c>&gt;</c> is right-aligned.</param>
internal sealed class TextTable(params string[] headers)
{
    private readonly List<string[]> _rows = [];

    /// <summary>Adds a row; missing cells are empty.</summary>
    public TextTable Add(params string[] cells)
    {
        _rows.Add(cells);
        return this;
    }

    /// <summary>Writes the table; nothing but the heads when it has no rows.</summary>
    public void WriteTo(TextWriter writer)
    {
        var right = headers.Select(h => h.EndsWith('>')).ToArray();
        var heads = headers.Select(h => h.TrimEnd('>')).ToArray();
        var widths = heads.Select((h, i) => Math.Max(h.Length, _rows.Select(r => i < r.Length ? r[i].Length : 0).DefaultIfEmpty().Max())).ToArray();
        Write(heads);
        Write(widths.Select(w => new string('-', w)).ToArray());
        foreach (var row in _rows) Write(row);

        void Write(string[] cells)
        {
            var padded = widths.Select((w, i) =>
            {
                var cell = i < cells.Length ? cells[i] : "";
                return right[i] ? cell.PadLeft(w) : cell.PadRight(w);
            });
            writer.WriteLine(string.Join("  ", padded).TrimEnd());
        }
    }
}
