using Slabwright.Core.Joints;

namespace Slabwright.Tests.Reference;

/// <summary>
/// FHWA pavement notebook ch. 3, preformed compression seal, example A (p. 3.3.7): 60-ft slabs on granular base, 14 to 90 °F,
/// α 5.5e-6 1/°F, ε 1e-4, seal range 20 to 55 %. Published 0.3 in, 0.86 in (1 in chosen), 0.50 and 0.5 in at 80 °F, 0.32 and 0.68 in at
/// 40 °F. Deviations within the printed digits.
/// </summary>
public class FhwaSealTests
{
    private const double Inch = 0.0254;

    private static double Celsius(double fahrenheit) => (fahrenheit - 32) / 1.8;

    [Fact]
    public void Example_A()
    {
        var opening = JointMovement.Opening(0.80, 60 * 0.3048, 5.5e-6 * 1.8, (90 - 14) / 1.8, 1e-4);
        Assert.Equal(0.3, opening / Inch, 0.005);
        Assert.Equal(0.86, JointMovement.SealWidth(0.3 * Inch, 0.20, 0.55) / Inch, 0.005);
    }

    [Theory]
    [InlineData(80, 0.50, 0.5)]
    [InlineData(40, 0.32, 0.68)]
    public void Saw_width_by_temperature(double fahrenheit, double compression, double inches)
    {
        var installed = JointMovement.InstalledCompression(Celsius(fahrenheit), Celsius(14), Celsius(90), 0.20, 0.55);
        Assert.Equal(compression, installed, 0.005);
        Assert.Equal(inches, JointMovement.SawWidth(installed, Inch) / Inch, 0.005);
    }

    /// <summary>Huang 2004 ch. 4 (from memory): 14.9 ft without dowels at 0.05 in, about 74.5 ft with dowels at 0.25 in.</summary>
    [Theory]
    [InlineData(0.05, 14.9)]
    [InlineData(0.25, 74.5)]
    public void Longest_slab_for_an_opening(double inches, double feet) =>
        Assert.Equal(feet, JointMovement.LongestSlab(inches * Inch, 0.65, 5.5e-6 * 1.8, 60 / 1.8, 1e-4) / 0.3048, 0.05);
}
