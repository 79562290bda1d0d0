using Slabwright.Sheets.Figures;

namespace Slabwright.Sheets.Joints;

/// <summary>
/// Plots of what a joint does under load, from plain arrays: contour map, section, and a column for each bar. Each comes as a
/// <see cref="Figure"/> for paper and as an SVG element for screens.
/// </summary>
public static class ResponsePlots
{
    private const string CssClass = "response-plot";

    /// <summary>Contour map of a field, to scale.</summary>
    /// <exception cref="ArgumentException">The grid has fewer than two lines a way, is not rising, or does not fit its values.</exception>
    public static Figure ContourFigure(ResponseField field, PlotOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(field);
        if (!IsRising(field.Along) || !IsRising(field.Across)) throw new ArgumentException("Grid lines must rise, at least two each way.", nameof(field));
        if (field.Values.Length != field.Along.Length * field.Across.Length) throw new ArgumentException("A field needs one value for each point of its grid.", nameof(field));
        return ContourPlot.Draw(field, options ?? new PlotOptions());
    }

    /// <summary>Contour map as SVG.</summary>
    public static string Contours(ResponseField field, PlotOptions? options = null) => Svg(ContourFigure(field, options), options);

    /// <summary>Curves along a line.</summary>
    /// <exception cref="ArgumentException">No curve, more than three, or a curve whose places and values differ in number.</exception>
    public static Figure SectionFigure(ResponseSection section, PlotOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(section);
        if (section.Curves.Length is 0 or > 3) throw new ArgumentException("A section plot has one to three curves.", nameof(section));
        if (section.Curves.Any(c => c.Along.Length != c.Values.Length || c.Along.Length < 2)) throw new ArgumentException("A curve needs at least two places and one value for each.", nameof(section));
        return SectionPlot.Draw(section, options ?? new PlotOptions());
    }

    /// <summary>Curves along a line as SVG.</summary>
    public static string Section(ResponseSection section, PlotOptions? options = null) => Svg(SectionFigure(section, options), options);

    /// <summary>A column for each bar.</summary>
    /// <exception cref="ArgumentException">Offsets and values differ in number, or there are none.</exception>
    public static Figure BarFigure(BarResponse bars, PlotOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(bars);
        if (bars.Offsets.IsEmpty || bars.Offsets.Length != bars.Values.Length) throw new ArgumentException("Every bar needs one value.", nameof(bars));
        return BarPlot.Draw(bars, options ?? new PlotOptions());
    }

    /// <summary>A column for each bar as SVG.</summary>
    public static string Bars(BarResponse bars, PlotOptions? options = null) => Svg(BarFigure(bars, options), options);

    private static string Svg(Figure figure, PlotOptions? options) => FigureSvg.Write(figure, (options ?? new PlotOptions()).IdPrefix, CssClass);

    private static bool IsRising(IReadOnlyList<double> lines)
    {
        for (var i = 1; i < lines.Count; i++)
        {
            if (!(lines[i] > lines[i - 1])) return false;
        }

        return lines.Count >= 2;
    }
}
