using System.Collections.Immutable;
using System.Xml.Linq;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Import;

/// <summary>Reads the pieces of a LandXML alignment and holds them against what the file states of them.</summary>
internal static class LandXmlGeometry
{
    /// <summary>The pieces in order, or null when one of them cannot be used: a centre line with a hole would place things wrongly.</summary>
    public static ImmutableArray<AlignmentElement>? Read(XElement alignment, LandXmlScene scene)
    {
        var pieces = LandXmlScene.Child(alignment, "CoordGeom")?.Elements().Where(e => e.Name.LocalName is not ("Feature" or "DocFileRef")).ToList() ?? [];
        var elements = ImmutableArray.CreateBuilder<AlignmentElement>();
        var directions = new LandXmlDirections(scene);
        var whole = true;
        foreach (var piece in pieces)
        {
            if (Piece(piece, elements.Count == 0 ? null : elements[^1], scene) is not { } element) whole = false;
            else
            {
                LandXmlChecks.Length(piece, element, scene);
                if (elements.Count > 0) LandXmlChecks.Joint(piece, elements[^1], element, scene);
                directions.Check(piece, element);
                elements.Add(element);
            }
        }

        if (pieces.Count == 0)
            scene.Add("ROAD-061", FindingLevel.Error, "The alignment has no geometry.", alignment, "CoordGeom", null, "Export the alignment with its horizontal geometry.");
        LandXmlChecks.Total(alignment, elements, whole, scene);
        return whole ? elements.ToImmutable() : null;
    }

    private static AlignmentElement? Piece(XElement piece, AlignmentElement? before, LandXmlScene scene)
    {
        switch (piece.Name.LocalName)
        {
            case "Line": return Line(piece, scene);
            case "Curve": return Curve(piece, scene);
            case "Spiral": return Spiral(piece, before, scene);
            case "IrregularLine": return Irregular(piece, scene);
            default:
                scene.Add("ROAD-067", FindingLevel.Error, "The alignment has a piece this reader does not know, so it cannot be used.", piece, piece.Name.LocalName, null,
                    "Export the alignment as lines, curves, clothoid spirals and irregular lines.");
                return null;
        }
    }

    private static LineElement? Line(XElement piece, LandXmlScene scene)
    {
        if (scene.Point(piece, "Start") is not { } start || scene.Point(piece, "End") is not { } end) return null;
        if (start != end) return new(start, end);
        scene.Add("ROAD-068", FindingLevel.Error, "The line has no length.", piece, "End", null, "Remove the line or mend its points.");
        return null;
    }

    private static ArcElement? Curve(XElement piece, LandXmlScene scene)
    {
        if (scene.Point(piece, "Start") is not { } start || scene.Point(piece, "Center") is not { } center || scene.Point(piece, "End") is not { } end) return null;
        if (Clockwise(piece, scene) is not { } clockwise) return null;
        var arc = ArcElement.Through(start, center, end, clockwise);
        if (!(arc.Radius > 0 && double.IsFinite(arc.Curvature) && arc.ArcLength > 0))
        {
            scene.Add("ROAD-068", FindingLevel.Error, "The curve has no radius or no length.", piece, "Center", null, "Mend the curve's points.");
            return null;
        }

        LandXmlChecks.Radius(piece, arc, end, scene);
        return arc;
    }

    private static SpiralElement? Spiral(XElement piece, AlignmentElement? before, LandXmlScene scene)
    {
        var kind = piece.Attribute("spiType")?.Value ?? "clothoid";
        if (kind != "clothoid")
        {
            scene.Add("ROAD-073", FindingLevel.Error, "The spiral is no clothoid, so the alignment cannot be used.", piece, "spiType", kind,
                "Export transition curves as clothoids, or the centre line as an irregular line.");
            return null;
        }

        var (start, end, tangents) = (scene.Point(piece, "Start"), scene.Point(piece, "End"), scene.Point(piece, "PI", required: false));
        var (first, last, length) = (scene.Radius(piece, "radiusStart"), scene.Radius(piece, "radiusEnd"), scene.Length(piece, "length"));
        if (Clockwise(piece, scene) is not { } clockwise || start is null || end is null || first is null || last is null) return null;
        if (length is not > 0)
        {
            scene.Add("ROAD-068", FindingLevel.Error, "The spiral has no length.", piece, "length", null, "Give the length along the spiral.");
            return null;
        }

        var sign = clockwise ? -1 : 1;
        var heading = tangents is { } pi ? start.Value.HeadingTo(pi)
            : before is not null ? before.PoseAt(before.Length).Heading
            : SpiralHeading(start.Value, end.Value, sign / first.Value, sign / last.Value, length.Value);
        var spiral = new SpiralElement(new(start.Value, heading), sign / first.Value, sign / last.Value, length.Value);
        LandXmlChecks.SpiralEnd(piece, spiral, end.Value, scene);
        return spiral;
    }

    /// <summary>Heading at the start of a spiral from its chord: turn the spiral laid along east until its end lies on the chord.</summary>
    private static double SpiralHeading(PlanPoint start, PlanPoint end, double first, double last, double length)
    {
        var laid = new SpiralElement(default, first, last, length).PoseAt(length).Point;
        return start.HeadingTo(end) - new PlanPoint(0, 0).HeadingTo(laid);
    }

    private static PolylineElement? Irregular(XElement piece, LandXmlScene scene)
    {
        var points = new List<PlanPoint>();
        foreach (var (list, size) in new[] { ("PntList2D", 2), ("PntList3D", 3) })
        {
            var numbers = LandXmlScene.Numbers(LandXmlScene.Child(piece, list)?.Value ?? "") ?? [];
            for (var i = 0; i + size <= numbers.Length; i += size) points.Add(new(numbers[i + 1] * scene.Metres, numbers[i] * scene.Metres));
        }

        if (scene.Point(piece, "Start", required: false) is { } start && (points.Count == 0 || points[0] != start)) points.Insert(0, start);
        if (scene.Point(piece, "End", required: false) is { } end && (points.Count == 0 || points[^1] != end)) points.Add(end);
        ImmutableArray<PlanPoint> apart = [.. points.Where((p, i) => i == 0 || p != points[i - 1])];
        if (apart.Length > 1) return new(apart);
        scene.Add("ROAD-068", FindingLevel.Error, "The irregular line has fewer than two points.", piece, "PntList2D", null, "Give two points or more.");
        return null;
    }

    private static bool? Clockwise(XElement piece, LandXmlScene scene)
    {
        switch (piece.Attribute("rot")?.Value)
        {
            case "cw": return true;
            case "ccw": return false;
            case var other:
                scene.Add("ROAD-068", FindingLevel.Error, $"The {piece.Name.LocalName} does not say which way it turns.", piece, "rot", other, "Write rot=\"cw\" or rot=\"ccw\".");
                return null;
        }
    }
}
