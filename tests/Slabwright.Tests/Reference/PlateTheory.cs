using Slabwright.Core.Numerics.Plates;

namespace Slabwright.Tests.Reference;

/// <summary>Small plates built for comparison with closed solutions.</summary>
internal static class PlateTheory
{
    /// <summary>Uniform lines.</summary>
    public static double[] Lines(double from, double to, int elements) =>
        [.. Enumerable.Range(0, elements + 1).Select(n => from + (to - from) * n / elements)];

    /// <summary>A panel supported along its whole rim: simply (hard), or clamped.</summary>
    public static PlateSystem Rimmed(PlatePanel panel, bool clamped) => new([panel], held: () =>
    {
        var held = new Dictionary<int, double>();
        for (var j = 0; j < panel.NodesAcross; j++)
        {
            for (var i = 0; i < panel.NodesAlong; i++)
            {
                var (side, end) = (j == 0 || j == panel.NodesAcross - 1, i == 0 || i == panel.NodesAlong - 1);
                if (!side && !end) continue;
                var node = panel.Node(i, j);
                held[3 * node] = 0;
                if (clamped || side) held[3 * node + 1] = 0;
                if (clamped || end) held[3 * node + 2] = 0;
            }
        }

        return held;
    });

    /// <summary>Centre deflection and moments of a uniformly loaded square plate with rim supports, as factors of q a⁴/D and q a².</summary>
    public static (double Deflection, PlateMoment Centre, PlateMoment Edge) Square(
        int elements, double thickness, double poisson, bool clamped, double reactionFactor = 0)
    {
        const double Modulus = 2e11;
        var section = new PlateSection(Modulus, poisson, thickness);
        var panel = PlatePanel.Rectangle(Lines(0, 1, elements), Lines(0, 1, elements), section, reactionFactor * section.Bending);
        var system = Rimmed(panel, clamped);
        var loads = system.NewLoads();
        PlateLoads.AddUniform(loads, panel, 1);
        var state = system.Solve(loads);
        var moments = new MomentField(panel, state.Movements);
        return (Deflection(panel, state, 0.5, 0.5) * section.Bending, moments.At(0.5, 0.5), moments.At(0.5, 0));
    }

    /// <summary>Deflection at a place.</summary>
    public static double Deflection(PlatePanel panel, PlateState state, double x, double y)
    {
        var (nodes, weights) = panel.WeightsAt(x, y);
        return nodes.Zip(weights).Sum(p => state.Movements[3 * p.First] * p.Second);
    }
}
