using System.Collections.Immutable;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Boundaries;

/// <summary>The price list as whole-number rates for one lane.</summary>
internal sealed class LanePrices(PriceList prices, RuleSet rules, BoundaryOptions options)
{
    /// <summary>Money units of one base unit (m, m², m³ or each) of a role; 0 where the list does not pay it.</summary>
    public double Each(PayRole role) =>
        prices.Find(role) is { } item ? (double)item.UnitPrice / item.Unit.Factor * BoundaryProblem.MoneyPerUnit : 0;

    /// <summary>Money units a tick of length.</summary>
    public long Rate(PayRole role) => (long)Math.Round(Each(role) / Ticks.PerMetre);

    public long TieRate => (long)Math.Round(Each(PayRole.TieBar) / TieSpacing(rules.Joints) / Ticks.PerMetre);

    /// <summary>Length from which faces are tied; never where the rule set gives none.</summary>
    public long TieFrom => rules.Joints.TieLongitudinalFrom is { } from ? Ticks.FromMetres(from.Value) : long.MaxValue;

    /// <summary>Tie bar spacing, m; 30 in where the rule set ties a side but names no spacing.</summary>
    /// <remarks>Source of the 30 in: FHWA Concrete Pavement Preservation Guide (from memory).</remarks>
    public static double TieSpacing(JointLimits joints) => joints.TieBarSpacing is { Value: > 0 } spacing ? spacing.Value : 30 * 0.0254;

    public long Fixed(double width) => Whole(
        Each(PayRole.RepairSetUp) + 2 * width * (Each(PayRole.TransverseSawCut) + Each(PayRole.TransverseSeal)));

    public long DowelledEnd(Lane lane) => Whole(Bars(lane).Dowels * Each(PayRole.DrilledDowel));

    public long TiedEnd(Lane lane) => Whole(Bars(lane).TieBars * Each(PayRole.TieBar));

    public LaneBars Bars(Lane lane) => options.BarsOf(lane, rules.Joints);

    public long InnerJoint(Lane lane) => Whole(lane.Width * Each(PayRole.TransverseSeal)
        + (rules.Joints.DowelIntermediateJoints.Value ? Bars(lane).Dowels * Each(PayRole.BasketDowel) : 0));

    public long LiftCut(double width) => Whole(width * Each(PayRole.InternalSawCut));

    public long BaseConcrete(double width) =>
        Whole(width * options.LooseBaseShare * options.LooseBaseDepth * Each(PayRole.BaseConcrete) / Ticks.PerMetre);

    public long Open(LaneEdge edge) => edge switch
    {
        LaneEdge.Curb or LaneEdge.Unpaved => Rate(PayRole.EdgeForm),
        _ => Rate(PayRole.EdgeForm) + Rate(PayRole.ShoulderStrip),
    };

    public ImmutableArray<LengthClass> Classes(double width)
    {
        var item = prices.Find(PayRole.FullDepthArea);
        if (item is null) return [new LengthClass(0, 1)];
        if (item.SizeClasses.IsEmpty) return [new LengthClass(0, AreaRate(item, item.UnitPrice, width))];
        var classes = item.SizeClasses.Select((c, n) =>
            new LengthClass(n == 0 ? 0 : FirstLength(c.FromArea, width), AreaRate(item, c.UnitPrice, width)));
        return [.. classes];
    }

    public long LeastPayLength(double width) => prices.Find(PayRole.FullDepthArea) is { LeastPay: > 0 } item
        ? (long)Math.Ceiling(item.LeastPay * item.Unit.Factor / width * Ticks.PerMetre - 1e-6)
        : 0;

    /// <summary>Shortest length in ticks whose area reaches a class.</summary>
    private static long FirstLength(double area, double width) => (long)Math.Ceiling(area / width * Ticks.PerMetre - 1e-3);

    /// <summary>A removal that costs nothing would have no least length; one money unit a tick keeps repairs short.</summary>
    private static long AreaRate(PayItem item, decimal price, double width) =>
        Math.Max(1, Whole((double)price / item.Unit.Factor * BoundaryProblem.MoneyPerUnit * width / Ticks.PerMetre));

    private static long Whole(double value) => (long)Math.Round(value);
}
