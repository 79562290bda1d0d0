using System.Collections.Immutable;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Boundaries;

/// <summary>What surrounds the optimum: the cost of each rule, the curve to full replacement, and where large removal takes over.</summary>
internal sealed class PlanStudies(
    Road road, BoundaryProblem problem, BoundarySolution solution, RuleSet rules, BoundaryOptions options, CancellationToken cancel)
{
    /// <summary>The curve and large removals look no finer than this, m: they compare plans, they do not place cuts.</summary>
    private const double StudyStep = 0.3;

    private readonly BoundaryProblem _plain = PlanCost.WithoutWeights(problem);

    /// <summary>Price-list cost of the plan.</summary>
    public decimal Cost { get; } = PlanCost.Money(PlanCost.Of(problem, solution.Repairs));

    /// <summary>Least price-list cost with each rule dropped, against the least price-list cost under all rules.</summary>
    public ImmutableArray<RuleCost> RuleCosts()
    {
        var dropped = DroppedRules.Of(_plain, rules, road);
        var costs = Solve([_plain, .. dropped.Select(d => d.Without)]);
        var all = costs[0].Objective;
        var rows = dropped.Select((d, n) => Row(d.Rule, d.Sentence, costs[n + 1].Objective, all)).ToList();
        if (options.SpannedJointWeight > 0 || options.UnmatchedEndWeight > 0)
        {
            rows.Add(Row("planning weights", "Joints and ends are matched to the neighbouring lane where that is worth the weights set.",
                all, PlanCost.Of(problem, solution.Repairs)));
        }

        return [.. rows];
    }

    private static RuleCost Row(string rule, string sentence, long without, long with) =>
        new(rule, sentence, PlanCost.Money(without), PlanCost.Money(with) - PlanCost.Money(without));

    /// <summary>
    /// Each point is the cheapest plan that leaves no old concrete shorter than a given length between two repairs; the last point
    /// replaces every lane from end to end. Beyond the first point cuts fall on every mark that is a whole number of steps of about
    /// a foot, so the plans are legal and the curve does not slow a project with fine marks.
    /// </summary>
    public ImmutableArray<CostCurvePoint> Curve()
    {
        var gaps = Gaps();
        var chosen = Enumerable.Range(1, options.CurvePoints).Select(n => gaps.Count == 0 ? 0 : gaps[(gaps.Count - 1) * n / options.CurvePoints])
            .Where(g => g > _plain.Limits.LeastGap).Distinct().ToArray();
        var coarse = Coarse();
        var plans = Solve([_plain, .. chosen.Select(g => ForcedGap.Of(coarse, g + 1))]);
        var points = plans.Where(p => p.Unmet.Length <= plans[0].Unmet.Length).Select(p => Point(p.Repairs, p.Objective)).Append(FullReplacement());
        return [.. points.GroupBy(p => p.LengthReplaced).Select(g => g.MinBy(p => p.Cost)!).OrderBy(p => p.LengthReplaced)];
    }

    public ImmutableArray<LargeRemoval> LargeRemovals() => LargeRemovalSearch.Find(road, Coarse(), solution, options.LargeRemovalWithin);

    private BoundaryProblem Coarse()
    {
        var least = (long)(StudyStep * Ticks.PerMetre * 1000);
        return _plain with { StepThousandths = (least + _plain.StepThousandths - 1) / _plain.StepThousandths * _plain.StepThousandths };
    }

    private List<long> Gaps()
    {
        var gaps = new List<long>();
        foreach (var lane in _plain.Lanes)
        {
            for (var n = 1; n < lane.Demands.Length; n++) gaps.Add(lane.Demands[n].From - lane.Demands[n - 1].To);
        }

        gaps.Sort();
        return gaps;
    }

    private CostCurvePoint FullReplacement()
    {
        var whole = _plain with { Lanes = [.. _plain.Lanes.Select(l => l with { NoCut = [] })] };
        ImmutableArray<ChosenRepair> repairs = [.. whole.Lanes.Select((l, n) => new ChosenRepair(n, l.From, l.To))];
        return Point(repairs, PlanCost.Of(whole, repairs));
    }

    private CostCurvePoint Point(ImmutableArray<ChosenRepair> repairs, long cost)
    {
        var length = Ticks.ToMetres(repairs.Sum(r => r.To - r.From));
        var all = Ticks.ToMetres(_plain.Lanes.Sum(l => l.To - l.From));
        return new CostCurvePoint(length, length / all, repairs.Length, PlanCost.Money(cost));
    }

    private BoundarySolution[] Solve(BoundaryProblem[] problems)
    {
        var solutions = new BoundarySolution[problems.Length];
        if (OperatingSystem.IsBrowser())
        {
            for (var n = 0; n < problems.Length; n++) solutions[n] = BoundarySolver.Solve(problems[n], cancel);
        }
        else
        {
            Parallel.For(0, problems.Length, new ParallelOptions { CancellationToken = cancel },
                n => solutions[n] = BoundarySolver.Solve(problems[n], cancel));
        }

        return solutions;
    }
}

