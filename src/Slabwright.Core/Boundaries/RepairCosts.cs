using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Boundaries;

/// <summary>A repair that could be chosen, with its cost standing alone and what neighbours may refund.</summary>
internal sealed class Candidate
{
    public long From { get; set; }
    public long To { get; set; }

    /// <summary>First and last demand it holds, numbers in the lane's group.</summary>
    public int First { get; set; }
    public int Last { get; set; }

    /// <summary>Cost with nothing removed beside it, planning weights included.</summary>
    public long Cost { get; set; }

    /// <summary>Face cost a tick towards the neighbouring lane on each side; 0 where there is none.</summary>
    public long LeftFace { get; set; }
    public long RightFace { get; set; }

    /// <summary>Neighbour joints spanned and not matched, ticks.</summary>
    public long[] LeftSpanned { get; set; } = [];
    public long[] RightSpanned { get; set; } = [];

    /// <summary>Ends that meet no joint of the neighbour.</summary>
    public bool LeftStartLoose { get; set; }
    public bool LeftEndLoose { get; set; }
    public bool RightStartLoose { get; set; }
    public bool RightEndLoose { get; set; }

    /// <summary>All planning weights inside <see cref="Cost"/>.</summary>
    public long Weights { get; set; }

    public long Length => To - From;
}

/// <summary>Cost of one repair of one lane, exactly, in money units.</summary>
internal sealed class RepairCosts
{
    private readonly BoundaryProblem _problem;
    private readonly ProblemLane _lane;
    private readonly long _leftBand;
    private readonly long _rightBand;
    private readonly bool _weighed;
    private readonly NewJoints _newJoints;
    private readonly List<long> _inner = [];
    private readonly List<long> _spanned = [];
    private readonly Candidate _shortest = new();

    public RepairCosts(BoundaryProblem problem, CutRules rules)
    {
        (_problem, _lane) = (problem, rules.Lane);
        (_leftBand, _rightBand) = (WidestBand(problem, _lane.Left), WidestBand(problem, _lane.Right));
        _newJoints = new NewJoints(problem, rules);
        _weighed = problem.Prices.SpannedJoint != 0 || problem.Prices.UnmatchedEnd != 0;
    }

    /// <summary>Repairs priced so far.</summary>
    public long Work { get; private set; }

    /// <summary>Prices a repair into a candidate, whatever the candidate held before.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Price(Cut start, Cut end, Candidate candidate)
    {
        Work++;
        (candidate.From, candidate.To, candidate.Weights) = (start.At, end.At, 0);
        var length = candidate.Length;
        _newJoints.Find(start.At, end.At, _inner);
        candidate.Cost = _lane.FixedCost + AreaCost(length) + EndCosts(start, end)
            + _inner.Count * _lane.InnerJointCost + LiftCuts(length) * _lane.LiftCutCost;
        AddLeft(candidate);
        AddRight(candidate);
        candidate.Cost += candidate.Weights;
    }

    /// <summary>
    /// Least cost of a repair, quickly: inner joints counted and not placed, neighbours' joints left out. Never more than
    /// <see cref="Price"/> gives without planning weights.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public long Least(Cut start, Cut end)
    {
        var length = end.At - start.At;
        return _lane.FixedCost + AreaCost(length) + EndCosts(start, end)
            + _newJoints.LeastCount(start.At, end.At) * _lane.InnerJointCost + LiftCuts(length) * _lane.LiftCutCost
            + LeastSide(start.At, end.At, _lane.Left) + LeastSide(start.At, end.At, _lane.Right);
    }

    private long LeastSide(long from, long to, ProblemSide side)
    {
        if (!side.Concrete) return side.OpenRate * (to - from);
        var prices = _problem.Prices;
        var facing = side.Lane >= 0 ? Facing(from, to, _problem.Lanes[side.Lane]) : to - from;
        var face = to - from >= prices.TieFrom ? Math.Min(prices.TieRate, prices.IsolationRate) : prices.IsolationRate;
        return (prices.CutRate + prices.SealRate + face) * facing + side.OpenRate * (to - from - facing);
    }

    private static long Facing(long from, long to, ProblemLane neighbour) => Math.Max(0, Math.Min(to, neighbour.To) - Math.Max(from, neighbour.From));

    private long EndCosts(Cut start, Cut end)
    {
        var dowelled = (start.Dowelled ? 1 : 0) + (end.Dowelled ? 1 : 0);
        var tied = dowelled == 2 && _lane.TieOneEndUpTo > 0 && _lane.TiesOneEnd(start.At, end.At);
        return dowelled * _lane.DowelledEndCost + (tied ? _lane.TiedEndCost - _lane.DowelledEndCost : 0);
    }

    public long LiftCuts(long length) => (length + _problem.Prices.LiftPiece - 1) / _problem.Prices.LiftPiece - 1;

