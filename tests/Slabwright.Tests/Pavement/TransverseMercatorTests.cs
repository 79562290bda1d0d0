using CsCheck;
using Slabwright.Core.Pavement;

namespace Slabwright.Tests.Pavement;

/// <summary>
/// Outside check: PROJ by way of GDAL 3.6.2's <c>gdaltransform -s_srs EPSG:4326 -t_srs CODE -output_xy</c>, longitude and latitude in,
/// metres out; and the geodesic length of PROJ's <c>geod</c>.
/// </summary>
public sealed class TransverseMercatorTests
{
    [Theory]
    [InlineData("EPSG:32624", -37.2, 44.6, 642851.50653581, 4940092.86120782)]
    [InlineData("EPSG:3067", 24.9384, 60.1699, 385611.316684942, 6672118.38020209)]
    [InlineData("EPSG:3875", 21.3, 61.1, 21516181.1501075, 6776673.62811502)]
    [InlineData("EPSG:32733", 15.1, -22.5, 510285.512832222, 7511824.92087045)]
    [InlineData("EPSG:25832", 11.5, 48.1, 686121.755803486, 5330438.130054)]
    [InlineData("EPSG:32633", 12, 80, 441867.784867201, 8883084.9559483)]
    public void Plane_coordinates_agree_with_PROJ(string code, double longitude, double latitude, double east, double north)
    {
        Assert.True(TransverseMercator.TryFind(code, out var plane));
        var point = plane!.Forward(new(longitude, latitude));
        Assert.Equal(east, point.East, tolerance: 1e-3);
        Assert.Equal(north, point.North, tolerance: 1e-3);
        var back = plane.Inverse(new(east, north));
        Assert.Equal(longitude, back.Longitude, tolerance: 1e-8);
        Assert.Equal(latitude, back.Latitude, tolerance: 1e-8);
    }

    [Fact]
    public void The_plane_there_and_back_is_where_one_started() =>
        Gen.Select(Gen.Double[-8, 8], Gen.Double[-84, 84]).Sample((longitude, latitude) =>
        {
            var plane = new TransverseMercator(0, 0, 0.9996, 500_000, 0);
            var back = plane.Inverse(plane.Forward(new(longitude, latitude)));
            Assert.Equal(longitude, back.Longitude, tolerance: 1e-9);
            Assert.Equal(latitude, back.Latitude, tolerance: 1e-9);
        }, iter: 2_000);

    [Fact]
    public void A_plane_is_found_again_by_its_text()
    {
        var plane = TransverseMercator.LocalAt(new(-37.19, 44.601));
        Assert.True(TransverseMercator.TryFind(plane.ToString(), out var again));
        Assert.Equal(plane, again);
    }

    [Theory]
    [InlineData("")]
    [InlineData("EPSG:4326")]
    [InlineData("EPSG:x")]
    [InlineData("a local grid")]
    public void Other_systems_are_not_of_this_kind(string system) => Assert.False(TransverseMercator.TryFind(system, out _));
}
