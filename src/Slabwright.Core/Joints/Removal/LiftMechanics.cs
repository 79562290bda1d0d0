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

    /// <summary>Least angle of a sling leg from the horizontal, rad: 30°.</summary>
    /// <remarks>Source: sling load notes (SLING-NOTES).</remarks>
    public const double LeastAngle = Math.PI / 6;

    /// <summary>Lift pins stand this share of a side in from each end: hogging and sagging moment of a strip on two pins are then equal.</summary>
    /// <remarks>Elementary statics: the root of (1 − 4 a) = 4 a², (√2 − 1)/2.</remarks>
    public const double PinInset = 0.20710678118654752;

    /// <summary>Pull to break a piece loose, N: weight, bond over its underside and friction over its sawn sides.</summary>
    /// <param name="weight">N.</param> <param name="length">m.</param> <param name="width">m.</param> <param name="thickness">m.</param>
    /// <param name="bond">Pa.</param> <param name="friction">Pa.</param>
    public static double BreakLoose(double weight, double length, double width, double thickness, double bond, double friction) =>
        weight + bond * length * width + friction * 2 * (length + width) * thickness;

    /// <summary>Force for one anchor of a precast unit, N: (G + q A) f z/n, with the adhesion only while it leaves its form.</summary>
    /// <remarks>Source: lifting calculation sheet of a precast floor unit (LIFT-SHEET).</remarks>
    /// <param name="weight">G, N.</param> <param name="adhesion">q, Pa.</param> <param name="area">A, m².</param>
    /// <param name="dynamic">Dynamic factor f.</param> <param name="angleFactor">z = 1/cos of the leg's angle from the vertical.</param>
    /// <param name="anchors">n.</param>
    public static double AnchorForce(double weight, double adhesion, double area, double dynamic, double angleFactor, int anchors) =>
        (weight + adhesion * area) * dynamic * angleFactor / anchors;

    /// <summary>Capacity of a load chart at a radius, kg; null beyond its greatest radius. Nearer than its least radius the first row holds.</summary>
    /// <remarks>A straight line between two rows lies above most charts' curves; the next row is the safe reading.</remarks>
    public static double? ChartCapacity(IReadOnlyList<ChartRow> chart, double radius, ChartReading reading)
    {
        if (chart.Count == 0 || radius > chart[^1].Radius + 1e-9) return null;
        var next = 0;
        while (chart[next].Radius < radius - 1e-9) next++;
        if (next == 0 || reading == ChartReading.NextRow) return chart[next].Capacity;
        var (near, far) = (chart[next - 1], chart[next]);
        return near.Capacity + (radius - near.Radius) / (far.Radius - near.Radius) * (far.Capacity - near.Capacity);
    }
}
