using System.Text;
using Slabwright.Core.Pavement;
using Slabwright.Data.Import;

namespace Slabwright.SystemTests.Import;

public sealed class GeoJsonAlignmentTests
{
    /// <summary>Outside check: geodesic length by PROJ 9.1.1, <c>geod +ellps=WGS84 -I</c> with 44.6N 37.2W 44.601N 37.19W: 801.667355 m.</summary>
    [Fact]
    public void Longitude_and_latitude_become_true_metres()
    {
        var read = Read("""{"type":"LineString","coordinates":[[-37.2,44.6],[-37.19,44.601]]}""");
        Assert.Empty(read.Findings);
        Assert.Equal(801.667355, read.Alignment!.Length, tolerance: 0.001);
        Assert.True(TransverseMercator.TryFind(read.Alignment.CoordinateSystem, out var plane));
        var back = plane!.Inverse(read.Alignment.PoseAt(0).Point);
        Assert.Equal(-37.2, back.Longitude, 9);
        Assert.Equal(44.6, back.Latitude, 9);
    }

    [Fact]
    public void A_named_projected_system_is_taken_as_it_is()
    {
        var read = Read("""{"type":"FeatureCollection","crs":{"type":"name","properties":{"name":"urn:ogc:def:crs:EPSG::32624"}},"features":[{"type":"Feature","properties":{"name":"r"},"geometry":{"type":"LineString","coordinates":[[500000,4000000],[500300,4000400]]}}]}""");
        Assert.Empty(read.Findings);
        Assert.Equal("EPSG:32624", read.Alignment!.CoordinateSystem);
        Assert.Equal(500, read.Alignment.Length, 9);
        Assert.Equal("r", read.Alignment.Name);
    }

    [Theory]
    [InlineData("ROAD-060", "{")]
    [InlineData("ROAD-061", """{"type":"Point","coordinates":[0,0]}""")]
    [InlineData("ROAD-061", "[]")]
    [InlineData("ROAD-068", """{"type":"LineString","coordinates":[[0,0]]}""")]
    [InlineData("ROAD-068", """{"type":"LineString","coordinates":[[0,0],["a",1]]}""")]
    [InlineData("ROAD-068", """{"type":"LineString","coordinates":[[1,1],[1,1]]}""")]
    [InlineData("ROAD-070", """{"type":"LineString","coordinates":[[500000,4000000],[500300,4000400]]}""")]
    public void What_cannot_be_used_is_found(string code, string json)
    {
        var read = Read(json);
        Assert.Null(read.Alignment);
        Assert.Equal(code, Assert.Single(read.Findings).Code);
    }

    private static AlignmentReadResult Read(string json) => GeoJsonAlignment.Read(new MemoryStream(Encoding.UTF8.GetBytes(json)), "road.geojson");
}
