using System.Globalization;
using System.Text;
using Slabwright.Core.Job;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Strip;

/// <summary>The shapes of the strip as SVG: one path per thing, patterns for the hatches.</summary>
internal static class SvgShapes
{
    /// <summary>Joints closer than this are left out, px.</summary>
    private const double LeastJointGap = 2.5;

    /// <summary>Bars, boards and forms are left out below this scale, px a metre.</summary>
    private const double LeastDetailScale = 5;

    public static void AppendPatterns(StringBuilder svg, string prefix)
    {
        svg.Append("<defs>");
        foreach (var style in Enum.GetValues<StripStyle>())
        {
            var ink = StripInk.Of(style);
            if (ink.Hatch == Hatch.None) continue;
            SvgInk.AppendPattern(svg, $"{prefix}-{Css(style)}", $"strip-{Css(style)}", ink);
        }

        svg.Append("</defs>");
    }

    public static void Append(StringBuilder svg, StripModel model, RepairPlan plan, SvgView view, StripSvgOptions options)
    {
        var titles = TitlesOf(plan);
        var joints = new Dictionary<StripStyle, StringBuilder>();
        var lastJoint = new Dictionary<double, double>();
        foreach (var shape in model.Shapes)
        {
            if (IsJoint(shape, out var joint))
            {
                AddJoint(joint, view, joints, lastJoint);
                continue;
            }

            if (view.PxPerMetre < LeastDetailScale && IsDetail(shape.Style)) continue;
            Flush(svg, joints);
            AppendShape(svg, shape, view, options, titles);
        }

        Flush(svg, joints);
    }

    private static bool IsJoint(StripShape shape, out StripLine line)
    {
        line = shape as StripLine ?? new StripLine([], shape.Style);
        return shape is StripLine && shape.Style is StripStyle.JointDowelled or StripStyle.JointUndowelled;
    }

    private static bool IsDetail(StripStyle style) => style is StripStyle.Dowel or StripStyle.TieBar or StripStyle.Isolation
        or StripStyle.EdgeForm or StripStyle.IntermediateJoint or StripStyle.ShoulderStrip;

    private static void AddJoint(StripLine line, SvgView view, Dictionary<StripStyle, StringBuilder> joints, Dictionary<double, double> last)
    {
        var x = view.X(line.Points[0].At);
        if (last.TryGetValue(line.Points[0].Offset, out var before) && x - before is >= 0 and < LeastJointGap) return;
        last[line.Points[0].Offset] = x;
        if (!joints.TryGetValue(line.Style, out var path)) joints[line.Style] = path = new StringBuilder();
        path.Append(PathOf(line.Points, view));
    }

    /// <summary>All joints of one style in one path: a network of slabs stays a small element.</summary>
    private static void Flush(StringBuilder svg, Dictionary<StripStyle, StringBuilder> joints)
    {
        foreach (var (style, path) in joints) svg.Append(CultureInfo.InvariantCulture, $"<path d=\"{path}\" fill=\"none\" {StrokeOf(style)}/>");
        joints.Clear();
    }

    private static void AppendShape(
        StringBuilder svg, StripShape shape, SvgView view, StripSvgOptions options, Dictionary<string, string> titles)
    {
        var chosen = shape.Ref.Length > 0 && shape.Ref == options.Chosen ? " strip-chosen" : "";
        var data = shape.Ref.Length > 0 ? $" data-ref=\"{SvgText.Escape(shape.Ref)}\"" : "";
        var title = titles.TryGetValue(shape.Ref, out var words) ? $"<title>{SvgText.Escape(words)}</title>" : "";
        var open = $"class=\"strip-{Css(shape.Style)}{chosen}\"{data}";
        switch (shape)
        {
            case StripArea area:
                AppendArea(svg, area, view, options.IdPrefix, open, title);
                break;
            case StripLine line:
                svg.Append(CultureInfo.InvariantCulture, $"<path {open} d=\"{PathOf(line.Points, view)}\" fill=\"none\" {StrokeOf(shape.Style)}>{title}</path>");
                break;
            case StripDot dot:
                var at = $"cx=\"{view.N(view.X(dot.Centre.At))}\" cy=\"{view.N(view.Y(dot.Centre.Offset))}\"";
                svg.Append(CultureInfo.InvariantCulture, $"<circle {open} {at} r=\"1.6\" fill=\"none\" {StrokeOf(shape.Style)}>{title}</circle>");
                break;
        }
    }

    private static void AppendArea(StringBuilder svg, StripArea area, SvgView view, string prefix, string open, string title)
    {
        var ink = StripInk.Of(area.Style);
        var path = PathOf(area.Outline, view) + "Z";
        var fill = SvgInk.Fill($"strip-{Css(area.Style)}", ink);
        svg.Append(CultureInfo.InvariantCulture, $"<path {open} d=\"{path}\" fill=\"{fill}\" {StrokeOf(area.Style)}>{title}</path>");
        if (ink.Hatch == Hatch.None) return;
        svg.Append(CultureInfo.InvariantCulture, $"<path d=\"{path}\" fill=\"url(#{prefix}-{Css(area.Style)})\" pointer-events=\"none\"/>");
    }

    private static Dictionary<string, string> TitlesOf(RepairPlan plan)
    {
        var titles = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var repair in plan.Boundaries.Repairs) titles[repair.Id] = $"{repair.Id}: {SheetWords.Of(repair.Kind)}, lane {repair.Lane}";
        foreach (var work in plan.SurfaceWorks) titles[work.Id] = $"{work.Id}: {SheetWords.Of(work.Treatment)}, lane {work.Lane}";
        foreach (var decision in plan.Decisions) titles.TryAdd(decision.DistressId, $"{decision.DistressId}: {SheetWords.Of(decision.Treatment)}");
        return titles;
    }

    private static string PathOf(IReadOnlyList<StripPoint> points, SvgView view)
    {
        var path = new StringBuilder(points.Count * 14);
        for (var i = 0; i < points.Count; i++)
        {
            path.Append(i == 0 ? 'M' : 'L').Append(view.N(view.X(points[i].At))).Append(' ').Append(view.N(view.Y(points[i].Offset)));
        }

        return path.ToString();
    }

    private static string StrokeOf(StripStyle style) => SvgInk.Stroke($"strip-{Css(style)}", StripInk.Of(style));

    /// <summary>Style name as CSS writes it: <c>FullDepth</c> becomes <c>full-depth</c>.</summary>
    private static string Css(StripStyle style) => CssNames[(int)style];

    private static readonly string[] CssNames = SvgInk.NamesOf<StripStyle>();
}
