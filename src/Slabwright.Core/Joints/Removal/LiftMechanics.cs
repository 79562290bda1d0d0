namespace Slabwright.Core.Joints.Removal;

/// <summary>
/// Mass of a piece to be lifted and the pull in its slings. Bond and suction at the base, side friction, bars not cut through and water
/// add to the mass and have no published figure; nobody stands under or beside a hanging piece.
/// </summary>
public static class LiftMechanics
{
    /// <summary>Mass of a piece, kg.</summary>
    /// <param name="length">m.</param> <param name="width">m.</param> <param name="thickness">m.</param>
    /// <param name="density">kg/m³; plain concrete 2,400 (150 lb/ft³).</param>
    public static double PieceMass(double length, double width, double thickness, double density) => length * width * thickness * density;

    /// <summary>Pull in one sling leg, N: W/(n sin θ).</summary>
    /// <remarks>
    /// Source: sling load notes; angles under 30° are not recommended (SLING-NOTES). With four independent legs only two may be taken to
    /// carry unless the load is equalised (PRECAST-LIFTING, 3.3–3.6).
    /// </remarks>
    /// <param name="weight">W, N.</param> <param name="legs">Legs that carry.</param> <param name="angle">θ from the horizontal, rad.</param>
    public static double LegTension(double weight, int legs, double angle) => weight / (legs * Math.Sin(angle));
}
