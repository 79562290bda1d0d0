using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Slabwright.Sheets.Strip;

namespace Slabwright.Sheets.Figures;

/// <summary>
/// A figure as an SVG element for screens: title and description for readers who cannot see it, CSS custom properties
/// (<c>--fig-new-concrete-fill</c>) for every ink, <c>data-ref</c> on named shapes. No script and no style attributes, so that pages may
/// forbid both.
/// </summary>
public static class FigureSvg
{
    private static readonly string[] CssNames = SvgInk.NamesOf<FigureStyle>();

    /// <summary>Writes a figure.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="idPrefix">First part of the element ids inside, so that several figures can share a page.</param>
    /// <param name="cssClass">Class of the element.</param>
    /// <param name="zoom">Pixels for each point of the figure: above 1 everything grows, texts included.</param>
    public static string Write(Figure figure, string idPrefix, string cssClass = "figure", double zoom = 1)
    {
        var svg = new StringBuilder(32 * 1024);
        var (width, height) = (Math.Ceiling(figure.Width), Math.Ceiling(figure.Height));
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"{cssClass}\" role=\"img\" aria-labelledby=\"{idPrefix}-title {idPrefix}-desc\" ");
        svg.Append(CultureInfo.InvariantCulture, $"viewBox=\"0 0 {N(width)} {N(height)}\" width=\"{N(width * zoom)}\" height=\"{N(height * zoom)}\" font-family=\"inherit\"");
        if (figure.PerMetre > 0) svg.Append(CultureInfo.InvariantCulture, $" data-per-metre=\"{N(figure.PerMetre)}\" data-origin=\"{N(figure.Origin.X)} {N(figure.Origin.Y)}\"");
        svg.Append('>');
        svg.Append(CultureInfo.InvariantCulture, $"<title id=\"{idPrefix}-title\">{SvgText.Escape(figure.Title)}</title>");
        svg.Append(CultureInfo.InvariantCulture, $"<desc id=\"{idPrefix}-desc\">{SvgText.Escape(figure.Description)}</desc>");
        AppendPatterns(svg, figure, idPrefix);
        foreach (var shape in figure.Shapes) Append(svg, shape, idPrefix);
        return svg.Append("</svg>").ToString();
    }

    private static void AppendPatterns(StringBuilder svg, Figure figure, string prefix)
    {
        var hatched = figure.Shapes.OfType<FigureArea>().Select(s => s.Style).Distinct().Where(s => FigureInk.Of(s).Hatch != Hatch.None).Order().ToList();
        if (hatched.Count == 0) return;
        svg.Append("<defs>");
        foreach (var style in hatched) SvgInk.AppendPattern(svg, $"{prefix}-{Css(style)}", "fig-" + Css(style), FigureInk.Of(style));
        svg.Append("</defs>");
    }

    private static void Append(StringBuilder svg, FigureShape shape, string prefix)
    {
        var (ink, name) = (FigureInk.Of(shape.Style), "fig-" + Css(shape.Style));
        var open = $"class=\"{name}\"{(shape.Ref.Length > 0 ? $" data-ref=\"{SvgText.Escape(shape.Ref)}\"" : "")}";
        switch (shape)
        {
            case FigureArea area:
                var rings = string.Concat(area.Rings.Select(r => PathOf(r) + "Z"));
                svg.Append(CultureInfo.InvariantCulture, $"<path {open} d=\"{rings}\" fill=\"{SvgInk.Fill(name, ink)}\" fill-rule=\"evenodd\" {SvgInk.Stroke(name, ink)}/>");
                if (ink.Hatch != Hatch.None) svg.Append(CultureInfo.InvariantCulture, $"<path d=\"{rings}\" fill=\"url(#{prefix}-{Css(shape.Style)})\" fill-rule=\"evenodd\" pointer-events=\"none\"/>");
                break;
            case FigureLine line:
                svg.Append(CultureInfo.InvariantCulture, $"<path {open} d=\"{PathOf(line.Points)}\" fill=\"none\" {SvgInk.Stroke(name, ink)}/>");
                break;
            case FigureCircle circle:
                svg.Append(CultureInfo.InvariantCulture, $"<circle {open} cx=\"{N(circle.Centre.X)}\" cy=\"{N(circle.Centre.Y)}\" r=\"{N(circle.Radius)}\" fill=\"{SvgInk.Fill(name, ink)}\" {SvgInk.Stroke(name, ink)}/>");
                break;
            case FigureText text:
                AppendText(svg, text, open, SvgInk.Fill(name, ink));
                break;
        }
    }

    private static void AppendText(StringBuilder svg, FigureText text, string open, string fill)
    {
        var anchor = text.Anchor switch { FigureAnchor.Start => "", FigureAnchor.Middle => " text-anchor=\"middle\"", _ => " text-anchor=\"end\"" };
        var weight = text.Bold ? " font-weight=\"600\"" : "";
        var (x, y) = text.Turned ? (text.Place.X + text.Size * 0.35, text.Place.Y) : (text.Place.X, text.Place.Y);
        var turn = text.Turned ? $" transform=\"rotate(-90 {N(x)} {N(y)})\"" : "";
        svg.Append(CultureInfo.InvariantCulture, $"<text {open} x=\"{N(x)}\" y=\"{N(y)}\" font-size=\"{N(text.Size)}\"{anchor}{weight}{turn} fill=\"{fill}\">{SvgText.Escape(text.Text)}</text>");
    }

    private static string PathOf(ImmutableArray<FigurePoint> points)
    {
        var path = new StringBuilder(points.Length * 12);
        for (var i = 0; i < points.Length; i++) path.Append(i == 0 ? 'M' : 'L').Append(N(points[i].X)).Append(' ').Append(N(points[i].Y));
        return path.ToString();
    }

    private static string Css(FigureStyle style) => CssNames[(int)style];

    private static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
