using System.Collections.Immutable;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Boundaries;

/// <summary>Turns road, demands, rules and prices into the whole-number problem.</summary>
public static class ProblemBuilder
{
    /// <summary>Builds the problem.</summary>
    /// <param name="road">The road.</param>
    /// <param name="demands">What must come out; overlapping stretches of a lane become one.</param>
    /// <param name="rules">The rule set.</param>
    /// <param name="prices">The price list.</param>
    /// <param name="cutStep">Cut step, m.</param>
    /// <param name="options">Planning choices.</param>
    public static BoundaryProblem Build(
        Road road, IEnumerable<RemovalDemand> demands, RuleSet rules, PriceList prices, double cutStep, BoundaryOptions options)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(cutStep, 0.001);
        var money = new LanePrices(prices, rules, options);
        var byLane = demands.ToLookup(d => d.Lane);
        return new BoundaryProblem
        {
            StepThousandths = (long)Math.Round(cutStep * Ticks.PerMetre * 1000),
            Limits = Limits(rules.Boundaries, options),
            Prices = Common(money, options),
            Lanes = [.. road.Lanes.Select((_, n) => BuildLane(road, n, byLane, rules, money, options))],
        };
    }

    private static ProblemLimits Limits(BoundaryLimits limits, BoundaryOptions options)
    {
        var sliver = options.LeastSliver;
        var least = Ticks.FromMetres(limits.LeastLength.Value);
        return new ProblemLimits
        {
            LeastLength = least,
            OrHalfSlab = limits.LeastLengthOrHalfSlab?.Value ?? false,
            LeastLengthUndowelled = Math.Max(least, Ticks.FromMetres(limits.LeastLengthUndowelled?.Value ?? 0)),
            LeastRemnant = Ticks.FromMetres(limits.LeastRemnant?.Value ?? sliver),
            LeastGap = Math.Max(1, Ticks.FromMetres(limits.LeastGap?.Value ?? sliver)),
            PassDowelled = Ticks.FromMetres(limits.ExtendPastDowelledJoint?.Value ?? sliver),
            PassOther = Ticks.FromMetres(sliver),
            EndAtUndowelled = limits.EndAtUndowelledJoint?.Value ?? false,
            LeastPanel = Ticks.FromMetres(options.LeastPanel),
            MatchWithin = Ticks.FromMetres(options.MatchWithin),
        };
    }

    private static ProblemPrices Common(LanePrices money, BoundaryOptions options) => new()
    {
        CutRate = money.Rate(PayRole.LongitudinalSawCut),
        SealRate = money.Rate(PayRole.LongitudinalSeal),
        IsolationRate = money.Rate(PayRole.IsolationBoard),
        TieRate = money.TieRate,
        TieFrom = money.TieFrom,
        LiftPiece = Ticks.FromMetres(options.LiftPiece),
        SpannedJoint = (long)(options.SpannedJointWeight * BoundaryProblem.MoneyPerUnit),
        UnmatchedEnd = (long)(options.UnmatchedEndWeight * BoundaryProblem.MoneyPerUnit),
    };

    private static ProblemLane BuildLane(
        Road road, int index, ILookup<int, RemovalDemand> demands, RuleSet rules, LanePrices money, BoundaryOptions options)
    {
        var lane = road.Lanes[index];
        return new ProblemLane
        {
            Number = lane.Number,
            From = Ticks.FromMetres(lane.From),
            To = Ticks.FromMetres(lane.To),
            Joints = [.. lane.Joints.Select(Joint)],
            NoCut = NoCut(road, lane),
            Demands = Merge(demands[lane.Number]),
            Unjointed = Unjointed(lane, rules.Boundaries),
            FixedCost = money.Fixed(lane.Width),
            DowelledEndCost = money.DowelledEnd(lane),
            Undowelled = money.Bars(lane).Dowels == 0,
            TiedEndCost = money.TiedEnd(lane),
            TieOneEndUpTo = Ticks.FromMetres(money.Bars(lane).TieOneEndUpTo),
            Reinforced = [.. lane.Sections.Where(s => s.Kind == PavementKind.JointedReinforced)
                .Select(s => new TickSpan(Ticks.FromMetres(s.From), Ticks.FromMetres(s.To)))],
            InnerJointCost = money.InnerJoint(lane),
            LiftCutCost = money.LiftCut(lane.Width),
            Classes = money.Classes(lane.Width),
            LeastPayLength = money.LeastPayLength(lane.Width),
            ExtraRate = money.BaseConcrete(lane.Width),
            Left = Side(road, index, index - 1, lane.LeftEdge, money),
            Right = Side(road, index, index + 1, lane.RightEdge, money),
        };
    }

    private static ProblemJoint Joint(TransverseJoint joint) => new(
        Ticks.FromMetres(joint.At), Ticks.FromMetres(joint.AtLeftEdge), Ticks.FromMetres(joint.AtRightEdge), joint.Kind);

    private static ImmutableArray<TickSpan> NoCut(Road road, Lane lane) =>
    [
        .. road.NoCutZones.Where(z => z.Lane is null || z.Lane == lane.Number)
            .Select(z => new TickSpan(Ticks.FromMetres(z.From), Ticks.FromMetres(z.To))).OrderBy(z => z.From),
    ];

    /// <summary>Sorts demands and joins those that overlap or touch: they cannot stand in different repairs.</summary>
    private static ImmutableArray<TickSpan> Merge(IEnumerable<RemovalDemand> demands)
    {
        var merged = ImmutableArray.CreateBuilder<TickSpan>();
        foreach (var demand in demands.Select(d => new TickSpan(Ticks.FromMetres(d.From), Ticks.FromMetres(d.To))).OrderBy(d => d.From))
        {
            if (merged.Count > 0 && demand.From <= merged[^1].To)
                merged[^1] = new TickSpan(merged[^1].From, Math.Max(merged[^1].To, demand.To));
            else merged.Add(demand);
        }

        return merged.ToImmutable();
    }

    private static ImmutableArray<UnjointedLimit> Unjointed(Lane lane, BoundaryLimits limits) =>
    [
        .. lane.Sections.Select(s => new UnjointedLimit(Ticks.FromMetres(s.From), Ticks.FromMetres(s.To), Longest(s, limits)))
            .Where(l => l.Longest < long.MaxValue),
    ];

    private static long Longest(PavementSection section, BoundaryLimits limits)
    {
        var treated = section.Base is BaseKind.CementTreated or BaseKind.AsphaltTreated;
        var thicknesses = treated ? limits.UnjointedThicknessesTreated : limits.UnjointedThicknessesGranular;
        var longest = limits.LongestUnjointed is { } length ? Ticks.FromMetres(length.Value) : long.MaxValue;
        return thicknesses is { } times ? Math.Min(longest, Ticks.FromMetres(times.Value * section.Thickness)) : longest;
    }

    private static ProblemSide Side(Road road, int lane, int neighbour, LaneEdge edge, LanePrices money)
    {
        var beside = AreBeside(road, lane, neighbour);
        var concrete = beside || edge is LaneEdge.TiedLane or LaneEdge.UntiedLane or LaneEdge.TiedConcreteShoulder;
        return new ProblemSide(concrete, beside ? neighbour : -1, money.Open(edge));
    }

    /// <summary>Two lanes lie beside one another when their numbers follow and either says a lane lies there.</summary>
    private static bool AreBeside(Road road, int one, int other)
    {
        if (other < 0 || other >= road.Lanes.Length) return false;
        var (left, right) = (road.Lanes[Math.Min(one, other)], road.Lanes[Math.Max(one, other)]);
        return left.Number + 1 == right.Number
            && (left.RightEdge is LaneEdge.TiedLane or LaneEdge.UntiedLane || right.LeftEdge is LaneEdge.TiedLane or LaneEdge.UntiedLane);
    }
}
