namespace Slabwright.Core.Numerics.Sparse;

/// <summary>One front: the unknowns eliminated here and those they leave behind for a front further up.</summary>
/// <param name="Left">Index of the left child, −1 for a leaf.</param>
/// <param name="Right">Index of the right child, −1 for a leaf.</param>
/// <param name="FirstBlock">For a leaf, the first of its blocks in <see cref="DissectionTree.BlockOrder"/>.</param>
/// <param name="BlockCount">For a leaf, the number of its blocks.</param>
internal sealed record Front(int Left, int Right, int FirstBlock, int BlockCount)
{
    /// <summary>Number of unknowns eliminated: the first of <see cref="Unknowns"/>.</summary>
    public int Eliminated { get; set; }

    /// <summary>All unknowns of the front in the order of elimination.</summary>
    public int[] Unknowns { get; set; } = [];

    /// <summary>First and last leaf under it.</summary>
    public (int First, int Last) Leaves { get; set; }
}

/// <summary>
/// Order of elimination by nested dissection of the plane: blocks are halved across their longer extent again and again; an unknown is
/// eliminated at the smallest part that holds all its blocks. Children stand before their parents.
/// </summary>
/// <remarks>Nested dissection: George, SIAM Journal on Numerical Analysis 10, 1973; here by the places of the elements.</remarks>
public sealed class DissectionTree
{
    private const int LeafBlocks = 4;

    private readonly IReadOnlyList<ElementBlock> _blocks;
    private readonly List<Front> _fronts = [];
    private readonly int[] _order;
    private int _leaves;

    /// <summary>Builds the tree.</summary>
    /// <param name="blocks">The blocks; only their unknowns and places are looked at.</param>
    /// <param name="unknowns">Number of unknowns; each must appear in some block.</param>
    /// <exception cref="ArgumentException">An unknown appears in no block.</exception>
    public DissectionTree(IReadOnlyList<ElementBlock> blocks, int unknowns)
    {
        _blocks = blocks;
        Unknowns = unknowns;
        _order = [.. Enumerable.Range(0, blocks.Count)];
        Split(0, blocks.Count);
        Assign();
    }

    /// <summary>Number of unknowns.</summary>
    public int Unknowns { get; }

    /// <summary>Entries of the factor.</summary>
    public long FactorEntries => _fronts.Sum(f => (long)f.Eliminated * (f.Unknowns.Length - f.Eliminated) + (long)f.Eliminated * (f.Eliminated + 1) / 2);

    /// <summary>Rows of the largest front.</summary>
    public int LargestFront => _fronts.Max(f => f.Unknowns.Length);

    internal IReadOnlyList<Front> Fronts => _fronts;

    internal int[] BlockOrder => _order;

    private int Split(int first, int count)
    {
        if (count <= LeafBlocks)
        {
            _fronts.Add(new Front(-1, -1, first, count) { Leaves = (_leaves, _leaves) });
            _leaves++;
            return _fronts.Count - 1;
        }

        var middle = Middle(first, count);
        var left = Split(first, middle - first);
        var right = Split(middle, first + count - middle);
        _fronts.Add(new Front(left, right, 0, 0) { Leaves = (_fronts[left].Leaves.First, _fronts[right].Leaves.Last) });
        return _fronts.Count - 1;
    }

    /// <summary>Sorts the part along its longer extent and cuts it at the step between two places nearest to the middle.</summary>
    private int Middle(int first, int count)
    {
        var part = _order.AsSpan(first, count);
        var (left, right, low, high) = (double.MaxValue, double.MinValue, double.MaxValue, double.MinValue);
        foreach (var n in part)
        {
            (left, right) = (Math.Min(left, _blocks[n].X), Math.Max(right, _blocks[n].X));
            (low, high) = (Math.Min(low, _blocks[n].Y), Math.Max(high, _blocks[n].Y));
        }

        var along = right - left >= high - low;
        var keys = new (double Main, double Cross)[count];
        for (var i = 0; i < count; i++)
        {
            var block = _blocks[part[i]];
            keys[i] = along ? (block.X, block.Y) : (block.Y, block.X);
        }

        MemoryExtensions.Sort(keys.AsSpan(), part);
        var same = 1e-9 * Math.Max(right - left, high - low);
        for (var step = 0; step < count / 4; step++)
        {
            foreach (var at in (int[])[count / 2 - step, count / 2 + step])
            {
                if (at > 0 && at < count && keys[at].Main - keys[at - 1].Main > same) return first + at;
            }
        }

        return first + count / 2;
    }

    private void Assign()
    {
        var (home, number) = Homes();
        for (var f = 0; f < _fronts.Count; f++)
        {
            var front = _fronts[f];
            var all = front.Left >= 0
                ? _fronts[front.Left].Unknowns.Skip(_fronts[front.Left].Eliminated).Concat(_fronts[front.Right].Unknowns.Skip(_fronts[front.Right].Eliminated))
                : Enumerable.Range(front.FirstBlock, front.BlockCount).SelectMany(b => _blocks[_order[b]].Unknowns).Where(u => u >= 0);
            var sorted = all.Distinct().ToArray();
            Array.Sort(sorted, (a, b) => number[a].CompareTo(number[b]));
            front.Unknowns = sorted;
            while (front.Eliminated < sorted.Length && home[sorted[front.Eliminated]] == f) front.Eliminated++;
        }
    }

    /// <summary>The front each unknown is eliminated at, and its number in the order of elimination.</summary>
    private (int[] Home, int[] Number) Homes()
    {
        var (first, last) = (new int[Unknowns], new int[Unknowns]);
        Array.Fill(first, int.MaxValue);
        Array.Fill(last, -1);
        foreach (var leaf in _fronts.Where(f => f.Left < 0))
        {
            for (var b = leaf.FirstBlock; b < leaf.FirstBlock + leaf.BlockCount; b++)
            {
                foreach (var u in _blocks[_order[b]].Unknowns)
                {
                    if (u < 0) continue;
                    first[u] = Math.Min(first[u], leaf.Leaves.First);
                    last[u] = Math.Max(last[u], leaf.Leaves.First);
                }
            }
        }

        var home = new int[Unknowns];
        for (var u = 0; u < Unknowns; u++)
        {
            if (last[u] < 0) throw new ArgumentException($"Unknown {u} appears in no block.");
            var f = _fronts.Count - 1;
            while (_fronts[f].Left is var left and >= 0)
            {
                if (last[u] <= _fronts[left].Leaves.Last) f = left;
                else if (first[u] >= _fronts[_fronts[f].Right].Leaves.First) f = _fronts[f].Right;
                else break;
            }

            home[u] = f;
        }

        var number = new int[Unknowns];
        var order = Enumerable.Range(0, Unknowns).OrderBy(u => home[u]).ThenBy(u => u).ToArray();
        for (var n = 0; n < order.Length; n++) number[order[n]] = n;
        return (home, number);
    }
}
