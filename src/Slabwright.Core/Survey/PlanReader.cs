using System.Collections.Immutable;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Survey;

/// <summary>A row's points as the road sees them.</summary>
/// <param name="From">First place along the road, m.</param>
/// <param name="To">Last place along the road, m.</param>
/// <param name="Left">Leftmost offset from the centre line, m; positive to the right.</param>
/// <param name="Right">Rightmost offset from the centre line, m.</param>
internal readonly record struct LocatedPoints(double From, double To, double Left, double Right);

/// <summary>Turns a row's points into places on the road.</summary>
internal sealed class PlanReader
{
    private readonly Alignment? alignment;
    private readonly Func<PlanPoint, PlanPoint>? toAlignment;

    public PlanReader(Road road, RowReader row, string coordinateSystem, bool fileHasPoints, FindingLog log)
    {
        alignment = road.Alignment;
        var hasColumns = row.Column(SurveyField.East) is not null && row.Column(SurveyField.North) is not null;
        HasPoints = fileHasPoints || hasColumns;
        if (!HasPoints) return;
        var heading = Words.Key(row.Column(SurveyField.East)?.Heading ?? "");
        var own = coordinateSystem.Length == 0 && hasColumns && heading is "longitude" or "lon" or "long" ? "EPSG:4326" : coordinateSystem;
        toAlignment = alignment is null ? null : Change(own, alignment.CoordinateSystem);
        if (toAlignment is not null) return;
        var grid = alignment?.CoordinateSystem is { Length: > 0 } named ? named : "a local grid";
        var sentence = alignment is null
            ? "The file places its rows by coordinates, but the road has no alignment."
            : $"The file's coordinates are in {own}, the alignment's in {grid}.";
        log.Add(SurveyFaults.CoordinatesUnusable, sentence, value: own);
    }

    /// <summary>True when the file places rows by coordinates.</summary>
    public bool HasPoints { get; }

    /// <summary>Locates a row's points; null when it has none or they cannot be used.</summary>
    public LocatedPoints? Locate(RowReader row)
    {
        if (toAlignment is null || alignment is null) return null;
        var points = row.Row.Points.IsEmpty ? FromColumns(row) : row.Row.Points;
        LocatedPoints? located = null;
        foreach (var point in points)
        {
            if (!double.IsFinite(point.East) || !double.IsFinite(point.North)) continue;
            var (at, offset) = alignment.Locate(toAlignment(point));
            if (!double.IsFinite(at) || !double.IsFinite(offset)) continue;
            located = located is not { } l
                ? new(at, at, offset, offset)
                : new(Math.Min(l.From, at), Math.Max(l.To, at), Math.Min(l.Left, offset), Math.Max(l.Right, offset));
        }

        return located;
    }

    private static ImmutableArray<PlanPoint> FromColumns(RowReader row)
    {
        if (!row.Has(SurveyField.East) || !row.Has(SurveyField.North)) return [];
        if (!Read(SurveyField.East, out var east) || !Read(SurveyField.North, out var north)) return [];
        return [new PlanPoint(east, north)];

        bool Read(SurveyField field, out double value)
        {
            if (row.TryPlainNumber(field, out value)) return true;
            row.Report(SurveyFaults.NumberUnreadable, field, "The coordinate is not a number.");
            return false;
        }
    }

    /// <summary>The way from one coordinate system to another, or null where it is not known. An unnamed system is taken for the other one.</summary>
    private static Func<PlanPoint, PlanPoint>? Change(string from, string to)
    {
        if (from.Length == 0 || from.Equals("local", StringComparison.OrdinalIgnoreCase)) return p => p;
        if (from.Equals(to, StringComparison.OrdinalIgnoreCase)) return p => p;
        if (to.Length == 0) return IsGeographic(from) ? null : p => p;
        if (!TransverseMercator.TryFind(to, out var target) || target is null) return null;
        if (IsGeographic(from)) return p => target.Forward(new GeographicPoint(p.East, p.North));
        return TransverseMercator.TryFind(from, out var source) && source is not null ? p => target.Forward(source.Inverse(p)) : null;
    }

    /// <summary>Longitude and latitude on WGS 84, NAD 83 or ETRS 89, which agree to a metre or two.</summary>
    private static bool IsGeographic(string system) => system.ToUpperInvariant() is "EPSG:4326" or "OGC:CRS84" or "EPSG:4269" or "EPSG:4258" or "EPSG:4979";
}
