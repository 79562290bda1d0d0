namespace Slabwright.Core.Boundaries;

/// <summary>Solves one cluster: a single lane by its chain, several lanes by bound, fixing and sweep.</summary>
internal sealed class ClusterSolver(BoundaryProblem problem, CancellationToken cancel)
{
    /// <summary>The proven optimum of a cluster.</summary>
    /// <param name="laneIndex">Index of each chain's lane, ascending.</param>
    /// <param name="lanes">Candidates lane by lane.</param>
    public (long Cost, List<(int Lane, Candidate Repair)> Plan) Solve(int[] laneIndex, LaneChain[] lanes)
    {
        if (lanes.Length == 1)
        {
            var (cost, chain) = lanes[0].Best(Alone(lanes[0]));
            return (cost, chain.ConvertAll(c => (laneIndex[0], c)));
        }

        var plan = new LaneDescent(problem.Prices, laneIndex, lanes).Best();
        for (var round = 0; round < 3; round++)
        {
            var hope = new RefundHope(problem.Prices, laneIndex, lanes).All();
            var (bound, fixedLanes) = Fix(lanes, hope, plan.Cost);
            if (bound >= plan.Cost) return Named(plan, laneIndex);
            var shrunk = fixedLanes.Sum(l => l.Candidates.Length) * 4 < lanes.Sum(l => l.Candidates.Length) * 3;
            lanes = fixedLanes;
            if (!shrunk) break;
        }

        var sweep = new LaneSweep(problem, laneIndex, lanes, new RefundHope(problem.Prices, laneIndex, lanes).All());
        return Named(sweep.Best(plan.Cost, cancel) ?? plan, laneIndex);
    }

    private static (long Cost, List<(int Lane, Candidate Repair)> Plan) Named(
        (long Cost, List<(int Lane, Candidate Repair)> Plan) plan, int[] laneIndex) =>
        (plan.Cost, plan.Plan.ConvertAll(p => (laneIndex[p.Lane], p.Repair)));

    private static long[] Alone(LaneChain lane) => Array.ConvertAll(lane.Candidates, c => c.Cost);

    /// <summary>
    /// Lower bound with every hoped-for refund granted, and the candidates a plan below the best known may hold: those whose cheapest
    /// chain, with the cheapest chains of the other lanes, stays below it.
    /// </summary>
    private (long Bound, LaneChain[] Lanes) Fix(LaneChain[] lanes, long[][] hope, long best)
    {
        var through = new long[lanes.Length][];
        var bound = 0L;
        for (var lane = 0; lane < lanes.Length; lane++)
        {
            var cost = Alone(lanes[lane]);
            for (var n = 0; n < cost.Length; n++) cost[n] -= hope[lane][n];
            var (forward, backward) = (lanes[lane].Forward(cost), lanes[lane].Backward(cost));
            through[lane] = new long[cost.Length];
            for (var n = 0; n < cost.Length; n++) through[lane][n] = Math.Min(LaneChain.None, forward[n] + backward[n] - cost[n]);
            bound += through[lane].Min();
        }

        var kept = new LaneChain[lanes.Length];
        for (var lane = 0; lane < lanes.Length; lane++)
        {
            var others = bound - through[lane].Min();
            var candidates = lanes[lane].Candidates.Where((_, n) => through[lane][n] + others < best).ToArray();
            kept[lane] = new LaneChain(candidates, lanes[lane].Demands, problem.Limits.LeastGap);
            if (candidates.Length == 0) return (best, lanes);
        }

        return (bound, kept);
    }
}

/// <summary>A good plan for several lanes: each lane in turn is solved exactly with the others held, until nothing improves.</summary>
internal sealed class LaneDescent(ProblemPrices prices, int[] laneIndex, LaneChain[] lanes)
{
    public (long Cost, List<(int Lane, Candidate Repair)> Plan) Best()
    {
        var chains = new List<Candidate>[lanes.Length];
        for (var lane = 0; lane < lanes.Length; lane++) chains[lane] = [];
        var total = long.MaxValue;
        for (var round = 0; round < 6; round++)
        {
            for (var lane = 0; lane < lanes.Length; lane++) chains[lane] = lanes[lane].Best(Net(lane, chains)).Chain;
            var now = Total(chains);
            if (now >= total) break;
            total = now;
        }

        return (Total(chains), Together(chains));
    }

