using System.Collections.Immutable;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Slabs;
using Slabwright.Core.Numerics.Plates;

namespace Slabwright.Core.Joints.Live;

/// <summary>What is mapped over the slabs.</summary>
public enum LiveQuantity
{
    /// <summary>Deflection the wheels add, m, down.</summary>
    Deflection,

    /// <summary>Greatest principal stress at the bottom, Pa, tension positive.</summary>
    BottomTension,

    /// <summary>Greatest principal stress at the top, Pa, tension positive.</summary>
    TopTension,

    /// <summary>Pressure on the base, Pa: the contact map, nought where a slab stands clear.</summary>
    BasePressure,
}

/// <summary>The greatest tension found and the piece it is in.</summary>
/// <param name="Stress">Pa.</param>
/// <param name="Piece">Name of the slab or repair.</param>
public sealed record PeakTension(double Stress, string Piece);

/// <summary>What an axle does to a joint: bars, both sides, stresses, and the field behind them. SI.</summary>
public sealed class LiveAnswer
{
    private const int PlacesAcross = 41;

    private readonly LiveJoint _joint;

    internal LiveAnswer(LiveJoint joint, LiveAxle axle, ImmutableArray<WheelPatch> wheels, SlabState state, ImmutableArray<BarForce> bars)
    {
        (_joint, Axle, Wheels, State, Bars) = (joint, axle, wheels, state, bars);
        var width = joint.Conditions.LaneWidth;
        var sides = Enumerable.Range(0, PlacesAcross).Select(n => width * n / (PlacesAcross - 1))
            .Select(y => (At: y, Old: Side(JointSlabs.Old, PanelSide.End, y), Repair: Side(JointSlabs.Repair, PanelSide.Start, y)));
        (DeflectsAt, OldSide, RepairSide) = sides.MaxBy(s => Math.Max(s.Old, s.Repair));
        Bottom = Peak(p => state.GreatestTension(p).Bottom);
        Top = Peak(p => state.GreatestTension(p).Top);
    }

    /// <summary>The axle.</summary>
    public LiveAxle Axle { get; }

    /// <summary>Its tyres.</summary>
    public ImmutableArray<WheelPatch> Wheels { get; }

    /// <summary>The solved slabs: end, iterations, residual, equilibrium, contact.</summary>
    public SlabState State { get; }

    /// <summary>What each bar does, left to right. Where contact may be lost these hold for weight, temperature and wheels together.</summary>
    public ImmutableArray<BarForce> Bars { get; }

    /// <summary>Place across at which a face goes down most under the wheels, m.</summary>
    public double DeflectsAt { get; }

    /// <summary>What the wheels add to the old slab's deflection there, m.</summary>
    public double OldSide { get; }

    /// <summary>What the wheels add to the repair's deflection there, m.</summary>
    public double RepairSide { get; }

    /// <summary>Deflection transfer at that place: the lesser over the greater of what the wheels add.</summary>
    public double Transfer => Math.Min(OldSide, RepairSide) / Math.Max(OldSide, RepairSide);

    /// <summary>Load the bars carry across, N, old slab to repair.</summary>
    public double Carried => Bars.Sum(b => b.Shear);

    /// <summary>Greatest tension at the bottom.</summary>
    public PeakTension Bottom { get; }

    /// <summary>Greatest tension at the top.</summary>
    public PeakTension Top { get; }

    /// <summary>
    /// Greatest difference between the bars' shear by influence and by the field as a share of the greatest shear: two roads to one answer.
    /// 0 without bars or where contact may be lost, since there is only one road then.
    /// </summary>
    public double Disagreement
    {
        get
        {
            var most = Bars.IsEmpty ? 0 : Bars.Max(b => Math.Abs(b.Shear));
            return most == 0 ? 0 : Bars.Zip(State.Bars).Max(p => Math.Abs(p.First.Shear - p.Second.Shear)) / most;
        }
    }

    /// <summary>A quantity over a grid: everything along the first line from the left edge, then along the second.</summary>
    /// <param name="quantity">What.</param> <param name="grid">The grid.</param>
    public ImmutableArray<double> Field(LiveQuantity quantity, LiveGrid grid) =>
        [.. grid.Across.SelectMany(across => Section(quantity, grid, across))];

    /// <summary>A quantity along a line at one place across.</summary>
    public ImmutableArray<double> Section(LiveQuantity quantity, LiveGrid grid, double across) =>
        [.. grid.Along.Select((along, n) => At(quantity, grid.PieceOf[n], along, across))];

    private double At(LiveQuantity quantity, int piece, double along, double across)
    {
        if (quantity == LiveQuantity.Deflection) return State.Deflection(piece, along, across) - (_joint.Rest?.Deflection(piece, along, across) ?? 0);
        if (quantity == LiveQuantity.BasePressure) return State.BasePressure(piece, along, across);
        var (most, least) = State.BottomStress(piece, along, across).Principal;
        return quantity == LiveQuantity.BottomTension ? most : -least;
    }

    private double Side(int piece, PanelSide side, double across) =>
        State.SideDeflection(piece, side, across) - (_joint.Rest?.SideDeflection(piece, side, across) ?? 0);

    private PeakTension Peak(Func<int, double> of)
    {
        var pieces = _joint.Model.System.Pieces;
        var piece = Enumerable.Range(0, pieces.Length).MaxBy(of);
        return new PeakTension(of(piece), pieces[piece].Name);
    }
}
