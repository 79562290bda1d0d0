using System.Globalization;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Joints.Design;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Joints;

/// <summary>
/// A section along the road through one bar, to scale: hole, grout, disc, bar with its greased end, cut and reservoir, with numbered balloons
/// and their key. Travel runs to the right. The joint face at the surface is the figure's zero.
/// </summary>
internal sealed class JointSection(DesignedJoint joint, JointDrawingOptions options)
{
    /// <summary>Slab shown beyond the ends of the bar, m.</summary>
    private const double Beyond = 0.06;

    /// <summary>Thickness the retention disc is drawn with, m.</summary>
    private const double DiscThickness = 0.006;

    /// <summary>Width the isolation board is drawn with, m.</summary>
    private const double BoardWidth = 0.012;

    private const double KeySize = 7.6;

    private readonly FigureBuilder figure = new(options.Ruler);
    private readonly JobUnits units = JobUnits.Of(options.Units);
    private readonly double scale = options.SectionScale;
    private readonly List<(double X, double ToX, double ToY, string Text)> notes = [];

    /// <summary>−1 where the old slab lies to the left, behind the joint; +1 where it lies to the right.</summary>
    private readonly int old = joint.Position == JointPosition.End ? 1 : -1;

    private double Bottom => joint.Thickness * scale;

    private bool IsInner => joint.Position == JointPosition.Inner;

    public static Figure Draw(DesignedJoint joint, JointDrawingOptions options) => new JointSection(joint, options).Draw();

    /// <summary>Length along the road that the section shows, m.</summary>
    public static double LengthOf(DesignedJoint joint)
    {
        var (held, free) = Halves(joint.Bars);
        return held + free + 2 * Beyond;
    }

    private static (double Held, double Free) Halves(BarLayout? bars) => bars is { } b ? (b.Embedment, b.Length - b.Embedment) : (0.2, 0.2);

    private Figure Draw()
    {
        var (held, free) = Halves(joint.Bars);
        var (oldEnd, newEnd) = ((held + Beyond) * scale * old, (free + Beyond) * scale * -old);
        DrawSlabs(oldEnd, newEnd);
        if (joint.Bars is { } bars) DrawBar(bars);
        DrawTop(oldEnd, newEnd);
        var (left, right) = (Math.Min(oldEnd, newEnd), Math.Max(oldEnd, newEnd));
        DrawDimensions(left, right);
        DrawBalloons(left, right);
        return figure.Build($"Section through one bar, {JointWords.Title(joint).ToLowerInvariant()}", JointWords.Describe(joint, units), scale);
    }

    private void DrawSlabs(double oldEnd, double newEnd)
    {
        Box(IsInner ? FigureStyle.NewConcrete : FigureStyle.OldConcrete, oldEnd, 0, 0, Bottom);
        Box(FigureStyle.NewConcrete, 0, 0, newEnd, Bottom);
        Box(FigureStyle.Base, oldEnd, Bottom, newEnd, Bottom + 9);
        if (joint.Design == JointDesign.Isolated)
        {
            Box(FigureStyle.Board, 0, 0, BoardWidth * scale * -old, Bottom);
            Note(0.004 * scale * -old, Bottom * 0.3, "Isolation board, full depth, flush with the top");
        }
        else if (IsInner && options.Reservoir is { SawDepth: { } depth })
        {
            figure.Line(FigureStyle.BoundaryCut, 0, 0, 0, depth * scale);
            figure.Line(FigureStyle.SawnJoint, 0, depth * scale, 0, Bottom);
            Note(0, depth * scale * 0.8, $"Saw cut {units.Detail(depth)} deep; the crack below it makes the joint");
        }
        else if (IsInner)
        {
            figure.Line(FigureStyle.SawnJoint, 0, 0, 0, Bottom);
            Note(0, Bottom * 0.2, "Joint inside the repair");
        }
        else
        {
            figure.Line(FigureStyle.BoundaryCut, 0, 0, 0, Bottom);
            Note(0, Bottom * 0.22, "Boundary cut through the full depth");
        }
    }

    private void DrawBar(BarLayout bars)
    {
        var (y, half) = (bars.Depth * scale, bars.Diameter * scale / 2);
        var (held, free) = (bars.Embedment * scale * old, (bars.Length - bars.Embedment) * scale * -old);
        var isDowel = bars.Kind == BarKind.Dowel;
        if (joint.Drilling is { } drilling) DrawHole(drilling, y, held, half);
        Box(joint.Drilling is null && isDowel ? FigureStyle.BarFree : FigureStyle.BarAnchored, held, y - half, 0, y + half);
        Box(isDowel ? FigureStyle.BarFree : FigureStyle.BarAnchored, 0, y - half, free, y + half);
        if (isDowel)
        {
            DrawGrease(joint.Drilling is null ? held : DiscThickness * scale * -old, free, y, half + 1.6);
            Note(free * 0.82, y - half, joint.Drilling is null ? "Whole bar coated and thinly greased" : "Free end coated and thinly greased, so that it slides");
        }
        else DrawRibs(Math.Min(held, free), Math.Max(held, free), y, half);

        var kind = isDowel ? "Smooth dowel" : "Deformed tie bar";
        Note(free * 0.45, y, $"{kind} {units.Detail(bars.Diameter)} in diameter, {units.Detail(bars.Length)} long, level and square to the joint");
    }

