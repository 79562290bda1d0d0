using System.Collections.Immutable;

namespace Slabwright.Core.Joints.Slabs;

/// <summary>
/// What each bar does for wheels anywhere, without solving again: for each bar the slabs were solved once for the unit action that reads its
/// shear and its moment, and by reciprocity the answer to any load is that load's work on the stored movements. Slabs rest on their base
/// everywhere.
/// </summary>
public sealed class BarInfluence
{
    private readonly SlabModel _model;
    private readonly double[][] _shear;
    private readonly double[][] _moment;

    /// <summary>Solves twice for each bar of a model.</summary>
    public BarInfluence(SlabModel model)
    {
        _model = model;
        var actions = new List<double[]>();
        foreach (var bar in model.System.Bars)
        {
            actions.Add(model.ActionOf(bar, shear: true));
            actions.Add(model.ActionOf(bar, shear: false));
        }

        var solved = model.Plates.SolveMany(actions);
        _shear = [.. solved.Where((_, n) => n % 2 == 0)];
        _moment = [.. solved.Where((_, n) => n % 2 == 1)];
    }

    /// <summary>Forces of all bars, in the order of the system's bars.</summary>
    /// <param name="wheels">The wheels.</param>
    public ImmutableArray<BarForce> Of(IReadOnlyList<WheelPatch> wheels)
    {
        var loads = _model.LoadsOf(wheels, out _);
        var loaded = Enumerable.Range(0, loads.Length).Where(u => loads[u] != 0).ToArray();
        return [.. _model.System.Bars.Select((bar, n) => bar.Bar.Forces(Work(_shear[n], loads, loaded), Work(_moment[n], loads, loaded)))];
    }

    private static double Work(double[] movements, double[] loads, int[] loaded)
    {
        var sum = 0.0;
        foreach (var u in loaded) sum += movements[u] * loads[u];
        return sum;
    }
}
