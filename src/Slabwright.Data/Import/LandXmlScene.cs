using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Import;

/// <summary>What the pieces of a LandXML alignment need to know: the units of the file, its named points, and where findings go.</summary>
/// <remarks>Source: LandXML 1.2 schema. Elements are found by their local name, since applications put them in namespaces of their own.</remarks>
internal sealed class LandXmlScene(string file, double metresPerUnit, double radiansPerUnit)
{
    private readonly Dictionary<string, XElement> _points = new(StringComparer.Ordinal);

    public List<Finding> Findings { get; } = [];

    /// <summary>Metres in the file's unit of length.</summary>
    public double Metres => metresPerUnit;

    /// <summary>Radians in the file's unit of direction.</summary>
    public double Radians => radiansPerUnit;

    public string File => file;

    /// <summary>Remembers the named points of the file, which elements may refer to.</summary>
    public void Remember(XContainer root)
    {
        foreach (var point in root.Descendants().Where(e => e.Name.LocalName == "CgPoint" && e.Attribute("name") is not null))
            _points.TryAdd(point.Attribute("name")!.Value, point);
    }

    /// <summary>A child point in metres, northing first in the file; null with a finding when it is missing or no point.</summary>
    public PlanPoint? Point(XElement piece, string name, bool required = true)
    {
        var child = Child(piece, name);
        var text = child?.Attribute("pntRef") is { } reference && _points.TryGetValue(reference.Value, out var named) ? named.Value : child?.Value;
        if (text is null && !required) return null;
        var numbers = Numbers(text ?? "");
        if (numbers is { Length: >= 2 }) return new(numbers[1] * metresPerUnit, numbers[0] * metresPerUnit);
        Add("ROAD-068", FindingLevel.Error, $"The {piece.Name.LocalName} has no {name} point that can be read.", piece, name, text?.Trim(),
            "Give northing and easting, parted by a space.");
        return null;
    }

    /// <summary>Numbers parted by white space, or null when one of them is none.</summary>
    public static double[]? Numbers(string text)
    {
        var parts = text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        var numbers = new double[parts.Length];
        for (var i = 0; i < parts.Length; i++)
        {
            if (!double.TryParse(parts[i], NumberStyles.Float, CultureInfo.InvariantCulture, out numbers[i]) || !double.IsFinite(numbers[i])) return null;
        }

        return numbers;
    }

    /// <summary>An attribute in metres, or null when it is missing or no number.</summary>
    public double? Length(XElement piece, string name) => Number(piece, name) * metresPerUnit;

    /// <summary>A radius in metres; <c>INF</c> is infinite. Null with a finding when it is missing or not above 0.</summary>
    public double? Radius(XElement piece, string name)
    {
        var text = piece.Attribute(name)?.Value.Trim();
        if (text is not null && text.StartsWith("INF", StringComparison.OrdinalIgnoreCase)) return double.PositiveInfinity;
        if (Length(piece, name) is > 0 and var radius) return radius;
        Add("ROAD-068", FindingLevel.Error, $"The {piece.Name.LocalName} has no {name} that can be read.", piece, name, text,
            "Give a radius above 0, or INF for a straight end.");
        return null;
    }

    public double? Number(XElement piece, string name) =>
        piece.Attribute(name) is { } attribute && Numbers(attribute.Value) is [var number] ? number : null;

    public static XElement? Child(XContainer parent, string name) => parent.Elements().FirstOrDefault(e => e.Name.LocalName == name);

    public void Add(string code, FindingLevel level, string sentence, XElement at, string? field, string? value, string mend, string? limit = null) =>
        Findings.Add(new(code, level, sentence, new(file, ((IXmlLineInfo)at).HasLineInfo() ? ((IXmlLineInfo)at).LineNumber : null, field), value, mend, limit));

    public static string Metre(double value) => value.ToString("0.####", CultureInfo.InvariantCulture) + " m";
}
