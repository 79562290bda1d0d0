using Slabwright.Core.Numerics.Sparse;

namespace Slabwright.Core.Numerics.Plates;

/// <summary>How a solution ended.</summary>
public enum SolveEnd
{
    /// <summary>It holds to the tolerance.</summary>
    Converged,

    /// <summary>Contact kept changing up to the last iteration allowed; the last state is given.</summary>
    NotConverged,

    /// <summary>Something is free to move: nothing holds it.</summary>
    NotHeld,
}

/// <summary>A solved state of a plate system and how it was reached.</summary>
/// <param name="Movements">w, βx, βy node by node; m and 1.</param>
/// <param name="End">How it ended.</param>
/// <param name="Iterations">Systems solved.</param>
/// <param name="Residual">Largest force out of balance at a free unknown over the largest load.</param>
/// <param name="Imbalance">
/// Load less what springs, links to the ground and held nodes push back, as a share of the load: vertical equilibrium, to which plates
/// and joints must add nothing.
/// </param>
/// <param name="Contact">Share of the area that rests on its springs, panel by panel.</param>
/// <param name="Loose">The unknown nothing holds, −1 where all are held.</param>
public sealed record PlateState(
    double[] Movements, SolveEnd End, int Iterations, double Residual, double Imbalance, double[] Contact, int Loose = -1)
{
    /// <summary>The contact it ended with and its factor, to start a neighbouring state from; null for a linear state.</summary>
    internal (ContactMap Map, FrontalFactor Factor)? Touch { get; init; }
}

/// <summary>
/// Panels, links and supports as one system: w, βx, βy at each node. Without gaps and with springs that may pull it is linear: factored
/// once, solved for any number of loads.
/// </summary>
public sealed class PlateSystem
{
    /// <summary>Iterations of the contact before it gives up.</summary>
    public const int MostIterations = 60;

    private readonly List<ElementBlock> _links;
    private readonly Dictionary<int, double> _held;
    private readonly int[] _free;
    private readonly ElementBlock[] _elastic;
    private readonly DissectionTree _tree;
    private FrontalFactor? _linear;

    /// <summary>Assembles a system.</summary>
    /// <param name="panels">The panels, numbered in this order.</param>
    /// <param name="links">Makes the links, once the panels have their node numbers; null for none.</param>
    /// <param name="held">Makes the unknowns held at a value; null for none.</param>
    public PlateSystem(
        IReadOnlyList<PlatePanel> panels, Func<IEnumerable<ElementBlock>>? links = null,
        Func<IEnumerable<KeyValuePair<int, double>>>? held = null)
    {
        Panels = panels;
        foreach (var panel in panels)
        {
            panel.FirstNode = Nodes;
            Nodes += panel.NodeCount;
        }

        _links = [.. links?.Invoke() ?? []];
        _held = new Dictionary<int, double>(held?.Invoke() ?? []);
        _free = new int[3 * Nodes];
        for (var u = 0; u < _free.Length; u++) _free[u] = _held.ContainsKey(u) ? -1 : FreeCount++;
        _elastic = [.. panels.SelectMany(Elements), .. _links];
        _tree = new DissectionTree([.. _elastic.Select(b => b with { Unknowns = [.. b.Unknowns.Select(u => _free[u])] })], FreeCount);
    }

    /// <summary>The panels.</summary>
    public IReadOnlyList<PlatePanel> Panels { get; }

    /// <summary>Nodes of all panels.</summary>
    public int Nodes { get; }

    /// <summary>Unknowns not held.</summary>
    public int FreeCount { get; }

    /// <summary>Entries of the factor, for sizing memory.</summary>
    public long FactorEntries => _tree.FactorEntries;

    /// <summary>Forces on all unknowns, none yet.</summary>
    public double[] NewLoads() => new double[3 * Nodes];

    /// <summary>Factors the system with every spring in touch. Done by the first <see cref="Solve(double[])"/> if not before.</summary>
    /// <returns>False where something is free to move.</returns>
    public bool Factor()
    {
        _linear ??= FrontalFactor.Try(_tree, Blocks(null), out _);
        return _linear is not null;
    }

    /// <summary>Solves with every spring in touch, also pulling, and no gaps.</summary>
    public PlateState Solve(double[] loads)
    {
        _linear ??= FrontalFactor.Try(_tree, Blocks(null), out var loose) ?? throw NotHeld(loose);
        var movements = Back(_linear, Right(loads, null));
        return Judge(movements, loads, null, SolveEnd.Converged, 1);
    }

