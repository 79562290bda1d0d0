using Slabwright.Core.Boundaries;

namespace Slabwright.Tests.Boundaries;

/// <summary>Tries every legal plan of a tiny problem.</summary>
internal static class BruteForce
{
    /// <summary>Least bill of all legal plans, or null when there are more than a number of plans or none.</summary>
    public static long? Best(Judge judge, int mostPlans)
    {
        var perLane = Enumerable.Range(0, judge.Problem.Lanes.Length).Select(l => LanePlans(judge, l)).ToArray();
        var plans = perLane.Aggregate(1L, (product, lane) => product * lane.Count);
        if (plans == 0 || plans > mostPlans) return null;
        var best = long.MaxValue;
        Combine(judge, perLane, 0, [], ref best);
        return best;
    }

    private static void Combine(Judge judge, List<List<ChosenRepair>>[] perLane, int lane, List<ChosenRepair> chosen, ref long best)
    {
        if (lane == perLane.Length)
        {
            best = Math.Min(best, judge.Bill(chosen));
            return;
        }

        foreach (var plan in perLane[lane]) Combine(judge, perLane, lane + 1, [.. chosen, .. plan], ref best);
    }

    private static List<List<ChosenRepair>> LanePlans(Judge judge, int lane)
    {
        var plans = new List<List<ChosenRepair>>();
        Extend(judge, lane, 0, [], judge.Places(lane, true), judge.Places(lane, false), plans);
        return plans;
    }

    private static void Extend(
        Judge judge, int lane, int demand, List<ChosenRepair> so, List<long> starts, List<long> ends, List<List<ChosenRepair>> plans)
    {
        var demands = judge.Problem.Lanes[lane].Demands;
        if (demand == demands.Length)
        {
            plans.Add(so);
            return;
        }

        var earliest = so.Count == 0 ? long.MinValue : so[^1].To + judge.Problem.Limits.LeastGap;
        foreach (var from in starts.Where(s => s >= earliest && s <= demands[demand].From))
        {
            foreach (var to in ends.Where(e => e >= demands[demand].To && judge.MayRepair(lane, from, e)))
            {
                var next = demand;
                while (next < demands.Length && demands[next].To <= to) next++;
                if (next < demands.Length && demands[next].From < to) continue;
                Extend(judge, lane, next, [.. so, new ChosenRepair(lane, from, to)], starts, ends, plans);
            }
        }
    }
}
