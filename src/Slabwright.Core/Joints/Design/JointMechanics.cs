namespace Slabwright.Core.Joints.Design;

/// <summary>What one load does to a joint.</summary>
/// <param name="Bearing">Greatest bearing stress of a bar on the concrete, Pa; 0 without bars.</param>
/// <param name="Loaded">Deflection of the loaded side, m.</param>
/// <param name="Unloaded">Deflection of the other side, m.</param>
/// <param name="Stress">Greatest tensile stress at the joint, Pa.</param>
internal readonly record struct JointResponse(double Bearing, double Loaded, double Unloaded, double Stress)
{
    public double Transfer => Loaded > 0 ? Unloaded / Loaded : 0;
}

/// <summary>Answers what a load does to the joints of one build-up; the design asks nothing else of the slab.</summary>
internal interface IJointMechanics
{
    /// <summary>The response with some bars; without any where null.</summary>
    JointResponse Under(JointLoad load, BarLayout? bars);
}

/// <summary>Chooses the mechanics of a build-up.</summary>
internal static class JointMechanics
{
    public static IJointMechanics Of(JointConditions conditions, IReadOnlyList<BarLayout?> candidates) => new ClosedMechanics(conditions, 1.0);
}
