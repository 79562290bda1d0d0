namespace Slabwright.Core.Numerics.Plates;

/// <summary>A side of a panel. Along is the direction of r, across that of s.</summary>
public enum PanelSide
{
    /// <summary>Where along begins.</summary>
    Start,

    /// <summary>Where along ends.</summary>
    End,

    /// <summary>Where across begins.</summary>
    Left,

    /// <summary>Where across ends.</summary>
    Right,
}

/// <summary>Nodes and their weights at a place of a panel or of one of its sides.</summary>
/// <param name="Nodes">Node numbers.</param> <param name="Weights">Shape functions there.</param>
public readonly record struct NodeWeights(int[] Nodes, double[] Weights);

/// <summary>
/// A quadrilateral plate meshed by nine-node elements between grid lines, on springs that push but may be set not to pull.
/// </summary>
public sealed class PlatePanel
{
    private readonly double[] _along;
    private readonly double[] _across;
    private readonly Quad _outline;

    private PlatePanel(
        Quad outline, double[] along, double[] across, PlateSection section, double reaction, Func<double, double, double>? gap)
    {
        _outline = outline;
        (_along, _across) = (along, across);
        (Section, Reaction, Gap) = (section, reaction, gap);
    }

    /// <summary>The plate.</summary>
    public PlateSection Section { get; }

    /// <summary>Modulus of the springs below, Pa/m; 0 for none.</summary>
    public double Reaction { get; }

    /// <summary>Gap between plate and springs before anything bends, m, by x and y; null where they touch everywhere.</summary>
    public Func<double, double, double>? Gap { get; }

    /// <summary>Number of its first node in the whole system; set when the panel joins one.</summary>
    public int FirstNode { get; internal set; }

    /// <summary>Elements along.</summary>
    public int ElementsAlong => _along.Length - 1;

    /// <summary>Elements across.</summary>
    public int ElementsAcross => _across.Length - 1;

    /// <summary>Elements.</summary>
    public int Elements => ElementsAlong * ElementsAcross;

    /// <summary>Nodes along.</summary>
    public int NodesAlong => 2 * ElementsAlong + 1;

    /// <summary>Nodes across.</summary>
    public int NodesAcross => 2 * ElementsAcross + 1;

    /// <summary>Nodes.</summary>
    public int NodeCount => NodesAlong * NodesAcross;

    /// <summary>Area, m².</summary>
    public double Area => _outline.Area;

    /// <summary>A rectangle with its sides along x and y.</summary>
    /// <param name="along">Grid lines in x, rising.</param> <param name="across">Grid lines in y, rising.</param>
    /// <param name="section">The plate.</param> <param name="reaction">Springs below, Pa/m.</param>
    /// <param name="gap">See <see cref="Gap"/>.</param>
    public static PlatePanel Rectangle(
        double[] along, double[] across, PlateSection section, double reaction, Func<double, double, double>? gap = null) => Between(
        [(along[0], across[0]), (along[^1], across[0]), (along[^1], across[^1]), (along[0], across[^1])],
        Fractions(along), Fractions(across), section, reaction, gap);

    /// <summary>A quadrilateral.</summary>
    /// <param name="corners">Four corners: start left, end left, end right, start right; x to y turns the shorter way.</param>
    /// <param name="along">Grid lines along as shares from 0 to 1.</param> <param name="across">Grid lines across as shares from 0 to 1.</param>
    /// <param name="section">The plate.</param> <param name="reaction">Springs below, Pa/m.</param>
    /// <param name="gap">See <see cref="Gap"/>.</param>
    /// <exception cref="ArgumentException">The corners do not go round in that sense, or lines do not rise.</exception>
    public static PlatePanel Between(
        IReadOnlyList<(double X, double Y)> corners, double[] along, double[] across, PlateSection section, double reaction,
        Func<double, double, double>? gap = null)
    {
        var outline = new Quad(
            corners[0].X, corners[0].Y, corners[1].X, corners[1].Y, corners[2].X, corners[2].Y, corners[3].X, corners[3].Y);
        if (!Rises(along) || !Rises(across)) throw new ArgumentException("Grid lines must rise from the first to the last.");
        foreach (var (r, s) in ((double, double)[])[(-1, -1), (1, -1), (1, 1), (-1, 1)])
        {
            if (!(outline.Jacobian(r, s).Determinant > 0)) throw new ArgumentException("The corners must go round a convex panel, first along x, then along y.");
        }

        return new PlatePanel(outline, along, across, section, reaction, gap);
    }

    /// <summary>Place of a node by its number within the panel.</summary>
    public (double X, double Y) NodeAt(int node) => Place(Share(_along, node % NodesAlong), Share(_across, node / NodesAlong));

