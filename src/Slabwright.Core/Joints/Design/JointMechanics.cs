namespace Slabwright.Core.Joints.Design;

/// <summary>What one load does to a joint.</summary>
/// <param name="Bearing">Greatest bearing stress of a bar on the concrete, Pa; 0 without bars.</param>
/// <param name="Loaded">Deflection of the loaded side, m.</param>
/// <param name="Unloaded">Deflection of the other side, m.</param>
/// <param name="Stress">Greatest tensile stress at the joint, Pa.</param>
internal readonly record struct LoadEffect(double Bearing, double Loaded, double Unloaded, double Stress)
{
    public double Transfer => Loaded > 0 ? Unloaded / Loaded : 0;

    /// <summary>The effect of a load so many times as heavy on the same patches.</summary>
    public LoadEffect Times(double factor) => new(Bearing * factor, Loaded * factor, Unloaded * factor, Stress * factor);
}

/// <summary>Answers what a load does to the joints of one build-up; the design asks nothing else of the slab.</summary>
internal interface IJointMechanics
{
    /// <summary>The effect with some bars; without any where null.</summary>
    LoadEffect Under(JointLoad load, BarLayout? bars);
}
