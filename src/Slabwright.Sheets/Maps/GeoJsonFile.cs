using System.Buffers;
using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using Slabwright.Core.Job;
using Slabwright.Core.Pavement;

namespace Slabwright.Sheets.Maps;

/// <summary>
/// GeoJSON after RFC 7946: longitude and latitude on WGS 84 where the alignment's coordinate system is one Slabwright can turn into them.
/// Otherwise the coordinates are the alignment's own (named in the older <c>crs</c> member when it has an EPSG code) or the straightened
/// grid, and the file says so in its <c>coordinates_are</c> member.
/// </summary>
public static class GeoJsonFile
{
    /// <summary>One collection a layer.</summary>
    public static IReadOnlyList<SheetFile> Write(Project project, RepairPlan plan, SheetOptions options)
    {
        var plane = new RoadPlane(project.Road, project.UnitSystem);
        var place = GeographicPlace.From(plane);
        return [.. MapLayers.Of(project, plan, plane).Select(layer => WriteFile(layer, plane, place, options))];
    }

    private static SheetFile WriteFile(MapLayer layer, RoadPlane plane, GeographicPlace place, SheetOptions options)
    {
        var buffer = new ArrayBufferWriter<byte>(256 * 1024);
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("type", "FeatureCollection");
            json.WriteString("name", layer.Name);
            json.WriteString("title", layer.Title);
            json.WriteString("coordinates_are", place.Sentence);
            if (!place.IsGeographic && plane.Epsg is { } code) WriteSystem(json, code);
            json.WriteStartArray("features");
            WriteLayer(json, layer, place);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return new SheetFile($"{options.BaseName}-{layer.Name.Replace('_', '-')}.geojson", "application/geo+json", $"Map as GeoJSON: {layer.Title.ToLowerInvariant()}", buffer.WrittenSpan.ToArray());
    }

    private static void WriteSystem(Utf8JsonWriter json, int code)
    {
        json.WriteStartObject("crs");
        json.WriteString("type", "name");
        json.WriteStartObject("properties");
        json.WriteString("name", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"urn:ogc:def:crs:EPSG::{code}"));
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteLayer(Utf8JsonWriter json, MapLayer layer, GeographicPlace place)
    {
        foreach (var feature in layer.Features)
        {
            json.WriteStartObject();
            json.WriteString("type", "Feature");
            json.WriteStartObject("geometry");
            json.WriteString("type", layer.IsPolygon ? "Polygon" : "LineString");
            json.WriteStartArray("coordinates");
            if (layer.IsPolygon) json.WriteStartArray();
            foreach (var point in feature.Points) WritePoint(json, place.Of(point), place.Decimals);
            if (layer.IsPolygon) json.WriteEndArray();
            json.WriteEndArray();
            json.WriteEndObject();
            json.WriteStartObject("properties");
            WriteValues(json, layer.Fields, feature.Values);
            json.WriteEndObject();
            json.WriteEndObject();
        }
    }

    private static void WritePoint(Utf8JsonWriter json, MapPoint point, int decimals)
    {
        json.WriteStartArray();
        json.WriteNumberValue(Math.Round(point.X, decimals));
        json.WriteNumberValue(Math.Round(point.Y, decimals));
        json.WriteEndArray();
    }

    private static void WriteValues(Utf8JsonWriter json, ImmutableArray<MapField> fields, ImmutableArray<object?> values)
    {
        for (var i = 0; i < fields.Length; i++)
        {
            switch (values[i])
            {
                case null: json.WriteNull(fields[i].Name); break;
                case double number: json.WriteNumber(fields[i].Name, number); break;
                case long whole: json.WriteNumber(fields[i].Name, whole); break;
                case var text: json.WriteString(fields[i].Name, text.ToString()); break;
            }
        }
    }
}
