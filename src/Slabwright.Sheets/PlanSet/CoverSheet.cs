using System.Globalization;
using SkiaSharp;
using Slabwright.Core.Job;
using Slabwright.Core.Treatments;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>The cover: what, where, how much, at what cost and risk, by which rules, with which cautions, signed by whom.</summary>
internal sealed class CoverSheet(Project project, RepairPlan plan, SheetOptions options, SheetFrame frame)
{
    private const float ColumnGap = 34;

    private readonly JobUnits units = JobUnits.Of(project.UnitSystem);

    public SheetDraft Draft() => new("Full-depth repair of jointed concrete pavement", "", (pad, _) => Draw(pad));

    private void Draw(PaperPad pad)
    {
        var body = frame.Body;
        var width = (body.Width - ColumnGap) * 0.56f;
        var right = body.Left + width + ColumnGap;
        var y = DrawName(pad, body.Left, body.Top + 16, width);
        y = DrawWork(pad, body.Left, y + 10, width);
        y = DrawCost(pad, body.Left, y + 16, width);
        DrawBasis(pad, body.Left, y + 18, width, body.Bottom);
        y = Cautions.Draw(pad, right, body.Top + 8, body.Right - right, project, plan, units, options);
        SignatureBlock.Draw(pad, new SKRect(right, Math.Max(y + 8, body.Bottom - 138), body.Right, body.Bottom));
    }

    private float DrawName(PaperPad pad, float x, float y, float width)
    {
        var size = project.Name.Length > 90 ? 15f : project.Name.Length > 45 ? 20f : 26f;
        y = pad.Paragraph(project.Name, x, y + size * 0.5f, width, size, Face.Bold, PaperPad.Ink, 1.15f);
        y = pad.Paragraph(project.Owner, x, y + 2, width, 12);
        var road = project.Road;
        var where = $"{road.Name}, station {road.Stationing.Format(0)} to {road.Stationing.Format(road.Length)}, {units.DistanceText(road.Length)}, "
            + $"{SheetWords.Count(road.Lanes.Length, "lane")}, {SheetWords.Count(road.Lanes.Sum(l => l.SlabCount), "slab")}.";
        return pad.Paragraph(where, x, y, width, 11);
    }

    private float DrawWork(PaperPad pad, float x, float y, float width)
    {
        pad.Text("The work in short", x, y + 10, 12, Face.Bold);
        var repairs = plan.Boundaries.Repairs;
        var rows = new List<PaperRow>();
        foreach (var kind in new[] { Treatment.FullDepthRepair, Treatment.SlabReplacement, Treatment.SlabRun })
        {
            var some = repairs.Where(r => r.Kind == kind).ToList();
            if (some.Count > 0) rows.Add(Row(SheetWords.Of(kind), some.Count, some.Sum(r => r.Length), some.Sum(r => r.Area), false));
        }

        rows.Add(Row("All full-depth work", repairs.Length, repairs.Sum(r => r.Length), repairs.Sum(r => r.Area), true));
        foreach (var group in plan.SurfaceWorks.GroupBy(w => w.Treatment).OrderByDescending(g => g.Key))
        {
            rows.Add(Row(SheetWords.Of(group.Key), group.Count(), group.Sum(w => w.Length), group.Sum(w => w.Area), false));
        }

        PaperColumn[] columns =
        [
            new("Kind", 3), new("Number", 1, Side.Right), new($"Lane length, {units.Length.Symbol}", 1.3f, Side.Right),
            new($"Area, {JobUnits.Symbol(units.Area)}", 1.3f, Side.Right),
        ];
        var table = new PaperTable(pad.Fonts, columns, rows, width, 9.5f);
        return table.Draw(pad, x, y + 17, 0, table.Count);
    }

    private PaperRow Row(string name, int count, double length, double area, bool total) => new(
        [name, count.ToString("N0", CultureInfo.InvariantCulture), units.LengthNumber(length), area > 0 ? units.AreaNumber(area) : "–"],
        total ? RowTone.Total : RowTone.Normal);

    private float DrawCost(PaperPad pad, float x, float y, float width)
    {
        var currency = project.Prices.Currency;
        pad.Text("Cost", x, y + 10, 12, Face.Bold);
        pad.Text(JobUnits.Money(currency, plan.Quantities.Schedule.Total), x, y + 38, 24, Face.Bold);
        pad.Text("bid schedule at the prices of the project", x, y + 51, 9, Face.Text, PaperPad.Quiet);
        if (plan.Quantities.Range is not { } range)
        {
            pad.Text("No cost range was asked for.", x + width * 0.45f, y + 38, 10);
            return y + 54;
        }

        CostCharts.RangeBar(pad, new SKRect(x + width * 0.4f, y + 8, x + width, y + 52), range, currency, plan.Quantities.Schedule.Total);
        return pad.Paragraph(
            $"Range over growth since the survey, hidden damage and prices: {range.Trials.ToString("N0", CultureInfo.InvariantCulture)} trials, seed {range.Seed.ToString(CultureInfo.InvariantCulture)}. "
            + "P10, P50, P90: cost not exceeded in 1, 5 and 9 trials of 10.", x, y + 66, width, 8.6f, Face.Text, PaperPad.Quiet) - 6;
    }

