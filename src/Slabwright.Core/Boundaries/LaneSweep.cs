namespace Slabwright.Core.Boundaries;

/// <summary>
/// Exact search over several lanes together. Candidates are met in order of their start; a state holds, for each lane, the last repair
/// chosen while it can still matter, or else only the next demand. What two facing repairs save together is taken when the later one
/// starts. States that cannot finish below the best plan known are dropped.
/// </summary>
internal sealed class LaneSweep
{
    private readonly ProblemPrices _prices;
    private readonly long _gap;
    private readonly LaneChain[] _lanes;
    private readonly int[] _laneIndex;
    private readonly long[][] _hope;
    private readonly Completion[][] _completions;
    private readonly List<(int Parent, int Lane, int Candidate)> _log = [];

    /// <param name="problem">The problem.</param>
    /// <param name="laneIndex">Index of each chain's lane in the problem, ascending.</param>
    /// <param name="lanes">Surviving candidates lane by lane.</param>
    /// <param name="hope">Most each candidate may still be refunded as its own share.</param>
    public LaneSweep(BoundaryProblem problem, int[] laneIndex, LaneChain[] lanes, long[][] hope)
    {
        (_prices, _gap, _laneIndex, _lanes, _hope) = (problem.Prices, problem.Limits.LeastGap, laneIndex, lanes, hope);
        _completions = new Completion[lanes.Length][];
        for (var lane = 0; lane < lanes.Length; lane++)
        {
            var cost = new long[lanes[lane].Candidates.Length];
            for (var n = 0; n < cost.Length; n++) cost[n] = lanes[lane].Candidates[n].Cost - hope[lane][n];
            _completions[lane] = lanes[lane].Completions(cost);
        }
    }

    /// <summary>The cheapest plan strictly below a bound, or null when there is none.</summary>
    public (long Cost, List<(int Lane, Candidate Repair)> Plan)? Best(long below, CancellationToken cancel)
    {
        var events = Events();
        var states = new Dictionary<StateKey, State> { [new StateKey(new int[_lanes.Length])] = new State(0, -1) };
        for (var n = 0; n < events.Count; n++)
        {
            cancel.ThrowIfCancellationRequested();
            var (at, lane, candidates) = events[n];
            states = Settle(states, at, below);
            Start(states, lane, candidates, below);
        }

        return Finish(Settle(states, long.MaxValue / 2, below));
    }

    private List<(long At, int Lane, List<int> Candidates)> Events()
    {
        var all = new List<(long At, int Lane, int Candidate)>();
        for (var lane = 0; lane < _lanes.Length; lane++)
        {
            for (var n = 0; n < _lanes[lane].Candidates.Length; n++) all.Add((_lanes[lane].Candidates[n].From, lane, n));
        }

        all.Sort();
        var events = new List<(long At, int Lane, List<int> Candidates)>();
        foreach (var (at, lane, candidate) in all)
        {
            if (events.Count == 0 || events[^1].At != at || events[^1].Lane != lane) events.Add((at, lane, []));
            events[^1].Candidates.Add(candidate);
        }

        return events;
    }

    /// <summary>Forgets repairs that no longer matter at a place and drops states that cannot finish below the bound.</summary>
    private Dictionary<StateKey, State> Settle(Dictionary<StateKey, State> states, long at, long below)
    {
        var settled = new Dictionary<StateKey, State>(states.Count);
        foreach (var (key, state) in states)
        {
            var slots = (int[])key.Slots.Clone();
            for (var lane = 0; lane < slots.Length; lane++)
            {
                if (slots[lane] >= 0) continue;
                var repair = _lanes[lane].Candidates[~slots[lane]];
                if (repair.To < at && repair.To + _gap <= at) slots[lane] = repair.Last + 1;
            }

            if (LeastTotal(slots, state.Cost, at) < below) Offer(settled, new StateKey(slots), state);
        }

        return settled;
    }

    private void Start(Dictionary<StateKey, State> states, int lane, List<int> candidates, long below)
    {
        foreach (var (key, state) in states.ToArray())
        {
            foreach (var n in candidates)
            {
                var repair = _lanes[lane].Candidates[n];
                if (!Follows(key.Slots[lane], lane, repair)) continue;
                var cost = state.Cost + repair.Cost - Refund(key.Slots, lane, repair);
                var slots = (int[])key.Slots.Clone();
                slots[lane] = ~n;
                if (LeastTotal(slots, cost, repair.From) >= below) continue;
                _log.Add((state.Entry, lane, n));
                Offer(states, new StateKey(slots), new State(cost, _log.Count - 1));
            }
        }
    }

    /// <summary>A slot of 0 or more is the next demand of an idle lane; below 0 the last repair, complemented.</summary>
    private bool Follows(int slot, int lane, Candidate repair)
    {
        if (slot >= 0) return slot == repair.First;
        var last = _lanes[lane].Candidates[~slot];
        return last.Last + 1 == repair.First && last.To + _gap <= repair.From;
    }

    private long Refund(int[] slots, int lane, Candidate repair)
    {
        var refund = 0L;
        if (Beside(lane - 1, lane) && slots[lane - 1] < 0)
            refund += SharedEdges.Refund(_prices, _lanes[lane - 1].Candidates[~slots[lane - 1]], repair);
        if (Beside(lane, lane + 1) && slots[lane + 1] < 0)
            refund += SharedEdges.Refund(_prices, repair, _lanes[lane + 1].Candidates[~slots[lane + 1]]);
        return refund;
    }

    private bool Beside(int left, int right) => left >= 0 && right < _laneIndex.Length && _laneIndex[left] + 1 == _laneIndex[right];

    private long LeastTotal(int[] slots, long cost, long at)
    {
        for (var lane = 0; lane < slots.Length && cost < LaneChain.None; lane++)
        {
            var (next, earliest) = (slots[lane], at);
            if (slots[lane] < 0)
            {
                var repair = _lanes[lane].Candidates[~slots[lane]];
                cost -= _hope[lane][~slots[lane]];
                (next, earliest) = (repair.Last + 1, Math.Max(at, repair.To + _gap));
            }

            if (next < _lanes[lane].Demands) cost += _completions[lane][next].From(earliest);
        }

        return cost;
    }

    private static void Offer(Dictionary<StateKey, State> states, StateKey key, State state)
    {
        if (!states.TryGetValue(key, out var known) || state.Cost < known.Cost) states[key] = state;
    }

    private (long Cost, List<(int Lane, Candidate Repair)> Plan)? Finish(Dictionary<StateKey, State> states)
    {
        State? best = null;
        foreach (var state in states.Values)
        {
            if (best is null || state.Cost < best.Value.Cost) best = state;
        }

        if (best is null) return null;
        var plan = new List<(int, Candidate)>();
        for (var entry = best.Value.Entry; entry >= 0; entry = _log[entry].Parent)
        {
            plan.Add((_log[entry].Lane, _lanes[_log[entry].Lane].Candidates[_log[entry].Candidate]));
        }

        plan.Reverse();
        return (best.Value.Cost, plan);
    }

    private readonly record struct State(long Cost, int Entry);

    private readonly struct StateKey(int[] slots) : IEquatable<StateKey>
    {
        public int[] Slots { get; } = slots;

        public bool Equals(StateKey other) => Slots.AsSpan().SequenceEqual(other.Slots);

        public override bool Equals(object? obj) => obj is StateKey other && Equals(other);

        public override int GetHashCode()
        {
            var hash = 17;
            foreach (var slot in Slots) hash = hash * 1_000_003 + slot;
            return hash;
        }
    }
}
