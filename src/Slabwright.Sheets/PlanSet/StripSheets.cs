using System.Globalization;
using SkiaSharp;
using Slabwright.Core.Job;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>The strip sheets: rows to scale, as many a sheet as fit, and a legend on each.</summary>
internal sealed class StripSheets
{
    private const float LegendWidth = 124;
    private const int MostRows = 130;

    private readonly Project project;
    private readonly PaperFonts fonts;
    private readonly SheetFrame frame;
    private readonly JobUnits units;

    public StripSheets(Project project, RepairPlan plan, SheetFrame frame, PaperFonts fonts, SheetOptions options)
    {
        (this.project, this.frame, this.fonts) = (project, frame, fonts);
        units = JobUnits.Of(project.UnitSystem);
        var rowWidth = frame.Body.Width - LegendWidth - 10 - StripRowDrawing.Gutter;
        Layout = StripLayout.Of(project, plan, rowWidth, options.StripScale, MostRows);
        Pages = PagesOf(Layout.Rows.Select(r => (r, new StripRowDrawing(project, plan, r, Layout.PointsPerMetre, fonts, units))));
    }

    public StripLayout Layout { get; }

    /// <summary>Rows of each sheet.</summary>
    public IReadOnlyList<IReadOnlyList<(StripRow Row, StripRowDrawing Drawing)>> Pages { get; }

    /// <summary>Scale in words, e.g. <c>1 in = 20 ft (1:240)</c>.</summary>
    public string ScaleWords => project.UnitSystem == Core.Measures.UnitSystem.UsCustomary
        ? string.Create(CultureInfo.InvariantCulture, $"1 in = {Layout.Scale / 12:0.#} ft (1:{Layout.Scale:0})")
        : string.Create(CultureInfo.InvariantCulture, $"1:{Layout.Scale:0}");

    /// <summary>The sheets.</summary>
    public IEnumerable<SheetDraft> Drafts() => Pages.Select((page, i) => new SheetDraft(
        string.Create(CultureInfo.InvariantCulture, $"Strip sheet {i + 1} of {Pages.Count}"), DetailOf(page), (pad, _) => Draw(pad, page)));

    private string DetailOf(IReadOnlyList<(StripRow Row, StripRowDrawing Drawing)> page) =>
        $"{project.Road.Stationing.Format(page[0].Row.From)} to {project.Road.Stationing.Format(page[^1].Row.To)}";

    private void Draw(PaperPad pad, IReadOnlyList<(StripRow Row, StripRowDrawing Drawing)> page)
    {
        var body = frame.Body;
        var spare = body.Height - page.Sum(r => r.Drawing.Height);
        var gap = page.Count > 1 ? Math.Min(26, spare / (page.Count - 1)) : 0;
        var y = body.Top;
        foreach (var (_, drawing) in page)
        {
            drawing.Draw(pad, body.Left, y);
            y += drawing.Height + gap;
        }

        var legend = new SKRect(body.Right - LegendWidth, body.Top, body.Right, body.Bottom);
        new StripLegend(project, units, Layout, ScaleWords).Draw(pad, legend, page.Select(r => r.Drawing.Model));
    }

    private List<IReadOnlyList<(StripRow, StripRowDrawing)>> PagesOf(IEnumerable<(StripRow Row, StripRowDrawing Drawing)> rows)
    {
        var pages = new List<IReadOnlyList<(StripRow, StripRowDrawing)>>();
        var page = new List<(StripRow, StripRowDrawing)>();
        var left = frame.Body.Height;
        foreach (var row in rows)
        {
            if (page.Count > 0 && row.Drawing.Height > left)
            {
                pages.Add(page);
                page = [];
                left = frame.Body.Height;
            }

            page.Add(row);
            left -= row.Drawing.Height;
        }

        if (page.Count > 0) pages.Add(page);
        return pages;
    }
}
