using System.Globalization;
using System.Text;
using Slabwright.Core.Pavement;

namespace Slabwright.Examples;

/// <summary>Strings lines, clothoids and arcs together and writes them as LandXML 1.2.</summary>
internal sealed class PlanPieces(PlanPose start)
{
    private readonly List<AlignmentElement> _pieces = [];
    private PlanPose _pose = start;

    public double Length => _pieces.Sum(p => p.Length);

    public Alignment Alignment => new("", [.. _pieces], "");

    public PlanPieces Line(double length)
    {
        var end = new PlanPoint(_pose.Point.East + length * Math.Cos(_pose.Heading), _pose.Point.North + length * Math.Sin(_pose.Heading));
        return Add(new LineElement(_pose.Point, end));
    }

    /// <summary>An arc; a positive radius turns left.</summary>
    public PlanPieces Arc(double radius, double length) => Add(new ArcElement(_pose, 1 / radius, length));

    /// <summary>A clothoid between two radii, 0 for straight.</summary>
    public PlanPieces Spiral(double from, double to, double length) =>
        Add(new SpiralElement(_pose, from == 0 ? 0 : 1 / from, to == 0 ? 0 : 1 / to, length));

    /// <summary>LandXML text in metres, northing first, directions in degrees clockwise from north.</summary>
    public string LandXml(string name, string epsg, string project)
    {
        var xml = new StringBuilder();
        xml.Append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        xml.Append("<LandXML xmlns=\"http://www.landxml.org/schema/LandXML-1.2\" version=\"1.2\" date=\"2025-03-03\" time=\"09:00:00\">\n");
        xml.Append("  <Units>\n    <Metric areaUnit=\"squareMeter\" linearUnit=\"meter\" volumeUnit=\"cubicMeter\" temperatureUnit=\"celsius\" pressureUnit=\"HPA\" angularUnit=\"decimal degrees\" directionUnit=\"decimal degrees\"/>\n  </Units>\n");
        xml.Append($"  <CoordinateSystem name=\"invented grid\" epsgCode=\"{epsg}\"/>\n");
        xml.Append($"  <Project name=\"{project}\"/>\n  <Alignments>\n    <Alignment name=\"{name}\" length=\"{N(Length)}\" staStart=\"0.000000\">\n      <CoordGeom>\n");
        var reached = 0.0;
        foreach (var piece in _pieces)
        {
            Write(xml, piece, reached);
            reached += piece.Length;
        }

        return xml.Append("      </CoordGeom>\n    </Alignment>\n  </Alignments>\n</LandXML>\n").ToString();
    }

    private PlanPieces Add(AlignmentElement piece)
    {
        _pieces.Add(piece);
        _pose = piece.PoseAt(piece.Length);
        return this;
    }

    private static void Write(StringBuilder xml, AlignmentElement piece, double reached)
    {
        var (start, end) = (piece.PoseAt(0), piece.PoseAt(piece.Length));
        var head = $"length=\"{N(piece.Length)}\" staStart=\"{N(reached)}\"";
        switch (piece)
        {
            case ArcElement arc:
                xml.Append($"        <Curve {head} radius=\"{N(arc.Radius)}\" rot=\"{Turn(arc.Curvature)}\" dirStart=\"{D(start)}\" dirEnd=\"{D(end)}\">\n");
                xml.Append($"          <Start>{P(start.Point)}</Start>\n          <Center>{P(arc.Center)}</Center>\n          <End>{P(end.Point)}</End>\n        </Curve>\n");
                break;
            case SpiralElement spiral:
                xml.Append($"        <Spiral {head} radiusStart=\"{Radius(spiral.StartCurvature)}\" radiusEnd=\"{Radius(spiral.EndCurvature)}\"");
                xml.Append($" rot=\"{Turn(spiral.StartCurvature + spiral.EndCurvature)}\" spiType=\"clothoid\" dirStart=\"{D(start)}\" dirEnd=\"{D(end)}\">\n");
                xml.Append($"          <Start>{P(start.Point)}</Start>\n          <PI>{P(Tangents(start, end))}</PI>\n          <End>{P(end.Point)}</End>\n        </Spiral>\n");
                break;
            default:
                xml.Append($"        <Line {head} dir=\"{D(start)}\">\n          <Start>{P(start.Point)}</Start>\n          <End>{P(end.Point)}</End>\n        </Line>\n");
                break;
        }
    }

    /// <summary>Where the tangents at both ends meet.</summary>
    private static PlanPoint Tangents(PlanPose start, PlanPose end)
    {
        var (east, north) = (end.Point.East - start.Point.East, end.Point.North - start.Point.North);
        var along = (east * Math.Sin(end.Heading) - north * Math.Cos(end.Heading)) / Math.Sin(end.Heading - start.Heading);
        return new(start.Point.East + along * Math.Cos(start.Heading), start.Point.North + along * Math.Sin(start.Heading));
    }

    private static string Turn(double curvature) => curvature < 0 ? "cw" : "ccw";

    private static string Radius(double curvature) => curvature == 0 ? "INF" : N(1 / Math.Abs(curvature));

    private static string N(double value) => value.ToString("0.000000", CultureInfo.InvariantCulture);

    private static string P(PlanPoint point) => $"{N(point.North)} {N(point.East)}";

    private static string D(PlanPose pose)
    {
        var degrees = 90 - pose.Heading * 180 / Math.PI;
        return N(degrees - 360 * Math.Floor(degrees / 360));
    }
}
