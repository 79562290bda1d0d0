using System.Collections.Immutable;
using System.Xml.Linq;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Import;

/// <summary>Reads the stations of a LandXML alignment: the start station and the equations.</summary>
internal static class LandXmlStations
{
    /// <summary>Stations in feet or metres, after the file's units.</summary>
    public static Stationing Read(XElement alignment, LandXmlUnits units, LandXmlScene scene)
    {
        var start = scene.Number(alignment, "staStart") ?? 0;
        var equations = ImmutableArray.CreateBuilder<StationEquation>();
        var reached = (At: 0.0, Value: start);
        foreach (var row in alignment.Elements().Where(e => e.Name.LocalName == "StaEquation"))
        {
            var ahead = scene.Number(row, "staAhead");
            double? at = scene.Number(row, "staInternal") is { } inside
                ? inside - start
                : scene.Number(row, "staBack") is { } back ? reached.At + back - reached.Value : null;
            if (ahead is null || at is null || at < reached.At || row.Attribute("staIncrement")?.Value == "decreasing")
            {
                scene.Add("ROAD-074", FindingLevel.Error, "The station equation cannot be used.", row, "StaEquation", row.ToString(SaveOptions.DisableFormatting),
                    "Give staAhead and staInternal (or staBack), in order along the road, with increasing stations; or write the stationing in project.json.");
                continue;
            }

            equations.Add(new(at.Value * scene.Metres, ahead.Value * scene.Metres));
            reached = (at.Value, ahead.Value);
        }

        return new() { Style = units.Imperial ? StationStyle.Feet : StationStyle.Metres, Start = start * scene.Metres, Equations = equations.ToImmutable() };
    }
}
