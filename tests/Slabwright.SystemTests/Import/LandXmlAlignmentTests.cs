using System.Text;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Data.Import;

namespace Slabwright.SystemTests.Import;

public sealed class LandXmlAlignmentTests
{
    private const string Metric = "<Metric linearUnit=\"meter\" directionUnit=\"radians\"/>";

    [Theory]
    [InlineData("<Metric linearUnit=\"meter\"/>", 1.0)]
    [InlineData("<Imperial linearUnit=\"foot\"/>", 0.3048)]
    [InlineData("<Imperial linearUnit=\"USSurveyFoot\"/>", 1200.0 / 3937)]
    public void Lengths_come_in_metres(string units, double metres)
    {
        var read = Read(Document(units, "<Line><Start>200 100</Start><End>200 400</End></Line>"));
        Assert.Empty(read.Findings);
        Assert.Equal(300 * metres, read.Alignment!.Length, 9);
        Assert.Equal(new PlanPoint(100 * metres, 200 * metres), read.Alignment.PoseAt(0).Point);
    }

    /// <summary>End point by the first terms of the clothoid's series, which surveying textbooks give (terms below 1e-7 m left out).</summary>
    [Fact]
    public void A_clothoid_ends_where_its_series_says()
    {
        var spiral = new SpiralElement(default, 0, 1 / 100.0, 60);
        var (l, r) = (60.0, 100.0);
        var turn = l / (2 * r);
        Assert.Equal(l * (1 - turn * turn / 10 + Math.Pow(turn, 4) / 216 - Math.Pow(turn, 6) / 9360), spiral.PoseAt(60).Point.East, 6);
        Assert.Equal(l * (turn / 3 - Math.Pow(turn, 3) / 42 + Math.Pow(turn, 5) / 1320 - Math.Pow(turn, 7) / 75600), spiral.PoseAt(60).Point.North, 6);
    }

    [Fact]
    public void A_spiral_between_two_radii_is_read_with_its_tangents()
    {
        var wanted = new SpiralElement(new(new(1000, 2000), 0.7), -1 / 400.0, -1 / 150.0, 80);
        var end = wanted.PoseAt(80);
        var read = Read(Document(Metric, string.Create(System.Globalization.CultureInfo.InvariantCulture,
            $"<Spiral length=\"80\" radiusStart=\"400\" radiusEnd=\"150\" rot=\"cw\" spiType=\"clothoid\"><Start>2000 1000</Start><PI>{Pi(wanted)}</PI><End>{end.Point.North:R} {end.Point.East:R}</End></Spiral>")));
        Assert.Empty(read.Findings);
        var spiral = Assert.IsType<SpiralElement>(Assert.Single(read.Alignment!.Elements));
        Assert.Equal(0.7, spiral.Start.Heading, 9);
        Assert.Equal(-1 / 150.0, spiral.EndCurvature, 12);
    }

    [Fact]
    public void Without_tangents_the_heading_comes_from_the_chord()
    {
        var wanted = new SpiralElement(new(new(0, 0), 2.2), 0, 1 / 90.0, 50);
        var end = wanted.PoseAt(50).Point;
        var read = Read(Document(Metric, string.Create(System.Globalization.CultureInfo.InvariantCulture,
            $"<Spiral length=\"50\" radiusStart=\"INF\" radiusEnd=\"90\" rot=\"ccw\"><Start>0 0</Start><End>{end.North:R} {end.East:R}</End></Spiral>")));
        Assert.Empty(read.Findings);
        Assert.Equal(2.2, read.Alignment!.PoseAt(0).Heading, 9);
    }

    [Fact]
    public void Station_equations_are_read()
    {
        var read = Read(Document("<Imperial linearUnit=\"foot\"/>", "<Line><Start>0 0</Start><End>0 3000</End></Line>",
            "<StaEquation staInternal=\"11000\" staAhead=\"12000\"/>", "staStart=\"10000\""));
        Assert.Empty(read.Findings);
        Assert.Equal("100+00.0", read.Stationing!.Format(0));
        Assert.Equal("120+00.0", read.Stationing.Format(1000 * 0.3048));
        Assert.Equal("125+00.0", read.Stationing.Format(1500 * 0.3048));
    }

