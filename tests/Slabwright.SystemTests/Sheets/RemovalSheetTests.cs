using System.Text;
using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Joints.Sealing;
using Slabwright.Core.Measures;
using Slabwright.Sheets;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.PlanSet;
using Slabwright.Sheets.Words;

namespace Slabwright.SystemTests.Sheets;

/// <summary>Seals, lift pieces and relief cuts: drawn to scale, printed with their figures, and written as tables.</summary>
public sealed class RemovalSheetTests
{
    private static readonly SheetOptions Options = new(new DateOnly(2026, 4, 1));

    [Fact]
    public void TheReservoirIsToScale()
    {
        var (_, plan) = OddJobs.Of("usual").Build();
        foreach (var reservoir in plan.Seals.Reservoirs)
        {
            var chosen = reservoir.Chosen!;
            var figure = ReservoirFigure.Draw(chosen, reservoir.Recess, JobUnits.Of(UnitSystem.UsCustomary), 4000, FigureBuilder.ScreenRuler);
            FigureAsserts.Readable(figure, FigureBuilder.ScreenRuler);
            var cut = figure.Shapes.OfType<FigureArea>().Single(s => s.Ref == "reservoir").Rings[0];
            Assert.Equal(chosen.Width * 4000, cut.Max(p => p.X) - cut.Min(p => p.X), 1e-6);
            Assert.Equal(chosen.SawDepth * 4000, cut.Max(p => p.Y) - figure.Origin.Y, 1e-6);
            var seal = figure.Shapes.OfType<FigureArea>().Single(s => s.Ref is "sealant" or "seal").Rings[0];
            Assert.Equal(reservoir.Recess * 4000, seal.Min(p => p.Y) - figure.Origin.Y, 1e-6);
            Assert.Equal(chosen.Rod is not null, figure.Shapes.Any(s => s.Ref == "rod"));
            if (chosen.Rod is null) continue;
            var middle = seal.Where(p => Math.Abs(p.X - figure.Origin.X) < 0.01).Max(p => p.Y);
            Assert.Equal((reservoir.Recess + chosen.SealDepth) * 4000, middle - figure.Origin.Y, 1e-6);
        }
    }

    [Fact]
    public void PinsCutsAndReliefStandWhereThePlanSays()
    {
        var (_, plan) = OddJobs.Of("usual").Build();
        foreach (var (repair, lift, pressure) in plan.Boundaries.Repairs.Zip(plan.Lifts.Repairs, plan.Pressure.Repairs))
        {
            var figure = RemovalFigure.Draw(repair, lift, pressure.Reliefs, JobUnits.Of(UnitSystem.Si), 60, FigureBuilder.ScreenRuler);
            FigureAsserts.Readable(figure, FigureBuilder.ScreenRuler);
            var pins = figure.Shapes.OfType<FigureCircle>().Where(c => c.Ref.StartsWith("pin-", StringComparison.Ordinal)).ToList();
            Assert.Equal(lift.Pieces.Sum(p => p.Pins.Length), pins.Count);
            Assert.Equal((lift.Pieces[0].Pins[0].Along - repair.From) * 60, pins[0].Centre.X - figure.Origin.X, 1e-6);
            Assert.Equal(lift.Pieces[0].Pins[0].Offset * 60, pins[0].Centre.Y - figure.Origin.Y, 1e-6);
            Assert.Equal(lift.Cuts.Length + lift.LongCuts.Length, figure.Shapes.Count(s => s.Style == FigureStyle.SawnJoint));
            var reliefs = figure.Shapes.OfType<FigureArea>().Where(a => a.Ref == "relief").Select(a => a.Rings[0].Average(p => p.X) - figure.Origin.X);
            Assert.Equal(pressure.Reliefs.Select(c => (c.At - repair.From) * 60), reliefs, (x, y) => Math.Abs(x - y) < 1e-6);
            FigureAsserts.Readable(SlingFigure.Draw(lift.Pieces[0], repair.Thickness, lift.Forces, JobUnits.Of(UnitSystem.Si), 60, FigureBuilder.ScreenRuler), FigureBuilder.ScreenRuler);
        }
    }

