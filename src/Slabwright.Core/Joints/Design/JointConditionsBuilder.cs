using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Joints.Design;

/// <summary>Turns road, rules and settings into what the joints of a lane have to live with.</summary>
public static class JointConditionsBuilder
{
    /// <summary>Conditions of one stretch of a lane, with a note for every default taken.</summary>
    /// <param name="road">The road.</param>
    /// <param name="lane">The lane.</param>
    /// <param name="section">A stretch of the lane with one build-up.</param>
    /// <param name="rules">The rule set; gives the distance from curbs and the least repair.</param>
    /// <param name="settings">What the project says.</param>
    public static (JointConditions Conditions, ImmutableArray<Finding> Findings) For(
        Road road, Lane lane, PavementSection section, RuleSet rules, JointSettings settings)
    {
        var inputs = new JointInputs(settings, road.Climate);
        var findings = new List<Finding>();
        var conditions = For(road, lane, section, rules, inputs, findings);
        return (conditions, [.. findings, .. inputs.Notes()]);
    }

    /// <summary>Conditions of every distinct build-up of a lane.</summary>
    internal static ImmutableArray<JointConditions> OfLane(Road road, Lane lane, RuleSet rules, JointInputs inputs, List<Finding> findings)
    {
        var all = lane.Sections.Where(s => s.To > lane.From && s.From < lane.To)
            .Select(s => For(road, lane, s, rules, inputs, findings));
        return [.. all.DistinctBy(c => (c.Thickness, c.Base, c.OldSlab, c.OuterEdge))];
    }

    internal static JointConditions For(
        Road road, Lane lane, PavementSection section, RuleSet rules, JointInputs inputs, List<Finding> findings)
    {
        var repair = rules.Boundaries.LeastLength.Value;
        var slab = LongSlab(lane, section);
        var traffic = LaneTraffic.Of(road, lane, section.Thickness, inputs, findings);
        var (coldest, hottest) = (inputs.Coldest, inputs.Hottest);
        return new JointConditions
        {
            Thickness = section.Thickness,
            LaneWidth = lane.Width,
            OldSlab = slab,
            Repair = repair,
            Modulus = inputs.Modulus,
            Poisson = inputs.Poisson,
            Strength = inputs.Strength,
            Rupture = inputs.Rupture,
            Reaction = inputs.Reaction(section.Base),
            Expansion = inputs.Expansion,
            Base = section.Base,
            Drainage = inputs.Drainage,
            Climate = road.Climate,
            Temperatures = (coldest, hottest),
            DowelSupport = inputs.DowelSupport,
            SteelModulus = inputs.SteelModulus,
            JointWidth = JointWidth(section.Base, slab, repair, inputs, hottest - coldest),
            OuterEdge = OuterEdge(lane),
            Traffic = traffic.Axles,
            EquivalentAxlesPerDay = traffic.Equivalent,
            Growth = traffic.Growth,
            DesignYears = inputs.DesignYears,
            BuildUp = $"{Units.Inch.Format(section.Thickness)} ({Units.Millimetre.Format(section.Thickness, 0)}) on {TradeWords.Of(section.Base)} base, "
                + $"slabs up to {JointWords.Long(slab)}",
            TrucksPerDay = traffic.Trucks,
            TyrePressure = inputs.TyrePressure,
            ClearLeft = Clear(lane.LeftEdge, rules.Joints, inputs),
            ClearRight = Clear(lane.RightEdge, rules.Joints, inputs),
        };
    }

    /// <summary>
    /// Opening when the slabs are coldest: half of each slab beside the joint moves, over half the year's range of slab temperature (concrete
    /// set midway) and the drying shrinkage.
    /// </summary>
    private static double JointWidth(BaseKind kind, double slab, double repair, JointInputs inputs, double range) => JointMovement.Opening(
        Restraint(kind), (slab + repair) / 2, inputs.Expansion, Math.Max(0, range) / 2, inputs.Shrinkage);

    /// <summary>Share of free movement that happens: 0.65 on stabilised base, 0.80 on granular base.</summary>
    /// <remarks>Source: FHWA pavement notebook p. 3.3.7 for 0.80; AASHTO 1993 for 0.65 (from memory).</remarks>
    internal static double Restraint(BaseKind kind) => Stabilised(kind) ? 0.65 : 0.80;

    internal static bool Stabilised(BaseKind kind) => kind is BaseKind.CementTreated or BaseKind.AsphaltTreated;

    /// <summary>The length nine in ten slabs of the stretch do not exceed: a bridge or a gap in the survey does not set the joint's opening.</summary>
    private static double LongSlab(Lane lane, PavementSection section)
    {
        var lengths = new List<double>();
        for (var n = 1; n < lane.Joints.Length; n++)
        {
            var (from, to) = (lane.Joints[n - 1].At, lane.Joints[n].At);
            if (to > section.From && from < section.To) lengths.Add(to - from);
        }

        lengths.Sort();
        return lengths.Count == 0 ? section.To - section.From : lengths[(int)Math.Ceiling(0.9 * lengths.Count) - 1];
    }

    /// <summary>The worse of the two edges: wheels come nearest to an edge that is free.</summary>
    private static LaneEdge OuterEdge(Lane lane) => Free(lane.RightEdge) || !Free(lane.LeftEdge) ? lane.RightEdge : lane.LeftEdge;

    private static bool Free(LaneEdge edge) => edge is not (LaneEdge.TiedLane or LaneEdge.TiedConcreteShoulder);

    private static double Clear(LaneEdge edge, JointLimits limits, JointInputs inputs) => edge == LaneEdge.Curb && limits.ClearOfCurb is { } clear
        ? Math.Max(BarRow.EdgeDistance, clear.Value - inputs.CurbWidth)
        : BarRow.EdgeDistance;
}
