using System.CommandLine;
using System.Globalization;
using Slabwright.Cli.Output;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;
using Slabwright.Core.Quantities;

namespace Slabwright.Cli.Commands;

/// <summary><c>slabwright quantities FOLDER</c>: bid schedule, totals and cost range.</summary>
internal static class QuantitiesCommand
{
    public static Command Build()
    {
        var command = new Command("quantities", "Measures and prices the plan, with its cost range.");
        var door = new ProjectDoor(command, withRange: true);
        command.SetAction((parsed, cancel) =>
        {
            var report = door.ReportFor(parsed);
            var read = door.Read(parsed);
            if (read.Project is not { } project) return Task.FromResult(report.End("quantities", ExitCode.InputUnusable, null, read.Findings));
            var plan = Planner.Plan(project, new PlanOptions { Studies = false, Range = door.RangeOf(parsed) }, cancel: cancel);
            ShowBid(report, project, plan.Quantities.Schedule);
            ShowTotals(report, project, "kind of work", plan.Quantities.ByKind);
            ShowTotals(report, project, "station range", plan.Quantities.ByStation);
            if (plan.Quantities.Range is { } range) ShowRange(report, project, range);
            return Task.FromResult(report.End("quantities", Endings.Of(plan.Findings), plan.Quantities, plan.Findings));
        });
        return command;
    }

    private static void ShowBid(Report report, Project project, BidSchedule schedule)
    {
        var table = new TextTable("item", "name", "quantity>", "unit", "unit price>", $"amount, {project.Prices.Currency}>");
        foreach (var line in schedule.Lines)
        {
            table.Add(line.Item.Code, line.Name, line.Pay.ToString("#,0.###", CultureInfo.InvariantCulture), line.Item.Unit.Symbol,
                line.UnitPrice.ToString("N2", CultureInfo.InvariantCulture), line.Amount.ToString("N2", CultureInfo.InvariantCulture));
        }

        report.Table(table);
        report.Line($"Total {schedule.Total.ToString("N2", CultureInfo.InvariantCulture)} {project.Prices.Currency}");
        report.Line();
    }

    private static void ShowTotals(Report report, Project project, string heading, IEnumerable<GroupTotal> totals)
    {
        var area = project.UnitSystem == UnitSystem.UsCustomary ? Units.SquareYard : Units.SquareMetre;
        var table = new TextTable(heading, "places>", $"area, {area}>", $"amount, {project.Prices.Currency}>");
        foreach (var total in totals)
        {
            table.Add(total.Name, total.Count.ToString("N0", CultureInfo.InvariantCulture),
                area.FromBase(total.Area).ToString("N1", CultureInfo.InvariantCulture), total.Amount.ToString("N0", CultureInfo.InvariantCulture));
        }

        report.Table(table);
        report.Line();
    }

    private static void ShowRange(Report report, Project project, CostRange range)
    {
        report.Line($"Cost range over {range.Trials} trials (seed {range.Seed}), {project.Prices.Currency}: "
            + $"P10 {range.P10:N0}, P50 {range.P50:N0}, P90 {range.P90:N0}");
        var table = new TextTable("what varies", "at its P10>", "at its P90>");
        foreach (var driver in range.Drivers)
            table.Add(driver.Name, driver.LowCost.ToString("N0", CultureInfo.InvariantCulture), driver.HighCost.ToString("N0", CultureInfo.InvariantCulture));
        report.Table(table);
    }
}
