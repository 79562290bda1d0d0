using System.Globalization;
using System.Xml.Linq;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Import;

/// <summary>Holds the pieces of a LandXML alignment against the lengths, radii and points the file states. Points govern; the rest warns.</summary>
internal static class LandXmlChecks
{
    /// <summary>Stated and computed lengths may differ by this, m: files round coordinates to a millimetre or finer.</summary>
    public const double LengthTolerance = 0.005;

    /// <summary>Neighbouring pieces may lie this far apart, m.</summary>
    public const double GapTolerance = 0.005;

    /// <summary>A gap beyond this makes the alignment unusable, m.</summary>
    public const double WidestGap = 1;

    /// <summary>Neighbouring pieces may differ this much in direction, radians.</summary>
    public const double KinkTolerance = 0.001;

    public static void Length(XElement piece, AlignmentElement element, LandXmlScene scene)
    {
        if (element is SpiralElement || scene.Length(piece, "length") is not { } stated || Math.Abs(stated - element.Length) <= LengthTolerance) return;
        scene.Add("ROAD-066", FindingLevel.Warning, $"The {piece.Name.LocalName}'s length is not the one its points give; the points are used.", piece, "length",
            LandXmlScene.Metre(stated), "Export the alignment again, or check which of the two is meant.", LandXmlScene.Metre(element.Length) + " by the points");
    }

    public static void Radius(XElement piece, ArcElement arc, PlanPoint end, LandXmlScene scene)
    {
        var center = arc.Center;
        var stated = scene.Length(piece, "radius") ?? arc.Radius;
        var off = Math.Max(Math.Abs(stated - arc.Radius), Math.Abs(center.DistanceTo(end) - arc.Radius));
        if (off <= LengthTolerance) return;
        scene.Add("ROAD-065", FindingLevel.Warning, "The curve's radius does not fit its points; the start and the centre are used.", piece, "radius",
            LandXmlScene.Metre(stated), "Export the alignment again, or check radius, centre and end.",
            $"{LandXmlScene.Metre(arc.Radius)} at the start, {LandXmlScene.Metre(center.DistanceTo(end))} at the end");
    }

    public static void SpiralEnd(XElement piece, SpiralElement spiral, PlanPoint end, LandXmlScene scene)
    {
        var off = spiral.PoseAt(spiral.Length).Point.DistanceTo(end);
        if (off <= GapTolerance) return;
        scene.Add("ROAD-066", FindingLevel.Warning, "The spiral's length and radii do not lead to its end point.", piece, "End", LandXmlScene.Metre(off),
            "Check length, radii, the turning direction and the kind of spiral.", LandXmlScene.Metre(GapTolerance));
    }

    /// <summary>Gap and kink between two pieces.</summary>
    public static void Joint(XElement piece, AlignmentElement before, AlignmentElement element, LandXmlScene scene)
    {
        var (from, to) = (before.PoseAt(before.Length), element.PoseAt(0));
        var gap = from.Point.DistanceTo(to.Point);
        if (gap > GapTolerance)
        {
            scene.Add("ROAD-063", gap > WidestGap ? FindingLevel.Error : FindingLevel.Warning, "There is a gap before this piece.", piece, "Start",
                LandXmlScene.Metre(gap), "Let each piece start where the one before ends.", LandXmlScene.Metre(GapTolerance));
        }

        var kink = Math.Abs(Math.IEEERemainder(to.Heading - from.Heading, 2 * Math.PI));
        if (kink <= KinkTolerance || before is PolylineElement || element is PolylineElement) return;
        scene.Add("ROAD-064", FindingLevel.Warning, "The direction jumps at the start of this piece.", piece, "Start",
            Units.Degree.Format(kink, 3), "Check the points; a road's centre line runs on without a kink.", Units.Degree.Format(KinkTolerance, 3));
    }

    public static void Total(XElement alignment, IReadOnlyCollection<AlignmentElement> elements, bool whole, LandXmlScene scene)
    {
        var length = elements.Sum(e => e.Length);
        if (!whole || scene.Length(alignment, "length") is not { } stated || Math.Abs(stated - length) <= LengthTolerance * (1 + elements.Count)) return;
        scene.Add("ROAD-071", FindingLevel.Warning, "The alignment's length is not the sum of its pieces.", alignment, "length", LandXmlScene.Metre(stated),
            "Check that no piece is missing.", LandXmlScene.Metre(length) + " by the pieces");
    }
}

/// <summary>
/// Checks the directions a LandXML file states. Programs write them from north or from east, with or against the clock; the first
/// direction that fits tells which, and all others must follow it.
/// </summary>
internal sealed class LandXmlDirections(LandXmlScene scene)
{
    private static readonly Func<double, double>[] Conventions = [h => h, h => h - Math.PI / 2, h => Math.PI / 2 - h];
    private Func<double, double>? _convention;

    public void Check(XElement piece, AlignmentElement element)
    {
        if (double.IsNaN(scene.Radians)) return;
        Check(piece, piece.Attribute("dir") is null ? "dirStart" : "dir", element.PoseAt(0).Heading);
        Check(piece, "dirEnd", element.PoseAt(element.Length).Heading);
    }

    private void Check(XElement piece, string attribute, double heading)
    {
        if (scene.Number(piece, attribute) is not { } stated) return;
        var direction = stated * scene.Radians;
        _convention ??= Conventions.FirstOrDefault(c => Off(c(heading), direction) <= LandXmlChecks.KinkTolerance);
        if (_convention is not null && Off(_convention(heading), direction) <= LandXmlChecks.KinkTolerance) return;
        scene.Add("ROAD-069", FindingLevel.Warning, "The stated direction is not the one the points give; the points are used.", piece, attribute,
            stated.ToString("0.######", CultureInfo.InvariantCulture), "Check the direction and the file's unit of direction.");
    }

    private static double Off(double a, double b) => Math.Abs(Math.IEEERemainder(a - b, 2 * Math.PI));
}
