using System.Text.RegularExpressions;

namespace Slabwright.Data.Import;

/// <summary>Names of coordinate systems as files write them.</summary>
internal static partial class CoordinateSystems
{
    /// <summary><c>EPSG:3875</c> for <c>urn:ogc:def:crs:EPSG::3875</c> and the like; other names unchanged.</summary>
    public static string Plain(string name)
    {
        var match = EpsgPattern().Match(name);
        if (match.Success) return "EPSG:" + match.Groups["code"].Value;
        return name.Contains("CRS84", StringComparison.OrdinalIgnoreCase) ? "EPSG:4326" : name;
    }

    [GeneratedRegex(@"EPSG:(?:[\d.]*:)?(?<code>\d{4,6})$|/EPSG/[\d.]+/(?<code>\d{4,6})$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex EpsgPattern();
}
