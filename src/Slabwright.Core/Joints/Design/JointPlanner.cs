using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;

namespace Slabwright.Core.Joints.Design;

/// <summary>
/// The Joints step in two halves: layouts of the lanes, which do not ask where repairs fall and feed the prices of the boundaries, and the
/// joints of the repairs once they are cut.
/// </summary>
public static class JointPlanner
{
    /// <summary>Designs the load transfer of every lane.</summary>
    /// <param name="road">The road.</param>
    /// <param name="rules">The rule set in force.</param>
    /// <param name="prices">The price list; the price of a drilled dowel weighs the alternatives.</param>
    /// <param name="settings">What the project says about its joints.</param>
    /// <returns>Designs in the order of the lanes, a lane with bad input left out; what was assumed, wrong or could not be met.</returns>
    public static (ImmutableArray<LaneJointDesign> Lanes, ImmutableArray<Finding> Findings) Lanes(
        Road road, RuleSet rules, PriceList prices, JointSettings settings)
    {
        var inputs = new JointInputs(settings, road.Climate);
        var findings = new List<Finding>(SettingsChecks.Of(settings));
        var price = prices.Find(PayRole.DrilledDowel)?.UnitPrice ?? 0;
        if (price <= 0)
        {
            findings.Add(new("JNT-003", FindingLevel.Warning, "The price list has no price for drilled dowels, so layouts are compared by steel and holes alone.",
                new FindingPlace(Field: "DrilledDowel"), null, "Add a pay item with the role drilled dowel and a price."));
            price = 1;
        }

        if (!JointChecks.Usable(findings)) return ([], [.. findings]);
        var sound = Sound(road, rules, inputs, findings);
        var shelf = new PlateShelf();
        shelf.Fill(sound.SelectMany(s => s.BuildUps.Select(c => (c, BarCandidates.All(s.BuildUps[0], rules.Joints, inputs)))));
        var lanes = ImmutableArray.CreateBuilder<LaneJointDesign>();
        foreach (var (lane, buildUps) in sound)
        {
            var design = JointDesigner.Design(buildUps, rules.Joints, inputs, price, lane, shelf);
            lanes.Add(design);
            findings.AddRange(LaneFindings(design, inputs));
        }

        return (lanes.ToImmutable(), [.. findings.Distinct(), .. inputs.Notes()]);
    }

    /// <summary>Lanes whose every build-up can be designed; what is wrong with the others goes to the findings.</summary>
    private static List<(int Lane, ImmutableArray<JointConditions> BuildUps)> Sound(
        Road road, RuleSet rules, JointInputs inputs, List<Finding> findings)
    {
        var sound = new List<(int, ImmutableArray<JointConditions>)>();
        foreach (var lane in road.Lanes)
        {
            var buildUps = JointConditionsBuilder.OfLane(road, lane, rules, inputs, findings);
            var bad = buildUps.SelectMany(c => JointChecks.Conditions(c)).Select(f => f with { Place = f.Place with { Lane = lane.Number } }).ToArray();
            findings.AddRange(bad);
            if (!buildUps.IsEmpty && JointChecks.Usable(bad)) sound.Add((lane.Number, buildUps));
        }

        return sound;
    }

    /// <summary>The bars of each lane as the boundaries need them.</summary>
    /// <param name="road">The road.</param> <param name="rules">The rule set.</param> <param name="settings">The project's settings.</param>
    /// <param name="lanes">The layouts.</param>
    public static ImmutableDictionary<int, LaneBars> Bars(
        Road road, RuleSet rules, JointSettings settings, ImmutableArray<LaneJointDesign> lanes)
    {
        var upTo = settings.TieOneEnd ? rules.Joints.OneEndTiedUpTo?.Value ?? 0 : 0;
        return lanes.ToImmutableDictionary(d => d.Lane, d =>
        {
            var ties = TiedEnds.Layout(road.LaneByNumber(d.Lane), d.Conditions.ClearLeft, d.Conditions.ClearRight, d.Conditions.Thickness, rules.Joints);
            return new LaneBars(d.Used.Layout?.Bars ?? 0, ties.Bars, upTo);
        });
    }

    /// <summary>Designs every transverse joint of every repair.</summary>
    /// <param name="road">The road.</param>
    /// <param name="rules">The rule set in force.</param>
    /// <param name="settings">The project's settings.</param>
    /// <param name="cores">Cores taken; bars keep clear of their holes.</param>
    /// <param name="lanes">The layouts of <see cref="Lanes"/>.</param>
    /// <param name="repairs">The repairs, cut with <see cref="Bars"/>.</param>
    public static JointPlan Joints(
        Road road, RuleSet rules, JointSettings settings, IReadOnlyList<CoreSample> cores, ImmutableArray<LaneJointDesign> lanes,
        IReadOnlyList<Repair> repairs)
    {
        var ends = new RepairJoints(road, rules, new JointInputs(settings, road.Climate), new BarClearance(cores, settings.KeepOuts), lanes);
        var joints = repairs.SelectMany(ends.Of).ToImmutableArray();
        return new JointPlan { Lanes = lanes, Joints = joints, Findings = [.. ends.Findings] };
    }

    private static IEnumerable<Finding> LaneFindings(LaneJointDesign design, JointInputs inputs)
    {
        var used = design.Used;
        if (design.Winner is null)
        {
            var broken = used.Checks.Where(c => !c.Holds).OrderByDescending(c => c.Use);
            yield return new("JNT-020", FindingLevel.Warning,
                $"No layout keeps every limit in lane {design.Lane}; {JointWords.Of(used.Layout)} comes nearest and is used.",
                new FindingPlace(Lane: design.Lane), string.Join("; ", broken.Select(WinnerReasons.Check)),
                "Allow larger bars in joints.diameters, check concrete strength, k and traffic, or change the limit in the rule set.",
                Source: used.Governing.Source.ToString());
        }

        if (used.Layout is { } bars && (!AlternativeJudge.SameSize(bars.Diameter, inputs.Costs.Diameter) || Math.Abs(bars.Length - inputs.Costs.Length) > 0.01))
        {
            yield return new("JNT-021", FindingLevel.Note,
                $"The bars of lane {design.Lane} are not of the size the price of the list stands for.", new FindingPlace(Lane: design.Lane, Field: "DrilledDowel"),
                $"{JointWords.Bar(bars.Diameter)} by {JointWords.Bar(bars.Length)}",
                "Ask prices for this size and put them in the price list; the bid pays the list's price for each bar.",
                $"{JointWords.Bar(inputs.Costs.Diameter)} by {JointWords.Bar(inputs.Costs.Length)}");
        }
    }
}
