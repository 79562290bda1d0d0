using System.Buffers;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace Slabwright.Core.Numerics.Sparse;

/// <summary>
/// Cholesky factor of a sum of blocks, by fronts: made once, solved for many right-hand sides.
/// </summary>
/// <remarks>Multifrontal method: Duff and Reid, ACM Transactions on Mathematical Software 9, 1983.</remarks>
public sealed class FrontalFactor
{
    private readonly DissectionTree _tree;
    private readonly double[][] _columns;

    private FrontalFactor(DissectionTree tree, double[][] columns) => (_tree, _columns) = (tree, columns);

    /// <summary>Factors the sum of the blocks.</summary>
    /// <param name="tree">Order of elimination, built from blocks with the same unknowns.</param>
    /// <param name="blocks">The blocks, in the order the tree was built from.</param>
    /// <param name="loose">The unknown that nothing holds, where the matrix is not positive definite; −1 otherwise.</param>
    /// <returns>The factor, or null where the matrix is not positive definite.</returns>
    public static FrontalFactor? Try(DissectionTree tree, IReadOnlyList<ElementBlock> blocks, out int loose)
    {
        var columns = new double[tree.Fronts.Count][];
        var pending = new double[]?[tree.Fronts.Count];
        var place = new int[tree.Unknowns];
        var scratch = new double[DenseFront.Scratch(tree.LargestFront)];
        loose = -1;
        for (var f = 0; f < tree.Fronts.Count; f++)
        {
            var front = tree.Fronts[f];
            var size = front.Unknowns.Length;
            var stride = DenseFront.Stride(size);
            for (var n = 0; n < size; n++) place[front.Unknowns[n]] = n;
            var dense = ArrayPool<double>.Shared.Rent(size * stride);
            Array.Clear(dense, 0, size * stride);
            for (var b = 0; b < front.BlockCount; b++) Add(dense, stride, blocks[tree.BlockOrder[front.FirstBlock + b]], place);
            foreach (var child in (int[])[front.Left, front.Right])
            {
                if (child >= 0) Extend(dense, stride, tree.Fronts[child], ref pending[child], place);
            }

            var bad = DenseFront.Eliminate(dense.AsSpan(0, size * stride), size, front.Eliminated, scratch);
            if (bad >= 0)
            {
                loose = front.Unknowns[bad];
                return null;
            }

            columns[f] = Keep(dense, stride, size, front.Eliminated);
            pending[f] = dense;
        }

        ArrayPool<double>.Shared.Return(pending[^1]!);
        return new FrontalFactor(tree, columns);
    }

