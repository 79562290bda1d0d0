using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Pavement;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Joints;

/// <summary>
/// A joint across its lane, to scale: plan above, face below with the same places, dimensions between them, drill set-ups underneath.
/// Travel runs up the plan; the face is seen looking in the direction of travel. The lane's left edge is the figure's zero.
/// </summary>
internal sealed class JointAcross(DesignedJoint joint, JointDrawingOptions options)
{
    private const double LabelSize = 7;
    private const double NameGap = 10;

    /// <summary>Slab shown beyond the ends of the bars, m.</summary>
    private const double Beyond = 0.1;

    private readonly FigureBuilder figure = new(options.Ruler);
    private readonly JobUnits units = JobUnits.Of(options.Units);
    private readonly double scale = options.AcrossScale;

    /// <summary>+1 where the old slab lies behind the joint, −1 where it lies ahead.</summary>
    private readonly int behind = joint.Position == JointPosition.End ? -1 : 1;

    private double Width => joint.LaneWidth * scale;

    private IReadOnlyList<double> Offsets => joint.Bars is { } bars ? bars.Offsets : [];

    public static Figure Draw(DesignedJoint joint, JointDrawingOptions options) => new JointAcross(joint, options).Draw();

    private Figure Draw()
    {
        var reach = Reach();
        DrawPlan(reach);
        var y = DrawDimensions(reach + 6);
        y = DrawFace(y + 8);
        DrawSetUps(y + 8);
        return figure.Build(JointWords.Title(joint), JointWords.Describe(joint, units), scale);
    }

    /// <summary>How far the plan reaches from the joint, both ways.</summary>
    private double Reach() => ((joint.Bars is { } b ? Math.Max(b.Embedment, b.Length - b.Embedment) : 0.25) + Beyond) * scale;

    private void DrawPlan(double reach)
    {
        var old = joint.Position == JointPosition.Inner ? FigureStyle.NewConcrete : FigureStyle.OldConcrete;
        var (below, above) = behind > 0 ? (old, FigureStyle.NewConcrete) : (FigureStyle.NewConcrete, old);
        figure.Box(above, 0, -reach, Width, 0, "ahead");
        figure.Box(below, 0, 0, Width, reach, "behind");
        foreach (var (x, name) in new[] { (Width / 2 - WheelPaths.Apart / 2 * scale, "left wheel path"), (Width / 2 + WheelPaths.Apart / 2 * scale, "right wheel path") })
        {
            var half = WheelPaths.Width / 2 * scale;
            figure.Line(FigureStyle.WheelPath, x - half, -reach, x - half, reach);
            figure.Line(FigureStyle.WheelPath, x + half, -reach, x + half, reach);
            figure.Text(name, x, -reach - 3, LabelSize - 0.4, FigureAnchor.Middle, false, FigureStyle.QuietNote);
        }

        DrawBars();
        figure.Line(joint.Position == JointPosition.Inner ? FigureStyle.SawnJoint : FigureStyle.BoundaryCut, 0, 0, Width, 0);
        figure.Line(FigureStyle.LaneEdge, 0, -reach, 0, reach);
        figure.Line(FigureStyle.LaneEdge, Width, -reach, Width, reach);
        DrawNames(reach);
    }

    private void DrawBars()
    {
        if (joint.Bars is not { } bars) return;
        var half = bars.Diameter * scale / 2;
        var (anchored, free) = (bars.Embedment * scale * behind, (bars.Length - bars.Embedment) * scale * -behind);
        for (var i = 0; i < bars.Bars; i++)
        {
            var (x, name) = (bars.Offsets[i] * scale, "bar-" + N(i + 1));
            if (joint.Drilling is { } drilling)
            {
                var hole = drilling.HoleDiameter * scale / 2;
                figure.Box(FigureStyle.Hole, x - hole, Math.Min(0, drilling.HoleDepth * scale * behind), x + hole, Math.Max(0, drilling.HoleDepth * scale * behind), name);
            }

            var held = joint.Drilling is not null || bars.Kind == BarKind.TieBar ? FigureStyle.BarAnchored : FigureStyle.BarFree;
            figure.Box(held, x - half, Math.Min(0, anchored), x + half, Math.Max(0, anchored), name);
            figure.Box(bars.Kind == BarKind.TieBar ? FigureStyle.BarAnchored : FigureStyle.BarFree, x - half, Math.Min(0, free), x + half, Math.Max(0, free), name);
            figure.Text(N(i + 1), x, free + (behind > 0 ? -2.5 : LabelSize + 1), LabelSize, FigureAnchor.Middle, true);
        }
    }

