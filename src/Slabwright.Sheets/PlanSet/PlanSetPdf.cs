using SkiaSharp;
using Slabwright.Core.Job;
using Slabwright.Sheets.Paper;

namespace Slabwright.Sheets.PlanSet;

/// <summary>The plan set as one vector PDF: cover, index, key plan, strips, schedule, joints with seals, lifting and relief cuts,
/// alternatives of load transfer, quantities, reasons, findings.</summary>
public static class PlanSetPdf
{
    /// <summary>Writes the plan set.</summary>
    public static SheetFile Write(Project project, RepairPlan plan, SheetOptions options)
    {
        using var fonts = new PaperFonts();
        var frame = new SheetFrame(project, options);
        var drafts = new SheetList(project, plan, options, frame, fonts).Drafts();
        return new SheetFile($"{options.BaseName}-plan-set.pdf", "application/pdf", "Plan set", Print(drafts, project, options, frame, fonts));
    }

    /// <summary>Prints sheets in their order, each with its frame.</summary>
    internal static byte[] Print(IReadOnlyList<SheetDraft> drafts, Project project, SheetOptions options, SheetFrame frame, PaperFonts fonts)
    {
        using var stream = new MemoryStream(512 * 1024);
        using (var document = SKDocument.CreatePdf(stream, Metadata(project, options)))
        {
            for (var i = 0; i < drafts.Count; i++)
            {
                var canvas = document.BeginPage(frame.Width, frame.Height);
                using var pad = new PaperPad(canvas, fonts);
                var number = new SheetNumber(i + 1, drafts.Count);
                frame.Draw(pad, drafts[i], number);
                drafts[i].Draw(pad, number);
                document.EndPage();
            }

            document.Close();
        }

        return stream.ToArray();
    }

    private static SKDocumentPdfMetadata Metadata(Project project, SheetOptions options)
    {
        var day = options.PrintedOn.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        return new SKDocumentPdfMetadata
        {
            Title = $"{project.Name}: full-depth repair plan set",
            Author = project.Owner,
            Subject = project.Road.Name,
            Creator = $"Slabwright {options.Version}".TrimEnd(),
            Creation = day,
            Modified = day,
            RasterDpi = 300,
            EncodingQuality = 101,
        };
    }
}

/// <summary>The sheets of the set in order.</summary>
internal sealed class SheetList(Project project, RepairPlan plan, SheetOptions options, SheetFrame frame, PaperFonts fonts)
{
    public List<SheetDraft> Drafts()
    {
        var strips = new StripSheets(project, plan, frame, fonts, options);
        var drafts = new List<SheetDraft>();
        drafts.Add(new CoverSheet(project, plan, options, frame).Draft());
        drafts.Add(new IndexSheet(project, frame, fonts).Draft(() => drafts, strips.Layout));
        drafts.Add(new KeyPlanSheet(project, plan, frame).Draft(() => Stretches(strips, 4)));
        drafts.AddRange(strips.Drafts());
        drafts.AddRange(new ScheduleSheets(project, plan, frame, fonts).Drafts());
        drafts.AddRange(new JointSheets(project, plan, frame, fonts).Drafts());
        drafts.AddRange(new SealSheets(project, plan, frame, fonts).Drafts());
        drafts.AddRange(new LiftSheets(project, plan, frame, fonts).Drafts());
        drafts.AddRange(new PressureSheets(project, plan, frame, fonts).Drafts());
        drafts.AddRange(new AlternativeSheets(project, plan, frame, fonts).Drafts());
        drafts.AddRange(new QuantitySheets(project, plan, frame, fonts).Drafts());
        drafts.AddRange(new ReasonSheets(project, plan, frame, fonts).Drafts());
        drafts.AddRange(new FindingSheets(project, plan, frame, fonts).Drafts());
        return drafts;
    }

    private static List<SheetStretch> Stretches(StripSheets strips, int first) =>
        [.. strips.Pages.SelectMany((page, i) => Joined(page.Select(r => new SheetStretch(r.Row.From, r.Row.To, first + i))))];

    /// <summary>Rows of one sheet that follow one another, as one stretch.</summary>
    private static List<SheetStretch> Joined(IEnumerable<SheetStretch> rows)
    {
        var joined = new List<SheetStretch>();
        foreach (var row in rows)
        {
            if (joined.Count > 0 && row.From <= joined[^1].To + 0.01) joined[^1] = joined[^1] with { To = row.To };
            else joined.Add(row);
        }

        return joined;
    }
}
