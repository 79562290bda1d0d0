using Slabwright.Core.Joints.Slabs;

namespace Slabwright.Tests.JointMechanics;

/// <summary>The force method gives the same joint as bars built into the plates.</summary>
public sealed class JointInfluenceTests
{
    [Fact]
    public void Force_method_and_built_in_bars_agree()
    {
        var system = TwoSlabs.System();
        var influence = new JointInfluence(system, 0, 1, TwoSlabs.Offsets, [new LoadCase("axle on the repair", [.. TwoSlabs.Axle()])]);
        foreach (var chosen in (int[][])[[0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10], [0, 1, 2, 8, 9, 10], [10]])
        {
            var bar = TwoSlabs.Bar();
            var response = influence.Respond(0, bar, chosen);
            var model = new SlabModel(system with { Bars = [.. chosen.Select(n => new SlabBar(0, 1, TwoSlabs.Offsets[n], bar))] });
            var state = model.Wheels(TwoSlabs.Axle());
            for (var n = 0; n < chosen.Length; n++)
            {
                Assert.Equal(state.Bars[n].Shear, response.Bars[n].Shear, 1e-6 * 80_000);
                Assert.Equal(state.Bars[n].FirstMoment, response.Bars[n].FirstMoment, 1e-6 * 1000);
                Assert.Equal(state.Bars[n].Bearing, response.Bars[n].Bearing, 1e-6 * 1e7);
            }

            Assert.Equal(state.Carried(0, 1), response.Carried, 0.1);
            Assert.Equal(80_000, response.Load, 0.001);
        }
    }

    [Fact]
    public void Without_bars_nothing_crosses()
    {
        var influence = new JointInfluence(TwoSlabs.System(), 0, 1, TwoSlabs.Offsets, [new LoadCase("axle", [.. TwoSlabs.Axle()])]);
        var response = influence.Respond(0, TwoSlabs.Bar(), []);
        Assert.Equal(0, response.Carried);
        Assert.InRange(response.DeflectionTransfer, -0.01, 0.01);
    }
}
