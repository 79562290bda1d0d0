using System.Collections.Immutable;

namespace Slabwright.Core.Pavement;

/// <summary>A run of straight chords, as a centre line drawn in a map has them. The heading changes at the points.</summary>
public sealed record PolylineElement : AlignmentElement
{
    private readonly double[] _reached;

    /// <summary>A run of chords.</summary>
    /// <param name="points">Two points or more, no two neighbours the same.</param>
    public PolylineElement(ImmutableArray<PlanPoint> points)
    {
        if (points.Length < 2) throw new ArgumentException("A run of chords needs two points.", nameof(points));
        Points = points;
        _reached = new double[points.Length];
        for (var i = 1; i < points.Length; i++) _reached[i] = _reached[i - 1] + points[i - 1].DistanceTo(points[i]);
    }

    /// <summary>The points in order.</summary>
    public ImmutableArray<PlanPoint> Points { get; }

    /// <inheritdoc/>
    public override double Length => _reached[^1];

    /// <inheritdoc/>
    public override double CurvatureAt(double distance) => 0;

    /// <inheritdoc/>
    public override PlanPose PoseAt(double distance)
    {
        var found = Array.BinarySearch(_reached, distance);
        var chord = Math.Clamp(found >= 0 ? found : ~found - 1, 0, Points.Length - 2);
        return Chord(chord).PoseAt(distance - _reached[chord]);
    }

    /// <inheritdoc/>
    public override double NearestTo(PlanPoint point)
    {
        var (nearest, least) = (0.0, double.PositiveInfinity);
        for (var i = 0; i < Points.Length - 1; i++)
        {
            var chord = Chord(i);
            var along = chord.NearestTo(point);
            var distance = chord.PoseAt(along).Point.DistanceTo(point);
            if (distance < least) (nearest, least) = (_reached[i] + along, distance);
        }

        return nearest;
    }

    /// <summary>Two runs are the same when their points are.</summary>
    public bool Equals(PolylineElement? other) => other is not null && Points.AsSpan().SequenceEqual(other.Points.AsSpan());

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Points.Length, Points[0], Points[^1]);

    private LineElement Chord(int index) => new(Points[index], Points[index + 1]);
}
