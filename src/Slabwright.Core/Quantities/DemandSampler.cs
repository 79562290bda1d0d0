using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Numerics;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.Core.Quantities;

/// <summary>How far along its range each driver of the demands stands in one plan, as probabilities.</summary>
/// <param name="Growth">Growth, common to all distress types.</param>
/// <param name="New">Number of new distresses.</param>
/// <param name="Margin">Hidden margin, common to all places.</param>
internal readonly record struct DriverLevels(double Growth, double New, double Margin);

/// <summary>
/// Makes the demands of one plan. Growth is tied half to a common level and half to a level of its distress type; the hidden margin
/// half to a common level and half to one of its place. Without the common half the ranges would average out over a long road and the
/// cost would look surer than anybody can be.
/// </summary>
internal sealed class DemandSampler(Road road, ImmutableArray<UncertainDemand> demands, CounterRandom random)
{
    /// <summary>Weight of the common level.</summary>
    public const double CommonWeight = 0.5;

    private const int GrowthStream = 11;
    private const int MarginStream = 12;
    private const int ParentStream = 13;
    private const int SlabStream = 14;

    private readonly double _newExpected = demands.Sum(d => d.NewExpected);

    /// <summary>Trial number that sets every own level to the common one.</summary>
    public const int AllCommon = -1;

    /// <summary>The demands of a trial; null when nothing differs from the plan.</summary>
    /// <param name="trial">Number of the draw, or <see cref="AllCommon"/>.</param>
    /// <param name="levels">Common levels.</param>
    public IReadOnlyList<RemovalDemand>? Sample(int trial, DriverLevels levels)
    {
        var changed = false;
        var sampled = new List<RemovalDemand>(demands.Length);
        for (var i = 0; i < demands.Length; i++)
        {
            var longer = Longer(demands[i], i, trial, levels);
            changed |= longer != 0;
            sampled.Add(longer == 0 ? demands[i].Demand : Stretch(demands[i].Demand, longer));
        }

        var news = Samples.PoissonQuantile(_newExpected, levels.New);
        for (var n = 0; n < news; n++) sampled.Add(Another(Math.Max(trial, 0), n));
        if (!changed && news == 0) return null;
        sampled.Sort((a, b) => (a.Lane, a.From, a.To).CompareTo((b.Lane, b.From, b.To)));
        return sampled;
    }

    /// <summary>True when growth, margin or new distresses can move the demands at all.</summary>
    public (bool Growth, bool New, bool Margin) Varies() => (
        demands.Any(d => d.Growth.High > d.Growth.Low), _newExpected > 0, demands.Any(d => d.Margin.High > d.Margin.Low));

    private double Longer(UncertainDemand demand, int index, int trial, DriverLevels levels)
    {
        var growth = Level(GrowthStream, trial, (int)(demand.Type ?? 0), levels.Growth);
        var margin = Level(MarginStream, trial, index, levels.Margin);
        return Shift(demand.Growth, growth) + Shift(demand.Margin, margin);
    }

    private double Level(int stream, int trial, int index, double common) =>
        trial < 0 ? common : Samples.Tied(random.Uniform(stream, trial, index), common, CommonWeight);

    private static double Shift(Triangular range, double level) => range.High > range.Low ? range.Quantile(level) - range.Likely : 0;

    private RemovalDemand Stretch(RemovalDemand demand, double longer)
    {
        var lane = road.LaneByNumber(demand.Lane);
        var (from, to) = (Math.Max(lane.From, demand.From - longer), Math.Min(lane.To, demand.To + longer));
        if (to < from) from = to = Math.Clamp((demand.From + demand.To) / 2, lane.From, lane.To);
        return demand with { From = from, To = to };
    }

    /// <summary>A new distress like one of the plan's, on a slab of the same lane drawn at random, at the same place within its slab.</summary>
    private RemovalDemand Another(int trial, int number)
    {
        var parent = Parent(random.Uniform(ParentStream, trial, number) * _newExpected);
        var lane = road.LaneByNumber(parent.Lane);
        var slab = lane.SlabByNumber(1 + (int)(random.Uniform(SlabStream, trial, number) * lane.SlabCount));
        var id = $"new {number + 1}";
        if (parent.Treatment != Treatment.FullDepthRepair)
        {
            return new RemovalDemand(lane.Number, slab.Start.At, slab.End.At, Treatment.SlabReplacement, [id], []);
        }

        var own = lane.SlabAt((parent.From + parent.To) / 2);
        var middle = slab.Start.At + ((parent.From + parent.To) / 2 - own.Start.At) / own.Length * slab.Length;
        var half = (parent.To - parent.From) / 2;
        return new RemovalDemand(
            lane.Number, Math.Max(lane.From, middle - half), Math.Min(lane.To, middle + half), Treatment.FullDepthRepair, [id], []);
    }

    private RemovalDemand Parent(double place)
    {
        foreach (var demand in demands)
        {
            place -= demand.NewExpected;
            if (place < 0) return demand.Demand;
        }

        return demands.Last(d => d.NewExpected > 0).Demand;
    }
}
