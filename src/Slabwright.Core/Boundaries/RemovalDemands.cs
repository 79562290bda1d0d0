using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.Core.Boundaries;

/// <summary>What must come out, and what could not be turned into a demand.</summary>
/// <param name="Demands">Demands by lane and place.</param>
/// <param name="Findings">Decisions that could not be used.</param>
public sealed record RemovalDemandResult(ImmutableArray<RemovalDemand> Demands, ImmutableArray<Finding> Findings);

/// <summary>Turns full-depth decisions into stretches of lane that must come out.</summary>
public static class RemovalDemands
{
    /// <summary>
    /// A full-depth repair asks for the distress with its hidden margin and growth; a slab replacement for the slab between its
    /// joints, a slab run for neighbouring slabs in one piece. Rules on whole slabs widen a demand; lane ends bound it.
    /// </summary>
    /// <param name="road">The road.</param>
    /// <param name="distresses">The survey.</param>
    /// <param name="decisions">Treatment of each distress.</param>
    /// <param name="cores">Cores; one in the same slab or near the distress can widen the margin.</param>
    /// <param name="limits">Limits of the rule set.</param>
    /// <param name="growth">Growth between survey and work.</param>
    /// <param name="years">Years from survey to work; 0 for none.</param>
    public static RemovalDemandResult From(
        Road road, IReadOnlyList<Distress> distresses, IReadOnlyList<TreatmentDecision> decisions,
        IReadOnlyList<CoreSample> cores, BoundaryLimits limits, GrowthModel growth, double years)
    {
        var byId = distresses.GroupBy(d => d.Id).ToDictionary(g => g.Key, g => g.First());
        var margins = new HiddenMargins(road, cores, limits, growth, years);
        var lanes = road.Lanes.ToDictionary(l => l.Number);
        var demands = new List<RemovalDemand>();
        var findings = new List<Finding>();
        foreach (var decision in decisions.Where(d => d.Treatment >= Treatment.FullDepthRepair))
        {
            if (!byId.TryGetValue(decision.DistressId, out var distress)) findings.Add(NoDistress(decision));
            else if (!lanes.TryGetValue(distress.Lane, out var lane)) findings.Add(NoLane(distress));
            else if (distress.To < lane.From || distress.From > lane.To) findings.Add(OffLane(distress, lane));
            else demands.Add(Demand(lane, distress, decision, limits, margins));
        }

        var sorted = demands.OrderBy(d => d.Lane).ThenBy(d => d.From).ThenBy(d => d.To).ThenBy(d => d.DistressIds[0], StringComparer.Ordinal);
        return new RemovalDemandResult([.. JoinRuns(sorted)], [.. findings]);
    }

    private static RemovalDemand Demand(
        Lane lane, Distress distress, TreatmentDecision decision, BoundaryLimits limits, HiddenMargins margins)
    {
        var slabs = SlabsOf(lane, distress);
        if (decision.Treatment != Treatment.FullDepthRepair) return Whole(lane, distress, decision.Treatment, slabs, []);
        var (margin, reasons) = margins.Of(distress, lane);
        if (WholeSlabReason(distress, slabs, limits) is { } reason)
            return Whole(lane, distress, Treatment.SlabReplacement, slabs, [reason, .. reasons], distress.From - margin, distress.To + margin);
        return Clipped(lane, distress, Treatment.FullDepthRepair, distress.From - margin, distress.To + margin, reasons);
    }

    /// <summary>The slab of the distress and every other slab its visible extent enters, in order.</summary>
    private static ImmutableArray<Slab> SlabsOf(Lane lane, Distress distress)
    {
        const double touch = 0.001;
        var own = distress.Slab >= 1 && distress.Slab <= lane.SlabCount ? lane.SlabByNumber(distress.Slab) : lane.SlabAt(distress.Middle);
        if (distress.To < own.Start.First - touch || distress.From > own.End.Last + touch) own = lane.SlabAt(distress.Middle);
        var first = Math.Min(own.Number, lane.SlabAt(distress.From + touch).Number);
        var last = Math.Max(own.Number, lane.SlabAt(distress.To - touch).Number);
        return [.. Enumerable.Range(first, last - first + 1).Select(lane.SlabByNumber)];
    }

