using Slabwright.Core.Survey;
using static Slabwright.Tests.Surveys.Scene;

namespace Slabwright.Tests.Surveys;

public class SurveyMergeTests
{
    private const string Header = "lane,type,sev,at,width,date\n";

    private static readonly string[] Rows =
    [
        "1,TC,H,101+00,0.5,2026-03-01", "1,TC,M,101+03,0.25,2026-03-01", "1,CB,L,102+00,,2026-03-01", "2,TC,H,110+00,0.5,2026-03-01",
        "2,LC,H,112+00,0.5,2026-03-01",
    ];

    [Fact]
    public void The_same_rows_in_any_order_change_nothing()
    {
        var before = Read(Header + string.Join('\n', Rows));
        foreach (var seed in Enumerable.Range(1, 20))
        {
            var shuffled = Rows.ToArray();
            new Random(seed).Shuffle(shuffled);
            var fresh = Read(Header + string.Join('\n', shuffled));
            var merged = SurveyMerge.Apply(before, fresh);
            Assert.True(merged.IsUnchanged);
            Assert.Equal(5, merged.Unchanged);
            Assert.Equal(before.Distresses.Select(d => d.Id).Order(), fresh.Distresses.Select(d => d.Id).Order());
        }
    }

    [Fact]
    public void Natural_ids_name_lane_slab_type_and_order_along_the_slab() =>
        Assert.Equal(["L1-S7-TC-1", "L1-S7-TC-2", "L1-S14-CB-1", "L2-S67-TC-1", "L2-S81-LC-1"],
            Read(Header + string.Join('\n', Rows)).Distresses.Select(d => d.Id));

    [Fact]
    public void A_corrected_file_changes_only_what_was_corrected()
    {
        var before = Read(Header + string.Join('\n', Rows));
        string[] corrected =
        [
            "1,TC,L,100+99,0.125,2026-03-01", // new, before the two on the slab
            "1,TC,H,101+00,0.5,2026-03-01", // as before
            "1,TC,M,101+03,0.375,2026-03-01", // width corrected
            "2,TC,H,110+06,0.5,2026-03-01", // moved over a joint
            "2,CB,H,112+00,0.5,2026-03-01", // type corrected; the corner break of lane 1 is gone
        ];
        var merged = SurveyMerge.Apply(before, Read(Header + string.Join('\n', corrected)));
        Assert.Equal(["L1-S7-TC-3", "L1-S7-TC-1", "L1-S7-TC-2", "L2-S67-TC-1", "L2-S81-LC-1"], merged.Survey.Distresses.Select(d => d.Id));
        Assert.Equal(["L1-S7-TC-3"], merged.Added.Select(d => d.Id));
        Assert.Equal(["L1-S7-TC-2", "L2-S67-TC-1", "L2-S81-LC-1"], merged.Changed.Select(c => c.After.Id));
        Assert.All(merged.Changed, c => Assert.Equal(c.Before.Id, c.After.Id));
        Assert.Equal(["L1-S14-CB-1"], merged.Removed.Select(d => d.Id));
        Assert.Equal(1, merged.Unchanged);
        Assert.True(SurveyMerge.Apply(merged.Survey, Read(Header + string.Join('\n', corrected))).IsUnchanged);
    }

    [Fact]
    public void The_files_own_ids_go_before_everything_else()
    {
        var before = Read("id,lane,type,sev,at,date\nA,1,TC,H,101+00,2026-03-01\nB,1,TC,H,120+00,2026-03-01");
        var merged = SurveyMerge.Apply(before, Read("id,lane,type,sev,at,date\nB,1,TC,H,101+00,2026-03-01\nA,2,CB,L,125+00,2026-03-01"));
        Assert.Equal(["A", "B"], merged.Changed.Select(c => c.After.Id).Order());
        Assert.Empty(merged.Added);
        Assert.Empty(merged.Removed);
    }

    [Fact]
    public void Every_row_is_counted_once_whatever_the_two_files_hold()
    {
        for (var seed = 1; seed <= 200; seed++)
        {
            var random = new Random(seed);
            var (before, fresh) = (Read(Header + Some(random)), Read(Header + Some(random)));
            var merged = SurveyMerge.Apply(before, fresh);
            Assert.Equal(fresh.Distresses.Length, merged.Added.Length + merged.Changed.Length + merged.Unchanged);
            Assert.Equal(before.Distresses.Length, merged.Removed.Length + merged.Changed.Length + merged.Unchanged);
            Assert.Equal(merged.Survey.Distresses.Length, merged.Survey.Distresses.Select(d => d.Id).Distinct().Count());
            Assert.True(SurveyMerge.Apply(merged.Survey, fresh).IsUnchanged);
        }
    }

    private static string Some(Random random) => string.Join('\n', Enumerable.Range(0, random.Next(12)).Select(_ =>
        $"{random.Next(1, 3)},{(random.Next(2) == 0 ? "TC" : "LC")},{"LMH"[random.Next(3)]},10{random.Next(3)}+{random.Next(10):00},0.{random.Next(1, 3)},2026-03-01"));
}
