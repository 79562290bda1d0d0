using System.Collections.Immutable;
using Slabwright.Core.Job;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Strip;

/// <summary>Turns a project and its plan into the drawable strip of one stretch.</summary>
public static class StripBuilder
{
    /// <summary>Builds the strip from one place to another.</summary>
    /// <param name="project">The job.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="from">Metres along the road.</param>
    /// <param name="to">Metres along the road, greater than <paramref name="from"/>.</param>
    public static StripModel Build(Project project, RepairPlan plan, double from, double to)
    {
        var stretch = new Stretch(from, to, CrossSection.Of(project.Road));
        var shapes = ImmutableArray.CreateBuilder<StripShape>();
        var notes = ImmutableArray.CreateBuilder<StripNote>();
        RoadShapes.AddGround(project.Road, stretch, shapes);
        var seen = new SurfacePlaces(project.Survey, stretch.Section);
        RepairShapes.AddAreas(plan, stretch, seen, shapes);
        RoadShapes.AddJoints(project.Road, stretch, shapes, notes);
        RoadShapes.AddZones(project.Road, stretch, shapes, notes);
        AddDistresses(project, stretch, shapes, notes);
        RepairShapes.AddOutlines(plan, stretch, seen, shapes, notes);
        var (left, right) = EdgesOf(project.Road, stretch);
        var lanes = stretch.Section.Lanes.Where(b => IsThere(project.Road.LaneByNumber(b.Lane), stretch)).ToImmutableArray();
        return new StripModel(from, to, left, right, lanes, shapes.ToImmutable(), notes.ToImmutable());
    }

    private static void AddDistresses(
        Project project, Stretch stretch, ImmutableArray<StripShape>.Builder shapes, ImmutableArray<StripNote>.Builder notes)
    {
        foreach (var distress in project.Survey.Distresses)
        {
            if (!stretch.Touches(distress.From, distress.To)) continue;
            var band = stretch.Section.Of(distress.Lane);
            var lane = project.Road.LaneByNumber(distress.Lane);
            shapes.AddRange(DistressShapes.Of(distress, lane, band));
            notes.Add(NoteOf(distress, band));
        }

        foreach (var core in project.Survey.Cores)
        {
            if (!stretch.Touches(core.At, core.At)) continue;
            var band = stretch.Section.Of(core.Lane);
            var place = new StripPoint(core.At, band.Left + (core.Offset ?? band.Width / 2));
            shapes.Add(new StripDot(place, StripStyle.Core, core.Id));
            notes.Add(new StripNote(place, 0, core.Lane, NoteKind.Core, core.Id, core.Id));
        }
    }

    private static StripNote NoteOf(Distress distress, LaneBand band)
    {
        var code = SheetWords.CodeOf(distress.Type);
        var text = distress.Severity switch
        {
            Severity.None => code,
            Severity.Low => code + "-L",
            Severity.Moderate => code + "-M",
            _ => code + "-H",
        };
        return new StripNote(new StripPoint(distress.Middle, band.Middle), distress.Extent, distress.Lane, NoteKind.Distress, text, distress.Id);
    }

    private static (double Left, double Right) EdgesOf(Road road, Stretch stretch)
    {
        var (left, right) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var lane in road.Lanes.Where(l => IsThere(l, stretch)))
        {
            var band = stretch.Section.Of(lane.Number);
            left = Math.Min(left, band.Left - CrossSection.EdgeWidth(lane.LeftEdge));
            right = Math.Max(right, band.Right + CrossSection.EdgeWidth(lane.RightEdge));
        }

        return left < right ? (left, right) : (0, stretch.Section.Width);
    }

    /// <summary>True where the lane has concrete in the stretch.</summary>
    private static bool IsThere(Lane lane, Stretch stretch) => lane.From < stretch.To && lane.To > stretch.From;
}

/// <summary>The stretch being drawn.</summary>
/// <param name="From">Metres along the road.</param>
/// <param name="To">Metres along the road.</param>
/// <param name="Section">Cross section.</param>
internal readonly record struct Stretch(double From, double To, CrossSection Section)
{
    public bool Touches(double from, double to) => to >= From && from <= To;

    public double Clip(double at) => Math.Clamp(at, From, To);

    /// <summary>A rectangle clipped to the stretch, or null when nothing is left of it.</summary>
    public StripArea? Rectangle(double from, double to, double left, double right, StripStyle style, string reference = "")
    {
        var (a, b) = (Clip(from), Clip(to));
        return b <= a ? null : new StripArea([new(a, left), new(b, left), new(b, right), new(a, right)], style, reference);
    }

    /// <summary>A line along the road clipped to the stretch, or null.</summary>
    public StripLine? Along(double from, double to, double offset, StripStyle style, string reference = "")
    {
        var (a, b) = (Clip(from), Clip(to));
        return b <= a ? null : new StripLine([new(a, offset), new(b, offset)], style, reference);
    }
}
