using Slabwright.Core.Joints;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Slabs;

namespace Slabwright.Core.Handbook;

/// <summary>
/// The plate model of one joint by hand: the slabs of <see cref="JointSlabs"/>, finely meshed under the wheels. The wheel stands on the old
/// slab.
/// </summary>
internal sealed class HandJointPlate
{
    public HandJointPlate(JointConditions c, BarLayout bars, WheelPatch wheel)
    {
        CornerWheel = wheel with { Across = c.LaneWidth - wheel.Width / 2 };
        var middle = wheel with { Across = c.LaneWidth / 2 };
        var slabs = JointSlabs.Of(c, mesh: SlabMesh.Fine, whole: true);
        var inside = wheel with { Along = slabs.Pieces[JointSlabs.Old].From / 2, Across = c.LaneWidth / 2 };
        slabs = slabs with { FineAt = [wheel, CornerWheel, middle, inside] };
        var bar = JointSlabs.Bar(c, bars);
        BarStiffness = bar.ShearStiffness;
        var influence = new JointInfluence(
            slabs, 0, 1, bars.Offsets, [new LoadCase("joint", [wheel]), new LoadCase("corner", [CornerWheel]), new LoadCase("middle", [middle])]);
        int[] all = [.. Enumerable.Range(0, bars.Bars)];
        (BareMiddle, BareJoint, BareCorner) = (influence.Respond(2, bar, []), influence.Respond(0, bar, []), influence.Respond(1, bar, []));
        (Joint, Corner) = (influence.Respond(0, bar, all), influence.Respond(1, bar, all));

        var joined = slabs with { Bars = [.. bars.Offsets.Select(at => new SlabBar(0, 1, at, bar))] };
        var model = new SlabModel(joined);
        var state = model.Wheels([inside]);
        Interior = (state.GreatestTension(0).Bottom, state.Deflection(0, inside.Along, inside.Across));
        Run = new HandPlateRun(model.Unknowns, state.Plate.Residual, state.Plate.Imbalance);
    }

    /// <summary>The wheel at the lane's right edge.</summary>
    public WheelPatch CornerWheel { get; }

    /// <summary>Stiffness of one bar of its true lengths, N/m.</summary>
    public double BarStiffness { get; }

    /// <summary>The wheel amid the old slab: greatest stress at the bottom, Pa, and deflection under it, m.</summary>
    public (double Stress, double Deflection) Interior { get; }

    /// <summary>The wheel at the joint amid the lane, as far from the corners as it can be.</summary>
    public JointResponse BareMiddle { get; }

    public JointResponse BareJoint { get; }

    public JointResponse BareCorner { get; }

    public JointResponse Joint { get; }

    public JointResponse Corner { get; }

    public HandPlateRun Run { get; }
}