    private static List<(int Lane, Candidate Repair)> Together(List<Candidate>[] chains) =>
        [.. chains.SelectMany((chain, lane) => chain.Select(c => (lane, c)))];

    private long[] Net(int lane, List<Candidate>[] chains)
    {
        var cost = Array.ConvertAll(lanes[lane].Candidates, c => c.Cost);
        for (var n = 0; n < cost.Length; n++)
        {
            var repair = lanes[lane].Candidates[n];
            if (Beside(lane - 1, lane)) cost[n] -= chains[lane - 1].Sum(c => SharedEdges.Refund(prices, c, repair));
            if (Beside(lane, lane + 1)) cost[n] -= chains[lane + 1].Sum(c => SharedEdges.Refund(prices, repair, c));
        }

        return cost;
    }

    private long Total(List<Candidate>[] chains)
    {
        var total = chains.Sum(chain => chain.Sum(c => c.Cost));
        for (var lane = 1; lane < chains.Length; lane++)
        {
            if (!Beside(lane - 1, lane)) continue;
            foreach (var left in chains[lane - 1]) total -= chains[lane].Sum(right => SharedEdges.Refund(prices, left, right));
        }

        return total;
    }

    private bool Beside(int left, int right) => left >= 0 && right < laneIndex.Length && laneIndex[left] + 1 == laneIndex[right];
}

/// <summary>
/// The most each candidate can be refunded as its own share: half of the shared cut and seal and its own face wherever any candidate of
/// the neighbouring lane lies, and every planning weight such a candidate could lift.
/// </summary>
internal sealed class RefundHope(ProblemPrices prices, int[] laneIndex, LaneChain[] lanes)
{
    public long[][] All()
    {
        var all = new long[lanes.Length][];
        for (var lane = 0; lane < lanes.Length; lane++)
        {
            var left = lane > 0 && laneIndex[lane - 1] + 1 == laneIndex[lane] ? Covered(lanes[lane - 1]) : [];
            var right = lane + 1 < lanes.Length && laneIndex[lane] + 1 == laneIndex[lane + 1] ? Covered(lanes[lane + 1]) : [];
            all[lane] = Array.ConvertAll(lanes[lane].Candidates, c =>
                Side(c, left, c.LeftFace, c.LeftSpanned, c.LeftStartLoose, c.LeftEndLoose)
                + Side(c, right, c.RightFace, c.RightSpanned, c.RightStartLoose, c.RightEndLoose));
        }

        return all;
    }

    private long Side(Candidate repair, List<TickSpan> covered, long face, long[] spanned, bool startLoose, bool endLoose)
    {
        var hope = 0L;
        foreach (var span in covered)
        {
            if (span.To < repair.From || span.From > repair.To) continue;
            var overlap = Math.Min(span.To, repair.To) - Math.Max(span.From, repair.From);
            hope += overlap * (((prices.CutRate + prices.SealRate + 1) / 2) + face);
            foreach (var at in spanned)
            {
                if (span.From < at && at < span.To) hope += prices.SpannedJoint;
            }

            if (startLoose && span.From <= repair.From && repair.From <= span.To) hope += prices.UnmatchedEnd;
            if (endLoose && span.From <= repair.To && repair.To <= span.To) hope += prices.UnmatchedEnd;
        }

        return hope;
    }

    private static List<TickSpan> Covered(LaneChain lane)
    {
        var covered = new List<TickSpan>();
        foreach (var repair in lane.Candidates.OrderBy(c => c.From))
        {
            if (covered.Count > 0 && repair.From <= covered[^1].To)
                covered[^1] = new TickSpan(covered[^1].From, Math.Max(covered[^1].To, repair.To));
            else covered.Add(new TickSpan(repair.From, repair.To));
        }

        return covered;
    }
}
