using CsCheck;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;
using Slabwright.Core.Survey;
using Slabwright.Data.Folder;
using Slabwright.Examples.Marrowby;
using Slabwright.Examples.Ostrevad;

namespace Slabwright.SystemTests.Folder;

public sealed class RoundTripTests
{
    private static readonly DateOnly Today = new(2026, 4, 1);

    /// <summary>Law: reading what was written gives the same project, to the last bit of every number; only findings speak of the files themselves.</summary>
    [Theory]
    [InlineData(MarrowbyParkway.FolderName)]
    [InlineData(OstrevadBypass.FolderName)]
    public void A_project_written_and_read_again_is_the_same(string example)
    {
        var first = ProjectFolder.Read(Examples.PathOf(example), Today).Project!;
        using var folder = new TemporaryFolder();
        ProjectFolder.Write(first, folder.Path);
        ProjectFolder.CopyKept(Examples.PathOf(example), folder.Path);
        var second = ProjectFolder.Read(folder.Path, Today);
        Assert.NotNull(second.Project);
        var differences = DeepComparison.Differences(first, second.Project, "project", path => path.EndsWith(".Findings", StringComparison.Ordinal));
        Assert.True(differences.Count == 0, string.Join(Environment.NewLine, differences));
        Assert.False(second.HasErrors, string.Join(Environment.NewLine, second.Findings));
    }

    [Fact]
    public void Writing_twice_gives_the_same_bytes()
    {
        var project = ProjectFolder.Read(Examples.PathOf(MarrowbyParkway.FolderName), Today).Project!;
        using var one = new TemporaryFolder();
        using var two = new TemporaryFolder();
        ProjectFolder.Write(project, one.Path);
        ProjectFolder.Write(ProjectFolder.Read(one.Path, Today).Project!, two.Path);
        foreach (var file in Directory.EnumerateFiles(one.Path)) Assert.Equal(File.ReadAllText(file), File.ReadAllText(Path.Combine(two.Path, Path.GetFileName(file))));
    }

    [Fact]
    public void A_rule_set_of_the_projects_own_is_written_with_it()
    {
        var project = ProjectFolder.Read(Examples.PathOf(OstrevadBypass.FolderName), Today).Project!;
        var own = project with { RuleSet = project.RuleSet with { Id = "district", Name = "District practice" } };
        using var folder = new TemporaryFolder();
        ProjectFolder.Write(own, folder.Path);
        Assert.True(File.Exists(Path.Combine(folder.Path, "rules", "district.json")));
        Assert.Equal("District practice", ProjectFolder.Read(folder.Path, Today).Project!.RuleSet.Name);
    }

    [Fact]
    public void Hourly_files_are_taken_along()
    {
        using var folder = new TemporaryFolder();
        ProjectFolder.CopyKept(Examples.PathOf(MarrowbyParkway.FolderName), folder.Path);
        Assert.Equal(["traffic_hourly.csv", "weather_hourly.csv"], Directory.EnumerateFiles(folder.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    /// <summary>Law: any length or area of a road, written in any unit, reads back to the last bit.</summary>
    [Fact]
    public void Numbers_lose_nothing()
    {
        var units = new[] { Units.Foot, Units.Inch, Units.Metre, Units.Millimetre, Units.Mile, Units.SquareYard, Units.SquareFoot };
        Gen.Select(Gen.Int[0, units.Length - 1], Gen.Double[0.001, 60_000]).Sample((which, value) =>
        {
            var unit = units[which];
            var text = ExactNumber.Write(value, unit);
            Assert.True(ExactNumber.TryRead(text, unit, out var back), text);
            Assert.True(back.Equals(value), $"{value:R} {unit}: {text} reads as {back:R}");
        }, iter: 5_000);
        Assert.Equal("12", ExactNumber.Write(3.6576, Units.Foot));
        Assert.Equal("9.5", ExactNumber.Write(0.2413, Units.Inch));
    }
}
