using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Job;
using Slabwright.Core.Treatments;

namespace Slabwright.Sheets.Strip;

/// <summary>Shapes of the work: repairs with their joints and faces, partial-depth repairs and seals.</summary>
internal static class RepairShapes
{
    /// <summary>Half the length a bar is drawn with across its joint, m.</summary>
    private const double BarHalfLength = 0.28;

    /// <summary>Bars drawn at most across a lane; the schedule gives the number.</summary>
    private const int BarsDrawn = 7;

    /// <summary>Filled areas, under joints and distresses.</summary>
    public static void AddAreas(RepairPlan plan, Stretch stretch, SurfacePlaces places, ImmutableArray<StripShape>.Builder shapes)
    {
        foreach (var work in plan.SurfaceWorks.Where(w => w.Area > 0 && stretch.Touches(w.From, w.To)))
        {
            var (from, to, left, right) = places.Box(work);
            if (stretch.Rectangle(from, to, left, right, StripStyle.PartialDepth, work.Id) is { } area) shapes.Add(area);
        }

        foreach (var repair in plan.Boundaries.Repairs.Where(r => stretch.Touches(r.From, r.To)))
        {
            var band = stretch.Section.Of(repair.Lane);
            AddShoulderStrip(repair.LeftFace, band.Left - CrossSection.ShoulderWidth / 3, band.Left, repair.Id, stretch, shapes);
            AddShoulderStrip(repair.RightFace, band.Right, band.Right + CrossSection.ShoulderWidth / 3, repair.Id, stretch, shapes);
            if (stretch.Rectangle(repair.From, repair.To, band.Left, band.Right, StyleOf(repair.Kind), repair.Id) is { } area) shapes.Add(area);
        }
    }

    /// <summary>Cuts, bars, boards, seals and identifiers, over everything else.</summary>
    public static void AddOutlines(
        RepairPlan plan, Stretch stretch, SurfacePlaces places, ImmutableArray<StripShape>.Builder shapes, ImmutableArray<StripNote>.Builder notes)
    {
        foreach (var work in plan.SurfaceWorks.Where(w => stretch.Touches(w.From, w.To))) AddSurfaceWork(work, stretch, places, shapes, notes);
        foreach (var repair in plan.Boundaries.Repairs.Where(r => stretch.Touches(r.From, r.To)))
        {
            var band = stretch.Section.Of(repair.Lane);
            AddFaces(repair.LeftFace, band.Left, repair.Id, stretch, shapes);
            AddFaces(repair.RightFace, band.Right, repair.Id, stretch, shapes);
            AddJoint(repair.Start, StripStyle.BoundaryCut, band, repair.Id, stretch, shapes);
            AddJoint(repair.End, StripStyle.BoundaryCut, band, repair.Id, stretch, shapes);
            foreach (var joint in repair.Intermediate) AddJoint(joint, StripStyle.IntermediateJoint, band, repair.Id, stretch, shapes);
            var middle = (stretch.Clip(repair.From) + stretch.Clip(repair.To)) / 2;
            var extent = stretch.Clip(repair.To) - stretch.Clip(repair.From);
            notes.Add(new StripNote(new(middle, band.Middle), extent, repair.Lane, NoteKind.Repair, repair.Id, repair.Id));
        }
    }

    private static StripStyle StyleOf(Treatment kind) => kind switch
    {
        Treatment.SlabReplacement => StripStyle.SlabReplacement,
        Treatment.SlabRun => StripStyle.SlabRun,
        _ => StripStyle.FullDepth,
    };

    private static void AddSurfaceWork(
        SurfaceWork work, Stretch stretch, SurfacePlaces places, ImmutableArray<StripShape>.Builder shapes, ImmutableArray<StripNote>.Builder notes)
    {
        if (work.Treatment == Treatment.Seal) shapes.Add(new StripLine([.. places.Line(work).Select(p => p with { At = stretch.Clip(p.At) })], StripStyle.Seal, work.Id));
        var middle = (stretch.Clip(work.From) + stretch.Clip(work.To)) / 2;
        notes.Add(new StripNote(new(middle, stretch.Section.Of(work.Lane).Middle), work.To - work.From, work.Lane, NoteKind.SurfaceWork, work.Id, work.Id));
    }

    private static void AddShoulderStrip(
        ImmutableArray<FaceStretch> faces, double left, double right, string id, Stretch stretch, ImmutableArray<StripShape>.Builder shapes)
    {
        foreach (var face in faces.Where(f => f.Face == LongitudinalFace.FormedAgainstShoulder))
        {
            if (stretch.Rectangle(face.From, face.To, left, right, StripStyle.ShoulderStrip, id) is { } strip) shapes.Add(strip);
        }
    }

    private static void AddFaces(
        ImmutableArray<FaceStretch> faces, double offset, string id, Stretch stretch, ImmutableArray<StripShape>.Builder shapes)
    {
        foreach (var face in faces)
        {
            var style = face.Face switch
            {
                LongitudinalFace.Isolated => StripStyle.Isolation,
                LongitudinalFace.FormedAgainstShoulder or LongitudinalFace.Formed => StripStyle.EdgeForm,
                _ => StripStyle.BoundaryCut,
            };
            if (stretch.Along(face.From, face.To, offset, style, id) is { } line) shapes.Add(line);
            if (face.Face == LongitudinalFace.Tied) AddTies(face, offset, id, stretch, shapes);
        }
    }

    private static void AddTies(FaceStretch face, double offset, string id, Stretch stretch, ImmutableArray<StripShape>.Builder shapes)
    {
        var count = Math.Clamp((int)((face.To - face.From) / 0.76), 1, 60);
        for (var i = 0; i < count; i++)
        {
            var at = face.From + (face.To - face.From) * (i + 0.5) / count;
            if (!stretch.Touches(at, at)) continue;
            shapes.Add(new StripLine([new(at, offset - BarHalfLength), new(at, offset + BarHalfLength)], StripStyle.TieBar, id));
        }
    }

    private static void AddJoint(
        RepairJoint joint, StripStyle style, LaneBand band, string id, Stretch stretch, ImmutableArray<StripShape>.Builder shapes)
    {
        if (!stretch.Touches(joint.At, joint.At)) return;
        shapes.Add(new StripLine([new(joint.At, band.Left), new(joint.At, band.Right)], style, id));
        if (joint.Design == JointDesign.Isolated)
        {
            shapes.Add(new StripLine([new(joint.At, band.Left), new(joint.At, band.Right)], StripStyle.Isolation, id));
        }

        if (joint.Design is not (JointDesign.Dowelled or JointDesign.Tied)) return;
        var bars = Math.Min(Math.Max(joint.Bars, 2), BarsDrawn);
        for (var i = 0; i < bars; i++)
        {
            AddBar(joint, band.Left + band.Width * (i + 0.5) / bars, id, shapes);
        }
    }

    /// <summary>A dowel is a plain short line across the joint; a tie bar has a hook at both ends.</summary>
    private static void AddBar(RepairJoint joint, double offset, string id, ImmutableArray<StripShape>.Builder shapes)
    {
        var (a, b) = (joint.At - BarHalfLength, joint.At + BarHalfLength);
        if (joint.Design == JointDesign.Dowelled)
        {
            shapes.Add(new StripLine([new(a, offset), new(b, offset)], StripStyle.Dowel, id));
            return;
        }

        const double hook = 0.14;
        shapes.Add(new StripLine([new(a, offset - hook), new(a, offset), new(b, offset), new(b, offset + hook)], StripStyle.TieBar, id));
    }
}
