using System.Collections.Immutable;

namespace Slabwright.Core.Boundaries;

/// <summary>
/// The exact search for repair boundaries. Demands are split into clusters that provably do not touch, all repairs that can stand in
/// an optimum are listed, and each cluster is solved to its proven optimum.
/// </summary>
public static class BoundarySolver
{
    /// <summary>Finds the cheapest legal plan and proves it.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="cancel">Stops the search.</param>
    public static BoundarySolution Solve(BoundaryProblem problem, CancellationToken cancel = default)
    {
        var models = Enumerable.Range(0, problem.Lanes.Length).Select(n => new LaneModel(problem, n)).ToArray();
        var groups = new List<DemandGroup>();
        foreach (var model in models)
        {
            if (model.Demands.Count > 0) groups.AddRange(DemandGroups.Of(model));
        }

        var clusters = Clusters.Link(problem, groups);
        var repairs = new List<ChosenRepair>();
        var objective = 0L;
        var solver = new ClusterSolver(problem, cancel);
        foreach (var cluster in clusters)
        {
            cancel.ThrowIfCancellationRequested();
            var (lanes, chains) = Chains(problem, models, cluster);
            var (cost, plan) = solver.Solve(lanes, chains);
            objective += cost;
            repairs.AddRange(plan.Select(p => new ChosenRepair(p.Lane, p.Repair.From, p.Repair.To)));
        }

        return new BoundarySolution(
            [.. repairs.OrderBy(r => r.Lane).ThenBy(r => r.From)],
            objective,
            [.. models.SelectMany(m => m.Unmet)],
            clusters.Count,
            models.Sum(m => m.Costs.Work));
    }

    private static (int[] Lanes, LaneChain[] Chains) Chains(BoundaryProblem problem, LaneModel[] models, List<DemandGroup> cluster)
    {
        var lanes = cluster.Select(g => g.Lane).Distinct().Order().ToArray();
        var chains = Array.ConvertAll(lanes, lane => Chain(problem, models[lane], cluster.Where(g => g.Lane == lane)));
        return (lanes, chains);
    }

    /// <summary>Candidates of one lane of a cluster, its demands numbered on from 0.</summary>
    private static LaneChain Chain(BoundaryProblem problem, LaneModel model, IEnumerable<DemandGroup> groups)
    {
        var candidates = new List<Candidate>();
        var demands = 0;
        foreach (var group in groups.OrderBy(g => g.First))
        {
            foreach (var candidate in new CandidateSearch(model, group).Find())
            {
                candidate.First += demands - group.First;
                candidate.Last += demands - group.First;
                candidates.Add(candidate);
            }

            demands += group.Last - group.First + 1;
        }

        return new LaneChain([.. candidates], demands, problem.Limits.LeastGap);
    }
}

/// <summary>Joins demand groups whose repairs could touch across a lane line or crowd one another in their lane.</summary>
internal static class Clusters
{
    /// <summary>Clusters in order of their first group; marks the sides across which groups can meet.</summary>
    public static List<List<DemandGroup>> Link(BoundaryProblem problem, List<DemandGroup> groups)
    {
        for (var n = 0; n < groups.Count; n++) groups[n].Cluster = n;
        var order = groups.OrderBy(g => g.ReachFrom).ThenBy(g => g.Lane).ToList();
        var open = new List<DemandGroup>();
        foreach (var group in order)
        {
            open.RemoveAll(o => o.ReachTo + problem.Limits.LeastGap < group.ReachFrom);
            foreach (var other in open) Meet(problem, groups, other, group);
            open.Add(group);
        }

        return [.. groups.GroupBy(g => Root(groups, g.Cluster)).Select(c => c.ToList())];
    }

    private static void Meet(BoundaryProblem problem, List<DemandGroup> groups, DemandGroup other, DemandGroup group)
    {
        if (other.Lane == group.Lane)
        {
            Join(groups, other, group);
            return;
        }

        if (other.ReachTo < group.ReachFrom) return;
        var (left, right) = other.Lane < group.Lane ? (other, group) : (group, other);
        if (problem.Lanes[left.Lane].Right.Lane != right.Lane) return;
        (left.RightActive, right.LeftActive) = (true, true);
        Join(groups, left, right);
    }

    private static void Join(List<DemandGroup> groups, DemandGroup one, DemandGroup two)
    {
        var (a, b) = (Root(groups, one.Cluster), Root(groups, two.Cluster));
        var (low, high) = (Math.Min(a, b), Math.Max(a, b));
        groups[high].Cluster = low;
    }

    private static int Root(List<DemandGroup> groups, int n)
    {
        while (groups[n].Cluster != n)
        {
            groups[n].Cluster = groups[groups[n].Cluster].Cluster;
            n = groups[n].Cluster;
        }

        return n;
    }
}
