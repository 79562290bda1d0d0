using Slabwright.Core.Joints;
using Slabwright.Core.Joints.Slabs;
using Slabwright.Core.Numerics.Plates;

namespace Slabwright.Tests.JointMechanics;

/// <summary>Curled and hollow slabs: contact that only pushes, and the closed forms of curling where it stays in touch.</summary>
public sealed class ContactTests
{
    private static SlabPiece Slab(double topWarmer, double density = 2400) => new()
    {
        Name = "slab", From = 0, To = 5, Left = 0, Right = 3.6, Thickness = 0.25, Modulus = 30e9, TopWarmer = topWarmer, Density = density,
    };

    private static SlabSystem Alone(SlabPiece slab, params SlabVoid[] voids) => new() { Pieces = [slab], Reaction = 50e6, Voids = [.. voids], Mesh = SlabMesh.Coarse };

    [Theory]
    [InlineData(-12)]
    [InlineData(12)]
    public void Curled_slab_balances_its_weight_and_touches_in_part(double topWarmer)
    {
        var model = new SlabModel(Alone(Slab(topWarmer)));
        var state = model.Everything([]);
        Assert.Equal(SolveEnd.Converged, state.Plate.End);
        Assert.True(Math.Abs(state.Plate.Imbalance) < 1e-9, $"imbalance {state.Plate.Imbalance}");
        Assert.True(state.Plate.Residual < 1e-8, $"residual {state.Plate.Residual}");
        Assert.InRange(state.Plate.Contact[0], 0.2, 0.95);
        var (corner, middle) = (state.Deflection(0, 0, 0), state.Deflection(0, 2.5, 1.8));
        Assert.Equal(topWarmer > 0, corner > middle);
        Assert.True((topWarmer > 0 ? middle : corner) < 0, "The lifted part must stand clear of the base.");
    }

    [Fact]
    public void A_light_difference_keeps_the_base_in_touch_and_gives_Westergaards_edge()
    {
        const double Difference = -1.0;
        var long_ = Slab(Difference, density: 240_000) with { To = 16, Right = 16 };
        var state = new SlabModel(Alone(long_) with { Mesh = new SlabMesh(0.5, 0.1) }).Everything([]);
        Assert.Equal(1, state.Plate.Contact[0], 1e-12);
        var radius = RelativeStiffness.Radius(30e9, 0.25, 0.15, 50e6);
        var lift = 1.15 * 1e-5 * -Difference * radius * radius / 0.25;
        var weight = 240_000 * SlabTemperature.Gravity * 0.25 / 50e6;
        Assert.Equal(-lift, state.Deflection(0, 0, 8) - weight, 0.02 * lift);
        var full = 30e9 * 1e-5 * Difference / (2 * (1 - 0.15));
        Assert.Equal(full, state.BottomStress(0, 8, 8).X, 0.01 * Math.Abs(full));
    }

    [Fact]
    public void Nothing_pulls_and_nothing_sinks_through_the_base()
    {
        var model = new SlabModel(Alone(Slab(-15)));
        var state = model.Everything([new WheelPatch(0.15, 0.3, 0.25, 0.4, 40_000)]);
        Assert.Equal(SolveEnd.Converged, state.Plate.End);
        var pressed = 0.0;
        for (var i = 0; i <= 100; i++)
        {
            for (var j = 0; j <= 72; j++) pressed += state.BasePressure(0, i * 0.05, j * 0.05) * 0.05 * 0.05 * (i % 100 == 0 ? 0.5 : 1) * (j % 72 == 0 ? 0.5 : 1);
        }

        var weight = 2400 * SlabTemperature.Gravity * 0.25 * 5 * 3.6 + 40_000;
        Assert.Equal(weight, pressed, 0.01 * weight);
    }

    [Fact]
    public void A_hollow_under_the_corner_raises_stress_and_deflection_until_it_closes()
    {
        WheelPatch[] wheel = [new(0.15, 0.3, 0.25, 0.4, 40_000)];
        var sound = new SlabModel(Alone(Slab(0))).Everything(wheel);
        var deep = new SlabModel(Alone(Slab(0), new SlabVoid(0, 1.2, 0, 1.2, 0.05, (true, true)))).Everything(wheel);
        var shallow = new SlabModel(Alone(Slab(0), new SlabVoid(0, 1.2, 0, 1.2, 0.0003, (true, true)))).Everything(wheel);
        Assert.True(deep.Deflection(0, 0, 0) > 1.3 * sound.Deflection(0, 0, 0));
        Assert.True(deep.GreatestTension(0).Top > 1.3 * sound.GreatestTension(0).Top);
        Assert.InRange(shallow.Deflection(0, 0, 0), sound.Deflection(0, 0, 0), deep.Deflection(0, 0, 0));
        Assert.True(deep.Plate.Contact[0] < shallow.Plate.Contact[0]);
    }

    [Fact]
    public void A_start_nearby_saves_solutions_and_changes_no_answer()
    {
        var model = new SlabModel(Alone(Slab(-12), new SlabVoid(0, 0.8, 0, 0.8, 0.003, (true, true))));
        WheelPatch[] here = [new(0.15, 0.3, 0.25, 0.4, 40_000)];
        WheelPatch[] there = [new(0.25, 0.35, 0.25, 0.4, 40_000)];
        var fresh = model.Everything(there);
        var warm = model.Everything(there, model.Everything(here));
        Assert.Equal(SolveEnd.Converged, warm.Plate.End);
        Assert.True(warm.Plate.Iterations < fresh.Plate.Iterations, $"{warm.Plate.Iterations} against {fresh.Plate.Iterations}");
        foreach (var (x, y) in ((double, double)[])[(0, 0), (0.2, 0.3), (2.5, 1.8), (5, 3.6)])
        {
            Assert.Equal(fresh.Deflection(0, x, y), warm.Deflection(0, x, y), 1e-9);
        }
    }
}
