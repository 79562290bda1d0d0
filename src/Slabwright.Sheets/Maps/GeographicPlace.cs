using Slabwright.Core.Pavement;

namespace Slabwright.Sheets.Maps;

/// <summary>Map points as a GeoJSON file wants them: longitude and latitude where the plane can be turned into them.</summary>
/// <param name="IsGeographic">True for longitude and latitude on WGS 84.</param>
/// <param name="Decimals">Decimals to write: about a tenth of a millimetre on the ground.</param>
/// <param name="Sentence">What the coordinates are.</param>
/// <param name="Of">Turns a point of the plane.</param>
internal sealed record GeographicPlace(bool IsGeographic, int Decimals, string Sentence, Func<MapPoint, MapPoint> Of)
{
    /// <summary>The way from a plane.</summary>
    public static GeographicPlace From(RoadPlane plane)
    {
        if (!TransverseMercator.TryFind(plane.CoordinateSystem, out var projection) || projection is null)
            return new GeographicPlace(false, 4, plane.Sentence, p => p);
        return new GeographicPlace(true, 9, $"Longitude and latitude on WGS 84, turned from the alignment's {plane.CoordinateSystem}.", Turn);

        MapPoint Turn(MapPoint point)
        {
            var place = projection.Inverse(new PlanPoint(point.X, point.Y));
            return new MapPoint(place.Longitude, place.Latitude);
        }
    }
}
