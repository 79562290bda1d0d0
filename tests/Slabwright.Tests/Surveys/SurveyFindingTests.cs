using Slabwright.Core.Evidence;
using Slabwright.Core.Survey;
using static Slabwright.Tests.Surveys.Scene;

namespace Slabwright.Tests.Surveys;

/// <summary>Each way a row can be wrong: its code, its weight, where it points, what becomes of the row, and that good rows beside it stay.</summary>
public class SurveyFindingTests
{
    private const string Good = "\n1,LC,L,105+00,105+10,2026-03-01";

    [Theory]
    [InlineData("SRV-020", "type", "1,,H,101+00,,2026-03-01", 0)]
    [InlineData("SRV-020", "sev", "1,TC,,101+00,,2026-03-01", 0)]
    [InlineData("SRV-020", "lane", ",TC,H,101+00,,2026-03-01", 0)]
    [InlineData("SRV-020", "at", "1,TC,H,,,2026-03-01", 0)]
    [InlineData("SRV-021", "type", "1,Transvers crakc,H,101+00,,2026-03-01", 0)]
    [InlineData("SRV-021", "type", "1,5,H,101+00,,2026-03-01", 0)]
    [InlineData("SRV-022", "sev", "1,TC,awful,101+00,,2026-03-01", 0)]
    [InlineData("SRV-023", "sev", "1,Blowup,H,101+00,,2026-03-01", 1)]
    [InlineData("SRV-024", "lane", "3,TC,H,101+00,,2026-03-01", 0)]
    [InlineData("SRV-040", "from", "1,TC,H,101+0O,,2026-03-01", 0)]
    [InlineData("SRV-040", "to", "1,LC,H,101+00,abc,2026-03-01", 0)]
    [InlineData("SRV-042", "from", "1,LC,H,101+20,101+00,2026-03-01", 1)]
    [InlineData("SRV-043", null, "1,TC,H,99+90,,2026-03-01", 0)]
    [InlineData("SRV-043", null, "1,LC,H,129+90,130+10,2026-03-01", 0)]
    [InlineData("SRV-027", "date", "1,TC,H,101+00,,tomorrow", 1)]
    [InlineData("SRV-028", "date", "1,TC,H,101+00,,2026-04-02", 1)]
    [InlineData("SRV-029", "date", "1,TC,H,101+00,,1899-12-31", 1)]
    [InlineData("SRV-030", "date", "1,TC,H,101+00,,", 1)]
    [InlineData("SRV-007", null, "1,TC,H,101+00,,2026-03-01,surplus", 1)]
    [InlineData("SRV-008", null, "1,TC,H,101+00", 1)]
    public void A_wrong_row_is_named_with_its_place_and_mend(string code, string? field, string row, int kept)
    {
        var record = Read("lane,type,sev,from,to,date\n" + row + Good);
        var finding = record.Findings.First(f => f.Code == code);
        Assert.Equal(("survey.csv", 2L), (finding.Place.File, finding.Place.Row));
        Assert.Equal(field, finding.Place.Field);
        Assert.False(string.IsNullOrEmpty(finding.Mend));
        Assert.Equal(SurveyFaults.All.Single(f => f.Code == code).Level, finding.Level);
        Assert.Equal(kept + 1, record.Distresses.Length);
    }