/// <summary>The same problem with a least gap between repairs: demands nearer one another than it are one demand.</summary>
internal static class ForcedGap
{
    public static BoundaryProblem Of(BoundaryProblem problem, long gap) => problem with
    {
        Limits = problem.Limits with { LeastGap = gap },
        Lanes = [.. problem.Lanes.Select(l => l with { Demands = Join(l.Demands, gap) })],
    };

    private static ImmutableArray<TickSpan> Join(ImmutableArray<TickSpan> demands, long gap)
    {
        var joined = ImmutableArray.CreateBuilder<TickSpan>();
        foreach (var demand in demands)
        {
            if (joined.Count > 0 && demand.From - joined[^1].To < gap) joined[^1] = new TickSpan(joined[^1].From, demand.To);
            else joined.Add(demand);
        }

        return joined.ToImmutable();
    }
}

/// <summary>Each rule in turn left out of the problem, with its sentence.</summary>
internal static class DroppedRules
{
    public static List<(string Rule, string Sentence, BoundaryProblem Without)> Of(BoundaryProblem problem, RuleSet rules, Road road)
    {
        var limits = problem.Limits;
        var set = rules.Boundaries;
        var dropped = new List<(string, string, BoundaryProblem)>();
        void Drop(string rule, string sentence, ProblemLimits without) => dropped.Add((rule, sentence, problem with { Limits = without }));

        Drop("least length", $"A repair is at least {BoundaryWords.Length(set.LeastLength.Value)} long ({set.LeastLength.Source}).",
            limits with { LeastLength = limits.PassOther, LeastLengthUndowelled = Math.Min(limits.LeastLengthUndowelled, limits.PassOther) });
        if (set.LeastLengthUndowelled is { } undowelled)
            Drop("least length undowelled", $"Between undowelled joints a repair is at least {BoundaryWords.Length(undowelled.Value)} long ({undowelled.Source}).",
                limits with { LeastLengthUndowelled = limits.LeastLength });
        if (set.LeastRemnant is { } remnant)
            Drop("least remnant", $"At least {BoundaryWords.Length(remnant.Value)} of old slab stays between a cut and the next joint ({remnant.Source}).",
                limits with { LeastRemnant = Math.Min(limits.LeastRemnant, limits.PassOther) });
        if (set.LeastGap is { } gap)
            Drop("least gap", $"At least {BoundaryWords.Length(gap.Value)} of old slab stays between two repairs ({gap.Source}).",
                limits with { LeastGap = Math.Clamp(limits.PassOther, 1, limits.LeastGap) });
        if (set.ExtendPastDowelledJoint is { } pass)
            Drop("pass a dowelled joint", $"A cut passes a dowelled joint by {BoundaryWords.Length(pass.Value)} ({pass.Source}).",
                limits with { PassDowelled = 1 });
        if (!limits.EndAtUndowelled)
            Drop("no end at an undowelled joint", "No repair ends at an undowelled joint or working crack.", limits with { EndAtUndowelled = true });
        if (problem.Lanes.Any(l => !l.Unjointed.IsEmpty))
            dropped.Add(("longest unjointed", "Longer new concrete gets joints of its own.",
                problem with { Lanes = [.. problem.Lanes.Select(l => l with { Unjointed = [] })] }));
        if (!road.NoCutZones.IsEmpty)
            dropped.Add(("no-cut zones", "No transverse cut falls in a no-cut zone.",
                problem with { Lanes = [.. problem.Lanes.Select(l => l with { NoCut = [] })] }));
        return dropped;
    }
}
