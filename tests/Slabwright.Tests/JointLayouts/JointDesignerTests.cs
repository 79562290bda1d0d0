using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Faulting;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using static Slabwright.Tests.JointLayouts.Lanes;

namespace Slabwright.Tests.JointLayouts;

public sealed class JointDesignerTests
{
    [Fact]
    public void A_common_lane_gets_what_practice_gives_it()
    {
        var design = Design(Highway);
        Assert.Equal((8, 1.25 * Inch, 18 * Inch, BarArrangement.WheelPaths),
            (design.Winner!.Layout!.Bars, design.Winner.Layout.Diameter, design.Winner.Layout.Length, design.Winner.Layout.Arrangement));
        Assert.InRange(design.Winner.DeflectionTransfer, 0.8, 0.95);
        Assert.Equal(design.Winner, design.Used);
    }

    [Fact]
    public void Heavy_traffic_asks_for_thicker_bars_and_more_of_them()
    {
        var heavy = Design(Highway with { TrucksPerDay = 1000 }).Winner!.Layout!;
        Assert.Equal((10, 1.5 * Inch), (heavy.Bars, heavy.Diameter));
    }

    [Fact]
    public void The_table_hides_nothing()
    {
        var design = Design(Highway);
        Assert.Equal(1 + 4 * 4 * 3, design.Alternatives.Length);
        Assert.Single(design.Alternatives, a => a.Layout is null);
        Assert.Equal(design.Alternatives.OrderBy(a => a.CostPerJoint).Select(a => a.CostPerJoint), design.Alternatives.Select(a => a.CostPerJoint));
        Assert.All(design.Alternatives, a => Assert.Equal(a.Passes, a.Governing.Holds));
        Assert.Contains(design.Alternatives, a => a.Checks.Any(c => c.Name == "bearing on the concrete" && !c.Holds));
    }

    [Fact]
    public void Plates_and_closed_forms_stand_side_by_side_and_agree_on_the_bar_under_the_wheel()
    {
        // The two published reaches differ by a factor of up to two; the plates lie within a factor of two of the pair.
        foreach (var a in Design(Highway).Alternatives.Where(a => a.Layout is { Bars: 8 }))
            Assert.InRange(a.Bearing, 0.9 * a.ClosedBearing.Reach18, 2 * a.ClosedBearing.Reach10);
    }

    [Fact]
    public void A_thicker_bar_never_bears_harder_nor_faults_more()
    {
        foreach (var same in Design(Highway).Alternatives.Where(a => a.Layout is not null).GroupBy(a => (a.Layout!.Bars, a.Layout.Length)))
        {
            var rising = same.OrderBy(a => a.Layout!.Diameter).ToArray();
            for (var n = 1; n < rising.Length; n++)
            {
                Assert.True(rising[n].Bearing < rising[n - 1].Bearing);
                Assert.True(rising[n].Faulting <= rising[n - 1].Faulting);
                Assert.True(rising[n].IncrementalFaulting <= rising[n - 1].IncrementalFaulting && rising[n].IncrementalFaulting > 0);
                Assert.True(rising[n].DeflectionTransfer > rising[n - 1].DeflectionTransfer);
                Assert.True(rising[n].Life >= rising[n - 1].Life);
            }
        }
    }

    [Fact]
    public void One_layout_serves_every_build_up_and_the_worst_is_named()
    {
        var thick = Highway with { Thickness = 12 * Inch, BuildUp = "12 in" };
        var both = Design(Highway, thick);
        Assert.Equal(1.5 * Inch, both.Winner!.Layout!.Diameter);
        foreach (var alone in new[] { Design(Highway), Design(thick) })
            Assert.True(alone.Alternatives.Single(a => Same(a.Layout, both.Winner.Layout)).Passes);
        Assert.Equal(1.25 * Inch, Design(Highway).Winner!.Layout!.Diameter);
        Assert.Contains(both.Reasons, r => r.Rule == "one layout a lane" && r.Inputs.Length == 2);
        Assert.Equal(both.Winner.BuildUp, both.Conditions.BuildUp);
    }

    [Fact]
    public void Where_nothing_passes_the_nearest_is_used_and_says_what_it_breaks()
    {
        var weak = Design(Highway with { Strength = Units.Psi.ToBase(1500) });
        Assert.Null(weak.Winner);
        Assert.Contains(weak.Used.Checks, c => !c.Holds && c.Name == "bearing on the concrete");
        Assert.Equal(weak.Alternatives.Min(a => a.Governing.Use), weak.Used.Governing.Use);
        Assert.Contains(weak.Reasons, r => r.Rule == "no layout passes");
    }

    [Fact]
    public void Only_the_rule_set_lets_a_lane_go_without_dowels()
    {
        var few = Highway with
        {
            Thickness = 6 * Inch, TrucksPerDay = 20, OldSlab = 12 * Foot, EquivalentAxlesPerDay = 3, Strength = Units.Psi.ToBase(6000),
            Traffic = [new(1, Units.Kip.ToBase(12), 20), new(1, Units.Kip.ToBase(20), 1)],
        };
        Assert.NotNull(Design(few).Winner!.Layout);
        var allowed = Limits with { UndowelledBelowThickness = Of(7 * Inch), UndowelledBelowTrucks = Of(80.0) };
        Assert.Null(JointDesigner.Design([few], allowed, null, Price).Winner!.Layout);
        Assert.NotNull(JointDesigner.Design([few with { TrucksPerDay = 81 }], allowed, null, Price).Winner!.Layout);
        Assert.NotNull(JointDesigner.Design([few with { Thickness = 7.5 * Inch }], allowed, null, Price).Winner!.Layout);
    }

    [Fact]
    public void Beside_a_curb_the_row_begins_further_in()
    {
        var curb = Highway with { ClearRight = 18 * Inch };
        Assert.All(Design(curb).Alternatives.Where(a => a.Layout is not null), a => Assert.True(a.Layout!.Offsets[^1] <= 126 * Inch + 1e-9));
    }

    [Fact]
    public void A_full_row_bears_as_the_faulting_regression_defines_it()
    {
        // For a full row at 12 in the shared-out load is the regression's own; only then may the regression be used as published.
        var c = Highway;
        var row = Row([.. Enumerable.Range(1, 11).Select(n => 12.0 * n)]);
        var inputs = new RegressionInputs
        {
            EquivalentAxles = c.EquivalentAxlesPerDay * 365.25 * EquivalentAxles.GrowthFactor(c.Growth, 20), Age = 20, Drainage = 1,
            Bearing = FaultingRegression.BearingStress(1.5 * Inch, c.Radius, FaultingRegression.Opening(0.8, c.OldSlab, c.Expansion, 67)),
            JointSpacing = c.OldSlab, FreezingIndex = 300, Precipitation = 0.9,
        };
        Assert.Equal(FaultingRegression.Aashto1998Dowelled(inputs), new FaultingForecast(c, row).After(20), 1e-9);
    }

    private static bool Same(BarLayout? a, BarLayout? b) =>
        a is not null && b is not null && a.Diameter == b.Diameter && a.Length == b.Length && a.Offsets.SequenceEqual(b.Offsets);
}
