using Slabwright.Core.Numerics.Plates;
using Slabwright.Core.Numerics.Sparse;

namespace Slabwright.Tests.Numerics.Plates;

/// <summary>
/// Patch test of constant moment on the distorted patch of MacNeal and Harder, Finite Elements in Analysis and Design 1, 1985 (from
/// memory): plate 0.24 × 0.12, t 0.001, E 1e6, ν 0.25, rim moved by w = 1e-3 (x² + xy + y²)/2.
/// </summary>
public sealed class PatchTests
{
    private static readonly (double X, double Y)[] Corners =
        [(0, 0), (0.24, 0), (0.24, 0.12), (0, 0.12), (0.04, 0.02), (0.18, 0.03), (0.16, 0.08), (0.08, 0.08)];

    private static readonly int[][] Quads = [[0, 1, 5, 4], [5, 1, 2, 6], [7, 6, 2, 3], [0, 4, 7, 3], [4, 5, 6, 7]];

    [Theory]
    [InlineData(0.001)]
    [InlineData(0.02)]
    public void Constant_moment_is_exact_on_distorted_elements(double thickness)
    {
        var section = new PlateSection(1e6, 0.25, thickness);
        var places = new List<(double X, double Y)>();
        int Node((double X, double Y) p)
        {
            var found = places.FindIndex(q => Math.Abs(q.X - p.X) + Math.Abs(q.Y - p.Y) < 1e-9);
            if (found < 0) places.Add(p);
            return found < 0 ? places.Count - 1 : found;
        }

        var quads = Quads.Select(q => q.Select(c => Corners[c]).ToArray())
            .Select(c => new Quad(c[0].X, c[0].Y, c[1].X, c[1].Y, c[2].X, c[2].Y, c[3].X, c[3].Y)).ToArray();
        var nodes = quads.Select(q => Enumerable.Range(0, 9).Select(n => Node(q.At(n % 3 - 1, n / 3 - 1))).ToArray()).ToArray();
        var exact = places.SelectMany(p => (double[])[1e-3 * (p.X * p.X + p.X * p.Y + p.Y * p.Y) / 2, 1e-3 * (p.X + p.Y / 2), 1e-3 * (p.Y + p.X / 2)]).ToArray();
        var free = new int[exact.Length];
        var count = 0;
        for (var u = 0; u < free.Length; u++)
        {
            var (x, y) = places[u / 3];
            free[u] = x < 1e-9 || y < 1e-9 || x > 0.24 - 1e-9 || y > 0.12 - 1e-9 ? -1 : count++;
        }

        var right = new double[count];
        var blocks = new List<ElementBlock>();
        for (var e = 0; e < quads.Length; e++)
        {
            var stiffness = PlateElement.Stiffness(quads[e], section);
            var unknowns = nodes[e].SelectMany(n => (int[])[3 * n, 3 * n + 1, 3 * n + 2]).ToArray();
            for (var i = 0; i < 27; i++)
            {
                for (var j = 0; j < 27; j++)
                {
                    if (free[unknowns[i]] >= 0 && free[unknowns[j]] < 0) right[free[unknowns[i]]] -= stiffness[27 * i + j] * exact[unknowns[j]];
                }
            }

            var (cx, cy) = quads[e].At(0, 0);
            blocks.Add(new ElementBlock([.. unknowns.Select(u => free[u])], stiffness, cx, cy));
        }

        var factor = FrontalFactor.Try(new DissectionTree(blocks, count), blocks, out _)!;
        factor.Solve(right);
        for (var u = 0; u < exact.Length; u++)
        {
            if (free[u] >= 0) Assert.Equal(exact[u], right[free[u]], 1e-9 * 1e-3);
        }

        var rows = new double[3 * 27];
        for (var e = 0; e < quads.Length; e++)
        {
            PlateElement.Curvature(quads[e], 0.3, -0.4, rows);
            double Row(int r) => Enumerable.Range(0, 27).Sum(u =>
                rows[27 * r + u] * (free[3 * nodes[e][u / 3] + u % 3] is var f and >= 0 ? right[f] : exact[3 * nodes[e][u / 3] + u % 3]));
            Assert.Equal(1.111e-7 * Math.Pow(thickness / 0.001, 3), section.Bending * (Row(0) + 0.25 * Row(1)), 0.001e-7 * Math.Pow(thickness / 0.001, 3));
            Assert.Equal(3.333e-8 * Math.Pow(thickness / 0.001, 3), section.Bending * 0.375 * Row(2), 0.001e-8 * Math.Pow(thickness / 0.001, 3));
        }
    }
}
