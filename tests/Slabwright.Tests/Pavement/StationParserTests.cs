using CsCheck;
using Slabwright.Core.Pavement;

namespace Slabwright.Tests.Pavement;

public sealed class StationParserTests
{
    private static readonly Stationing Feet = new() { Style = StationStyle.Feet };
    private static readonly Stationing Metres = new() { Style = StationStyle.Metres };
    private static readonly Stationing Miles = new() { Style = StationStyle.Mileposts };

    [Theory]
    [InlineData("123+45.6", 12_345.6)]
    [InlineData("123+45", 12_345)]
    [InlineData("STA 123+45.6", 12_345.6)]
    [InlineData("Sta. 0+05", 5)]
    [InlineData("12345.6", 12_345.6)]
    [InlineData("12345.6 ft", 12_345.6)]
    [InlineData("123+45,6", 12_345.6)]
    [InlineData("-1+20", -120)]
    [InlineData("\u22121+20", -120)]
    public void Feet_are_read(string text, double feet) => Assert.Equal(feet * 0.3048, One(Feet, text), 9);

    [Theory]
    [InlineData("1+234.5", 1234.5)]
    [InlineData("1+234,5", 1234.5)]
    [InlineData("km 1.5", 1500)]
    [InlineData("1234.5 m", 1234.5)]
    [InlineData("1.2345 km", 1234.5)]
    [InlineData("1234,5", 1234.5)]
    public void Metres_are_read(string text, double metres) => Assert.Equal(metres, One(Metres, text), 9);

    [Theory]
    [InlineData("MP 12.345", 12.345)]
    [InlineData("mp12.345", 12.345)]
    [InlineData("12.345", 12.345)]
    [InlineData("12,345", 12.345)]
    [InlineData("-0.5 mi", -0.5)]
    public void Mileposts_are_read(string text, double miles) => Assert.Equal(miles * 1609.344, One(Miles, text), 6);

    [Theory]
    [InlineData(StationStyle.Feet, "")]
    [InlineData(StationStyle.Feet, "12+3")]
    [InlineData(StationStyle.Feet, "12+345.0")]
    [InlineData(StationStyle.Feet, "12,345")]
    [InlineData(StationStyle.Feet, "MP 12.3")]
    [InlineData(StationStyle.Feet, "12+34.5 m")]
    [InlineData(StationStyle.Feet, "12+34.5.6")]
    [InlineData(StationStyle.Feet, "near the bridge")]
    [InlineData(StationStyle.Metres, "1+23.4")]
    [InlineData(StationStyle.Metres, "MP 1")]
    [InlineData(StationStyle.Mileposts, "12+34")]
    [InlineData(StationStyle.Mileposts, "STA 12")]
    public void What_is_no_station_is_refused(StationStyle style, string text)
    {
        Assert.False(new Stationing { Style = style }.TryParse(text, out var places));
        Assert.Empty(places);
    }

    [Fact]
    public void An_overlapping_equation_gives_two_places_and_a_gap_gives_none()
    {
        var overlap = Feet with { Equations = [new(1000 * 0.3048, 900 * 0.3048)] };
        Assert.Equal([950 * 0.3048, 1050 * 0.3048], Places(overlap, "9+50"), (a, b) => Math.Abs(a - b) < 1e-9);
        var gap = Feet with { Equations = [new(1000 * 0.3048, 1100 * 0.3048)] };
        Assert.Empty(Places(gap, "10+50"));
        Assert.Single(Places(gap, "11+00"));
        Assert.Single(Places(gap, "10+00"));
    }

    [Fact]
    public void Falling_stations_give_the_place_they_are_written_at()
    {
        var falling = Feet with { Start = 5000 * 0.3048, Direction = -1 };
        Assert.Equal("40+00.0", falling.Format(1000 * 0.3048));
        Assert.Equal(1000 * 0.3048, One(falling, "40+00.0"), 9);
    }

    /// <summary>Law: a written station leads back to the place it was written for, within its last digit, equations or not.</summary>
    [Fact]
    public void What_is_written_reads_back()
    {
        var equation = Gen.Double[0, 9_000];
        Gen.Select(Gen.Enum<StationStyle>(), Gen.Double[-5_000, 50_000], Gen.Bool, Gen.Select(equation, equation), Gen.Select(equation, equation), Gen.Double[0, 9_500])
            .Sample((style, start, rising, ats, aheads, at) =>
            {
                var stationing = new Stationing
                {
                    Style = style,
                    Start = start,
                    Direction = rising ? 1 : -1,
                    Equations = [new(Math.Min(ats.Item1, ats.Item2), aheads.Item1), new(Math.Max(ats.Item1, ats.Item2) + 10, aheads.Item2)],
                };
                var written = stationing.Format(at);
                Assert.True(stationing.TryParse(written, out var places), written);
                Assert.True(places.Any(p => Math.Abs(p - at) <= 2 * stationing.HalfLastDigit + 1e-9), $"{written} of {at} gave {string.Join(", ", places)}");
            }, iter: 20_000);
    }

    private static double One(Stationing stationing, string text) => Assert.Single(Places(stationing, text));

    private static IEnumerable<double> Places(Stationing stationing, string text)
    {
        Assert.True(stationing.TryParse(text, out var places), text);
        return places;
    }
}
