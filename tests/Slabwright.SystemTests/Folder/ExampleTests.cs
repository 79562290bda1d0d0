using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Data.Folder;
using Slabwright.Examples.Marrowby;
using Slabwright.Examples.Ostrevad;

namespace Slabwright.SystemTests.Folder;

public sealed class ExampleTests
{
    /// <summary>The committed examples are what their generator writes, byte for byte.</summary>
    [Fact]
    public void Generating_the_examples_again_changes_nothing()
    {
        var fresh = Directory.CreateTempSubdirectory("slabwright-examples").FullName;
        try
        {
            MarrowbyParkway.Write(Path.Combine(fresh, MarrowbyParkway.FolderName));
            OstrevadBypass.Write(Path.Combine(fresh, OstrevadBypass.FolderName));
            foreach (var example in new[] { MarrowbyParkway.FolderName, OstrevadBypass.FolderName })
            {
                var kept = FilesOf(Examples.PathOf(example));
                var made = FilesOf(Path.Combine(fresh, example));
                Assert.Equal(kept.Keys.Order(StringComparer.Ordinal), made.Keys.Order(StringComparer.Ordinal));
                foreach (var (name, bytes) in made)
                    Assert.True(bytes.AsSpan().SequenceEqual(kept[name]), $"{example}/{name} differs: run the generator again and look at the difference.");
            }
        }
        finally
        {
            Directory.Delete(fresh, recursive: true);
        }
    }

    [Theory]
    [InlineData(MarrowbyParkway.FolderName)]
    [InlineData(OstrevadBypass.FolderName)]
    public void The_examples_read_without_an_error(string example)
    {
        var read = ProjectFolder.Read(Examples.PathOf(example), new DateOnly(2026, 4, 1));
        var errors = read.Findings.Where(f => f.Level == FindingLevel.Error).Select(f => $"{f.Code} {f.Place} {f.Sentence} {f.Value}");
        Assert.True(!errors.Any(), string.Join(Environment.NewLine, errors));
        Assert.NotNull(read.Project);
        foreach (var f in read.Findings) TestContext.Current.TestOutputHelper?.WriteLine($"{f.Code} {f.Level} {f.Place} {f.Sentence} {f.Value}");
    }

    [Fact]
    public void The_demo_road_is_what_it_promises()
    {
        var road = ProjectFolder.Read(Examples.PathOf(MarrowbyParkway.FolderName), new DateOnly(2026, 4, 1)).Project!.Road;
        foreach (var l in road.Lanes) TestContext.Current.TestOutputHelper?.WriteLine($"{l.Number}: {l.SlabCount} {l.Joints.Length}");
        Assert.InRange(road.Lanes.Sum(l => l.SlabCount), 1_900, 2_400);
        Assert.Equal(5 * 5280 * 0.3048, road.Length, 9);
        Assert.Equal([1, 2, 3], road.Lanes.Select(l => l.Number));
        Assert.Contains(road.Lanes[1].Joints, j => j is { Kind: JointKind.Undowelled, SkewRun: > 0.6 });
        Assert.All(road.Lanes, l => Assert.Equal(l.Joints.OrderBy(j => j.At), l.Joints));
        Assert.True(road.Alignment!.Length >= road.Length);
        Assert.Equal("607+20.0", road.Stationing.Format(19_400 * 0.3048));
    }

    private static Dictionary<string, byte[]> FilesOf(string folder) =>
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(f => Path.GetRelativePath(folder, f), File.ReadAllBytes, StringComparer.Ordinal);
}
