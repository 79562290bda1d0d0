using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Measures;
using Slabwright.Tests.Boundaries;

namespace Slabwright.Tests.Laws;

/// <summary>What must hold between optima of related problems, whatever the numbers.</summary>
public sealed class BoundaryLawTests
{
    private const int Problems = 150;

    [Fact]
    public void Dropping_a_rule_never_raises_the_cost() => ForAll((seed, problem) =>
    {
        var limits = problem.Limits;
        var least = Least(problem);
        foreach (var looser in new[]
                 {
                     limits with { LeastLength = 3048, LeastLengthUndowelled = 3048 }, limits with { LeastRemnant = 3048 },
                     limits with { LeastGap = 1 }, limits with { PassDowelled = 3048 }, limits with { EndAtUndowelled = true },
                 })
        {
            Assert.True(Least(problem with { Limits = looser }) <= least, $"seed {seed}: {looser}");
        }

        var free = problem with { Lanes = [.. problem.Lanes.Select(l => l with { NoCut = [] })] };
        Assert.True(Least(free) <= least, $"seed {seed}: no-cut zones");
    });

    [Fact]
    public void Adding_a_demand_never_lowers_the_cost() => ForAll((seed, problem) =>
    {
        var lane = Enumerable.Range(0, problem.Lanes.Length).MaxBy(n => problem.Lanes[n].Demands.Length);
        var fewer = problem.Lanes[lane] with { Demands = problem.Lanes[lane].Demands.RemoveAt(0) };
        Assert.True(Least(problem with { Lanes = problem.Lanes.SetItem(lane, fewer) }) <= Least(problem), $"seed {seed}");
    }, sharedWeights: false);

    /// <summary>
    /// The mirrored road costs the same. Panels are not split here: an odd split rounds to the earlier mark, which is not mirrored.
    /// </summary>
    [Fact]
    public void A_road_read_backwards_costs_the_same() => ForAll((seed, problem) =>
    {
        var straight = problem with { Lanes = [.. problem.Lanes.Select(l => l with { Unjointed = [], Joints = Spread(l.Joints) })] };
        Assert.True(Least(straight) == Least(Mirror(straight)), $"seed {seed}");
    });

    [Fact]
    public void A_road_moved_by_whole_marks_costs_the_same() => ForAll((seed, problem) =>
    {
        var moved = Move(problem, 7 * problem.MarkAt(1));
        Assert.True(Least(problem) == Least(moved), $"seed {seed}");
    });

    /// <summary>The quick least cost never lies above the price, and mostly meets it: else it would leave a repair of the optimum out, or none at all.</summary>
    [Fact]
    public void The_quick_least_cost_of_a_repair_is_never_above_its_price()
    {
        var (priced, met) = (0, 0);
        ForAll((seed, problem) =>
        {
            foreach (var lane in problem.Lanes)
            {
                var rules = new CutRules(problem, lane);
                var costs = new RepairCosts(problem, rules);
                var cuts = Enumerable.Range(0, 40).Select(n => problem.MarkAt(problem.MarkAtOrBefore(lane.From) + 1 + 3 * n)).ToArray();
                foreach (var (from, to) in cuts.SelectMany((from, n) => cuts.Skip(n + 1).Select(to => (from, to))))
                {
                    if (!rules.TryCut(from, true, true, out var start) || !rules.TryCut(to, false, true, out var end)) continue;
                    var candidate = new Candidate();
                    costs.Price(start, end, candidate);
                    var least = costs.Least(start, end);
                    Assert.True(least <= candidate.Cost - candidate.Weights, $"seed {seed}, lane {lane.Number}, {from} to {to}");
                    priced++;
                    if (least == candidate.Cost - candidate.Weights) met++;
                }
            }
        });
        Assert.InRange(met, priced * 6 / 10, priced - 1);
    }

    [Fact]
    public void The_same_problem_gives_the_same_plan() => ForAll((seed, problem) =>
    {
        var (one, two) = (Solve(problem), Solve(problem));
        Assert.True(one.Repairs.SequenceEqual(two.Repairs), $"seed {seed}");
    });

