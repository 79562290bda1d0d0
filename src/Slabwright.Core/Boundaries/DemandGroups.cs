namespace Slabwright.Core.Boundaries;

/// <summary>Consecutive demands of one lane no optimum joins with those outside, and how far their repairs can reach.</summary>
internal sealed class DemandGroup
{
    public required int Lane { get; init; }

    /// <summary>First and last demand, numbers in the lane.</summary>
    public required int First { get; init; }
    public required int Last { get; init; }

    public long ReachFrom { get; set; }
    public long ReachTo { get; set; }

    /// <summary>True where a repair of the neighbouring lane may touch.</summary>
    public bool LeftActive { get; set; }
    public bool RightActive { get; set; }

    public int Cluster { get; set; }
}

/// <summary>One lane with its rules, prices, bounds and the cuts around each demand it can meet.</summary>
internal sealed class LaneModel
{
    public LaneModel(BoundaryProblem problem, int index)
    {
        (Problem, Index, Lane) = (problem, index, problem.Lanes[index]);
        Rules = new CutRules(problem, Lane);
        Costs = new RepairCosts(problem, Rules);
        Bounds = new LaneBounds(problem, Lane);
        LongestLeast = Math.Max(problem.Limits.LeastLength, problem.Limits.LeastLengthUndowelled);
        foreach (var demand in Lane.Demands) Add(demand);
    }

    public BoundaryProblem Problem { get; }
    public int Index { get; }
    public ProblemLane Lane { get; }
    public CutRules Rules { get; }
    public RepairCosts Costs { get; }
    public LaneBounds Bounds { get; }
    public long LongestLeast { get; }

    public List<TickSpan> Demands { get; } = [];
    public List<CutList> Starts { get; } = [];
    public List<CutList> Ends { get; } = [];
    public List<UnmetDemand> Unmet { get; } = [];

    /// <summary>True where an end has no dowels but works: it relies on interlock or on the base.</summary>
    private bool Bare(Cut cut) => cut.Undowelled || (Lane.Undowelled && cut.Dowelled);

    public long LeastLength(Cut start, Cut end)
    {
        var least = Bare(start) && Bare(end) ? Problem.Limits.LeastLengthUndowelled : Problem.Limits.LeastLength;
        return Problem.Limits.OrHalfSlab ? Math.Min(least, HalfSlab(start.At, end.At)) : least;
    }

    /// <summary>The nearest end from which the part before it is long enough by itself, for the demand given.</summary>
    public bool TryOwnEnd(int demand, out Cut cut) =>
        Ends[demand].TryBeyond(Math.Max(Demands[demand].To, Demands[demand].From + LongestLeast), out cut);

    /// <summary>The nearest start from which the part behind it is long enough by itself, for the demand given.</summary>
    public bool TryOwnStart(int demand, out Cut cut) =>
        Starts[demand].TryBeyond(Math.Min(Demands[demand].From, Demands[demand].To - LongestLeast), out cut);

    /// <summary>Half the slab a repair lies within, rounded up; no limit for one that takes out a joint.</summary>
    private long HalfSlab(long from, long to)
    {
        var next = Rules.JointFrom(from + 1);
        if (next == 0 || next == Lane.Joints.Length || Lane.Joints[next].At < to) return long.MaxValue;
        return (Lane.Joints[next].At - Lane.Joints[next - 1].At + 1) / 2;
    }

    private void Add(TickSpan demand)
    {
        var starts = new CutList(Problem, Rules, demand.From, backward: true);
        var ends = new CutList(Problem, Rules, demand.To, backward: false);
        if (!Feasible(demand, starts, ends))
        {
            Unmet.Add(new UnmetDemand(Index, demand));
            return;
        }

        Demands.Add(demand);
        Starts.Add(starts);
        Ends.Add(ends);
    }

