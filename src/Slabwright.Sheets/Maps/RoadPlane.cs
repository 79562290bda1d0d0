using System.Collections.Immutable;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Sheets.Strip;

namespace Slabwright.Sheets.Maps;

/// <summary>A point of a map or drawing.</summary>
/// <param name="X">East, or along the road.</param>
/// <param name="Y">North, or to the left of the road.</param>
public readonly record struct MapPoint(double X, double Y);

/// <summary>
/// Places of the road as plane coordinates. With an alignment: its own coordinates in metres, the lanes lying evenly to both sides of the
/// centre line. Without: a straightened grid in the project's length unit, x along the road from its start and y to the left of lane 1's left
/// edge, so that lanes have negative y.
/// </summary>
public sealed class RoadPlane
{
    /// <summary>Curved edges are drawn as chords no longer than this, m; on a 250 m radius the chord is off by 5 mm.</summary>
    private const double LongestChord = 3;

    private readonly Road road;
    private readonly double half;

    /// <summary>The plane of a road.</summary>
    public RoadPlane(Road road, UnitSystem units)
    {
        this.road = road;
        half = CrossSection.Of(road).Width / 2;
        Unit = IsTrue || units == UnitSystem.Si ? Units.Metre : Units.Foot;
    }

    /// <summary>True when the coordinates follow the road's alignment.</summary>
    public bool IsTrue => road.Alignment is { Elements.IsEmpty: false };

    /// <summary>Unit of the coordinates.</summary>
    public Unit Unit { get; }

    /// <summary>Coordinate system of the alignment, e.g. <c>EPSG:26915</c>; empty when it names none or there is no alignment.</summary>
    public string CoordinateSystem => IsTrue ? road.Alignment!.CoordinateSystem : "";

    /// <summary>What the coordinates are, in one sentence for people who open the file.</summary>
    public string Sentence => IsTrue
        ? CoordinateSystem.Length > 0
            ? $"Coordinates follow the alignment, {CoordinateSystem}, in metres."
            : "Coordinates follow the alignment in its local grid, in metres."
        : $"The project has no alignment: the road is drawn straight, x along the road from its start, y to the left, in {Unit.Symbol}. These are not map coordinates.";

    /// <summary>EPSG code of the coordinate system, or null.</summary>
    public int? Epsg
    {
        get
        {
            var system = CoordinateSystem;
            return system.StartsWith("EPSG:", StringComparison.OrdinalIgnoreCase)
                && int.TryParse(system.AsSpan(5), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var code)
                ? code
                : null;
        }
    }

    /// <summary>The point of a place.</summary>
    /// <param name="point">Metres along the road, and metres to the right of lane 1's left edge.</param>
    public MapPoint At(StripPoint point)
    {
        if (!IsTrue) return new MapPoint(Unit.FromBase(point.At), -Unit.FromBase(point.Offset));
        var plan = road.Alignment!.PoseAt(point.At).Offset(point.Offset - half);
        return new MapPoint(plan.East, plan.North);
    }

    /// <summary>A line through road points; stretches along a curved road are broken into chords.</summary>
    public ImmutableArray<MapPoint> Line(IReadOnlyList<StripPoint> points)
    {
        var line = ImmutableArray.CreateBuilder<MapPoint>(points.Count);
        for (var i = 0; i < points.Count; i++)
        {
            if (i > 0 && IsTrue) AddChords(line, points[i - 1], points[i]);
            line.Add(At(points[i]));
        }

        return line.ToImmutable();
    }

    /// <summary>A closed ring, anticlockwise, first point repeated at the end.</summary>
    public ImmutableArray<MapPoint> Ring(IReadOnlyList<StripPoint> corners)
    {
        var ring = Line([.. corners, corners[0]]);
        return SignedArea(ring) < 0 ? [.. ring.Reverse()] : ring;
    }

    /// <summary>The ring of a rectangle in road coordinates.</summary>
    public ImmutableArray<MapPoint> Rectangle(double from, double to, double left, double right) =>
        Ring([new(from, left), new(from, right), new(to, right), new(to, left)]);

    private void AddChords(ImmutableArray<MapPoint>.Builder line, StripPoint a, StripPoint b)
    {
        var pieces = (int)Math.Ceiling(Math.Abs(b.At - a.At) / LongestChord);
        for (var k = 1; k < pieces; k++)
        {
            var share = k / (double)pieces;
            line.Add(At(new StripPoint(a.At + (b.At - a.At) * share, a.Offset + (b.Offset - a.Offset) * share)));
        }
    }

    private static double SignedArea(ImmutableArray<MapPoint> ring)
    {
        var (sum, origin) = (0.0, ring[0]);
        for (var i = 1; i < ring.Length; i++)
        {
            sum += (ring[i - 1].X - origin.X) * (ring[i].Y - origin.Y) - (ring[i].X - origin.X) * (ring[i - 1].Y - origin.Y);
        }

        return sum / 2;
    }
}