    /// <summary>Node number in the whole system of a grid place.</summary>
    public int Node(int along, int across) => FirstNode + across * NodesAlong + along;

    /// <summary>True when the place lies on the panel, sides included.</summary>
    public bool Covers(double x, double y)
    {
        var (r, s) = _outline.Find(x, y);
        return Math.Abs(r) <= 1 + 1e-9 && Math.Abs(s) <= 1 + 1e-9;
    }

    /// <summary>Nodes and shape functions at a place.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The place is off the panel.</exception>
    public NodeWeights WeightsAt(double x, double y)
    {
        var (element, r, s) = Locate(x, y);
        var weights = new double[PlateElement.Nodes];
        PlateElement.Shape(r, s, weights);
        return new NodeWeights(ElementNodes(element), weights);
    }

    /// <summary>Nodes of a side and their shape functions at a share of its length.</summary>
    public NodeWeights SideAt(PanelSide side, double share)
    {
        var lines = side is PanelSide.Left or PanelSide.Right ? _along : _across;
        var cell = Cell(lines, share);
        var weights = new double[3];
        Quadratic.Values(2 * (share - lines[cell]) / (lines[cell + 1] - lines[cell]) - 1, weights);
        var nodes = new int[3];
        for (var n = 0; n < 3; n++)
        {
            nodes[n] = side switch
            {
                PanelSide.Start => Node(0, 2 * cell + n),
                PanelSide.End => Node(NodesAlong - 1, 2 * cell + n),
                PanelSide.Left => Node(2 * cell + n, 0),
                _ => Node(2 * cell + n, NodesAcross - 1),
            };
        }

        return new NodeWeights(nodes, weights);
    }

    /// <summary>Grid lines that meet a side, as shares of its length from 0 to 1.</summary>
    public IReadOnlyList<double> SideLines(PanelSide side) => side is PanelSide.Left or PanelSide.Right ? _along : _across;

    /// <summary>Place on a side at a share of its length.</summary>
    public (double X, double Y) SidePlace(PanelSide side, double share) => side switch
    {
        PanelSide.Start => Place(0, share),
        PanelSide.End => Place(1, share),
        PanelSide.Left => Place(share, 0),
        _ => Place(share, 1),
    };

    internal (int Element, double R, double S) Locate(double x, double y)
    {
        var (r, s) = _outline.Find(x, y);
        if (Math.Abs(r) > 1 + 1e-7 || Math.Abs(s) > 1 + 1e-7) throw new ArgumentOutOfRangeException(nameof(x), "The place is off the panel.");
        var (u, v) = ((r + 1) / 2, (s + 1) / 2);
        var (i, j) = (Cell(_along, u), Cell(_across, v));
        return (j * ElementsAlong + i,
            2 * (u - _along[i]) / (_along[i + 1] - _along[i]) - 1, 2 * (v - _across[j]) / (_across[j + 1] - _across[j]) - 1);
    }

    internal Quad ElementQuad(int element)
    {
        var (i, j) = (element % ElementsAlong, element / ElementsAlong);
        var (a, b) = (Place(_along[i], _across[j]), Place(_along[i + 1], _across[j]));
        var (c, d) = (Place(_along[i + 1], _across[j + 1]), Place(_along[i], _across[j + 1]));
        return new Quad(a.X, a.Y, b.X, b.Y, c.X, c.Y, d.X, d.Y);
    }

    internal int[] ElementNodes(int element)
    {
        var (i, j) = (element % ElementsAlong, element / ElementsAlong);
        var nodes = new int[PlateElement.Nodes];
        for (var n = 0; n < nodes.Length; n++) nodes[n] = Node(2 * i + n % 3, 2 * j + n / 3);
        return nodes;
    }

    private (double X, double Y) Place(double u, double v) => _outline.At(2 * u - 1, 2 * v - 1);

    private static double Share(double[] lines, int node) =>
        node % 2 == 0 ? lines[node / 2] : (lines[node / 2] + lines[node / 2 + 1]) / 2;

    private static int Cell(double[] lines, double share)
    {
        var found = Array.BinarySearch(lines, share);
        return Math.Clamp(found >= 0 ? found : ~found - 1, 0, lines.Length - 2);
    }

    /// <summary>Lines as shares of the way from the first to the last.</summary>
    internal static double[] Fractions(double[] lines) =>
        [.. lines.Select((l, n) => n == lines.Length - 1 ? 1 : (l - lines[0]) / (lines[^1] - lines[0]))];

    private static bool Rises(double[] lines) => lines.Length > 1 && Enumerable.Range(1, lines.Length - 1).All(n => lines[n] > lines[n - 1]);
}
