using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Pavement;

namespace Slabwright.Sheets.Strip;

/// <summary>Shapes of the road as it is: lanes, shoulders, joints, earlier repairs, features and no-cut zones.</summary>
internal static class RoadShapes
{
    /// <summary>Lanes, overlays, shoulders and earlier repairs: everything that lies under the rest.</summary>
    public static void AddGround(Road road, Stretch stretch, ImmutableArray<StripShape>.Builder shapes)
    {
        foreach (var lane in road.Lanes)
        {
            var band = stretch.Section.Of(lane.Number);
            Add(shapes, stretch.Rectangle(lane.From, lane.To, band.Left, band.Right, StripStyle.Lane));
            foreach (var section in lane.Sections.Where(s => s.OverlayThickness > 0))
            {
                Add(shapes, stretch.Rectangle(section.From, section.To, band.Left, band.Right, StripStyle.Overlay));
            }

            var (left, right) = (CrossSection.EdgeWidth(lane.LeftEdge), CrossSection.EdgeWidth(lane.RightEdge));
            if (left > 0) Add(shapes, stretch.Rectangle(lane.From, lane.To, band.Left - left, band.Left, EdgeStyle(lane.LeftEdge)));
            if (right > 0) Add(shapes, stretch.Rectangle(lane.From, lane.To, band.Right, band.Right + right, EdgeStyle(lane.RightEdge)));
            foreach (var earlier in lane.EarlierRepairs)
            {
                Add(shapes, stretch.Rectangle(earlier.From, earlier.To, band.Left, band.Right, StripStyle.EarlierRepair));
            }
        }
    }

    /// <summary>Transverse joints, slab numbers and the lines along the road.</summary>
    public static void AddJoints(
        Road road, Stretch stretch, ImmutableArray<StripShape>.Builder shapes, ImmutableArray<StripNote>.Builder notes)
    {
        foreach (var lane in road.Lanes)
        {
            var band = stretch.Section.Of(lane.Number);
            for (var i = 0; i < lane.Joints.Length; i++)
            {
                var joint = lane.Joints[i];
                if (stretch.Touches(joint.First, joint.Last)) shapes.Add(JointLine(joint, band));
                if (i + 1 < lane.Joints.Length) AddSlabNumber(lane, i, band, stretch, notes);
            }

            Add(shapes, stretch.Along(lane.From, lane.To, band.Left, LineStyle(lane.LeftEdge)));
            Add(shapes, stretch.Along(lane.From, lane.To, band.Right, LineStyle(lane.RightEdge)));
        }
    }

    /// <summary>No-cut zones, bridges, ramps and marks.</summary>
    public static void AddZones(
        Road road, Stretch stretch, ImmutableArray<StripShape>.Builder shapes, ImmutableArray<StripNote>.Builder notes)
    {
        foreach (var zone in road.NoCutZones.Where(z => stretch.Touches(z.From, z.To)))
        {
            var (left, right) = zone.Lane is { } lane
                ? (stretch.Section.Of(lane).Left, stretch.Section.Of(lane).Right)
                : (0, stretch.Section.Width);
            Add(shapes, stretch.Rectangle(zone.From, zone.To, left, right, StripStyle.NoCutZone));
            var middle = (stretch.Clip(zone.From) + stretch.Clip(zone.To)) / 2;
            notes.Add(new StripNote(
                new(middle, (left + right) / 2), zone.To - zone.From, zone.Lane ?? 0, NoteKind.NoCutZone, "No cuts: " + zone.Name));
        }

        foreach (var equation in StationTicks.Of(road.Stationing, stretch.From, stretch.To, stretch.To - stretch.From).Where(t => t.IsEquation))
        {
            notes.Add(new StripNote(new(equation.At, 0), 0, 0, NoteKind.Feature, "Station " + equation.Label));
        }

        foreach (var feature in road.Features.Where(f => stretch.Touches(f.From, f.To)))
        {
            var middle = (stretch.Clip(feature.From) + stretch.Clip(feature.To)) / 2;
            notes.Add(new StripNote(new(middle, 0), feature.To - feature.From, 0, NoteKind.Feature, feature.Name));
        }
    }

    private static void AddSlabNumber(Lane lane, int index, LaneBand band, Stretch stretch, ImmutableArray<StripNote>.Builder notes)
    {
        var (start, end) = (lane.Joints[index].AtRightEdge, lane.Joints[index + 1].AtRightEdge);
        var middle = (start + end) / 2;
        if (middle < stretch.From || middle > stretch.To) return;
        var text = (index + 1).ToString(CultureInfo.InvariantCulture);
        notes.Add(new StripNote(new(middle, band.Right), end - start, lane.Number, NoteKind.SlabNumber, text));
    }

    private static StripLine JointLine(TransverseJoint joint, LaneBand band)
    {
        var style = joint.Kind switch
        {
            JointKind.Dowelled => StripStyle.JointDowelled,
            JointKind.Undowelled => StripStyle.JointUndowelled,
            JointKind.WorkingCrack => StripStyle.WorkingCrack,
            JointKind.EarlierRepairEdge => StripStyle.EarlierRepairEdge,
            _ => StripStyle.JointHeavy,
        };
        return new StripLine([new(joint.AtLeftEdge, band.Left), new(joint.AtRightEdge, band.Right)], style);
    }

    private static StripStyle EdgeStyle(LaneEdge edge) => edge switch
    {
        LaneEdge.AsphaltShoulder => StripStyle.AsphaltShoulder,
        LaneEdge.TiedConcreteShoulder => StripStyle.ConcreteShoulder,
        _ => StripStyle.OtherEdge,
    };

    private static StripStyle LineStyle(LaneEdge edge) => edge switch
    {
        LaneEdge.TiedLane => StripStyle.LaneLineTied,
        LaneEdge.UntiedLane => StripStyle.LaneLineUntied,
        _ => StripStyle.PavementEdge,
    };

    private static void Add(ImmutableArray<StripShape>.Builder shapes, StripShape? shape)
    {
        if (shape is not null) shapes.Add(shape);
    }
}