    [Theory]
    [InlineData("SRV-025", "width", "about 3")]
    [InlineData("SRV-026", "width", "3 furlongs")]
    [InlineData("SRV-026", "width", "3 m2")]
    [InlineData("SRV-060", "width", "-1")]
    [InlineData("SRV-062", "width", "5")]
    [InlineData("SRV-063", "width", "200")]
    [InlineData("SRV-061", "depth", "11")]
    [InlineData("SRV-066", "depth", "120 %")]
    [InlineData("SRV-064", "faulting", "-2.5")]
    [InlineData("SRV-063", "faulting", "20")]
    [InlineData("SRV-063", "length", "40")]
    [InlineData("SRV-063", "area", "500")]
    [InlineData("SRV-063", "widening_below", "20 ft")]
    [InlineData("SRV-052", "offset_from", "14")]
    [InlineData("SRV-052", "offset_from", "-3")]
    [InlineData("SRV-065", "count", "0")]
    [InlineData("SRV-065", "count", "2.5")]
    [InlineData("SRV-032", "cause", "gremlins")]
    [InlineData("SRV-032", "across", "upstairs")]
    [InlineData("SRV-032", "overlay", "maybe")]
    public void A_wrong_value_is_left_out_and_its_row_kept(string code, string field, string value)
    {
        var record = Read($"lane,type,sev,at,date,{field}\n1,TC,H,101+00,2026-03-01,{value}");
        var finding = Assert.Single(record.Findings);
        Assert.Equal((code, 2L, field, value), (finding.Code, finding.Place.Row, finding.Place.Field, finding.Value));
        var d = Assert.Single(record.Distresses);
        var used = new[] { d.Width, d.Depth, d.Faulting, d.Length, d.Area, d.WideningBelow, d.OffsetFrom }.Count(v => v is not null);
        Assert.Equal(finding.Level == FindingLevel.Warning ? 1 : 0, used);
        Assert.Equal(1, d.Count);
    }

    [Theory]
    [InlineData("SRV-045", "slab", "201")]
    [InlineData("SRV-045", "slab", "0")]
    [InlineData("SRV-046", "joint", "202")]
    [InlineData("SRV-025", "slab", "twelve")]
    public void A_slab_or_joint_the_lane_does_not_have_is_an_error(string code, string field, string value)
    {
        var record = Read($"lane,type,sev,{field},date\n1,TC,H,{value},2026-03-01");
        Assert.Empty(record.Distresses);
        Assert.Contains(record.Findings, f => f.Code == code && f.Place.Field == field && f.Value == value);
    }

