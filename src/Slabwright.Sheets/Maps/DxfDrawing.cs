using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Job;
using Slabwright.Core.Pavement;
using Slabwright.Core.Treatments;
using Slabwright.Sheets.Strip;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Maps;

/// <summary>The entities of the drawing.</summary>
internal sealed class DxfDrawing(Project project, RepairPlan plan, RoadPlane plane, DxfText dxf)
{
    /// <summary>Text heights, m on the ground.</summary>
    private const double SmallText = 0.28;
    private const double RepairTextHeight = 0.45;

    private readonly JobUnits units = JobUnits.Of(project.UnitSystem);
    private readonly CrossSection section = CrossSection.Of(project.Road);
    private readonly SurfacePlaces places = new(project.Survey, CrossSection.Of(project.Road));

    public void Draw()
    {
        foreach (var lane in project.Road.Lanes) DrawLane(lane);
        DrawZones();
        DrawStations();
        DrawDistresses();
        foreach (var work in plan.SurfaceWorks) DrawSurfaceWork(work);
        foreach (var repair in plan.Boundaries.Repairs) DrawRepair(repair);
        Text(DxfLayers.Notes, new StripPoint(0, section.Width + 6), $"{project.Name}. {plane.Sentence}", 1.2, false);
    }

    private void DrawLane(Lane lane)
    {
        var band = section.Of(lane.Number);
        Polyline(DxfLayers.LaneEdges, plane.Line([new(lane.From, band.Left), new(lane.To, band.Left)]), false);
        Polyline(DxfLayers.LaneEdges, plane.Line([new(lane.From, band.Right), new(lane.To, band.Right)]), false);
        for (var i = 0; i < lane.Joints.Length; i++)
        {
            var joint = lane.Joints[i];
            var layer = joint.Kind == JointKind.WorkingCrack ? DxfLayers.Cracks : DxfLayers.Joints;
            Line(layer, new StripPoint(joint.AtLeftEdge, band.Left), new StripPoint(joint.AtRightEdge, band.Right));
            if (i + 1 == lane.Joints.Length) continue;
            var middle = (joint.At + lane.Joints[i + 1].At) / 2;
            Text(DxfLayers.SlabText, new StripPoint(middle, band.Right - 0.3), (i + 1).ToString(CultureInfo.InvariantCulture), SmallText, true);
        }
    }

    private void DrawZones()
    {
        foreach (var zone in project.Road.NoCutZones)
        {
            var (left, right) = zone.Lane is { } lane ? (section.Of(lane).Left, section.Of(lane).Right) : (0, section.Width);
            Polyline(DxfLayers.NoCut, plane.Rectangle(zone.From, zone.To, left, right), true);
            Text(DxfLayers.NoCut, new StripPoint((zone.From + zone.To) / 2, left + 0.7), "No cuts: " + zone.Name, RepairTextHeight, true);
        }
    }

    private void DrawStations()
    {
        foreach (var tick in StationTicks.Of(project.Road.Stationing, 0, project.Road.Length, 25))
        {
            Line(DxfLayers.Stations, new StripPoint(tick.At, -1.4), new StripPoint(tick.At, tick.Label.Length > 0 ? -2.2 : -1.8));
            if (tick.Label.Length > 0) Text(DxfLayers.Stations, new StripPoint(tick.At, -2.6), tick.Label, RepairTextHeight, true);
        }
    }

    private void DrawDistresses()
    {
        foreach (var distress in project.Survey.Distresses)
        {
            var band = section.Of(distress.Lane);
            foreach (var shape in DistressShapes.Of(distress, project.Road.LaneByNumber(distress.Lane), band))
            {
                if (shape is StripLine line) Polyline(DxfLayers.Distress, plane.Line(line.Points), false);
                else if (shape is StripDot dot) Circle(DxfLayers.Distress, dot.Centre, 0.08);
            }

            var text = $"{distress.Id} {SheetWords.CodeOf(distress.Type)} {SheetWords.Of(distress.Severity)}".TrimEnd();
            Text(DxfLayers.DistressText, new StripPoint(distress.Middle, band.Left + 0.5), text, SmallText, true);
        }
    }

    private void DrawSurfaceWork(SurfaceWork work)
    {
        var (from, to, left, right) = places.Box(work);
        if (work.Treatment == Treatment.Seal) Polyline(DxfLayers.Surface, plane.Line(places.Line(work)), false);
        else Polyline(DxfLayers.Surface, plane.Rectangle(from, to, left, right), true);
        var middle = (work.From + work.To) / 2;
        Text(DxfLayers.SurfaceText, new StripPoint(middle, section.Of(work.Lane).Middle + 0.6), work.Id, RepairTextHeight, true);
    }

    private void DrawRepair(Repair repair)
    {
        var band = section.Of(repair.Lane);
        var ring = plane.Rectangle(repair.From, repair.To, band.Left, band.Right);
        DxfHatch.Write(dxf, DxfLayers.Hatch, ring, repair.Kind, plane.Unit);
        Polyline(DxfLayers.Cuts, ring, true);
        foreach (var joint in repair.Intermediate) Line(DxfLayers.NewJoints, new(joint.At, band.Left), new(joint.At, band.Right));
        var middle = (repair.From + repair.To) / 2;
        Text(DxfLayers.RepairText, new StripPoint(middle, band.Middle - 0.5), repair.Id, RepairTextHeight, true);
        Text(DxfLayers.RepairText, new StripPoint(middle, band.Middle + 0.2), $"{SheetWords.CodeOf(repair.Kind)} {units.LengthText(repair.Length)}", SmallText, true);
        Text(DxfLayers.RepairText, new StripPoint(middle, band.Middle + 0.7), project.Road.Stationing.Format(repair.From), SmallText, true);
        Text(DxfLayers.RepairText, new StripPoint(middle, band.Middle + 1.1), project.Road.Stationing.Format(repair.To), SmallText, true);
    }

    private void Line(string layer, StripPoint a, StripPoint b) =>
        dxf.Entity("LINE", layer, "AcDbLine").Point(10, plane.At(a)).Point(11, plane.At(b));

    private void Circle(string layer, StripPoint centre, double radius) =>
        dxf.Entity("CIRCLE", layer, "AcDbCircle").Point(10, plane.At(centre)).Put(40, plane.Unit.FromBase(radius));

    private void Polyline(string layer, ImmutableArray<MapPoint> points, bool closed)
    {
        var count = closed ? points.Length - 1 : points.Length;
        dxf.Entity("LWPOLYLINE", layer, "AcDbPolyline").Put(90, count).Put(70, closed ? 1 : 0);
        for (var i = 0; i < count; i++) dxf.Put(10, points[i].X).Put(20, points[i].Y);
    }

    /// <summary>Text turned along the road; centred texts have their middle at the place.</summary>
    private void Text(string layer, StripPoint place, string text, double height, bool centred)
    {
        var (here, ahead) = (plane.At(place), plane.At(place with { At = place.At + 0.5 }));
        var turn = Math.Atan2(ahead.Y - here.Y, ahead.X - here.X) * 180 / Math.PI;
        dxf.Entity("TEXT", layer, "AcDbText").Point(10, here).Put(40, plane.Unit.FromBase(height)).Put(1, text).Put(50, turn);
        if (centred) dxf.Put(72, 1).Point(11, here);
        dxf.Put(100, "AcDbText");
    }
}
