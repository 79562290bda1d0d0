using System.Collections.Immutable;
using Slabwright.Core.Numerics.Plates;

namespace Slabwright.Core.Joints.Slabs;

/// <summary>A solved state of slabs: deflections, stresses, what each bar does, where the base is touched, and how it was reached.</summary>
public sealed class SlabState
{
    private readonly SlabModel _model;
    private readonly MomentField?[] _moments;
    private readonly bool _bent;

    internal SlabState(SlabModel model, PlateState plate, double applied, bool bent)
    {
        (_model, Plate, Applied, _bent) = (model, plate, applied, bent);
        _moments = new MomentField?[model.Panels.Length];
        Bars = [.. model.System.Bars.Select(BarForces)];
    }

    /// <summary>The plate solution: end, iterations, residual, equilibrium, contact by piece.</summary>
    public PlateState Plate { get; }

    /// <summary>Wheel load that stands on slabs, N.</summary>
    public double Applied { get; }

    /// <summary>What each bar does, in the order of the system's bars.</summary>
    public ImmutableArray<BarForce> Bars { get; }

    /// <summary>Deflection at a place of a piece, m, down.</summary>
    public double Deflection(int piece, double along, double across) => Of(_model.Panels[piece].WeightsAt(along, across), 0);

    /// <summary>Deflection of a piece's start or end side at a place across the road, m, down.</summary>
    public double SideDeflection(int piece, PanelSide side, double across) => Of(_model.Side(piece, side, across), 0);

    /// <summary>Stress at the bottom at a place of a piece, Pa, tension positive; the top has the opposite sign.</summary>
    public PlateMoment BottomStress(int piece, double along, double across) =>
        Moments(piece).At(along, across).BottomStress(_model.System.Pieces[piece].Thickness);

    /// <summary>
    /// Pressure on the base at a place of a piece, Pa: k times deflection less hollow, nought where the slab stands clear. For wheels alone
    /// it is the pressure they add, which may be less than nought.
    /// </summary>
    public double BasePressure(int piece, double along, double across)
    {
        var panel = _model.Panels[piece];
        var pressed = Deflection(piece, along, across);
        return panel.Reaction * (_bent ? Math.Max(0, pressed - (panel.Gap?.Invoke(along, across) ?? 0)) : pressed);
    }

    /// <summary>Moments of a piece at its nodes.</summary>
    public MomentField Moments(int piece) => _moments[piece] ??= new MomentField(
        _model.Panels[piece], Plate.Movements, _bent ? _model.System.Pieces[piece].FreeCurvature : 0);

    /// <summary>Greatest tension in a piece, Pa, and where: at the bottom or the top.</summary>
    public (double Bottom, double Top) GreatestTension(int piece)
    {
        var (bottom, top) = (0.0, 0.0);
        foreach (var moment in Moments(piece).Nodes)
        {
            var (most, least) = moment.BottomStress(_model.System.Pieces[piece].Thickness).Principal;
            (bottom, top) = (Math.Max(bottom, most), Math.Max(top, -least));
        }

        return (bottom, top);
    }

    /// <summary>Deflection transfer of a joint at a place across: the lesser deflection over the greater.</summary>
    /// <param name="first">Piece that ends at the joint.</param> <param name="second">Piece that starts there.</param> <param name="across">m.</param>
    public double DeflectionTransfer(int first, int second, double across)
    {
        var (one, two) = (SideDeflection(first, PanelSide.End, across), SideDeflection(second, PanelSide.Start, across));
        return one > two ? two / one : one / two;
    }

    /// <summary>Load carried across a joint by its bars, N, first to second.</summary>
    public double Carried(int first, int second) =>
        _model.System.Bars.Zip(Bars).Where(p => p.First.First == first && p.First.Second == second).Sum(p => p.Second.Shear);

    private BarForce BarForces(SlabBar bar)
    {
        var (one, two) = (_model.Side(bar.First, PanelSide.End, bar.Across), _model.Side(bar.Second, PanelSide.Start, bar.Across));
        var (shear, moment) = bar.Bar.Middle(Of(one, 0), Of(one, 1), Of(two, 0), Of(two, 1));
        return bar.Bar.Forces(shear, moment);
    }

    private double Of(NodeWeights at, int which)
    {
        var sum = 0.0;
        for (var n = 0; n < at.Nodes.Length; n++) sum += at.Weights[n] * Plate.Movements[3 * at.Nodes[n] + which];
        return sum;
    }
}
