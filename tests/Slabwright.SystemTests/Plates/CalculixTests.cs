using Slabwright.Core.Numerics.Plates;
using Slabwright.SystemTests.Sheets;

namespace Slabwright.SystemTests.Plates;

/// <summary>
/// Six slabs with sheared joints against a general-purpose finite-element program on the same nodes, springs and forces: CalculiX 2.20
/// (Debian calculix-ccx), eight-node shells. The two have different elements, so they agree only as far as the mesh is fine.
/// </summary>
public sealed class CalculixTests
{
    [Fact]
    public void Six_slabs_agree_within_one_per_cent()
    {
        OutsideProgram.Need(CalculixRun.Program);
        var slabs = new NodalSlabs(0.22);
        var state = slabs.Solve();
        using var folder = new ScratchFolder();
        var other = CalculixRun.Of(slabs, folder.Path);
        Assert.True(Math.Abs(state.Imbalance) < 1e-9, $"imbalance {state.Imbalance}");
        var nodes = slabs.Panels.SelectMany(p => Enumerable.Range(0, p.Elements).SelectMany(e => NodalSlabs.Eight(p, e))).Distinct().ToArray();
        var greatest = nodes.Max(n => state.Movements[3 * n]);
        foreach (var n in nodes) Assert.Equal(other.Deflection(n), state.Movements[3 * n], 0.01 * greatest);
        Assert.Equal(1, greatest / nodes.Max(other.Deflection), 0.01);

        var (panel, elements) = slabs.Loaded;
        var field = new MomentField(panel, state.Movements);
        var ours = elements.SelectMany(e => Points(slabs, panel, e)).Average(p => field.At(p.X, p.Y).Y);
        Assert.Equal(16, other.LoadedMoments.Count);
        Assert.Equal(1, ours / other.LoadedMoments.Average(), 0.01);
    }

    /// <summary>The two-by-two points of an element, where the other program prints its stresses.</summary>
    private static IEnumerable<(double X, double Y)> Points(NodalSlabs slabs, PlatePanel panel, int element)
    {
        var corners = NodalSlabs.Eight(panel, element).Take(4).Select(slabs.Place).ToArray();
        var (left, right, low, high) = (corners.Min(c => c.X), corners.Max(c => c.X), corners.Min(c => c.Y), corners.Max(c => c.Y));
        foreach (var (r, s) in ((double, double)[])[(-1, -1), (1, -1), (-1, 1), (1, 1)])
        {
            yield return ((left + right + r * (right - left) / Math.Sqrt(3)) / 2, (low + high + s * (high - low) / Math.Sqrt(3)) / 2);
        }
    }
}
