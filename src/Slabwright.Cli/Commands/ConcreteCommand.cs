using System.Collections.Immutable;
using System.CommandLine;
using Slabwright.Cli.Output;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Handbook;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;
using Slabwright.Core.RuleSets;
using Slabwright.Data.Folder;
using Slabwright.Data.Weather;

namespace Slabwright.Cli.Commands;

/// <summary>
/// <c>slabwright concrete FOLDER</c>: which mix opens by the deadline on which night; with readings, the night itself;
/// <c>slabwright concrete --by-hand</c>: the same without a project.
/// </summary>
internal static class ConcreteCommand
{
    private const string Verb = "concrete";

    public static Command Build()
    {
        var command = new Command(Verb, "Tells which mix opens by the deadline, when the last truck must come, and what if; follows a night by its readings.");
        var door = new ProjectDoor(command, folderOptional: true);
        var options = new ConcreteOptions(command, door);
        command.SetAction((parsed, cancel) => Task.FromResult(options.IsByHand(parsed) ? ByHand(door, options, parsed, cancel) : OfProject(door, options, parsed, cancel)));
        return command;
    }

    private static int OfProject(ProjectDoor door, ConcreteOptions options, ParseResult parsed, CancellationToken cancel)
    {
        var report = door.ReportFor(parsed);
        var read = door.Read(parsed);
        if (read.Project is not { } found) return report.End(Verb, ExitCode.InputUnusable, null, read.Findings);
        var asked = options.Questions(parsed);
        var questions = NightQuestions.Read(asked, found.UnitSystem);
        var findings = questions.Findings.ToBuilder();
        var project = ConcreteAsked.Of(found, options, parsed, findings);
        if (findings.Any(f => f.Level == FindingLevel.Error)) return report.End(Verb, ExitCode.Usage, null, findings.ToImmutable());

        var words = new ConcreteWords(project.UnitSystem, project.Prices.Currency);
        var repairs = Planner.Plan(project, new PlanOptions { Studies = false, Range = false, Concrete = false }, cancel: cancel).Boundaries.Repairs;
        var study = Planner.ConcreteStudyOf(project, repairs);
        ImmutableArray<Finding> all = [.. project.Findings, .. findings, .. study.Findings];
        if (options.IsNight(parsed)) return ConcreteNight.Run(report, options, parsed, study, words, all);
        if (options.ChecksCurve(parsed)) return ConcreteCurves.Run(report, study, words, all);

        var plan = ConcretePlanner.Plan(study, cancel);
        all = [.. project.Findings, .. findings, .. plan.Findings];
        report.Line($"{project.Name}: {ConcreteWords.Scope(study)}, slab {words.Thickness(plan.Thickness)} thick, weather of {study.Job.Weather?.Name ?? "nowhere"}");
        report.Line();
        return Show(report, options, parsed, study, plan, questions, words, all, null, cancel);
    }

    private static int ByHand(ProjectDoor door, ConcreteOptions options, ParseResult parsed, CancellationToken cancel)
    {
        var (report, system) = (door.ReportFor(parsed), options.SystemOf(parsed));
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var files = Files(door, options, parsed, findings);
        if (files is null) return report.End(Verb, ExitCode.InputUnusable, null, findings.ToImmutable());
        var questions = NightQuestions.Read(options.Questions(parsed), system);
        findings.AddRange(questions.Findings);
        var hand = ConcreteByHand.Evaluate(options.HandTexts(parsed), system, files, cancel);
        findings.AddRange(hand.Findings);
        if (hand.Study is not { } study || questions.Findings.Length > 0) return report.End(Verb, ExitCode.Usage, null, findings.ToImmutable());
        var words = new ConcreteWords(system, "");
        report.Line($"By hand: {ConcreteWords.Scope(study)}, slab {words.Thickness(hand.Plan.Thickness)} thick, {study.Job.Weather?.Name}");
        report.Line();
        var code = Show(report, options, parsed, study, hand.Plan, questions, words, findings.ToImmutable(), hand, cancel);
        return code;
    }

    private static int Show(
        Report report, ConcreteOptions options, ParseResult parsed, ConcreteStudy study, ConcretePlan plan, AskedQuestions questions, ConcreteWords words,
        ImmutableArray<Finding> findings, HandConcrete? hand, CancellationToken cancel)
    {
        var details = hand?.Details ?? [.. plan.MixNights.Select(row => NightDetail.Of(study, row))];
        IEnumerable<(string, NightChange)> changes = !questions.Questions.IsEmpty ? questions.Changes : options.AsksUsual(parsed) || hand is not null ? ConcreteWhatIfText.Usual : [];
        var changed = ConcreteWhatIfText.Of(study, plan, changes, cancel);
        ConcretePlanText.Write(report, plan, details, words, () => ConcreteWhatIfText.Write(report, changed));
        if (hand is not null)
        {
            HandConcreteText.Mixes(report, hand, words);
            HandConcreteText.Inputs(report, hand);
        }

        ConcretePlanText.Cautions(report);
        foreach (var note in findings.Where(f => f.Level == FindingLevel.Note && f.Code.StartsWith("CON", StringComparison.Ordinal))) ConcretePlanText.Wrapped(report, FindingText.Of(note), "");
        return report.End(Verb, Endings.Of(findings), ConcreteDocument.Of(plan, details, changed, hand), findings);
    }

    /// <summary>Weather and mixes from files; null where one cannot be used.</summary>
    private static ConcreteFiles? Files(ProjectDoor door, ConcreteOptions options, ParseResult parsed, ImmutableArray<Finding>.Builder findings)
    {
        var files = ConcreteFiles.None;
        if (door.RuleSetOf(parsed) is { } id)
        {
            if (PublishedRuleSets.Find(id) is not { } set)
            {
                findings.Add(new("JOB-001", FindingLevel.Error, "There is no rule set of this name.", new(Field: "rule-set"), id, "Use one of: " + string.Join(", ", PublishedRuleSets.All.Select(s => s.Id)) + "."));
                return null;
            }

            files = files with { Rows = set.Opening };
        }

        if (options.Weather(parsed) is { } path)
        {
            var read = WeatherFile.Read(path);
            findings.AddRange(read.Findings);
            if (read.Series is null) return null;
            files = files with { Weather = read.Series };
        }

        if (options.Mixes(parsed) is not { } folder) return files;
        var mixes = MixFolder.Read(folder);
        findings.AddRange(mixes.Findings);
        return mixes.Mixes.IsEmpty ? null : files with { Mixes = mixes.Mixes, Breaks = mixes.Breaks, HeatCurves = mixes.HeatCurves };
    }
}
