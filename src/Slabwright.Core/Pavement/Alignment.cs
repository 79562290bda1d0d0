using System.Collections.Immutable;

namespace Slabwright.Core.Pavement;

/// <summary>A point in plan: metres east and north in the alignment's coordinate system.</summary>
/// <param name="East">Metres east (x).</param>
/// <param name="North">Metres north (y).</param>
public readonly record struct PlanPoint(double East, double North)
{
    /// <summary>Straight distance to another point, m.</summary>
    public double DistanceTo(PlanPoint other) => Math.Sqrt(
        (other.East - East) * (other.East - East) + (other.North - North) * (other.North - North));

    /// <summary>Direction to another point, radians anticlockwise from east.</summary>
    public double HeadingTo(PlanPoint other) => Math.Atan2(other.North - North, other.East - East);
}

/// <summary>A point on the centre line with its direction.</summary>
/// <param name="Point">Where.</param>
/// <param name="Heading">Direction of travel, radians anticlockwise from east.</param>
public readonly record struct PlanPose(PlanPoint Point, double Heading)
{
    /// <summary>The point beside this one, <paramref name="offset"/> metres to the right of the direction of travel.</summary>
    public PlanPoint Offset(double offset) => new(
        Point.East + offset * Math.Sin(Heading), Point.North - offset * Math.Cos(Heading));
}

/// <summary>A point in plan as the road sees it.</summary>
/// <param name="At">Nearest place, metres along the road; before 0 or past the end where the point lies beyond the alignment.</param>
/// <param name="Offset">Distance from the centre line, m; positive to the right of the direction of travel.</param>
public readonly record struct PlanLocation(double At, double Offset);

/// <summary>One piece of an alignment: a line, an arc, a spiral or a run of chords.</summary>
public abstract record AlignmentElement
{
    /// <summary>Length along the piece, m.</summary>
    public abstract double Length { get; }

    /// <summary>Pose at a distance from the piece's start, 0 to <see cref="Length"/>.</summary>
    public abstract PlanPose PoseAt(double distance);

    /// <summary>Curvature at a distance from the piece's start, 1/m; positive where the road turns left.</summary>
    /// <remarks>Pieces that do not say so themselves are asked for their heading five centimetres on either side.</remarks>
    public virtual double CurvatureAt(double distance)
    {
        var (from, to) = (Math.Max(0, distance - 0.05), Math.Min(Length, distance + 0.05));
        return Math.IEEERemainder(PoseAt(to).Heading - PoseAt(from).Heading, 2 * Math.PI) / (to - from);
    }

    /// <summary>Distance from the piece's start to its point nearest to a point, 0 to <see cref="Length"/>.</summary>
    /// <remarks>
    /// Looks at points no further apart than a tenth of a radian of turning or an eighth of the length, then closes in on the foot of
    /// the perpendicular by bisection to a nanometre. Pieces with a closed form answer directly.
    /// </remarks>
    public virtual double NearestTo(PlanPoint point)
    {
        var sharpest = Math.Max(Math.Abs(CurvatureAt(0)), Math.Abs(CurvatureAt(Length)));
        var steps = 8 + (int)Math.Min(1e5, Length * sharpest / 0.1);
        var (best, least) = (0, double.PositiveInfinity);
        for (var i = 0; i <= steps; i++)
        {
            var distance = PoseAt(Length * i / steps).Point.DistanceTo(point);
            if (distance < least) (best, least) = (i, distance);
        }

        var (low, high) = (Length * Math.Max(0, best - 1) / steps, Length * Math.Min(steps, best + 1) / steps);
        while (high - low > 1e-9 && (low + high) / 2 is var middle && middle > low && middle < high)
        {
            if (AheadOf(PoseAt(middle), point) > 0) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>How far a point lies ahead of a pose along its heading, m.</summary>
    internal static double AheadOf(PlanPose pose, PlanPoint point) =>
        (point.East - pose.Point.East) * Math.Cos(pose.Heading) + (point.North - pose.Point.North) * Math.Sin(pose.Heading);

    /// <summary>How far a point lies to the right of a pose, m.</summary>
    internal static double RightOf(PlanPose pose, PlanPoint point) =>
        (point.East - pose.Point.East) * Math.Sin(pose.Heading) - (point.North - pose.Point.North) * Math.Cos(pose.Heading);
}

/// <summary>
/// The road's centre line in plan. The road's place 0 lies <see cref="StartOffset"/> metres from the start of the first piece.
/// </summary>
/// <param name="Name">Name in its file.</param>
/// <param name="Elements">Pieces in order.</param>
/// <param name="CoordinateSystem">
/// EPSG code such as <c>EPSG:3875</c>, a transverse Mercator as <see cref="TransverseMercator.ToString"/> writes it, or empty for a
/// local grid.
/// </param>
/// <param name="StartOffset">Metres from the start of the first piece to the start of the road.</param>
public sealed record Alignment(string Name, ImmutableArray<AlignmentElement> Elements, string CoordinateSystem, double StartOffset = 0)
{
    /// <summary>Length of all pieces, m.</summary>
    public double Length => Elements.Sum(e => e.Length);

    /// <summary>Pose at a place along the road; beyond the ends the first and last directions carry on straight.</summary>
    /// <param name="at">Metres along the road.</param>
    public PlanPose PoseAt(double at)
    {
        var distance = at + StartOffset;
        if (distance <= 0) return Beyond(Elements[0].PoseAt(0), distance);
        foreach (var element in Elements)
        {
            if (distance <= element.Length) return element.PoseAt(distance);
            distance -= element.Length;
        }

        return Beyond(Elements[^1].PoseAt(Elements[^1].Length), distance);
    }

    /// <summary>
    /// The nearest place on the road to a point and how far beside it the point lies. Beyond the ends the first and last directions
    /// carry on straight, as <see cref="PoseAt"/> has it. Where two places are equally near, the first is given.
    /// </summary>
    /// <param name="point">A point in the alignment's coordinate system.</param>
    public PlanLocation Locate(PlanPoint point)
    {
        var (start, end) = (Elements[0].PoseAt(0), Elements[^1].PoseAt(Elements[^1].Length));
        var (at, pose, least, reached) = (0.0, start, double.PositiveInfinity, 0.0);
        foreach (var element in Elements)
        {
            var along = element.NearestTo(point);
            var near = element.PoseAt(along);
            var distance = near.Point.DistanceTo(point);
            if (distance < least) (at, pose, least) = (reached + along, near, distance);
            reached += element.Length;
        }

        var (before, after) = (-AlignmentElement.AheadOf(start, point), AlignmentElement.AheadOf(end, point));
        if (before > 0 && Math.Abs(AlignmentElement.RightOf(start, point)) < least)
            return new(-before - StartOffset, AlignmentElement.RightOf(start, point));
        if (after > 0 && Math.Abs(AlignmentElement.RightOf(end, point)) < least)
            return new(reached + after - StartOffset, AlignmentElement.RightOf(end, point));
        return new(at - StartOffset, AlignmentElement.RightOf(pose, point) < 0 ? -least : least);
    }

    private static PlanPose Beyond(PlanPose pose, double distance) => pose with
    {
        Point = new PlanPoint(pose.Point.East + distance * Math.Cos(pose.Heading), pose.Point.North + distance * Math.Sin(pose.Heading)),
    };
}