    private void DrawNames(double reach)
    {
        var (above, below) = joint.Position == JointPosition.Inner ? ("new concrete", "new concrete") : behind > 0 ? ("new concrete", "old slab") : ("old slab", "new concrete");
        figure.Text(above, -NameGap - 14, -reach / 2, LabelSize, FigureAnchor.End, true);
        figure.Text(below, -NameGap - 14, reach / 2 + 5, LabelSize, FigureAnchor.End, true);
        var cut = joint.Position == JointPosition.Inner ? "joint inside" : "boundary cut";
        figure.Text(cut, -NameGap - 14, 2.5, LabelSize, FigureAnchor.End);
        var x = -NameGap;
        var tip = -Math.Min(25, reach - 4);
        figure.Line(FigureStyle.Axis, x, Math.Min(22, reach), x, tip + 7);
        figure.Area(FigureStyle.PointPasses, "", new FigurePoint(x, tip), new FigurePoint(x - 3, tip + 8), new FigurePoint(x + 3, tip + 8));
        figure.TurnedText("travel", x - 5.5, -1, LabelSize - 0.4, FigureStyle.QuietNote);
        figure.Text("lane’s left edge", 0, -reach - 3, LabelSize - 0.4, FigureAnchor.Middle, false, FigureStyle.QuietNote);
        figure.Text("right edge", Width, -reach - 3, LabelSize - 0.4, FigureAnchor.Middle, false, FigureStyle.QuietNote);
    }

    /// <summary>Spacing and running dimensions; extension lines tie bars in plan and face to them.</summary>
    private double DrawDimensions(double top)
    {
        double[] places = [0, .. Offsets, joint.LaneWidth];
        double[] at = [.. places.Select(p => p * scale)];
        if (Offsets.Count == 0)
        {
            FigureDimensions.Level(figure, 0, Width, top + 10, units.Running(joint.LaneWidth));
            return top + 14;
        }

        foreach (var x in at.Skip(1).SkipLast(1)) figure.Line(FigureStyle.Extension, x, top - 4, x, top + 18);
        var y = top + FigureDimensions.Chain(figure, at, top, i => units.Detail(places[i + 1] - places[i]));
        figure.Text("spacing", -NameGap, y - 2, LabelSize, FigureAnchor.End);
        y += 7;
        var line = y;
        y += FigureDimensions.Running(figure, at, line, i => i == 0 ? "0" : units.Running(places[i]));
        figure.Text("from the left edge", -NameGap, line + 2.5, LabelSize, FigureAnchor.End);
        return y;
    }

    private double DrawFace(double top)
    {
        var bottom = top + joint.Thickness * scale;
        figure.Box(joint.Position == JointPosition.Inner ? FigureStyle.NewConcrete : FigureStyle.OldConcrete, 0, top, Width, bottom, "face");
        figure.Box(FigureStyle.Base, 0, bottom, Width, bottom + 6);
        if (joint.Bars is { } bars)
        {
            var y = top + bars.Depth * scale;
            figure.Line(FigureStyle.CentreLine, -4, y, Width + 4, y);
            for (var i = 0; i < bars.Bars; i++)
            {
                var x = bars.Offsets[i] * scale;
                if (joint.Drilling is { } drilling) figure.Circle(FigureStyle.Hole, x, y, drilling.HoleDiameter * scale / 2, "bar-" + N(i + 1));
                figure.Circle(FigureStyle.BarAnchored, x, y, bars.Diameter * scale / 2, "bar-" + N(i + 1));
            }

            FigureDimensions.Upright(figure, Width + 12, top, y, units.Detail(bars.Depth));
        }

        var thick = units.Detail(joint.Thickness);
        FigureDimensions.Upright(figure, Width + 22 + figure.Measure(joint.Bars is { } b ? units.Detail(b.Depth) : "", FigureDimensions.TextSize), top, bottom, thick);
        figure.Line(FigureStyle.Surface, 0, top, Width, top);
        figure.Line(FigureStyle.LaneEdge, 0, top, 0, bottom);
        figure.Line(FigureStyle.LaneEdge, Width, top, Width, bottom);
        var middle = (top + bottom) / 2;
        figure.Text("face, looking in", -NameGap, middle - 1, LabelSize, FigureAnchor.End);
        figure.Text("direction of travel", -NameGap, middle + 7.5, LabelSize, FigureAnchor.End);
        return bottom + 6;
    }

    private void DrawSetUps(double top)
    {
        if (joint.Drilling is not { SetUps: { IsEmpty: false } setUps } || joint.Bars is not { } bars) return;
        var y = top + 8;
        foreach (var setUp in setUps)
        {
            ImmutableArray<double> drilled = [.. setUp.Bars.Where(b => b >= 1 && b <= bars.Bars).Select(b => bars.Offsets[b - 1])];
            if (drilled.IsEmpty) continue;
            var (from, to) = (Math.Min(setUp.FrameAt, drilled.Min()) * scale, drilled.Max() * scale);
            figure.Line(FigureStyle.DrillFrame, from - 5, y, to + 5, y);
            foreach (var offset in drilled) figure.Line(FigureStyle.DrillFrame, offset * scale, y - 5.5, offset * scale, y);
            figure.Text($"drill set-up {N(setUp.Number)}", -NameGap, y, LabelSize, FigureAnchor.End);
            figure.Text($"bars {JointWords.Ranges(setUp.Bars)}; left drill at {units.Running(setUp.FrameAt)}", Width + 12, y, LabelSize);
            y += 12;
        }
    }

    private static string N(int value) => value.ToString(CultureInfo.InvariantCulture);
}
