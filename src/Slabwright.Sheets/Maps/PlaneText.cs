using System.Globalization;
using Slabwright.Core.Pavement;

namespace Slabwright.Sheets.Maps;

/// <summary>Well-known text (OGC 01-009) of the plane's coordinate system, for files that carry their own definition.</summary>
internal static class PlaneText
{
    private const string Geographic =
        "GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS 84\",6378137,298.257223563]],PRIMEM[\"Greenwich\",0],UNIT[\"degree\",0.0174532925199433]]";

    /// <summary>The text of a transverse Mercator plane without an EPSG code, or null where there is none to write.</summary>
    public static string? Of(RoadPlane plane)
    {
        if (plane.Epsg is not null || !TransverseMercator.TryFind(plane.CoordinateSystem, out var p) || p is null) return null;
        return string.Create(CultureInfo.InvariantCulture,
            $"PROJCS[\"Transverse Mercator of the project\",{Geographic},PROJECTION[\"Transverse_Mercator\"],PARAMETER[\"latitude_of_origin\",{p.LatitudeOfOrigin:R}],PARAMETER[\"central_meridian\",{p.CentralMeridian:R}],PARAMETER[\"scale_factor\",{p.Scale:R}],PARAMETER[\"false_easting\",{p.FalseEasting:R}],PARAMETER[\"false_northing\",{p.FalseNorthing:R}],UNIT[\"metre\",1],AXIS[\"Easting\",EAST],AXIS[\"Northing\",NORTH]]");
    }
}
