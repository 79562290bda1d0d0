using Google.OrTools.Sat;
using Slabwright.Core.Boundaries;

namespace Slabwright.Tests.Boundaries;

/// <summary>
/// The boundary question handed to a general solver (CP-SAT): for each demand a possible repair that starts with it, its ends as
/// integer variables tied to a table of all legal repairs and their own cost, overlaps across lane lines as minima and maxima. Legality
/// and prices come from <see cref="Judge"/>.
/// </summary>
internal sealed class CpSatJudge
{
    private const long Nowhere = -1_000_000;

    private readonly Judge _judge;
    private readonly CpModel _model = new();
    private readonly List<Slot>[] _slots;
    private LinearExpr _objective = LinearExpr.Constant(0);
    private int _names;

    public CpSatJudge(Judge judge)
    {
        _judge = judge;
        _slots = [.. Enumerable.Range(0, judge.Problem.Lanes.Length).Select(BuildLane)];
        for (var lane = 1; lane < _slots.Length; lane++)
        {
            foreach (var left in _slots[lane - 1])
            {
                foreach (var right in _slots[lane]) AddPair(lane, left, right);
            }
        }

        _model.Minimize(_objective);
    }

    /// <summary>The proven least bill, or null when the solver did not prove it.</summary>
    public long? Solve(double seconds, int workers)
    {
        var solver = new CpSolver
        {
            StringParameters = $"num_workers:{workers},random_seed:1,max_time_in_seconds:{seconds},relative_gap_limit:0,absolute_gap_limit:0",
        };
        return solver.Solve(_model) == CpSolverStatus.Optimal ? (long)Math.Round(solver.ObjectiveValue) : null;
    }

    /// <summary>One repair that may start with a demand.</summary>
    private sealed record Slot(
        IntVar From, IntVar To, IntVar LeftTied, IntVar RightTied, IntVar[] Loose, Dictionary<long, IntVar> LeftUnmatched,
        Dictionary<long, IntVar> RightUnmatched);

    private List<Slot> BuildLane(int lane)
    {
        var problem = _judge.Problem;
        var l = problem.Lanes[lane];
        var slots = new List<Slot>();
        IntVar? cover = null;
        for (var n = 0; n < l.Demands.Length; n++)
        {
            var active = _model.NewBoolVar(Name());
            var slot = BuildSlot(lane, n, active);
            var next = _model.NewIntVar(l.Demands[n].To, l.To, Name());
            _model.Add(next == slot.To).OnlyEnforceIf(active);
            if (cover is null) _model.Add(active == 1);
            else
            {
                _model.Add(next == cover).OnlyEnforceIf(active.Not());
                _model.Add(slot.From >= cover + problem.Limits.LeastGap).OnlyEnforceIf(active);
            }

            cover = next;
            slots.Add(slot);
        }

        return slots;
    }

    private Slot BuildSlot(int lane, int demand, BoolVar active)
    {
        var l = _judge.Problem.Lanes[lane];
        var places = l.To + 1;
        IntVar Place() => _model.NewIntVar(Nowhere * 2, places, Name());
        IntVar Flag() => _model.NewIntVar(0, 1, Name());
        var cost = _model.NewIntVar(0, 1_000_000 * BoundaryProblem.MoneyPerUnit, Name());
        var left = NeighbourJoints(l.Left, isLeft: true).ToDictionary(j => j, _ => Flag());
        var right = NeighbourJoints(l.Right, isLeft: false).ToDictionary(j => j, _ => Flag());
        var slot = new Slot(Place(), Place(), Flag(), Flag(), [Flag(), Flag(), Flag(), Flag()], left, right);
        var columns = new List<IntVar> { active, slot.From, slot.To, cost, slot.LeftTied, slot.RightTied };
        columns.AddRange(slot.Loose);
        columns.AddRange(left.Values);
        columns.AddRange(right.Values);
        var table = _model.AddAllowedAssignments(columns);
        var away = lane % 2 == 0 ? Nowhere : 2 * Nowhere;
        table.AddTuple([0L, away, away, .. new long[columns.Count - 3]]);
        foreach (var row in Rows(lane, demand, [.. left.Keys], [.. right.Keys])) table.AddTuple(row);
        _objective += cost;
        return slot;
    }

    private IEnumerable<long> NeighbourJoints(ProblemSide side, bool isLeft) => side.Lane < 0
        ? []
        : _judge.Problem.Lanes[side.Lane].Joints.Select(j => isLeft ? j.AtRight : j.AtLeft).Distinct();

