using System.CommandLine;
using System.Globalization;
using Slabwright.Cli.Output;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;

namespace Slabwright.Cli.Commands;

/// <summary><c>slabwright boundaries FOLDER</c>: the repairs, what each rule costs, the cost curve, large removals.</summary>
internal static class BoundariesCommand
{
    public static Command Build()
    {
        var command = new Command("boundaries", "Finds the repair boundaries of least cost and what each rule costs.");
        var door = new ProjectDoor(command);
        command.SetAction((parsed, cancel) =>
        {
            var report = door.ReportFor(parsed);
            var read = door.Read(parsed);
            if (read.Project is not { } project) return Task.FromResult(report.End("boundaries", ExitCode.InputUnusable, null, read.Findings));
            var plan = Planner.Plan(project, PlanOptions.Whole with { Range = false }, cancel: cancel);
            ShowRepairs(report, project, plan.Boundaries);
            ShowStudies(report, project, plan.Boundaries);
            return Task.FromResult(report.End("boundaries", Endings.Of(plan.Findings), plan.Boundaries, plan.Findings));
        });
        return command;
    }

    private static void ShowRepairs(Report report, Project project, BoundaryResult result)
    {
        var length = project.UnitSystem == UnitSystem.UsCustomary ? Units.Foot : Units.Metre;
        var table = new TextTable("repair", "lane>", "from", "to", "length>", "kind", "start", "end", "inside>", "distresses");
        foreach (var r in result.Repairs)
        {
            table.Add(r.Id, r.Lane.ToString(CultureInfo.InvariantCulture), project.Road.Stationing.Format(r.From), project.Road.Stationing.Format(r.To),
                length.Format(r.Length), TradeWords.Of(r.Kind), TradeWords.Of(r.Start.Design), TradeWords.Of(r.End.Design),
                r.Intermediate.Length.ToString(CultureInfo.InvariantCulture), string.Join(' ', r.DistressIds));
        }

        report.Table(table);
        report.Line();
    }

    private static void ShowStudies(Report report, Project project, BoundaryResult result)
    {
        var currency = project.Prices.Currency;
        report.Line($"Least cost {Money(result.Cost)} {currency}, proven over {result.Clusters} clusters. What each rule adds:");
        var rules = new TextTable("rule", $"adds, {currency}>", "sentence");
        foreach (var rule in result.RuleCosts) rules.Add(rule.Rule, Money(rule.Cost), rule.Sentence);
        report.Table(rules);
        report.Line();

        report.Line("From spot repairs to full replacement:");
        var curve = new TextTable("share replaced>", "repairs>", $"cost, {currency}>");
        foreach (var point in result.CostCurve)
            curve.Add(point.ShareReplaced.ToString("P1", CultureInfo.InvariantCulture), point.Repairs.ToString("N0", CultureInfo.InvariantCulture), Money(point.Cost));
        report.Table(curve);
        report.Line();

        report.Line("Where one large removal is cheaper or nearly so:");
        var large = new TextTable("lane>", "from", "to", $"separate, {currency}>", $"one removal, {currency}>", "in the plan");
        foreach (var run in result.LargeRemovals)
        {
            large.Add(run.Lane.ToString(CultureInfo.InvariantCulture), project.Road.Stationing.Format(run.From), project.Road.Stationing.Format(run.To),
                Money(run.SpotCost), Money(run.RunCost), run.Chosen ? "one removal" : "separate");
        }

        report.Table(large);
    }

    private static string Money(decimal value) => value.ToString("N0", CultureInfo.InvariantCulture);
}
