using Slabwright.Core.Joints.Removal;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Published lifts. Sling load notes: 1000 lb on two legs is 577 lb at 60°, 707 lb at 45°. Tilt-up note: 5000 lb with 50 % impact is
/// 7500 lb. Lifting sheet of a precast floor unit (50 kN, 10 m², 1.0 kN/m², factor 1.3, four anchors): inputs read, answers worked out
/// from them, 20.28 kN from the form and 18.85 kN on site.
/// </summary>
public sealed class LiftChecks : ICheckRows
{
    private const string Slings = "Sling load notes (SLING-NOTES)";
    private const string TiltUp = "Concrete Construction magazine, tilt-up inserts (CC-TILTUP)";
    private const string Sheet = "Lifting calculation sheet of a floor unit; inputs read, answers worked independently";

    public IEnumerable<CheckRow> Rows()
    {
        foreach (var (degrees, pounds) in new[] { (60.0, 577.0), (45, 707), (90, 500), (30, 1000) })
            yield return Row("E8.1", Slings, $"1000 lb on two legs at {degrees}°", pounds, LiftMechanics.LegTension(1000, 2, degrees * Math.PI / 180), "lb", 0.5);
        yield return Row("E8.2", TiltUp, "5000-lb panel with 50 % impact", 7500, LiftMechanics.AnchorForce(5000, 0, 0, 1.5, 1, 1), "lb", 1e-9);
        yield return Row("E8.3", Sheet, "each of four anchors from the form", 20.28, LiftMechanics.AnchorForce(50_000, 1000, 10, 1.3, 1.04, 4) / 1000, "kN", 0.005);
        yield return Row("E8.3", Sheet, "each of four anchors on site", 18.85, LiftMechanics.AnchorForce(50_000, 0, 10, 1.3, 1.16, 4) / 1000, "kN", 0.005);
    }

    /// <summary>Statics of a uniform strip on two pins: moment over a pin w a²/2, at the middle w (1/8 − a/2), length 1.</summary>
    [Fact]
    public void Pins_stand_where_hogging_and_sagging_are_equal()
    {
        const double a = LiftMechanics.PinInset;
        Assert.Equal(a * a / 2, 1.0 / 8 - a / 2, 1e-12);
    }

    private static CheckRow Row(string item, string source, string what, double published, double ours, string unit, double tolerance) =>
        new("8 Lifting", item, source, what, published, ours, unit, tolerance);
}
