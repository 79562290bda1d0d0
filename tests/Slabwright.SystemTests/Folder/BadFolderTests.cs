using Slabwright.Core.Evidence;
using Slabwright.Data.Folder;
using Slabwright.Examples.Marrowby;

namespace Slabwright.SystemTests.Folder;

/// <summary>Every way a folder can be wrong: a finding with file, field and mend, the rest kept, never an exception.</summary>
public sealed class BadFolderTests
{
    private static readonly DateOnly Today = new(2026, 4, 1);

    [Theory]
    [InlineData("ROAD-003", "project.json", "\"units\"", "units")]
    [InlineData("ROAD-004", "project.json", "\"owner\"", "\"onwer\"")]
    [InlineData("ROAD-004", "lanes.csv", "lane,", "lane,speed,")]
    [InlineData("ROAD-005", "lanes.csv", "width_ft", "width")]
    [InlineData("ROAD-006", "project.json", "\"name\": \"Marrowby Parkway, eastbound\",", "")]
    [InlineData("ROAD-006", "sections.csv", "1,0,5280,jointed plain,9,", "1,0,5280,jointed plain,,")]
    [InlineData("ROAD-007", "sections.csv", "1,0,5280,jointed plain,9,", "1,0,5280,jointed plain,nine,")]
    [InlineData("ROAD-007", "project.json", "\"1:6\"", "\"steep\"")]
    [InlineData("ROAD-007", "project.json", "26400,", "\"26400\",")]
    [InlineData("ROAD-007", "prices.csv", "0=214; 12=187", "0=214; 12:187")]
    [InlineData("ROAD-008", "project.json", "\"us\"", "\"imperial\"")]
    [InlineData("ROAD-008", "lanes.csv", "asphalt shoulder", "grass")]
    [InlineData("ROAD-009", "project.json", "\"truck_share\": 0.14", "\"truck_share\": 14")]
    [InlineData("ROAD-009", "project.json", "\"direction\": 1", "\"direction\": 0")]
    [InlineData("ROAD-010", "joints.csv", "471+71.5", "471.71.5")]
    [InlineData("ROAD-011", "joints.csv", "471+71.5", "606+50.0")]
    [InlineData("ROAD-013", "joints.csv", "471+71.5", "971+71.5")]
    [InlineData("ROAD-014", "earlier_repairs.csv", "428+12.0,428+20.0", "428+20.0,428+12.0")]
    [InlineData("ROAD-015", "project.json", "2026-05-04", "4 May 2026")]
    [InlineData("ROAD-015", "overrides.csv", "2025-07-02", "7/2/25")]
    [InlineData("ROAD-016", "project.json", "\"common-practice\"", "\"uncommon-practice\"")]
    [InlineData("ROAD-019", "prices.csv", "yd2,214", "acre,214")]
    [InlineData("ROAD-020", "lanes.csv", "2,12,", "1,12,")]
    [InlineData("ROAD-022", "lanes.csv", "2,12,", "2,20,")]
    [InlineData("ROAD-024", "no_cut_zones.csv", "Gore nose of Exit 8,2", "Gore nose of Exit 8,9")]
    [InlineData("ROAD-034", "project.json", "\"1:6\"", "\"6:1\"")]
    [InlineData("ROAD-037", "project.json", "\"from_ft\": 5280", "\"from_ft\": 5000")]
    [InlineData("ROAD-040", "sections.csv", "2,0,5280", "2,0,5000")]
    [InlineData("ROAD-060", "alignment.xml", "<LandXML ", "<LandXML <")]
    [InlineData("ROAD-061", "project.json", "\"Marrowby Parkway EB\"", "\"Marrowby Parkway WB\"")]
    [InlineData("ROAD-072", "project.json", "\"start_offset_ft\": 0", "\"start_offset_ft\": 900")]
    [InlineData("ROAD-085", "overrides.csv", "D024", "D999")]
    [InlineData("ROAD-090", "traffic_hourly.csv", "2024-01-01T05:00", "01/01/24 5 am")]
    [InlineData("ROAD-091", "traffic_hourly.csv", "2024-01-01T05:00", "2024-01-01T03:00")]
    [InlineData("ROAD-092", "traffic_hourly.csv", "2024-12-31T23:00", "2025-01-02T23:00")]
    [InlineData("ROAD-093", "weather_hourly.csv", "2024-01-01T00:00,", "2024-01-01T00:00,2")]
    public void What_is_wrong_is_found_and_named(string code, string file, string from, string to)
    {
        using var folder = TemporaryFolder.CopyOf(Examples.PathOf(MarrowbyParkway.FolderName));
        folder.Change(file, from, to);
        var read = ProjectFolder.Read(folder.Path, Today);
        var finding = read.Findings.FirstOrDefault(f => f.Code == code);
        Assert.True(finding is not null, string.Join(Environment.NewLine, read.Findings));
        Assert.False(string.IsNullOrEmpty(finding.Mend));
        Assert.NotNull(finding.Place.File);
    }

