namespace Slabwright.Core.Numerics.Plates;

/// <summary>A place where a grid should be fine.</summary>
/// <param name="From">Where the fine stretch begins.</param>
/// <param name="To">Where it ends; the same as <paramref name="From"/> for a single place.</param>
/// <param name="Size">Element size there.</param>
public readonly record struct FineStretch(double From, double To, double Size)
{
    /// <summary>Distance of a place from the stretch; 0 inside.</summary>
    public double Distance(double at) => at < From ? From - at : at > To ? at - To : 0;
}

/// <summary>Grid lines that stand close where asked and open out steadily.</summary>
public static class GradedLines
{
    /// <summary>Lines from one end to the other, both included.</summary>
    /// <param name="from">First line.</param> <param name="to">Last line; greater.</param>
    /// <param name="most">Largest element size.</param>
    /// <param name="growth">How much the size grows for each unit of distance from a fine stretch, e.g. 0.3.</param>
    /// <param name="fine">Where to be fine; may be empty.</param>
    /// <param name="least">Least number of elements.</param>
    public static double[] Between(double from, double to, double most, double growth, IReadOnlyList<FineStretch> fine, int least = 2)
    {
        const int Steps = 2000;
        var count = new double[Steps + 1];
        var step = (to - from) / Steps;
        for (var n = 0; n < Steps; n++)
        {
            var at = from + (n + 0.5) * step;
            var size = most;
            foreach (var stretch in fine) size = Math.Min(size, stretch.Size + growth * stretch.Distance(at));
            count[n + 1] = count[n] + step / size;
        }

        var elements = Math.Max(least, (int)Math.Ceiling(count[Steps] - 1e-9));
        var lines = new double[elements + 1];
        var cell = 0;
        for (var e = 1; e < elements; e++)
        {
            var target = count[Steps] * e / elements;
            while (count[cell + 1] < target) cell++;
            lines[e] = from + step * (cell + (target - count[cell]) / (count[cell + 1] - count[cell]));
        }

        (lines[0], lines[elements]) = (from, to);
        return lines;
    }
}