    private bool Feasible(TickSpan demand, CutList starts, CutList ends)
    {
        if (!starts.TryGet(0, out _) || !ends.TryGet(0, out _)) return false;
        if (ends.TryBeyond(Math.Max(demand.To, demand.From + LongestLeast), out _)) return true;
        if (starts.TryBeyond(Math.Min(demand.From, demand.To - LongestLeast), out _)) return true;
        for (var s = 0; starts.TryGet(s, out var start); s++)
        {
            for (var e = 0; ends.TryGet(e, out var end); e++)
            {
                if (end.At - start.At >= LeastLength(start, end)) return true;
            }
        }

        return false;
    }
}

/// <summary>Splits demands into groups and groups into clusters that can be solved alone.</summary>
internal static class DemandGroups
{
    public static List<DemandGroup> Of(LaneModel model)
    {
        var breaks = new List<int>();
        for (var n = 0; n + 1 < model.Demands.Count; n++) breaks.Add(n);
        while (breaks.RemoveAll(n => !Separate(model, breaks, n)) > 0)
        {
        }

        var groups = new List<DemandGroup>();
        var first = 0;
        foreach (var n in breaks.Append(model.Demands.Count - 1))
        {
            if (n < first) continue;
            groups.Add(Reaching(model, new DemandGroup { Lane = model.Index, First = first, Last = n }));
            first = n + 1;
        }

        return groups;
    }

    /// <summary>True where no repair of an optimum crosses the gap behind a demand.</summary>
    private static bool Separate(LaneModel model, List<int> breaks, int n)
    {
        var bounds = model.Bounds;
        if (!model.TryOwnEnd(n, out var end) || !model.TryOwnStart(n + 1, out var start)) return false;
        var removed = start.At - end.At;
        if (removed < model.Problem.Limits.LeastGap || bounds.LeastSlope <= 0) return false;
        var joints = model.Rules.JointFrom(start.At + 1) - model.Rules.JointFrom(end.At);
        var saved = bounds.MostSaved + bounds.JointLoss * joints;
        if (bounds.SpanRate > 0) saved += bounds.SpanRate * SpanAround(model, breaks, n);
        return removed >= saved / bounds.LeastSlope + 1;
    }

    private static long SpanAround(LaneModel model, List<int> breaks, int n)
    {
        var here = breaks.BinarySearch(n);
        var first = here > 0 ? breaks[here - 1] + 1 : 0;
        var last = here + 1 < breaks.Count ? breaks[here + 1] : model.Demands.Count - 1;
        var from = model.TryOwnStart(first, out var start) ? start.At : model.Lane.From;
        var to = model.TryOwnEnd(last, out var end) ? end.At : model.Lane.To;
        return to - from;
    }

    private static DemandGroup Reaching(LaneModel model, DemandGroup group)
    {
        var ownFrom = model.TryOwnStart(group.First, out var start);
        var ownTo = model.TryOwnEnd(group.Last, out var end);
        group.ReachFrom = model.Lane.From;
        group.ReachTo = model.Lane.To;
        var bounds = model.Bounds;
        if (bounds.LeastSlope <= 0) return group;
        var span = (ownTo ? end.At : model.Lane.To) - (ownFrom ? start.At : model.Lane.From);
        var saved = bounds.MostSaved + bounds.SpanRate * span;
        if (ownFrom) group.ReachFrom = Math.Max(model.Lane.From, start.At - Stretch(model, saved, start.At, -1));
        if (ownTo) group.ReachTo = Math.Min(model.Lane.To, end.At + Stretch(model, saved, end.At, 1));
        return group;
    }

    /// <summary>How far beyond its own cut a repair of an optimum may reach: the saving bound over the least cost of a tick.</summary>
    private static long Stretch(LaneModel model, long saved, long from, int direction)
    {
        var bounds = model.Bounds;
        var stretch = saved / bounds.LeastSlope + 1;
        while (bounds.JointLoss > 0 && stretch < model.Lane.To - model.Lane.From)
        {
            var beyond = from + direction * stretch;
            var joints = Math.Abs(model.Rules.JointFrom(beyond + 1) - model.Rules.JointFrom(from)) + 1;
            var next = (saved + bounds.JointLoss * joints) / bounds.LeastSlope + 1;
            if (next <= stretch) break;
            stretch = next;
        }

        return stretch;
    }
}
