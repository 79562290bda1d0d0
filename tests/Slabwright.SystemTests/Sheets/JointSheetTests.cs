using System.Globalization;
using System.Xml.Linq;
using Slabwright.Core.Job;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;
using Slabwright.Sheets;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.PlanSet;
using Slabwright.Sheets.Words;

namespace Slabwright.SystemTests.Sheets;

/// <summary>The joint drawings: to scale, readable, and the same on paper, on screens and in the drawing file.</summary>
public sealed class JointSheetTests
{
    private static readonly SheetOptions Options = new(new DateOnly(2026, 4, 1)) { Version = "1.2.3", Revision = "B" };
    private static readonly JointReservoir Reservoir = new(0.009525, 0.0381);

    public static TheoryData<string> Jobs => OddJobs.Names;

    [Theory]
    [MemberData(nameof(Jobs))]
    public void NoWordOfADrawingLiesOnAnother(string job)
    {
        var (project, plan) = Made(job);
        var joints = plan.Joints;
        using var fonts = new PaperFonts();
        foreach (var joint in JointLayouts.Of(joints).Select(g => g.Sample))
        {
            foreach (var (scale, ruler) in new[] { (72 / 0.0254 / 16, FigurePainter.RulerOf(fonts)), (72 / 0.0254 / 48, FigurePainter.RulerOf(fonts)), (150.0, FigureBuilder.ScreenRuler) })
            {
                var options = new JointDrawingOptions(project.UnitSystem, scale, scale * 4) { Reservoir = Reservoir, Ruler = ruler };
                FigureAsserts.Readable(JointAcross.Draw(joint, options), ruler);
                FigureAsserts.Readable(JointSection.Draw(joint, options), ruler);
            }
        }
    }

    [Fact]
    public void BarsStandToScaleFromTheLanesLeftEdge()
    {
        var joint = Made("usual").Plan.Joints.Joints[0];
        var options = new JointDrawingOptions(UnitSystem.UsCustomary, 200, 800);
        var figure = JointAcross.Draw(joint, options);
        for (var i = 0; i < joint.Bars!.Bars; i++)
        {
            var drawn = figure.Shapes.OfType<FigureCircle>().Where(c => c.Ref == $"bar-{i + 1}").ToList();
            Assert.Equal(2, drawn.Count);
            Assert.All(drawn, c => Assert.Equal(joint.Bars.Offsets[i] * 200, c.Centre.X - figure.Origin.X, 1e-6));
            Assert.Equal([joint.Drilling!.HoleDiameter * 100, joint.Bars.Diameter * 100], drawn.Select(c => c.Radius), (a, b) => Math.Abs(a - b) < 1e-9);
        }

        var section = JointSection.Draw(joint, options);
        var bar = section.Shapes.OfType<FigureArea>().Single(a => a.Style == FigureStyle.BarAnchored).Rings[0];
        Assert.Equal(joint.Bars.Embedment * 800, bar.Max(p => p.X) - bar.Min(p => p.X), 1e-6);
        Assert.Equal(joint.Bars.Depth * 800, (bar.Max(p => p.Y) + bar.Min(p => p.Y)) / 2 - section.Origin.Y, 1e-6);
    }

    [Fact]
    public void OldSlabLiesBehindAStartAndAheadOfAnEnd()
    {
        var joints = Made("usual").Plan.Joints.Joints;
        foreach (var (position, old) in new[] { (JointPosition.Start, "behind"), (JointPosition.End, "ahead") })
        {
            var figure = JointAcross.Draw(joints.First(j => j.Position == position), new JointDrawingOptions(UnitSystem.Si, 100, 400));
            Assert.Equal(FigureStyle.OldConcrete, figure.Shapes.Single(s => s.Ref == old).Style);
            Assert.Single(figure.Shapes, s => s.Ref is "ahead" or "behind" && s.Style == FigureStyle.OldConcrete);
        }

        var inner = JointAcross.Draw(joints.First(j => j.Position == JointPosition.Inner), new JointDrawingOptions(UnitSystem.Si, 100, 400));
        Assert.DoesNotContain(inner.Shapes, s => s.Style is FigureStyle.OldConcrete or FigureStyle.Hole);
    }

