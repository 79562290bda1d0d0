using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using static Slabwright.Tests.Surveys.Scene;

namespace Slabwright.Tests.Surveys;

public class PlaceReaderTests
{
    private static readonly Road MilepostRoad = Harrow with
    {
        Stationing = new Stationing { Style = StationStyle.Mileposts, Start = 12 * 1609.344, Direction = -1 },
    };

    // 101+00 to 101+30 comes twice: the stations jump back by 30 ft at 130 ft.
    private static readonly Road EquationRoad = Harrow with
    {
        Stationing = Harrow.Stationing with { Equations = [new StationEquation(130 * Foot, 10_100 * Foot)] },
    };

    [Theory]
    [InlineData("TC", "20", "start", "", 285, 285)]
    [InlineData("TC", "20", "middle", "", 292.5, 292.5)]
    [InlineData("TC", "20", "end", "", 300, 300)]
    [InlineData("TC", "20", "4.5", "", 289.5, 289.5)]
    [InlineData("TC", "20", "1.5 m", "", 285 + 1.5 / Foot, 285 + 1.5 / Foot)]
    [InlineData("TS", "20", "start", "2", 285, 287)]
    [InlineData("TS", "20", "end", "2", 298, 300)]
    [InlineData("PT", "20", "middle", "6", 289.5, 295.5)]
    [InlineData("TC", "20", "", "", 292.5, 292.5)]
    [InlineData("CB", "20", "", "", 285, 285)]
    [InlineData("DC", "20", "", "", 285, 300)]
    public void Places_by_slab(string type, string slab, string inSlab, string extent, double from, double to)
    {
        var record = Read($"lane,type,sev,slab,position,extent\n1,{type},H,{slab},{inSlab},{extent}");
        var d = record.Distresses.Single();
        Assert.Equal(20, d.Slab);
        Assert.Equal(from * Foot, d.From, 1e-9);
        Assert.Equal(to * Foot, d.To, 1e-9);
        Assert.Equal(inSlab.Length == 0, Codes(record).Contains("SRV-048"));
    }

    [Theory]
    [InlineData("TC", "101+50", "8", "", 150, 150)]
    [InlineData("LC", "101+50", "8", "", 150, 158)]
    [InlineData("LC", "101+50", "8", "10", 150, 160)]
    [InlineData("TC", "101+50", "8", "2", 150, 152)]
    public void A_length_runs_along_the_road_only_for_what_runs_along(string type, string at, string length, string extent, double from, double to)
    {
        var d = Read($"lane,type,sev,at,length,extent\n1,{type},L,{at},{length},{extent}").Distresses.Single();
        Assert.Equal(from * Foot, d.From, 1e-9);
        Assert.Equal(to * Foot, d.To, 1e-9);
        Assert.Equal(8 * Foot, d.Length!.Value, 1e-9);
    }

    [Theory]
    [InlineData("joint,extent", "3,", 30, 30)]
    [InlineData("joint,extent", "3,4", 28, 32)]
    [InlineData("joint,extent", "1,4", 0, 4)]
    [InlineData("joint,extent", "201,4", 2996, 3000)]
    public void Places_by_joint(string headings, string cells, double from, double to)
    {
        var d = Read($"lane,type,sev,{headings}\n2,7,M,{cells}").Distresses.Single();
        Assert.Equal(from * Foot, d.From, 1e-9);
        Assert.Equal(to * Foot, d.To, 1e-9);
    }

    [Theory]
    [InlineData("from_ft", "150", 150 * Foot)]
    [InlineData("from_m", "150", 150)]
    [InlineData("from", "150 m", 150)]
    [InlineData("from", "101+50", 150 * Foot)]
    [InlineData("from", "10150", 150 * Foot)]
    [InlineData("Station (ft)", "10150", 150 * Foot)]
    [InlineData("begin station", "101+50", 150 * Foot)]
    [InlineData("STA", "Sta. 101+50", 150 * Foot)]
    public void A_heading_with_a_unit_holds_the_distance_and_one_that_says_station_the_station(string heading, string cell, double metres) =>
        Assert.Equal(metres, Read($"lane,type,sev,{heading}\n1,TC,H,{cell}").Distresses.Single().From, 1e-6);

    [Fact]
    public void Mileposts_that_fall_in_the_direction_of_travel_are_read()
    {
        var record = Read("lane,type,sev,begin mp,end mp\n1,LC,H,MP 11.9,11.89", Options, MilepostRoad);
        var d = record.Distresses.Single();
        Assert.Equal(0.1 * 1609.344, d.From, 1e-6);
        Assert.Equal(0.11 * 1609.344, d.To, 1e-6);
        Assert.DoesNotContain("SRV-042", Codes(record));
    }