    /// <summary>
    /// What every repair that holds the shortest one and stays within a reach pays besides its length: ends, dowelled where no joint in
    /// reach lets a cut stand without; inner joints the shortest repair makes sure of; and the planning weights of neighbour joints it
    /// spans where inner joints stand the same in every longer repair, so that a neighbour lifts them for all alike.
    /// </summary>
    /// <param name="from">Reach.</param> <param name="to">Reach.</param> <param name="start">First cut.</param> <param name="end">Last cut.</param>
    public (long Cost, long Weights) Sure(long from, long to, Cut start, Cut end)
    {
        var ends = _lane.DowelledEndCost
            + (_lane.TieOneEndUpTo > 0 ? Math.Min(_lane.TiedEndCost, _lane.DowelledEndCost) : _lane.DowelledEndCost);
        for (var n = FirstJoint(_lane.Joints, from); n < _lane.Joints.Length && _lane.Joints[n].At <= to; n++)
        {
            if (!Cut.CarriesDowels(_lane.Joints[n].Kind)) ends = 0;
        }

        var (count, same) = _newJoints.LeastWithin(start.At, end.At);
        if (!_weighed || same.Length < 0) return (ends + count * _lane.InnerJointCost, 0);
        Price(start, end, _shortest);
        var spanned = _shortest.LeftSpanned.Concat(_shortest.RightSpanned).Count(at => same.From <= at && at <= same.To);
        return (ends + count * _lane.InnerJointCost, spanned * _problem.Prices.SpannedJoint);
    }

    /// <summary>Area cost: the rate of the repair's own class over all of its length.</summary>
    public long AreaCost(long length)
    {
        var rate = _lane.Classes[0].Rate;
        foreach (var size in _lane.Classes)
        {
            if (length >= size.FromLength) rate = size.Rate;
        }

        return rate * Math.Max(length, _lane.LeastPayLength) + _lane.ExtraRate * length;
    }

    private void AddLeft(Candidate candidate)
    {
        var (cost, face, weights, startLoose, endLoose) = SideCost(candidate, _lane.Left, left: true);
        candidate.Cost += cost;
        candidate.Weights += weights;
        (candidate.LeftFace, candidate.LeftStartLoose, candidate.LeftEndLoose) = (face, startLoose, endLoose);
        candidate.LeftSpanned = _spanned.Count > 0 ? [.. _spanned] : [];
    }

    private void AddRight(Candidate candidate)
    {
        var (cost, face, weights, startLoose, endLoose) = SideCost(candidate, _lane.Right, left: false);
        candidate.Cost += cost;
        candidate.Weights += weights;
        (candidate.RightFace, candidate.RightStartLoose, candidate.RightEndLoose) = (face, startLoose, endLoose);
        candidate.RightSpanned = _spanned.Count > 0 ? [.. _spanned] : [];
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private (long Cost, long Face, long Weights, bool StartLoose, bool EndLoose) SideCost(Candidate repair, ProblemSide side, bool left)
    {
        _spanned.Clear();
        if (!side.Concrete) return (side.OpenRate * repair.Length, 0, 0, false, false);
        var prices = _problem.Prices;
        var facing = repair.Length;
        var (startLoose, endLoose) = (false, false);
        if (side.Lane >= 0)
        {
            var neighbour = _problem.Lanes[side.Lane];
            facing = Facing(repair.From, repair.To, neighbour);
            if (_weighed || repair.Length >= prices.TieFrom) (startLoose, endLoose) = ScanNeighbour(repair, neighbour, left);
        }

        var tied = repair.Length >= prices.TieFrom && _spanned.Count == 0;
        var face = tied ? prices.TieRate : prices.IsolationRate;
        var cost = (prices.CutRate + prices.SealRate + face) * facing + side.OpenRate * (repair.Length - facing);
        var weights = prices.SpannedJoint * _spanned.Count + prices.UnmatchedEnd * ((startLoose ? 1 : 0) + (endLoose ? 1 : 0));
        return (cost, side.Lane >= 0 ? face : 0, weights, startLoose, endLoose);
    }

    /// <summary>Finds the neighbour's joints the repair spans unmatched and whether its ends meet one.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private (bool StartLoose, bool EndLoose) ScanNeighbour(Candidate repair, ProblemLane neighbour, bool left)
    {
        var within = _problem.Limits.MatchWithin;
        var (startMet, endMet) = (false, false);
        var joints = neighbour.Joints;
        var reach = within + (left ? _leftBand : _rightBand);
        for (var n = FirstJoint(joints, repair.From - reach); n < joints.Length && joints[n].At <= repair.To + reach; n++)
        {
            var at = left ? joints[n].AtRight : joints[n].AtLeft;
            var atStart = Math.Abs(at - repair.From) <= within;
            var atEnd = Math.Abs(at - repair.To) <= within;
            startMet |= atStart;
            endMet |= atEnd;
            if (atStart || atEnd || at <= repair.From || at >= repair.To || joints[n].Kind == JointKind.PavementEnd) continue;
            if (!MatchedInside(at, within)) _spanned.Add(at);
        }

        return (!startMet && Beside(repair.From, neighbour), !endMet && Beside(repair.To, neighbour));
    }

    private static long WidestBand(BoundaryProblem problem, ProblemSide side)
    {
        if (side.Lane < 0) return 0;
        var widest = 0L;
        foreach (var joint in problem.Lanes[side.Lane].Joints) widest = Math.Max(widest, joint.Last - joint.First);
        return widest;
    }

    private static bool Beside(long at, ProblemLane neighbour) => at > neighbour.From && at < neighbour.To;

    private bool MatchedInside(long at, long within)
    {
        foreach (var inner in _inner)
        {
            if (Math.Abs(inner - at) <= within) return true;
        }

        return false;
    }

    private static int FirstJoint(ImmutableArray<ProblemJoint> joints, long at)
    {
        var (low, high) = (0, joints.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (joints[middle].At < at) low = middle + 1;
            else high = middle;
        }

        return low;
    }
}
