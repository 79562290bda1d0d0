using Microsoft.AspNetCore.Components;

namespace Slabwright.Desk.Parts;

/// <summary>One column of a <see cref="DataTable{TRow}"/>.</summary>
/// <param name="Title">Heading.</param>
/// <param name="Text">What the cell says; the filter looks in it and a copy carries it.</param>
public sealed record Column<TRow>(string Title, Func<TRow, string> Text)
{
    /// <summary>Unit, printed under the heading.</summary>
    public string Unit { get; init; } = "";

    /// <summary>What the column sorts by; the text when null.</summary>
    public Func<TRow, IComparable?>? SortBy { get; init; }

    /// <summary>True for numbers, which stand right.</summary>
    public bool Number { get; init; }

    /// <summary>True where long sentences may wrap.</summary>
    public bool Wide { get; init; }

    /// <summary>Richer content in place of the text.</summary>
    public Func<TRow, RenderFragment>? Cell { get; init; }
}
