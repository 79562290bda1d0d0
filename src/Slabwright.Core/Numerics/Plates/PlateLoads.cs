namespace Slabwright.Core.Numerics.Plates;

/// <summary>Loads on a plate system as forces on its unknowns, each shared out by the shape functions. N, N·m.</summary>
public static class PlateLoads
{
    /// <summary>Points and weights of a triangle, exact to the fifth degree.</summary>
    /// <remarks>Radon 1948 / Hammer, Marlowe and Stroud, Mathematical Tables and Other Aids to Computation 10, 1956 (from memory).</remarks>
    private static readonly (double A, double B, double Weight)[] Triangle = TrianglePoints();

    /// <summary>A uniform pressure on a rectangle with sides along x and y; what falls off the panel is not applied.</summary>
    /// <param name="loads">Forces to add to, three a node.</param> <param name="panel">The panel.</param>
    /// <param name="left">Least x, m.</param> <param name="low">Least y, m.</param> <param name="right">Greatest x, m.</param>
    /// <param name="high">Greatest y, m.</param> <param name="pressure">Pa, down.</param>
    /// <returns>The force applied, N.</returns>
    public static double AddPatch(double[] loads, PlatePanel panel, double left, double low, double right, double high, double pressure) =>
        AddPolygon(loads, panel, [(left, low), (right, low), (right, high), (left, high)], pressure);

    /// <summary>A uniform pressure on a convex polygon; what falls off the panel is not applied.</summary>
    /// <param name="loads">Forces to add to, three a node.</param> <param name="panel">The panel.</param>
    /// <param name="polygon">Corners, m.</param> <param name="pressure">Pa, down.</param>
    /// <returns>The force applied, N.</returns>
    public static double AddPolygon(double[] loads, PlatePanel panel, IReadOnlyList<(double X, double Y)> polygon, double pressure)
    {
        var (left, right) = (polygon.Min(p => p.X), polygon.Max(p => p.X));
        var (low, high) = (polygon.Min(p => p.Y), polygon.Max(p => p.Y));
        var applied = 0.0;
        for (var e = 0; e < panel.Elements; e++)
        {
            var quad = panel.ElementQuad(e);
            if (Math.Max(Math.Max(quad.X0, quad.X1), Math.Max(quad.X2, quad.X3)) <= left
                || Math.Min(Math.Min(quad.X0, quad.X1), Math.Min(quad.X2, quad.X3)) >= right
                || Math.Max(Math.Max(quad.Y0, quad.Y1), Math.Max(quad.Y2, quad.Y3)) <= low
                || Math.Min(Math.Min(quad.Y0, quad.Y1), Math.Min(quad.Y2, quad.Y3)) >= high) continue;
            var common = ConvexClip.Of(polygon, [(quad.X0, quad.Y0), (quad.X1, quad.Y1), (quad.X2, quad.Y2), (quad.X3, quad.Y3)]);
            if (common.Count >= 3) applied += AddPart(loads, quad, panel.ElementNodes(e), common, pressure);
        }

        return applied;
    }

    /// <summary>A uniform pressure on a whole panel, e.g. its own weight.</summary>
    /// <returns>The force applied, N.</returns>
    public static double AddUniform(double[] loads, PlatePanel panel, double pressure)
    {
        Span<double> shape = stackalloc double[PlateElement.Nodes];
        var applied = 0.0;
        for (var e = 0; e < panel.Elements; e++)
        {
            var (quad, nodes) = (panel.ElementQuad(e), panel.ElementNodes(e));
            for (var i = 0; i < 3; i++)
            {
                for (var j = 0; j < 3; j++)
                {
                    var (r, s) = (Quadratic.Points[i], Quadratic.Points[j]);
                    var force = pressure * quad.Jacobian(r, s).Determinant * Quadratic.Weights[i] * Quadratic.Weights[j];
                    PlateElement.Shape(r, s, shape);
                    for (var n = 0; n < nodes.Length; n++) loads[3 * nodes[n]] += force * shape[n];
                    applied += force;
                }
            }
        }

        return applied;
    }

    /// <summary>A force at a point.</summary>
    public static void AddPoint(double[] loads, PlatePanel panel, double x, double y, double force)
    {
        var (nodes, weights) = panel.WeightsAt(x, y);
        for (var n = 0; n < nodes.Length; n++) loads[3 * nodes[n]] += force * weights[n];
    }

    /// <summary>
    /// The forces that bend a free panel to a curvature, both ways alike: a linear temperature difference gives α ΔT/h with the top warmer
    /// by ΔT.
    /// </summary>
    public static void AddCurvature(double[] loads, PlatePanel panel, double curvature)
    {
        var moment = panel.Section.Bending * (1 + panel.Section.Poisson) * curvature;
        Span<double> rows = stackalloc double[3 * PlateElement.Unknowns];
        for (var e = 0; e < panel.Elements; e++)
        {
            var (quad, nodes) = (panel.ElementQuad(e), panel.ElementNodes(e));
            for (var i = 0; i < 3; i++)
            {
                for (var j = 0; j < 3; j++)
                {
                    var (r, s) = (Quadratic.Points[i], Quadratic.Points[j]);
                    var weight = moment * quad.Jacobian(r, s).Determinant * Quadratic.Weights[i] * Quadratic.Weights[j];
                    PlateElement.Curvature(quad, r, s, rows);
                    for (var u = 0; u < PlateElement.Unknowns; u++)
                    {
                        loads[3 * nodes[u / 3] + u % 3] += weight * (rows[u] + rows[PlateElement.Unknowns + u]);
                    }
                }
            }
        }
    }

    private static double AddPart(double[] loads, in Quad quad, int[] nodes, List<(double X, double Y)> polygon, double pressure)
    {
        Span<double> shape = stackalloc double[PlateElement.Nodes];
        var applied = 0.0;
        for (var t = 2; t < polygon.Count; t++)
        {
            var (a, b, c) = (polygon[0], polygon[t - 1], polygon[t]);
            var area = Math.Abs((b.X - a.X) * (c.Y - a.Y) - (c.X - a.X) * (b.Y - a.Y)) / 2;
            foreach (var (one, two, weight) in Triangle)
            {
                var three = 1 - one - two;
                var (r, s) = quad.Find(one * a.X + two * b.X + three * c.X, one * a.Y + two * b.Y + three * c.Y);
                PlateElement.Shape(r, s, shape);
                var force = pressure * area * weight;
                for (var n = 0; n < nodes.Length; n++) loads[3 * nodes[n]] += force * shape[n];
                applied += force;
            }
        }

        return applied;
    }

    private static (double, double, double)[] TrianglePoints()
    {
        var root = Math.Sqrt(15);
        var (a, b) = ((6 - root) / 21, (6 + root) / 21);
        var (one, two) = ((155 - root) / 1200, (155 + root) / 1200);
        return
        [
            (1.0 / 3, 1.0 / 3, 0.225),
            (a, a, one), (1 - 2 * a, a, one), (a, 1 - 2 * a, one),
            (b, b, two), (1 - 2 * b, b, two), (b, 1 - 2 * b, two),
        ];
    }
}