    private IEnumerable<long[]> Rows(int lane, int demand, long[] leftJoints, long[] rightJoints)
    {
        var demands = _judge.Problem.Lanes[lane].Demands;
        var ends = _judge.Places(lane, false);
        foreach (var from in _judge.Places(lane, true).Where(p => p <= demands[demand].From))
        {
            foreach (var to in ends.Where(p => p >= demands[demand].To && _judge.MayRepair(lane, from, p)))
            {
                if (demands.Any(d => d.From < to && d.To > to)) continue;
                var (left, right) = (_judge.Unmatched(lane, from, to, true), _judge.Unmatched(lane, from, to, false));
                yield return
                [
                    1, from, to, _judge.Bill([new ChosenRepair(lane, from, to)]),
                    Bit(_judge.IsTied(lane, from, to, true)), Bit(_judge.IsTied(lane, from, to, false)),
                    Bit(_judge.IsLoose(lane, from, true)), Bit(_judge.IsLoose(lane, to, true)),
                    Bit(_judge.IsLoose(lane, from, false)), Bit(_judge.IsLoose(lane, to, false)),
                    .. leftJoints.Select(j => Bit(left.Contains(j))), .. rightJoints.Select(j => Bit(right.Contains(j))),
                ];
            }
        }
    }

    /// <summary>What two repairs across a lane line save: edge cut and sealed once, no faces, joints gone, ends lined up.</summary>
    private void AddPair(int rightLane, Slot left, Slot right)
    {
        var prices = _judge.Problem.Prices;
        var most = Math.Max(_judge.Problem.Lanes[rightLane - 1].To, _judge.Problem.Lanes[rightLane].To) + 1;
        var (first, last) = (_model.NewIntVar(3 * Nowhere, most, Name()), _model.NewIntVar(3 * Nowhere, most, Name()));
        var overlap = _model.NewIntVar(0, most, Name());
        _model.AddMaxEquality(first, [left.From, right.From]);
        _model.AddMinEquality(last, [left.To, right.To]);
        _model.AddMaxEquality(overlap, [LinearExpr.Constant(0), last - first]);
        _objective -= overlap * (prices.CutRate + prices.SealRate + 2 * prices.IsolationRate);
        if (prices.TieFrom < long.MaxValue)
        {
            _objective -= Where(overlap, left.RightTied, most) * (prices.TieRate - prices.IsolationRate);
            _objective -= Where(overlap, right.LeftTied, most) * (prices.TieRate - prices.IsolationRate);
        }

        if (prices.SpannedJoint > 0)
        {
            foreach (var (joint, open) in left.RightUnmatched) _objective -= Inside(joint, open, right) * prices.SpannedJoint;
            foreach (var (joint, open) in right.LeftUnmatched) _objective -= Inside(joint, open, left) * prices.SpannedJoint;
        }

        if (prices.UnmatchedEnd == 0) return;
        _objective -= (LinesUp(left.From, left.Loose[2], right) + LinesUp(left.To, left.Loose[3], right)
            + LinesUp(right.From, right.Loose[0], left) + LinesUp(right.To, right.Loose[1], left)) * prices.UnmatchedEnd;
    }

    private IntVar Where(IntVar length, IntVar flag, long most)
    {
        var part = _model.NewIntVar(0, most, Name());
        _model.AddMultiplicationEquality(part, length, flag);
        return part;
    }

    private LinearExpr Inside(long joint, IntVar open, Slot slot)
    {
        var (starts, ends) = (Holds(slot.From, joint - 1, atMost: true), Holds(slot.To, joint + 1, atMost: false));
        return Both(open, Both(starts, ends));
    }

    private BoolVar Holds(IntVar place, long limit, bool atMost)
    {
        var holds = _model.NewBoolVar(Name());
        _model.Add(atMost ? place <= limit : place >= limit).OnlyEnforceIf(holds);
        _model.Add(atMost ? place >= limit + 1 : place <= limit - 1).OnlyEnforceIf(holds.Not());
        return holds;
    }

    private LinearExpr LinesUp(IntVar end, IntVar loose, Slot other) => Both(loose, Same(end, other.From)) + Both(loose, Same(end, other.To));

    private BoolVar Same(IntVar one, IntVar two)
    {
        var same = _model.NewBoolVar(Name());
        _model.Add(one == two).OnlyEnforceIf(same);
        _model.Add(one != two).OnlyEnforceIf(same.Not());
        return same;
    }

    private IntVar Both(IntVar one, IntVar two)
    {
        var both = _model.NewIntVar(0, 1, Name());
        _model.AddMinEquality(both, [one, two]);
        return both;
    }

    private static long Bit(bool value) => value ? 1 : 0;

    private string Name() => "v" + _names++;
}
