using System.Globalization;
using SkiaSharp;
using Slabwright.Core.Job;
using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Measures;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>Slabs under pressure: when boundary saws bind, and where relief cuts go.</summary>
internal sealed class PressureSheets(Project project, RepairPlan plan, SheetFrame frame, PaperFonts fonts)
{
    private const float DrawingHeight = 220;

    private readonly JobUnits units = JobUnits.Of(project.UnitSystem);
    private readonly PressurePlan pressure = plan.Pressure;

    public IEnumerable<SheetDraft> Drafts()
    {
        if (pressure.Repairs.IsEmpty) return [];
        var blocks = new List<FlowBlock> { new FlowDrawing(DrawingHeight, DrawTop) };
        if (!pressure.Notes.IsEmpty) blocks.Add(new FlowTable(CrewNotes.Table(fonts, "Relief cuts", pressure.Notes, frame.Body.Width)));
        blocks.Add(new FlowHeading($"Every repair: {SheetWords.Count(pressure.Repairs.Sum(r => r.Reliefs.Length), "relief cut")}"));
        blocks.Add(new FlowTable(RepairTable()));
        blocks.Add(new FlowText("A blade binds where the kerf closes down to its core. Slab temperature is the mean through the slab: " + pressure.HoursFrom + ". The relief cut is measured from the boundary cuts to its near edges; where it takes the place of a lift cut no other is made there."));
        return FlowSheets.Of("Pressure and relief cuts", new PaperFlow(fonts, frame.Body).Lay(blocks));
    }

    private void DrawTop(PaperPad pad, SKRect box)
    {
        var ruler = FigurePainter.RulerOf(fonts);
        if (pressure.Hours.Length >= 2)
        {
            var chart = ResponsePlots.SectionFigure(Temperatures(), new PlotOptions { Width = box.Width * 0.48, TextSize = 8.2, GreatestHeight = box.Height - 62, Ruler = ruler });
            pad.Text("Slab through the day", box.Left, box.Top + 9, 10.5f, Face.Bold);
            FigurePainter.Draw(pad, chart, box.Left, box.Top + 18);
        }

        if (pressure.Repairs.FirstOrDefault(r => !r.Reliefs.IsEmpty) is not { } needed || plan.Lifts.Repairs.FirstOrDefault(l => l.RepairId == needed.RepairId) is not { } lift) return;
        var right = box.Left + box.Width * 0.54f;
        var repair = plan.Boundaries.Repairs.First(r => r.Id == needed.RepairId);
        pad.Text($"{(needed.Reliefs.Length == 1 ? "Relief cut" : "Relief cuts")} of {repair.Id}, from above", right, box.Top + 9, 10.5f, Face.Bold);
        var fromAbove = FigureFit.Within(box.Width * 0.46, box.Height - 18, s => RemovalFigure.Draw(repair, lift, needed.Reliefs, units, s, ruler));
        FigurePainter.Draw(pad, fromAbove, right, box.Top + 18);
    }

    private ResponseSection Temperatures()
    {
        var hours = pressure.Hours.OrderBy(h => h.Hour).ToList();
        var binds = pressure.Repairs.Select(r => r.BindsAbove).Where(b => b is not null).Min();
        return new ResponseSection("Slab temperature by hour", "Hour of the day", "Slab temperature",
            [new ResponseCurve("slab", [.. hours.Select(h => h.Hour * 3600.0)], [.. hours.Select(h => h.Temperature)])], units.Temperature, Units.Hour)
        {
            Limit = binds is { } b ? new ResponseMark(b, $"the first blade binds above {units.TemperatureText(b)}") : null,
        };
    }

    private PaperTable RepairTable()
    {
        var (length, stress, small) = (units.Length.Symbol, units.Stress.Symbol, units.Thickness.Symbol);
        PaperColumn[] columns =
        [
            new("Repairs", 150), new("Lane", 28, Side.Right), new($"Unloads behind\n{length}", 58, Side.Right), new($"ahead\n{length}", 44, Side.Right), new("Binds above", 52, Side.Right), new("Hottest\nslab", 44, Side.Right),
            new($"Stress then\n{stress}", 52, Side.Right), new($"Kerf closes\n{small}", 52, Side.Right), new("Hours it binds", 78), new("Relief cuts", 50), new("From the first cut", 70, Side.Right), new("To the last cut", 70, Side.Right),
            new("Width", 44, Side.Right), new("No deeper than", 58, Side.Right), new("At a lift cut", 50), new("Binds after it", 74),
        ];
        var alike = pressure.Repairs.GroupBy(r => string.Join('|', Cells(r)));
        return new PaperTable(fonts, columns, alike.Select(g => new PaperRow(
            [SheetWords.Some([.. g.Select(r => r.RepairId)]), .. Cells(g.First())], g.First().ReliefNeeded ? RowTone.Strong : RowTone.Normal)), frame.Body.Width, 7.4f);
    }

    /// <summary>All cells but the repair's name: repairs that read alike share a row.</summary>
    private string[] Cells(RepairPressure r)
    {
        var hottest = r.Hours.IsEmpty ? null : r.Hours.MaxBy(h => h.Temperature);
        return
        [
            N(r.Lane), units.LengthNumber(r.UnloadsBehind), units.LengthNumber(r.UnloadsAhead), r.BindsAbove is { } b ? units.TemperatureText(b) : "never", hottest is null ? "–" : units.TemperatureText(hottest.Temperature),
            hottest is null ? "–" : units.StressNumber(hottest.Stress), hottest is null ? "–" : units.MovementNumber(hottest.Closure), HoursOf(r.Hours.Where(h => h.Binds)),
            r.ReliefNeeded ? r.Reliefs.IsEmpty ? "none fits" : N(r.Reliefs.Length) : "no", Each(r, c => units.Running(c.ToStart)), Each(r, c => units.Running(c.ToEnd)),
            Each(r, c => units.Detail(c.Kerf)), Each(r, c => units.Detail(c.Depth)), Each(r, c => c.AtLiftCut ? "yes" : "no"),
            r.ReliefNeeded && !r.Reliefs.IsEmpty ? HoursOf(r.Hours.Where(h => h.BindsAfterRelief)) : "–",
        ];
    }

    private static string Each(RepairPressure r, Func<ReliefCut, string> words) => r.Reliefs.IsEmpty ? "–" : string.Join("\n", r.Reliefs.Select(words));

    private static string HoursOf(IEnumerable<SawingHour> hours)
    {
        var numbers = hours.Select(h => h.Hour).ToList();
        return numbers.Count == 0 ? "none" : $"{JointWords.Ranges(numbers)} h";
    }

    private static string N(int value) => value.ToString(CultureInfo.InvariantCulture);
}
