using System.Collections.Immutable;
using Slabwright.Core.Measures;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.Examples.Ltpp;

/// <summary>What one rule set called on one survey.</summary>
/// <param name="Observation">The survey and what followed.</param>
/// <param name="Slabs">Slabs of the section.</param>
/// <param name="FullDepthCalls">Distresses called for full-depth repair, slab replacement or a run.</param>
/// <param name="Types">Distress types among those calls.</param>
public sealed record Called(Observation Observation, int Slabs, int FullDepthCalls, ImmutableHashSet<DistressType> Types)
{
    public double PerHundredSlabs => 100.0 * FullDepthCalls / Slabs;

    public bool Worked => Observation.Event is not null;
}

/// <summary>Rule sets that make the same calls on these surveys, with the calls.</summary>
public sealed record SetCalls(ImmutableArray<string> RuleSets, IReadOnlyList<Called> Worked, IReadOnlyList<Called> Quiet)
{
    public string Name => string.Join(", ", RuleSets);
}

/// <summary>Hit rate against the window for the last survey.</summary>
public sealed record WindowScore(int Months, Share Hits);

/// <summary>Everything the report prints.</summary>
public sealed record ComparisonResult(
    int Sections,
    int Surveys,
    int Events,
    int WithoutSlabCount,
    IReadOnlyList<SetCalls> Sets,
    IReadOnlyList<WindowScore> Windows,
    IReadOnlyList<(string Sets, IReadOnlyList<Called> Calls)> AllSurveys,
    IReadOnlyList<(Called Call, double NewPatches)> Amounts);

/// <summary>Runs the treatment rules on the surveys and sets the calls beside what was done.</summary>
public static class Comparison
{
    /// <summary>Longest time from survey to work, months.</summary>
    public const int WindowMonths = 24;

    public static ComparisonResult Run(IReadOnlyList<SectionHistory> sections)
    {
        var worked = Sampling.Worked(sections, WindowMonths);
        var quiet = Sampling.Quiet(sections);
        var sets = Grouped(worked, quiet);
        var common = PublishedRuleSets.CommonPractice;
        var amounts = Amounts(sets.First(s => s.RuleSets.Contains(common.Id)).Worked);
        var all = Sampling.All(sections, WindowMonths);
        return new ComparisonResult(
            sections.Count,
            sections.Sum(s => s.Surveys.Count),
            sections.Sum(s => s.FullDepthEvents.Count()),
            worked.Concat(quiet).Count(o => SurveyMapping.Map(o.Section, o.Survey) is null),
            sets,
            [.. new[] { 6, 12, 24, 36 }.Select(m => Window(sections, common, m))],
            [.. sets.Select(s => (s.Name, (IReadOnlyList<Called>)Calls(all, PublishedRuleSets.Find(s.RuleSets[0])!)))],
            amounts);
    }

    /// <summary>Calls of every published set, sets with the same calls together.</summary>
    private static List<SetCalls> Grouped(List<Observation> worked, List<Observation> quiet) =>
        [.. PublishedRuleSets.All
            .Select(set => (set.Id, Worked: Calls(worked, set), Quiet: Calls(quiet, set)))
            .GroupBy(s => string.Join(' ', s.Worked.Concat(s.Quiet).Select(c => c.FullDepthCalls)))
            .Select(g => new SetCalls([.. g.Select(s => s.Id)], g.First().Worked, g.First().Quiet))];

    private static WindowScore Window(IReadOnlyList<SectionHistory> sections, RuleSet set, int months)
    {
        var calls = Calls(Sampling.Worked(sections, months), set);
        return new WindowScore(months, Statistics.Wilson(calls.Count(c => c.FullDepthCalls > 0), calls.Count));
    }

    private static List<Called> Calls(IEnumerable<Observation> observations, RuleSet set) =>
        [.. observations.Select(o => Call(o, set)).OfType<Called>()];

    private static Called? Call(Observation observation, RuleSet set)
    {
        if (SurveyMapping.Map(observation.Section, observation.Survey) is not { } mapped) return null;
        var decisions = TreatmentRules.Decide(mapped.Road, mapped.Survey, set, [], UnitSystem.Si).Decisions;
        var fullDepth = decisions.Zip(mapped.Survey.Distresses)
            .Where(p => p.First.Treatment >= Treatment.FullDepthRepair).Select(p => p.Second.Type).ToList();
        return new Called(observation, mapped.Road.Lanes[0].SlabCount, fullDepth.Count, [.. fullDepth]);
    }

    /// <summary>
    /// Concrete patches found by the first survey after the work beyond those found before it, where the section was seen again within the
    /// window, bare and before further full-depth work.
    /// </summary>
    private static List<(Called Call, double NewPatches)> Amounts(IReadOnlyList<Called> worked)
    {
        var amounts = new List<(Called Call, double NewPatches)>();
        foreach (var call in worked)
        {
            var (section, before, work) = (call.Observation.Section, call.Observation.Survey, call.Observation.Event!);
            var next = section.FullDepthEvents.FirstOrDefault(e => e.Day > work.Day)?.Day ?? DateOnly.MaxValue;
            var after = section.Surveys.FirstOrDefault(
                s => s.Day >= work.Day && s.Day <= work.Day.AddMonths(WindowMonths) && s.Day < next);
            if (after is not null && !work.IsOverlay) amounts.Add((call, Patches(after) - Patches(before)));
        }

        return amounts;
    }

    private static double Patches(SectionSurvey survey) =>
        survey.Value("PATCH_RIGID_NO_L") + survey.Value("PATCH_RIGID_NO_M") + survey.Value("PATCH_RIGID_NO_H");
}
