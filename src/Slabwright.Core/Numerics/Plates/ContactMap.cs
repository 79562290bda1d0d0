namespace Slabwright.Core.Numerics.Plates;

/// <summary>The points of a panel's springs: nine an element.</summary>
internal static class Springs
{
    private static readonly double[][] Shapes = [.. Enumerable.Range(0, 9).Select(p =>
    {
        var shape = new double[PlateElement.Nodes];
        PlateElement.Shape(Quadratic.Points[p % 3], Quadratic.Points[p / 3], shape);
        return shape;
    })];

    /// <summary>Calls for each point of an element: number, shape functions, area it stands for.</summary>
    public static void Each(PlatePanel panel, int element, Action<int, double[], double> at)
    {
        var quad = panel.ElementQuad(element);
        for (var p = 0; p < 9; p++) at(p, Shapes[p], Area(quad, p));
    }

    /// <summary>Area a point stands for, m².</summary>
    public static double Area(in Quad quad, int point) =>
        quad.Jacobian(Quadratic.Points[point % 3], Quadratic.Points[point / 3]).Determinant * Quadratic.Weights[point % 3] * Quadratic.Weights[point / 3];

    /// <summary>Shape functions of a point.</summary>
    public static double[] Shape(int point) => Shapes[point];

    /// <summary>Place of a point.</summary>
    public static (double X, double Y) Place(in Quad quad, int point) => quad.At(Quadratic.Points[point % 3], Quadratic.Points[point / 3]);
}

/// <summary>Which spring points touch, and how far each stands off before anything bends.</summary>
internal sealed class ContactMap
{
    private readonly IReadOnlyList<PlatePanel> _panels;
    private readonly double[]?[] _gaps;

    /// <summary>Touching wherever there is no gap.</summary>
    public ContactMap(IReadOnlyList<PlatePanel> panels)
    {
        _panels = panels;
        _gaps = [.. panels.Select(Gaps)];
        States = [.. panels.Select((p, n) =>
        {
            var touches = new bool[9 * p.Elements];
            for (var i = 0; i < touches.Length; i++) touches[i] = _gaps[n] is not { } gaps || gaps[i] <= 0;
            return touches;
        })];
    }

    private ContactMap(IReadOnlyList<PlatePanel> panels, double[]?[] gaps, bool[][] states) => (_panels, _gaps, States) = (panels, gaps, states);

    /// <summary>Touching points, panel by panel, nine an element.</summary>
    public bool[][] States { get; }

    public bool[] StatesOf(PlatePanel panel) => States[Number(panel)];

    /// <summary>Gap of a point, m.</summary>
    public double Gap(PlatePanel panel, int element, int point) => _gaps[Number(panel)] is { } gaps ? gaps[element * 9 + point] : 0;

    /// <summary>The contact that some movements make.</summary>
    public ContactMap After(double[] movements)
    {
        var next = new bool[_panels.Count][];
        for (var p = 0; p < _panels.Count; p++)
        {
            var panel = _panels[p];
            next[p] = new bool[9 * panel.Elements];
            for (var e = 0; e < panel.Elements; e++)
            {
                var nodes = panel.ElementNodes(e);
                for (var point = 0; point < 9; point++)
                {
                    var shape = Springs.Shape(point);
                    var pressed = _gaps[p] is { } gaps ? -gaps[e * 9 + point] : 0;
                    for (var n = 0; n < nodes.Length; n++) pressed += shape[n] * movements[3 * nodes[n]];
                    next[p][e * 9 + point] = pressed > 0;
                }
            }
        }

        return new ContactMap(_panels, _gaps, next);
    }

    public bool Same(ContactMap other) => States.Zip(other.States).All(p => p.First.AsSpan().SequenceEqual(p.Second));

    /// <summary>Springs over a gap push back less by stiffness times gap: the share that does not depend on the movements.</summary>
    public void AddGapForces(double[] right, int[] free)
    {
        for (var p = 0; p < _panels.Count; p++)
        {
            if (_gaps[p] is not { } gaps) continue;
            var panel = _panels[p];
            for (var e = 0; e < panel.Elements; e++)
            {
                var (nodes, quad) = (panel.ElementNodes(e), panel.ElementQuad(e));
                for (var point = 0; point < 9; point++)
                {
                    if (!States[p][e * 9 + point] || gaps[e * 9 + point] == 0) continue;
                    var force = panel.Reaction * gaps[e * 9 + point] * Springs.Area(quad, point);
                    for (var n = 0; n < nodes.Length; n++)
                    {
                        if (free[3 * nodes[n]] is var u and >= 0) right[u] += force * Springs.Shape(point)[n];
                    }
                }
            }
        }
    }

    /// <summary>Share of a panel's area that touches.</summary>
    public double Share(PlatePanel panel)
    {
        if (panel.Reaction == 0) return 0;
        var (touches, sum) = (StatesOf(panel), 0.0);
        for (var e = 0; e < panel.Elements; e++)
        {
            var quad = panel.ElementQuad(e);
            for (var point = 0; point < 9; point++)
            {
                if (touches[e * 9 + point]) sum += Springs.Area(quad, point);
            }
        }

        return sum / panel.Area;
    }

    private static double[]? Gaps(PlatePanel panel)
    {
        if (panel.Gap is not { } gap) return null;
        var gaps = new double[9 * panel.Elements];
        for (var e = 0; e < panel.Elements; e++)
        {
            var quad = panel.ElementQuad(e);
            for (var point = 0; point < 9; point++)
            {
                var (x, y) = Springs.Place(quad, point);
                gaps[e * 9 + point] = gap(x, y);
            }
        }

        return gaps;
    }

    private int Number(PlatePanel panel)
    {
        for (var n = 0; n < _panels.Count; n++)
        {
            if (ReferenceEquals(_panels[n], panel)) return n;
        }

        throw new ArgumentException("The panel is not of this system.");
    }
}
