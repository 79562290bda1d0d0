using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Joints.Design;

/// <summary>Says why a lane's layout won.</summary>
internal static class WinnerReasons
{
    public static ImmutableArray<Reason> Of(
        ImmutableArray<JointAlternative> ordered, JointAlternative? winner, JointAlternative used, IReadOnlyList<JointConditions> buildUps,
        JointLimits limits)
    {
        var reasons = ImmutableArray.CreateBuilder<Reason>();
        var source = new SourceRef("joints", "least cost under every limit", SourceStatus.Computed);
        var passing = ordered.Count(a => a.Passes);
        reasons.Add(winner is null
            ? new("no layout passes", $"None of {ordered.Length} alternatives keeps every limit; {JointWords.Of(used.Layout)} comes nearest and is drawn.",
                source, Inputs(used))
            : new("cheapest that passes", $"{Capital(JointWords.Of(winner.Layout))}: the cheapest of {passing} alternatives that keep every limit, out of "
                + $"{ordered.Length} looked at.", source, Inputs(winner)));
        reasons.Add(new("governing limit", $"The limit it comes nearest to is {Check(used.Governing)}.", used.Governing.Source,
            [new("build-up", used.BuildUp)]));
        if (winner is not null && Cheaper(ordered, winner) is { } cheaper)
        {
            reasons.Add(new("cheaper ones fail", $"The next cheaper, {JointWords.Of(cheaper.Layout)}, fails {Check(cheaper.Governing)}.",
                cheaper.Governing.Source, [new("cost a joint", Money(cheaper.CostPerJoint))]));
        }

        reasons.Add(OneLayout(buildUps));
        reasons.Add(Traffic(used, buildUps, limits));
        return reasons.ToImmutable();
    }

    /// <summary>A check in words, e.g. <c>bearing on the concrete: 2,010 psi (13.9 MPa) of at most 3,333 psi (23 MPa)</c>.</summary>
    public static string Check(LimitCheck check)
    {
        var side = check.Sense == LimitSense.AtMost ? "at most" : "at least";
        return $"{check.Name}: {JointWords.Of(check.Value, check.Units)} of {side} {JointWords.Of(check.Limit, check.Units)}";
    }

    private static JointAlternative? Cheaper(ImmutableArray<JointAlternative> ordered, JointAlternative winner) =>
        ordered.LastOrDefault(a => a.CostPerJoint < winner.CostPerJoint && a.Layout is not null);

    private static ImmutableArray<ReasonInput> Inputs(JointAlternative a) =>
    [
        new("cost a joint", Money(a.CostPerJoint)),
        new("deflection transfer", JointWords.Of(a.DeflectionTransfer, JointWords.Share)),
        new("bearing", JointWords.Of(a.Bearing, JointWords.Stress)),
        new("faulting, for ranking", JointWords.Of(a.Faulting, JointWords.Small)),
    ];

    private static Reason OneLayout(IReadOnlyList<JointConditions> buildUps) => new("one layout a lane",
        buildUps.Count == 1
            ? "The lane has one build-up."
            : $"One layout for all {buildUps.Count} build-ups of the lane: the crew keeps one set-up of the gang drill and one size of bar.",
        SourceRef.CommonPractice, [.. buildUps.Select(c => new ReasonInput("build-up", c.BuildUp))]);

    private static Reason Traffic(JointAlternative used, IReadOnlyList<JointConditions> buildUps, JointLimits limits)
    {
        var c = buildUps.First(b => b.BuildUp == used.BuildUp);
        var heavy = AlternativeJudge.Heavy(c, limits);
        var sentence = limits.HeavyTrafficFrom is { } from
            ? $"{JointWords.Count(c.TrucksPerDay)} trucks a day in the lane: {(heavy ? "heavy" : "not heavy")}, since heavy begins at {JointWords.Count(from.Value)}."
            : $"{JointWords.Count(c.TrucksPerDay)} trucks a day in the lane.";
        return new("traffic", sentence, limits.HeavyTrafficFrom?.Source ?? SourceRef.Project,
        [
            new("equivalent axles a day", JointWords.Count(c.EquivalentAxlesPerDay)),
            new("design years", c.DesignYears.ToString("0.#", CultureInfo.InvariantCulture)),
        ]);
    }

    private static string Money(decimal amount) => amount.ToString("N2", CultureInfo.InvariantCulture);

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
