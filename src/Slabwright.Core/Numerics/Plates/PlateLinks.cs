using Slabwright.Core.Numerics.Sparse;

namespace Slabwright.Core.Numerics.Plates;

/// <summary>What ties panels to one another and to the ground, as blocks on the unknowns of a system.</summary>
public static class PlateLinks
{
    /// <summary>
    /// Springs along two sides that face one another: they resist a step in deflection and, if asked, a kink across the joint. The sides run
    /// the same way and need not share grid lines.
    /// </summary>
    /// <param name="one">First panel.</param> <param name="sideOne">Its side.</param>
    /// <param name="fromOne">Share of its side where the springs begin.</param> <param name="toOne">Share where they end.</param>
    /// <param name="two">Second panel.</param> <param name="sideTwo">Its side.</param>
    /// <param name="fromTwo">Share of its side where the springs begin.</param> <param name="toTwo">Share where they end.</param>
    /// <param name="shear">Stiffness against a step, N/m per metre.</param> <param name="bending">Stiffness against a kink, N·m per metre.</param>
    public static IEnumerable<ElementBlock> Line(
        PlatePanel one, PanelSide sideOne, double fromOne, double toOne,
        PlatePanel two, PanelSide sideTwo, double fromTwo, double toTwo, double shear, double bending = 0)
    {
        double OnTwo(double share) => fromTwo + (share - fromOne) / (toOne - fromOne) * (toTwo - fromTwo);
        double OnOne(double share) => fromOne + (share - fromTwo) / (toTwo - fromTwo) * (toOne - fromOne);
        var (start, end) = (one.SidePlace(sideOne, fromOne), one.SidePlace(sideOne, toOne));
        var length = Math.Sqrt(Math.Pow(end.X - start.X, 2) + Math.Pow(end.Y - start.Y, 2));
        var (normalX, normalY) = ((end.Y - start.Y) / length, -(end.X - start.X) / length);
        var breaks = one.SideLines(sideOne).Concat(two.SideLines(sideTwo).Select(OnOne))
            .Where(b => b > fromOne && b < toOne).Append(fromOne).Append(toOne).Order().ToArray();
        for (var n = 1; n < breaks.Length; n++)
        {
            var (from, to) = (breaks[n - 1], breaks[n]);
            if (to - from < 1e-9 * (toOne - fromOne)) continue;
            var stretch = length * (to - from) / (toOne - fromOne);
            var block = new Builder();
            for (var p = 0; p < 3; p++)
            {
                var share = from + (to - from) * (1 + Quadratic.Points[p]) / 2;
                var weight = stretch * Quadratic.Weights[p] / 2;
                var (a, b) = (one.SideAt(sideOne, share), two.SideAt(sideTwo, OnTwo(share)));
                block.AddSquare(weight * shear, [.. Terms(a, 1, 0, 0), .. Terms(b, -1, 0, 0)]);
                if (bending > 0) block.AddSquare(weight * bending, [.. Terms(a, 0, normalX, normalY), .. Terms(b, 0, -normalX, -normalY)]);
            }

            var place = one.SidePlace(sideOne, (from + to) / 2);
            yield return block.Block(place.X, place.Y);
        }
    }

    /// <summary>A stiffness between the generalised movements at several places: each row of movements is a sum over unknowns.</summary>
    /// <param name="movements">Each movement as unknowns and factors.</param>
    /// <param name="stiffness">Stiffness between the movements, row by row.</param>
    /// <param name="x">Place.</param> <param name="y">Place.</param>
    public static ElementBlock Between(IReadOnlyList<(int Unknown, double Factor)[]> movements, double[] stiffness, double x, double y)
    {
        var block = new Builder();
        for (var i = 0; i < movements.Count; i++)
        {
            for (var j = 0; j < movements.Count; j++) block.AddPair(stiffness[i * movements.Count + j], movements[i], movements[j]);
        }

        return block.Block(x, y);
    }

    /// <summary>A spring from one unknown to the ground.</summary>
    public static ElementBlock Ground(int unknown, double stiffness, double x, double y) => new([unknown], [stiffness], x, y);

    /// <summary>A spring between two unknowns.</summary>
    public static ElementBlock Spring(int one, int two, double stiffness, double x, double y) =>
        new([one, two], [stiffness, -stiffness, -stiffness, stiffness], x, y);

    /// <summary>Deflection at a place as unknowns and factors.</summary>
    public static (int Unknown, double Factor)[] Deflection(NodeWeights at) => [.. Terms(at, 1, 0, 0)];

    /// <summary>Slope along x at a place as unknowns and factors.</summary>
    public static (int Unknown, double Factor)[] SlopeAlong(NodeWeights at) => [.. Terms(at, 0, 1, 0)];

    private static IEnumerable<(int Unknown, double Factor)> Terms(NodeWeights at, double w, double x, double y)
    {
        for (var n = 0; n < at.Nodes.Length; n++)
        {
            if (w != 0) yield return (3 * at.Nodes[n], w * at.Weights[n]);
            if (x != 0) yield return (3 * at.Nodes[n] + 1, x * at.Weights[n]);
            if (y != 0) yield return (3 * at.Nodes[n] + 2, y * at.Weights[n]);
        }
    }

    private sealed class Builder
    {
        private readonly List<int> _unknowns = [];
        private readonly Dictionary<(int, int), double> _values = [];

        public void AddSquare(double factor, (int Unknown, double Factor)[] row) => AddPair(factor, row, row);

        public void AddPair(double factor, (int Unknown, double Factor)[] one, (int Unknown, double Factor)[] two)
        {
            foreach (var a in one)
            {
                foreach (var b in two)
                {
                    var key = (Place(a.Unknown), Place(b.Unknown));
                    _values[key] = _values.GetValueOrDefault(key) + factor * a.Factor * b.Factor;
                }
            }
        }

        public ElementBlock Block(double x, double y)
        {
            var size = _unknowns.Count;
            var values = new double[size * size];
            foreach (var ((i, j), value) in _values) values[i * size + j] = value;
            return new ElementBlock([.. _unknowns], values, x, y);
        }

        private int Place(int unknown)
        {
            var at = _unknowns.IndexOf(unknown);
            if (at >= 0) return at;
            _unknowns.Add(unknown);
            return _unknowns.Count - 1;
        }
    }
}