    private void DrawHole(DrillPlan drilling, double y, double held, double half)
    {
        var (hole, depth) = (drilling.HoleDiameter * scale / 2, drilling.HoleDepth * scale * old);
        Box(FigureStyle.Hole, depth, y - hole, 0, y + hole);
        Box(FigureStyle.Grout, depth, y - hole, 0, y + hole);
        var disc = DiscThickness * scale * -old;
        Box(FigureStyle.Disc, 0, y - hole * 1.35, disc, y + hole * 1.35);
        Note(held * 0.78, y - hole, $"Hole {units.Detail(drilling.HoleDiameter)} in diameter, {units.Detail(drilling.HoleDepth)} deep");
        var isDeeper = Math.Abs(depth - held) > 2;
        Note(isDeeper ? (depth + held) / 2 : held * 0.45, isDeeper ? y : y - (hole + half) / 2, $"{SheetWords.Capital(drilling.Anchor)} from the back of the hole to its mouth, no voids");
        Note(disc / 2, y - hole * 1.2, "Disc tight on the bar and against the face");
    }

    private void DrawGrease(double from, double to, double y, double half)
    {
        figure.Line(FigureStyle.Grease, new FigurePoint(from, y - half), new FigurePoint(to, y - half));
        figure.Line(FigureStyle.Grease, new FigurePoint(from, y + half), new FigurePoint(to, y + half));
    }

    private void DrawRibs(double from, double to, double y, double half)
    {
        for (var x = from + 4; x < to - 2; x += 6) figure.Line(FigureStyle.Rib, x, y + half - 0.5, x + 2.5, y - half + 0.5);
    }

    private void DrawTop(double oldEnd, double newEnd)
    {
        figure.Line(FigureStyle.Surface, oldEnd, 0, newEnd, 0);
        if (options.Reservoir is not { } reservoir) return;
        var half = reservoir.Width * scale / 2;
        figure.Box(FigureStyle.Reservoir, -half, 0, half, reservoir.Depth * scale, "reservoir");
        Note(half, reservoir.Depth * scale * 0.6, $"Reservoir {units.Detail(reservoir.Width)} wide, {units.Detail(reservoir.Depth)} deep; see the seal sheet");
    }

    private void DrawDimensions(double left, double right)
    {
        FigureDimensions.Upright(figure, left - 10, 0, Bottom, units.Detail(joint.Thickness), true);
        if (joint.Bars is not { } bars) return;
        var middle = bars.Depth * scale;
        figure.Line(FigureStyle.CentreLine, left - 4, middle, right + 16, middle);
        FigureDimensions.Upright(figure, right + 12, 0, middle, units.Detail(bars.Depth));
        var (held, free) = (bars.Embedment * scale * old, (bars.Length - bars.Embedment) * scale * -old);
        var y = Bottom + 26;
        if (joint.Drilling is { } drilling)
        {
            var hole = drilling.HoleDepth * scale * old;
            figure.Line(FigureStyle.Extension, hole, middle, hole, y + 3);
            Level(hole, 0, y, $"hole {units.Detail(drilling.HoleDepth)}");
            y += 14;
        }

        foreach (var x in new[] { held, free }) figure.Line(FigureStyle.Extension, x, middle + bars.Diameter * scale / 2, x, y + 17);
        figure.Line(FigureStyle.Extension, 0, Bottom, 0, y + 3);
        Level(held, 0, y, units.Detail(bars.Embedment));
        Level(0, free, y, units.Detail(bars.Length - bars.Embedment));
        Level(held, free, y + 14, $"bar {units.Detail(bars.Length)}");
    }

    /// <summary>Balloons in a row above the slab, each over what it names, pushed apart where they would touch; the key to the right.</summary>
    private void DrawBalloons(double left, double right)
    {
        notes.Sort((a, b) => a.X.CompareTo(b.X));
        const double gap = 17;
        var last = left - gap;
        var x = new double[notes.Count];
        for (var i = 0; i < notes.Count; i++) last = x[i] = Math.Max(notes[i].X, last + gap);
        for (var i = notes.Count - 1; i >= 0; i--) x[i] = Math.Min(x[i], right - gap * (notes.Count - 1 - i));
        for (var i = 0; i < notes.Count; i++) FigureDimensions.Balloon(figure, N(i + 1), x[i], -18, notes[i].ToX, notes[i].ToY);
        var keyLeft = figure.Right + 18;
        var y = 4.0;
        for (var i = 0; i < notes.Count; i++)
        {
            figure.Text(N(i + 1), keyLeft, y, KeySize, FigureAnchor.Start, true);
            foreach (var line in FigureWords.Wrap(notes[i].Text, KeySize, options.KeyWidth - 12, options.Ruler))
            {
                figure.Text(line, keyLeft + 12, y, KeySize);
                y += KeySize * 1.25;
            }

            y += 3;
        }
    }

    private void Note(double x, double y, string text) => notes.Add((x, x, y, text));

    private void Level(double a, double b, double y, string text) => FigureDimensions.Level(figure, Math.Min(a, b), Math.Max(a, b), y, text);

    private void Box(FigureStyle style, double x1, double y1, double x2, double y2) =>
        figure.Box(style, Math.Min(x1, x2), Math.Min(y1, y2), Math.Max(x1, x2), Math.Max(y1, y2));

    private static string N(int value) => value.ToString(CultureInfo.InvariantCulture);
}