    private static Reason? WholeSlabReason(Distress distress, ImmutableArray<Slab> slabs, BoundaryLimits limits)
    {
        if (limits.WholeSlabBelow is { } below && slabs.Any(s => s.Length < below.Value))
        {
            var slab = slabs.First(s => s.Length < below.Value);
            return new Reason("whole slab below", $"Slabs shorter than {BoundaryWords.Length(below.Value)} are replaced whole.", below.Source,
                [new("slab", Number(slab.Number)), new("slab length", BoundaryWords.Length(slab.Length))]);
        }

        if (limits.PartOnlyWithinHalfSlab is { Value: true } half && slabs.Any(s => CrossesMiddle(s, distress)))
        {
            return new Reason("part only within half a slab", "Damage reaches past the middle of its slab, so the slab is replaced whole.",
                half.Source, [new("damage length", BoundaryWords.Length(distress.Extent)), new("slab", Number(slabs[0].Number))]);
        }

        return null;
    }

    private static bool CrossesMiddle(Slab slab, Distress distress)
    {
        var middle = (slab.Start.At + slab.End.At) / 2;
        return distress.From < middle && middle < distress.To;
    }

    private static RemovalDemand Whole(
        Lane lane, Distress distress, Treatment treatment, ImmutableArray<Slab> slabs, ImmutableArray<Reason> reasons,
        double from = double.MaxValue, double to = double.MinValue)
    {
        var reason = new Reason("whole slab", "The slab comes out from joint to joint.", SourceRef.CommonPractice,
            [new("slabs", slabs.Length == 1 ? Number(slabs[0].Number) : $"{slabs[0].Number} to {slabs[^1].Number}")]);
        return Clipped(lane, distress, treatment, Math.Min(from, slabs[0].Start.First), Math.Max(to, slabs[^1].End.Last), [.. reasons, reason]);
    }

    private static RemovalDemand Clipped(
        Lane lane, Distress distress, Treatment treatment, double from, double to, ImmutableArray<Reason> reasons)
    {
        var clipped = from < lane.From || to > lane.To;
        if (clipped)
        {
            reasons = reasons.Add(new Reason("lane end", "The demand stops where the lane's concrete ends.", SourceRef.CommonPractice,
                [new("lane concrete", BoundaryWords.Length(lane.To - lane.From))]));
        }

        return new RemovalDemand(lane.Number, Math.Max(from, lane.From), Math.Min(to, lane.To), treatment, [distress.Id], reasons);
    }

    /// <summary>Slab runs that touch are one removal.</summary>
    private static List<RemovalDemand> JoinRuns(IEnumerable<RemovalDemand> sorted)
    {
        var joined = new List<RemovalDemand>();
        foreach (var demand in sorted)
        {
            var before = joined.FindLastIndex(d => d.Lane == demand.Lane && d.Treatment == Treatment.SlabRun);
            if (demand.Treatment != Treatment.SlabRun || before < 0 || joined[before].To < demand.From) joined.Add(demand);
            else joined[before] = Joined(joined[before], demand);
        }

        return joined;
    }

    private static RemovalDemand Joined(RemovalDemand one, RemovalDemand two) => one with
    {
        To = Math.Max(one.To, two.To),
        DistressIds = [.. one.DistressIds.Concat(two.DistressIds).Distinct()],
        Reasons = [.. one.Reasons, .. two.Reasons],
    };

    private static Finding NoDistress(TreatmentDecision decision) => new(
        "BND-001", FindingLevel.Error, $"A decision speaks of distress {decision.DistressId}, which the survey does not hold.",
        new FindingPlace(Field: "distress"), decision.DistressId, "Remove the override or put the distress into the survey.");

    private static Finding NoLane(Distress distress) => new(
        "BND-002", FindingLevel.Error, $"Distress {distress.Id} lies in lane {distress.Lane}, which the road does not have.",
        new FindingPlace(Lane: distress.Lane, At: distress.Middle), Number(distress.Lane), "Correct the lane number or add the lane to the road.");

    private static Finding OffLane(Distress distress, Lane lane) => new(
        "BND-003", FindingLevel.Error, $"Distress {distress.Id} lies where lane {lane.Number} has no concrete.",
        new FindingPlace(Lane: lane.Number, At: distress.Middle), BoundaryWords.Length(distress.Middle), "Correct the place or the lane's ends.");

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
