using System.Globalization;
using System.Xml.Linq;
using Slabwright.Core.Pavement;
using Slabwright.Data.Import;

namespace Slabwright.SystemTests.Import;

/// <summary>
/// Outside check: two road centre lines as another program wrote them, with lengths, end points, chords and directions of its own.
/// Source: buildingSMART Finland, CC BY 4.0 (tests/data/alignment/README.md). Coordinates and lengths carry six decimals.
/// </summary>
public sealed class InframodelAlignmentTests
{
    private const double Rounding = 5e-6;

    public static TheoryData<string> Files => ["M3_RS-CL.tg.xml", "Y10_RS-CL.tg.xml"];

    [Theory, MemberData(nameof(Files))]
    public void The_file_reads_without_a_finding(string file)
    {
        var read = Read(file);
        Assert.Empty(read.Findings);
        Assert.Equal("EPSG:3875", read.Alignment!.CoordinateSystem);
        Assert.Equal(StationStyle.Metres, read.Stationing!.Style);
    }

    [Theory, MemberData(nameof(Files))]
    public void Every_piece_ends_where_the_file_says_and_is_as_long(string file)
    {
        var pieces = Pieces(file);
        var elements = Read(file).Alignment!.Elements;
        Assert.Equal(pieces.Count, elements.Length);
        foreach (var (piece, element) in pieces.Zip(elements))
        {
            Assert.Equal(Stated(piece, "length"), element.Length, tolerance: Rounding);
            Assert.True(element.PoseAt(0).Point.DistanceTo(Point(piece, "Start")) < Rounding);
            Assert.True(element.PoseAt(element.Length).Point.DistanceTo(Point(piece, "End")) < Rounding);
        }
    }

    /// <summary>Directions are grads from north against the clock; six decimals of a grad are 1.6e-8 radians, the points allow about 1e-7.</summary>
    [Theory, MemberData(nameof(Files))]
    public void Directions_in_grads_agree(string file)
    {
        foreach (var (piece, element) in Pieces(file).Zip(Read(file).Alignment!.Elements))
        {
            var (start, end) = piece.Attribute("dir") is null ? ("dirStart", "dirEnd") : ("dir", "dir");
            AssertDirection(Stated(piece, start), element.PoseAt(0).Heading, element.Length);
            AssertDirection(Stated(piece, end), element.PoseAt(element.Length).Heading, element.Length);
        }
    }

    [Theory, MemberData(nameof(Files))]
    public void Curves_have_the_stated_radius_chord_and_side(string file)
    {
        foreach (var (piece, element) in Pieces(file).Zip(Read(file).Alignment!.Elements).Where(p => p.Second is ArcElement))
        {
            var arc = (ArcElement)element;
            Assert.Equal(Stated(piece, "radius"), arc.Radius, tolerance: Rounding);
            Assert.Equal(Stated(piece, "chord"), arc.PoseAt(0).Point.DistanceTo(arc.PoseAt(arc.Length).Point), tolerance: Rounding);
            Assert.Equal(piece.Attribute("rot")!.Value == "ccw", arc.Curvature > 0);
        }
    }

    [Theory, MemberData(nameof(Files))]
    public void Stations_along_the_line_lead_to_the_pieces_starts(string file)
    {
        var read = Read(file);
        foreach (var piece in Pieces(file))
        {
            Assert.True(read.Stationing!.TryParse(Stated(piece, "staStart").ToString("0.000000", CultureInfo.InvariantCulture), out var places));
            var at = Assert.Single(places);
            Assert.True(read.Alignment!.PoseAt(at).Point.DistanceTo(Point(piece, "Start")) < 1e-5);
            var located = read.Alignment.Locate(Point(piece, "Start"));
            Assert.Equal(at, located.At, tolerance: 1e-5);
            Assert.Equal(0, located.Offset, tolerance: 1e-5);
        }
    }

    [Theory]
    [InlineData("M3_RS-CL.tg.xml", 1266.246238)]
    [InlineData("Y10_RS-CL.tg.xml", 37.339894)]
    public void The_whole_length_agrees(string file, double length) => Assert.Equal(length, Read(file).Alignment!.Length, tolerance: 2e-5);

    private static void AssertDirection(double grads, double heading, double length) =>
        Assert.InRange(Math.Abs(Math.IEEERemainder(grads * Math.PI / 200 - (heading - Math.PI / 2), 2 * Math.PI)), 0, 2e-8 + 2e-6 / length);

    private static AlignmentReadResult Read(string file) => AlignmentFile.Read(PathOf(file), null);

    private static List<XElement> Pieces(string file) =>
        [.. XDocument.Load(PathOf(file)).Descendants().First(e => e.Name.LocalName == "CoordGeom").Elements()];

    private static double Stated(XElement piece, string attribute) => double.Parse(piece.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);

    private static PlanPoint Point(XElement piece, string name)
    {
        var numbers = piece.Elements().First(e => e.Name.LocalName == name).Value.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray();
        return new(numbers[1], numbers[0]);
    }

    private static string PathOf(string file) => Path.Combine(AppContext.BaseDirectory, "data", "alignment", file);
}
