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

    private void Keep(long from, long to)
    {
        _kept.Clear();
        var panel = problem.Limits.LeastPanel;
        if (to - from < 2 * panel) return;
        var joints = rules.Lane.Joints;
        var last = from;
        for (var n = rules.JointFrom(from + panel); n < joints.Length && joints[n].At <= to - panel; n++)
        {
            var again = joints[n].Kind is JointKind.Dowelled or JointKind.Undowelled or JointKind.Expansion;
            if (!again || joints[n].At < last + panel) continue;
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
