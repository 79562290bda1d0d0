using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.InteropServices;
using Microsoft.Data.Sqlite;
using Slabwright.Core.Job;
using Slabwright.Sheets.Tables;
using SQLitePCL;

namespace Slabwright.Sheets.Maps;

/// <summary>
/// A GeoPackage (OGC 12-128r19, version 1.3): an SQLite database with one table a layer. It is built in memory and handed out as bytes.
/// Coordinates are the alignment's own; without an alignment the layers use the standard's undefined Cartesian system (-1).
/// </summary>
public static class GeoPackageFile
{
    /// <summary>Writes the layers of a plan.</summary>
    public static SheetFile Write(Project project, RepairPlan plan, SheetOptions options)
    {
        var plane = new RoadPlane(project.Road, project.UnitSystem);
        using var connection = new SqliteConnection("Data Source=:memory:;Pooling=False");
        connection.Open();
        using (var transaction = connection.BeginTransaction())
        {
            var system = GeoPackageSystem.Of(plane);
            Run(connection, GeoPackageSchema.Core);
            system.Insert(connection);
            foreach (var layer in MapLayers.Of(project, plan, plane)) WriteLayer(connection, layer, system.Id, plane.Sentence, options.PrintedOn);
            transaction.Commit();
        }

        return new SheetFile($"{options.BaseName}.gpkg", "application/geopackage+sqlite3", "Map as GeoPackage", Bytes(connection));
    }

    private static void WriteLayer(SqliteConnection connection, MapLayer layer, int system, string sentence, DateOnly day)
    {
        var columns = string.Concat(layer.Fields.Select(f => $", \"{f.Name}\" {SqlType(f.Type)}"));
        Run(connection, $"CREATE TABLE \"{layer.Name}\" (fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, geom {(layer.IsPolygon ? "POLYGON" : "LINESTRING")}{columns})");
        Describe(connection, layer, system, sentence, day);
        using var insert = connection.CreateCommand();
        var names = string.Concat(layer.Fields.Select(f => $", \"{f.Name}\""));
        var marks = string.Concat(layer.Fields.Select((_, i) => string.Create(CultureInfo.InvariantCulture, $", $v{i}")));
        insert.CommandText = $"INSERT INTO \"{layer.Name}\" (geom{names}) VALUES ($geom{marks})";
        var geometry = insert.Parameters.Add("$geom", SqliteType.Blob);
        var values = layer.Fields.Select((f, i) => insert.Parameters.Add(string.Create(CultureInfo.InvariantCulture, $"$v{i}"), ParameterType(f.Type))).ToArray();
        foreach (var feature in layer.Features)
        {
            geometry.Value = GeoPackageGeometry.Of(feature.Points, layer.IsPolygon, system);
            for (var i = 0; i < values.Length; i++) values[i].Value = feature.Values[i] ?? DBNull.Value;
            insert.ExecuteNonQuery();
        }
    }

    private static void Describe(SqliteConnection connection, MapLayer layer, int system, string sentence, DateOnly day)
    {
        using var command = connection.CreateCommand();
        command.CommandText = """
            INSERT INTO gpkg_contents (table_name, data_type, identifier, description, last_change, min_x, min_y, max_x, max_y, srs_id)
            VALUES ($table, 'features', $title, $sentence, $day, $left, $bottom, $right, $top, $system);
            INSERT INTO gpkg_geometry_columns (table_name, column_name, geometry_type_name, srs_id, z, m) VALUES ($table, 'geom', $type, $system, 0, 0);
            """;
        var points = layer.Features.SelectMany(f => f.Points).ToList();
        command.Parameters.AddWithValue("$table", layer.Name);
        command.Parameters.AddWithValue("$title", layer.Title);
        command.Parameters.AddWithValue("$sentence", sentence);
        command.Parameters.AddWithValue("$day", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) + "T00:00:00.000Z");
        command.Parameters.AddWithValue("$left", points.Count == 0 ? DBNull.Value : points.Min(p => p.X));
        command.Parameters.AddWithValue("$bottom", points.Count == 0 ? DBNull.Value : points.Min(p => p.Y));
        command.Parameters.AddWithValue("$right", points.Count == 0 ? DBNull.Value : points.Max(p => p.X));
        command.Parameters.AddWithValue("$top", points.Count == 0 ? DBNull.Value : points.Max(p => p.Y));
        command.Parameters.AddWithValue("$system", system);
        command.Parameters.AddWithValue("$type", layer.IsPolygon ? "POLYGON" : "LINESTRING");
        command.ExecuteNonQuery();
    }

    private static string SqlType(FieldType type) => type switch { FieldType.Text => "TEXT", FieldType.Whole => "INTEGER", _ => "DOUBLE" };

    private static SqliteType ParameterType(FieldType type) => type switch
    {
        FieldType.Text => SqliteType.Text,
        FieldType.Whole => SqliteType.Integer,
        _ => SqliteType.Real,
    };

    private static void Run(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    /// <summary>The database as the bytes of its file.</summary>
    private static byte[] Bytes(SqliteConnection connection)
    {
        var pointer = raw.sqlite3_serialize(connection.Handle!, "main", out var size, 0);
        if (pointer == IntPtr.Zero) throw new InvalidOperationException("SQLite could not hand out the database as bytes.");
        try
        {
            var bytes = new byte[size];
            Marshal.Copy(pointer, bytes, 0, checked((int)size));
            return bytes;
        }
        finally
        {
            raw.sqlite3_free(pointer);
        }
    }
}
