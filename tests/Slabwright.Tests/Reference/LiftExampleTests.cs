using Slabwright.Core.Joints.Removal;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Published lifts. Sling load notes: 1000 lb on two legs is 577 lb at 60°, 707 lb at 45°. Tilt-up note: 5000 lb with 50 % impact is
/// 7500 lb. Lifting sheet of a precast floor unit (50 kN, 10 m², 1.0 kN/m², factor 1.3, four anchors): inputs read, answers worked out
/// from them, 20.28 kN from the form and 18.85 kN on site. Agreement within the printed digits.
/// </summary>
public sealed class LiftExampleTests
{
    [Theory]
    [InlineData(60, 577)]
    [InlineData(45, 707)]
    [InlineData(90, 500)]
    [InlineData(30, 1000)]
    public void Sling_legs(double degrees, double pounds) =>
        Assert.Equal(pounds, LiftMechanics.LegTension(1000, 2, degrees * Math.PI / 180), 0.5);

    [Fact]
    public void Tilt_up_panel_with_impact() => Assert.Equal(7500, LiftMechanics.AnchorForce(5000, 0, 0, 1.5, 1, 1), 1e-9);

    [Theory]
    [InlineData(1000, 1.04, 20.28)]
    [InlineData(0, 1.16, 18.85)]
    public void Floor_unit(double adhesion, double angleFactor, double kilonewtons) =>
        Assert.Equal(kilonewtons, LiftMechanics.AnchorForce(50_000, adhesion, 10, 1.3, angleFactor, 4) / 1000, 0.005);

    /// <summary>Statics of a uniform strip on two pins: moment over a pin w a²/2, at the middle w (1/8 − a/2), length 1.</summary>
    [Fact]
    public void Pins_stand_where_hogging_and_sagging_are_equal()
    {
        const double a = LiftMechanics.PinInset;
        Assert.Equal(a * a / 2, 1.0 / 8 - a / 2, 1e-12);
    }
}
