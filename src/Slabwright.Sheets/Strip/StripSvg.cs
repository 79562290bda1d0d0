using System.Globalization;
using System.Text;
using Slabwright.Core.Job;

namespace Slabwright.Sheets.Strip;

/// <summary>How a strip is put on a screen.</summary>
/// <param name="WidthPx">Width, px.</param>
public sealed record StripSvgOptions(double WidthPx)
{
    /// <summary>Least height of a lane, px. Below true scale the lanes are drawn higher than they are long.</summary>
    public double LeastLanePx { get; init; } = 34;

    /// <summary>Greatest height of a lane, px.</summary>
    public double GreatestLanePx { get; init; } = 160;

    /// <summary>Identifier that is drawn as chosen, or null.</summary>
    public string? Chosen { get; init; }

    /// <summary>First part of the element ids inside, so that several strips can share a page.</summary>
    public string IdPrefix { get; init; } = "strip";
}

/// <summary>
/// The strip as an SVG element for screens. Colours are CSS custom properties named after the style (<c>--strip-full-depth-fill</c>,
/// <c>--strip-full-depth-stroke</c>) with the paper's inks as fallback; every repair, surface work and distress is a group with
/// <c>data-ref</c> and a title. No style attributes, so that pages may forbid inline styles; <c>data-across</c> tells px per metre across.
/// </summary>
public static class StripSvg
{
    private const double RulerPx = 20;
    private const double PadPx = 4;

    /// <summary>Draws a stretch of the road.</summary>
    /// <param name="project">The job.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="from">Metres along the road.</param>
    /// <param name="to">Metres along the road, greater than <paramref name="from"/>.</param>
    /// <param name="options">Width and the like.</param>
    public static string Render(Project project, RepairPlan plan, double from, double to, StripSvgOptions options)
    {
        var model = StripBuilder.Build(project, plan, from, to);
        var view = SvgView.Of(model, options, RulerPx + PadPx);
        var svg = new StringBuilder(64 * 1024);
        var height = view.Y(model.Right) + PadPx;
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"strip\" role=\"img\" ");
        svg.Append(CultureInfo.InvariantCulture, $"viewBox=\"0 0 {view.N(options.WidthPx)} {view.N(height)}\" width=\"{view.N(options.WidthPx)}\" height=\"{view.N(height)}\" ");
        svg.Append(CultureInfo.InvariantCulture, $"font-family=\"inherit\" data-from=\"{from:R}\" data-to=\"{to:R}\" data-across=\"{view.N(view.PxPerMetreAcross)}\">");
        var label = $"{project.Road.Name}, station {project.Road.Stationing.Format(from)} to {project.Road.Stationing.Format(to)}";
        svg.Append(CultureInfo.InvariantCulture, $"<title>{SvgText.Escape(label)}</title>");
        SvgShapes.AppendPatterns(svg, options.IdPrefix);
        SvgShapes.Append(svg, model, plan, view, options);
        SvgNotes.Append(svg, model, view);
        AppendRuler(svg, project, model, view);
        return svg.Append("</svg>").ToString();
    }

    private static void AppendRuler(StringBuilder svg, Project project, StripModel model, SvgView view)
    {
        svg.Append("<g class=\"strip-ruler\" font-size=\"10\" text-anchor=\"middle\" fill=\"var(--strip-ruler, #16191d)\" stroke=\"none\">");
        var path = new StringBuilder();
        foreach (var tick in StationTicks.Of(project.Road.Stationing, model.From, model.To, 76 / view.PxPerMetre))
        {
            var x = view.X(tick.At);
            path.Append(CultureInfo.InvariantCulture, $"M{view.N(x)} {view.N(RulerPx)}v{(tick.Label.Length > 0 ? -6 : -3)}");
            if (tick.Label.Length == 0 || x < 24 || x > view.WidthPx - 24) continue;
            svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{view.N(x)}\" y=\"10\">{SvgText.Escape(tick.Label)}</text>");
        }

        svg.Append(CultureInfo.InvariantCulture, $"<path d=\"{path}\" stroke=\"var(--strip-ruler, #16191d)\" stroke-width=\"1\" fill=\"none\"/></g>");
    }
}

/// <summary>Scale of a strip on a screen.</summary>
internal sealed record SvgView(double From, double Left, double WidthPx, double PxPerMetre, double PxPerMetreAcross, double TopPx)
{
    public static SvgView Of(StripModel model, StripSvgOptions options, double top)
    {
        var along = options.WidthPx / Math.Max(model.To - model.From, 0.1);
        var lane = model.Lanes.IsEmpty ? 3.6 : model.Lanes.Max(l => l.Width);
        var across = Math.Clamp(along, options.LeastLanePx / lane, options.GreatestLanePx / lane);
        return new SvgView(model.From, model.Left, options.WidthPx, along, across, top);
    }

    public double X(double at) => (at - From) * PxPerMetre;

    public double Y(double offset) => TopPx + (offset - Left) * PxPerMetreAcross;

    public string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}

/// <summary>Text made safe for SVG.</summary>
internal static class SvgText
{
    public static string Escape(string text) => text
        .Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal).Replace("\"", "&quot;", StringComparison.Ordinal);
}
