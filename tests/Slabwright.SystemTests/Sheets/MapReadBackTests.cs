using System.Globalization;
using System.Text.RegularExpressions;
using Slabwright.Core.Job;
using Slabwright.Sheets;
using Slabwright.Sheets.Maps;

namespace Slabwright.SystemTests.Sheets;

/// <summary>GeoPackage, GeoJSON and DXF judged by GDAL (ogrinfo) and ezdxf.</summary>
public sealed partial class MapReadBackTests
{
    private static readonly SheetOptions Options = new(new DateOnly(2026, 4, 1));

    public static TheoryData<string> Jobs => OddJobs.Names;

    [Theory]
    [MemberData(nameof(Jobs))]
    public void GdalReadsEveryLayerOfTheGeoPackage(string job)
    {
        using var folder = new ScratchFolder();
        var (project, plan) = OddJobs.Of(job).Build();
        var layers = Layers(OutsideProgram.Run("ogrinfo", "-so", "-al", folder.Save(GeoPackageFile.Write(project, plan, Options))));
        Assert.Equal(Counts(project, plan), layers.ToDictionary(l => l.Name, l => l.Count));
        var slabs = layers.Single(l => l.Name == "slabs");
        if (project.Road.Alignment is null)
        {
            var unit = project.UnitSystem == Core.Measures.UnitSystem.Si ? 1 : 0.3048;
            Assert.Equal(project.Road.Length / unit, slabs.East - slabs.West, 0.01);
            Assert.Equal(project.Road.Lanes.Sum(l => l.Width) / unit, slabs.North - slabs.South, 0.01);
        }
        else
        {
            Assert.Contains("UTM zone 15N", slabs.System, StringComparison.Ordinal);
            var (start, half) = (project.Road.Alignment.PoseAt(0), project.Road.Lanes.Sum(l => l.Width) / 2);
            Assert.Equal(Math.Min(start.Offset(-half).East, start.Offset(half).East), slabs.West, 0.5);
        }
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void GdalReadsTheGeoJson(string job)
    {
        using var folder = new ScratchFolder();
        var (project, plan) = OddJobs.Of(job).Build();
        var counts = Counts(project, plan);
        foreach (var file in GeoJsonFile.Write(project, plan, Options))
        {
            var layer = Layers(OutsideProgram.Run("ogrinfo", "-so", "-al", folder.Save(file))).Single();
            Assert.Equal(counts[layer.Name], layer.Count);
            if (layer.Count == 0 || project.Road.Alignment is null) continue;
            Assert.InRange(layer.West, -93.26, -93.2);
            Assert.InRange(layer.South, 44.6, 44.8);
        }
    }

    /// <summary>The same corner through our transverse Mercator and through GDAL's own projection library.</summary>
    [Fact]
    public void GeoJsonAndGeoPackageLieInTheSamePlace()
    {
        using var folder = new ScratchFolder();
        var (project, plan) = OddJobs.Of("usual").Build();
        var ours = Layers(OutsideProgram.Run("ogrinfo", "-so", "-al", folder.Save(GeoJsonFile.Write(project, plan, Options)[0]))).Single();
        var turned = Path.Combine(folder.Path, "turned.geojson");
        OutsideProgram.Run("ogr2ogr", "-t_srs", "EPSG:4326", "-lco", "COORDINATE_PRECISION=9", turned, folder.Save(GeoPackageFile.Write(project, plan, Options)), "repairs");
        var theirs = Layers(OutsideProgram.Run("ogrinfo", "-so", "-al", turned)).Single();
        Assert.Equal(theirs.West, ours.West, 1e-6);
        Assert.Equal(theirs.South, ours.South, 1e-6);
        Assert.Equal(theirs.East, ours.East, 1e-6);
        Assert.Equal(theirs.North, ours.North, 1e-6);
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void EzdxfFindsNothingToMendInTheDrawing(string job)
    {
        const string script = """
            import sys, ezdxf, collections
            doc = ezdxf.readfile(sys.argv[1])
            audit = doc.audit()
            print(len(audit.errors), len(audit.fixes), doc.header['$INSUNITS'])
            counts = collections.Counter(e.dxf.layer + ':' + e.dxftype() for e in doc.modelspace())
            for key in sorted(counts): print(key, counts[key])
            for e in doc.modelspace().query('TEXT[layer=="REPAIR-TEXT"]'): print('text', e.dxf.text)
            """;
        using var folder = new ScratchFolder();
        var (project, plan) = OddJobs.Of(job).Build();
        var lines = OutsideProgram.Python("ezdxf", script, folder.Save(DxfFile.Write(project, plan, Options))).Split('\n');
        var isFeet = project.Road.Alignment is null && project.UnitSystem == Core.Measures.UnitSystem.UsCustomary;
        Assert.Equal($"0 0 {(isFeet ? 2 : 6)}", lines[0]);
        var repairs = plan.Boundaries.Repairs.Length;
        if (repairs == 0) return;
        Assert.Contains($"REPAIR-CUTS:LWPOLYLINE {repairs}", lines);
        Assert.Contains($"REPAIR-HATCH:HATCH {repairs}", lines);
        Assert.All(plan.Boundaries.Repairs, r => Assert.Contains("text " + r.Id, lines));
    }

    [Fact]
    public void GdalReadsTheDrawingInPlace()
    {
        using var folder = new ScratchFolder();
        var (project, plan) = OddJobs.Of("usual").Build();
        var layer = Layers(OutsideProgram.Run("ogrinfo", "-so", "-al", "-where", "Layer='REPAIR-CUTS'", folder.Save(DxfFile.Write(project, plan, Options)))).Single();
        var box = Layers(OutsideProgram.Run("ogrinfo", "-so", "-al", folder.Save(GeoPackageFile.Write(project, plan, Options)))).Single(l => l.Name == "repairs");
        Assert.Equal(plan.Boundaries.Repairs.Length, layer.Count);
        Assert.InRange(box.West, layer.West, layer.East);
        Assert.InRange(box.North, layer.South, layer.North);
    }

    private static Dictionary<string, int> Counts(Project project, RepairPlan plan) => new()
    {
        ["repairs"] = plan.Boundaries.Repairs.Length,
        ["partial_depth"] = plan.SurfaceWorks.Count(w => w.Area > 0),
        ["seals"] = plan.SurfaceWorks.Count(w => w.Area == 0),
        ["distresses"] = project.Survey.Distresses.Length,
        ["slabs"] = project.Road.Lanes.Sum(l => l.SlabCount),
        ["repair_joints"] = plan.Joints.Joints.Length,
        ["joints"] = project.Road.Lanes.Sum(l => l.Joints.Length),
    };

    private static List<Layer> Layers(string output) => [.. LayerPattern().Split(output).Skip(1).Chunk(2).Select(pair => Layer.Of(pair[0], pair[1]))];

    [GeneratedRegex(@"^Layer name: (.+)$", RegexOptions.Multiline)]
    private static partial Regex LayerPattern();

    [GeneratedRegex(@"Extent: \(([-\d.]+), ([-\d.]+)\) - \(([-\d.]+), ([-\d.]+)\)")]
    private static partial Regex ExtentPattern();

    [GeneratedRegex(@"Feature Count: (\d+)")]
    private static partial Regex CountPattern();

    private sealed record Layer(string Name, int Count, double West, double South, double East, double North, string System)
    {
        public static Layer Of(string name, string text)
        {
            var extent = ExtentPattern().Match(text).Groups;
            double At(int i) => extent[i].Success ? double.Parse(extent[i].Value, CultureInfo.InvariantCulture) : double.NaN;
            var count = int.Parse(CountPattern().Match(text).Groups[1].Value, CultureInfo.InvariantCulture);
            return new Layer(name.Trim(), count, At(1), At(2), At(3), At(4), text);
        }
    }
}
