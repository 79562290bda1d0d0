using System.Collections.Immutable;

namespace Slabwright.Core.Boundaries;

/// <summary>The price-list cost of a chosen plan, planning weights left out.</summary>
internal static class PlanCost
{
    /// <summary>The same problem with both planning weights at 0.</summary>
    public static BoundaryProblem WithoutWeights(BoundaryProblem problem) =>
        problem with { Prices = problem.Prices with { SpannedJoint = 0, UnmatchedEnd = 0 } };

    /// <summary>Cost in money units.</summary>
    public static long Of(BoundaryProblem problem, ImmutableArray<ChosenRepair> chosen)
    {
        problem = WithoutWeights(problem);
        var byLane = chosen.ToLookup(r => r.Lane);
        var total = 0L;
        var left = new List<Candidate>();
        for (var lane = 0; lane < problem.Lanes.Length; lane++)
        {
            var priced = Price(problem, lane, byLane[lane]);
            total += priced.Sum(c => c.Cost);
            if (lane > 0 && problem.Lanes[lane].Left.Lane == lane - 1) total -= Shared(problem.Prices, left, priced);
            left = priced;
        }

        return total;
    }

    /// <summary>Money as the plan reports it, to the cent.</summary>
    public static decimal Money(long units) => Math.Round(units / (decimal)BoundaryProblem.MoneyPerUnit, 2);

    public static List<Candidate> Price(BoundaryProblem problem, int lane, IEnumerable<ChosenRepair> repairs)
    {
        var rules = new CutRules(problem, problem.Lanes[lane]);
        var costs = new RepairCosts(problem, rules);
        var priced = new List<Candidate>();
        foreach (var repair in repairs.OrderBy(r => r.From))
        {
            rules.TryCut(repair.From, true, true, out var start);
            rules.TryCut(repair.To, false, true, out var end);
            var candidate = new Candidate();
            costs.Price(start, end, candidate);
            priced.Add(candidate);
        }

        return priced;
    }

    private static long Shared(ProblemPrices prices, List<Candidate> left, List<Candidate> right)
    {
        var (shared, first) = (0L, 0);
        foreach (var one in left)
        {
            while (first < right.Count && right[first].To < one.From) first++;
            for (var n = first; n < right.Count && right[n].From <= one.To; n++) shared += SharedEdges.Refund(prices, one, right[n]);
        }

        return shared;
    }
}
