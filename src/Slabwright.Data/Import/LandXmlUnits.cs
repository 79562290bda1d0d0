using System.Xml.Linq;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Data.Import;

/// <summary>Units of a LandXML file.</summary>
/// <param name="Metres">Metres in a unit of length.</param>
/// <param name="Radians">Radians in a unit of direction.</param>
/// <param name="Imperial">True where the file counts in feet.</param>
internal sealed record LandXmlUnits(double Metres, double Radians, bool Imperial)
{
    /// <summary>Metres in a US survey foot: 1200/3937 exactly.</summary>
    /// <remarks>Source: NIST SP 811, Appendix B.6.</remarks>
    public const double SurveyFoot = 1200.0 / 3937;

    /// <summary>Reads the units; an unknown or missing unit of length is an error, since nothing can be placed without it.</summary>
    public static LandXmlUnits? Read(XContainer root, string file, List<Finding> findings)
    {
        var units = root.Descendants().FirstOrDefault(e => e.Name.LocalName == "Units")?.Elements()
            .FirstOrDefault(e => e.Name.LocalName is "Metric" or "Imperial");
        var linear = units?.Attribute("linearUnit")?.Value;
        double? metres = linear switch
        {
            "meter" => 1,
            "millimeter" => 0.001,
            "centimeter" => 0.01,
            "kilometer" => 1000,
            "foot" => Units.Foot.Factor,
            "USSurveyFoot" => SurveyFoot,
            "inch" => Units.Inch.Factor,
            "mile" => Units.Mile.Factor,
            _ => null,
        };
        if (metres is null)
        {
            findings.Add(new("ROAD-062", FindingLevel.Error, "The file does not say its unit of length in a way this reader knows.",
                new(file, null, "linearUnit"), linear, "Give linearUnit in Units as meter, foot or USSurveyFoot."));
            return null;
        }

        var angle = units!.Attribute("directionUnit")?.Value ?? units.Attribute("angularUnit")?.Value ?? "radians";
        double? radians = angle switch
        {
            "radians" => 1,
            "grads" => Units.Gradian.Factor,
            "decimal degrees" => Units.Degree.Factor,
            _ => null,
        };
        if (radians is null)
        {
            findings.Add(new("ROAD-062", FindingLevel.Warning, "The unit of direction is not known; directions in the file are not checked against its points.",
                new(file, null, "directionUnit"), angle, "Give directionUnit as radians, grads or decimal degrees."));
        }

        return new(metres.Value, radians ?? double.NaN, units.Name.LocalName == "Imperial");
    }
}
