using System.Collections.Immutable;
using Slabwright.Core.Numerics;
using Slabwright.Core.Numerics.Plates;

namespace Slabwright.Core.Joints.Slabs;

/// <summary>Wheels that stand at once.</summary>
/// <param name="Name">What the case is, in words.</param>
/// <param name="Wheels">The wheels.</param>
public sealed record LoadCase(string Name, ImmutableArray<WheelPatch> Wheels);

/// <summary>How a joint with some bars answers one load case. SI.</summary>
public sealed record JointResponse
{
    /// <summary>What each bar does, in the order asked for.</summary>
    public required ImmutableArray<BarForce> Bars { get; init; }

    /// <summary>Load that stands on slabs, N.</summary>
    public required double Load { get; init; }

    /// <summary>Load the bars carry from the first piece to the second, N.</summary>
    public required double Carried { get; init; }

    /// <summary>Greatest deflection of the two faces and the deflection opposite, m.</summary>
    public required (double Loaded, double Unloaded) Deflection { get; init; }

    /// <summary>Greatest deflection of the four corners at the joint and of the corner opposite, m.</summary>
    public required (double Loaded, double Unloaded) Corner { get; init; }

    /// <summary>Greatest stress along the two faces at the bottom, and the stress opposite, Pa.</summary>
    public required (double Loaded, double Unloaded) EdgeStress { get; init; }

    /// <summary>Greatest tension near the joint at the bottom and at the top, Pa.</summary>
    public required (double Bottom, double Top) Tension { get; init; }

    /// <summary>Deflection transfer: unloaded over loaded.</summary>
    public double DeflectionTransfer => Deflection.Unloaded / Deflection.Loaded;

    /// <summary>Stress transfer: unloaded over loaded.</summary>
    public double StressTransfer => EdgeStress.Unloaded / EdgeStress.Loaded;

    /// <summary>Greatest bearing stress of a bar, Pa; 0 without bars.</summary>
    public double Bearing => Bars.IsEmpty ? 0 : Bars.Max(b => b.Bearing);

    /// <summary>Greatest shear of a bar, N; 0 without bars.</summary>
    public double Shear => Bars.IsEmpty ? 0 : Bars.Max(b => Math.Abs(b.Shear));
}

/// <summary>
/// One joint and everything that could be done with it: the slabs are factored once without the joint's bars, their give at every place a
/// bar might stand is kept, and any choice of bars is then a small dense system (force method). Slabs rest on their base everywhere.
/// </summary>
public sealed class JointInfluence
{
    /// <summary>How far from the joint stresses are looked for, m.</summary>
    private const double Reach = 1.5;

    private readonly SlabModel _model;
    private readonly int _first;
    private readonly int _second;
    private readonly double[][] _unit;
    private readonly double[][] _case;
    private readonly double[,] _give;
    private readonly double[,] _free;
    private readonly double[] _applied;

    /// <summary>Factors the slabs and works out the give of the joint.</summary>
    /// <param name="system">Slabs without bars at the joint; others may have theirs.</param>
    /// <param name="first">Piece that ends at the joint.</param> <param name="second">Piece that starts there.</param>
    /// <param name="places">Places across the road where bars might stand, m.</param>
    /// <param name="cases">Load cases.</param>
    /// <exception cref="ArgumentException">The system has an error finding, has bars at the joint, or a place lies outside it.</exception>
    public JointInfluence(SlabSystem system, int first, int second, IReadOnlyList<double> places, IReadOnlyList<LoadCase> cases)
    {
        var range = SideRange.Transverse(system, first, second);
        if (!range.Found) throw new ArgumentException("The two pieces do not face one another.");
        if (system.Bars.Any(b => b.First == first && b.Second == second)) throw new ArgumentException("The joint has bars already.");
        if (places.Any(p => p < range.Low || p > range.High)) throw new ArgumentException("A bar would stand outside the joint.");
        (_model, _first, _second, Places) = (new SlabModel(system), first, second, [.. places]);
        Cases = [.. cases];
        var movements = places.SelectMany(Movements).ToArray();
        _applied = new double[cases.Count];
        var loads = movements.Select(Unit).ToList();
        for (var c = 0; c < cases.Count; c++)
        {
            loads.Add(_model.LoadsOf(cases[c].Wheels, out var applied));
            _applied[c] = applied;
        }

        var solved = _model.Plates.SolveMany(loads);
        (_unit, _case) = (solved[..movements.Length], solved[movements.Length..]);
        (_give, _free) = (Table(movements, _unit), Table(movements, _case));
    }

