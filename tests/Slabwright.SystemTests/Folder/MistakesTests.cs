using Slabwright.Core.Survey;
using Slabwright.Data.Folder;
using Slabwright.Data.Import;
using Slabwright.Examples.Marrowby;

namespace Slabwright.SystemTests.Folder;

/// <summary>The practice file of the demo: every slip is named at its row, and what can be kept is kept.</summary>
public sealed class MistakesTests
{
    private static readonly SurveyRecord Survey = Read();

    [Theory]
    [InlineData(3, "from_station")]
    [InlineData(4, "lane")]
    [InlineData(5, "type")]
    [InlineData(6, "from_station")]
    [InlineData(7, "severity")]
    [InlineData(8, "depth_in")]
    [InlineData(9, null)]
    [InlineData(10, null)]
    [InlineData(11, null)]
    [InlineData(12, "date")]
    [InlineData(13, null)]
    [InlineData(14, "width_in")]
    public void Each_slip_is_named_at_its_row(int row, string? field)
    {
        var findings = Survey.Findings.Where(f => f.Place.Row == row).ToList();
        Assert.True(findings.Count > 0, string.Join(Environment.NewLine, Survey.Findings));
        Assert.All(findings, f => Assert.False(string.IsNullOrEmpty(f.Mend)));
        if (field is not null) Assert.Contains(findings, f => f.Place.Field?.Contains(field, StringComparison.Ordinal) == true);
    }

    [Fact]
    public void The_good_row_has_no_finding_and_is_kept()
    {
        Assert.DoesNotContain(Survey.Findings, f => f.Place.Row == 2);
        Assert.Contains(Survey.Distresses, d => d.Id == "E01" && d.Type == DistressType.CornerBreak);
        Assert.DoesNotContain(Survey.Distresses, d => d.Id is "E03" or "E04" or "E05" or "E10");
    }

    private static SurveyRecord Read()
    {
        var folder = Examples.PathOf(MarrowbyParkway.FolderName);
        var today = new DateOnly(2026, 4, 1);
        var project = ProjectFolder.Read(folder, today).Project!;
        return SurveyImporter.Import(
            Path.Combine(folder, "survey_with_mistakes.csv"), project.Road, new SurveyImportOptions { UnitSystem = project.UnitSystem, Today = today });
    }
}
