using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Slabwright.Desk.Parts;

/// <summary>A table that sorts, filters, copies to a spreadsheet and, where asked, lets one row be picked.</summary>
public partial class DataTable<TRow> : ComponentBase
{
    private const int Step = 500;

    /// <summary>Tables up to this long need no filter.</summary>
    private const int FewRows = 8;

    private string filter = "";
    private string copied = "";
    private Column<TRow>? sorted;
    private bool falling;
    private int limit = Step;
    private IReadOnlyList<TRow>? shown;

    /// <summary>What the table holds, for those who hear it.</summary>
    [Parameter, EditorRequired] public string Caption { get; set; } = "";

    /// <summary>Rows in their first order.</summary>
    [Parameter, EditorRequired] public IReadOnlyList<TRow> Rows { get; set; } = [];

    /// <summary>Columns from the left.</summary>
    [Parameter, EditorRequired] public IReadOnlyList<Column<TRow>> Columns { get; set; } = [];

    /// <summary>Identifier of a row, unique in the table.</summary>
    [Parameter, EditorRequired] public Func<TRow, string> Key { get; set; } = _ => "";

    /// <summary>What to say when there are no rows at all.</summary>
    [Parameter] public string Empty { get; set; } = "Nothing here.";

    /// <summary>Identifier of the row picked, or null.</summary>
    [Parameter] public string? Picked { get; set; }

    /// <summary>Raised with the identifier when a row is picked; without it rows cannot be picked.</summary>
    [Parameter] public EventCallback<string> OnPick { get; set; }

    private bool Picks => OnPick.HasDelegate;

    private IReadOnlyList<TRow> Shown => shown ??= Arrange();

    private string CountText => Shown.Count == Rows.Count
        ? Rows.Count.ToString("N0", CultureInfo.InvariantCulture) + (Rows.Count == 1 ? " row" : " rows")
        : string.Create(CultureInfo.InvariantCulture, $"{Shown.Count:N0} of {Rows.Count:N0} rows");

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (sorted is not null) sorted = Columns.FirstOrDefault(c => c.Title == sorted.Title);
        shown = null;
    }

    private static string ClassOf(Column<TRow> column) => column.Number ? "number" : column.Wide ? "wide" : "text";

    private string? AriaSort(Column<TRow> column) => column != sorted ? null : falling ? "descending" : "ascending";

    private void Filter(string? words)
    {
        filter = words ?? "";
        limit = Step;
        shown = null;
    }

    private void SortBy(Column<TRow> column)
    {
        falling = sorted == column && !falling;
        sorted = column;
        shown = null;
    }

    private Task PickAsync(string key) => Picks ? OnPick.InvokeAsync(key) : Task.CompletedTask;

    /// <summary>Rows that hold every word of the filter, in the order asked for; equal rows keep their first order.</summary>
    private List<TRow> Arrange()
    {
        var words = filter.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var rows = Rows.Where(row => words.All(word => Columns.Any(c => c.Text(row).Contains(word, StringComparison.OrdinalIgnoreCase))));
        if (sorted is null) return [.. rows];
        var by = sorted.SortBy ?? sorted.Text;
        return falling ? [.. rows.OrderByDescending(by)] : [.. rows.OrderBy(by)];
    }

    private async Task CopyAsync()
    {
        var heads = Columns.Select(c => c.Unit.Length == 0 ? c.Title : $"{c.Title} ({c.Unit})");
        var lines = Shown.Select(row => string.Join('\t', Columns.Select(c => c.Text(row).Replace('\t', ' ').Replace('\n', ' '))));
        await using var module = await Js.InvokeAsync<IJSObjectReference>("import", "./desk.js");
        var done = await module.InvokeAsync<bool>("copyText", string.Join('\n', lines.Prepend(string.Join('\t', heads))));
        copied = done ? "Copied; paste into a spreadsheet." : "The browser did not allow the copy.";
    }
}
