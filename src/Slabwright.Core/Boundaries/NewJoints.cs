using System.Runtime.CompilerServices;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Boundaries;

/// <summary>
/// New transverse joints inside a repair, a function of its two ends alone. Old joints at least the least panel from both ends and
/// from the joint before are made again where they were; a panel longer than the longest unjointed length is then split into the
/// fewest nearly equal panels, joints on the marks, none longer than the limit.
/// </summary>
internal sealed class NewJoints(BoundaryProblem problem, CutRules rules)
{
    private readonly List<long> _kept = [];
    private readonly List<long> _inside = [];

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Find(long from, long to, List<long> into)
    {
        into.Clear();
        Keep(from, to);
        var longest = Longest(from, to);
        var last = from;
        foreach (var joint in _kept)
        {
            Split(last, joint, longest, into);
            into.Add(joint);
            last = joint;
        }

        Split(last, to, longest, into);
    }

    /// <summary>Number of new joints at the least: the kept ones, and the fewest that split the panels between them.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public long LeastCount(long from, long to)
    {
        Keep(from, to);
        var longest = Longest(from, to);
        long count = _kept.Count;
        if (to - from <= longest) return count;
        var last = from;
        foreach (var joint in _kept)
        {
            count += (joint - last - 1) / longest;
            last = joint;
        }

        return count + (to - last - 1) / longest;
    }

    /// <summary>
    /// Joints that every repair holding a stretch has at least, and the part of it in which they stand at the same places. Kept joints
    /// are the most that fit a spacing, so a longer repair keeps no fewer; where all joints around stand apart by the least panel it
    /// keeps the very same ones, with the same splits between them.
    /// </summary>
    public (int Count, TickSpan Same) LeastWithin(long from, long to)
    {
        Keep(from, to);
        if (_kept.Count < 2 || !AllKept(from, to)) return (_kept.Count, new TickSpan(0, -1));
        _inside.Clear();
        var longest = Longest(from, to);
        for (var n = 1; n < _kept.Count; n++) Split(_kept[n - 1], _kept[n], longest, _inside);
        return (_kept.Count + _inside.Count, new TickSpan(_kept[0], _kept[^1]));
    }

    /// <summary>True when no joint made again, between the kept ones or next to them, stands nearer than the least panel.</summary>
    private bool AllKept(long from, long to)
    {
        var panel = problem.Limits.LeastPanel;
        var joints = rules.Lane.Joints;
        var last = long.MinValue / 2;
        for (var n = rules.JointFrom(from - panel); n < joints.Length && joints[n].At <= to; n++)
        {
            if (!MadeAgain(joints[n].Kind)) continue;
            if (joints[n].At < last + panel) return false;
            last = joints[n].At;
        }

        return true;
    }

    private static bool MadeAgain(JointKind kind) => kind is JointKind.Dowelled or JointKind.Undowelled or JointKind.Expansion;

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Keep(long from, long to)
    {
        _kept.Clear();
        var panel = problem.Limits.LeastPanel;
        if (to - from < 2 * panel) return;
        var joints = rules.Lane.Joints;
        var last = from;
        for (var n = rules.JointFrom(from + panel); n < joints.Length && joints[n].At <= to - panel; n++)
        {
            if (!MadeAgain(joints[n].Kind) || joints[n].At < last + panel) continue;
            last = joints[n].At;
            _kept.Add(last);
        }
    }

    private long Longest(long from, long to)
    {
        var longest = long.MaxValue;
        foreach (var limit in rules.Lane.Unjointed)
        {
            if (limit.From < to && limit.To > from) longest = Math.Min(longest, limit.Longest);
        }

        return longest;
    }

    private void Split(long from, long to, long longest, List<long> into)
    {
        if (to - from <= longest) return;
        var start = into.Count;
        for (var panels = (to - from + longest - 1) / longest; panels < to - from; panels++)
        {
            if (TrySplit(from, to, longest, panels, into)) return;
            into.RemoveRange(start, into.Count - start);
        }
    }

    private bool TrySplit(long from, long to, long longest, long panels, List<long> into)
    {
        var last = from;
        for (var n = 1L; n < panels; n++)
        {
            var at = problem.NearestMark(from + (to - from) * n / panels);
            if (at <= last || at >= to || at - last > longest) return false;
            into.Add(at);
            last = at;
        }

        return to - last <= longest;
    }
}