    /// <summary>Movements for many loads at once, every spring in touch.</summary>
    /// <param name="loads">Force vectors over all unknowns.</param>
    /// <returns>Movements over all unknowns, one array a load.</returns>
    public double[][] SolveMany(IReadOnlyList<double[]> loads)
    {
        const int Together = 16;
        _linear ??= FrontalFactor.Try(_tree, Blocks(null), out var loose) ?? throw NotHeld(loose);
        var all = new double[loads.Count][];
        for (var first = 0; first < loads.Count; first += Together)
        {
            var count = Math.Min(Together, loads.Count - first);
            var packed = new double[FreeCount * count];
            for (var n = 0; n < count; n++)
            {
                var right = Right(loads[first + n], null);
                for (var u = 0; u < FreeCount; u++) packed[u * count + n] = right[u];
            }

            _linear.Solve(packed, count);
            for (var n = 0; n < count; n++)
            {
                var column = new double[FreeCount];
                for (var u = 0; u < FreeCount; u++) column[u] = packed[u * count + n];
                all[first + n] = Spread(column);
            }
        }

        return all;
    }

    /// <summary>Solves with springs that push only, over the gaps of the panels.</summary>
    /// <remarks>
    /// Newton on a convex energy: the contact found by one solution is the contact of the next, until it stays. The answer does not depend
    /// on where it starts; a start nearby saves factors.
    /// </remarks>
    /// <param name="loads">Forces on all unknowns.</param>
    /// <param name="near">A state of this system under similar loads to start from; null to start from touching everywhere.</param>
    public PlateState SolveContact(double[] loads, PlateState? near = null)
    {
        var contact = near?.Touch?.Map ?? new ContactMap(Panels);
        var factor = near?.Touch?.Factor;
        var seen = new List<ContactMap> { contact };
        for (var iteration = 1; ; iteration++)
        {
            var loose = -1;
            factor ??= FrontalFactor.Try(_tree, Blocks(contact), out loose);
            if (factor is null) return Fallen(loads, iteration, loose);
            var movements = Back(factor, Right(loads, contact));
            var next = contact.After(movements);
            if (next.Same(contact)) return Judge(movements, loads, contact, SolveEnd.Converged, iteration) with { Touch = (contact, factor) };
            if (iteration == MostIterations || seen.Exists(next.Same)) return Judge(movements, loads, next, SolveEnd.NotConverged, iteration);
            seen.Add(next);
            (contact, factor) = (next, null);
        }
    }

    private PlateState Fallen(double[] loads, int iteration, int loose) =>
        new(new double[loads.Length], SolveEnd.NotHeld, iteration, double.NaN, double.NaN, new double[Panels.Count], Array.IndexOf(_free, loose));

    private InvalidOperationException NotHeld(int loose) =>
        new($"Nothing holds unknown {Array.IndexOf(_free, loose) % 3} of node {Array.IndexOf(_free, loose) / 3}: the plate is free to move.");

    private static IEnumerable<ElementBlock> Elements(PlatePanel panel)
    {
        for (var e = 0; e < panel.Elements; e++)
        {
            var quad = panel.ElementQuad(e);
            var (x, y) = quad.At(0, 0);
            yield return new ElementBlock(
                [.. panel.ElementNodes(e).SelectMany(n => (int[])[3 * n, 3 * n + 1, 3 * n + 2])], PlateElement.Stiffness(quad, panel.Section), x, y);
        }
    }

    private ElementBlock[] Blocks(ContactMap? contact)
    {
        var blocks = new ElementBlock[_elastic.Length];
        var b = 0;
        for (var p = 0; p < Panels.Count; p++)
        {
            for (var e = 0; e < Panels[p].Elements; e++, b++) blocks[b] = Supported(_elastic[b], Panels[p], e, contact?.States[p]);
        }

        for (; b < blocks.Length; b++) blocks[b] = Renumber(_elastic[b], _elastic[b].Values);
        return blocks;
    }

    private ElementBlock Renumber(ElementBlock block, double[] values)
    {
        var unknowns = new int[block.Unknowns.Length];
        for (var n = 0; n < unknowns.Length; n++) unknowns[n] = _free[block.Unknowns[n]];
        return new ElementBlock(unknowns, values, block.X, block.Y);
    }

    private ElementBlock Supported(ElementBlock block, PlatePanel panel, int element, bool[]? touches)
    {
        if (panel.Reaction == 0) return Renumber(block, block.Values);
        var values = (double[])block.Values.Clone();
        Springs.Each(panel, element, (point, shape, area) =>
        {
            if (touches is not null && !touches[element * 9 + point]) return;
            for (var i = 0; i < PlateElement.Nodes; i++)
            {
                var factor = panel.Reaction * area * shape[i];
                for (var j = 0; j < PlateElement.Nodes; j++) values[3 * i * PlateElement.Unknowns + 3 * j] += factor * shape[j];
            }
        });
        return Renumber(block, values);
    }