    [Theory]
    [InlineData("usual", "11 ft 0 in", "1 5/8 in in diameter", "3/4 in = 1 ft")]
    [InlineData("SI, four lanes, skewed joints", "3,329 mm", "41 mm in diameter", "1:20")]
    public void ThePrintedSheetHasDimensionsStepsAndCaution(string job, string lastOffset, string hole, string scale)
    {
        using var folder = new ScratchFolder();
        var (project, plan) = Made(job);
        var joints = plan.Joints;
        var text = OutsideProgram.Run("pdftotext", "-layout", "-l", "1", folder.Save(Printed(project, plan)), "-");
        foreach (var word in new[] { lastOffset, hole, scale, "Silica dust", "Tolerances", "left drill at", "J1", "R001" }) Assert.Contains(word, text, StringComparison.Ordinal);
        Assert.All(joints.Joints[0].Drilling!.Steps, s => Assert.Contains(s.Name + ":", text, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void EveryJointIsInTheSchedule(string job)
    {
        using var folder = new ScratchFolder();
        var (project, plan) = Made(job);
        var joints = plan.Joints;
        if (joints.Joints.IsEmpty) return;
        var text = OutsideProgram.Run("pdftotext", "-layout", folder.Save(Printed(project, plan)), "-");
        Assert.All(joints.Joints, j => Assert.Contains(project.Road.Stationing.Format(j.At), text, StringComparison.Ordinal));
        Assert.Contains(SheetWords.Count(joints.Joints.Length, "joint"), text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(JointPosition.Start, 1000)]
    [InlineData(JointPosition.End, 700)]
    [InlineData(JointPosition.Inner, 900)]
    public void TheScreenDrawingIsWellFormedAndTold(JointPosition position, double width)
    {
        var joint = Made("usual").Plan.Joints.Joints.First(j => j.Position == position);
        var svg = XDocument.Parse(JointSvg.Draw(joint, new JointSvgOptions(width, UnitSystem.UsCustomary) { IdPrefix = "one" })).Root!;
        Assert.Contains("centres 5 in below the surface", svg.Elements().Single(e => e.Name.LocalName == "desc").Value, StringComparison.Ordinal);
        Assert.Equal("one-title one-desc", (string?)svg.Attribute("aria-labelledby"));
        Assert.InRange(double.Parse((string)svg.Attribute("width")!, CultureInfo.InvariantCulture), width * 0.7, width * 1.02);
        Assert.All(Enumerable.Range(1, joint.Bars!.Bars), i => Assert.Contains(svg.Descendants(), e => (string?)e.Attribute("data-ref") == $"bar-{i}"));
        Assert.DoesNotContain(svg.Descendants(), e => e.Name.LocalName == "script" || e.Attribute("style") is not null);
    }

    [Theory]
    [InlineData("usual", 1, 0.0254)]
    [InlineData("SI, four lanes, skewed joints", 4, 0.001)]
    public void EzdxfReadsTheLayoutsAtFullSize(string job, int unitCode, double unit)
    {
        const string script = """
            import sys, ezdxf, collections
            doc = ezdxf.readfile(sys.argv[1])
            audit = doc.audit()
            print(len(audit.errors), len(audit.fixes), doc.header['$INSUNITS'])
            for e in doc.modelspace().query('CIRCLE[layer=="JOINT-BARS"]'): print('bar', e.dxf.center.x, e.dxf.center.y, e.dxf.radius)
            for e in doc.modelspace().query('TEXT[layer=="JOINT-TEXT"]'): print('text', e.dxf.text)
            print('hatches', len(doc.modelspace().query('HATCH')))
            print('layers', *sorted(l.dxf.name for l in doc.layers if l.dxf.name.startswith('JOINT-')))
            """;
        using var folder = new ScratchFolder();
        var (project, plan) = Made(job);
        var joints = plan.Joints;
        var lines = OutsideProgram.Python("ezdxf", script, folder.Save(JointDxfFile.Write(project, plan, Options))).Split('\n');
        Assert.Equal($"0 0 {unitCode}", lines[0]);
        var bars = lines.Where(l => l.StartsWith("bar ", StringComparison.Ordinal)).Select(l => l.Split(' ').Skip(1).Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray()).ToList();
        var groups = JointLayouts.Of(joints);
        Assert.Equal(groups.Sum(g => g.Bars.Bars), bars.Count);
        var expected = groups.SelectMany(g => g.Bars.Offsets.Select(o => (o / unit, g.Bars.Diameter / 2 / unit))).ToList();
        for (var i = 0; i < bars.Count; i++)
        {
            Assert.Equal(expected[i].Item1, bars[i][0], 1e-4);
            Assert.Equal(expected[i].Item2, bars[i][2], 1e-4);
        }

        Assert.All(groups, g => Assert.Contains(lines, l => l.StartsWith($"text {g.Mark}: lane", StringComparison.Ordinal)));
        Assert.Equal("layers " + string.Join(' ', JointDxfLayers.All.Select(l => l.Name).Order(StringComparer.Ordinal)), lines[^2]);
    }

    /// <summary>Outside value: the fractions as a steel rule and a bar list print them.</summary>
    [Theory]
    [InlineData(0.0381, "1 1/2 in", "38 mm")]
    [InlineData(0.041275, "1 5/8 in", "41 mm")]
    [InlineData(0.009525, "3/8 in", "9.5 mm")]
    [InlineData(0.3048, "12 in", "305 mm")]
    [InlineData(3.51155, "11 ft 6 1/4 in", "3,512 mm")]
    [InlineData(0.0015875, "1/16 in", "1.6 mm")]
    public void DetailsAreWrittenAsTheTradeDoes(double metres, string us, string si)
    {
        Assert.Equal(us, JobUnits.Of(UnitSystem.UsCustomary).Detail(metres));
        Assert.Equal(si, JobUnits.Of(UnitSystem.Si).Detail(metres));
    }

    private static (Project Project, RepairPlan Plan) Made(string job) => OddJobs.Of(job).Build();

    private static SheetFile Printed(Project project, RepairPlan plan)
    {
        using var fonts = new PaperFonts();
        var frame = new SheetFrame(project, Options);
        List<SheetDraft> drafts = [.. new JointSheets(project, plan, frame, fonts).Drafts(), .. new AlternativeSheets(project, plan, frame, fonts).Drafts()];
        return new SheetFile("joints.pdf", "application/pdf", "", PlanSetPdf.Print(drafts, project, Options, frame, fonts));
    }
}
