using System.Collections.Immutable;

namespace Slabwright.Sheets.Figures;

/// <summary>A corner of a contour ring.</summary>
/// <param name="Place">Where.</param>
/// <param name="IsBorder">True where the ring follows the field's border.</param>
internal readonly record struct ContourPoint(FigurePoint Place, bool IsBorder);

/// <summary>
/// The area of a rectangular grid where a value reaches a level, as closed rings (marching squares; a saddle is settled by the mean of its
/// corners). The grid is framed with points below every level, so that each ring closes along the border; points without a value count as
/// below.
/// </summary>
internal sealed class ContourRings(IReadOnlyList<double> xs, IReadOnlyList<double> ys, IReadOnlyList<double> values)
{
    private readonly int columns = xs.Count + 2;

    /// <summary>Rings around everything at or above a level; inner rings are holes.</summary>
    public List<ImmutableArray<ContourPoint>> Above(double level)
    {
        var next = new Dictionary<int, int>();
        for (var j = -1; j < ys.Count; j++)
        {
            for (var i = -1; i < xs.Count; i++) Cross(i, j, level, next);
        }

        var rings = new List<ImmutableArray<ContourPoint>>();
        while (next.Count > 0) rings.Add(Follow(next, level));
        return rings;
    }

    /// <summary>Joins where the level leaves the cell to where it enters it again, walking around its corners.</summary>
    private void Cross(int i, int j, double level, Dictionary<int, int> next)
    {
        Span<bool> above = [IsAbove(i, j, level), IsAbove(i + 1, j, level), IsAbove(i + 1, j + 1, level), IsAbove(i, j + 1, level)];
        Span<int> edges = [Edge(i, j, false), Edge(i + 1, j, true), Edge(i, j + 1, false), Edge(i, j, true)];
        var crossings = 0;
        for (var k = 0; k < 4; k++) crossings += above[k] != above[(k + 1) % 4] ? 1 : 0;
        if (crossings == 0) return;
        var isJoined = crossings == 4 && (Value(i, j) + Value(i + 1, j) + Value(i + 1, j + 1) + Value(i, j + 1)) / 4 >= level;
        for (var k = 0; k < 4; k++)
        {
            if (!above[k] || above[(k + 1) % 4]) continue;
            var step = isJoined ? 1 : -1;
            var enter = (k + step + 4) % 4;
            while (above[enter] || !above[(enter + 1) % 4]) enter = (enter + step + 4) % 4;
            next[edges[k]] = edges[enter];
        }
    }

    private ImmutableArray<ContourPoint> Follow(Dictionary<int, int> next, double level)
    {
        var ring = ImmutableArray.CreateBuilder<ContourPoint>();
        var edge = next.First().Key;
        while (next.Remove(edge, out var following))
        {
            ring.Add(PointOn(edge, level));
            edge = following;
        }

        return ring.ToImmutable();
    }

    private ContourPoint PointOn(int edge, double level)
    {
        var (node, isUpright) = (edge / 2, edge % 2 == 1);
        var (i, j) = (node % columns - 1, node / columns - 1);
        var (i2, j2) = isUpright ? (i, j + 1) : (i + 1, j);
        var (a, b) = (Value(i, j), Value(i2, j2));
        if (double.IsNegativeInfinity(a)) return new ContourPoint(Place(i2, j2), true);
        if (double.IsNegativeInfinity(b)) return new ContourPoint(Place(i, j), true);
        var share = (level - a) / (b - a);
        var (p, q) = (Place(i, j), Place(i2, j2));
        return new ContourPoint(new FigurePoint(p.X + (q.X - p.X) * share, p.Y + (q.Y - p.Y) * share), false);
    }

    private FigurePoint Place(int i, int j) => new(xs[Math.Clamp(i, 0, xs.Count - 1)], ys[Math.Clamp(j, 0, ys.Count - 1)]);

    private int Edge(int i, int j, bool isUpright) => ((j + 1) * columns + i + 1) * 2 + (isUpright ? 1 : 0);

    private bool IsAbove(int i, int j, double level) => Value(i, j) >= level;

    private double Value(int i, int j)
    {
        if (i < 0 || j < 0 || i >= xs.Count || j >= ys.Count) return double.NegativeInfinity;
        var value = values[j * xs.Count + i];
        return double.IsNaN(value) ? double.NegativeInfinity : value;
    }
}
