using Slabwright.Core.Survey;
using Slabwright.Examples.Ltpp;

namespace Slabwright.SystemTests.Examples;

public class LtppComparisonTests
{
    private static readonly Lazy<ComparisonResult> Result = new(() => Comparison.Run(LtppData.Load(ExampleFolder.Data)));

    [Fact]
    public void The_report_in_docs_is_what_the_program_computes()
    {
        var committed = File.ReadAllText(ExampleFolder.Report).ReplaceLineEndings("\n");
        Assert.True(Report.Write(Result.Value) == committed,
            "docs/ltpp-comparison.md is out of date: run `dotnet run --project examples/ltpp` and read what changed.");
    }

    [Fact]
    public void Every_worked_survey_comes_before_its_work_and_within_the_window()
    {
        var worked = Sampling.Worked(LtppData.Load(ExampleFolder.Data), Comparison.WindowMonths);
        Assert.True(worked.Count > 100);
        Assert.All(worked, o => Assert.True(o.Survey.Day < o.Event!.Day && o.Event.Day <= o.Survey.Day.AddMonths(Comparison.WindowMonths)));
        Assert.Equal(worked.Count, worked.Select(o => (o.Section.Key, o.Survey.Day)).Distinct().Count());
    }

    [Fact]
    public void No_quiet_section_has_full_depth_work_on_record()
    {
        var quiet = Sampling.Quiet(LtppData.Load(ExampleFolder.Data));
        Assert.True(quiet.Count > 300);
        Assert.All(quiet, o => Assert.DoesNotContain(o.Section.Events, e => e.Codes.Overlaps([4, 5, 7])));
    }

    /// <summary>Arkansas 05-4046 on 1994-12-01, read by eye in mon_dis_jpcc_rev; 2.9 m of longitudinal crack are one slab's length begun.</summary>
    [Fact]
    public void Counts_become_as_many_distresses()
    {
        var section = LtppData.Load(ExampleFolder.Data).Single(s => s.Key == new SectionKey(5, "4046"));
        var survey = section.Surveys.Single(s => s.Day == new DateOnly(1994, 12, 1));
        var mapped = SurveyMapping.Map(section, survey)!.Value;
        int Count(DistressType type, Severity severity) =>
            mapped.Survey.Distresses.Count(d => d.Type == type && d.Severity == severity);
        Assert.Equal(2, Count(DistressType.CornerBreak, Severity.High));
        Assert.Equal(1, Count(DistressType.LongitudinalCracking, Severity.Low));
        Assert.Equal(1, Count(DistressType.TransverseCracking, Severity.Low));
        Assert.Equal(22, Count(DistressType.TransverseJointSealDamage, Severity.Low));
        Assert.Equal(4, Count(DistressType.TransverseJointSpalling, Severity.Low));
        Assert.Equal(1, Count(DistressType.TransverseJointSpalling, Severity.High));
        Assert.Equal(34, mapped.Road.Lanes[0].SlabCount);
    }

    /// <summary>Wilson's interval of 8 of 10, worked by hand: 0.490 to 0.943.</summary>
    [Fact]
    public void Wilson_interval_of_eight_in_ten()
    {
        var share = Statistics.Wilson(8, 10);
        Assert.Equal(0.490, share.Low, 0.0005);
        Assert.Equal(0.943, share.High, 0.0005);
    }

    [Fact]
    public void Chance_larger_counts_ties_half_and_rank_correlation_sees_order_only()
    {
        Assert.Equal(0.625, Statistics.ChanceLarger([1, 3], [1, 2]));
        Assert.Equal(1, Statistics.RankCorrelation([1, 2, 3, 4], [1, 10, 100, 1000]), 12);
        Assert.Equal(-1, Statistics.RankCorrelation([1, 2, 3], [3, 2, 1]), 12);
    }
}
