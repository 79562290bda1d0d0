using System.Collections.Immutable;
using Slabwright.Core.Joints.Slabs;

namespace Slabwright.Core.Joints.Design;

/// <summary>
/// The joint by plate finite elements on the slabs of <see cref="JointSlabs"/>. They are factored once; each choice of bars is a small
/// system on top. Answers are worked out for one load of each axle shape and scaled by weight: the size of the tyre patches stays that of
/// the shape's standard load.
/// </summary>
internal sealed class PlateMechanics : IJointMechanics
{
    /// <summary>β times the embedment from which the rest of a bar changes its forces by less than half a hundredth.</summary>
    internal const double EndlessFrom = 3;

    private readonly JointConditions _conditions;
    private readonly JointInfluence _influence;
    private readonly ImmutableArray<Shape> _shapes;
    private readonly Dictionary<(int Shape, double Diameter, double Embedment, int Bars, double First, double Sum), LoadEffect> _known = [];

    /// <summary>Factors the slabs of a build-up.</summary>
    /// <param name="conditions">The build-up.</param>
    /// <param name="candidates">Layouts that will be asked for.</param>
    public PlateMechanics(JointConditions conditions, IReadOnlyList<BarLayout?> candidates)
    {
        _conditions = conditions;
        _shapes = [.. JointLoads.Shapes(conditions).Select(l => new Shape(l.Class.Axles, l.Tyres, l.Place, l.BeforeJoint, l))];
        var places = candidates.SelectMany(c => c is null ? [] : c.Offsets).Distinct().Order().ToArray();
        var cases = _shapes.Select(s => new LoadCase(s.Load.Place.ToString(), s.Load.Patches)).ToArray();
        _influence = new JointInfluence(JointSlabs.Of(conditions), JointSlabs.Old, JointSlabs.Repair, places, cases);
    }

    private sealed record Shape(int Axles, int Tyres, WheelPlace Place, bool Before, JointLoad Load);

    /// <summary>Unknowns of the plate model.</summary>
    public int Unknowns => _influence.Unknowns;

    public LoadEffect Under(JointLoad load, BarLayout? bars)
    {
        for (var n = 0; n < _shapes.Length; n++)
        {
            var shape = _shapes[n];
            if (shape.Axles != load.Class.Axles || shape.Tyres != load.Tyres || shape.Place != load.Place || shape.Before != load.BeforeJoint) continue;
            return Known(n, bars).Times(load.Class.Load / shape.Load.Class.Load);
        }

        throw new ArgumentException("The load is not one of the build-up's own.", nameof(load));
    }

    /// <summary>Works out the answers for one layout.</summary>
    public void Warm(BarLayout? bars)
    {
        for (var n = 0; n < _shapes.Length; n++) Known(n, bars);
    }

    private LoadEffect Known(int shape, BarLayout? bars)
    {
        bars = bars is null ? null : Endless(bars);
        var key = bars is null ? (shape, 0, 0, 0, 0, 0) : (shape, bars.Diameter, bars.Embedment, bars.Bars, bars.Offsets[0], bars.Offsets.Sum());
        if (!_known.TryGetValue(key, out var effect)) _known[key] = effect = Work(shape, bars);
        return effect;
    }

    private LoadEffect Work(int shape, BarLayout? bars)
    {
        var c = _conditions;
        var (diameter, into, other) = bars is null ? (JointSlabs.FarBar, 1, 1) : (bars.Diameter, bars.Embedment, JointSlabs.Beyond(c, bars));
        var bar = JointSlabs.Bar(c, diameter, into, other);
        var answer = _influence.Respond(shape, bar, bars is null ? [] : [.. bars.Offsets.Select(x => _influence.Places.BinarySearch(x))]);
        return new LoadEffect(
            answer.Bearing, answer.Deflection.Loaded, answer.Deflection.Unloaded, Math.Max(answer.Tension.Bottom, answer.Tension.Top));
    }

    /// <summary>A bar long enough on both sides stands for every longer one, so that lengths share their answers.</summary>
    private BarLayout Endless(BarLayout bars)
    {
        var length = EndlessFrom / DowelBar.Beta(_conditions.DowelSupport, bars.Diameter, _conditions.SteelModulus);
        return Math.Min(bars.Embedment, JointSlabs.Beyond(_conditions, bars)) < length ? bars : bars with { Embedment = length, Length = 2 * length + _conditions.JointWidth };
    }
}
