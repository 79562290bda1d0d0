using System.Collections.Immutable;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Survey;

/// <summary>Some tables state units in a row of their own under the header.</summary>
internal static class UnitsRow
{
    /// <summary>Takes units from the row under the header when it holds nothing else; moves <paramref name="header"/> onto it.</summary>
    public static ImmutableArray<BoundColumn> Apply(ImmutableArray<BoundColumn> columns, List<RawRow> sample, ref int header)
    {
        if (header + 1 >= sample.Count || sample[header + 1].IsBlank) return columns;
        var row = sample[header + 1];
        foreach (var cell in row.Cells)
        {
            if (!cell.IsBlank && !TryUnit(cell, out _)) return columns;
        }

        header++;
        return [.. columns.Select(c => c.Index < row.Cells.Length && TryUnit(row.Cells[c.Index], out var unit)
            && HeaderFinder.Fits(c.Column.Kind, unit!) ? c with { Unit = unit } : c)];
    }

    private static bool TryUnit(RawCell cell, out Unit? unit)
    {
        unit = null;
        return cell.Number is null && cell.Day is null && MeasureText.TryUnit(cell.Text.AsSpan().Trim().Trim("()[]"), out unit);
    }
}
