namespace Slabwright.Core.Numerics.Plates;

/// <summary>The part two convex polygons share.</summary>
/// <remarks>Sutherland and Hodgman, Communications of the ACM 17, 1974.</remarks>
internal static class ConvexClip
{
    /// <summary>The common polygon; fewer than three corners where they do not overlap.</summary>
    /// <param name="polygon">Any convex polygon.</param> <param name="window">Convex, going round from x to y.</param>
    public static List<(double X, double Y)> Of(IReadOnlyList<(double X, double Y)> polygon, IReadOnlyList<(double X, double Y)> window)
    {
        var kept = new List<(double X, double Y)>(polygon);
        for (var n = 0; n < window.Count && kept.Count > 0; n++)
        {
            var (a, b) = (window[n], window[(n + 1) % window.Count]);
            var cut = new List<(double X, double Y)>(kept.Count + 1);
            for (var m = 0; m < kept.Count; m++)
            {
                var (p, q) = (kept[m], kept[(m + 1) % kept.Count]);
                var (one, two) = (Side(a, b, p), Side(a, b, q));
                if (one >= 0) cut.Add(p);
                if (one > 0 && two < 0 || one < 0 && two > 0)
                {
                    var t = one / (one - two);
                    cut.Add((p.X + t * (q.X - p.X), p.Y + t * (q.Y - p.Y)));
                }
            }

            kept = cut;
        }

        return kept;
    }

    private static double Side((double X, double Y) a, (double X, double Y) b, (double X, double Y) p) =>
        (b.X - a.X) * (p.Y - a.Y) - (b.Y - a.Y) * (p.X - a.X);
}
