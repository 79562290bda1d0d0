using Slabwright.Core.Boundaries;
using Slabwright.Core.Pavement;

namespace Slabwright.Tests.Boundaries;

/// <summary>
/// The rules and the bill once more, written from their wording alone and without a line of the solver: what may be cut, what a plan
/// costs. Slow and plain on purpose.
/// </summary>
internal sealed class Judge(BoundaryProblem problem)
{
    public BoundaryProblem Problem => problem;

    /// <summary>May a cut lie here? <paramref name="keepsBehind"/>: the old slab stays behind the cut, as at the start of a repair.</summary>
    public bool MayCut(int lane, long at, bool keepsBehind)
    {
        var l = problem.Lanes[lane];
        if (at < l.From || at > l.To || l.NoCut.Any(z => at > z.From && at < z.To)) return false;
        var standing = l.Joints.Where(j => j.AtLeft == j.AtRight && j.At == at && Standable(j.Kind)).ToArray();
        if (standing.Length == 0 && !OnMark(at)) return false;
        foreach (var joint in l.Joints.Except(standing))
        {
            var (near, far) = (Math.Min(joint.AtLeft, joint.AtRight), Math.Max(joint.AtLeft, joint.AtRight));
            if (near < at && at < far) return false;
            var distance = near >= at ? near - at : at - far;
            if (distance == 0) return false;
            var isBehind = far <= at;
            var onKeptSide = isBehind == keepsBehind;
            if (onKeptSide && distance < problem.Limits.LeastRemnant) return false;
            if (onKeptSide) continue;
            var pass = joint.Kind == JointKind.Dowelled ? problem.Limits.PassDowelled : problem.Limits.PassOther;
            if (distance < pass) return false;
        }

        return true;
    }

    public bool MayRepair(int lane, long from, long to)
    {
        if (from > to || !MayCut(lane, from, true) || !MayCut(lane, to, false)) return false;
        var bare = new[] { from, to }.All(x => StandsAt(lane, x) is { } kind
            ? kind == JointKind.Undowelled || (problem.Lanes[lane].Undowelled && kind is not (JointKind.PavementEnd or JointKind.Expansion))
            : problem.Lanes[lane].Undowelled);
        return to - from >= (bare ? problem.Limits.LeastLengthUndowelled : problem.Limits.LeastLength);
    }

    /// <summary>Every legal place for a first or last cut.</summary>
    public List<long> Places(int lane, bool keepsBehind)
    {
        var l = problem.Lanes[lane];
        var places = l.Joints.Select(j => j.At).ToHashSet();
        for (var mark = 0L; problem.MarkAt(mark) <= l.To; mark++) places.Add(problem.MarkAt(mark));
        return [.. places.Where(p => MayCut(lane, p, keepsBehind)).Order()];
    }

    public bool PlanIsLegal(IReadOnlyList<ChosenRepair> plan)
    {
        for (var lane = 0; lane < problem.Lanes.Length; lane++)
        {
            var repairs = plan.Where(r => r.Lane == lane).OrderBy(r => r.From).ToArray();
            if (repairs.Any(r => !MayRepair(lane, r.From, r.To))) return false;
            for (var n = 1; n < repairs.Length; n++)
            {
                if (repairs[n].From - repairs[n - 1].To < problem.Limits.LeastGap) return false;
            }

            if (problem.Lanes[lane].Demands.Any(d => !repairs.Any(r => r.From <= d.From && r.To >= d.To))) return false;
        }

        return true;
    }

    /// <summary>The whole bill of a plan, each lane line looked at stretch by stretch.</summary>
    public long Bill(IReadOnlyList<ChosenRepair> plan)
    {
        var total = plan.Sum(r => OwnWork(r.Lane, r.From, r.To));
        foreach (var repair in plan)
        {
            total += SideBill(plan, repair, problem.Lanes[repair.Lane].Left, isLeft: true);
            total += SideBill(plan, repair, problem.Lanes[repair.Lane].Right, isLeft: false);
        }

        return total;
    }

    /// <summary>Everything but the long sides.</summary>
    public long OwnWork(int lane, long from, long to)
    {
        var l = problem.Lanes[lane];
        var length = to - from;
        var rate = l.Classes.Last(c => c.FromLength <= length).Rate;
        var dowelledEnds = new[] { from, to }.Count(x =>
            StandsAt(lane, x) is not (JointKind.Undowelled or JointKind.PavementEnd or JointKind.Expansion));
        var tiesOne = dowelledEnds == 2 && length <= l.TieOneEndUpTo && l.Reinforced.Any(r => from >= r.From && to <= r.To);
        var ends = tiesOne ? l.DowelledEndCost + l.TiedEndCost : dowelledEnds * l.DowelledEndCost;
        var pieces = 1;
        while (pieces * problem.Prices.LiftPiece < length) pieces++;
        return l.FixedCost + rate * Math.Max(length, l.LeastPayLength) + l.ExtraRate * length + ends
            + NewJoints(lane, from, to).Count * l.InnerJointCost + (pieces - 1) * l.LiftCutCost;
    }

    public bool IsTied(int lane, long from, long to, bool isLeft) =>
        to - from >= problem.Prices.TieFrom && Unmatched(lane, from, to, isLeft).Count == 0;

