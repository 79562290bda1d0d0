using System.Globalization;
using System.Xml.Linq;
using Slabwright.Sheets;
using Slabwright.Sheets.PlanSet;

namespace Slabwright.SystemTests.Sheets;

/// <summary>
/// The plan set judged by qpdf (structure) and poppler (what a reader sees): every repair is there, nothing leaves the paper, no word lies
/// on another.
/// </summary>
public sealed class PlanSetReadBackTests
{
    private static readonly SheetOptions Options = new(new DateOnly(2026, 4, 1)) { Version = "1.2.3", Revision = "B" };

    public static TheoryData<string> Jobs => OddJobs.Names;

    [Theory]
    [MemberData(nameof(Jobs))]
    public void QpdfFindsNoFault(string job)
    {
        using var folder = new ScratchFolder();
        var output = OutsideProgram.Run("qpdf", "--check", Written(job, folder));
        Assert.Contains("No syntax or stream encoding errors found", output, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void AReaderSeesEveryRepairAndTotal(string job)
    {
        using var folder = new ScratchFolder();
        var (project, plan) = OddJobs.Of(job).Build();
        var text = OutsideProgram.Run("pdftotext", "-raw", Written(job, folder), "-");
        var pages = text.Split('\f', StringSplitOptions.RemoveEmptyEntries);
        Assert.All(plan.Boundaries.Repairs, r => Assert.True(Occurrences(text, r.Id) >= 3, $"{r.Id} should be on a strip sheet, in the schedule and among the reasons"));
        Assert.All(plan.SurfaceWorks, w => Assert.Contains(w.Id, text, StringComparison.Ordinal));
        Assert.All(plan.Decisions, d => Assert.Contains(d.DistressId, text, StringComparison.Ordinal));
        Assert.Contains(plan.Quantities.Schedule.Total.ToString("N2", CultureInfo.InvariantCulture), text, StringComparison.Ordinal);
        Assert.All(plan.Quantities.Schedule.Lines, l => Assert.Contains(l.Amount.ToString("N2", CultureInfo.InvariantCulture), text, StringComparison.Ordinal));
        for (var i = 0; i < pages.Length; i++)
        {
            Assert.Contains($"Sheet {i + 1} of {pages.Length}", pages[i], StringComparison.Ordinal);
            Assert.Contains("2026-04-01", pages[i], StringComparison.Ordinal);
            Assert.Contains(project.RuleSet.Name, pages[i], StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void NothingLeavesThePaperAndNoWordLiesOnAnother(string job)
    {
        using var folder = new ScratchFolder();
        var pages = XDocument.Parse(OutsideProgram.Run("pdftotext", "-bbox", Written(job, folder), "-")).Descendants().Where(e => e.Name.LocalName == "page").ToList();
        Assert.NotEmpty(pages);
        foreach (var (page, number) in pages.Select((p, i) => (p, i + 1)))
        {
            var words = page.Elements().Select(Word.Of).ToList();
            Assert.NotEmpty(words);
            var (width, height) = (Number(page, "width"), Number(page, "height"));
            var outside = words.FirstOrDefault(w => w.Left < 20 || w.Right > width - 20 || w.Top < 15 || w.Bottom > height - 15);
            Assert.True(outside is null, $"sheet {number}: {outside}");
            var clash = Clash(words);
            Assert.True(clash is null, $"sheet {number}: {clash}");
        }
    }

    [Fact]
    public void FontsTravelInTheFile()
    {
        using var folder = new ScratchFolder();
        var fonts = OutsideProgram.Run("pdffonts", Written("usual", folder)).Split('\n').Skip(2).Where(l => l.Length > 0).ToList();
        Assert.NotEmpty(fonts);
        Assert.All(fonts, line => Assert.Matches(@"IBMPlexSansCond.*\byes yes\b", line));
    }

    private static string Written(string job, ScratchFolder folder)
    {
        var (project, plan) = OddJobs.Of(job).Build();
        return folder.Save(PlanSetPdf.Write(project, plan, Options));
    }

    private static int Occurrences(string text, string word) => text.Split(word).Length - 1;

    private static double Number(XElement element, string name) => double.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);

    /// <summary>The first pair of words whose ink overlaps by more than a hair.</summary>
    private static string? Clash(List<Word> words)
    {
        var sorted = words.Select(w => w.Ink()).OrderBy(w => w.Left).ToList();
        for (var i = 0; i < sorted.Count; i++)
        {
            for (var j = i + 1; j < sorted.Count && sorted[j].Left < sorted[i].Right; j++)
            {
                var across = Math.Min(sorted[i].Right, sorted[j].Right) - sorted[j].Left;
                var down = Math.Min(sorted[i].Bottom, sorted[j].Bottom) - Math.Max(sorted[i].Top, sorted[j].Top);
                if (across > 1 && down > 1) return $"{sorted[i]} and {sorted[j]}";
            }
        }

        return null;
    }

    private sealed record Word(string Text, double Left, double Top, double Right, double Bottom)
    {
        /// <summary>The box without the room the font leaves above capitals and below the baseline.</summary>
        public Word Ink()
        {
            var isTurned = Bottom - Top > (Right - Left) * 1.6 && Text.Length > 2;
            var (dx, dy) = isTurned ? ((Right - Left) * 0.25, 0.0) : (0.0, (Bottom - Top) * 0.25);
            return this with { Left = Left + dx, Right = Right - dx, Top = Top + dy, Bottom = Bottom - dy };
        }

        public static Word Of(XElement e) => new(e.Value, Number(e, "xMin"), Number(e, "yMin"), Number(e, "xMax"), Number(e, "yMax"));
    }
}
