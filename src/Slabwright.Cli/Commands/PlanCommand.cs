using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Slabwright.Cli.Output;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;
using Slabwright.Core.Treatments;

namespace Slabwright.Cli.Commands;

/// <summary><c>slabwright plan FOLDER --out DIR</c>: the whole job.</summary>
internal static class PlanCommand
{
    public static Command Build()
    {
        var output = SheetWriting.OutOption();
        var command = new Command("plan", "Plans a project and writes all sheets: survey in, priced repair plan out.") { output };
        var door = new ProjectDoor(command, withRange: true);
        command.SetAction((parsed, cancel) => Task.FromResult(Run(door, parsed, parsed.GetRequiredValue(output), cancel)));
        return command;
    }

    private static int Run(ProjectDoor door, ParseResult parsed, string folder, CancellationToken cancel)
    {
        var report = door.ReportFor(parsed);
        report.Progress("reading " + door.FolderOf(parsed));
        var read = door.Read(parsed);
        if (read.Project is not { } project) return report.End("plan", ExitCode.InputUnusable, null, read.Findings);

        var options = door.RangeOf(parsed) ? PlanOptions.Whole : PlanOptions.Whole with { Range = false };
        var plan = Planner.Plan(project, options, step => report.Progress($"[{step.Number}/{step.Of}] {step.Step}"), cancel);
        report.Progress("sheets");
        var files = SheetWriting.Write(project, plan, folder, door.TodayOf(parsed));
        Summarise(report, project, plan);
        report.Line($"{files.Length} files in {folder}");
        return report.End("plan", Endings.Of(plan.Findings), ResultOf(project, plan, files), plan.Findings);
    }

    /// <summary>The job in short, for people.</summary>
    private static void Summarise(Report report, Project project, RepairPlan plan)
    {
        var area = project.UnitSystem == UnitSystem.UsCustomary ? Units.SquareYard : Units.SquareMetre;
        report.Line(project.Name);
        report.Line($"{Number(project.Survey.Distresses.Length)} distresses, {Number(project.Survey.Cores.Length)} cores, rule set '{project.RuleSet.Name}'");
        var table = new TextTable("work", "places>", $"area, {area}>", $"cost, {project.Prices.Currency}>");
        foreach (var kind in plan.Quantities.ByKind)
            table.Add(kind.Name, Number(kind.Count), area.FromBase(kind.Area).ToString("N1", CultureInfo.InvariantCulture), Money(kind.Amount));
        report.Table(table);
        report.Line($"Bid total {Money(plan.Quantities.Schedule.Total)} {project.Prices.Currency}");
        if (plan.Quantities.Range is { } range)
            report.Line($"Range of cost: P10 {Money(range.P10)}, P50 {Money(range.P50)}, P90 {Money(range.P90)} {project.Prices.Currency} ({range.Trials} trials, seed {range.Seed})");
        report.Line($"Boundaries: least cost proven over {Number(plan.Boundaries.Clusters)} clusters; rule sets disagree on {Number(plan.Disagreements.Length)} distresses");
        report.Line($"Findings: {Number(plan.Findings.Count(f => f.Level == FindingLevel.Error))} errors, "
            + $"{Number(plan.Findings.Count(f => f.Level == FindingLevel.Warning))} warnings, {Number(plan.Findings.Count(f => f.Level == FindingLevel.Note))} notes");
    }

    private static object ResultOf(Project project, RepairPlan plan, ImmutableArray<string> files) => new
    {
        project = project.Name,
        ruleSet = project.RuleSet.Id,
        distresses = project.Survey.Distresses.Length,
        decisions = Enum.GetValues<Treatment>().ToDictionary(t => TradeWords.Of(t), t => plan.Decisions.Count(d => d.Treatment == t)),
        repairs = plan.Boundaries.Repairs,
        surfaceWorks = plan.SurfaceWorks,
        boundaryCost = plan.Boundaries.Cost,
        bid = plan.Quantities.Schedule.Lines.Select(l => new { l.Item.Code, l.Name, unit = l.Item.Unit.Symbol, l.Measured, l.Pay, l.UnitPrice, l.Amount }),
        total = plan.Quantities.Schedule.Total,
        currency = project.Prices.Currency,
        range = plan.Quantities.Range is { } r ? new { r.P10, r.P50, r.P90, r.Mean, r.Trials, r.Seed } : null,
        disagreements = plan.Disagreements.Length,
        files,
    };

    private static string Number(int value) => value.ToString("N0", CultureInfo.InvariantCulture);

    private static string Money(decimal value) => value.ToString("N0", CultureInfo.InvariantCulture);
}
