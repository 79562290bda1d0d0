using System.Globalization;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Job;
using Slabwright.Core.Quantities;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>The repair schedule: what to mark, saw, drill and lift at each repair; then partial-depth repairs and seals.</summary>
internal sealed class ScheduleSheets(Project project, RepairPlan plan, SheetFrame frame, PaperFonts fonts)
{
    private readonly JobUnits units = JobUnits.Of(project.UnitSystem);
    private readonly PlannedPieces pieces = new(plan);
    private readonly Dictionary<(string Repair, double At), string> marks = JointLayouts.MarksOf(plan.Joints);

    public IEnumerable<SheetDraft> Drafts()
    {
        var blocks = new List<FlowBlock>();
        if (!plan.Boundaries.Repairs.IsEmpty) blocks.Add(new FlowTable(RepairTable()));
        else blocks.Add(new FlowText("No full-depth work in this plan."));
        if (!plan.SurfaceWorks.IsEmpty)
        {
            blocks.Add(new FlowHeading("Partial-depth repairs and seals"));
            blocks.Add(new FlowTable(SurfaceTable()));
        }

        blocks.Add(new FlowText(
            "From and to are the boundary cuts. Distances run along the lane's centre from the nearest joint or crack that is there today; the joint is named by the slabs on both sides. "
            + "Bars: D dowels, T tie bars, – none; J1, J2 and so on: the joint layout sheets. Pieces and mass: equal lift pieces by volume, dry; what else the crane pulls is on the lifting sheets."));
        return FlowSheets.Of("Repair schedule", new PaperFlow(fonts, frame.Body).Lay(blocks));
    }

    private PaperTable RepairTable()
    {
        var length = units.Length.Symbol;
        PaperColumn[] columns =
        [
            new("Repair", 38), new("Lane", 30, Side.Right), new("Kind", 76), new("From", 54), new("To", 54),
            new("First cut is found", 112), new("Last cut is found", 112), new($"Length\n{length}", 36, Side.Right), new($"Width\n{length}", 34, Side.Right),
            new($"Thick\n{units.Thickness.Symbol}", 32, Side.Right), new($"Area\n{JobUnits.Symbol(units.Area)}", 34, Side.Right), new("Joint at start", 72), new("Joint at end", 72),
            new("New joints inside", 108), new("Left side", 72), new("Right side", 76), new("Lift\npieces", 36, Side.Right), new($"Each\n{units.Mass.Symbol}", 30, Side.Right),
        ];
        var rows = plan.Boundaries.Repairs.Select(Row).Append(TotalRow(plan.Boundaries.Repairs));
        return new PaperTable(fonts, columns, rows, frame.Body.Width, 7.4f);
    }

    private PaperRow Row(Repair r)
    {
        var lane = project.Road.LaneByNumber(r.Lane);
        return new PaperRow(
        [
            r.Id, N(r.Lane), SheetWords.Of(r.Kind), project.Road.Stationing.Format(r.From), project.Road.Stationing.Format(r.To),
            CutPlace.OfStart(project.Road, r).Describe(lane, units), CutPlace.OfEnd(project.Road, r).Describe(lane, units),
            units.LengthNumber(r.Length), units.LengthNumber(r.Width), units.ThicknessNumber(r.Thickness), units.AreaNumber(r.Area),
            EndWords(r, r.Start), EndWords(r, r.End), InsideWords(r),
            FaceWords.Of(r.LeftFace, units), FaceWords.Of(r.RightFace, units), N(pieces.Of(r)), JobUnits.Number(units.Mass.FromBase(pieces.MassOf(r)), 1),
        ]);
    }

    private PaperRow TotalRow(IReadOnlyList<Repair> repairs) => new(
    [
        "Total", "", SheetWords.Count(repairs.Count, "repair"), "", "", "", "", units.LengthNumber(repairs.Sum(r => r.Length)), "", "",
        units.AreaNumber(repairs.Sum(r => r.Area)), "", "", SheetWords.Count(repairs.Sum(r => r.Intermediate.Length), "joint"), "", "", N(repairs.Sum(pieces.Of)), "",
    ], RowTone.Total);

    /// <summary>Joints inside: those with the same bars together, e.g. <c>2 × 8 D: 443+16.0, 443+26.5</c>.</summary>
    private string InsideWords(Repair repair) => string.Join("\n", repair.Intermediate.GroupBy(j => Bars(j) + MarkOf(repair, j)).Select(g =>
        $"{N(g.Count())} × {g.Key}: {string.Join(", ", g.Select(j => project.Road.Stationing.Format(j.At)))}"));

    private string EndWords(Repair repair, RepairJoint joint) =>
        $"{SheetWords.Of(joint.Design)} {Bars(joint)}{MarkOf(repair, joint)}{(joint.AtExistingJoint ? "\nat old joint" : "")}";

    /// <summary>Mark of the joint's layout sheet, with a space before it.</summary>
    private string MarkOf(Repair repair, RepairJoint joint) => marks.TryGetValue((repair.Id, joint.At), out var mark) ? " " + mark : "";

    private static string Bars(RepairJoint joint) => joint.Design switch
    {
        JointDesign.Dowelled => $"{N(joint.Bars)} D",
        JointDesign.Tied => $"{N(joint.Bars)} T",
        _ => "–",
    };

    private PaperTable SurfaceTable()
    {
        PaperColumn[] columns =
        [
            new("Work", 40), new("Lane", 30, Side.Right), new("Kind", 90), new("From", 60), new("To", 60), new("Start is found", 130),
            new($"Length, {units.Length.Symbol}", 50, Side.Right), new($"Area, {JobUnits.Symbol(units.Area)}", 50, Side.Right), new("Answers distress", 160),
        ];
        return new PaperTable(fonts, columns, plan.SurfaceWorks.Select(SurfaceRow), frame.Body.Width * 0.68f, 7.4f);
    }

    private PaperRow SurfaceRow(SurfaceWork w)
    {
        var lane = project.Road.LaneByNumber(w.Lane);
        return new PaperRow(
        [
            w.Id, N(w.Lane), SheetWords.Of(w.Treatment), project.Road.Stationing.Format(w.From), project.Road.Stationing.Format(w.To),
            CutPlace.Of(lane, w.From).Describe(lane, units), units.LengthNumber(w.Length), w.Area > 0 ? JobUnits.Number(units.Area.FromBase(w.Area), 2) : "–",
            string.Join(", ", w.DistressIds),
        ]);
    }

    private static string N(int value) => value.ToString(CultureInfo.InvariantCulture);
}

/// <summary>Numbers the pages of a flow.</summary>
internal static class FlowSheets
{
    public static IEnumerable<SheetDraft> Of(string title, List<Action<PaperPad>> pages) => pages.Select((page, i) => new SheetDraft(
        title, pages.Count > 1 ? string.Create(CultureInfo.InvariantCulture, $"{i + 1} of {pages.Count}") : "", (pad, _) => page(pad)));
}
