namespace Slabwright.Core.Numerics.Heat;

/// <summary>Lengths of cells that grow away from a face where temperatures change fast.</summary>
public static class CellGrading
{
    /// <summary>Cells of a stretch that grow from its first end by a ratio, scaled to fill it exactly.</summary>
    /// <param name="length">Length to fill, m.</param> <param name="first">Length aimed at for the first cell, m.</param>
    /// <param name="growth">Each cell over the one before, 1 or more.</param>
    public static double[] From(double length, double first, double growth)
    {
        var cells = new List<double>();
        var sum = 0.0;
        for (var size = first; sum < length - 0.5 * size || cells.Count == 0; size *= growth)
        {
            cells.Add(size);
            sum += size;
        }

        return [.. cells.Select(c => c * length / sum)];
    }

    /// <summary>Cells of a stretch that grow from both ends to the middle.</summary>
    /// <param name="length">Length to fill, m.</param> <param name="first">Length aimed at for the end cells, m.</param>
    /// <param name="growth">Each cell over its outer neighbour, 1 or more.</param>
    public static double[] Both(double length, double first, double growth)
    {
        var half = From(length / 2, first, growth);
        return [.. half, .. half.Reverse()];
    }

    /// <summary>Middles of cells laid end to end.</summary>
    /// <param name="cells">Lengths, m.</param> <param name="start">Where the first begins, m.</param>
    public static double[] Middles(IReadOnlyList<double> cells, double start = 0)
    {
        var middles = new double[cells.Count];
        for (var i = 0; i < middles.Length; i++)
        {
            middles[i] = start + cells[i] / 2;
            start += cells[i];
        }

        return middles;
    }
}
