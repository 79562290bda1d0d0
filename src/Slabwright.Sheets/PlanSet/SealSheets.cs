using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Joints.Sealing;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>Reservoirs in section with the table the crew sets its saw by, then how far each joint moves.</summary>
internal sealed class SealSheets(Project project, RepairPlan plan, SheetFrame frame, PaperFonts fonts)
{
    private const float GreatestHeight = 300;

    /// <summary>More joints than this would fill sheet after sheet; the table in CSV has them all.</summary>
    private const int MostJoints = 50;

    private static readonly (double Ratio, string Words)[] Scales = [(0.5, "twice full size"), (1, "full size"), (2, "half size"), (4, "quarter size")];

    private readonly JobUnits units = JobUnits.Of(project.UnitSystem);
    private readonly SealPlan seals = plan.Seals;
    private readonly float width = new PaperFlow(fonts, frame.Body, 2).ColumnWidth;

    public IEnumerable<SheetDraft> Drafts()
    {
        if (seals.Reservoirs.IsEmpty) return [];
        var blocks = new List<FlowBlock>();
        foreach (var reservoir in seals.Reservoirs) AddReservoir(blocks, reservoir);
        if (!seals.Notes.IsEmpty) blocks.Add(new FlowTable(CrewNotes.Table(fonts, "Sealing, in order", seals.Notes, width)));
        var moving = seals.Joints.Length <= MostJoints ? seals.Joints : [.. seals.Joints.OrderByDescending(j => j.Movement).Take(MostJoints)];
        blocks.Add(new FlowHeading(moving.Length == seals.Joints.Length ? "Movement of each joint" : $"The {N(moving.Length)} joints that move most"));
        blocks.Add(new FlowTable(MovementTable(moving)));
        if (moving.Length < seals.Joints.Length) blocks.Add(new FlowText($"The other {N(seals.Joints.Length - moving.Length)} joints stand in joint-seals.csv."));
        return FlowSheets.Of("Joint seals", new PaperFlow(fonts, frame.Body, 2).Lay(blocks));
    }

    private void AddReservoir(List<FlowBlock> blocks, Reservoir r)
    {
        var stationing = project.Road.Stationing;
        blocks.Add(new FlowHeading($"{MarkOf(r)}: lane {N(r.Lane)}, {stationing.Format(r.From)} to {stationing.Format(r.To)}, {units.ThicknessText(r.Thickness)} on {TradeWords.Of(r.Base)} base, {SheetWords.Count(r.Joints, "joint")}"));
        if (r.Chosen is { } chosen)
        {
            var (figure, words) = Fit(chosen, r.Recess);
            blocks.Add(new FlowDrawing((float)figure.Height + 14, (pad, box) =>
            {
                pad.Text($"{SealWords.Of(r.Family.Kind)}, {words}", box.Left, box.Top + 7, 8, Face.Text, PaperPad.Quiet);
                FigurePainter.Draw(pad, figure, box.Left, box.Top + 14);
            }));
            blocks.Add(new FlowTable(CheckTable(r, chosen)));
            if (!r.Table.IsEmpty) blocks.Add(new FlowTable(InstallationTable(r)));
        }
        else blocks.Add(new FlowText($"No {SealWords.Of(r.Family.Kind).ToLowerInvariant()} reservoir keeps every limit here; see the findings."));

        foreach (var reason in r.Reasons) blocks.Add(new FlowText($"{reason.Sentence} [{reason.Source}]"));
    }

    private (Figure Figure, string Words) Fit(ReservoirAlternative chosen, double recess)
    {
        foreach (var (ratio, words) in Scales)
        {
            var figure = ReservoirFigure.Draw(chosen, recess, units, 72 / 0.0254 / ratio, FigurePainter.RulerOf(fonts));
            if (figure.Height <= GreatestHeight && figure.Width <= width || ratio == Scales[^1].Ratio) return (figure, words);
        }

        throw new InvalidOperationException("There is no scale to draw a reservoir in.");
    }

    private PaperTable CheckTable(Reservoir r, ReservoirAlternative chosen)
    {
        PaperColumn[] columns = [new("Limit", 240), new("Share used", 60, Side.Right), new("Source", 180)];
        var rows = chosen.Checks.OrderByDescending(c => c.Use).Select(c => new PaperRow([CheckWords.Of(c, units), CheckWords.Use(c), c.Source.ToString()]))
            .Prepend(new PaperRow([$"Meant for a slab of {units.TemperatureText(r.DesignTemperature)}; opens to {units.Detail(chosen.WidestOpening)}, closes to {units.Detail(chosen.NarrowestOpening)}", "", ""], RowTone.Strong));
        return new PaperTable(fonts, columns, rows, width, 7.6f);
    }

    /// <summary>What the crew sets its saw by: its row is the slab's temperature of the day.</summary>
    private PaperTable InstallationTable(Reservoir r)
    {
        var isPreformed = !r.Family.FieldMoulded;
        var chosen = r.Chosen!;
        PaperColumn[] columns =
        [
            new("Slab\nnow", 46, Side.Right), new("Saw width for\nthis temperature", 76, Side.Right), new($"Joint sawn {units.Detail(chosen.Width)}\nis now", 86, Side.Right),
            new(isPreformed ? "Seal pressed\ntogether" : "Opens later\nby", 62, Side.Right), new(isPreformed ? "" : "Closes later\nby", 58, Side.Right),
            new($"{units.Detail(chosen.Width)} sawn and\nsealed now", 84),
        ];
        var rows = r.Table.Select(t => new PaperRow(
        [
            units.TemperatureText(t.SlabTemperature), t.SawWidth is { } saw ? units.Detail(saw) : "none holds", units.MovementText(t.JointWidth),
            Share(isPreformed ? t.Compression : t.ColdStrain), isPreformed ? "" : Share(t.HotSqueeze), t.Holds ? "holds" : "do not seal",
        ], t.Holds ? RowTone.Normal : RowTone.Strong));
        return new PaperTable(fonts, columns, rows, width, 7.6f);
    }

    private PaperTable MovementTable(ImmutableArray<SealedJoint> joints)
    {
        PaperColumn[] columns =
        [
            new("Repair", 44), new("Joint", 36), new("Station", 66), new("Works", 54), new($"Old moves\n{units.Length.Symbol}", 46, Side.Right), new($"New moves\n{units.Length.Symbol}", 46, Side.Right),
            new($"Shrinkage\n{units.Thickness.Symbol}", 48, Side.Right), new($"Movement\n{units.Thickness.Symbol}", 48, Side.Right), new("Seal", 34),
        ];
        var rows = joints.Select(j => new PaperRow(
        [
            j.RepairId, JointWords.Of(j.Position), project.Road.Stationing.Format(j.At), j.Works ? "yes" : "held closed", units.LengthNumber(j.OldLength), units.LengthNumber(j.NewLength),
            units.MovementNumber(j.Shrinkage), units.MovementNumber(j.Movement), j.Reservoir >= 0 ? MarkOf(seals.Reservoirs[j.Reservoir]) : "as beside",
        ]));
        return new PaperTable(fonts, columns, rows, width, 7.4f);
    }

    private string MarkOf(Reservoir r) => SealWords.MarkOf(seals, r);

    private static string Share(double? share) => share is { } s ? $"{JobUnits.Number(s * 100)} %" : "–";

    private static string N(int value) => value.ToString(CultureInfo.InvariantCulture);
}
