namespace Slabwright.Core.Boundaries;

/// <summary>Legal cuts from a place outward, found as they are asked for, nearest first.</summary>
internal sealed class CutList
{
    private readonly BoundaryProblem _problem;
    private readonly CutRules _rules;
    private readonly bool _backward;
    private readonly List<Cut> _cuts = [];
    private long _mark;
    private int _joint;
    private bool _done;

    /// <param name="problem">The problem.</param>
    /// <param name="rules">Rules of the lane.</param>
    /// <param name="from">Place to start from, ticks.</param>
    /// <param name="backward">True for first cuts of a repair, searched against the direction of travel.</param>
    public CutList(BoundaryProblem problem, CutRules rules, long from, bool backward)
    {
        (_problem, _rules, _backward) = (problem, rules, backward);
        _mark = problem.MarkAtOrBefore(from);
        if (!backward && problem.MarkAt(_mark) < from) _mark++;
        _joint = backward ? rules.JointFrom(from + 1) - 1 : rules.JointFrom(from);
    }

    /// <summary>The cut with a number, 0 for the nearest.</summary>
    public bool TryGet(int number, out Cut cut)
    {
        while (_cuts.Count <= number && !_done) Advance();
        cut = number < _cuts.Count ? _cuts[number] : default;
        return number < _cuts.Count;
    }

    /// <summary>The nearest cut at or beyond a place, if the lane has one.</summary>
    public bool TryBeyond(long place, out Cut cut)
    {
        for (var n = 0; TryGet(n, out cut); n++)
        {
            if (_backward ? cut.At <= place : cut.At >= place) return true;
        }

        return false;
    }

    private void Advance()
    {
        var lane = _rules.Lane;
        var none = _backward ? long.MinValue : long.MaxValue;
        var atMark = _mark < 0 ? none : _problem.MarkAt(_mark);
        var atJoint = _joint >= 0 && _joint < lane.Joints.Length ? lane.Joints[_joint].At : none;
        var at = _backward ? Math.Max(atMark, atJoint) : Math.Min(atMark, atJoint);
        if (at < lane.From || at > lane.To)
        {
            _done = true;
            return;
        }

        var step = _backward ? -1 : 1;
        if (atMark == at) _mark += step;
        while (_joint >= 0 && _joint < lane.Joints.Length && lane.Joints[_joint].At == at) _joint += step;
        if (_rules.TryCut(at, _backward, atMark == at, out var cut)) _cuts.Add(cut);
    }
}
