using Slabwright.Core.Survey;
using Slabwright.Data.Folder;
using Slabwright.Data.Import;
using static Slabwright.SystemTests.Import.ImportScene;

namespace Slabwright.SystemTests.Import;

/// <summary>Files made by other people's programs: openpyxl and GDAL (tests/data/survey/make_survey_files.py).</summary>
public class OtherFileTests
{
    [Fact]
    public void A_workbook_by_openpyxl_is_read_from_the_sheet_with_the_survey()
    {
        var record = ReadFile("survey.xlsx");
        Assert.Equal(["1", "2", "3"], record.Distresses.Select(d => d.Id));
        Assert.Equal([100 * Foot, 150 * Foot, 200 * Foot], record.Distresses.Select(d => Math.Round(d.From, 6)));
        Assert.All(record.Distresses, d => Assert.Equal(new DateOnly(2026, 3, 1), d.SurveyedOn));
        Assert.Equal([0.1016, 0.1016, null], record.Distresses.Select(d => d.Depth is { } depth ? Math.Round(depth, 9) : (double?)null));
        Assert.Equal([0.00635, 0.00635, null], record.Distresses.Select(d => d.Width is { } width ? Math.Round(width, 9) : (double?)null));
        Assert.Equal(DistressType.LongitudinalCracking, record.Distresses[1].Type);
        Assert.Equal(
            [("SRV-013", null), ("SRV-012", 6L), ("SRV-012", 7L), ("SRV-020", 7L), ("SRV-009", 8L)],
            record.Findings.Select(f => (f.Code, f.Place.Row)));
    }

    [Fact]
    public void A_sheet_may_be_named()
    {
        Assert.Equal(3, ReadFile("survey.xlsx", Options with { SheetOrLayer = "survey 2026" }).Distresses.Length);
        Assert.Equal(["SRV-003"], ReadFile("survey.xlsx", Options with { SheetOrLayer = "Cover" }).Findings.Select(f => f.Code));
        var unknown = ReadFile("survey.xlsx", Options with { SheetOrLayer = "Sheet9" });
        Assert.Contains("Cover, Survey 2026", unknown.Findings.First(f => f.Code == "SRV-001").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Cores_come_from_a_workbook_too()
    {
        var record = SurveyImporter.ImportCores(PathOf("cores.xlsx"), Road, Options, TestContext.Current.CancellationToken);
        Assert.Empty(record.Findings);
        Assert.Equal(new CoreSample("K1", 1, 150 * Foot, null, 0.25, 0.12, 0.2), record.Cores.Single() with { At = Math.Round(record.Cores[0].At, 6) });
    }

    [Theory]
    [InlineData("points.geojson", 1e-3)]
    [InlineData("points_wgs84.geojson", 2e-3)]
    [InlineData("survey.gpkg", 1e-3)]
    public void Points_and_lines_by_gdal_are_located_on_the_alignment(string file, double tolerance)
    {
        var record = ReadFile(file);
        Assert.Equal([2, 1, 2], record.Distresses.Select(d => d.Lane));
        double[] from = [100, 200, 300], to = [100, 200, 306];
        for (var i = 0; i < 3; i++)
        {
            Assert.Equal(from[i], record.Distresses[i].From, tolerance);
            Assert.Equal(to[i], record.Distresses[i].To, tolerance);
            Assert.Equal("lane " + record.Distresses[i].Lane, record.Distresses[i].Note);
        }

        Assert.Equal(2.0, record.Distresses[2].OffsetFrom!.Value, tolerance);
        Assert.Equal(2.2, record.Distresses[2].OffsetTo!.Value, tolerance);
        Assert.Equal(0.25 * 0.0254, record.Distresses[0].Width!.Value, 1e-9);
        Assert.Null(record.Distresses[1].Width);
        Assert.Equal([("SRV-050", 4L), ("SRV-043", 5L)], record.Findings.Select(f => (f.Code, f.Place.Row!.Value)));
    }

    [Fact]
    public void A_stream_that_is_no_file_serves_as_well()
    {
        foreach (var file in new[] { "survey.gpkg", "points.geojson", "survey.xlsx" })
        {
            var bytes = File.ReadAllBytes(PathOf(file));
            Assert.Equal(3, Read(bytes, file).Distresses.Length);
            using var forwardOnly = new System.IO.Compression.DeflateStream(new MemoryStream(Deflated(bytes)), System.IO.Compression.CompressionMode.Decompress);
            Assert.Equal(3, SurveyImporter.Import(forwardOnly, file, Road, Options, TestContext.Current.CancellationToken).Distresses.Length);
        }
    }

    [Theory]
    [InlineData("survey.xlsx", "PK\x03\x04 not a workbook at all")]
    [InlineData("survey.gpkg", "SQLite format 3\0 but no more")]
    [InlineData("survey.geojson", "{ \"type\": \"FeatureCollection\", \"features\": [ {")]
    [InlineData("survey.geojson", "{ \"type\": \"Point\" }")]
    [InlineData("survey.csv", "\0\x01\x02\x03 binary \x7f nonsense")]
    [InlineData("survey.csv", "")]
    public void What_is_no_survey_is_an_error_and_no_exception(string name, string content)
    {
        var record = Read(System.Text.Encoding.Latin1.GetBytes(content), name);
        Assert.Empty(record.Distresses);
        Assert.Contains(record.Findings, f => f.Level == Core.Evidence.FindingLevel.Error && f.Place.File == name && f.Mend is not null);
    }

    [Fact]
    public void Truncated_files_keep_what_came_before_or_say_so()
    {
        foreach (var file in new[] { "survey.gpkg", "points.geojson", "survey.xlsx" })
        {
            var bytes = File.ReadAllBytes(PathOf(file));
            foreach (var share in new[] { 0.1, 0.3, 0.5, 0.7, 0.9, 0.98 })
            {
                var record = Read(bytes[..(int)(share * bytes.Length)], file);
                Assert.True(record.Distresses.Length == 3 || record.Findings.Any(f => f.Code is "SRV-001" or "SRV-002"), $"{file} cut at {share}");
            }
        }
    }

    [Fact]
    public void A_file_that_is_not_there_is_a_finding() =>
        Assert.Equal(["SRV-001"], SurveyImporter.Import("no-such-survey.csv", Road, Options, TestContext.Current.CancellationToken).Findings.Select(f => f.Code));

    [Fact]
    public void The_shipped_examples_read_without_errors()
    {
        foreach (var folder in new[] { "marrowby-parkway", "ostrevad-bypass" })
        {
            var read = ProjectFolder.Read(Path.Combine(SourceTree.Root, "examples", folder), FolderDoors.On(new DateOnly(2026, 4, 1)));
            Assert.NotNull(read.Project);
            Assert.NotEmpty(read.Project.Survey.Distresses);
            Assert.NotEmpty(read.Project.Survey.Cores);
            Assert.Empty(read.Findings.Where(f => f.Level == Core.Evidence.FindingLevel.Error).Select(f => $"{f.Code} {f.Place} {f.Sentence} {f.Value}"));
        }
    }

    private static byte[] Deflated(byte[] bytes)
    {
        using var target = new MemoryStream();
        using (var deflate = new System.IO.Compression.DeflateStream(target, System.IO.Compression.CompressionLevel.Fastest)) deflate.Write(bytes);
        return target.ToArray();
    }
}
