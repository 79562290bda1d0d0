using System.Collections.Immutable;
using System.Xml;
using System.Xml.Linq;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Import;

/// <summary>
/// Reads a centre line with its stations from LandXML 1.2: lines, curves, clothoids and irregular lines, northing before easting, in
/// metres, feet or US survey feet, directions in grads, degrees or radians.
/// </summary>
public static class LandXmlAlignment
{
    /// <summary>Reads an alignment; bad input becomes findings.</summary>
    /// <param name="stream">The XML; its declaration tells the encoding.</param>
    /// <param name="file">File name for findings.</param>
    /// <param name="name">Name of the alignment, or null for the first.</param>
    public static AlignmentReadResult Read(Stream stream, string file, string? name = null)
    {
        try
        {
            using var reader = XmlReader.Create(stream, new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null });
            return Read(XDocument.Load(reader, LoadOptions.SetLineInfo), file, name);
        }
        catch (XmlException exception)
        {
            return new(null, null, [new("ROAD-060", FindingLevel.Error, "The file is not valid XML.", new(file, exception.LineNumber), exception.Message,
                "Export the alignment again from the program that made it.")]);
        }
    }

    private static AlignmentReadResult Read(XDocument document, string file, string? name)
    {
        var findings = new List<Finding>();
        if (LandXmlUnits.Read(document, file, findings) is not { } units) return new(null, null, [.. findings]);
        var scene = new LandXmlScene(file, units.Metres, units.Radians);
        scene.Findings.AddRange(findings);
        scene.Remember(document);
        var all = document.Descendants().Where(e => e.Name.LocalName == "Alignment").ToList();
        var chosen = name is null ? all.FirstOrDefault() : all.FirstOrDefault(a => a.Attribute("name")?.Value == name);
        if (chosen is null)
        {
            scene.Findings.Add(new("ROAD-061", FindingLevel.Error, "The file has no such alignment.", new(file), name,
                "Alignments in the file: " + string.Join(", ", all.Select(a => a.Attribute("name")?.Value ?? "(no name)")) + "."));
            return new(null, null, [.. scene.Findings]);
        }

        if (name is null && all.Count > 1) scene.Add("ROAD-061", FindingLevel.Note, "The file has more than one alignment; the first is used.", chosen, "name",
            chosen.Attribute("name")?.Value, "Give the alignment's name in project.json.");
        var elements = LandXmlGeometry.Read(chosen, scene);
        var alignment = elements is { IsEmpty: false } good
            ? new Alignment(chosen.Attribute("name")?.Value ?? "", good, CoordinateSystem(document))
            : null;
        return new(alignment, LandXmlStations.Read(chosen, units, scene), [.. scene.Findings]);
    }

    private static string CoordinateSystem(XContainer root)
    {
        var system = root.Descendants().FirstOrDefault(e => e.Name.LocalName == "CoordinateSystem");
        return system?.Attribute("epsgCode")?.Value.Trim() is { Length: > 0 } code ? "EPSG:" + code : "";
    }
}
