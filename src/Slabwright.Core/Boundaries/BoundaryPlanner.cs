using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Boundaries;

/// <summary>Decides where each full-depth repair starts and stops: the proven least cost under the rules and prices given.</summary>
public static class BoundaryPlanner
{
    /// <summary>Plans the boundaries of a road.</summary>
    /// <param name="road">The road.</param>
    /// <param name="demands">What must come out.</param>
    /// <param name="rules">The rule set.</param>
    /// <param name="prices">The price list.</param>
    /// <param name="cutStep">Boundary cuts fall on multiples of this from the road's start, m.</param>
    /// <param name="options">Planning choices; the defaults when null.</param>
    /// <param name="cancel">Stops the search.</param>
    public static BoundaryResult Plan(
        Road road, IReadOnlyList<RemovalDemand> demands, RuleSet rules, PriceList prices, double cutStep,
        BoundaryOptions? options = null, CancellationToken cancel = default)
    {
        options ??= BoundaryOptions.Default;
        var findings = new List<Finding>();
        var usable = DemandChecks.Usable(road, demands, findings);
        var problem = ProblemBuilder.Build(road, usable, rules, prices, cutStep, options);
        var solution = BoundarySolver.Solve(problem, cancel);
        findings.AddRange(DemandChecks.Unmet(road, usable, solution));
        findings.AddRange(DemandChecks.AcrossZones(road, solution));
        if (prices.Find(PayRole.FullDepthArea) is not { UnitPrice: > 0 }) findings.Add(DemandChecks.NoAreaPrice());
        var study = new PlanStudies(road, problem, solution, rules, options, cancel);
        return new BoundaryResult(
            new RepairBuilder(road, problem, rules, options, usable).Build(solution.Repairs),
            study.Cost,
            options.RuleCosts ? study.RuleCosts() : [],
            options.CurvePoints > 0 ? study.Curve() : [],
            options.LargeRemovals ? study.LargeRemovals() : [],
            solution.Clusters,
            [.. findings]);
    }
}

/// <summary>What is wrong with demands before and after the search.</summary>
internal static class DemandChecks
{
    public static List<RemovalDemand> Usable(Road road, IReadOnlyList<RemovalDemand> demands, List<Finding> findings)
    {
        var lanes = road.Lanes.ToDictionary(l => l.Number);
        var usable = new List<RemovalDemand>();
        foreach (var demand in demands)
        {
            var known = lanes.TryGetValue(demand.Lane, out var lane);
            if (known && demand.From <= demand.To && demand.From >= lane!.From && demand.To <= lane.To) usable.Add(demand);
            else findings.Add(Unusable(road, demand, known));
        }

        return usable;
    }

    public static IEnumerable<Finding> Unmet(Road road, List<RemovalDemand> demands, BoundarySolution solution)
    {
        foreach (var (lane, span) in solution.Unmet)
        {
            var number = road.Lanes[lane].Number;
            var ids = demands.Where(d => d.Lane == number && Ticks.FromMetres(d.From) >= span.From && Ticks.FromMetres(d.To) <= span.To)
                .SelectMany(d => d.DistressIds);
            yield return new Finding("BND-011", FindingLevel.Error,
                $"No legal repair can hold the demand of {string.Join(", ", ids)}: no cut is allowed on one side of it.",
                new FindingPlace(Lane: number, At: Ticks.ToMetres(span.From)),
                $"{BoundaryWords.Station(road, Ticks.ToMetres(span.From))} to {BoundaryWords.Station(road, Ticks.ToMetres(span.To))}",
                "Shorten the no-cut zone, correct the lane's end, or repair the place under another contract.");
        }
    }

    /// <summary>A repair that could only be cut outside a no-cut zone takes the whole zone out; somebody should know.</summary>
    public static IEnumerable<Finding> AcrossZones(Road road, BoundarySolution solution)
    {
        foreach (var repair in solution.Repairs)
        {
            var (lane, from, to) = (road.Lanes[repair.Lane].Number, Ticks.ToMetres(repair.From), Ticks.ToMetres(repair.To));
            foreach (var zone in road.NoCutZones)
            {
                if ((zone.Lane is not null && zone.Lane != lane) || zone.From < from || zone.To > to) continue;
                yield return new Finding("BND-012", FindingLevel.Warning,
                    $"A repair takes out the whole no-cut zone {zone.Name}, since no cut may fall inside it.",
                    new FindingPlace(Lane: lane, At: zone.From), BoundaryWords.Length(to - from),
                    "Check that the zone may be removed; otherwise change the treatment there.");
            }
        }
    }

    public static Finding NoAreaPrice() => new("BND-013", FindingLevel.Warning,
        "The price list has no price for full-depth repair by area, so boundaries only keep repairs short.",
        new FindingPlace(Field: "FullDepthArea"), null, "Add a pay item with the role FullDepthArea and a price.");

    private static Finding Unusable(Road road, RemovalDemand demand, bool known) => new("BND-010", FindingLevel.Error,
        known
            ? $"The demand of {string.Join(", ", demand.DistressIds)} does not lie on its lane's concrete."
            : $"The demand of {string.Join(", ", demand.DistressIds)} is in lane {demand.Lane}, which the road does not have.",
        new FindingPlace(Lane: demand.Lane, At: demand.From),
        $"{BoundaryWords.Station(road, demand.From)} to {BoundaryWords.Station(road, demand.To)}",
        "Correct the lane or the place of the distress.");
}
