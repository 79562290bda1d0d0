using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using static Slabwright.Tests.Surveys.Scene;

namespace Slabwright.Tests.Surveys;

public class SurveyInterpreterTests
{
    [Fact]
    public void Reads_a_plain_row_with_its_units()
    {
        var record = Read("""
            id,lane,type,severity,from,to,width_in,depth,faulting (mm),note
            D7,2,Transverse cracking,H,101+00,101+02.5,0.25,4,3,wide open
            """);
        Assert.Equal(["SRV-030"], Codes(record));
        var d = Assert.Single(record.Distresses);
        Assert.Equal(("D7", 2, DistressType.TransverseCracking, Severity.High, 7), (d.Id, d.Lane, d.Type, d.Severity, d.Slab));
        Assert.Equal(100 * Foot, d.From, 1e-9);
        Assert.Equal(102.5 * Foot, d.To, 1e-9);
        Assert.Equal(0.25 * 0.0254, d.Width!.Value, 1e-12);
        Assert.Equal(4 * 0.0254, d.Depth!.Value, 1e-12);
        Assert.Equal(0.003, d.Faulting!.Value, 1e-12);
        Assert.Equal((new DateOnly(2026, 3, 1), "wide open", "survey.csv row 2"), (d.SurveyedOn, d.Note, d.Origin));
    }

    [Theory]
    [InlineData("Width", 3, 3 * 0.0254)]
    [InlineData("width_in", 3, 3 * 0.0254)]
    [InlineData("Width (mm)", 3, 0.003)]
    [InlineData("CRACK WIDTH [in]", 3, 3 * 0.0254)]
    [InlineData("crackWidthMm", 3, 0.003)]
    [InlineData("max. width, cm", 3, 0.03)]
    [InlineData("opening-mm", 3, 0.003)]
    public void Knows_headings_by_alias_and_unit(string heading, double value, double metres)
    {
        var record = Read($"lane;type;sev;at;{heading}\n1;4;L;101+00;{value}", delimiter: ';');
        Assert.Equal(metres, record.Distresses.Single().Width!.Value, 1e-12);
    }

    [Theory]
    [InlineData("3 in", 3 * 0.0254)]
    [InlineData("0.25\"", 0.25 * 0.0254)]
    [InlineData("1/4 in", 0.25 * 0.0254)]
    [InlineData("6 mm", 0.006)]
    public void A_unit_in_the_cell_goes_before_the_columns(string cell, double metres) =>
        Assert.Equal(metres, Read($"lane,type,sev,at,width_mm\n1,4,L,101+00,{cell}").Distresses.Single().Width!.Value, 1e-12);

    [Fact]
    public void Si_defaults_are_metres_and_millimetres()
    {
        var d = Read("lane,type,sev,from_m,extent,width,depth\n1,corner break,M,30,1.5,6,120", Si).Distresses.Single();
        Assert.Equal((30, 31.5, 0.006, 0.12), (d.From, Math.Round(d.To, 9), d.Width!.Value, d.Depth!.Value));
    }

    [Theory]
    [InlineData("depth_pct", "40", 0.4)]
    [InlineData("depth", "40%", 0.4)]
    [InlineData("depth (% of thickness)", "100", 1)]
    [InlineData("depth_share", "0.25", 0.25)]
    public void Depth_may_be_a_share_of_the_slab(string heading, string cell, double share)
    {
        var record = Read($"lane,type,sev,at,{heading}\n1,7,L,101+00,{cell}");
        Assert.Equal(share * 10 * 0.0254, record.Distresses.Single().Depth!.Value, 1e-9);
    }

    [Fact]
    public void Decimal_commas_are_told_from_the_file()
    {
        var record = Read("lane;type;sev;from_m;to_m;width_mm\n1;4;L;30,25;30,75;1,5\n1;4;L;1,250;2,500;2,5", Si, delimiter: ';');
        Assert.Equal([30.25, 1.25], record.Distresses.Select(d => d.From));
        Assert.Equal([0.0015, 0.0025], record.Distresses.Select(d => Math.Round(d.Width!.Value, 9)));
    }

    [Fact]
    public void Blank_comment_repeated_header_unit_and_total_rows_are_no_distresses()
    {
        var record = Read("""
            Survey of Harrow Road
            # lane 2 was closed

            lane,type,sev,at,width
            ,,,,(mm)
            1,4,L,101+00,3
            ,,,,
            # a word on the weather
            lane,type,sev,at,width
            2,CB,H,102+00,
            Total,,,,3
            """);
        Assert.Equal([0.003, null], record.Distresses.Select(d => d.Width));
        Assert.Equal(["SRV-030", "SRV-009"], Codes(record));
        Assert.Equal(11, record.Findings[1].Place.Row);
    }

    [Fact]
    public void The_users_own_headings_go_first()
    {
        var own = Options with { Headings = Options.Headings.Add("Spur", "lane").Add("Schaden", "type").Add("Ort", "station").Add("w", "width_mm").Add("level", "") };
        var record = Read("Spur,Schaden,Ort,severity,level,w\n2,Corner break,101+00,H,9,2", own);
        var d = record.Distresses.Single();
        Assert.Equal((2, Severity.High, 0.002), (d.Lane, d.Severity, d.Width!.Value));
        Assert.Equal(["SRV-030"], Codes(record));
    }

    [Fact]
    public void Words_for_cause_across_and_yes_are_understood()
    {
        var d = Read("lane,type,sev,at,wheel path,cause,beside_earlier_repair,overlay,count,photo\n2,TC,H,101+00,RWP,ASR,yes,x,3,P12.jpg").Distresses.Single();
        Assert.Equal((DistressCause.ReactiveAggregate, true, true, 3, "photo P12.jpg"), (d.Cause, d.BesideEarlierRepair, d.ThroughOverlay, d.Count, d.Note));
        Assert.Equal(6 * Foot + 0.9 - 0.375, d.OffsetFrom!.Value, 1e-9);
        Assert.Equal(6 * Foot + 0.9 + 0.375, d.OffsetTo!.Value, 1e-9);
    }

    [Fact]
    public void Cores_are_read_with_their_own_columns()
    {
        var record = ReadCores("core,lane,station,offset,thickness,depth,widening_below,remarks\nC1,1,101+50,6,9.8,5,8,honeycombed\n,2,102+00,,10 1/4 in,30 %,,");
        Assert.Empty(record.Findings);
        var (first, second) = (record.Cores[0], record.Cores[1]);
        Assert.Equal(("C1", 1, "honeycombed"), (first.Id, first.Lane, first.Note));
        Assert.Equal([150 * Foot, 6 * Foot, 9.8 * 0.0254, 5 * 0.0254, 8 * 0.0254],
            new[] { first.At, first.Offset!.Value, first.Thickness!.Value, first.DepthOfDamage!.Value, first.WideningBelow!.Value }, new Close());
        Assert.Equal(0.3 * 10.25 * 0.0254, second.DepthOfDamage!.Value, 1e-9);
        Assert.Equal("C2-610", second.Id);
    }

    [Fact]
    public void Reading_stops_when_asked_to()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        var rows = Enumerable.Range(0, 5000).Select(i => new RawRow(i, i == 0 ? [new("type"), new("slab"), new("lane")] : [new("CB"), new("1"), new("1")]));
        Assert.Throws<OperationCanceledException>(() =>
            SurveyInterpreter.ReadDistresses(new RawSource("s.csv", rows), Harrow, Options, new FindingLog("s.csv"), source.Token));
    }

    private sealed class Close : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) < 1e-9;

        public int GetHashCode(double obj) => 0;
    }
}
