using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Slabs;
using Slabwright.Core.Numerics.Plates;

namespace Slabwright.Core.Joints.Live;

/// <summary>
/// One joint with its bars, built once and asked again and again while an axle moves over it. With the base in touch everywhere the forces
/// of the bars come from stored influence and the field from one back-substitution; where contact may be lost each answer finds the contact
/// anew.
/// </summary>
public sealed class LiveJoint
{
    /// <summary>Elements of about a foot: fine enough for wheels that may stand anywhere.</summary>
    private static readonly SlabMesh Mesh = new(0.35, 0.15, 1, 0.4);

    private readonly BarInfluence _influence;
    private readonly SlabState? _rest;

    /// <summary>The last answer where contact may be lost: the next axle stands nearby.</summary>
    private volatile SlabState? _near;

    private LiveJoint(JointConditions conditions, BarLayout? bars, LiveSurroundings around, SlabModel model, BarInfluence influence, SlabState? rest) =>
        (Conditions, Bars, Around, Model, _influence, _rest, _near) = (conditions, bars, around, model, influence, rest, rest);

    /// <summary>The build-up.</summary>
    public JointConditions Conditions { get; }

    /// <summary>The bars; null for a joint without.</summary>
    public BarLayout? Bars { get; }

    /// <summary>What it is looked at with besides wheels.</summary>
    public LiveSurroundings Around { get; }

    /// <summary>The slabs.</summary>
    public SlabModel Model { get; }

    /// <summary>The slabs before any wheel comes, lying or curled under their own weight; null where only wheels are looked at.</summary>
    public SlabState? Rest => _rest;

    /// <summary>What forbids to build a joint; empty where it can be built.</summary>
    public static ImmutableArray<Finding> Check(JointConditions conditions, BarLayout? bars, LiveSurroundings around)
    {
        var findings = JointChecks.Conditions(conditions);
        if (bars is not null) findings = findings.AddRange(JointChecks.Layout(bars, conditions.LaneWidth, conditions.Thickness));
        return JointChecks.Usable(findings) ? SlabSystemCheck.Of(around.In(JointSlabs.Of(conditions, bars))) : findings;
    }

    /// <summary>Builds the model.</summary>
    /// <param name="conditions">The build-up.</param> <param name="bars">The bars; null for none.</param> <param name="around">What else counts.</param>
    /// <param name="step">Told what is done just now.</param> <param name="cancel">Stops between two steps.</param>
    /// <exception cref="ArgumentException">The conditions have an error; see <see cref="Check"/>.</exception>
    public static LiveJoint Build(
        JointConditions conditions, BarLayout? bars, LiveSurroundings around, Action<string>? step = null, CancellationToken cancel = default)
    {
        step?.Invoke("Step 1 of 3: meshing the slabs");
        var model = new SlabModel(around.In(JointSlabs.Of(conditions, bars, Mesh)));
        cancel.ThrowIfCancellationRequested();
        step?.Invoke(FormattableString.Invariant($"Step 2 of 3: solving {model.Unknowns:N0} unknowns for each bar"));
        var influence = new BarInfluence(model);
        cancel.ThrowIfCancellationRequested();
        if (around.AddsUp) return new LiveJoint(conditions, bars, around, model, influence, null);
        step?.Invoke("Step 3 of 3: finding where the slabs rest before a wheel comes");
        return new LiveJoint(conditions, bars, around, model, influence, model.Everything([]));
    }

    /// <summary>Forces of the bars alone, by influence; only where answers add up.</summary>
    public ImmutableArray<BarForce> BarsUnder(IReadOnlyList<WheelPatch> wheels) => _influence.Of(wheels);

    /// <summary>Everything an axle does.</summary>
    public LiveAnswer Under(LiveAxle axle)
    {
        var wheels = axle.Wheels(Conditions);
        return Around.AddsUp
            ? new LiveAnswer(this, axle, wheels, Model.Wheels(wheels), BarsUnder(wheels))
            : Combined(axle, wheels);
    }

    private LiveAnswer Combined(LiveAxle axle, ImmutableArray<WheelPatch> wheels)
    {
        var state = Model.Everything(wheels, _near);
        if (state.Plate.End == SolveEnd.Converged) _near = state;
        return new LiveAnswer(this, axle, wheels, state, state.Bars);
    }
}
