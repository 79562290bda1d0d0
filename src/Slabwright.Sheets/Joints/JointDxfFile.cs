using System.Collections.Immutable;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Maps;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Joints;

/// <summary>
/// The joint layouts as a DXF drawing (release 2000) at full size, in inches or millimetres: one row for each layout, plan and face at the
/// left, the section through one bar at the right. In every plan x runs from the lane's left edge and the joint lies on the row's y.
/// </summary>
public static class JointDxfFile
{
    /// <summary>Points a metre the figures are laid out with; decides only how large the texts are.</summary>
    private const double AcrossScale = 72 / 0.0254 / 12;
    private const double SectionScale = 72 / 0.0254 / 3;
    private const double RowGap = 0.8;

    /// <summary>Writes the drawing.</summary>
    /// <param name="project">The job.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="options">Name of the file.</param>
    public static SheetFile Write(Project project, RepairPlan plan, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(project);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        var unit = project.UnitSystem == UnitSystem.Si ? Units.Millimetre : Units.Inch;
        var entities = new DxfText();
        var writer = new FigureDxf(entities, unit);
        var y = 0.0;
        foreach (var group in JointLayouts.Of(plan.Joints))
        {
            var drawing = new JointDrawingOptions(project.UnitSystem, AcrossScale, SectionScale) { Reservoir = SealWords.ReservoirOf(plan.Seals, group.Sample) };
            var (across, section) = (JointAcross.Draw(group.Sample, drawing), JointSection.Draw(group.Sample, drawing));
            var title = $"{group.Mark}: lane {group.Sample.Lane}, {JointWords.Of(group.Bars, JobUnits.Of(project.UnitSystem))}, slab {JobUnits.Of(project.UnitSystem).Detail(group.Sample.Thickness)}";
            writer.Text(title, 0, y + across.Origin.Y / AcrossScale + 0.12, 0.06);
            writer.Write(across, 0, y);
            writer.Write(section, (across.Width - across.Origin.X) / AcrossScale + 0.4 + section.Origin.X / SectionScale, y);
            y -= Math.Max(across.Height / AcrossScale, section.Height / SectionScale) + RowGap;
        }

        var file = new DxfText();
        DxfFrame.WriteStart(file, unit, JointDxfLayers.All, 0.05, entities.HandleSeed);
        file.Append(entities);
        DxfFrame.WriteEnd(file);
        return new SheetFile($"{options.BaseName}-joint-layouts.dxf", "image/vnd.dxf", "Joint layouts as DXF", file.ToBytes());
    }
}

/// <summary>Puts figures that are to scale into a drawing at full size.</summary>
internal sealed class FigureDxf(DxfText dxf, Unit unit)
{
    /// <summary>Height of capitals as a share of the type size.</summary>
    private const double CapitalHeight = 0.7;

    private Figure figure = new("", "", 0, 0, default, 1, []);
    private (double X, double Y) at;

    /// <summary>Writes a figure with its own zero at a place.</summary>
    /// <param name="drawn">The figure.</param>
    /// <param name="x">Metres to the right.</param>
    /// <param name="y">Metres up.</param>
    public void Write(Figure drawn, double x, double y)
    {
        (figure, at) = (drawn, (x, y));
        foreach (var shape in drawn.Shapes)
        {
            if (JointDxfLayers.Of(shape.Style) is { } layer) Write(shape, layer);
        }
    }

    /// <summary>Writes a line of text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="x">Metres to the right.</param>
    /// <param name="y">Metres up.</param>
    /// <param name="height">Height, m.</param>
    public void Text(string text, double x, double y, double height) =>
        dxf.Entity("TEXT", JointDxfLayers.Text, "AcDbText").Point(10, new MapPoint(unit.FromBase(x), unit.FromBase(y))).Put(40, unit.FromBase(height)).Put(1, text).Put(100, "AcDbText");

    private void Write(FigureShape shape, string layer)
    {
        switch (shape)
        {
            case FigureArea area:
                foreach (var ring in area.Rings)
                {
                    var corners = Points(ring);
                    if (area.Style == FigureStyle.NewConcrete) DxfHatch.Write(dxf, JointDxfLayers.Hatch, corners, [45], unit.FromBase(0.04));
                    Polyline(layer, corners, true);
                }

                break;
            case FigureLine line:
                Polyline(layer, Points(line.Points), false);
                break;
            case FigureCircle circle:
                dxf.Entity("CIRCLE", layer, "AcDbCircle").Point(10, Point(circle.Centre)).Put(40, unit.FromBase(circle.Radius / figure.PerMetre));
                break;
            case FigureText text:
                WriteText(text, layer);
                break;
        }
    }

    private void WriteText(FigureText text, string layer)
    {
        var height = unit.FromBase(text.Size * CapitalHeight / figure.PerMetre);
        var place = text.Turned ? text.Place.Moved(text.Size * CapitalHeight / 2, 0) : text.Place;
        dxf.Entity("TEXT", layer, "AcDbText").Point(10, Point(place)).Put(40, height).Put(1, text.Text).Put(50, text.Turned ? 90.0 : 0.0);
        if (text.Anchor != FigureAnchor.Start) dxf.Put(72, text.Anchor == FigureAnchor.Middle ? 1 : 2).Point(11, Point(place));
        dxf.Put(100, "AcDbText");
    }

    private void Polyline(string layer, ImmutableArray<MapPoint> points, bool isClosed)
    {
        dxf.Entity("LWPOLYLINE", layer, "AcDbPolyline").Put(90, points.Length).Put(70, isClosed ? 1 : 0);
        foreach (var point in points) dxf.Put(10, point.X).Put(20, point.Y);
    }

    private ImmutableArray<MapPoint> Points(ImmutableArray<FigurePoint> points) => [.. points.Select(Point)];

    private MapPoint Point(FigurePoint p) => new(
        unit.FromBase(at.X + (p.X - figure.Origin.X) / figure.PerMetre), unit.FromBase(at.Y - (p.Y - figure.Origin.Y) / figure.PerMetre));
}
