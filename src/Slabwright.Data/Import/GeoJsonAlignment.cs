using System.Collections.Immutable;
using System.Text.Json;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Import;

/// <summary>
/// Reads a centre line from GeoJSON. Longitude and latitude on WGS 84, as the standard has it, are laid on a transverse Mercator plane
/// through the middle of the line, so that lengths are true; a named projected system is taken as it is.
/// </summary>
/// <remarks>Source: RFC 7946; the <c>crs</c> member is that of the 2008 GeoJSON specification, which many programs still write.</remarks>
public static class GeoJsonAlignment
{
    /// <summary>Reads the first line string, or the one whose <c>name</c> property is given.</summary>
    /// <param name="stream">GeoJSON in UTF-8.</param>
    /// <param name="file">File name for findings.</param>
    /// <param name="name">Value of the feature's <c>name</c>, or null.</param>
    public static AlignmentReadResult Read(Stream stream, string file, string? name = null)
    {
        try
        {
            using var document = JsonDocument.Parse(stream);
            return Read(document.RootElement, file, name);
        }
        catch (JsonException exception)
        {
            return Wrong(file, "ROAD-060", "The file is not valid JSON.", exception.Message, "Export the line again.", exception.LineNumber + 1);
        }
    }

    private static AlignmentReadResult Read(JsonElement root, string file, string? name)
    {
        var lines = Lines(root).ToList();
        var index = name is null ? 0 : lines.FindIndex(l => l.Name == name);
        if (index < 0 || lines.Count == 0)
        {
            return Wrong(file, "ROAD-061", "The file has no such line.", name,
                lines.Count == 0 ? "Give a feature whose geometry is a LineString." : "Lines in the file: " + string.Join(", ", lines.Select(l => l.Name)) + ".");
        }

        var line = lines[index];
        if (Points(line.Coordinates) is not { Length: > 1 } points)
            return Wrong(file, "ROAD-068", "The line has fewer than two points that can be read.", null, "Give two positions or more, each of two numbers.");
        var system = System(root);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        if (name is null && lines.Count > 1)
        {
            findings.Add(new("ROAD-061", FindingLevel.Note, "The file has more than one line; the first is used.", new(file, null, "name"), line.Name,
                "Give the line's name in project.json."));
        }

        if (system.Length == 0)
        {
            if (points.Any(p => Math.Abs(p.East) > 180 || Math.Abs(p.North) > 90))
                return Wrong(file, "ROAD-070", "The coordinates are no longitudes and latitudes, and the file names no projected system.", null,
                    "Export the line in WGS 84, or name the system in a crs member such as urn:ogc:def:crs:EPSG::32624.");
            var middle = points[points.Length / 2];
            var plane = TransverseMercator.LocalAt(new(middle.East, middle.North));
            points = [.. points.Select(p => plane.Forward(new(p.East, p.North)))];
            system = plane.ToString();
        }

        ImmutableArray<PlanPoint> apart = [.. points.Where((p, i) => i == 0 || p.DistanceTo(points[i - 1]) > 0.001)];
        if (apart.Length < 2) return Wrong(file, "ROAD-068", "The line has no length.", null, "Give two positions apart from one another.");
        return new(new Alignment(line.Name, [new PolylineElement(apart)], system), null, findings.ToImmutable());
    }

    private static IEnumerable<(string Name, JsonElement Coordinates)> Lines(JsonElement element, string name = "")
    {
        var kind = Member(element, "type") is { ValueKind: JsonValueKind.String } type ? type.GetString() : "";
        var members = kind switch
        {
            "FeatureCollection" => Items(element, "features").SelectMany(f => Lines(f)),
            "Feature" => Member(element, "geometry") is { } geometry ? Lines(geometry, NameOf(element)) : [],
            "GeometryCollection" => Items(element, "geometries").SelectMany(g => Lines(g, name)),
            "LineString" => Member(element, "coordinates") is { } coordinates ? [(name, coordinates)] : [],
            "MultiLineString" => Items(element, "coordinates").Select(c => (name, c)),
            _ => [],
        };
        return members;
    }

    private static string NameOf(JsonElement feature) =>
        Member(feature, "properties") is { } properties && Member(properties, "name") is { ValueKind: JsonValueKind.String } name ? name.GetString()! : "";

    private static JsonElement? Member(JsonElement element, string name) =>
        element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out var value) ? value : null;

    private static IEnumerable<JsonElement> Items(JsonElement element, string name) =>
        Member(element, name) is { ValueKind: JsonValueKind.Array } items ? items.EnumerateArray() : [];

    /// <summary>Positions as they stand, first number east; null when one of them is no position.</summary>
    private static ImmutableArray<PlanPoint>? Points(JsonElement coordinates)
    {
        if (coordinates.ValueKind != JsonValueKind.Array) return null;
        var points = ImmutableArray.CreateBuilder<PlanPoint>();
        foreach (var position in coordinates.EnumerateArray())
        {
            if (position.ValueKind != JsonValueKind.Array || position.GetArrayLength() < 2) return null;
            if (position[0].ValueKind != JsonValueKind.Number || position[1].ValueKind != JsonValueKind.Number) return null;
            points.Add(new(position[0].GetDouble(), position[1].GetDouble()));
        }

        return points.ToImmutable();
    }

    /// <summary>The EPSG code a file names, empty for longitude and latitude.</summary>
    private static string System(JsonElement root)
    {
        var text = Member(root, "crs") is { } crs && Member(crs, "properties") is { } properties && Member(properties, "name") is { ValueKind: JsonValueKind.String } name
            ? name.GetString()!
            : "";
        var plain = CoordinateSystems.Plain(text);
        return plain.StartsWith("EPSG:", StringComparison.Ordinal) && plain != "EPSG:4326" ? plain : "";
    }

    private static AlignmentReadResult Wrong(string file, string code, string sentence, string? value, string mend, long? row = null) =>
        new(null, null, [new(code, FindingLevel.Error, sentence, new(file, row), value, mend)]);
}