    [Theory]
    [InlineData("project.json")]
    [InlineData("lanes.csv")]
    [InlineData("sections.csv")]
    [InlineData("prices.csv")]
    [InlineData("survey.csv")]
    public void A_file_that_must_be_there_is_asked_for(string file)
    {
        using var folder = TemporaryFolder.CopyOf(Examples.PathOf(MarrowbyParkway.FolderName));
        File.Delete(Path.Combine(folder.Path, file));
        Assert.Contains(ProjectFolder.Read(folder.Path, Today).Findings, f => f.Code == "ROAD-002" && f.Place.File == file && f.Level == FindingLevel.Error);
    }

    [Theory]
    [InlineData("joints.csv")]
    [InlineData("earlier_repairs.csv")]
    [InlineData("features.csv")]
    [InlineData("no_cut_zones.csv")]
    [InlineData("overrides.csv")]
    [InlineData("cores.csv")]
    [InlineData("traffic_hourly.csv")]
    [InlineData("weather_hourly.csv")]
    public void A_file_that_may_be_missing_is_not_missed(string file)
    {
        using var folder = TemporaryFolder.CopyOf(Examples.PathOf(MarrowbyParkway.FolderName));
        File.Delete(Path.Combine(folder.Path, file));
        var read = ProjectFolder.Read(folder.Path, Today);
        Assert.NotNull(read.Project);
        Assert.DoesNotContain(read.Findings, f => f.Code == "ROAD-002");
    }

    [Fact]
    public void No_folder_at_all_is_said_to_be_so() => Assert.Equal("ROAD-001", Assert.Single(ProjectFolder.Read("/nowhere/at-all", Today).Findings).Code);

    [Fact]
    public void An_ambiguous_station_asks_for_a_length()
    {
        using var folder = TemporaryFolder.CopyOf(Examples.PathOf(MarrowbyParkway.FolderName));
        folder.Change("project.json", "\"607+20.0\"", "\"600+00.0\"");
        folder.Change("joints.csv", "471+71.5", "602+50.0");
        Assert.Contains(ProjectFolder.Read(folder.Path, Today).Findings, f => f.Code == "ROAD-012" && f.Mend!.Contains("at_ft", StringComparison.Ordinal));
    }

    [Fact]
    public void A_value_in_two_units_is_refused()
    {
        using var folder = TemporaryFolder.CopyOf(Examples.PathOf(MarrowbyParkway.FolderName));
        folder.Change("lanes.csv", "lane,width_ft", "lane,width_m,width_ft");
        folder.Change("lanes.csv", "1,12,", "1,3.6,12,");
        Assert.Contains(ProjectFolder.Read(folder.Path, Today).Findings, f => f.Code == "ROAD-017" && f.Place.Row == 2);
    }

    /// <summary>Nothing that stands in a file makes the reader throw: every file cut short at many places, and filled with noise.</summary>
    [Fact]
    public void No_damage_to_a_file_makes_the_reader_throw()
    {
        var source = Examples.PathOf(MarrowbyParkway.FolderName);
        foreach (var file in Directory.EnumerateFiles(source).Select(Path.GetFileName).Where(f => f is not ("README.md" or "survey_with_mistakes.csv") && !f!.Contains("hourly", StringComparison.Ordinal)))
        {
            using var folder = TemporaryFolder.CopyOf(source);
            var whole = File.ReadAllBytes(Path.Combine(source, file!));
            foreach (var share in new[] { 0.0, 0.13, 0.5, 0.77, 0.99 })
            {
                File.WriteAllBytes(Path.Combine(folder.Path, file!), whole[..(int)(whole.Length * share)]);
                ProjectFolder.Read(folder.Path, Today);
            }

            File.WriteAllBytes(Path.Combine(folder.Path, file!), [.. Enumerable.Range(0, 4_000).Select(i => (byte)(i * 7919 >> 3))]);
            Assert.NotEmpty(ProjectFolder.Read(folder.Path, Today).Findings);
        }
    }
}
