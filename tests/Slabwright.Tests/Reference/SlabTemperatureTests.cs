using Slabwright.Core.Joints;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Curling, friction and mesh: Huang 2004 ch. 4 (from memory), BHEL paper 2023, and Bradbury's coefficient in closed form. The table of C
/// is worked independently from the closed form to four decimals; textbook charts differ from it by up to 0.03.
/// </summary>
public class SlabTemperatureTests
{
    private const double Inch = 0.0254;
    private const double Foot = 0.3048;
    private const double Psi = 6894.757293168361;
    private const double Pcf = 16.018463373960142;

    [Fact]
    public void Bradbury_coefficients()
    {
        double[] expected =
            [0.0026, 0.0404, 0.1812, 0.4385, 0.7136, 0.9141, 1.0269, 1.0758, 1.0861, 1.0761, 1.0578, 1.0386, 1.0224, 1.0104];
        for (var ratio = 1; ratio <= 14; ratio++)
        {
            Assert.Equal(expected[ratio - 1], SlabTemperature.CurlingCoefficient(ratio), 0.00006);
        }
    }

    /// <summary>With the book's chart readings the stresses come out as printed: 238 and 214 psi.</summary>
    [Fact]
    public void Huang_curling_with_chart_coefficients()
    {
        var interior = SlabTemperature.InteriorCurling(4e6 * Psi, 5e-6 * 1.8, 20 / 1.8, 0.15, 1.07, 0.63);
        Assert.Equal(238, interior / Psi, 0.5);
        Assert.Equal(214, SlabTemperature.EdgeCurling(4e6 * Psi, 5e-6 * 1.8, 20 / 1.8, 1.07) / Psi, 0.5);
    }

    [Fact]
    public void Friction_and_mesh()
    {
        Assert.Equal(19.5, SlabTemperature.FrictionStress(150 * Pcf, 25 * Foot, 1.5) / Psi, 0.05);
        var perFoot = Inch * Inch / Foot;
        Assert.Equal(0.105, SlabTemperature.DragSteel(150 * Pcf, 8 * Inch, 60 * Foot, 1.5, 43_000 * Psi) / perFoot, 0.0005);
        Assert.Equal(0.042, SlabTemperature.DragSteel(150 * Pcf, 8 * Inch, 24 * Foot, 1.5, 43_000 * Psi) / perFoot, 0.0005);
    }

    [Fact]
    public void Bhel_contraction_joint_spacing() =>
        Assert.Equal(4.44, SlabTemperature.LongestSlab(80e3, 24e3 / SlabTemperature.Gravity, 1.5), 0.005);

    /// <summary>NPTEL IIT Bombay lecture 29 p. 14: 1.33 cm²/m, 59 cm, 36 cm. Huang ch. 4 (from memory): 36 in with 0.2 in² bars, 22.3 in.</summary>
    [Fact]
    public void Tie_bars()
    {
        const double Kgf = 98066.5;
        var steel = TieBars.SteelPerLength(2400, 0.18, 3.6, 1.5, 1750 * Kgf);
        Assert.Equal(1.33e-4, steel, 0.005e-4);
        Assert.Equal(0.59, TieBars.Spacing(0.01, steel), 0.005);
        Assert.Equal(0.36, TieBars.Length(1750 * Kgf, 0.01, 24.6 * Kgf, 0), 0.005);
        Assert.Equal(22.3, TieBars.Length(27_000 * Psi, 0.5 * Inch, 350 * Psi, 3 * Inch) / Inch, 0.05);
        var eightInches = TieBars.SteelPerLength(150 * Pcf, 8 * Inch, 12 * Foot, 1.5, 27_000 * Psi);
        Assert.Equal(36, 0.2 * Inch * Inch / eightInches / Inch, 0.05);
    }
}
