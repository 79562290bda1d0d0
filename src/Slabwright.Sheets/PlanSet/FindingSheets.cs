using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>What was wrong or doubtful in files and plan, errors first, each with its mend.</summary>
internal sealed class FindingSheets(Project project, RepairPlan plan, SheetFrame frame, PaperFonts fonts)
{
    public IEnumerable<SheetDraft> Drafts()
    {
        var blocks = new List<FlowBlock>();
        if (plan.Findings.IsEmpty) blocks.Add(new FlowText("Nothing was found wrong or doubtful in the files and the plan."));
        else blocks.Add(new FlowTable(Table()));
        return FlowSheets.Of("Findings", new PaperFlow(fonts, frame.Body).Lay(blocks));
    }

    private PaperTable Table()
    {
        PaperColumn[] columns =
        [
            new("Code", 50), new("Level", 44), new("What was found", 330), new("File and row", 130), new("Field", 76), new("Lane", 31, Side.Right), new("Station", 62),
            new("Value", 110), new("Mend", 240), new("Limit and source", 120),
        ];
        var rows = plan.Findings.OrderByDescending(f => f.Level).Select(Row);
        return new PaperTable(fonts, columns, rows, frame.Body.Width, 7.6f);
    }

    private PaperRow Row(Finding f)
    {
        var row = f.Place.Row is { } number ? ", row " + number.ToString(CultureInfo.InvariantCulture) : "";
        return new PaperRow(
        [
            f.Code, SheetWords.Of(f.Level), f.Sentence, (f.Place.File ?? "") + row, f.Place.Field ?? "", f.Place.Lane?.ToString(CultureInfo.InvariantCulture) ?? "",
            f.Place.At is { } at ? project.Road.Stationing.Format(at) : "", f.Value ?? "", f.Mend ?? "",
            string.Join("; ", new[] { f.Limit, f.Source }.Where(t => !string.IsNullOrEmpty(t))),
        ], f.Level == FindingLevel.Error ? RowTone.Strong : RowTone.Normal);
    }
}
