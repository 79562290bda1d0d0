namespace Slabwright.Core.Numerics.Plates;

/// <summary>
/// Bending moments of a panel at its nodes: worked out at the two-by-two points of each element, where they are best, and carried to the
/// nodes along the grid by the cubic through the four nearest points.
/// </summary>
public sealed class MomentField
{
    private readonly PlatePanel _panel;
    private readonly int _firstNode;
    private readonly int _nodes;

    /// <summary>Works the moments out.</summary>
    /// <param name="panel">The panel.</param> <param name="movements">Movements of the whole system.</param>
    /// <param name="curvature">Curvature the panel would take freely, 1/m: α ΔT/h with the top warmer by ΔT.</param>
    public MomentField(PlatePanel panel, double[] movements, double curvature = 0)
        : this(panel, movements, curvature, 0, panel.ElementsAlong) { }

    /// <summary>Works the moments out over some columns of elements only; the other nodes keep nought.</summary>
    /// <param name="panel">The panel.</param> <param name="movements">Movements of the whole system.</param>
    /// <param name="curvature">Curvature the panel would take freely, 1/m.</param>
    /// <param name="firstColumn">First column of elements.</param> <param name="columns">Number of columns.</param>
    public MomentField(PlatePanel panel, double[] movements, double curvature, int firstColumn, int columns)
    {
        _panel = panel;
        (_firstNode, _nodes) = (2 * firstColumn, 2 * columns + 1);
        var (along, across) = (2 * columns, 2 * panel.ElementsAcross);
        var points = new PlateMoment[along * across];
        for (var j = 0; j < across; j++)
        {
            for (var i = 0; i < along; i++)
            {
                var element = j / 2 * panel.ElementsAlong + firstColumn + i / 2;
                points[j * along + i] = At(element, (2 * (i % 2) - 1) * Quadratic.Half, (2 * (j % 2) - 1) * Quadratic.Half, movements, curvature);
            }
        }

        var carryAlong = Carry([.. panel.SideLines(PanelSide.Left).Skip(firstColumn).Take(columns + 1)]);
        var carryAcross = Carry(panel.SideLines(PanelSide.Start));
        var rows = new PlateMoment[_nodes * across];
        for (var j = 0; j < across; j++)
        {
            for (var i = 0; i < _nodes; i++) rows[j * _nodes + i] = carryAlong[i].Of(points, j * along, 1);
        }

        Nodes = new PlateMoment[panel.NodeCount];
        for (var j = 0; j < panel.NodesAcross; j++)
        {
            for (var i = 0; i < _nodes; i++) Nodes[j * panel.NodesAlong + _firstNode + i] = carryAcross[j].Of(rows, i, _nodes);
        }
    }

    /// <summary>Moments at the panel's nodes, by number within the panel; N·m/m.</summary>
    public PlateMoment[] Nodes { get; }

    /// <summary>The moments of the columns worked out.</summary>
    public IEnumerable<PlateMoment> Known
    {
        get
        {
            for (var j = 0; j < _panel.NodesAcross; j++)
            {
                for (var i = 0; i < _nodes; i++) yield return Nodes[j * _panel.NodesAlong + _firstNode + i];
            }
        }
    }

    /// <summary>Moment at a place of the panel.</summary>
    public PlateMoment At(double x, double y)
    {
        var (nodes, weights) = _panel.WeightsAt(x, y);
        var sum = default(PlateMoment);
        for (var n = 0; n < nodes.Length; n++) sum += Nodes[nodes[n] - _panel.FirstNode] * weights[n];
        return sum;
    }

    private PlateMoment At(int element, double r, double s, double[] movements, double curvature)
    {
        Span<double> rows = stackalloc double[3 * PlateElement.Unknowns];
        var (quad, nodes) = (_panel.ElementQuad(element), _panel.ElementNodes(element));
        var (stiff, poisson) = (_panel.Section.Bending, _panel.Section.Poisson);
        PlateElement.Curvature(quad, r, s, rows);
        var (x, y, xy) = (-curvature, -curvature, 0.0);
        for (var u = 0; u < PlateElement.Unknowns; u++)
        {
            var movement = movements[3 * nodes[u / 3] + u % 3];
            x += rows[u] * movement;
            y += rows[PlateElement.Unknowns + u] * movement;
            xy += rows[2 * PlateElement.Unknowns + u] * movement;
        }

        return new PlateMoment(-stiff * (x + poisson * y), -stiff * (y + poisson * x), -stiff * (1 - poisson) / 2 * xy);
    }

    /// <summary>For each node of a grid direction, the four points nearest to it and the cubic's weights.</summary>
    private static Carried[] Carry(IReadOnlyList<double> lines)
    {
        var places = new double[2 * (lines.Count - 1)];
        var nodes = new double[2 * lines.Count - 1];
        for (var e = 0; e < lines.Count - 1; e++)
        {
            var (middle, half) = ((lines[e] + lines[e + 1]) / 2, (lines[e + 1] - lines[e]) / 2);
            (places[2 * e], places[2 * e + 1]) = (middle - half * Quadratic.Half, middle + half * Quadratic.Half);
            (nodes[2 * e], nodes[2 * e + 1], nodes[2 * e + 2]) = (lines[e], middle, lines[e + 1]);
        }

        return [.. nodes.Select((at, n) =>
        {
            var count = Math.Min(4, places.Length);
            var before = places.Count(p => p < at);
            var first = Math.Clamp(before - 2, 0, places.Length - count);
            return new Carried(first, Cubic(places.AsSpan(first, count), at));
        })];
    }

    private static double[] Cubic(ReadOnlySpan<double> places, double at)
    {
        var weights = new double[places.Length];
        for (var n = 0; n < weights.Length; n++)
        {
            weights[n] = 1;
            for (var m = 0; m < weights.Length; m++)
            {
                if (m != n) weights[n] *= (at - places[m]) / (places[n] - places[m]);
            }
        }

        return weights;
    }

    private readonly record struct Carried(int First, double[] Weights)
    {
        public PlateMoment Of(PlateMoment[] points, int start, int step)
        {
            var sum = default(PlateMoment);
            for (var n = 0; n < Weights.Length; n++) sum += points[start + (First + n) * step] * Weights[n];
            return sum;
        }
    }
}
