using System.Collections.Immutable;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Slabs;

namespace Slabwright.Core.Joints.Live;

/// <summary>An axle group somewhere near a joint.</summary>
/// <param name="Class">Its axles and load.</param>
/// <param name="Along">Middle of the foremost axle from the joint, m; negative on the old slab.</param>
/// <param name="Across">Middle of the axle from the lane's left edge, m.</param>
public sealed record LiveAxle(AxleClass Class, double Along, double Across)
{
    /// <summary>The tyres.</summary>
    public ImmutableArray<WheelPatch> Wheels(JointConditions conditions) =>
        JointLoads.At(Class, Along, Across + HalfTrack(conditions), conditions);

    /// <summary>From the middle of the axle to the middle of its outer tyre, m.</summary>
    public double HalfTrack(JointConditions conditions) =>
        (JointLoads.Track + (JointLoads.Tyre(Class, conditions).OnWheel - 1) * JointLoads.DualSpacing) / 2;

    /// <summary>The same axle kept on the slabs: all tyres inside the lane and within reach of the joint.</summary>
    /// <param name="joint">The joint.</param> <param name="reach">Furthest place along on both sides, m.</param>
    public LiveAxle KeptOn(LiveJoint joint, double reach)
    {
        var tyre = JointLoads.Tyre(Class, joint.Conditions);
        var (side, end) = (HalfTrack(joint.Conditions) + tyre.Width / 2, joint.Model.System.Pieces[^1].To);
        var width = joint.Conditions.LaneWidth;
        return this with
        {
            Along = Math.Clamp(Along, -reach, Math.Min(reach, end)),
            Across = 2 * side > width ? width / 2 : Math.Clamp(Across, side, width - side),
        };
    }

    /// <summary>The axle in the wheel paths, its foremost tyres touching the joint from the old slab.</summary>
    public static LiveAxle AtJoint(AxleClass axle, JointConditions conditions)
    {
        var tyre = JointLoads.Tyre(axle, conditions);
        var outer = conditions.LaneWidth - JointLoads.PathFromEdge - tyre.Width / 2;
        var half = new LiveAxle(axle, 0, 0).HalfTrack(conditions);
        return new LiveAxle(axle, -tyre.Length / 2, outer - half);
    }
}
