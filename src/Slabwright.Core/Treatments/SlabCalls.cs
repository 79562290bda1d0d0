namespace Slabwright.Core.Treatments;

/// <summary>Full-depth calls slab by slab, and rows of neighbouring slabs that have any.</summary>
internal sealed class SlabCalls
{
    private readonly Dictionary<(int Lane, int Slab), int> _calls = [];
    private readonly Dictionary<(int Lane, int Slab), int> _rows = [];

    private SlabCalls(IEnumerable<(int Lane, int Slab)> calls)
    {
        foreach (var slab in calls) _calls[slab] = _calls.GetValueOrDefault(slab) + 1;
        var row = new List<(int Lane, int Slab)>();
        foreach (var slab in _calls.Keys.Order())
        {
            if (row.Count > 0 && slab != (row[^1].Lane, row[^1].Slab + 1)) Close(row);
            row.Add(slab);
        }

        Close(row);
    }

    /// <summary>Counts the distresses whose treatment is full-depth repair or more.</summary>
    public static SlabCalls Of(IEnumerable<FirstCall> calls, Func<FirstCall, Treatment> treatmentOf) => new(calls
        .Where(c => treatmentOf(c) >= Treatment.FullDepthRepair)
        .Select(c => (c.Facts.Slab.Lane, c.Facts.Slab.Number)));

    /// <summary>Full-depth calls in a slab.</summary>
    public int In(int lane, int slab) => _calls.GetValueOrDefault((lane, slab));

    /// <summary>Slabs with full-depth calls in a row, this one included.</summary>
    public int RowOf(int lane, int slab) => _rows.GetValueOrDefault((lane, slab));

    private void Close(List<(int Lane, int Slab)> row)
    {
        foreach (var slab in row) _rows[slab] = row.Count;
        row.Clear();
    }
}
