using System.Globalization;
using System.Text;
using Slabwright.Core.Survey;
using Slabwright.Data.Import;
using Sylvan.Data.Csv;
using static Slabwright.SystemTests.Import.ImportScene;

namespace Slabwright.SystemTests.Import;

public class TextFileTests
{
    private const string Sample = "lane,type,sev,at,date,note\n1,TC,H,101+00,2026-03-01,Stück fehlt – naß\n2,CB,M,102+00,2026-03-01,café\n";

    public static TheoryData<string> Encodings => ["utf-8", "utf-8 with mark", "utf-16", "utf-16BE", "utf-16 bare", "utf-16BE bare", "windows-1252"];

    [Theory]
    [MemberData(nameof(Encodings))]
    public void Every_usual_encoding_is_told(string name)
    {
        var record = Read(Encode(Sample, name));
        Assert.Empty(record.Findings);
        Assert.Equal(["Stück fehlt – naß", "café"], record.Distresses.Select(d => d.Note));
    }

    [Fact]
    public void Latin_letters_far_down_a_long_file_are_still_told()
    {
        var text = "lane,type,sev,at,date,note\n" + string.Concat(Enumerable.Range(0, 5000).Select(i => $"1,TC,H,{100 + i / 200}+{i % 100:00},2026-03-01,row {i}\n"));
        var record = Read(Encoding.Latin1.GetBytes(text + "2,CB,M,102+00,2026-03-01,café\n"));
        Assert.Contains(record.Distresses, d => d.Note == "café");
    }