    /// <summary>Places across the road where bars might stand, m.</summary>
    public ImmutableArray<double> Places { get; }

    /// <summary>The load cases.</summary>
    public ImmutableArray<LoadCase> Cases { get; }

    /// <summary>Unknowns of the plate model.</summary>
    public int Unknowns => _model.Unknowns;

    /// <summary>The answer to a load case.</summary>
    /// <param name="loadCase">Index into <see cref="Cases"/>.</param>
    /// <param name="bar">The bar; the same at every place.</param>
    /// <param name="at">Indexes into <see cref="Places"/> of the bars; empty for a joint without.</param>
    public JointResponse Respond(int loadCase, GapBar bar, IReadOnlyList<int> at)
    {
        var forces = Solve(loadCase, bar, at);
        var movements = (double[])_case[loadCase].Clone();
        var bars = ImmutableArray.CreateBuilder<BarForce>(at.Count);
        for (var n = 0; n < at.Count; n++)
        {
            var (shear, moment) = (forces[2 * n], forces[2 * n + 1]);
            bars.Add(bar.Forces(shear, moment));
            double[] onSlabs = [shear, bar.HalfGap * shear + moment, -shear, bar.HalfGap * shear - moment];
            for (var k = 0; k < 4; k++) AddTimes(movements, _unit[4 * at[n] + k], -onSlabs[k]);
        }

        return Measure(movements, bars.MoveToImmutable(), _applied[loadCase]);
    }

    /// <summary>Shear and moment at the middle of each bar: (give of bars + give of slabs) f = free step and kink.</summary>
    private double[] Solve(int loadCase, GapBar bar, IReadOnlyList<int> at)
    {
        var size = 2 * at.Count;
        var (matrix, right) = (new double[size * size], new double[size]);
        double[,] across = { { 1, bar.HalfGap, -1, bar.HalfGap }, { 0, 1, 0, -1 } };
        var (vv, vm, mm) = bar.Flexibility;
        for (var i = 0; i < size; i++)
        {
            var (one, row) = (4 * at[i / 2], i % 2);
            for (var k = 0; k < 4; k++) right[i] += across[row, k] * _free[one + k, loadCase];
            for (var j = 0; j <= i; j++)
            {
                var (two, column, sum) = (4 * at[j / 2], j % 2, 0.0);
                for (var k = 0; k < 4; k++)
                {
                    for (var m = 0; m < 4; m++) sum += across[row, k] * _give[one + k, two + m] * across[column, m];
                }

                if (i / 2 == j / 2) sum += row == column ? (row == 0 ? vv : mm) : vm;
                matrix[i * size + j] = sum;
            }
        }

        return DenseCholesky.Solve(matrix, right);
    }