    /// <summary>Solves for several right-hand sides at once, in place.</summary>
    /// <param name="values">Right-hand sides, unknown by unknown: <paramref name="count"/> values of the first unknown, then of the second.</param>
    /// <param name="count">Number of right-hand sides.</param>
    public void Solve(Span<double> values, int count = 1)
    {
        var rented = ArrayPool<double>.Shared.Rent(_tree.LargestFront * count);
        for (var f = 0; f < _columns.Length; f++)
        {
            var local = Gather(_tree.Fronts[f], values, count, rented);
            if (count == 1) Forward(_tree.Fronts[f].Eliminated, _columns[f], local);
            else Forward(_tree.Fronts[f].Eliminated, _columns[f], local, count);
            Scatter(_tree.Fronts[f], values, count, local, _tree.Fronts[f].Unknowns.Length);
        }

        for (var f = _columns.Length - 1; f >= 0; f--)
        {
            var local = Gather(_tree.Fronts[f], values, count, rented);
            Backward(_tree.Fronts[f].Eliminated, _columns[f], local, count);
            Scatter(_tree.Fronts[f], values, count, local, _tree.Fronts[f].Eliminated);
        }

        ArrayPool<double>.Shared.Return(rented);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Add(double[] dense, int stride, ElementBlock block, int[] place)
    {
        var unknowns = block.Unknowns;
        for (var i = 0; i < unknowns.Length; i++)
        {
            if (unknowns[i] < 0) continue;
            var row = place[unknowns[i]];
            for (var j = 0; j < unknowns.Length; j++)
            {
                if (unknowns[j] < 0) continue;
                var column = place[unknowns[j]];
                if (column <= row) dense[row * stride + column] += block.Values[i * unknowns.Length + j];
            }
        }
    }

    /// <summary>Adds what a child left behind; both lists are in the order of elimination, so that lower stays lower.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Extend(double[] dense, int stride, Front child, ref double[]? pending, int[] place)
    {
        var source = pending!;
        var (size, from) = (child.Unknowns.Length, DenseFront.Stride(child.Unknowns.Length));
        for (var i = child.Eliminated; i < size; i++)
        {
            var row = place[child.Unknowns[i]] * stride;
            for (var j = child.Eliminated; j <= i; j++) dense[row + place[child.Unknowns[j]]] += source[i * from + j];
        }

        ArrayPool<double>.Shared.Return(source);
        pending = null;
    }

    private static double[] Keep(double[] dense, int stride, int size, int eliminated)
    {
        var kept = new double[size * eliminated];
        for (var i = 0; i < size; i++) Array.Copy(dense, i * stride, kept, i * eliminated, eliminated);
        return kept;
    }

    private static Span<double> Gather(Front front, Span<double> values, int count, double[] rented)
    {
        var local = rented.AsSpan(0, front.Unknowns.Length * count);
        for (var i = 0; i < front.Unknowns.Length; i++) values.Slice(front.Unknowns[i] * count, count).CopyTo(local[(i * count)..]);
        return local;
    }

    private static void Scatter(Front front, Span<double> values, int count, Span<double> local, int rows)
    {
        for (var i = 0; i < rows; i++) local.Slice(i * count, count).CopyTo(values[(front.Unknowns[i] * count)..]);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Forward(int pivots, double[] column, Span<double> local)
    {
        for (var i = 0; i < local.Length; i++)
        {
            var known = Math.Min(i, pivots);
            var rest = local[i] - Dot(column.AsSpan(i * pivots, known), local[..known]);
            local[i] = i < pivots ? rest / column[i * pivots + i] : rest;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Forward(int pivots, double[] column, Span<double> local, int count)
    {
        for (var i = 0; i < local.Length / count; i++)
        {
            var target = local.Slice(i * count, count);
            for (var k = 0; k < Math.Min(i, pivots); k++) AddTimes(target, local.Slice(k * count, count), -column[i * pivots + k]);
            if (i < pivots) Scale(target, 1 / column[i * pivots + i]);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Backward(int pivots, double[] column, Span<double> local, int count)
    {
        for (var i = local.Length / count - 1; i >= 0; i--)
        {
            var row = column.AsSpan(i * pivots, Math.Min(i + 1, pivots));
            if (i < pivots) Scale(local.Slice(i * count, count), 1 / row[i]);
            var known = Math.Min(i, pivots);
            if (count == 1) AddTimes(local[..known], row[..known], -local[i]);
            else
            {
                for (var k = 0; k < known; k++) AddTimes(local.Slice(k * count, count), local.Slice(i * count, count), -row[k]);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double Dot(ReadOnlySpan<double> one, ReadOnlySpan<double> two)
    {
        var total = Vector<double>.Zero;
        var n = 0;
        for (; n <= one.Length - Vector<double>.Count; n += Vector<double>.Count) total += new Vector<double>(one[n..]) * new Vector<double>(two[n..]);
        var sum = Vector.Sum(total);
        for (; n < one.Length; n++) sum += one[n] * two[n];
        return sum;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void AddTimes(Span<double> target, ReadOnlySpan<double> source, double factor)
    {
        var n = 0;
        for (; n <= target.Length - Vector<double>.Count; n += Vector<double>.Count)
        {
            (new Vector<double>(target[n..]) + factor * new Vector<double>(source[n..])).CopyTo(target[n..]);
        }

        for (; n < target.Length; n++) target[n] += factor * source[n];
    }

    private static void Scale(Span<double> values, double factor)
    {
        for (var n = 0; n < values.Length; n++) values[n] *= factor;
    }
}