    [Theory]
    [InlineData("ROAD-063", "<Line><Start>0 0</Start><End>0 100</End></Line><Line><Start>0 100.2</Start><End>0 200</End></Line>")]
    [InlineData("ROAD-064", "<Line><Start>0 0</Start><End>0 100</End></Line><Line><Start>0 100</Start><End>10 200</End></Line>")]
    [InlineData("ROAD-065", "<Curve radius=\"90\" rot=\"cw\"><Start>100 0</Start><Center>0 0</Center><End>0 100</End></Curve>")]
    [InlineData("ROAD-065", "<Curve rot=\"cw\"><Start>100 0</Start><Center>0 0</Center><End>0 101</End></Curve>")]
    [InlineData("ROAD-066", "<Line length=\"90\"><Start>0 0</Start><End>0 100</End></Line>")]
    [InlineData("ROAD-066", "<Spiral length=\"50\" radiusStart=\"INF\" radiusEnd=\"90\" rot=\"ccw\"><Start>0 0</Start><PI>0 30</PI><End>9 45</End></Spiral>")]
    [InlineData("ROAD-067", "<Chain>1 2</Chain>")]
    [InlineData("ROAD-068", "<Line><Start>0 zero</Start><End>0 100</End></Line>")]
    [InlineData("ROAD-068", "<Line><Start>5 5</Start><End>5 5</End></Line>")]
    [InlineData("ROAD-068", "<Curve><Start>100 0</Start><Center>0 0</Center><End>0 100</End></Curve>")]
    [InlineData("ROAD-069", "<Line dir=\"0\"><Start>0 0</Start><End>0 100</End></Line><Line dir=\"0.2\"><Start>0 100</Start><End>0 200</End></Line>")]
    [InlineData("ROAD-073", "<Spiral length=\"50\" radiusStart=\"INF\" radiusEnd=\"90\" rot=\"ccw\" spiType=\"bloss\"><Start>0 0</Start><End>9 45</End></Spiral>")]
    public void What_does_not_fit_is_found_with_its_line(string code, string geometry)
    {
        var finding = Assert.Single(Read(Document(Metric, geometry)).Findings, f => f.Code == code);
        Assert.Equal("road.xml", finding.Place.File);
        Assert.True(finding.Place.Row >= 1);
        Assert.NotNull(finding.Mend);
    }

    [Theory]
    [InlineData("ROAD-060", "<LandXML><Units>")]
    [InlineData("ROAD-061", "<LandXML><Units><Metric linearUnit=\"meter\"/></Units></LandXML>")]
    [InlineData("ROAD-062", "<LandXML><Units><Metric linearUnit=\"ell\"/></Units></LandXML>")]
    public void A_file_that_cannot_be_used_is_said_to_be_so(string code, string xml)
    {
        var read = Read(xml);
        Assert.Null(read.Alignment);
        Assert.Contains(read.Findings, f => f.Code == code && f.Level == FindingLevel.Error);
    }

    [Fact]
    public void A_named_alignment_is_chosen_and_points_may_be_named()
    {
        var xml = "<LandXML><Units><Metric linearUnit=\"meter\"/></Units><CgPoints><CgPoint name=\"A\">0 0</CgPoint><CgPoint name=\"B\">0 50</CgPoint></CgPoints><Alignments>"
            + "<Alignment name=\"one\"><CoordGeom><Line><Start>0 0</Start><End>0 10</End></Line></CoordGeom></Alignment>"
            + "<Alignment name=\"two\"><CoordGeom><Line><Start pntRef=\"A\"/><End pntRef=\"B\"/></Line></CoordGeom></Alignment></Alignments></LandXML>";
        Assert.Equal(50, Read(xml, "two").Alignment!.Length);
        Assert.Equal(10, Read(xml).Alignment!.Length);
        Assert.Contains(Read(xml, "three").Findings, f => f.Code == "ROAD-061" && f.Mend!.Contains("one, two", StringComparison.Ordinal));
    }

    [Fact]
    public void Irregular_lines_become_chords()
    {
        var read = Read(Document(Metric, "<IrregularLine><Start>0 0</Start><End>100 100</End><PntList2D>0 0 0 100 100 100</PntList2D></IrregularLine>"));
        Assert.Empty(read.Findings);
        Assert.Equal(200, read.Alignment!.Length);
    }

    private static string Pi(SpiralElement spiral)
    {
        var (start, end) = (spiral.PoseAt(0), spiral.PoseAt(spiral.Length));
        var turn = end.Heading - start.Heading;
        var (chord, toward) = (start.Point.DistanceTo(end.Point), start.Point.HeadingTo(end.Point));
        var along = chord * Math.Sin(end.Heading - toward) / Math.Sin(turn);
        return string.Create(System.Globalization.CultureInfo.InvariantCulture,
            $"{start.Point.North + along * Math.Sin(start.Heading):R} {start.Point.East + along * Math.Cos(start.Heading):R}");
    }

    private static string Document(string units, string geometry, string after = "", string attributes = "") =>
        $"<LandXML version=\"1.2\"><Units>{units}</Units><Alignments><Alignment name=\"a\" {attributes}><CoordGeom>{geometry}</CoordGeom>{after}</Alignment></Alignments></LandXML>";

    private static AlignmentReadResult Read(string xml, string? name = null) =>
        LandXmlAlignment.Read(new MemoryStream(Encoding.UTF8.GetBytes(xml)), "road.xml", name);
}
