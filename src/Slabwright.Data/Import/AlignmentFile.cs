using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Import;

/// <summary>A centre line as read from a file.</summary>
/// <param name="Alignment">The centre line, or null when it cannot be used.</param>
/// <param name="Stationing">Stations as the file has them, or null where it has none.</param>
/// <param name="Findings">What was wrong or doubtful.</param>
public sealed record AlignmentReadResult(Alignment? Alignment, Stationing? Stationing, ImmutableArray<Finding> Findings);

/// <summary>Reads a centre line from a LandXML or GeoJSON file, whichever the ending says.</summary>
public static class AlignmentFile
{
    /// <summary>Reads a centre line; bad input becomes findings.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Name of the alignment in the file, or null for the first.</param>
    public static AlignmentReadResult Read(string path, string? name)
    {
        var file = Path.GetFileName(path);
        try
        {
            using var stream = File.OpenRead(path);
            return Path.GetExtension(path).ToUpperInvariant() is ".GEOJSON" or ".JSON"
                ? GeoJsonAlignment.Read(stream, file, name)
                : LandXmlAlignment.Read(stream, file, name);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return new(null, null, [new("ROAD-060", FindingLevel.Error, "The alignment's file cannot be read.", new(file), exception.Message,
                "Close other programs that hold the file.")]);
        }
    }
}
