using System.Text.Json.Nodes;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;
using Slabwright.Data.Folder;
using Slabwright.Examples.Marrowby;
using Slabwright.Examples.Ostrevad;

namespace Slabwright.SystemTests.Folder;

/// <summary>The joints part of project.json: nothing lost on the way, units as named, bad values told.</summary>
public sealed class JointSettingsTests
{
    private static readonly DateOnly Today = new(2026, 4, 1);

    private static readonly JointSettings Everything = new()
    {
        Modulus = 29.3e9, Poisson = 0.17, Strength = 31.7e6, Rupture = 4.77e6, Reaction = 54.3e6, Expansion = 1.07e-5, Shrinkage = 1.3e-4, Drainage = 0.9,
        DowelSupport = 4.15e11, SteelModulus = 2.01e11, Coldest = -17.3, Hottest = 46.1, DesignYears = 12.5,
        Axles = [new(1, 80_071.3, 412.5), new(2, 151_000, 96), new(3, 227_000.9, 7)],
        EquivalentAxlesPerDay = 1234.5, TruckFactor = 1.7, LaneShare = 0.83, TyrePressure = 705_000, Anchor = BarAnchor.CementGrout, GangDrills = 3,
        GangSpacing = 0.31, Diameters = [0.0254, 0.0333, 0.038], Lengths = [0.41, 0.457], Costs = new(0.4, 0.25, 0.35, 0.032, 0.45), CurbWidth = 0.16,
        TieOneEnd = false, KeepOuts = [new("loop", 2, 12.3, 45.6, 0.4, 0.9), new("duct", null, 100.1, 100.4, 0, 3.5)],
    };

    [Theory]
    [InlineData(MarrowbyParkway.FolderName)]
    [InlineData(OstrevadBypass.FolderName)]
    public void Settings_written_and_read_again_are_the_same(string example)
    {
        var project = ProjectFolder.Read(Examples.PathOf(example), Today).Project!;
        using var folder = new TemporaryFolder();
        ProjectFolder.Write(project with { Settings = project.Settings with { Joints = Everything } }, folder.Path);
        var read = ProjectFolder.Read(folder.Path, Today);
        Assert.False(read.HasErrors, string.Join(Environment.NewLine, read.Findings));
        var differences = DeepComparison.Differences(Everything, read.Project!.Settings.Joints, "joints", _ => false);
        Assert.True(differences.Count == 0, string.Join(Environment.NewLine, differences));
    }

    [Fact]
    public void Units_stand_in_the_names()
    {
        var joints = Read("""{ "coldest_f": 14, "strength_psi": 4000, "expansion_per_f": 5e-6, "axles": [ { "axles": 1, "load_kip": 18, "per_day": 9 } ] }""", out _);
        Assert.Equal(-10, joints.Coldest!.Value, 9);
        Assert.Equal(27.579e6, joints.Strength!.Value, 500.0);
        Assert.Equal(9e-6, joints.Expansion!.Value, 1e-12);
        Assert.Equal(Units.Kip.ToBase(18), joints.Axles.Single().Load, 1e-3);
    }

    [Theory]
    [InlineData("""{ "reaction_pci": -100 }""", "ROAD-009", "joints.reaction_pci")]
    [InlineData("""{ "strength_psi": "4000 psi" }""", "ROAD-007", "joints.strength_psi")]
    [InlineData("""{ "anchor": "glue" }""", "ROAD-008", "joints.anchor")]
    [InlineData("""{ "axles": [ { "load_kip": 18, "per_day": 9 } ] }""", "ROAD-006", "joints.axles[0].axles")]
    [InlineData("""{ "reaction": 100 }""", "ROAD-004", "joints.reaction")]
    public void A_bad_value_is_named_and_not_used(string text, string code, string field)
    {
        var joints = Read(text, out var findings);
        Assert.Contains(findings, f => f.Code == code && f.Place.Field == field);
        Assert.Empty(DeepComparison.Differences(JointSettings.Default, joints, "joints", _ => false));
    }

    private static JointSettings Read(string joints, out IReadOnlyList<Core.Evidence.Finding> findings)
    {
        using var folder = new TemporaryFolder();
        foreach (var file in Directory.EnumerateFiles(Examples.PathOf(OstrevadBypass.FolderName)))
            File.Copy(file, Path.Combine(folder.Path, Path.GetFileName(file)));
        var path = Path.Combine(folder.Path, "project.json");
        var project = JsonNode.Parse(File.ReadAllText(path))!;
        project["joints"] = JsonNode.Parse(joints);
        File.WriteAllText(path, project.ToJsonString());
        var read = ProjectFolder.Read(folder.Path, Today);
        findings = read.Findings;
        return read.Project!.Settings.Joints;
    }
}
