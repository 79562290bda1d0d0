using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.Json;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;

namespace Slabwright.Data.Import;

/// <summary>
/// GeoJSON (RFC 7946): features with points, lines or areas; properties are the columns. Coordinates are longitude and latitude unless a
/// <c>crs</c> member, which GDAL writes, names another system, or they cannot be degrees.
/// </summary>
internal static class GeoJsonReader
{
    private static readonly JsonDocumentOptions Lenient = new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip, MaxDepth = 64 };

    /// <summary>Opens a document.</summary>
    public static OpenedTable Open(Stream stream, ReadRequest request)
    {
        var document = JsonDocument.Parse(stream, Lenient);
        var root = document.RootElement;
        if (!root.TryGetProperty("features", out var features) || features.ValueKind != JsonValueKind.Array)
        {
            request.Log.Add(SurveyFaults.Unreadable, "The file is JSON but holds no collection of features.");
            document.Dispose();
            return OpenedTable.Nothing(request);
        }

        var columns = Columns(features);
        var source = new RawSource(request.Log.File, Broken.Guard(Rows(features, columns), request.Log), System(root, features));
        return new OpenedTable(source, document.Dispose);
    }

    private static List<string> Columns(JsonElement features)
    {
        var (columns, seen) = (new List<string>(), new HashSet<string>(StringComparer.Ordinal));
        foreach (var feature in features.EnumerateArray())
        {
            foreach (var property in Properties(feature))
            {
                if (seen.Add(property.Name)) columns.Add(property.Name);
            }
        }

        return columns;
    }

    private static IEnumerable<JsonProperty> Properties(JsonElement feature) =>
        feature.ValueKind == JsonValueKind.Object && feature.TryGetProperty("properties", out var properties) && properties.ValueKind == JsonValueKind.Object
            ? properties.EnumerateObject() : [];

    private static IEnumerable<RawRow> Rows(JsonElement features, List<string> columns)
    {
        yield return new RawRow(0, [.. columns.Select(c => new RawCell(c))]);
        long number = 0;
        foreach (var feature in features.EnumerateArray())
        {
            number++;
            var values = new Dictionary<string, JsonElement>(StringComparer.Ordinal);
            foreach (var property in Properties(feature)) values[property.Name] = property.Value;
            var cells = columns.Select(c => values.TryGetValue(c, out var value) ? Cell(value) : RawCell.Empty).ToArray();
            yield return new RawRow(number, ImmutableCollectionsMarshal.AsImmutableArray(cells), Points(feature));
        }
    }

    private static RawCell Cell(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.String => new RawCell(value.GetString() ?? ""),
        JsonValueKind.Number when value.TryGetDouble(out var number) => new RawCell(number.ToString("R", CultureInfo.InvariantCulture), number),
        JsonValueKind.True => new RawCell("yes"),
        JsonValueKind.False => new RawCell("no"),
        JsonValueKind.Null or JsonValueKind.Undefined => RawCell.Empty,
        _ => new RawCell(value.GetRawText()),
    };

    private static ImmutableArray<PlanPoint> Points(JsonElement feature)
    {
        var points = ImmutableArray.CreateBuilder<PlanPoint>();
        if (feature.ValueKind == JsonValueKind.Object && feature.TryGetProperty("geometry", out var geometry)) Shape(geometry, points);
        return points.ToImmutable();
    }

    private static void Shape(JsonElement geometry, ImmutableArray<PlanPoint>.Builder points)
    {
        if (geometry.ValueKind != JsonValueKind.Object) return;
        if (geometry.TryGetProperty("coordinates", out var coordinates)) Positions(coordinates, points);
        if (!geometry.TryGetProperty("geometries", out var parts) || parts.ValueKind != JsonValueKind.Array) return;
        foreach (var part in parts.EnumerateArray()) Shape(part, points);
    }

    private static void Positions(JsonElement coordinates, ImmutableArray<PlanPoint>.Builder points)
    {
        if (coordinates.ValueKind != JsonValueKind.Array || coordinates.GetArrayLength() == 0) return;
        if (coordinates[0].ValueKind == JsonValueKind.Array)
        {
            foreach (var inner in coordinates.EnumerateArray()) Positions(inner, points);
        }
        else if (coordinates.GetArrayLength() >= 2 && coordinates[0].ValueKind == JsonValueKind.Number && coordinates[1].ValueKind == JsonValueKind.Number)
        {
            points.Add(new PlanPoint(coordinates[0].GetDouble(), coordinates[1].GetDouble()));
        }
    }

    private static string System(JsonElement root, JsonElement features)
    {
        if (root.TryGetProperty("crs", out var crs) && crs.ValueKind == JsonValueKind.Object && crs.TryGetProperty("properties", out var properties)
            && properties.ValueKind == JsonValueKind.Object && properties.TryGetProperty("name", out var name) && name.ValueKind == JsonValueKind.String)
        {
            return CoordinateSystems.Plain(name.GetString() ?? "");
        }

        foreach (var feature in features.EnumerateArray())
        {
            if (Points(feature).Any(p => Math.Abs(p.East) > 180 || Math.Abs(p.North) > 90)) return "";
        }

        return "EPSG:4326";
    }
}
