using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Job;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using Slabwright.Sheets.Strip;
using Slabwright.Sheets.Tables;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Maps;

/// <summary>A field of a layer.</summary>
internal readonly record struct MapField(string Name, FieldType Type);

/// <summary>One thing on the map: a ring or a line, and its values in the order of the layer's fields.</summary>
internal sealed record MapFeature(ImmutableArray<MapPoint> Points, ImmutableArray<object?> Values);

/// <summary>Things of one kind.</summary>
/// <param name="Name">Layer name.</param>
/// <param name="Title">What it holds.</param>
/// <param name="IsPolygon">Rings, or lines.</param>
/// <param name="Fields">Fields.</param>
/// <param name="Features">Features.</param>
internal sealed record MapLayer(
    string Name, string Title, bool IsPolygon, ImmutableArray<MapField> Fields, ImmutableArray<MapFeature> Features)
{
    /// <summary>Builds a layer from rows, their fields and their shape.</summary>
    public static MapLayer Of<T>(
        string name, string title, bool isPolygon, IEnumerable<T> rows, ImmutableArray<Field<T>> fields, Func<T, ImmutableArray<MapPoint>> shape) =>
        new(name, title, isPolygon, [.. fields.Select(f => new MapField(f.Name, f.Type))],
            [.. rows.Select(row => new MapFeature(shape(row), [.. fields.Select(f => f.Read(row))]))]);
}

/// <summary>The layers of a plan.</summary>
internal static class MapLayers
{
    /// <summary>Least extent a distress is drawn with along the road, m.</summary>
    private const double LeastExtent = 0.3;

    /// <summary>Repairs, partial-depth repairs, seals, distresses, slabs, joints, and the joints of the repairs.</summary>
    public static ImmutableArray<MapLayer> Of(Project project, RepairPlan plan, RoadPlane plane)
    {
        var tables = new JobTables(project, plan);
        var section = CrossSection.Of(project.Road);
        var places = new SurfacePlaces(project.Survey, section);
        return
        [
            MapLayer.Of("repairs", "Full-depth repairs, slab replacements and slab runs", true, plan.Boundaries.Repairs, tables.Repairs(),
                r => plane.Rectangle(r.From, r.To, section.Of(r.Lane).Left, section.Of(r.Lane).Right)),
            MapLayer.Of("partial_depth", "Partial-depth repairs", true, plan.SurfaceWorks.Where(w => w.Treatment != Treatment.Seal), tables.SurfaceWorks(),
                w => WorkBox(plane, places.Box(w))),
            MapLayer.Of("seals", "Cracks and joints to seal", false, plan.SurfaceWorks.Where(w => w.Treatment == Treatment.Seal), tables.SurfaceWorks(),
                w => plane.Line(places.Line(w))),
            MapLayer.Of("distresses", "Distresses as surveyed", true, project.Survey.Distresses, tables.Distresses(),
                d => Box(plane, section.Of(d.Lane), d.From, d.To, d.OffsetFrom, d.OffsetTo)),
            MapLayer.Of("slabs", "Slabs", true, SlabsOf(project.Road), SlabFields(project), s => SlabRing(plane, section.Of(s.Lane), s)),
            MapLayer.Of("joints", "Transverse joints and working cracks", false, JointsOf(project.Road), JointFields(project),
                j => plane.Line([new(j.Joint.AtLeftEdge, section.Of(j.Lane).Left), new(j.Joint.AtRightEdge, section.Of(j.Lane).Right)])),
            MapLayer.Of("repair_joints", "Transverse joints of the repairs with their bars", false, plan.Joints.Joints, new JointTables(project, plan).Joints(),
                j => plane.Line([new(j.At, section.Of(j.Lane).Left), new(j.At, section.Of(j.Lane).Left + j.LaneWidth)])),
        ];
    }

    private static ImmutableArray<MapPoint> Box(RoadPlane plane, LaneBand band, double from, double to, double? left, double? right)
    {
        var spread = Math.Max(LeastExtent - (to - from), 0) / 2;
        var (a, b) = (left ?? 0, right ?? band.Width);
        if (b - a < 0.05) (a, b) = (a - 0.05, b + 0.05);
        return plane.Rectangle(from - spread, to + spread, band.Left + a, band.Left + b);
    }

    private static ImmutableArray<MapPoint> WorkBox(RoadPlane plane, (double From, double To, double Left, double Right) box) =>
        plane.Rectangle(box.From, box.To, box.Left, Math.Max(box.Right, box.Left + 0.05));

    private static IEnumerable<Slab> SlabsOf(Road road) => road.Lanes.SelectMany(l => Enumerable.Range(1, l.SlabCount).Select(l.SlabByNumber));

    private static ImmutableArray<MapPoint> SlabRing(RoadPlane plane, LaneBand band, Slab slab) => plane.Ring(
    [
        new(slab.Start.AtLeftEdge, band.Left), new(slab.Start.AtRightEdge, band.Right),
        new(slab.End.AtRightEdge, band.Right), new(slab.End.AtLeftEdge, band.Left),
    ]);

    private static ImmutableArray<Field<Slab>> SlabFields(Project project)
    {
        var units = JobUnits.Of(project.UnitSystem);
        return
        [
            Field<Slab>.Whole("lane", s => s.Lane),
            Field<Slab>.Whole("slab", s => s.Number),
            Field<Slab>.Text("from_station", s => project.Road.Stationing.Format(s.Start.At)),
            Field<Slab>.Measure("length", units.Length, 3, s => s.Length),
            Field<Slab>.Measure("thickness", units.Thickness, 2, s => project.Road.LaneByNumber(s.Lane).SectionAt(s.Start.At).Thickness),
        ];
    }

    private static IEnumerable<(int Lane, int Number, TransverseJoint Joint)> JointsOf(Road road) =>
        road.Lanes.SelectMany(l => l.Joints.Select((j, i) => (l.Number, i + 1, j)));

    private static ImmutableArray<Field<(int Lane, int Number, TransverseJoint Joint)>> JointFields(Project project) =>
    [
        Field<(int Lane, int Number, TransverseJoint Joint)>.Whole("lane", j => j.Lane),
        Field<(int Lane, int Number, TransverseJoint Joint)>.Whole("starts_slab", j => j.Number),
        Field<(int Lane, int Number, TransverseJoint Joint)>.Text("kind", j => SheetWords.Of(j.Joint.Kind)),
        Field<(int Lane, int Number, TransverseJoint Joint)>.Text("station", j => project.Road.Stationing.Format(j.Joint.At)),
    ];
}
