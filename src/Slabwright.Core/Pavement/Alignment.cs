using System.Collections.Immutable;

namespace Slabwright.Core.Pavement;

/// <summary>A point in plan: metres east and north in the alignment's coordinate system.</summary>
/// <param name="East">Metres east (x).</param>
/// <param name="North">Metres north (y).</param>
public readonly record struct PlanPoint(double East, double North);

/// <summary>A point on the centre line with its direction.</summary>
/// <param name="Point">Where.</param>
/// <param name="Heading">Direction of travel, radians anticlockwise from east.</param>
public readonly record struct PlanPose(PlanPoint Point, double Heading)
{
    /// <summary>The point beside this one, <paramref name="offset"/> metres to the right of the direction of travel.</summary>
    public PlanPoint Offset(double offset) => new(
        Point.East + offset * Math.Sin(Heading), Point.North - offset * Math.Cos(Heading));
}

/// <summary>One piece of an alignment: a line, an arc or a spiral.</summary>
public abstract record AlignmentElement
{
    /// <summary>Length along the piece, m.</summary>
    public abstract double Length { get; }

    /// <summary>Pose at a distance from the piece's start, 0 to <see cref="Length"/>.</summary>
    public abstract PlanPose PoseAt(double distance);
}

/// <summary>
/// The road's centre line in plan. The road's place 0 lies <see cref="StartOffset"/> metres from the start of the first piece.
/// </summary>
/// <param name="Name">Name in its file.</param>
/// <param name="Elements">Pieces in order.</param>
/// <param name="CoordinateSystem">EPSG code such as <c>EPSG:3875</c>, or empty for a local grid.</param>
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

    private static PlanPose Beyond(PlanPose pose, double distance) => pose with
    {
        Point = new PlanPoint(pose.Point.East + distance * Math.Cos(pose.Heading), pose.Point.North + distance * Math.Sin(pose.Heading)),
    };
}