    [Theory]
    [InlineData("usual", "3/8 in", "2 ft 2 3/4 in", "12–18 h", "4.5 ton")]
    [InlineData("SI, four lanes, skewed joints", "9.5 mm", "681 mm", "12–18 h", "4.1 t")]
    public void ThePagesHaveTheirFigures(string job, string sawWidth, string reliefAt, string hours, string heaviest)
    {
        using var folder = new ScratchFolder();
        var (project, plan) = OddJobs.Of(job).Build();
        var pages = OutsideProgram.Run("pdftotext", "-layout", folder.Save(PlanSetPdf.Write(project, plan, Options)), "-").Split('\f');
        var units = JobUnits.Of(project.UnitSystem);
        var seals = Of("Joint seals");
        Assert.Contains("saw width " + sawWidth, seals, StringComparison.Ordinal);
        Assert.Contains("Sealing, in order", seals, StringComparison.Ordinal);
        Assert.All(plan.Seals.Reservoirs.SelectMany(r => r.Table), row => Assert.Contains(units.TemperatureText(row.SlabTemperature), seals, StringComparison.Ordinal));
        Assert.Equal(plan.Seals.Reservoirs.Any(r => r.Chosen is null), seals.Contains("keeps every limit here", StringComparison.Ordinal));
        var lifts = Of("Lifting out");
        Assert.Contains("of " + heaviest, lifts, StringComparison.Ordinal);
        Assert.Contains("Nobody under or beside the piece.", lifts, StringComparison.Ordinal);
        Assert.All(plan.Lifts.Repairs, r => Assert.Contains(r.RepairId, lifts, StringComparison.Ordinal));
        Assert.Contains("beyond chart", lifts, StringComparison.Ordinal);
        var pressure = Of("Pressure and relief cuts");
        Assert.Contains(reliefAt, pressure, StringComparison.Ordinal);
        Assert.Contains(hours, pressure, StringComparison.Ordinal);
        Assert.Contains($"Every repair: {plan.Pressure.Repairs.Sum(r => r.Reliefs.Length)} relief cuts", pressure, StringComparison.Ordinal);

        string Of(string title) => string.Concat(pages.Where(p => p.TrimStart().StartsWith(title, StringComparison.Ordinal)));
    }

    [Fact]
    public void TheTablesHoldEveryJointPieceAndAlternative()
    {
        var (project, plan) = OddJobs.Of("usual").Build();
        var files = SheetSet.Write(project, plan, Options).ToDictionary(f => f.Name, f => Encoding.UTF8.GetString(f.Content).Split("\r\n", StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(plan.Joints.Joints.Length + 1, files["plan-joints.csv"].Length);
        Assert.StartsWith("repair,position,lane,station,at_ft,design,layout,bars,bar_kind,arrangement,diameter_in,length_in,embedment_in,centre_depth_in,spacing_in,offsets_in,", files["plan-joints.csv"][0], StringComparison.Ordinal);
        Assert.Contains("Dowelled,J1,11,dowel,full width,1.5,18,9,5,12,12; 24; 36; 48; 60; 72; 84; 96; 108; 120; 132,epoxy,1.625,9.5,3", files["plan-joints.csv"][1], StringComparison.Ordinal);
        Assert.Equal(plan.Joints.Lanes.Sum(l => l.Alternatives.Length) + 1, files["plan-joint-alternatives.csv"].Length);
        Assert.Equal(plan.Joints.Lanes.Count(l => l.Winner is not null), files["plan-joint-alternatives.csv"].Count(l => l.Split(',')[1] == "yes"));
        Assert.Equal(plan.Lifts.Repairs.Sum(r => r.Pieces.Length) + 1, files["plan-lift-pieces.csv"].Length);
        Assert.Equal(plan.Seals.Joints.Length + 1, files["plan-joint-seals.csv"].Length);
        Assert.Contains(",S1,Silicone,0.375,1,0.25,,0.5,0.25,59", files["plan-joint-seals.csv"][1], StringComparison.Ordinal);
    }

    [Fact]
    public void APlanWithoutJointsStillPrints()
    {
        var (project, plan) = OddJobs.Of("usual").Build();
        var bare = plan with { Joints = Core.Joints.Design.JointPlan.Empty, Seals = SealPlan.Empty, Lifts = LiftPlan.Empty, Pressure = PressurePlan.Empty };
        using var folder = new ScratchFolder();
        var text = OutsideProgram.Run("pdftotext", "-layout", folder.Save(PlanSetPdf.Write(project, bare, Options)), "-");
        foreach (var title in new[] { "Drilling layout", "Joint schedule", "Joint seals", "Lifting out", "Load transfer" }) Assert.DoesNotContain(title, text, StringComparison.Ordinal);
        Assert.Contains("Repair schedule", text, StringComparison.Ordinal);
    }
}