    /// <summary>Right-hand side of the free unknowns: loads, forces of springs over their gaps, and held movements brought across.</summary>
    private double[] Right(double[] loads, ContactMap? contact)
    {
        var right = new double[FreeCount];
        for (var u = 0; u < loads.Length; u++)
        {
            if (_free[u] >= 0) right[_free[u]] = loads[u];
        }

        contact?.AddGapForces(right, _free);
        if (_held.Values.All(v => v == 0)) return right;
        var forces = InnerForces(Held(), contact, withGaps: false);
        for (var u = 0; u < forces.Length; u++)
        {
            if (_free[u] >= 0) right[_free[u]] -= forces[u];
        }

        return right;
    }

    private double[] Held()
    {
        var movements = new double[3 * Nodes];
        foreach (var (unknown, value) in _held) movements[unknown] = value;
        return movements;
    }

    private double[] Back(FrontalFactor factor, double[] right)
    {
        factor.Solve(right);
        return Spread(right);
    }

    private double[] Spread(double[] free)
    {
        var movements = Held();
        for (var u = 0; u < movements.Length; u++)
        {
            if (_free[u] >= 0) movements[u] = free[_free[u]];
        }

        return movements;
    }

    /// <summary>Forces the system sets against movements: plates, links and springs.</summary>
    private double[] InnerForces(double[] movements, ContactMap? contact, bool withGaps)
    {
        var forces = new double[movements.Length];
        foreach (var block in _elastic) AddForces(forces, block, movements);
        foreach (var panel in Panels) AddSpringForces(forces, panel, movements, contact, withGaps);
        return forces;
    }

    private static void AddForces(double[] forces, ElementBlock block, double[] movements)
    {
        var (unknowns, values) = (block.Unknowns, block.Values);
        for (var i = 0; i < unknowns.Length; i++)
        {
            var sum = 0.0;
            for (var j = 0; j < unknowns.Length; j++) sum += values[i * unknowns.Length + j] * movements[unknowns[j]];
            forces[unknowns[i]] += sum;
        }
    }

    private void AddSpringForces(double[] forces, PlatePanel panel, double[] movements, ContactMap? contact, bool withGaps)
    {
        var touches = contact?.StatesOf(panel);
        for (var e = 0; e < panel.Elements && panel.Reaction > 0; e++)
        {
            var (nodes, element) = (panel.ElementNodes(e), e);
            Springs.Each(panel, e, (point, shape, area) =>
            {
                if (touches is not null && !touches[element * 9 + point]) return;
                var pressed = withGaps && contact is not null ? -contact.Gap(panel, element, point) : 0;
                for (var n = 0; n < nodes.Length; n++) pressed += shape[n] * movements[3 * nodes[n]];
                for (var n = 0; n < nodes.Length; n++) forces[3 * nodes[n]] += panel.Reaction * area * pressed * shape[n];
            });
        }
    }

    private PlateState Judge(double[] movements, double[] loads, ContactMap? contact, SolveEnd end, int iterations)
    {
        var forces = InnerForces(movements, contact, withGaps: true);
        var (worst, largest, load, carried) = (0.0, 0.0, 0.0, 0.0);
        var springs = new double[movements.Length];
        foreach (var panel in Panels) AddSpringForces(springs, panel, movements, contact, withGaps: true);
        foreach (var link in _links) AddForces(springs, link, movements);
        for (var u = 0; u < forces.Length; u++)
        {
            largest = Math.Max(largest, Math.Abs(loads[u]));
            if (_free[u] >= 0) worst = Math.Max(worst, Math.Abs(loads[u] - forces[u]));
            if (u % 3 != 0) continue;
            load += loads[u];
            carried += springs[u] + (_free[u] < 0 ? loads[u] - forces[u] : 0);
        }

        var scale = Math.Max(largest, forces.Max(Math.Abs));
        return new PlateState(
            movements, end, iterations, scale > 0 ? worst / scale : 0, load != 0 ? (load - carried) / load : carried, Shares(contact));
    }

    private double[] Shares(ContactMap? contact) => contact is null
        ? [.. Panels.Select(p => p.Reaction > 0 ? 1.0 : 0.0)]
        : [.. Panels.Select(contact.Share)];
}
