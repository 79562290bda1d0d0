using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Treatments;

namespace Slabwright.Core.Boundaries;

/// <summary>Draws the chosen repairs in full: joints, faces, kind, group, identifier and reasons.</summary>
internal sealed class RepairBuilder
{
    private readonly Road _road;
    private readonly BoundaryProblem _problem;
    private readonly RuleSet _rules;
    private readonly BoundaryOptions _options;
    private readonly Dictionary<int, RemovalDemand[]> _demands;
    private readonly CutRules[] _cuts;
    private readonly NewJoints[] _joints;
    private readonly RepairReasons _reasons;

    public RepairBuilder(Road road, BoundaryProblem problem, RuleSet rules, BoundaryOptions options, IEnumerable<RemovalDemand> demands)
    {
        (_road, _problem, _rules, _options) = (road, problem, rules, options);
        _demands = demands.GroupBy(d => d.Lane).ToDictionary(g => g.Key, g => g.OrderBy(d => d.From).ToArray());
        _cuts = [.. problem.Lanes.Select(l => new CutRules(problem, l))];
        _joints = Array.ConvertAll(_cuts, c => new NewJoints(problem, c));
        _reasons = new RepairReasons(road, problem, rules);
    }

    public ImmutableArray<Repair> Build(ImmutableArray<ChosenRepair> chosen)
    {
        var ordered = chosen.OrderBy(r => r.From).ThenBy(r => r.Lane).ToArray();
        var groups = RepairGroups.Number(_problem, ordered);
        var byLane = ordered.ToLookup(r => r.Lane);
        return [.. ordered.Select((r, n) => One(r, n + 1, groups[n], byLane))];
    }

    private Repair One(ChosenRepair chosen, int number, int group, ILookup<int, ChosenRepair> byLane)
    {
        var lane = _road.Lanes[chosen.Lane];
        var (from, to) = (Ticks.ToMetres(chosen.From), Ticks.ToMetres(chosen.To));
        var demands = Held(lane.Number, chosen);
        _cuts[chosen.Lane].TryCut(chosen.From, true, true, out var start);
        _cuts[chosen.Lane].TryCut(chosen.To, false, true, out var end);
        var inner = new List<long>();
        _joints[chosen.Lane].Find(chosen.From, chosen.To, inner);
        var faces = new RepairFaces(_road, _problem, _rules.Joints, chosen, inner, byLane, _options.Explain);
        var bars = _options.BarsOf(lane, _rules.Joints);
        var tied = start.Dowelled && end.Dowelled && !_problem.Lanes[chosen.Lane].Undowelled && _problem.Lanes[chosen.Lane].TiesOneEnd(chosen.From, chosen.To);
        var tieStart = tied && ShorterBefore(chosen);
        return new Repair
        {
            Id = "R" + number.ToString("000", CultureInfo.InvariantCulture),
            Lane = lane.Number,
            From = from,
            To = to,
            Width = lane.Width,
            Thickness = lane.SectionAt((from + to) / 2).Thickness,
            Kind = Kind(_problem.Lanes[chosen.Lane], _cuts[chosen.Lane], chosen),
            Start = EndJoint(start, bars, tieStart),
            End = EndJoint(end, bars, tied && !tieStart),
            Intermediate = [.. inner.Select(at => InnerJoint(chosen.Lane, at, bars))],
            LeftFace = faces.Side(left: true),
            RightFace = faces.Side(left: false),
            Group = group,
            DistressIds = [.. demands.SelectMany(d => d.DistressIds).Distinct()],
            Reasons = _options.Explain ? _reasons.Of(chosen, start, end, demands) : [],
        };
    }

    private RemovalDemand[] Held(int lane, ChosenRepair chosen) =>
        [.. _demands.GetValueOrDefault(lane, []).Where(d => Ticks.FromMetres(d.From) >= chosen.From && Ticks.FromMetres(d.To) <= chosen.To)];

