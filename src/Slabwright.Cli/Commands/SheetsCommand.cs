using System.CommandLine;
using Slabwright.Core.Job;

namespace Slabwright.Cli.Commands;

/// <summary><c>slabwright sheets FOLDER --out DIR</c>: the sheets without the summary.</summary>
internal static class SheetsCommand
{
    public static Command Build()
    {
        var output = SheetWriting.OutOption();
        var command = new Command("sheets", "Writes the sheets of a project.") { output };
        var door = new ProjectDoor(command, withRange: true);
        command.SetAction((parsed, cancel) =>
        {
            var report = door.ReportFor(parsed);
            var read = door.Read(parsed);
            if (read.Project is not { } project) return Task.FromResult(report.End("sheets", ExitCode.InputUnusable, null, read.Findings));
            var plan = Planner.Plan(project, PlanOptions.Whole with { Range = door.RangeOf(parsed) }, cancel: cancel);
            var files = SheetWriting.Write(project, plan, parsed.GetRequiredValue(output), door.TodayOf(parsed));
            foreach (var file in files) report.Line(file);
            return Task.FromResult(report.End("sheets", Endings.Of(plan.Findings), new { files }, plan.Findings));
        });
        return command;
    }
}
