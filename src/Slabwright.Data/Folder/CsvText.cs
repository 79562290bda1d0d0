using System.Text;

namespace Slabwright.Data.Folder;

/// <summary>Writes CSV: cells quoted where they need it, rows ended by a line feed.</summary>
/// <param name="delimiter">What parts the cells.</param>
public sealed class CsvText(char delimiter = ',')
{
    private readonly StringBuilder _text = new();

    /// <summary>Adds a row.</summary>
    public void Add(params ReadOnlySpan<string> cells)
    {
        for (var i = 0; i < cells.Length; i++)
        {
            if (i > 0) _text.Append(delimiter);
            _text.Append(Quoted(cells[i]));
        }

        _text.Append('\n');
    }

    /// <inheritdoc/>
    public override string ToString() => _text.ToString();

    private string Quoted(string cell) =>
        cell.AsSpan().IndexOfAny(['"', '\n', '\r', delimiter]) < 0 ? cell : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
