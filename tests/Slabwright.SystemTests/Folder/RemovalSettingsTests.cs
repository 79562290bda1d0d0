using System.Text.Json.Nodes;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Joints.Sealing;
using Slabwright.Core.RuleSets;
using Slabwright.Data.Folder;
using Slabwright.Examples.Marrowby;
using Slabwright.Examples.Ostrevad;

namespace Slabwright.SystemTests.Folder;

/// <summary>The parts sealing, lifting and pressure of project.json: nothing lost on the way, units as named, bad values told.</summary>
public sealed class RemovalSettingsTests
{
    private static readonly DateOnly Today = new(2026, 4, 1);

    private static readonly SealingSettings Sealing = new()
    {
        Sealant = SealantFamilies.HotPour with { Recess = Own(0.0071), AllowableStrain = Own(0.23), LeastTemperature = Own(7.3) },
        Coldest = -17.3, Hottest = 46.1, SealFrom = Own(5.5), SealTo = Own(33.3), OldExpansion = Own(1.07e-5), NewExpansion = Own(0.93e-5),
        OldShrinkage = Own(0.8e-4), NewShrinkage = Own(5.1e-4), BaseFactor = 0.71, SurroundingWidth = 0.0093, WidthStep = 0.0005,
        LeastSawDepth = Own(0.0533), SealSizes = new([0.011, 0.0222], SourceRef.Project),
    };

    private static readonly LiftingSettings Lifting = new()
    {
        LongestPiece = Own(2.13), ShortestPiece = Own(0.77), HeaviestPiece = 4321.5, Density = Own(2377.7), WaterShare = Own(0.041), BaseBond = Own(2345.6),
        SideFriction = Own(765.4), DynamicFactor = Own(1.41), Legs = 2, Equalised = true, SlingAngle = 1.02, Practice = AnchorPractice.AustralianPrecast,
        PinStrength = 77_777.7, GearStrength = 123_456.7,
        Crane = new()
        {
            Name = "crane", Chart = [new(3.3, 9876.5), new(7.7, 4321)], Share = Own(0.66), RiggingMass = 321.1, Reading = ChartReading.StraightLine,
            BesideEdge = 2.22, AlongReach = 4.44, InLineDistance = 7.77,
        },
    };

    private static readonly PressureSettings Pressure = new()
    {
        ClosedAt = 17.7, Hours = [new(0, 21.3), new(14, 38.9)], SawFrom = 21, SawTo = 5, Modulus = Own(29.3e9), Expansion = Own(1.07e-5), Density = Own(2377.7),
        Friction = Own(1.7), UnloadedLength = Own(12.3), Kerf = Own(0.0051), BladeCore = Own(0.0037), ReliefKerf = Own(0.044), ReliefInset = Own(0.5),
        LeastInset = Own(0.22), BaseBite = Own(0.011),
    };

    private static Sourced<double> Own(double value) => new(value, SourceRef.Project);

    [Theory]
    [InlineData(MarrowbyParkway.FolderName)]
    [InlineData(OstrevadBypass.FolderName)]
    public void Settings_written_and_read_again_are_the_same(string example)
    {
        var project = ProjectFolder.Read(Examples.PathOf(example), Today).Project!;
        using var folder = new TemporaryFolder();
        ProjectFolder.Write(
            project with { Settings = project.Settings with { Sealing = Sealing, Lifting = Lifting, Pressure = Pressure } }, folder.Path);
        var read = ProjectFolder.Read(folder.Path, Today);
        Assert.False(read.HasErrors, string.Join(Environment.NewLine, read.Findings));
        var settings = read.Project!.Settings;
        var differences = DeepComparison.Differences(Sealing, settings.Sealing, "sealing", _ => false)
            .Concat(DeepComparison.Differences(Lifting, settings.Lifting, "lifting", _ => false))
            .Concat(DeepComparison.Differences(Pressure, settings.Pressure, "pressure", _ => false)).ToList();
        Assert.True(differences.Count == 0, string.Join(Environment.NewLine, differences));
    }

    [Fact]
    public void Units_stand_in_the_names()
    {
        var settings = Read("lifting", """{ "sling_angle_deg": 45, "crane": { "name": "c", "chart": [ { "radius_ft": 10, "capacity_lb": 10000 } ] } }""", out _);
        Assert.Equal(Math.PI / 4, settings.Lifting.SlingAngle, 1e-9);
        Assert.Equal(3.048, settings.Lifting.Crane!.Chart[0].Radius, 1e-9);
        Assert.Equal(4535.9237, settings.Lifting.Crane.Chart[0].Capacity, 1e-6);
        Assert.Equal(25, Read("pressure", """{ "closed_at_f": 77 }""", out _).Pressure.ClosedAt!.Value, 1e-9);
        Assert.Equal(SealantKind.PreformedCompression, Read("sealing", """{ "sealant": "preformed compression" }""", out _).Sealing.Sealant.Kind);
    }

    [Theory]
    [InlineData("sealing", """{ "base_factor": 3 }""", "ROAD-009", "sealing.base_factor")]
    [InlineData("sealing", """{ "sealant": "tar" }""", "ROAD-008", "sealing.sealant")]
    [InlineData("lifting", """{ "crane": { "name": "c", "chart": [ { "radius_m": 3 } ] } }""", "ROAD-006", "lifting.crane.chart[0].capacity")]
    [InlineData("lifting", """{ "longest_piece": 6 }""", "ROAD-004", "lifting.longest_piece")]
    [InlineData("pressure", """{ "kerf_in": "3/16" }""", "ROAD-007", "pressure.kerf_in")]
    [InlineData("pressure", """{ "hours": [ { "hour": 3 } ] }""", "ROAD-006", "pressure.hours[0].hour")]
    public void A_bad_value_is_named_and_not_used(string part, string text, string code, string field)
    {
        Read(part, text, out var findings);
        Assert.Contains(findings, f => f.Code == code && f.Place.Field == field);
    }

    private static ProjectSettings Read(string part, string text, out IReadOnlyList<Finding> findings)
    {
        using var folder = new TemporaryFolder();
        foreach (var file in Directory.EnumerateFiles(Examples.PathOf(OstrevadBypass.FolderName)))
            File.Copy(file, Path.Combine(folder.Path, Path.GetFileName(file)));
        var path = Path.Combine(folder.Path, "project.json");
        var project = JsonNode.Parse(File.ReadAllText(path))!;
        project[part] = JsonNode.Parse(text);
        File.WriteAllText(path, project.ToJsonString());
        var read = ProjectFolder.Read(folder.Path, Today);
        findings = read.Findings;
        return read.Project!.Settings;
    }
}
