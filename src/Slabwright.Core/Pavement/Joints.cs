namespace Slabwright.Core.Pavement;

/// <summary>What a transverse line across a lane is.</summary>
public enum JointKind
{
    /// <summary>Contraction joint with dowels.</summary>
    Dowelled,

    /// <summary>Contraction joint that carries load by aggregate interlock only.</summary>
    Undowelled,

    /// <summary>A transverse crack that opens and closes like a joint.</summary>
    WorkingCrack,

    /// <summary>Expansion joint.</summary>
    Expansion,

    /// <summary>Edge of an earlier full-depth repair.</summary>
    EarlierRepairEdge,

    /// <summary>End of the concrete in this lane: bridge approach, pavement end or gore.</summary>
    PavementEnd,
}

/// <summary>
/// A transverse joint or working crack in one lane. A skewed joint runs over <see cref="SkewRun"/> metres along the road between the
/// lane's left and right edge; positive when the right edge meets it further along the road.
/// </summary>
/// <param name="At">Metres along the road at the lane centre.</param>
/// <param name="Kind">What the line is.</param>
/// <param name="SkewRun">Metres along the road from the left edge crossing to the right edge crossing; 0 for a square joint.</param>
public readonly record struct TransverseJoint(double At, JointKind Kind, double SkewRun = 0)
{
    /// <summary>Metres along the road where the joint meets the lane's left edge.</summary>
    public double AtLeftEdge => At - SkewRun / 2;

    /// <summary>Metres along the road where the joint meets the lane's right edge.</summary>
    public double AtRightEdge => At + SkewRun / 2;

    /// <summary>First place along the road the joint touches in this lane.</summary>
    public double First => At - Math.Abs(SkewRun) / 2;

    /// <summary>Last place along the road the joint touches in this lane.</summary>
    public double Last => At + Math.Abs(SkewRun) / 2;
}
