using System.Globalization;
using System.Text;

namespace Slabwright.Sheets.Strip;

/// <summary>Inks as SVG attributes. Every colour is a CSS custom property with the paper's ink as fallback, so that a page may set its own.</summary>
internal static class SvgInk
{
    /// <summary>Member names as CSS writes them: <c>FullDepth</c> becomes <c>full-depth</c>.</summary>
    public static string[] NamesOf<T>() where T : struct, Enum => [.. Enum.GetNames<T>().Select(name =>
        string.Concat(name.Select((c, i) => char.IsUpper(c) ? (i > 0 ? "-" : "") + char.ToLowerInvariant(c) : c.ToString())))];

    /// <summary>The fill colour, or <c>none</c>.</summary>
    public static string Fill(string name, StripInk ink) => ink.Fill is null ? "none" : $"var(--{name}-fill, {ink.Fill})";

    /// <summary>Attributes of the stroke; empty where there is none.</summary>
    public static string Stroke(string name, StripInk ink)
    {
        if (ink.Stroke is null) return "";
        var dash = ink.Dash.IsDefaultOrEmpty
            ? ""
            : $" stroke-dasharray=\"{string.Join(' ', ink.Dash.Select(d => (d * 1.3).ToString("0.#", CultureInfo.InvariantCulture)))}\" stroke-linecap=\"{(ink.Dash[0] < 0.5 ? "round" : "butt")}\"";
        var width = (ink.Width * 1.3).ToString("0.##", CultureInfo.InvariantCulture);
        return $"stroke=\"var(--{name}-stroke, {ink.Stroke})\" stroke-width=\"{width}\"{dash}";
    }

    /// <summary>The pattern of a hatch.</summary>
    public static void AppendPattern(StringBuilder svg, string id, string name, StripInk ink)
    {
        var lines = PatternLines(ink.Hatch);
        var colour = $"var(--{name}-hatch, {ink.HatchInk})";
        svg.Append(CultureInfo.InvariantCulture, $"<pattern id=\"{id}\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\">");
        var second = ink.Hatch == Hatch.Sparse ? "" : $"<circle cx=\"6\" cy=\"6\" r=\"0.9\" fill=\"{colour}\"/>";
        svg.Append(lines.Length > 0
            ? $"<path d=\"{lines}\" fill=\"none\" stroke=\"{colour}\" stroke-width=\"0.9\"/></pattern>"
            : $"<circle cx=\"2\" cy=\"2\" r=\"0.9\" fill=\"{colour}\"/>{second}</pattern>");
    }

    private static string PatternLines(Hatch hatch) => hatch switch
    {
        Hatch.Rising => "M-2 2L2 -2M0 8L8 0M6 10L10 6",
        Hatch.Crossed => "M-2 2L2 -2M0 8L8 0M6 10L10 6M-2 6L2 10M0 0L8 8M6 -2L10 2",
        Hatch.Woven => "M-2 2L2 -2M0 8L8 0M6 10L10 6M-1 5L5 -1M3 9L9 3M0 4H8",
        Hatch.Falling => "M-2 6L2 10M0 0L8 8M6 -2L10 2",
        Hatch.Upright => "M2 0V8M6 0V8",
        _ => "",
    };
}
