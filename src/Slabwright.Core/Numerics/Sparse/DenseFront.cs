using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Slabwright.Core.Numerics.Sparse;

/// <summary>
/// Partial Cholesky of a dense symmetric front: the first columns become columns of L, the rest the Schur complement. Row by row, lower
/// half; rows are <see cref="Stride"/> apart and what stands above the diagonal is scrap.
/// </summary>
internal static class DenseFront
{
    private const int Panel = 48;
    private static readonly int Lane = Vector<double>.Count;

    /// <summary>Distance of rows for a front of some size: a whole number of vector pairs.</summary>
    public static int Stride(int size) => (size + 2 * Lane - 1) / (2 * Lane) * (2 * Lane);

    /// <summary>Eliminates the first <paramref name="pivots"/> columns.</summary>
    /// <returns>−1, or the first column whose pivot is not positive.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static int Eliminate(Span<double> front, int size, int pivots, double[] scratch)
    {
        var stride = Stride(size);
        for (var start = 0; start < pivots; start += Panel)
        {
            var width = Math.Min(Panel, pivots - start);
            for (var j = start; j < start + width; j++)
            {
                var pivot = front[j * stride + j] - Dot(front, j * stride + start, j * stride + start, j - start);
                if (!(pivot > 0)) return j;
                var root = front[j * stride + j] = Math.Sqrt(pivot);
                for (var i = j + 1; i < start + width; i++)
                {
                    front[i * stride + j] = (front[i * stride + j] - Dot(front, i * stride + start, j * stride + start, j - start)) / root;
                }
            }

            SolvePanel(front, stride, size, start, width);
            Update(front, stride, size, start, width, scratch);
        }

        return -1;
    }

    /// <summary>Doubles of scratch <see cref="Eliminate"/> needs.</summary>
    public static int Scratch(int size) => Panel * Stride(size);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void SolvePanel(Span<double> front, int stride, int size, int start, int width)
    {
        for (var i = start + width; i < size; i++)
        {
            for (var j = start; j < start + width; j++)
            {
                front[i * stride + j] = (front[i * stride + j] - Dot(front, i * stride + start, j * stride + start, j - start)) / front[j * stride + j];
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double Dot(Span<double> front, int one, int two, int count)
    {
        var a = front.Slice(one, count);
        var b = front.Slice(two, count);
        var sum = 0.0;
        var n = 0;
        if (count >= Lane)
        {
            var total = Vector<double>.Zero;
            for (; n <= count - Lane; n += Lane) total += new Vector<double>(a[n..]) * new Vector<double>(b[n..]);
            sum = Vector.Sum(total);
        }

        for (; n < count; n++) sum += a[n] * b[n];
        return sum;
    }

    /// <summary>C −= L Lᵀ over the rows below the panel, four rows and two vectors at a time.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Update(Span<double> front, int stride, int size, int start, int width, double[] scratch)
    {
        var first = start + width;
        if (first >= size) return;
        var origin = first / (2 * Lane) * (2 * Lane);
        for (var k = 0; k < width; k++)
        {
            var row = scratch.AsSpan(k * stride, stride);
            row.Clear();
            for (var j = first; j < size; j++) row[j] = front[j * stride + start + k];
        }

        ref var c = ref MemoryMarshal.GetReference(front);
        ref var panel = ref MemoryMarshal.GetArrayDataReference(scratch);
        var i = first;
        for (; i + 3 < size; i += 4)
        {
            for (var j = origin; j <= i + 3; j += 2 * Lane) FourRows(ref c, ref panel, stride, i, j, start, width);
        }

        for (; i < size; i++)
        {
            for (var j = origin; j <= i; j += 2 * Lane) OneRow(ref c, ref panel, stride, i, j, start, width);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void FourRows(ref double c, ref double panel, int stride, int i, int j, int start, int width)
    {
        var (a0, a1, b0, b1) = (Vector<double>.Zero, Vector<double>.Zero, Vector<double>.Zero, Vector<double>.Zero);
        var (c0, c1, d0, d1) = (Vector<double>.Zero, Vector<double>.Zero, Vector<double>.Zero, Vector<double>.Zero);
        var row = (nuint)(i * stride + start);
        for (var k = 0; k < width; k++)
        {
            var p0 = Vector.LoadUnsafe(ref panel, (nuint)(k * stride + j));
            var p1 = Vector.LoadUnsafe(ref panel, (nuint)(k * stride + j + Lane));
            var la = new Vector<double>(At(ref c, row + (nuint)k));
            var lb = new Vector<double>(At(ref c, row + (nuint)(k + stride)));
            var lc = new Vector<double>(At(ref c, row + (nuint)(k + 2 * stride)));
            var ld = new Vector<double>(At(ref c, row + (nuint)(k + 3 * stride)));
            (a0, a1) = (Vector.FusedMultiplyAdd(la, p0, a0), Vector.FusedMultiplyAdd(la, p1, a1));
            (b0, b1) = (Vector.FusedMultiplyAdd(lb, p0, b0), Vector.FusedMultiplyAdd(lb, p1, b1));
            (c0, c1) = (Vector.FusedMultiplyAdd(lc, p0, c0), Vector.FusedMultiplyAdd(lc, p1, c1));
            (d0, d1) = (Vector.FusedMultiplyAdd(ld, p0, d0), Vector.FusedMultiplyAdd(ld, p1, d1));
        }

        Subtract(ref c, i * stride + j, a0, a1);
        Subtract(ref c, (i + 1) * stride + j, b0, b1);
        Subtract(ref c, (i + 2) * stride + j, c0, c1);
        Subtract(ref c, (i + 3) * stride + j, d0, d1);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void OneRow(ref double c, ref double panel, int stride, int i, int j, int start, int width)
    {
        var (a0, a1) = (Vector<double>.Zero, Vector<double>.Zero);
        for (var k = 0; k < width; k++)
        {
            var la = new Vector<double>(At(ref c, (nuint)(i * stride + start + k)));
            a0 = Vector.FusedMultiplyAdd(la, Vector.LoadUnsafe(ref panel, (nuint)(k * stride + j)), a0);
            a1 = Vector.FusedMultiplyAdd(la, Vector.LoadUnsafe(ref panel, (nuint)(k * stride + j + Lane)), a1);
        }

        Subtract(ref c, i * stride + j, a0, a1);
    }

    private static void Subtract(ref double c, int at, Vector<double> low, Vector<double> high)
    {
        (Vector.LoadUnsafe(ref c, (nuint)at) - low).StoreUnsafe(ref c, (nuint)at);
        (Vector.LoadUnsafe(ref c, (nuint)(at + Lane)) - high).StoreUnsafe(ref c, (nuint)(at + Lane));
    }

    private static double At(ref double from, nuint index) => System.Runtime.CompilerServices.Unsafe.Add(ref from, index);
}