    private static RepairJoint EndJoint(Cut cut, LaneBars bars, bool tied)
    {
        var design = cut.Standing switch
        {
            JointKind.PavementEnd or JointKind.Expansion => JointDesign.Isolated,
            JointKind.Undowelled => JointDesign.Undowelled,
            _ when tied => JointDesign.Tied,
            _ => bars.Dowels > 0 ? JointDesign.Dowelled : JointDesign.Undowelled,
        };
        var number = design switch { JointDesign.Dowelled => bars.Dowels, JointDesign.Tied => bars.TieBars, _ => 0 };
        return new RepairJoint(Ticks.ToMetres(cut.At), design, cut.Standing is not null, number);
    }

    /// <summary>
    /// True where the old piece before the repair is no longer than the one after it: the tied end goes to the shorter piece, so that the
    /// panel tied together stays short and the working joint opens least.
    /// </summary>
    private bool ShorterBefore(ChosenRepair chosen)
    {
        var joints = _problem.Lanes[chosen.Lane].Joints;
        var (before, after) = (_cuts[chosen.Lane].JointFrom(chosen.From) - 1, _cuts[chosen.Lane].JointFrom(chosen.To + 1));
        if (before < 0 || after >= joints.Length) return after >= joints.Length;
        return chosen.From - joints[before].At <= joints[after].At - chosen.To;
    }

    private RepairJoint InnerJoint(int lane, long at, LaneBars bars)
    {
        var dowelled = _rules.Joints.DowelIntermediateJoints.Value && bars.Dowels > 0;
        var joints = _problem.Lanes[lane].Joints;
        var n = _cuts[lane].JointFrom(at);
        return new RepairJoint(Ticks.ToMetres(at), dowelled ? JointDesign.Dowelled : JointDesign.Undowelled,
            n < joints.Length && joints[n].At == at, dowelled ? bars.Dowels : 0);
    }

    /// <summary>Whole slabs held: none is a repair, one a slab replacement, more a slab run.</summary>
    private static Treatment Kind(ProblemLane lane, CutRules rules, ChosenRepair chosen)
    {
        var inside = 0;
        for (var n = rules.JointFrom(chosen.From); n < lane.Joints.Length && lane.Joints[n].At <= chosen.To; n++)
        {
            var joint = lane.Joints[n];
            if (joint.Kind != JointKind.WorkingCrack && joint.First >= chosen.From && joint.Last <= chosen.To) inside++;
        }

        return inside switch { < 2 => Treatment.FullDepthRepair, 2 => Treatment.SlabReplacement, _ => Treatment.SlabRun };
    }
}

/// <summary>Numbers repairs that touch or face one another across a lane line with one group number, from 1 along the road.</summary>
internal static class RepairGroups
{
    public static int[] Number(BoundaryProblem problem, ChosenRepair[] ordered)
    {
        var root = Enumerable.Range(0, ordered.Length).ToArray();
        var longest = ordered.Length == 0 ? 0 : ordered.Max(r => r.To - r.From);
        for (var n = 0; n < ordered.Length; n++)
        {
            for (var m = n - 1; m >= 0 && ordered[n].From - ordered[m].From <= longest; m--)
            {
                if (Touch(problem, ordered[n], ordered[m])) Join(root, n, m);
            }
        }

        var numbers = new Dictionary<int, int>();
        return [.. root.Select((_, n) => Find(root, n)).Select(r =>
        {
            if (!numbers.TryGetValue(r, out var number)) numbers[r] = number = numbers.Count + 1;
            return number;
        })];
    }

    private static bool Touch(BoundaryProblem problem, ChosenRepair one, ChosenRepair two)
    {
        var (left, right) = one.Lane < two.Lane ? (one, two) : (two, one);
        return problem.Lanes[left.Lane].Right.Lane == right.Lane && left.Lane != right.Lane && left.From <= right.To && right.From <= left.To;
    }

    private static void Join(int[] root, int n, int m)
    {
        var (a, b) = (Find(root, n), Find(root, m));
        root[Math.Max(a, b)] = Math.Min(a, b);
    }

    private static int Find(int[] root, int n)
    {
        while (root[n] != n) n = root[n] = root[root[n]];
        return n;
    }
}