    private JointResponse Measure(double[] movements, ImmutableArray<BarForce> bars, double load)
    {
        var (one, two) = (_model.Panels[_first], _model.Panels[_second]);
        var range = SideRange.Transverse(_model.System, _first, _second);
        var (fieldOne, fieldTwo) = (Near(one, movements, atEnd: true), Near(two, movements, atEnd: false));
        var places = Enumerable.Range(0, 41).Select(n => range.Low + (range.High - range.Low) * n / 40).ToArray();
        var deflections = places.Select(p => (
            MovementOf(_model.Side(_first, PanelSide.End, p), 0, movements), MovementOf(_model.Side(_second, PanelSide.Start, p), 0, movements))).ToArray();
        var stresses = places.Select(p => (EdgeStress(_first, PanelSide.End, p, fieldOne), EdgeStress(_second, PanelSide.Start, p, fieldTwo))).ToArray();
        var (tensionOne, tensionTwo) = (Tension(fieldOne, _first), Tension(fieldTwo, _second));
        return new JointResponse
        {
            Bars = bars,
            Load = load,
            Carried = bars.Sum(b => b.Shear),
            Deflection = Greatest(deflections),
            Corner = Greatest([deflections[0], deflections[^1]]),
            EdgeStress = Greatest(stresses),
            Tension = (Math.Max(tensionOne.Bottom, tensionTwo.Bottom), Math.Max(tensionOne.Top, tensionTwo.Top)),
        };
    }

    private static (double Loaded, double Unloaded) Greatest(IReadOnlyList<(double One, double Two)> pairs)
    {
        var best = pairs.MaxBy(p => Math.Max(p.One, p.Two));
        return best.One >= best.Two ? best : (best.Two, best.One);
    }

    private MomentField Near(PlatePanel panel, double[] movements, bool atEnd)
    {
        var lines = panel.SideLines(PanelSide.Left);
        var piece = _model.System.Pieces[atEnd ? _first : _second];
        var near = lines.Count(l => (atEnd ? 1 - l : l) * (piece.To - piece.From) <= Reach);
        var columns = Math.Min(Math.Max(2, near), panel.ElementsAlong);
        return new MomentField(panel, movements, 0, atEnd ? panel.ElementsAlong - columns : 0, columns);
    }

    private (double Bottom, double Top) Tension(MomentField field, int piece)
    {
        var (bottom, top) = (0.0, 0.0);
        foreach (var moment in field.Known)
        {
            var (most, least) = moment.BottomStress(_model.System.Pieces[piece].Thickness).Principal;
            (bottom, top) = (Math.Max(bottom, most), Math.Max(top, -least));
        }

        return (bottom, top);
    }

    /// <summary>Stress along the joint at the bottom: across a free face there is none.</summary>
    private double EdgeStress(int piece, PanelSide side, double across, MomentField field)
    {
        var (nodes, weights) = _model.Side(piece, side, across);
        var sum = 0.0;
        for (var n = 0; n < nodes.Length; n++) sum += weights[n] * field.Nodes[nodes[n] - _model.Panels[piece].FirstNode].Y;
        var thickness = _model.System.Pieces[piece].Thickness;
        return 6 * sum / (thickness * thickness);
    }

    private static double MovementOf(NodeWeights at, int which, double[] movements)
    {
        var sum = 0.0;
        for (var n = 0; n < at.Nodes.Length; n++) sum += at.Weights[n] * movements[3 * at.Nodes[n] + which];
        return sum;
    }

    /// <summary>Deflection and slope of the first face, then of the second, at a place.</summary>
    private (NodeWeights At, int Which)[] Movements(double across)
    {
        var (one, two) = (_model.Side(_first, PanelSide.End, across), _model.Side(_second, PanelSide.Start, across));
        return [(one, 0), (one, 1), (two, 0), (two, 1)];
    }

    private double[] Unit((NodeWeights At, int Which) movement)
    {
        var loads = _model.Plates.NewLoads();
        for (var n = 0; n < movement.At.Nodes.Length; n++) loads[3 * movement.At.Nodes[n] + movement.Which] = movement.At.Weights[n];
        return loads;
    }

    private static double[,] Table((NodeWeights At, int Which)[] movements, double[][] solved)
    {
        var table = new double[movements.Length, solved.Length];
        for (var i = 0; i < movements.Length; i++)
        {
            for (var j = 0; j < solved.Length; j++) table[i, j] = MovementOf(movements[i].At, movements[i].Which, solved[j]);
        }

        return table;
    }

    private static void AddTimes(double[] target, double[] source, double factor)
    {
        for (var n = 0; n < target.Length; n++) target[n] += factor * source[n];
    }
}
