namespace Slabwright.Core.Boundaries;

/// <summary>
/// Covers the demands of one lane in order by candidates with the gap kept between them: least cost from the front and from the back.
/// </summary>
internal sealed class LaneChain
{
    public const long None = long.MaxValue / 4;

    private readonly long _gap;
    private readonly int[][] _byFirst;
    private readonly int[][] _byLast;

    /// <param name="candidates">Candidates, their first and last demands numbered from 0.</param>
    /// <param name="demands">Number of demands.</param>
    /// <param name="gap">Least gap, ticks.</param>
    public LaneChain(Candidate[] candidates, int demands, long gap)
    {
        (Candidates, Demands, _gap) = (candidates, demands, gap);
        _byFirst = Sorted(candidates, demands, c => c.First, c => c.From);
        _byLast = Sorted(candidates, demands, c => c.Last, c => c.To);
    }

    public Candidate[] Candidates { get; }

    public int Demands { get; }

    /// <summary>Least cost of covering all demands up to and including each candidate.</summary>
    public long[] Forward(ReadOnlySpan<long> cost, int[]? parents = null)
    {
        var least = new long[Candidates.Length];
        Array.Fill(least, None);
        for (var demand = 0; demand < Demands; demand++)
        {
            var (next, best, from) = (0, demand == 0 ? 0 : None, -1);
            var before = demand == 0 ? [] : _byLast[demand - 1];
            foreach (var n in _byFirst[demand])
            {
                for (; next < before.Length && Candidates[before[next]].To + _gap <= Candidates[n].From; next++)
                {
                    if (least[before[next]] < best) (best, from) = (least[before[next]], before[next]);
                }

                least[n] = Math.Min(None, best + cost[n]);
                if (parents is not null) parents[n] = from;
            }
        }

        return least;
    }

    /// <summary>Least cost of each candidate and covering everything behind it.</summary>
    public long[] Backward(ReadOnlySpan<long> cost)
    {
        var least = new long[Candidates.Length];
        Array.Fill(least, None);
        for (var demand = Demands - 1; demand >= 0; demand--)
        {
            var behind = demand == Demands - 1 ? [] : _byFirst[demand + 1];
            var (next, best) = (behind.Length - 1, demand == Demands - 1 ? 0 : None);
            for (var position = _byLast[demand].Length - 1; position >= 0; position--)
            {
                var n = _byLast[demand][position];
                for (; next >= 0 && Candidates[behind[next]].From >= Candidates[n].To + _gap; next--)
                {
                    best = Math.Min(best, least[behind[next]]);
                }

                least[n] = Math.Min(None, best + cost[n]);
            }
        }

        return least;
    }

    /// <summary>The cheapest complete chain; earlier candidates win ties.</summary>
    public (long Cost, List<Candidate> Chain) Best(ReadOnlySpan<long> cost)
    {
        var parents = new int[Candidates.Length];
        var least = Forward(cost, parents);
        var (best, at) = (None, -1);
        foreach (var n in _byLast[Demands - 1])
        {
            if (least[n] < best) (best, at) = (least[n], n);
        }

        var chain = new List<Candidate>();
        for (var n = at; n >= 0; n = parents[n]) chain.Add(Candidates[n]);
        chain.Reverse();
        return (best, chain);
    }

    /// <summary>Least cost of all that is left, by next demand and earliest start.</summary>
    public Completion[] Completions(ReadOnlySpan<long> cost)
    {
        var least = Backward(cost);
        var completions = new Completion[Demands];
        for (var demand = 0; demand < Demands; demand++)
        {
            var order = _byFirst[demand];
            var starts = new long[order.Length];
            var costs = new long[order.Length];
            var best = None;
            for (var position = order.Length - 1; position >= 0; position--)
            {
                best = Math.Min(best, least[order[position]]);
                (starts[position], costs[position]) = (Candidates[order[position]].From, best);
            }

            completions[demand] = new Completion(starts, costs);
        }

        return completions;
    }

    private static int[][] Sorted(Candidate[] candidates, int demands, Func<Candidate, int> demand, Func<Candidate, long> at)
    {
        var lists = new List<int>[demands];
        for (var n = 0; n < demands; n++) lists[n] = [];
        for (var n = 0; n < candidates.Length; n++) lists[demand(candidates[n])].Add(n);
        foreach (var list in lists)
        {
            list.Sort((a, b) =>
            {
                var order = at(candidates[a]).CompareTo(at(candidates[b]));
                return order != 0 ? order : a.CompareTo(b);
            });
        }

        return Array.ConvertAll(lists, l => l.ToArray());
    }
}

/// <summary>Least cost still to come once the next demand is known, by the earliest place its repair may start.</summary>
internal readonly struct Completion(long[] starts, long[] costs)
{
    public long From(long earliest)
    {
        var n = Array.BinarySearch(starts, earliest);
        if (n < 0) n = ~n;
        while (n > 0 && starts[n - 1] >= earliest) n--;
        return n < costs.Length ? costs[n] : LaneChain.None;
    }
}