    [Fact]
    public void An_ambiguous_station_is_an_error_and_the_slab_number_settles_it()
    {
        var record = Read("lane,type,sev,station,slab\n1,TC,H,101+10,\n1,TC,H,101+10,8\n1,TC,H,101+10,10", Options, EquationRoad);
        Assert.Equal([33.528, 42.672], record.Distresses.Select(d => Math.Round(d.From, 6)));
        var finding = record.Findings.Single(f => f.Code == "SRV-041");
        Assert.Equal((2L, "station", "101+10"), (finding.Place.Row, finding.Place.Field, finding.Value));
        Assert.Contains("110 ft and 140 ft", finding.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1", 1)]
    [InlineData("Lane 2", 2)]
    [InlineData("L2", 2)]
    [InlineData("left", 1)]
    [InlineData("Driving lane", 2)]
    [InlineData("inside", 1)]
    public void Knows_lanes_by_number_and_word(string text, int lane) =>
        Assert.Equal(lane, Read($"lane,type,sev,at\n{text},TC,H,101+50").Distresses.Single().Lane);

    [Fact]
    public void A_road_with_one_lane_needs_no_lane_column()
    {
        var record = Read("type,sev,at\nTC,H,101+50\nTC,H,102+50", Options, Harrow with { Lanes = [LaneOf(1)] });
        Assert.Equal(2, record.Distresses.Length);
        Assert.Equal(1, Codes(record).Count(c => c == "SRV-054"));
    }

    [Fact]
    public void Points_and_lines_lie_where_the_alignment_says()
    {
        var heading = Math.PI / 6;
        var road = Harrow with { Alignment = new Alignment("Harrow", [new LineElement(new PlanPoint(1000, 2000), new PlanPoint(1000 + 2000 * Math.Cos(heading), 2000 + 2000 * Math.Sin(heading)))], "EPSG:32632", 50) };
        PlanPoint At(double at, double right) => road.Alignment!.PoseAt(at).Offset(right);
        RawRow[] rows =
        [
            new(0, [new("type"), new("severity"), new("lane")]),
            new(1, [new("TC"), new("H"), new("")], [At(100, 1)]),
            new(2, [new("LC"), new("H"), new("1")], [At(200, -2), At(206, -1)]),
            new(3, [new("TC"), new("H"), new("1")], [At(300, 1)]),
            new(4, [new("TC"), new("H"), new("")], [At(300, 9)]),
            new(5, [new("TC"), new("H"), new("")], [At(-40, 1)]),
        ];
        var record = SurveyInterpreter.ReadDistresses(new RawSource("s.gpkg", rows, "EPSG:32632"), road, Options, new FindingLog("s.gpkg"), TestContext.Current.CancellationToken);
        Assert.Equal([(2, 100.0, 100.0), (1, 200, 206), (1, 300, 300)], record.Distresses.Select(d => (d.Lane, Math.Round(d.From, 6), Math.Round(d.To, 6))));
        Assert.Equal(12 * Foot - 2, record.Distresses[1].OffsetFrom!.Value, 1e-6);
        Assert.Equal(12 * Foot - 1, record.Distresses[1].OffsetTo!.Value, 1e-6);
        Assert.Equal(["SRV-030", "SRV-051", "SRV-050", "SRV-043"], Codes(record));
    }

    [Fact]
    public void Longitude_and_latitude_are_turned_into_the_alignments_plane()
    {
        var plane = new TransverseMercator(9, 0, 0.9996, 500_000, 0);
        var start = plane.Forward(new GeographicPoint(9.5, 48));
        var road = Harrow with { Alignment = new Alignment("Harrow", [new LineElement(start, start with { East = start.East + 2000 })], "EPSG:32632") };
        var spot = plane.Inverse(road.Alignment!.PoseAt(250).Offset(1));
        var record = Read($"type,sev,longitude,latitude\nTC,H,{spot.Longitude:R},{spot.Latitude:R}", Options, road);
        Assert.Equal(250, record.Distresses.Single().From, 1e-3);
        Assert.Equal(2, record.Distresses.Single().Lane);
    }

    [Fact]
    public void Coordinates_without_an_alignment_are_one_finding_for_the_file()
    {
        var record = Read("type,sev,lane,x,y\nTC,H,1,5,6\nTC,H,1,6,6");
        Assert.Empty(record.Distresses);
        Assert.Single(record.Findings, f => f.Code == "SRV-049");
    }
}
