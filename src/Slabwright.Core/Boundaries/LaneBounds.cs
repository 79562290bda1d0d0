namespace Slabwright.Core.Boundaries;

/// <summary>
/// Bounds that hold for every repair of a lane: what joining two repairs can save at most, and what a tick of removal costs at least.
/// The proofs are in docs/decisions/0008-exact-boundaries.md.
/// </summary>
internal sealed class LaneBounds
{
    private readonly ProblemLane _lane;
    private readonly ProblemPrices _prices;
    private readonly long _sideLeast;
    private readonly long _tie;

    public LaneBounds(BoundaryProblem problem, ProblemLane lane)
    {
        (_lane, _prices) = (lane, problem.Prices);
        var tie = _prices.TieFrom == long.MaxValue ? _prices.IsolationRate : _prices.TieRate;
        _tie = tie;
        var tieFrom = _prices.TieFrom == long.MaxValue ? 0 : _prices.TieFrom;
        var laneSides = (lane.Left.Lane >= 0 ? 1 : 0) + (lane.Right.Lane >= 0 ? 1 : 0);
        var concreteSides = (lane.Left.Concrete ? 1 : 0) + (lane.Right.Concrete ? 1 : 0);
        FaceGap = Math.Abs(_prices.IsolationRate - tie);
        RefundRate = _prices.CutRate + _prices.SealRate + 2 * Math.Max(_prices.IsolationRate, tie);
        _sideLeast = SideLeast(lane.Left, tie) + SideLeast(lane.Right, tie);
        SpanRate = concreteSides * FaceGap;
        JointLoss = laneSides * _prices.SpannedJoint;
        LeastSlope = lane.Classes.Min(c => c.Rate) + lane.ExtraRate + _sideLeast - laneSides * RefundRate;
        MostSaved = lane.FixedCost + 4 * Math.Max(lane.DowelledEndCost, lane.TieOneEndUpTo > 0 ? lane.TiedEndCost : 0) + 2 * ClassSpread() + 16 * lane.InnerJointCost
            + concreteSides * FaceGap * 4 * tieFrom + laneSides * (16 * _prices.SpannedJoint + 8 * _prices.UnmatchedEnd);
    }

    /// <summary>Difference between tied and isolated face, a tick.</summary>
    public long FaceGap { get; }

    /// <summary>Most two neighbouring repairs save a tick of overlap.</summary>
    public long RefundRate { get; }

    /// <summary>Most a merge changes the face cost a tick of what is kept.</summary>
    public long SpanRate { get; }

    /// <summary>Most a merge saves for each joint of this lane it takes out.</summary>
    public long JointLoss { get; }

    /// <summary>Least cost of a tick of removal, refunds taken off; a lane where it is not positive is solved in one piece.</summary>
    public long LeastSlope { get; }

    /// <summary>Most a merge saves apart from the terms above.</summary>
    public long MostSaved { get; }

    /// <summary>
    /// Least cost of any repair at least this long, less <paramref name="discount"/> a tick of its length; planning weights and end
    /// costs left out.
    /// </summary>
    public long Floor(long length, long discount, long liftCuts)
    {
        var rest = _lane.ExtraRate + _sideLeast - discount;
        var least = long.MaxValue;
        for (var n = 0; n < _lane.Classes.Length; n++)
        {
            var size = _lane.Classes[n];
            if (n + 1 < _lane.Classes.Length && _lane.Classes[n + 1].FromLength <= length) continue;
            if (size.Rate + rest <= 0) return long.MinValue / 4;
            var at = Math.Max(length, size.FromLength);
            least = Math.Min(least, size.Rate * Math.Max(at, _lane.LeastPayLength) + rest * at);
        }

        return least + _lane.FixedCost + liftCuts * _lane.LiftCutCost;
    }

    /// <summary>
    /// What a tick costs along the sides beyond what <see cref="Floor"/> counts, for repairs within a reach: along a lane that runs
    /// beside all of it the side is concrete throughout, along one that runs beside none of it open throughout.
    /// </summary>
    /// <param name="problem">The problem.</param> <param name="reach">The reach.</param>
    public long SidesBeside(BoundaryProblem problem, TickSpan reach)
    {
        return Missing(_lane.Left) + Missing(_lane.Right);

        long Missing(ProblemSide side)
        {
            if (!side.Concrete || side.Lane < 0) return 0;
            var neighbour = problem.Lanes[side.Lane];
            if (neighbour.From <= reach.From && neighbour.To >= reach.To) return Math.Max(0, ConcreteLeast(_tie) - side.OpenRate);
            return neighbour.To <= reach.From || neighbour.From >= reach.To ? Math.Max(0, side.OpenRate - ConcreteLeast(_tie)) : 0;
        }
    }


    private long SideLeast(ProblemSide side, long tie)
    {
        var concrete = ConcreteLeast(tie);
        if (!side.Concrete) return side.OpenRate;
        return side.Lane < 0 ? concrete : Math.Min(concrete, side.OpenRate);
    }

    private long ConcreteLeast(long tie) => _prices.CutRate + _prices.SealRate + Math.Min(_prices.IsolationRate, tie);

    /// <summary>Most one piece loses by falling out of the price class of the whole, least pay included.</summary>
    private long ClassSpread()
    {
        var most = 0L;
        for (var high = 1; high < _lane.Classes.Length; high++)
        {
            for (var low = 0; low < high; low++)
            {
                most = Math.Max(most, (_lane.Classes[low].Rate - _lane.Classes[high].Rate) * _lane.Classes[high].FromLength);
            }
        }

        return most + _lane.Classes.Max(c => c.Rate) * _lane.LeastPayLength;
    }
}