    [Fact]
    public void Slab_and_station_that_disagree_are_told_of_and_the_station_is_used()
    {
        var record = Read("lane,type,sev,station,slab,date\n1,TC,H,101+00,9,2026-03-01\n1,TC,H,101+05.5,7,2026-03-01");
        Assert.Equal([7, 7], record.Distresses.Select(d => d.Slab));
        var finding = Assert.Single(record.Findings);
        Assert.Equal(("SRV-047", 2L), (finding.Code, finding.Place.Row));
        Assert.Contains("slab 7, not on slab 9", finding.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_where_the_lane_has_no_concrete_is_an_error()
    {
        var road = Harrow with { Lanes = [LaneOf(1), LaneOf(2, 900, 2100)] };
        var record = Read("lane,type,sev,station,date\n2,TC,H,105+00,2026-03-01\n2,TC,H,115+00,2026-03-01", Options, road);
        Assert.Equal(["SRV-044"], Codes(record));
        Assert.Single(record.Distresses);
    }

    [Fact]
    public void Offsets_the_wrong_way_round_are_swapped()
    {
        var record = Read("lane,type,sev,at,offset left,offset right,date\n1,PT,H,101+00,9,3,2026-03-01");
        Assert.Equal(["SRV-053"], Codes(record));
        Assert.Equal((3 * Foot, 9 * Foot), (record.Distresses[0].OffsetFrom, record.Distresses[0].OffsetTo));
    }

    [Fact]
    public void An_extent_that_does_not_fit_from_and_to_is_told_of()
    {
        var record = Read("lane,type,sev,from,to,extent,date\n1,PT,H,101+00,101+08,12,2026-03-01");
        Assert.Equal(["SRV-055"], Codes(record));
        Assert.Equal(8 * Foot, record.Distresses[0].Extent, 1e-9);
    }

    [Fact]
    public void Exact_repeats_count_once_and_near_ones_twice()
    {
        var record = Read("""
            lane,type,sev,at,width,date
            1,TC,H,101+00,0.5,2026-03-01
            1,TC,M,110+00,0.5,2026-03-01
            1,TC,H,101+00,0.5,2026-03-01
            1,TC,H,110+00.5,0.5,2026-03-01
            2,TC,H,101+00,0.5,2026-03-01
            1,TC,H,101+09,0.5,2026-03-01
            """);
        Assert.Equal(5, record.Distresses.Length);
        Assert.Equal([("SRV-070", 4L), ("SRV-071", 5L)], record.Findings.Select(f => (f.Code, f.Place.Row!.Value)));
        Assert.Contains("row 2", record.Findings[0].Sentence, StringComparison.Ordinal);
        Assert.Contains("row 3", record.Findings[1].Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Equal_rows_with_ids_of_their_own_are_two()
    {
        var record = Read("id,lane,type,sev,at,date\nA,1,CB,H,101+00,2026-03-01\nB,1,CB,H,101+00,2026-03-01\nA,1,CB,H,120+00,2026-03-01");
        Assert.Equal(["A", "B", "L1-S134-CB-1"], record.Distresses.Select(d => d.Id));
        Assert.Equal(["SRV-071", "SRV-072"], Codes(record));
    }

    [Fact]
    public void Headings_not_known_or_doubled_are_told_of()
    {
        var record = Read("lane,type,sev,station,Sta,weather,widht,width (furlongs),date\n1,TC,H,101+00,102+00,fair,1,2,2026-03-01");
        Assert.Equal(["SRV-005", "SRV-004", "SRV-004", "SRV-026"], Codes(record));
        Assert.Equal(["Sta", "weather", "widht", "width (furlongs)"], record.Findings.Select(f => f.Place.Field));
        Assert.Equal("Rename it to \"width\" if that is meant.", record.Findings[2].Mend);
        Assert.Equal(100 * Foot, record.Distresses.Single().From, 1e-9);
    }

    [Theory]
    [InlineData("SRV-002", "")]
    [InlineData("SRV-002", "\n,,\n")]
    [InlineData("SRV-003", "a,b,c\n1,2,3")]
    [InlineData("SRV-006", "lane,severity,station\n1,H,101+00")]
    [InlineData("SRV-006", "type,severity,station\nTC,H,101+00")]
    [InlineData("SRV-006", "lane,type,severity\n1,TC,H")]
    public void A_file_that_is_no_survey_is_one_finding(string code, string text)
    {
        var record = Read(text);
        Assert.Empty(record.Distresses);
        Assert.Equal([code], Codes(record));
    }

    [Fact]
    public void Formula_errors_empty_their_cell_only()
    {
        var record = SurveyInterpreter.ReadDistresses(
            Source(["lane", "type", "sev", "at", "width", "date"], [1.0, "TC", "H", "101+00", new RawCell("#DIV0", IsError: true), new DateOnly(2026, 3, 1)]),
            Harrow, Options, new FindingLog("survey.xlsx"), TestContext.Current.CancellationToken);
        Assert.Equal(["SRV-012"], Codes(record));
        Assert.Null(record.Distresses.Single().Width);
    }

    [Fact]
    public void Thousands_of_like_findings_are_counted_not_listed()
    {
        var log = new FindingLog("survey.csv", mostPerCode: 50);
        for (var i = 1; i <= 60; i++) log.Add(SurveyFaults.Unreadable, row: i);
        var findings = log.ToFindings();
        Assert.Equal(50, findings.Count(f => f.Code == "SRV-001"));
        var closing = Assert.Single(findings, f => f.Code == "SRV-014");
        Assert.Contains("10 more findings SRV-001", closing.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_core_of_another_thickness_is_told_of()
    {
        var record = ReadCores("lane,station,thickness,depth\n1,101+00,6,7\n1,102+00,9.5,9");
        Assert.Equal(["SRV-067", "SRV-061"], Codes(record));
        Assert.Equal([null, 9 * 0.0254], record.Cores.Select(c => c.DepthOfDamage));
    }
}
