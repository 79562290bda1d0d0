using System.Globalization;
using Slabwright.Core.Job;
using Slabwright.Sheets.Paper;

namespace Slabwright.Sheets.PlanSet;

/// <summary>The list of sheets, with the stretches the strip sheets leave out because no work lies there.</summary>
internal sealed class IndexSheet(Project project, SheetFrame frame, PaperFonts fonts)
{
    /// <summary>The sheet; the list is read when it is drawn.</summary>
    public SheetDraft Draft(Func<IReadOnlyList<SheetDraft>> sheets, StripLayout strips) => new("Sheet index", "", (pad, _) => Draw(pad, sheets(), strips));

    private void Draw(PaperPad pad, IReadOnlyList<SheetDraft> sheets, StripLayout strips)
    {
        var flow = new PaperFlow(fonts, frame.Body, 3);
        PaperColumn[] columns = [new("Sheet", 34, Side.Right), new("Title", 130), new("What", 170)];
        var rows = sheets.Select((s, i) => new PaperRow([(i + 1).ToString(CultureInfo.InvariantCulture), s.Title, s.Detail]));
        var blocks = new List<FlowBlock> { new FlowTable(new PaperTable(fonts, columns, rows, flow.ColumnWidth, 8.4f)) };
        var left = LeftOut(strips).ToList();
        if (left.Count > 0)
        {
            blocks.Add(new FlowHeading("Not drawn on the strip sheets: no work there"));
            PaperColumn[] stations = [new("From", 100), new("To", 100)];
            blocks.Add(new FlowTable(new PaperTable(fonts, stations, left.Select(s => new PaperRow([s.From, s.To])), flow.ColumnWidth, 8.4f)));
        }

        foreach (var page in flow.Lay(blocks).Take(1)) page(pad);
    }

    private IEnumerable<(string From, string To)> LeftOut(StripLayout strips)
    {
        var stationing = project.Road.Stationing;
        foreach (var row in strips.Rows)
        {
            if (row.SkippedFrom is { } from) yield return (stationing.Format(from), stationing.Format(row.From));
        }

        if (strips.SkippedAtEnd is { } end) yield return (stationing.Format(end.From), stationing.Format(end.To));
    }
}
