using Slabwright.Core.Numerics.Plates;
using Slabwright.Core.Numerics.Sparse;

namespace Slabwright.SystemTests.Plates;

/// <summary>
/// Six slabs in two lanes as plates on nodal springs: the same nodes, springs and forces for our plates and for a general finite-element
/// program, which has eight-node shells without our middle node. Springs and forces sit at the eight nodes only.
/// </summary>
internal sealed class NodalSlabs
{
    private const double Reaction = 50e6;
    private const double Interlock = 2.5e8;
    private const double Hinge = 4e8;
    private const double Load = 40_000;

    /// <summary>Share of an element's springs and forces at its corners and at the middles of its sides.</summary>
    private const double AtCorner = 1.0 / 12;

    private const double AtSide = 1.0 / 6;

    private readonly Dictionary<int, double> _ground = [];
    private readonly List<(int One, int Two, double Stiffness)> _links = [];
    private readonly Dictionary<int, double> _forces = [];

    /// <summary>The slabs; each element about <paramref name="size"/> long.</summary>
    public NodalSlabs(double size)
    {
        Size = size;
        double[] joints = [0, 4.5, 6.5, 11];
        for (var lane = 0; lane < 2; lane++)
        {
            for (var n = 0; n < 3; n++)
            {
                Panels.Add(PlatePanel.Rectangle(
                    Even(joints[n], joints[n + 1], size), Even(3.6 * lane, 3.6 * (lane + 1), size), Section, 0));
            }
        }

        Plates = new PlateSystem(Panels, Links);
    }

    public static PlateSection Section { get; } = new(30e9, 0.15, 0.25);

    public double Size { get; }

    public List<PlatePanel> Panels { get; } = [];

    public PlateSystem Plates { get; }

    public IReadOnlyDictionary<int, double> Ground => _ground;

    public IReadOnlyList<(int One, int Two, double Stiffness)> Springs => _links;

    public IReadOnlyDictionary<int, double> Forces => _forces;

    /// <summary>Panel and elements the wheels stand on, two by two: in the repair, at its start joint, near the right side of the left lane.</summary>
    public (PlatePanel Panel, int[] Elements) Loaded
    {
        get
        {
            var (panel, row) = (Panels[1], Panels[1].ElementsAlong);
            var first = (panel.ElementsAcross - 4) * row;
            return (panel, [first, first + 1, first + row, first + row + 1]);
        }
    }

    /// <summary>The eight nodes of an element, corners first, as shells are written.</summary>
    public static int[] Eight(PlatePanel panel, int element)
    {
        var (i, j) = (2 * (element % panel.ElementsAlong), 2 * (element / panel.ElementsAlong));
        return
        [
            panel.Node(i, j), panel.Node(i + 2, j), panel.Node(i + 2, j + 2), panel.Node(i, j + 2),
            panel.Node(i + 1, j), panel.Node(i + 2, j + 1), panel.Node(i + 1, j + 2), panel.Node(i, j + 1),
        ];
    }

    /// <summary>Our solution.</summary>
    public PlateState Solve()
    {
        var loads = Plates.NewLoads();
        foreach (var (node, force) in _forces) loads[3 * node] = force;
        return Plates.Solve(loads);
    }

    private static double[] Even(double from, double to, double size)
    {
        var count = (int)Math.Round((to - from) / size);
        return [.. Enumerable.Range(0, count + 1).Select(n => from + (to - from) * n / count)];
    }

    private IEnumerable<ElementBlock> Links()
    {
        foreach (var panel in Panels)
        {
            for (var e = 0; e < panel.Elements; e++) Spread(_ground, panel, e, Reaction * panel.Area / panel.Elements);
        }

        for (var lane = 0; lane < 2; lane++)
        {
            for (var n = 0; n < 2; n++) Join(Panels[3 * lane + n], PanelSide.End, Panels[3 * lane + n + 1], PanelSide.Start, 3.6, Interlock);
        }

        for (var n = 0; n < 3; n++) Join(Panels[n], PanelSide.Right, Panels[3 + n], PanelSide.Left, n == 1 ? 2 : 4.5, Hinge);
        foreach (var element in Loaded.Elements) Spread(_forces, Loaded.Panel, element, Load / 4);
        return _ground.Select(g => PlateLinks.Ground(3 * g.Key, g.Value, Place(g.Key).X, Place(g.Key).Y))
            .Concat(_links.Select(l => PlateLinks.Spring(3 * l.One, 3 * l.Two, l.Stiffness, Place(l.One).X, Place(l.One).Y)));
    }

    /// <summary>Place of a node.</summary>
    public (double X, double Y) Place(int node)
    {
        var panel = Panels.Last(p => p.FirstNode <= node);
        return panel.NodeAt(node - panel.FirstNode);
    }

    private static void Spread(Dictionary<int, double> into, PlatePanel panel, int element, double total)
    {
        var nodes = Eight(panel, element);
        for (var n = 0; n < 8; n++) into[nodes[n]] = into.GetValueOrDefault(nodes[n]) + total * (n < 4 ? AtCorner : AtSide);
    }

    private void Join(PlatePanel one, PanelSide sideOne, PlatePanel two, PanelSide sideTwo, double length, double stiffness)
    {
        var elements = one.SideLines(sideOne).Count - 1;
        var weights = new double[2 * elements + 1];
        for (var e = 0; e < elements; e++)
        {
            weights[2 * e] += length / elements / 6;
            weights[2 * e + 1] += length / elements * 4 / 6;
            weights[2 * e + 2] += length / elements / 6;
        }

        for (var n = 0; n < weights.Length; n++) _links.Add((SideNode(one, sideOne, n), SideNode(two, sideTwo, n), stiffness * weights[n]));
    }

    private static int SideNode(PlatePanel panel, PanelSide side, int n) => side switch
    {
        PanelSide.Start => panel.Node(0, n),
        PanelSide.End => panel.Node(panel.NodesAlong - 1, n),
        PanelSide.Left => panel.Node(n, 0),
        _ => panel.Node(n, panel.NodesAcross - 1),
    };
}
