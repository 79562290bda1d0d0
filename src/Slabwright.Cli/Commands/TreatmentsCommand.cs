using System.CommandLine;
using Slabwright.Cli.Output;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Treatments;

namespace Slabwright.Cli.Commands;

/// <summary><c>slabwright treatments FOLDER</c>: the decision for each distress and where rule sets disagree.</summary>
internal static class TreatmentsCommand
{
    public static Command Build()
    {
        var command = new Command("treatments", "Decides what each distress needs, with rule and source.");
        var door = new ProjectDoor(command);
        command.SetAction(parsed =>
        {
            var report = door.ReportFor(parsed);
            var read = door.Read(parsed);
            if (read.Project is not { } project) return report.End("treatments", ExitCode.InputUnusable, null, read.Findings);
            var treated = Planner.Treat(project);
            var disagreements = Disagreements.Find(project.Road, project.Survey, [project.RuleSet, .. project.OtherRuleSets]);
            Show(report, project, treated, disagreements);
            var findings = project.Findings.AddRange(treated.Findings);
            return report.End("treatments", Endings.Of(findings), new { treated.Decisions, disagreements }, findings);
        });
        return command;
    }

    private static void Show(Report report, Project project, TreatmentResult treated, IEnumerable<Disagreement> disagreements)
    {
        var distresses = project.Survey.Distresses.ToDictionary(d => d.Id, StringComparer.Ordinal);
        var table = new TextTable("distress", "lane>", "station", "type", "severity", "treatment", "rule", "source");
        foreach (var decision in treated.Decisions)
        {
            var d = distresses[decision.DistressId];
            var mark = decision.Override is null ? "" : " (override)";
            table.Add(d.Id, d.Lane.ToString(System.Globalization.CultureInfo.InvariantCulture), project.Road.Stationing.Format(d.From),
                TradeWords.Of(d.Type), TradeWords.Of(d.Severity), TradeWords.Of(decision.Treatment) + mark,
                decision.Reasons[0].Rule, decision.Reasons[0].Source.ToString());
        }

        report.Table(table);
        report.Line();
        report.Line("Where the rule sets disagree:");
        var split = new TextTable("distress", "calls");
        foreach (var one in disagreements)
            split.Add(one.DistressId, string.Join("; ", one.Calls.Select(c => $"{c.RuleSet}: {TradeWords.Of(c.Treatment)} ({c.Rule})")));
        report.Table(split);
    }
}