    /// <summary>Neighbour joints inside the repair without a new joint beside them.</summary>
    public List<long> Unmatched(int lane, long from, long to, bool isLeft)
    {
        var side = isLeft ? problem.Lanes[lane].Left : problem.Lanes[lane].Right;
        if (side.Lane < 0) return [];
        var fresh = NewJoints(lane, from, to).Append(from).Append(to).ToArray();
        return [.. problem.Lanes[side.Lane].Joints.Where(j => j.Kind != JointKind.PavementEnd).Select(j => isLeft ? j.AtRight : j.AtLeft)
            .Where(at => at > from && at < to && !fresh.Any(f => Math.Abs(f - at) <= problem.Limits.MatchWithin))];
    }

    /// <summary>True where an end meets no joint of the lane beside it.</summary>
    public bool IsLoose(int lane, long at, bool isLeft)
    {
        var side = isLeft ? problem.Lanes[lane].Left : problem.Lanes[lane].Right;
        if (side.Lane < 0) return false;
        var beside = problem.Lanes[side.Lane];
        return at > beside.From && at < beside.To
            && !beside.Joints.Any(j => Math.Abs((isLeft ? j.AtRight : j.AtLeft) - at) <= problem.Limits.MatchWithin);
    }

    public JointKind? StandsAt(int lane, long at)
    {
        var joints = problem.Lanes[lane].Joints.Where(j => j.AtLeft == j.AtRight && j.At == at && Standable(j.Kind)).ToArray();
        return joints.Length == 0 ? null : joints[^1].Kind;
    }

    public List<long> NewJoints(int lane, long from, long to)
    {
        var panel = problem.Limits.LeastPanel;
        var kept = new List<long>();
        foreach (var joint in problem.Lanes[lane].Joints)
        {
            if (joint.Kind is JointKind.WorkingCrack or JointKind.EarlierRepairEdge or JointKind.PavementEnd) continue;
            if (joint.At - (kept.Count == 0 ? from : kept[^1]) >= panel && to - joint.At >= panel) kept.Add(joint.At);
        }

        var limits = problem.Lanes[lane].Unjointed.Where(u => u.From < to && u.To > from).Select(u => u.Longest).ToArray();
        if (limits.Length == 0) return kept;
        var all = new List<long>();
        var last = from;
        foreach (var joint in kept.Append(to))
        {
            all.AddRange(Even(last, joint, limits.Min()));
            if (joint != to) all.Add(joint);
            last = joint;
        }

        return all;
    }

    private List<long> Even(long from, long to, long longest)
    {
        for (var panels = 1L; ; panels++)
        {
            var marks = new List<long>();
            for (var n = 1L; n < panels; n++) marks.Add(problem.NearestMark(from + (to - from) * n / panels));
            var ends = marks.Prepend(from).Append(to).ToArray();
            if (ends.Zip(ends.Skip(1)).All(p => p.Second > p.First && p.Second - p.First <= longest) || panels > 1000) return marks;
        }
    }

    private long SideBill(IReadOnlyList<ChosenRepair> plan, ChosenRepair repair, ProblemSide side, bool isLeft)
    {
        if (!side.Concrete) return side.OpenRate * (repair.To - repair.From);
        var prices = problem.Prices;
        var face = IsTied(repair.Lane, repair.From, repair.To, isLeft) ? prices.TieRate : prices.IsolationRate;
        if (side.Lane < 0) return (prices.CutRate + prices.SealRate + face) * (repair.To - repair.From);
        var beside = problem.Lanes[side.Lane];
        var others = plan.Where(r => r.Lane == side.Lane).ToArray();
        var places = others.SelectMany(o => new[] { o.From, o.To }).Concat([beside.From, beside.To, repair.From, repair.To])
            .Where(p => p >= repair.From && p <= repair.To).Distinct().Order().ToArray();
        var bill = 0L;
        for (var n = 1; n < places.Length; n++)
        {
            var (from, to) = (places[n - 1], places[n]);
            if (from < beside.From || to > beside.To) bill += side.OpenRate * (to - from);
            else if (!others.Any(o => o.From <= from && to <= o.To)) bill += (prices.CutRate + prices.SealRate + face) * (to - from);
            else if (isLeft) bill += (prices.CutRate + prices.SealRate) * (to - from);
        }

        bill += prices.SpannedJoint * Unmatched(repair.Lane, repair.From, repair.To, isLeft).Count(at => !others.Any(o => o.From < at && at < o.To));
        foreach (var end in new[] { repair.From, repair.To })
        {
            if (IsLoose(repair.Lane, end, isLeft) && !others.Any(o => o.From == end || o.To == end)) bill += prices.UnmatchedEnd;
        }

        return bill;
    }

    private bool OnMark(long at) => problem.MarkAt(problem.MarkAtOrBefore(at)) == at;

    private bool Standable(JointKind kind) => kind is JointKind.PavementEnd or JointKind.EarlierRepairEdge or JointKind.Expansion
        || (problem.Limits.EndAtUndowelled && kind is JointKind.Undowelled or JointKind.WorkingCrack && problem.Limits.EndAtUndowelled);
}
