using System.Runtime.CompilerServices;

namespace Slabwright.Core.Boundaries;

/// <summary>
/// All repairs of a demand group that can stand in an optimum. For each run of consecutive demands, ends are tried outward and for
/// each end starts outward; a repair is dropped when one nested in it holds the same demands and is cheaper by at least the most that
/// neighbours could make good, and a direction is left when every longer repair must be dropped. A whole run is left when two repairs
/// inside its shortest repair hold the same demands and beat every repair of the run in the same way.
/// </summary>
internal sealed class CandidateSearch
{
    private readonly LaneModel _model;
    private readonly DemandGroup _group;
    private readonly long _discount;
    private readonly long _rate;
    private readonly long _beside;
    private readonly long _faceGap;
    private readonly long _slack;
    private readonly long _moreSlack;
    private readonly List<long> _nested = [];
    private readonly List<Candidate> _found = [];
    private readonly Piece[,] _heads;
    private readonly Piece[,] _tails;
    private long _sureCost;
    private long _sureWeights;
    private Candidate _scratch = new();

    public CandidateSearch(LaneModel model, DemandGroup group)
    {
        (_model, _group) = (model, group);
        var active = (group.LeftActive ? 1 : 0) + (group.RightActive ? 1 : 0);
        var prices = model.Problem.Prices;
        var (jointRate, jointSlack) = JointLoss(active * prices.SpannedJoint);
        _discount = active * model.Bounds.RefundRate;
        _rate = _discount + jointRate;
        _beside = model.Bounds.SidesBeside(model.Problem, new TickSpan(group.ReachFrom, group.ReachTo));
        _faceGap = active * model.Bounds.FaceGap;
        _slack = active * 2 * prices.UnmatchedEnd + jointSlack;
        _moreSlack = _slack + jointSlack;
        var count = group.Last - group.First + 1;
        (_heads, _tails) = (new Piece[count, count], new Piece[count, count]);
    }

    public List<Candidate> Find()
    {
        for (var more = 0; more <= _group.Last - _group.First; more++)
        {
            for (var first = _group.First; first + more <= _group.Last; first++) Search(first, first + more, whole: true);
        }

        return _found;
    }

    /// <summary>Repairs that hold exactly the demands from first to last.</summary>
    public List<Candidate> FindRun(int first, int last)
    {
        Search(first, last, whole: false);
        return _found;
    }

    /// <summary>
    /// Most that joints taken out by a longer repair alone can win back from neighbours: a rate for each tick more, and a rest for the
    /// joints at its two ends.
    /// </summary>
    private (long Rate, long Slack) JointLoss(long each)
    {
        if (each == 0) return (0, 0);
        var joints = _model.Lane.Joints;
        var (first, last) = (_model.Rules.JointFrom(_group.ReachFrom), _model.Rules.JointFrom(_group.ReachTo + 1));
        var spacing = long.MaxValue;
        for (var n = first + 1; n < last; n++) spacing = Math.Min(spacing, joints[n].At - joints[n - 1].At);
        return spacing > 0 ? (each / spacing + 1, 2 * each) : (0, each * (last - first));
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Search(int first, int last, bool whole)
    {
        var gap = _model.Problem.Limits.LeastGap;
        var from = first > 0 ? Math.Max(_group.ReachFrom, _model.Demands[first - 1].To + gap) : _group.ReachFrom;
        var to = last + 1 < _model.Demands.Count
            ? Math.Min(_group.ReachTo, _model.Demands[last + 1].From - gap)
            : _group.ReachTo;
        var (starts, ends) = (_model.Starts[first], _model.Ends[last]);
        if (!starts.TryGet(0, out var nearest) || nearest.At < from) return;
        if (!ends.TryGet(0, out var nearestEnd) || nearestEnd.At > to) return;
        (_sureCost, _sureWeights) = _model.Costs.Sure(from, to, nearest, nearestEnd);
        if (whole && BetterInTwo(first, last, nearestEnd.At - nearest.At)) return;
        _nested.Clear();
        for (var e = 0; ends.TryGet(e, out var end) && end.At <= to; e++)
        {
            if (_nested.Count > 0 && Hopeless(_nested[0], end.At - nearest.At)) return;
            SearchStarts(first, last, from, starts, end, e == 0);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void SearchStarts(int first, int last, long from, CutList starts, Cut end, bool nearestEnd)
    {
        var best = long.MaxValue;
        for (var s = 0; starts.TryGet(s, out var start) && start.At >= from; s++)
        {
            if (_nested.Count == s) _nested.Add(long.MaxValue);
            best = Math.Min(best, _nested[s]);
            var length = end.At - start.At;
            if (Hopeless(best, length)) return;
            if (length < _model.LeastLength(start, end)) continue;

            // Neither kept nor better than a nested one, whatever neighbours' joints ask: not worth pricing.
            if (best != long.MaxValue && best + _rate * length + _slack <= _model.Costs.Least(start, end) + _sureWeights) continue;
            _model.Costs.Price(start, end, _scratch);
            var value = _scratch.Cost + (_faceGap - _rate) * length;
            if (s == 0) Remember(_heads, first, last, value, end.At);
            if (nearestEnd) Remember(_tails, first, last, value, start.At);
            if (best == long.MaxValue || best + _rate * length + _slack > OptimisticCost(_scratch)) Keep(first, last);
            _nested[s] = Math.Min(_nested[s], value);
            best = Math.Min(best, value);
        }
    }

    /// <summary>
    /// True where a repair from the run's nearest start and one to its nearest end, the gap kept between them, hold all its demands and
    /// together beat every repair of the run: both lie inside each of those.
    /// </summary>
    private bool BetterInTwo(int first, int last, long length)
    {
        var floor = _sureCost + Floor(length);
        for (var n = first; n < last; n++)
        {
            var (head, tail) = (_heads[first - _group.First, n - _group.First], _tails[n + 1 - _group.First, last - _group.First]);
            if (!head.Known || !tail.Known || tail.At - head.At < _model.Problem.Limits.LeastGap) continue;
            if (head.Value + tail.Value + _moreSlack <= floor) return true;
        }

        return false;
    }

    private void Remember(Piece[,] pieces, int first, int last, long value, long at)
    {
        ref var piece = ref pieces[first - _group.First, last - _group.First];
        if (!piece.Known || value < piece.Value) piece = new Piece(true, value, at);
    }

    /// <summary>True when a nested repair of that value beats every repair at least this long.</summary>
    private bool Hopeless(long nested, long length) => nested != long.MaxValue
        && nested + _slack <= _sureCost + _sureWeights + Floor(length);

    /// <summary>Least cost by length of every repair at least this long, less what neighbours may refund a tick.</summary>
    private long Floor(long length) => _model.Bounds.Floor(length, _rate - _beside, _model.Costs.LiftCuts(Math.Max(1, length)));

    private long OptimisticCost(Candidate candidate) => _discount > 0 ? candidate.Cost - candidate.Weights + _sureWeights : candidate.Cost;

    private void Keep(int first, int last)
    {
        (_scratch.First, _scratch.Last) = (first, last);
        _found.Add(_scratch);
        _scratch = new Candidate();
    }

    /// <summary>The best repair of a run with one end at its nearest cut: its value and where the other end lies.</summary>
    private readonly record struct Piece(bool Known, long Value, long At);
}
