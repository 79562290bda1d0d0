using CsCheck;
using Slabwright.Core.Evidence;
using Slabwright.Core.Survey;
using static Slabwright.Tests.Surveys.Scene;

namespace Slabwright.Tests.Surveys;

public class SurveyGrowthTests
{
    private static readonly GrowthModel Model = new([new GrowthRate(DistressType.LongitudinalCracking, 0.01, 0.05, 0.2, 0.1), new GrowthRate(null, 0, 0.02, 0.1, 0)]);

    private static Distress Surveyed(DateOnly on, DistressType type = DistressType.LongitudinalCracking, int count = 1) => new()
    {
        Id = "D1", Lane = 1, Type = type, Severity = Severity.High, From = 10, To = 14, Slab = 3, SurveyedOn = on, Count = count,
    };

    [Fact]
    public void Two_years_at_a_rate_add_twice_the_rate_at_each_end()
    {
        // By hand: 2024-04-01 to 2026-04-01 is 730 days, 1.99867 years; 0.05 m a year gives 0.09993 m at each end.
        var growth = SurveyGrowth.Of(Surveyed(new DateOnly(2024, 4, 1)), new DateOnly(2026, 4, 1), Model)!;
        Assert.Equal(1.99867, growth.Years, 1e-5);
        Assert.Equal(0.09993, growth.EachEnd.Likely, 1e-5);
        Assert.Equal(4 + 2 * 0.09993, growth.Extent.Likely, 1e-5);
        Assert.Contains("2.0 years", growth.Reason.Sentence, StringComparison.Ordinal);
        Assert.Contains(growth.Reason.Inputs, i => i.Name == "rate high" && i.Value == "0.2 m a year");
    }

    [Fact]
    public void New_distresses_compound_by_type()
    {
        // By hand: three surveyed, 10 % a year over 730 days: 3 × (1.1^1.99867 − 1) = 0.6295.
        var survey = SurveyRecord.Empty with { Distresses = [Surveyed(new DateOnly(2024, 4, 1), count: 2), Surveyed(new DateOnly(2024, 4, 1)), Surveyed(new DateOnly(2024, 4, 1), DistressType.Blowup)] };
        var news = Assert.Single(SurveyGrowth.NewBy(survey, new DateOnly(2026, 4, 1), Model));
        Assert.Equal((DistressType.LongitudinalCracking, 3), (news.Type, news.Surveyed));
        Assert.Equal(3 * (Math.Pow(1.1, 730 / 365.2425) - 1), news.Expected, 1e-12);
        Assert.Equal(0.6295, news.Expected, 1e-4);
    }

    [Fact]
    public void Growth_never_shrinks_stays_in_order_and_adds_up_over_time() =>
        Gen.Select(Gen.Int[0, 4000], Gen.Int[0, 4000], Gen.Double[0, 0.1], Gen.Double[0, 0.2], Gen.Double[0, 0.3]).Sample((days, more, low, likely, high) =>
        {
            var model = new GrowthModel([new GrowthRate(null, low, low + likely, low + likely + high, 0.05)]);
            var d = Surveyed(Today);
            var first = SurveyGrowth.Of(d, Today.AddDays(days), model)!;
            var second = SurveyGrowth.Of(d, Today.AddDays(days + more), model)!;
            var ordered = first.EachEnd.Low >= 0 && first.EachEnd.Low <= first.EachEnd.Likely && first.EachEnd.Likely <= first.EachEnd.High;
            var grows = second.EachEnd.Low >= first.EachEnd.Low && second.EachEnd.High >= first.EachEnd.High;
            var linear = Math.Abs(second.EachEnd.High - first.EachEnd.High - more / 365.2425 * (low + likely + high)) < 1e-9;
            return ordered && grows && linear && Math.Abs(first.Extent.High - d.Extent - 2 * first.EachEnd.High) < 1e-9;
        });

    [Fact]
    public void A_survey_on_or_after_the_day_of_work_does_not_grow()
    {
        Assert.Equal(new GrowthRange(0, 0, 0), SurveyGrowth.Of(Surveyed(Today), Today, Model)!.EachEnd);
        Assert.Equal(new GrowthRange(0, 0, 0), SurveyGrowth.Of(Surveyed(Today), Today.AddDays(-100), Model)!.EachEnd);
        Assert.Null(SurveyGrowth.Of(Surveyed(Today), null, Model));
        Assert.Null(SurveyGrowth.Of(Surveyed(Today), Today, GrowthModel.None));
        Assert.Empty(SurveyGrowth.NewBy(SurveyRecord.Empty with { Distresses = [Surveyed(Today)] }, null, Model));
    }

    [Fact]
    public void The_shipped_rates_call_themselves_assumptions_and_the_projects_own_do_not()
    {
        var shipped = SurveyGrowth.Of(Surveyed(Today), Today.AddDays(365), SurveyGrowth.Assumption)!.Reason.Source;
        Assert.Equal("assumption, to be confirmed by the project", shipped.ToString());
        Assert.Equal(SourceRef.Project, SurveyGrowth.Of(Surveyed(Today), Today.AddDays(365), Model)!.Reason.Source);
        Assert.All(SurveyGrowth.Assumption.Rates, r => Assert.True(r.LengthPerYearLow <= r.LengthPerYearLikely && r.LengthPerYearLikely <= r.LengthPerYearHigh && r.NewPerYear >= 0));
    }
}
