using System.CommandLine;
using System.Globalization;
using Slabwright.Cli.Output;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Survey;
using Slabwright.Data.Import;

namespace Slabwright.Cli.Commands;

/// <summary><c>slabwright survey FOLDER [--with FILE]</c>: what the survey says, or what a corrected file changes.</summary>
internal static class SurveyCommand
{
    public static Command Build()
    {
        var with = new Option<string?>("--with") { Description = "A corrected or newer survey file to compare with the folder's." };
        var command = new Command("survey", "Reads the survey: counts, age, growth, and every finding with its mend.") { with };
        var door = new ProjectDoor(command);
        command.SetAction((parsed, cancel) =>
        {
            var report = door.ReportFor(parsed);
            var read = door.Read(parsed);
            if (read.Project is not { } project) return Task.FromResult(report.End("survey", ExitCode.InputUnusable, null, read.Findings));
            return Task.FromResult(parsed.GetValue(with) is { } file
                ? Compare(report, project, file, door.TodayOf(parsed), cancel)
                : Show(report, project));
        });
        return command;
    }

    private static int Show(Report report, Project project)
    {
        var survey = project.Survey;
        var table = new TextTable("type", "none>", "low>", "moderate>", "high>", "all>");
        foreach (var type in survey.Distresses.GroupBy(d => d.Type).OrderBy(g => g.Key))
            table.Add([TradeWords.Of(type.Key), .. Enum.GetValues<Severity>().Select(s => Count(type.Count(d => d.Severity == s))), Count(type.Count())]);
        report.Table(table);
        report.Line($"{Count(survey.Distresses.Length)} distresses and {Count(survey.Cores.Length)} cores on {Count(project.Road.Lanes.Sum(l => l.SlabCount))} slabs");

        var years = Planner.YearsToWork(project);
        var growth = survey.Distresses.Select(d => SurveyGrowth.Of(d, project.Settings.WorkDay, project.Settings.Growth)).OfType<DistressGrowth>().ToArray();
        var fresh = SurveyGrowth.NewBy(survey, project.Settings.WorkDay, project.Settings.Growth);
        if (survey.NewestDay is { } day)
            report.Line(string.Create(CultureInfo.InvariantCulture, $"Newest survey day {day:yyyy-MM-dd}; {years:0.00} years before the first day of work"));
        if (growth.Length > 0)
        {
            report.Line(string.Create(CultureInfo.InvariantCulture,
                $"Growth until then: {growth.Length} distresses lengthen by {Range(project, growth.Select(g => g.EachEnd).ToArray())} at each end; {fresh.Sum(n => n.Expected):0.0} new ones expected"));
        }

        var result = new { survey.Distresses, survey.Cores, yearsToWork = years, growth, newDistresses = fresh };
        return report.End("survey", Endings.Of(project.Findings), result, project.Findings);
    }

    private static int Compare(Report report, Project project, string file, DateOnly today, CancellationToken cancel)
    {
        var options = new SurveyImportOptions { UnitSystem = project.UnitSystem, Today = today };
        var merge = SurveyMerge.Apply(project.Survey, SurveyImporter.Import(file, project.Road, options, cancel));
        report.Line($"{Count(merge.Added.Length)} new, {Count(merge.Changed.Length)} changed, {Count(merge.Removed.Length)} gone, {Count(merge.Unchanged)} as before");
        var table = new TextTable("what", "distress", "lane>", "station", "type", "severity");
        foreach (var d in merge.Added) Add("new", d);
        foreach (var c in merge.Changed)
        {
            Add("before", c.Before);
            Add("after", c.After);
        }

        foreach (var d in merge.Removed) Add("gone", d);
        report.Table(table);
        var findings = merge.Survey.Findings;
        return report.End("survey", Endings.Of(findings), new { merge.Added, merge.Changed, merge.Removed, merge.Unchanged }, findings);

        void Add(string what, Distress d) => table.Add(
            what, d.Id, Count(d.Lane), project.Road.Stationing.Format(d.From), TradeWords.Of(d.Type), TradeWords.Of(d.Severity));
    }

    private static string Range(Project project, GrowthRange[] ends)
    {
        var unit = project.UnitSystem == Core.Measures.UnitSystem.UsCustomary ? Core.Measures.Units.Inch : Core.Measures.Units.Millimetre;
        return $"{unit.Format(ends.Average(e => e.Low), 1)} (low), {unit.Format(ends.Average(e => e.Likely), 1)} (likely), {unit.Format(ends.Average(e => e.High), 1)} (high) on average";
    }

    private static string Count(int number) => number.ToString("N0", CultureInfo.InvariantCulture);
}
