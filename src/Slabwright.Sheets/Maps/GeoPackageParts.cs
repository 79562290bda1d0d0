using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Slabwright.Sheets.Maps;

/// <summary>The tables every GeoPackage has (OGC 12-128r19, annex C).</summary>
internal static class GeoPackageSchema
{
    public const string Core = """
        PRAGMA application_id = 0x47504B47;
        PRAGMA user_version = 10300;
        CREATE TABLE gpkg_spatial_ref_sys (
          srs_name TEXT NOT NULL, srs_id INTEGER NOT NULL PRIMARY KEY, organization TEXT NOT NULL,
          organization_coordsys_id INTEGER NOT NULL, definition TEXT NOT NULL, description TEXT);
        CREATE TABLE gpkg_contents (
          table_name TEXT NOT NULL PRIMARY KEY, data_type TEXT NOT NULL, identifier TEXT UNIQUE, description TEXT DEFAULT '',
          last_change DATETIME NOT NULL, min_x DOUBLE, min_y DOUBLE, max_x DOUBLE, max_y DOUBLE, srs_id INTEGER,
          CONSTRAINT fk_gc_r_srs_id FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys(srs_id));
        CREATE TABLE gpkg_geometry_columns (
          table_name TEXT NOT NULL, column_name TEXT NOT NULL, geometry_type_name TEXT NOT NULL, srs_id INTEGER NOT NULL,
          z TINYINT NOT NULL, m TINYINT NOT NULL,
          CONSTRAINT pk_geom_cols PRIMARY KEY (table_name, column_name),
          CONSTRAINT uk_gc_table_name UNIQUE (table_name),
          CONSTRAINT fk_gc_tn FOREIGN KEY (table_name) REFERENCES gpkg_contents(table_name),
          CONSTRAINT fk_gc_srs FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys(srs_id));
        INSERT INTO gpkg_spatial_ref_sys VALUES ('Undefined Cartesian SRS', -1, 'NONE', -1, 'undefined', 'undefined Cartesian coordinate reference system');
        INSERT INTO gpkg_spatial_ref_sys VALUES ('Undefined geographic SRS', 0, 'NONE', 0, 'undefined', 'undefined geographic coordinate reference system');
        INSERT INTO gpkg_spatial_ref_sys VALUES ('WGS 84 geodetic', 4326, 'EPSG', 4326,
          'GEOGCS["WGS 84",DATUM["WGS_1984",SPHEROID["WGS 84",6378137,298.257223563,AUTHORITY["EPSG","7030"]],AUTHORITY["EPSG","6326"]],PRIMEM["Greenwich",0,AUTHORITY["EPSG","8901"]],UNIT["degree",0.0174532925199433,AUTHORITY["EPSG","9122"]],AUTHORITY["EPSG","4326"]]',
          'longitude/latitude coordinates in decimal degrees on the WGS 84 spheroid');
        """;
}

/// <summary>The coordinate system of the layers: EPSG by its code, a plane of our own by its text, or undefined.</summary>
/// <param name="Id">Number in the package.</param>
/// <param name="Name">Name.</param>
/// <param name="Organization">Who numbers it.</param>
/// <param name="Definition">Well-known text; <c>undefined</c> for EPSG systems, whose code says it.</param>
internal sealed record GeoPackageSystem(int Id, string Name, string Organization, string Definition)
{
    /// <summary>Number given to a plane without EPSG code.</summary>
    private const int OwnId = 100_000;

    public static GeoPackageSystem Of(RoadPlane plane)
    {
        if (plane.Epsg is { } code) return new GeoPackageSystem(code, $"EPSG:{code.ToString(CultureInfo.InvariantCulture)}", "EPSG", PlaneText.Of(plane) ?? "undefined");
        return PlaneText.Of(plane) is { } text
            ? new GeoPackageSystem(OwnId, "Transverse Mercator of the project", "project", text)
            : new GeoPackageSystem(-1, "", "", "");
    }

    public void Insert(SqliteConnection connection)
    {
        if (Id is -1 or 4326) return;
        using var command = connection.CreateCommand();
        command.CommandText = "INSERT INTO gpkg_spatial_ref_sys VALUES ($name, $id, $organization, $id, $definition, NULL)";
        command.Parameters.AddWithValue("$name", Name);
        command.Parameters.AddWithValue("$id", Id);
        command.Parameters.AddWithValue("$organization", Organization);
        command.Parameters.AddWithValue("$definition", Definition);
        command.ExecuteNonQuery();
    }
}

/// <summary>Geometry as the package stores it: header with envelope, then well-known binary, both little-endian (clause 2.1.3).</summary>
internal static class GeoPackageGeometry
{
    private const int HeaderSize = 40;

    public static byte[] Of(ImmutableArray<MapPoint> points, bool isPolygon, int system)
    {
        var body = isPolygon ? 13 : 9;
        var bytes = new byte[HeaderSize + body + 16 * points.Length];
        var span = bytes.AsSpan();
        "GP"u8.CopyTo(span);
        span[3] = 0b0000_0011;
        BinaryPrimitives.WriteInt32LittleEndian(span[4..], system);
        WriteDouble(span[8..], points.Min(p => p.X));
        WriteDouble(span[16..], points.Max(p => p.X));
        WriteDouble(span[24..], points.Min(p => p.Y));
        WriteDouble(span[32..], points.Max(p => p.Y));
        var at = HeaderSize;
        span[at] = 1;
        BinaryPrimitives.WriteInt32LittleEndian(span[(at + 1)..], isPolygon ? 3 : 2);
        if (isPolygon) BinaryPrimitives.WriteInt32LittleEndian(span[(at + 5)..], 1);
        at += body;
        BinaryPrimitives.WriteInt32LittleEndian(span[(at - 4)..], points.Length);
        foreach (var point in points)
        {
            WriteDouble(span[at..], point.X);
            WriteDouble(span[(at + 8)..], point.Y);
            at += 16;
        }

        return bytes;
    }

    private static void WriteDouble(Span<byte> span, double value) => BinaryPrimitives.WriteDoubleLittleEndian(span, value);
}
