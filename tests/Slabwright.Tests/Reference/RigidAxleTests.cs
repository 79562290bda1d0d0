using Slabwright.Core.Pavement;

namespace Slabwright.Tests.Reference;

/// <summary>
/// AASHTO Guide 1993 rigid load equivalency: the 30-kip example of Table D.13 as worked on pavementinteractive.org (PI-ESAL), with its
/// intermediate numbers, and a table worked by hand from the same equation to three decimals (deviation: rounding).
/// </summary>
public class RigidAxleTests
{
    private const double Kip = 4448.2216152605;
    private const double Inch = 0.0254;

    [Fact]
    public void Thirty_kips_on_seven_inches()
    {
        Assert.Equal(5.7298, EquivalentAxles.Beta(30, 1, 7), 0.00005);
        Assert.Equal(1.3709, EquivalentAxles.Beta(18, 1, 7), 0.00005);
        Assert.Equal(7.7, EquivalentAxles.Factor(30 * Kip, 1, 7 * Inch, 2.5), 0.05);
    }

    [Theory]
    [InlineData(1, 12, 0.180, 0.176, 0.175, 0.174)]
    [InlineData(1, 16, 0.610, 0.604, 0.601, 0.599)]
    [InlineData(1, 18, 1, 1, 1, 1)]
    [InlineData(1, 20, 1.545, 1.567, 1.578, 1.585)]
    [InlineData(1, 24, 3.220, 3.362, 3.454, 3.527)]
    [InlineData(2, 32, 1.468, 1.491, 1.503, 1.511)]
    [InlineData(2, 34, 1.872, 1.920, 1.946, 1.965)]
    [InlineData(2, 40, 3.553, 3.738, 3.868, 3.978)]
    [InlineData(3, 42, 1.415, 1.438, 1.451, 1.459)]
    [InlineData(3, 54, 3.791, 4.004, 4.164, 4.304)]
    public void Table_at_terminal_serviceability_2_5(int axles, double kips, double d8, double d9, double d10, double d12)
    {
        var factors = new[] { 8, 9, 10, 12 }.Select(d => EquivalentAxles.Factor(kips * Kip, axles, d * Inch, 2.5)).ToArray();
        var expected = new[] { d8, d9, d10, d12 };
        for (var i = 0; i < 4; i++) Assert.Equal(expected[i], factors[i], 0.0006);
    }

    [Theory]
    [InlineData(9, 4.016)]
    [InlineData(10, 4.067)]
    [InlineData(12, 4.104)]
    public void Five_axle_truck(double inches, double factor)
    {
        var truck = EquivalentAxles.Factor(12 * Kip, 1, inches * Inch, 2.5) + 2 * EquivalentAxles.Factor(34 * Kip, 2, inches * Inch, 2.5);
        Assert.Equal(factor, truck, 0.0006);
    }

    /// <summary>FDOT 625-010-002 (2018) Table D.2; AADT counts both directions. The equation is NCHRP 277 (from memory).</summary>
    [Theory]
    [InlineData(4000, 0.94, 0.82)]
    [InlineData(8000, 0.88, 0.76)]
    [InlineData(12000, 0.85, 0.72)]
    public void Design_lane_share(double volume, double twoLanes, double threeLanes)
    {
        Assert.Equal(twoLanes, EquivalentAxles.DesignLaneShare(volume / 2, 2), 0.0051);
        Assert.Equal(threeLanes, EquivalentAxles.DesignLaneShare(volume / 2, 3), 0.0051);
    }
}
