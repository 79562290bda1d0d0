using System.Collections.Immutable;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Survey;

/// <summary>A cell as a file holds it: text, and where the file itself knows better a number or a day.</summary>
/// <param name="Text">Text as shown; empty for an empty cell.</param>
/// <param name="Number">The number, where the file stores numbers as such.</param>
/// <param name="Day">The day, where the file stores days as such.</param>
/// <param name="IsError">True for a formula that ended in an error.</param>
public readonly record struct RawCell(string Text, double? Number = null, DateOnly? Day = null, bool IsError = false)
{
    /// <summary>An empty cell.</summary>
    public static RawCell Empty { get; } = new("");

    /// <summary>True when nothing is written in the cell.</summary>
    public bool IsBlank => Number is null && Day is null && !IsError && string.IsNullOrWhiteSpace(Text);
}

/// <summary>A row as a file holds it.</summary>
/// <param name="Number">Row of the file, counted from 1; for a text file the line the row starts on, for features the feature.</param>
/// <param name="Cells">Cells from the left.</param>
/// <param name="Points">Points drawn for the row, in the source's coordinate system; empty where the file has no shapes.</param>
/// <param name="Trouble">What the reader had to put up with, in words; null when the row was well formed.</param>
public sealed record RawRow(long Number, ImmutableArray<RawCell> Cells, ImmutableArray<PlanPoint> Points, string? Trouble = null)
{
    /// <summary>A row without a shape.</summary>
    public RawRow(long number, ImmutableArray<RawCell> cells) : this(number, cells, []) { }

    /// <summary>True when no cell holds anything.</summary>
    public bool IsBlank
    {
        get
        {
            foreach (var cell in Cells)
            {
                if (!cell.IsBlank) return false;
            }

            return true;
        }
    }
}

/// <summary>A file's rows, header included, read once from first to last.</summary>
/// <param name="File">File name without its folder.</param>
/// <param name="Rows">Rows in file order; the header is one of the first <see cref="HeaderFinder.RowsSearched"/>.</param>
/// <param name="CoordinateSystem">Coordinate system of the points, e.g. <c>EPSG:3875</c>; empty when there are none or it is not told.</param>
/// <param name="DecimalMark">What the file's own form says about the decimal mark.</param>
public sealed record RawSource(
    string File, IEnumerable<RawRow> Rows, string CoordinateSystem = "", DecimalMark DecimalMark = DecimalMark.Unknown);

/// <summary>How a file writes decimals.</summary>
public enum DecimalMark
{
    /// <summary>Not known: each number is judged by its own form, and one comma before three digits groups thousands.</summary>
    Unknown,

    /// <summary>Decimal point; commas group thousands.</summary>
    Point,

    /// <summary>Decimal comma; points group thousands.</summary>
    Comma,
}