    [Fact]
    public void A_few_broken_bytes_in_a_utf8_file_cost_only_themselves()
    {
        var bytes = Encoding.UTF8.GetBytes(Sample.Replace("café", "cafX", StringComparison.Ordinal) + string.Concat(Enumerable.Range(3, 9).Select(i => $"1,LC,L,10{i % 9}+00,2026-03-01,naß {i}\n")));
        bytes[Array.IndexOf(bytes, (byte)'X')] = 0xE9;
        var record = Read(bytes);
        Assert.Contains(record.Findings, f => f.Code == "SRV-011");
        Assert.Equal("Stück fehlt – naß", record.Distresses[0].Note);
        Assert.Equal("caf\uFFFD", record.Distresses[1].Note);
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void Every_line_end_counts_its_rows(string lineEnd)
    {
        var record = Read("lane,type,sev,at,date\n\n1,TC,H,101+00,2026-03-01\n\n1,XX,H,101+00,2026-03-01\n".ReplaceLineEndings(lineEnd));
        Assert.Equal("survey.csv row 3", record.Distresses.Single().Origin);
        Assert.Equal(("SRV-021", 5L), (record.Findings.Single().Code, record.Findings.Single().Place.Row!.Value));
    }

    [Theory]
    [InlineData(',')]
    [InlineData(';')]
    [InlineData('\t')]
    [InlineData('|')]
    public void Every_usual_delimiter_is_told(char delimiter)
    {
        var record = Read("a note on the survey, made in rain; by two\nlane,type,sev,at,date,note\n1,TC,H,101+00,2026-03-01,wet\n".Replace(',', delimiter));
        Assert.Empty(record.Findings);
        Assert.Equal("wet", record.Distresses.Single().Note);
    }

    [Fact]
    public void A_first_line_may_state_the_delimiter()
    {
        var record = Read("sep=;\r\nlane;type;sev;at;date\r\n1;TC;H;101+00;2026-03-01\r\n");
        Assert.Equal("survey.csv row 3", record.Distresses.Single().Origin);
    }

    [Fact]
    public void Quoted_cells_hold_delimiters_marks_and_line_ends()
    {
        var record = Read("lane,type,sev,at,date,note\n1,TC,H,101+00,2026-03-01,\"wide, \"\"open\"\"\nand wet\"\n2,CB,M,102+00,2026-03-01, \"spaced\" \n");
        Assert.Empty(record.Findings);
        Assert.Equal(["wide, \"open\"\nand wet", "spaced"], record.Distresses.Select(d => d.Note));
        Assert.Equal("survey.csv row 4", record.Distresses[1].Origin);
    }

    [Fact]
    public void Inch_marks_stay_inch_marks()
    {
        var record = Read("lane,type,sev,at,date,width,extent\n1,PT,H,101+00,2026-03-01,0.25\",2' 6\"\n1,PT,H,104+00,2026-03-01,\"1/4\"\"\",\"2' 6\"\"\"\n");
        Assert.Empty(record.Findings);
        Assert.All(record.Distresses, d => Assert.Equal((0.25 * 0.0254, 2.5 * Foot), (Math.Round(d.Width!.Value, 9), Math.Round(d.Extent, 9))));
    }

    [Fact]
    public void A_mark_that_never_closes_costs_no_row()
    {
        var record = Read("lane,type,sev,at,date,note\n1,TC,H,101+00,2026-03-01,\"open\n1,TC,H,103+00,2026-03-01,fine\n2,CB,M,102+00,2026-03-01,\"closed\"\n");
        Assert.Equal(["\"open", "fine", "closed"], record.Distresses.Select(d => d.Note));
        Assert.Equal(("SRV-010", 2L), (record.Findings.Single().Code, record.Findings.Single().Place.Row!.Value));
    }

    [Fact]
    public void Quoted_decimal_commas_are_read()
    {
        var record = Read("lane,type,sev,at,date,width_mm\n1,TC,H,101+00,2026-03-01,\"1,5\"\n1,TC,H,102+00,2026-03-01,\"2,25\"\n");
        Assert.Equal([0.0015, 0.00225], record.Distresses.Select(d => Math.Round(d.Width!.Value, 9)));
    }

    [Fact]
    public void Semicolons_and_commas_make_a_decimal_comma_file()
    {
        var record = Read("lane;type;sev;from_m;date;width_mm\n1;TC;H;30,5;2026-03-01;1,5\n1;TC;H;1,250;2026-03-01;6\n");
        Assert.Equal([30.5, 1.25], record.Distresses.Select(d => d.From));
    }

    /// <summary>Cross-checked with Sylvan.Data.Csv, a general-purpose reader: any table it writes is read back cell by cell.</summary>
    [Fact]
    public void Reads_what_a_general_library_writes()
    {
        string[] pieces = ["a", "b c", "\"", ",", "\n", "\r\n", "", " ", "2' 6\"", "é", ";", "x\"y"];
        for (var seed = 1; seed <= 300; seed++)
        {
            var random = new Random(seed);
            var width = random.Next(2, 6);
            var table = Enumerable.Range(0, random.Next(1, 12)).Select(_ => Enumerable.Range(0, width)
                .Select(_ => string.Concat(Enumerable.Range(0, random.Next(4)).Select(_ => pieces[random.Next(pieces.Length)]))).ToArray()).ToList();
            table.Insert(0, [.. Enumerable.Range(0, width).Select(i => $"c{i}")]);
            var text = new StringBuilder();
            foreach (var row in table) text.AppendJoin(',', row.Select(Quoted)).Append('\n');
            using var judge = CsvDataReader.Create(new StringReader(text.ToString()), new CsvDataReaderOptions { Delimiter = ',' });
            var expected = new List<string[]> { table[0] };
            while (judge.Read()) expected.Add([.. Enumerable.Range(0, width).Select(judge.GetString)]);
            var read = new DelimitedReader(new StringReader(text.ToString()), ',').Rows().Select(r => r.Cells.Select(c => c.Text.ReplaceLineEndings("\n")).ToArray()).ToList();
            var wanted = expected.Select(r => r.Select(c => c.ReplaceLineEndings("\n")).ToArray()).ToList();
            Assert.Equal(wanted, read);
        }
    }

    private static string Quoted(string cell) => "\"" + cell.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";

    private static byte[] Encode(string text, string name)
    {
        Encoding encoding = name switch
        {
            "utf-8" or "utf-8 with mark" => new UTF8Encoding(name.Length > 5),
            "utf-16" or "utf-16 bare" => new UnicodeEncoding(false, name == "utf-16"),
            "utf-16BE" or "utf-16BE bare" => new UnicodeEncoding(true, name == "utf-16BE"),
            _ => CodePagesEncodingProvider.Instance.GetEncoding(1252)!,
        };
        return [.. encoding.GetPreamble(), .. encoding.GetBytes(text)];
    }
}
