using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Numerics;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.Core.Quantities;

/// <summary>A removal demand with how far it may turn out longer or shorter.</summary>
/// <param name="Demand">The demand of the plan, likely growth and margin included.</param>
/// <param name="Type">Distress type it grows by; null for slab runs of several distresses.</param>
/// <param name="Growth">Growth at each end until work, m.</param>
/// <param name="Margin">Hidden margin at each end, m.</param>
/// <param name="NewExpected">Mean number of new distresses like it until work.</param>
public sealed record UncertainDemand(
    RemovalDemand Demand, DistressType? Type, Triangular Growth, Triangular Margin, double NewExpected);

/// <summary>Uncertain demands and what was wrong with the growth rates.</summary>
/// <param name="Demands">In the order of the plan's demands.</param>
/// <param name="Findings">Rates out of order.</param>
public sealed record UncertainDemandResult(ImmutableArray<UncertainDemand> Demands, ImmutableArray<Finding> Findings);

/// <summary>
/// How sure the demands are. Growth at each end is triangular over the low, likely and high rate times the years since the survey.
/// The hidden margin is triangular from nothing over the rule's margin to twice that margin; with three cores or more that recorded the
/// widening below, from the least to the greatest widening found, stretched to hold the rule's margin. A margin found by coring or
/// sounding at the distress itself does not vary, nor does a whole slab. New distresses of each type come at the model's rate,
/// compounded over the years as in <see cref="SurveyGrowth"/>.
/// </summary>
public static class UncertainDemands
{
    /// <summary>Cores needed before they set the range of the hidden margin.</summary>
    public const int LeastCores = 3;

    /// <summary>Rule a demand's reason carries when its margin is the rule set's and not measured at the place.</summary>
    private const string MarginByRule = "hidden margin";

    /// <summary>Gives every demand its range.</summary>
    /// <param name="demands">Demands of the plan.</param> <param name="distresses">The survey.</param> <param name="cores">Cores.</param>
    /// <param name="climate">Says which margin of the rule set holds.</param> <param name="limits">Limits of the rule set.</param>
    /// <param name="growth">Growth model.</param> <param name="years">Years from survey to work; 0 for none.</param>
    public static UncertainDemandResult From(
        IReadOnlyList<RemovalDemand> demands,
        IReadOnlyList<Distress> distresses,
        IReadOnlyList<CoreSample> cores,
        Climate climate,
        BoundaryLimits limits,
        GrowthModel growth,
        double years)
    {
        var types = distresses.GroupBy(d => d.Id).ToDictionary(g => g.Key, g => g.First().Type);
        var margin = MarginRange((climate.FreezeThaw ? limits.HiddenMarginFreezeThaw : limits.HiddenMargin).Value, cores);
        var sound = growth with { Rates = [.. growth.Rates.Where(r => Range(r, 1).IsSound && r.NewPerYear >= 0)] };
        return new UncertainDemandResult(
            [.. demands.Select(d => One(d, types, margin, sound, Math.Max(0, years)))],
            [.. growth.Rates.Except(sound.Rates).Select(OutOfOrder)]);
    }

    /// <summary>Range of the hidden margin at each end, m.</summary>
    /// <param name="likely">The rule set's margin, m.</param> <param name="cores">Cores.</param>
    public static Triangular MarginRange(double likely, IReadOnlyList<CoreSample> cores)
    {
        var found = cores.Where(c => c.WideningBelow is not null).Select(c => c.WideningBelow!.Value).ToList();
        return found.Count < LeastCores
            ? new Triangular(0, likely, 2 * likely)
            : new Triangular(Math.Min(found.Min(), likely), likely, Math.Max(found.Max(), likely));
    }

    private static UncertainDemand One(
        RemovalDemand demand, Dictionary<string, DistressType> types, Triangular margin, GrowthModel growth, double years)
    {
        var known = demand.DistressIds.Where(types.ContainsKey).Select(id => types[id]).ToList();
        var rates = known.Select(growth.RateOf).OfType<GrowthRate>().ToList();
        var news = rates.Sum(r => Math.Pow(1 + r.NewPerYear, years) - 1);
        if (demand.Treatment != Treatment.FullDepthRepair || known.Count != 1)
        {
            return new UncertainDemand(demand, known.Count == 1 ? known[0] : null, default, default, news);
        }

        var grows = rates.Count == 1 ? Range(rates[0], years) : default;
        var byRule = demand.Reasons.Any(r => r.Rule == MarginByRule);
        return new UncertainDemand(demand, known[0], grows, byRule ? margin : default, news);
    }

    private static Triangular Range(GrowthRate rate, double years) =>
        new(rate.LengthPerYearLow * years, rate.LengthPerYearLikely * years, rate.LengthPerYearHigh * years);

    private static Finding OutOfOrder(GrowthRate rate) => new(
        "QTY-014", FindingLevel.Error,
        $"Growth rates of {rate.Type?.ToString() ?? "all types not named"} are out of order or below zero; the cost range leaves them out.",
        new FindingPlace(Field: "growth"), $"{rate.LengthPerYearLow}, {rate.LengthPerYearLikely}, {rate.LengthPerYearHigh}",
        "Give low ≤ likely ≤ high, and new distresses of 0 or more a year.");
}
