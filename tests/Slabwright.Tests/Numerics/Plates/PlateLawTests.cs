using Slabwright.Core.Numerics.Plates;
using Slabwright.Tests.Reference;
using static Slabwright.Tests.Reference.PlateTheory;

namespace Slabwright.Tests.Numerics.Plates;

/// <summary>What any right plate model must do, whatever the numbers.</summary>
public sealed class PlateLawTests
{
    private static readonly PlateSection Slab = new(30e9, 0.15, 0.25);

    private static PlatePanel Panel(double reaction = 50e6, Func<double, double, double>? gap = null) =>
        PlatePanel.Rectangle(Lines(0, 4.5, 9), Lines(0, 3.6, 7), Slab, reaction, gap);

    [Theory]
    [InlineData(1e-4, 3.5)]
    [InlineData(1e-2, 3.5)]
    [InlineData(0.1, 2.5)]
    public void Deflection_converges_near_fourth_order_and_slower_only_where_the_rim_layer_is_thick(double thickness, double order)
    {
        var exact = Square(48, thickness, 0.3, clamped: true).Deflection;
        var errors = new[] { 4, 8, 16 }.Select(n => Math.Abs(Square(n, thickness, 0.3, clamped: true).Deflection - exact)).ToArray();
        Assert.InRange(Math.Log2(errors[0] / errors[1]), order, 8);
        Assert.InRange(Math.Log2(errors[1] / errors[2]), order, 8);
    }

    [Fact]
    public void Thin_plates_do_not_lock()
    {
        var thin = Square(4, 1e-5, 0.3, clamped: true).Deflection;
        var ordinary = Square(4, 1e-2, 0.3, clamped: true).Deflection;
        Assert.Equal(1, thin / ordinary, 0.01);
    }

    [Fact]
    public void Load_and_springs_balance_and_nothing_is_left_over()
    {
        var panel = Panel();
        var system = new PlateSystem([panel]);
        var loads = system.NewLoads();
        var applied = PlateLoads.AddPatch(loads, panel, 0.1, 0.2, 0.4, 0.5, 5e5);
        Assert.Equal(5e5 * 0.09, applied, 1e-6);
        var state = system.Solve(loads);
        Assert.Equal(SolveEnd.Converged, state.End);
        Assert.True(state.Residual < 1e-9, $"residual {state.Residual}");
        Assert.True(Math.Abs(state.Imbalance) < 1e-10, $"imbalance {state.Imbalance}");
    }

    [Fact]
    public void What_one_place_does_to_another_the_other_does_back()
    {
        var panel = Panel();
        var system = new PlateSystem([panel]);
        var (one, two) = (system.NewLoads(), system.NewLoads());
        PlateLoads.AddPoint(one, panel, 0.3, 0.4, 1);
        PlateLoads.AddPoint(two, panel, 4.1, 3.3, 1);
        var both = system.SolveMany([one, two]);
        var there = Deflection(panel, new PlateState(both[0], SolveEnd.Converged, 1, 0, 0, []), 4.1, 3.3);
        var back = Deflection(panel, new PlateState(both[1], SolveEnd.Converged, 1, 0, 0, []), 0.3, 0.4);
        Assert.Equal(there, back, Math.Abs(there) * 1e-9);
    }

    [Fact]
    public void A_mirrored_load_gives_the_mirrored_answer()
    {
        var panel = Panel();
        var system = new PlateSystem([panel]);
        var (left, right) = (system.NewLoads(), system.NewLoads());
        PlateLoads.AddPatch(left, panel, 0.2, 0.1, 0.5, 0.6, 1e5);
        PlateLoads.AddPatch(right, panel, 4.0, 3.0, 4.3, 3.5, 1e5);
        var both = system.SolveMany([left, right]).Select(m => new PlateState(m, SolveEnd.Converged, 1, 0, 0, [])).ToArray();
        foreach (var (x, y) in ((double, double)[])[(0, 0), (0.35, 0.35), (2, 1), (4.4, 3.1)])
        {
            Assert.Equal(Deflection(panel, both[0], x, y), Deflection(panel, both[1], 4.5 - x, 3.6 - y), 1e-12);
        }
    }

    /// <summary>Thin, because a joint of springs leaves out the twisting moment, which only thick plates carry apart from shear.</summary>
    [Fact]
    public void Two_thin_panels_joined_stiffly_are_one_panel()
    {
        var thin = new PlateSection(30e9 * 1000, 0.15, 0.025);
        var whole = PlatePanel.Rectangle(Lines(0, 4.5, 18), Lines(0, 3.6, 14), thin, 50e6);
        var alone = new PlateSystem([whole]);
        var loads = alone.NewLoads();
        PlateLoads.AddPatch(loads, whole, 1.0, 1.0, 1.3, 1.4, 1e5);
        var expected = alone.Solve(loads);
        var one = PlatePanel.Rectangle(Lines(0, 1.5, 6), Lines(0, 3.6, 14), thin, 50e6);
        var two = PlatePanel.Rectangle(Lines(1.5, 4.5, 12), Lines(0, 3.6, 11), thin, 50e6);
        var system = new PlateSystem([one, two], () => PlateLinks.Line(one, PanelSide.End, 0, 1, two, PanelSide.Start, 0, 1, 1e13, 1e12));
        var parts = system.NewLoads();
        PlateLoads.AddPatch(parts, one, 1.0, 1.0, 1.3, 1.4, 1e5);
        PlateLoads.AddPatch(parts, two, 1.0, 1.0, 1.3, 1.4, 1e5);
        var state = system.Solve(parts);
        Assert.Equal(1, Deflection(one, state, 1.15, 1.2) / Deflection(whole, expected, 1.15, 1.2), 0.0015);
        Assert.Equal(1, Deflection(two, state, 3, 2) / Deflection(whole, expected, 3, 2), 0.002);
    }

    [Fact]
    public void A_plate_nobody_holds_is_told_so()
    {
        var panel = Panel(reaction: 0);
        var system = new PlateSystem([panel]);
        Assert.False(system.Factor());
        Assert.Contains("free to move", Assert.Throws<InvalidOperationException>(() => system.Solve(system.NewLoads())).Message);
        Assert.Equal(SolveEnd.NotHeld, system.SolveContact(system.NewLoads()).End);
    }

    [Fact]
    public void Weight_alone_presses_evenly_over_an_even_gap()
    {
        var panel = Panel(gap: (_, _) => 0.002);
        var system = new PlateSystem([panel]);
        var loads = system.NewLoads();
        PlateLoads.AddUniform(loads, panel, 6000);
        var state = system.SolveContact(loads);
        Assert.Equal(SolveEnd.NotHeld, state.End);
        var touching = Panel(gap: (x, _) => x < 4.5 ? 0 : 0.002);
        var held = new PlateSystem([touching]).SolveContact(loads);
        Assert.Equal(SolveEnd.Converged, held.End);
        Assert.Equal(6000 / 50e6, Deflection(touching, held, 2, 2), 1e-12);
    }
}
