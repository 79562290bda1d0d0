using Slabwright.Core.Joints.Slabs;

namespace Slabwright.Tests.JointMechanics;

/// <summary>Stored influence gives the same bar forces as solving anew.</summary>
public sealed class BarInfluenceTests
{
    [Fact]
    public void Wheels_anywhere_give_the_forces_of_a_fresh_solution()
    {
        var bar = TwoSlabs.Bar();
        var model = new SlabModel(TwoSlabs.System() with { Bars = [.. TwoSlabs.Offsets.Select(o => new SlabBar(0, 1, o, bar))] });
        var influence = new BarInfluence(model);
        foreach (var along in (double[])[-2.1, -0.3, 0.002, 0.15, 1.4])
        {
            var fresh = model.Wheels(TwoSlabs.Axle(along)).Bars;
            var stored = influence.Of(TwoSlabs.Axle(along));
            for (var n = 0; n < fresh.Length; n++)
            {
                Assert.Equal(fresh[n].Shear, stored[n].Shear, 1e-4);
                Assert.Equal(fresh[n].FirstMoment, stored[n].FirstMoment, 1e-5);
                Assert.Equal(fresh[n].Bearing, stored[n].Bearing, 0.5);
            }
        }
    }
}
