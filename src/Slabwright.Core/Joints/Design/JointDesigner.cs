using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Joints.Design;

/// <summary>Chooses the dowels of one lane, or of one joint by hand.</summary>
public static class JointDesigner
{
    /// <summary>
    /// Holds every alternative against every limit on every build-up and takes the cheapest that passes on all of them; of equal cost the
    /// one that lasts longer, then the one with fewer bars.
    /// </summary>
    /// <param name="buildUps">The distinct build-ups of the lane, at least one; lane width and edges are those of the first.</param>
    /// <param name="limits">Limits of the rule set.</param>
    /// <param name="settings">What the project says; the defaults when null.</param>
    /// <param name="price">Price of one dowel drilled and anchored, in the currency of the price list.</param>
    /// <param name="lane">Lane number, as printed.</param>
    public static LaneJointDesign Design(
        IReadOnlyList<JointConditions> buildUps, JointLimits limits, JointSettings? settings = null, decimal price = 1, int lane = 1)
    {
        ArgumentOutOfRangeException.ThrowIfZero(buildUps.Count);
        var inputs = new JointInputs(settings ?? JointSettings.Default, buildUps[0].Climate);
        return Design(buildUps, limits, inputs, price, lane);
    }

    internal static LaneJointDesign Design(
        IReadOnlyList<JointConditions> buildUps, JointLimits limits, JointInputs inputs, decimal price, int lane, PlateShelf? shelf = null)
    {
        var candidates = BarCandidates.All(buildUps[0], limits, inputs);
        shelf ??= new PlateShelf();
        shelf.Fill(buildUps.Select(c => (c, candidates)));
        var judges = buildUps.Select(c => new AlternativeJudge(c, limits, shelf.Of(c))).ToArray();
        var alternatives = candidates.Select(bars => Worst(judges, bars, Cost(bars, inputs.Costs, price))).ToArray();
        var ordered = alternatives.OrderBy(a => a.CostPerJoint).ThenByDescending(a => a.Life).ThenBy(a => a.Layout?.Bars ?? 0)
            .ThenBy(a => a.Layout?.Diameter ?? 0).ToImmutableArray();
        var winner = ordered.FirstOrDefault(a => a.Passes);
        var used = winner ?? Nearest(ordered);
        return new LaneJointDesign
        {
            Lane = lane,
            Conditions = buildUps.First(c => c.BuildUp == used.BuildUp),
            Alternatives = ordered,
            Winner = winner,
            Reasons = WinnerReasons.Of(ordered, winner, used, buildUps, limits),
        };
    }

    /// <summary>Cost of one joint's bars: bars times price times the share of this size.</summary>
    internal static decimal Cost(BarLayout? bars, BarCostShares shares, decimal price) => bars is null
        ? 0
        : Math.Round(bars.Bars * price * (decimal)shares.Of(bars.Diameter, bars.Length, bars.Embedment), 2);

    /// <summary>The alternative that comes nearest to keeping every limit: least worst overrun, then cheapest.</summary>
    internal static JointAlternative Nearest(IReadOnlyList<JointAlternative> alternatives) =>
        alternatives.OrderBy(a => a.Governing.Use).ThenBy(a => a.CostPerJoint).First();

    private static JointAlternative Worst(AlternativeJudge[] judges, BarLayout? bars, decimal cost) =>
        judges.Select(j => j.Judge(bars, cost)).OrderByDescending(a => a.Governing.Use).ThenByDescending(a => a.Checks.Sum(c => c.Use)).First();
}