    /// <summary>Far apart on one road, two stretches are clusters of their own: together they cost what they cost alone.</summary>
    [Fact]
    public void Stretches_far_apart_cost_the_sum() => ForAll((seed, problem) =>
    {
        var far = Move(problem, 1000 * problem.MarkAt(1));
        var both = problem with { Lanes = [.. problem.Lanes.Zip(far.Lanes, Together)] };
        var first = both with { Lanes = [.. both.Lanes.Zip(problem.Lanes, (l, only) => l with { Demands = only.Demands })] };
        var second = both with { Lanes = [.. both.Lanes.Zip(far.Lanes, (l, only) => l with { Demands = only.Demands })] };
        Assert.True(Least(both) == Least(first) + Least(second), $"seed {seed}");
    });

    private static ProblemLane Together(ProblemLane one, ProblemLane two) => one with
    {
        To = two.To,
        Joints = [.. one.Joints, .. two.Joints],
        NoCut = [.. one.NoCut, .. two.NoCut],
        Demands = [.. one.Demands, .. two.Demands],
        Unjointed = [.. one.Unjointed, .. two.Unjointed],
        Reinforced = [.. one.Reinforced, .. two.Reinforced],
    };

    private static void ForAll(Action<int, BoundaryProblem> law, bool sharedWeights = true)
    {
        var held = 0;
        for (var seed = 1; seed <= Problems; seed++)
        {
            var problem = RandomProblems.Make(seed, 1 + seed % 4, 150, 1, 5);
            if (!sharedWeights) problem = Unshared(problem);
            if (problem.Lanes.All(l => l.Demands.IsEmpty) || !Solve(problem).Unmet.IsEmpty) continue;
            law(seed, problem);
            held++;
        }

        Assert.True(held > Problems / 2, $"{held} problems");
    }

    /// <summary>With shared edges or weights one more repair may refund more than it costs to widen another; the law is for priced removal alone.</summary>
    private static BoundaryProblem Unshared(BoundaryProblem problem) => problem with
    {
        Prices = problem.Prices with { SpannedJoint = 0, UnmatchedEnd = 0 },
        Lanes = [.. problem.Lanes.Select(l => l with { Left = l.Left with { Lane = -1 }, Right = l.Right with { Lane = -1 } })],
    };

    private static BoundarySolution Solve(BoundaryProblem problem) => BoundarySolver.Solve(problem, TestContext.Current.CancellationToken);

    private static long Least(BoundaryProblem problem) => Solve(problem).Objective;

    /// <summary>Joints at least a least panel apart, so that which are made again does not depend on the side one starts from.</summary>
    private static ImmutableArray<ProblemJoint> Spread(ImmutableArray<ProblemJoint> joints)
    {
        var spread = new List<ProblemJoint>();
        foreach (var joint in joints)
        {
            if (spread.Count == 0 || joint == joints[^1] || joint.At - spread[^1].At >= 6 * Ticks.PerFoot) spread.Add(joint);
        }

        return [.. spread];
    }

    private static BoundaryProblem Mirror(BoundaryProblem problem)
    {
        var end = problem.MarkAt(problem.MarkAtOrBefore(problem.Lanes.Max(l => l.To)) + 1);
        return problem with
        {
            Lanes = [.. problem.Lanes.Select(l => l with
            {
                From = end - l.To,
                To = end - l.From,
                Joints = [.. l.Joints.Reverse().Select(j => new ProblemJoint(end - j.At, end - j.AtLeft, end - j.AtRight, j.Kind))],
                NoCut = [.. l.NoCut.Reverse().Select(z => new TickSpan(end - z.To, end - z.From))],
                Demands = [.. l.Demands.Reverse().Select(d => new TickSpan(end - d.To, end - d.From))],
                Reinforced = [.. l.Reinforced.Reverse().Select(r => new TickSpan(end - r.To, end - r.From))],
            })],
        };
    }

    private static BoundaryProblem Move(BoundaryProblem problem, long by) => problem with
    {
        Lanes = [.. problem.Lanes.Select(l => l with
        {
            From = l.From + by,
            To = l.To + by,
            Joints = [.. l.Joints.Select(j => new ProblemJoint(j.At + by, j.AtLeft + by, j.AtRight + by, j.Kind))],
            NoCut = [.. l.NoCut.Select(z => new TickSpan(z.From + by, z.To + by))],
            Demands = [.. l.Demands.Select(d => new TickSpan(d.From + by, d.To + by))],
            Reinforced = [.. l.Reinforced.Select(r => new TickSpan(r.From + by, r.To + by))],
            Unjointed = [.. l.Unjointed.Select(u => new UnjointedLimit(u.From + by, u.To + by, u.Longest))],
        })],
    };
}
