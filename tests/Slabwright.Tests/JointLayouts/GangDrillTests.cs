using CsCheck;
using Slabwright.Core.Joints.Design;

namespace Slabwright.Tests.JointLayouts;

public sealed class GangDrillTests
{
    /// <summary>Law: every bar is drilled once, by a drill that stands over it, and no fewer set-ups would do.</summary>
    [Fact]
    public void Set_ups_drill_every_bar_once_and_are_the_fewest()
    {
        Gen.Select(Gen.Int[0, 13].HashSet[1, 8], Gen.Int[1, 5], Gen.Int[1, 3]).Sample((places, drills, pitch) =>
        {
            var offsets = places.Order().Select(p => 0.3 + p * 0.15).ToArray();
            var spacing = pitch * 0.15;
            var setUps = GangDrill.SetUps(offsets, drills, spacing, 3.66);
            Assert.Equal(Enumerable.Range(1, offsets.Length), setUps.SelectMany(s => s.Bars).Order());
            foreach (var (setUp, bar) in setUps.SelectMany(s => s.Bars.Select(b => (s, b))))
            {
                var drill = (offsets[bar - 1] - setUp.FrameAt) / spacing;
                Assert.InRange(drill, -0.01, drills - 1 + 0.01);
                Assert.Equal(Math.Round(drill), drill, 0.02);
            }

            Assert.Equal(Fewest(offsets, drills, spacing), setUps.Length);
        }, seed: "0000Gj3kQ1a2", iter: 400, threads: 1);
    }

    [Fact]
    public void Four_in_each_wheel_path_take_two_set_ups_of_four_drills()
    {
        var bars = Lanes.Row(12, 24, 36, 48, 96, 108, 120, 132);
        var setUps = GangDrill.SetUps(bars.Offsets, 4, 12 * Lanes.Inch, 12 * Lanes.Foot);
        Assert.Equal([[1, 2, 3, 4], [5, 6, 7, 8]], setUps.Select(s => s.Bars.ToArray()));
        Assert.Equal([1, 2], setUps.Select(s => s.Number));
    }

    [Fact]
    public void The_frame_stays_on_the_lane_where_it_can()
    {
        var setUps = GangDrill.SetUps(Lanes.Row(12, 24, 36, 48, 60, 72, 84, 96, 108, 120, 132).Offsets, 4, 12 * Lanes.Inch, 12 * Lanes.Foot);
        Assert.Equal(3, setUps.Length);
        Assert.True(setUps[^1].FrameAt + 36 * Lanes.Inch <= 12 * Lanes.Foot + 1e-9);
    }

    /// <summary>Fewest frames by trying every cover, bar by bar.</summary>
    private static int Fewest(double[] offsets, int drills, double spacing)
    {
        var best = int.MaxValue;
        Try(Enumerable.Range(0, offsets.Length).ToHashSet(), 0);
        return best;

        void Try(HashSet<int> left, int used)
        {
            if (left.Count == 0) best = Math.Min(best, used);
            if (left.Count == 0 || used + 1 >= best) return;
            var bar = left.Min();
            for (var under = 0; under < drills; under++)
            {
                var at = offsets[bar] - under * spacing;
                var reach = left.Where(b => Math.Abs(Math.Round((offsets[b] - at) / spacing) * spacing - (offsets[b] - at)) < 0.002
                    && Math.Round((offsets[b] - at) / spacing) is var d && d >= 0 && d < drills);
                Try([.. left.Except(reach)], used + 1);
            }
        }
    }
}