    private void DrawBasis(PaperPad pad, float x, float y, float width, float bottom)
    {
        pad.Text("Basis", x, y + 10, 12, Face.Bold);
        y += 25;
        foreach (var (name, text) in Basis())
        {
            var lines = TextFlow.Wrap(pad.Fonts, text, Face.Text, 9.2f, width - 92);
            if (y + lines.Count * 11.6f > bottom) lines = [.. lines.Take(Math.Max(0, (int)((bottom - y) / 11.6f)))];
            if (lines.Count == 0) return;
            pad.Text(name, x, y, 9.2f, Face.Bold);
            foreach (var line in lines)
            {
                pad.Text(line, x + 92, y, 9.2f);
                y += 11.6f;
            }

            y += 4;
        }
    }

    private IEnumerable<(string Name, string Text)> Basis()
    {
        yield return ("Survey", SurveyWords.Of(project, options.PrintedOn));
        yield return ("Rule set", $"{project.RuleSet.Name} ({project.RuleSet.Id}). {project.RuleSet.Summary}");
        var off = project.RuleSet.Treatments.Where(t => !t.On).ToList();
        yield return ("Switched off", off.Count == 0
            ? "No rule of the set is switched off."
            : $"{SheetWords.Count(off.Count, "rule")} not yet checked against the source named: {string.Join(", ", off.Select(t => t.Id))}.");
        yield return ("Overrides", project.Overrides.IsEmpty
            ? "None. Every decision is the rules' own."
            : $"{SheetWords.Count(project.Overrides.Length, "decision")} by the engineer in place of the rules; see the reasons.");
        var errors = plan.Findings.Count(f => f.Level == Core.Evidence.FindingLevel.Error);
        var warnings = plan.Findings.Count(f => f.Level == Core.Evidence.FindingLevel.Warning);
        yield return ("Findings", $"{SheetWords.Count(errors, "error")}, {SheetWords.Count(warnings, "warning")}; see the findings sheet. Rows with errors are not in this plan.");
        yield return ("Boundaries", $"Least-cost boundaries under the rules, proven over {SheetWords.Count(plan.Boundaries.Clusters, "independent cluster")}.");
        if (options.Version.Length > 0) yield return ("Made with", $"Slabwright {options.Version}");
    }
}

/// <summary>The survey's dates and age in words.</summary>
internal static class SurveyWords
{
    public static string Of(Project project, DateOnly printed)
    {
        var distresses = project.Survey.Distresses;
        if (distresses.IsEmpty) return "No distress in the survey.";
        var (first, last) = (distresses.Min(d => d.SurveyedOn), distresses.Max(d => d.SurveyedOn));
        var days = printed.DayNumber - last.DayNumber;
        var when = first == last ? Day(first) : $"{Day(first)} to {Day(last)}";
        var age = days < 0 ? "dated after this printing" : $"{SheetWords.Count(days, "day")} old when printed";
        var work = project.Settings.WorkDay is { } day ? $" Work starts {Day(day)}: {SheetWords.Count(day.DayNumber - last.DayNumber, "day")} after the survey." : "";
        return $"{SheetWords.Count(distresses.Length, "distress", "distresses")}, {SheetWords.Count(project.Survey.Cores.Length, "core")}, surveyed {when}, {age}.{work}";
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

/// <summary>Where people sign.</summary>
internal static class SignatureBlock
{
    public static void Draw(PaperPad pad, SKRect box)
    {
        pad.Text("Signed", box.Left, box.Top + 9, 12, Face.Bold);
        var top = box.Top + 16;
        var seal = new SKRect(box.Right - 116, top, box.Right, box.Bottom - 14);
        pad.Box(seal, null, PaperPad.Rule, 0.6f);
        pad.Text("Seal of the licensed engineer", seal.MidX, seal.Bottom - 6, 7, Face.Text, PaperPad.Quiet, Side.Centre);
        string[] roles = ["Prepared by", "Checked by", "Licensed engineer of record, licence no."];
        var y = top + 26;
        foreach (var role in roles)
        {
            pad.Line(box.Left, y, seal.Left - 84, y, 0.6f);
            pad.Line(seal.Left - 74, y, seal.Left - 16, y, 0.6f);
            pad.Text(role, box.Left, y + 8.5f, 7, Face.Text, PaperPad.Quiet);
            pad.Text("Date", seal.Left - 74, y + 8.5f, 7, Face.Text, PaperPad.Quiet);
            y += 33;
        }

        pad.Text("Not for construction until signed and sealed.", box.Left, box.Bottom - 2, 8.4f, Face.Bold);
    }
}
