namespace Slabwright.Core.Boundaries;

/// <summary>
/// All repairs of a demand group that can stand in an optimum. For each run of consecutive demands, ends are tried outward and for
/// each end starts outward; a repair is dropped when one nested in it holds the same demands and is cheaper by at least the most that
/// neighbours could make good, and a direction is left when every longer repair must be dropped.
/// </summary>
internal sealed class CandidateSearch
{
    private readonly LaneModel _model;
    private readonly DemandGroup _group;
    private readonly long _discount;
    private readonly long _faceGap;
    private readonly long _endLoss;
    private readonly long _jointLoss;
    private readonly List<long> _nested = [];
    private readonly List<Candidate> _found = [];
    private Candidate _scratch = new();

    public CandidateSearch(LaneModel model, DemandGroup group)
    {
        (_model, _group) = (model, group);
        var active = (group.LeftActive ? 1 : 0) + (group.RightActive ? 1 : 0);
        var prices = model.Problem.Prices;
        _discount = active * model.Bounds.RefundRate;
        _faceGap = active * model.Bounds.FaceGap;
        _endLoss = active * 2 * prices.UnmatchedEnd;
        _jointLoss = active * prices.SpannedJoint;
    }

    public List<Candidate> Find()
    {
        for (var first = _group.First; first <= _group.Last; first++)
        {
            for (var last = first; last <= _group.Last; last++) Search(first, last);
        }

        return _found;
    }

    /// <summary>Repairs that hold exactly the demands from first to last.</summary>
    public List<Candidate> FindRun(int first, int last)
    {
        Search(first, last);
        return _found;
    }

    private void Search(int first, int last)
    {
        var gap = _model.Problem.Limits.LeastGap;
        var from = first > 0 ? Math.Max(_group.ReachFrom, _model.Demands[first - 1].To + gap) : _group.ReachFrom;
        var to = last + 1 < _model.Demands.Count
            ? Math.Min(_group.ReachTo, _model.Demands[last + 1].From - gap)
            : _group.ReachTo;
        var slack = _endLoss;
        if (_jointLoss > 0) slack += _jointLoss * (_model.Rules.JointFrom(to + 1) - _model.Rules.JointFrom(from));
        var (starts, ends) = (_model.Starts[first], _model.Ends[last]);
        if (!starts.TryGet(0, out var nearest) || nearest.At < from) return;
        _nested.Clear();
        for (var e = 0; ends.TryGet(e, out var end) && end.At <= to; e++)
        {
            if (_nested.Count > 0 && Hopeless(_nested[0], end.At - nearest.At, slack)) return;
            SearchStarts(first, last, from, starts, end, slack);
        }
    }

    private void SearchStarts(int first, int last, long from, CutList starts, Cut end, long slack)
    {
        var best = long.MaxValue;
        for (var s = 0; starts.TryGet(s, out var start) && start.At >= from; s++)
        {
            if (_nested.Count == s) _nested.Add(long.MaxValue);
            best = Math.Min(best, _nested[s]);
            var length = end.At - start.At;
            if (Hopeless(best, length, slack)) return;
            if (length < _model.LeastLength(start, end)) continue;
            _model.Costs.Price(start, end, _scratch);
            var value = _scratch.Cost + (_faceGap - _discount) * length;
            if (best == long.MaxValue || best + _discount * length + slack > OptimisticCost(_scratch)) Keep(first, last);
            _nested[s] = Math.Min(_nested[s], value);
            best = Math.Min(best, value);
        }
    }

    /// <summary>True when a nested repair of that value beats every repair at least this long.</summary>
    private bool Hopeless(long nested, long length, long slack) => nested != long.MaxValue
        && nested + slack <= _model.Bounds.Floor(length, _discount, _model.Costs.LiftCuts(Math.Max(1, length)));

    private long OptimisticCost(Candidate candidate) => _discount > 0 ? candidate.Cost - candidate.Weights : candidate.Cost;

    private void Keep(int first, int last)
    {
        (_scratch.First, _scratch.Last) = (first, last);
        _found.Add(_scratch);
        _scratch = new Candidate();
    }
}
