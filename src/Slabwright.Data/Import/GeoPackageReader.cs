using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.InteropServices;
using Microsoft.Data.Sqlite;
using NetTopologySuite.IO;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;

namespace Slabwright.Data.Import;

/// <summary>GeoPackage (OGC 12-128): finds the layer that looks like a survey, then streams its features.</summary>
internal static class GeoPackageReader
{
    private sealed record Layer(string Table, string? Geometry, string System, string? Key, ImmutableArray<string> Columns);

    /// <summary>Opens a package; a stream that is no file is copied to one first, since the database needs one.</summary>
    public static OpenedTable Open(Stream stream, ReadRequest request)
    {
        var own = stream is FileStream file && File.Exists(file.Name) ? null : Copy(stream);
        var path = own ?? ((FileStream)stream).Name;
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ToString());
        void Close()
        {
            connection.Dispose();
            if (own is not null) File.Delete(own);
        }

        try
        {
            connection.Open();
            var layer = FindLayer(Layers(connection), request);
            if (layer is not null) return new OpenedTable(Source(connection, layer, request), Close);
            Close();
            return OpenedTable.Nothing(request);
        }
        catch
        {
            Close();
            throw;
        }
    }

    private static RawSource Source(SqliteConnection connection, Layer layer, ReadRequest request) =>
        new(request.Log.File, Broken.Guard(Rows(connection, layer), request.Log), layer.System);

    private static List<Layer> Layers(SqliteConnection connection)
    {
        const string sql = """
            SELECT c.table_name, g.column_name, s.organization || ':' || s.organization_coordsys_id
            FROM gpkg_contents c
            LEFT JOIN gpkg_geometry_columns g ON g.table_name = c.table_name
            LEFT JOIN gpkg_spatial_ref_sys s ON s.srs_id = g.srs_id
            WHERE c.data_type IN ('features', 'attributes') ORDER BY c.table_name
            """;
        var layers = new List<Layer>();
        foreach (var row in Query(connection, sql))
        {
            var (table, geometry) = ((string)row[0]!, row[1] as string);
            var described = Query(connection, $"PRAGMA table_info({Quoted(table)})").ToList();
            var key = described.Where(c => c[5] is long and > 0).Select(c => (string)c[1]!).FirstOrDefault();
            var columns = described.Select(c => (string)c[1]!).Where(c => c != geometry && c != key).ToImmutableArray();
            var system = row[2] is string name && !name.StartsWith("NONE", StringComparison.OrdinalIgnoreCase) ? CoordinateSystems.Plain(name.ToUpperInvariant()) : "";
            layers.Add(new Layer(table, geometry, system, key, columns));
        }

        return layers;
    }

    private static Layer? FindLayer(List<Layer> layers, ReadRequest request)
    {
        if (request.Options.SheetOrLayer is { } wanted)
        {
            var named = layers.Find(l => l.Table.Equals(wanted, StringComparison.OrdinalIgnoreCase));
            if (named is null) request.Log.Add(SurveyFaults.Unreadable, $"The package has no layer \"{wanted}\".", value: wanted,
                mend: $"Its layers are {string.Join(", ", layers.Select(l => l.Table))}.");
            return named;
        }

        var best = layers.MaxBy(l => HeaderFinder.Score(Header(l), request.Cores, request.Options));
        if (layers.Count > 1) request.Log.Add(SurveyFaults.SheetChosen, $"Of the {layers.Count} layers \"{best!.Table}\" was read.", value: best.Table);
        return best;
    }

    private static RawRow Header(Layer layer) => new(0, [.. layer.Columns.Select(c => new RawCell(c))]);

    private static IEnumerable<RawRow> Rows(SqliteConnection connection, Layer layer)
    {
        yield return Header(layer);
        var names = new List<string> { layer.Key is null ? "rowid" : Quoted(layer.Key), layer.Geometry is null ? "NULL" : Quoted(layer.Geometry) };
        names.AddRange(layer.Columns.Select(Quoted));
        var shapes = new GeoPackageGeoReader();
        foreach (var row in Query(connection, $"SELECT {string.Join(", ", names)} FROM {Quoted(layer.Table)}"))
        {
            var cells = row.Skip(2).Select(Cell).ToArray();
            var points = Points(row[1] as byte[], shapes, out var trouble);
            yield return new RawRow(row[0] as long? ?? 0, ImmutableCollectionsMarshal.AsImmutableArray(cells), points, trouble);
        }
    }

    private static ImmutableArray<PlanPoint> Points(byte[]? blob, GeoPackageGeoReader shapes, out string? trouble)
    {
        trouble = null;
        if (blob is null) return [];
        try
        {
            return [.. shapes.Read(blob).Coordinates.Select(c => new PlanPoint(c.X, c.Y))];
        }
        catch (Exception e) when (Broken.IsContent(e))
        {
            trouble = $"The shape cannot be read: {Broken.Words(e)}";
            return [];
        }
    }

    private static RawCell Cell(object? value) => value switch
    {
        null => RawCell.Empty,
        long whole => new RawCell(whole.ToString(CultureInfo.InvariantCulture), whole),
        double number => new RawCell(number.ToString("R", CultureInfo.InvariantCulture), number),
        string text => new RawCell(text),
        _ => RawCell.Empty,
    };

    private static IEnumerable<object?[]> Query(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Table and column names come from the package itself and are quoted.
        command.CommandText = sql;
#pragma warning restore CA2100
        using var reader = command.ExecuteReader();
        while (reader.Read())
        {
            var row = new object?[reader.FieldCount];
            for (var i = 0; i < row.Length; i++) row[i] = reader.IsDBNull(i) ? null : reader.GetValue(i);
            yield return row;
        }
    }

    private static string Quoted(string name) => "\"" + name.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";

    private static string Copy(Stream stream)
    {
        var path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".gpkg");
        stream.Position = 0;
        using var copy = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
        stream.CopyTo(copy);
        return path;
    }
}
