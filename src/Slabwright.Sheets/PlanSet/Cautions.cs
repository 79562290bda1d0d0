using Slabwright.Core.Job;
using Slabwright.Core.Quantities;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>
/// What can hurt people on this job, on the cover where crews see it. Sources: UFC-04 and UFGS-73 (lifting), 29 CFR 1926.1153 Table 1
/// (silica); the rest is common practice.
/// </summary>
internal static class Cautions
{
    public static float Draw(PaperPad pad, float x, float y, float width, Project project, RepairPlan plan, JobUnits units, SheetOptions options)
    {
        pad.Text("Cautions", x, y + 8, 12, Face.Bold);
        y += 26;
        foreach (var (title, text) in Of(project, plan, units, options.PrintedOn))
        {
            WarningSign(pad, x, y);
            pad.Text(title, x + 20, y, 9.6f, Face.Bold);
            y = pad.Paragraph(text, x + 20, y + 11.6f, width - 20, 8.8f, Face.Text, PaperPad.Ink, 1.27f) + 5.5f;
        }

        return y;
    }

    private static IEnumerable<(string Title, string Text)> Of(Project project, RepairPlan plan, JobUnits units, DateOnly printed)
    {
        yield return ("Live traffic",
            "Traffic runs beside the work. Work inside the closure and its buffer only; nobody steps over the closure line, not even to read a mark.");
        yield return ("Lifting", LiftWords(plan, units));
        yield return ("Silica dust",
            "Sawing, drilling and breaking concrete throw respirable silica. Saw wet; shroud and vacuum the drills; dowel drilling rigs outdoors still need respirators. Follow 29 CFR 1926.1153, Table 1, or the local rule where it is stricter.");
        yield return ("Wet concrete is caustic",
            "It burns skin and eyes. Gloves, boots and eye protection; wash at once. Keep the data sheets of epoxy, grout, curing compound and accelerator on the job.");
        yield return ("Opening too early",
            "Nobody opens a repair because of the clock. Open when the opening strength is shown at the coldest place of the repair by specimens or a maturity reading, and the engineer's rule is met.");
        yield return ("What is under the saw",
            "Locate services, drains, detector loops and bridge joints before sawing. No transverse cut falls in the no-cut zones shown.");
        yield return ("Mark again before work",
            $"{SurveyAge(project, printed)} Damage grows, and is often longer at the bottom than at the top. Walk every repair before sawing; if the damage reaches past a mark, stop and ask for new boundaries.");
        yield return ("Who decides",
            "Local codes, the contract and the licensed engineer decide. These sheets propose; they bind nobody until signed.");
    }

    private static string LiftWords(RepairPlan plan, JobUnits units)
    {
        const string rule = "Lift straight up with rated pins and slings; nobody under or beside the piece.";
        if (plan.Boundaries.Repairs.IsEmpty) return rule;
        var pieces = new PlannedPieces(plan);
        var heaviest = plan.Boundaries.Repairs.MaxBy(pieces.MassOf)!;
        return $"{rule} Heaviest piece in this plan: {units.MassText(pieces.MassOf(heaviest))} ({heaviest.Id}, {SheetWords.Count(pieces.Of(heaviest), "piece")}), "
            + "dry and by volume. Bond, bars not cut through and water add to it: choose crane and slings for more.";
    }

    private static string SurveyAge(Project project, DateOnly printed) => project.Survey.NewestDay is { } day && printed >= day
        ? $"The newest survey day is {SheetWords.Count(printed.DayNumber - day.DayNumber, "day")} before this printing."
        : "";

    public static void WarningSign(PaperPad pad, float x, float y)
    {
        using var builder = new SkiaSharp.SKPathBuilder();
        builder.MoveTo(x + 6.5f, y - 9);
        builder.LineTo(x + 13, y + 2);
        builder.LineTo(x, y + 2);
        builder.Close();
        using var path = builder.Detach();
        pad.Path(path, "#ffffff", PaperPad.Ink, 1.3f);
        pad.Text("!", x + 6.5f, y + 0.6f, 8, Face.Bold, PaperPad.Ink, Side.Centre);
    }
}
