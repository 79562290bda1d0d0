using System.Collections.Immutable;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Boundaries;

/// <summary>
/// Looks, lane by lane, for stretches where one removal from the first demand to the last costs less than separate repairs, or nearly
/// as little. Lanes are priced alone and without planning weights.
/// </summary>
internal static class LargeRemovalSearch
{
    public static ImmutableArray<LargeRemoval> Find(Road road, BoundaryProblem problem, BoundarySolution solution, double within)
    {
        var chosen = solution.Repairs.ToLookup(r => r.Lane);
        var found = Enumerable.Range(0, problem.Lanes.Length)
            .SelectMany(lane => new LaneRuns(problem, lane, within, [.. chosen[lane]]).Find(road.Lanes[lane].Number));
        return [.. found.OrderBy(l => l.From).ThenBy(l => l.Lane)];
    }
}

/// <summary>Compares one removal with separate repairs along one lane.</summary>
internal sealed class LaneRuns(BoundaryProblem problem, int lane, double within, ChosenRepair[] chosen)
{
    private readonly LaneModel _model = new(problem, lane);
    private readonly Dictionary<int, List<Candidate>> _single = [];

    /// <summary>The widest runs, not overlapping, from the start of the lane.</summary>
    public IEnumerable<LargeRemoval> Find(int number)
    {
        for (var first = 0; first < _model.Demands.Count - 1; first++)
        {
            LargeRemoval? widest = null;
            var last = first;
            for (var next = first + 1; next < _model.Demands.Count; next++)
            {
                if (Compare(first, next, number) is not { } removal) break;
                (widest, last) = (removal, next);
            }

            if (widest is null) continue;
            yield return widest;
            first = last;
        }
    }

    private LargeRemoval? Compare(int first, int last, int number)
    {
        var run = Search(first, last).MinBy(c => c.Cost);
        if (run is null || Separate(first, last) is not { } spot || run.Cost > spot * (1 + within)) return null;
        var (from, to) = (_model.Demands[first].From, _model.Demands[last].To);
        return new LargeRemoval(number, Ticks.ToMetres(run.From), Ticks.ToMetres(run.To), PlanCost.Money(spot), PlanCost.Money(run.Cost),
            Array.Exists(chosen, c => c.From <= from && to <= c.To));
    }

    /// <summary>Least cost with a repair to each demand, or null where the rules do not let them stand apart.</summary>
    private long? Separate(int first, int last)
    {
        var candidates = new List<Candidate>();
        for (var demand = first; demand <= last; demand++)
        {
            if (!_single.TryGetValue(demand, out var single)) _single[demand] = single = Search(demand, demand);
            foreach (var candidate in single)
            {
                (candidate.First, candidate.Last) = (demand - first, demand - first);
                candidates.Add(candidate);
            }
        }

        var chain = new LaneChain([.. candidates], last - first + 1, problem.Limits.LeastGap);
        var cost = chain.Best(Array.ConvertAll(chain.Candidates, c => c.Cost)).Cost;
        return cost < LaneChain.None ? cost : null;
    }

    private List<Candidate> Search(int first, int last) => new CandidateSearch(_model, new DemandGroup
    {
        Lane = lane, First = first, Last = last, ReachFrom = _model.Lane.From, ReachTo = _model.Lane.To,
    }).FindRun(first, last);
}
