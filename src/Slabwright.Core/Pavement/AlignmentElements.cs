namespace Slabwright.Core.Pavement;

/// <summary>A straight piece.</summary>
/// <param name="Start">Where it starts.</param>
/// <param name="End">Where it ends; not the same point.</param>
public sealed record LineElement(PlanPoint Start, PlanPoint End) : AlignmentElement
{
    /// <summary>Direction, radians anticlockwise from east.</summary>
    public double Heading => Math.Atan2(End.North - Start.North, End.East - Start.East);

    /// <inheritdoc/>
    public override double Length => Start.DistanceTo(End);

    /// <inheritdoc/>
    public override double CurvatureAt(double distance) => 0;

    /// <inheritdoc/>
    public override PlanPose PoseAt(double distance)
    {
        var share = distance / Length;
        return new(new(Start.East + share * (End.East - Start.East), Start.North + share * (End.North - Start.North)), Heading);
    }

    /// <inheritdoc/>
    public override double NearestTo(PlanPoint point)
    {
        var (east, north) = (End.East - Start.East, End.North - Start.North);
        var along = ((point.East - Start.East) * east + (point.North - Start.North) * north) / Length;
        return Math.Clamp(along, 0, Length);
    }
}

/// <summary>
/// A circular arc. Written with its start pose so that neighbours join without a jump; <see cref="Curvature"/> is positive where the
/// road turns left (anticlockwise) and negative where it turns right.
/// </summary>
/// <param name="Start">Point and direction at the start.</param>
/// <param name="Curvature">One over the radius, 1/m, with its sign; not 0.</param>
/// <param name="ArcLength">Length along the arc, m.</param>
public sealed record ArcElement(PlanPose Start, double Curvature, double ArcLength) : AlignmentElement
{
    /// <summary>Radius, m, always positive.</summary>
    public double Radius => 1 / Math.Abs(Curvature);

    /// <summary>Centre of the circle.</summary>
    public PlanPoint Center => new(
        Start.Point.East - Math.Sin(Start.Heading) / Curvature, Start.Point.North + Math.Cos(Start.Heading) / Curvature);

    /// <inheritdoc/>
    public override double Length => ArcLength;

    /// <inheritdoc/>
    public override double CurvatureAt(double distance) => Curvature;

    /// <inheritdoc/>
    public override PlanPose PoseAt(double distance)
    {
        var half = Curvature * distance / 2;
        var chord = half == 0 ? distance : Math.Sin(half) / (Curvature / 2);
        var toward = Start.Heading + half;
        return new(
            new(Start.Point.East + chord * Math.Cos(toward), Start.Point.North + chord * Math.Sin(toward)), Start.Heading + 2 * half);
    }

    /// <inheritdoc/>
    public override double NearestTo(PlanPoint point)
    {
        var center = Center;
        var atStart = Math.Atan2(Start.Point.North - center.North, Start.Point.East - center.East);
        var atPoint = Math.Atan2(point.North - center.North, point.East - center.East);
        var turn = Math.IEEERemainder((atPoint - atStart) * Math.Sign(Curvature), 2 * Math.PI);
        if (turn < 0) turn += 2 * Math.PI;
        var along = turn * Radius;
        if (along <= ArcLength) return along;
        return point.DistanceTo(Start.Point) <= point.DistanceTo(PoseAt(ArcLength).Point) ? 0 : ArcLength;
    }

    /// <summary>The arc from one point to another about a centre.</summary>
    /// <param name="start">First point.</param>
    /// <param name="center">Centre.</param>
    /// <param name="end">Last point.</param>
    /// <param name="clockwise">True where the road turns right.</param>
    public static ArcElement Through(PlanPoint start, PlanPoint center, PlanPoint end, bool clockwise)
    {
        var radius = start.DistanceTo(center);
        var (from, to) = (center.HeadingTo(start), center.HeadingTo(end));
        var turn = clockwise ? from - to : to - from;
        turn -= 2 * Math.PI * Math.Floor(turn / (2 * Math.PI));
        var heading = from + (clockwise ? -Math.PI / 2 : Math.PI / 2);
        return new(new(start, heading), (clockwise ? -1 : 1) / radius, turn * radius);
    }
}

/// <summary>
/// A clothoid: curvature changes evenly from one value to the other, so it serves from line to arc, from arc to line and between two
/// arcs. Curvatures are positive where the road turns left.
/// </summary>
/// <remarks>
/// The end point is the integral of the cosine and sine of the heading, taken with eight-point Gauss-Legendre panels in which the
/// heading turns by at most half a radian; the remainder term is then below 1e-15 of the length, so rounding governs.
/// Checked in the tests against MathNet's adaptive quadrature.
/// </remarks>
/// <param name="Start">Point and direction at the start.</param>
/// <param name="StartCurvature">Curvature at the start, 1/m; 0 where the radius is infinite.</param>
/// <param name="EndCurvature">Curvature at the end, 1/m.</param>
/// <param name="SpiralLength">Length along the curve, m.</param>
public sealed record SpiralElement(PlanPose Start, double StartCurvature, double EndCurvature, double SpiralLength) : AlignmentElement
{
    /// <inheritdoc/>
    public override double Length => SpiralLength;

    /// <inheritdoc/>
    public override double CurvatureAt(double distance) =>
        StartCurvature + (EndCurvature - StartCurvature) * distance / SpiralLength;

    /// <summary>Clothoid parameter A with A² = length over change of curvature, m; infinite when the curvature does not change.</summary>
    public double Parameter => Math.Sqrt(SpiralLength / Math.Abs(EndCurvature - StartCurvature));

    /// <summary>Direction at a distance from the start, radians anticlockwise from east.</summary>
    public double HeadingAt(double distance) =>
        Start.Heading + distance * (StartCurvature + (EndCurvature - StartCurvature) * distance / (2 * SpiralLength));

    /// <inheritdoc/>
    public override PlanPose PoseAt(double distance)
    {
        var sharpest = Math.Max(Math.Abs(StartCurvature), Math.Abs(CurvatureAt(distance)));
        var panels = 1 + (int)Math.Min(1e6, Math.Abs(distance) * sharpest / 0.5);
        var half = distance / panels / 2;
        var (east, north) = (0.0, 0.0);
        for (var panel = 0; panel < panels; panel++)
        {
            var middle = (2 * panel + 1) * half;
            for (var i = 0; i < Nodes.Length; i++)
            {
                var (before, after) = (HeadingAt(middle - half * Nodes[i]), HeadingAt(middle + half * Nodes[i]));
                east += Weights[i] * (Math.Cos(before) + Math.Cos(after));
                north += Weights[i] * (Math.Sin(before) + Math.Sin(after));
            }
        }

        return new(new(Start.Point.East + half * east, Start.Point.North + half * north), HeadingAt(distance));
    }

    /// <summary>Positive Gauss-Legendre nodes of order 8.</summary>
    /// <remarks>Source: Abramowitz and Stegun, Handbook of Mathematical Functions, Table 25.4.</remarks>
    private static readonly double[] Nodes = [0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363];

    private static readonly double[] Weights = [0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763];
}
