using System.Collections.Immutable;

namespace Slabwright.Core.Pavement;

/// <summary>Where the bars of one row across a lane stand, and how many there are. Lengths in m from the lane's left edge.</summary>
public static class BarRow
{
    /// <summary>Distance of the outer bars from the lane's edges, m: 12 in.</summary>
    /// <remarks>Source: WSDOT dowel bar policy, February 2013.</remarks>
    public const double EdgeDistance = 12 * 0.0254;

    private const double Slack = 1e-9;

    /// <summary>Bars in a full-width row: first bar an edge distance in, then at the spacing; 0 where the lane is too narrow.</summary>
    /// <remarks>Source: WSDOT dowel bar policy, February 2013: 12 in centres, first bar 12 in from the edge.</remarks>
    /// <param name="width">Lane width, m.</param> <param name="edge">Edge distance of the outer bars, m.</param> <param name="spacing">m.</param>
    public static int FullWidthCount(double width, double edge, double spacing) => Count(edge, width - edge, spacing);

    /// <summary>
    /// Bars over the full width between two bounds. What the spacing leaves over is shared by both sides, so the outer bars stand at their
    /// bound or less than half a spacing inside it.
    /// </summary>
    /// <param name="first">Least offset of a bar, m.</param> <param name="last">Greatest offset of a bar, m.</param> <param name="spacing">m.</param>
    public static ImmutableArray<double> FullWidth(double first, double last, double spacing)
    {
        var bars = Count(first, last, spacing);
        var start = (first + last - (bars - 1) * spacing) / 2;
        return [.. Enumerable.Range(0, bars).Select(n => start + n * spacing)];
    }

    /// <summary>
    /// Two groups of bars under the wheel paths, each counted inwards from its bound; empty where the groups would come nearer to one
    /// another than the spacing.
    /// </summary>
    /// <remarks>Source: WSDOT dowel bar policy, February 2013: outermost bars 12 in from the lane edges.</remarks>
    /// <param name="first">Offset of the leftmost bar, m.</param> <param name="last">Offset of the rightmost bar, m.</param>
    /// <param name="spacing">m.</param> <param name="perPath">Bars in each wheel path.</param>
    public static ImmutableArray<double> WheelPaths(double first, double last, double spacing, int perPath)
    {
        var group = (perPath - 1) * spacing;
        if (last - group < first + group + spacing - Slack) return [];
        var inner = Enumerable.Range(0, perPath).Select(n => n * spacing).ToArray();
        return [.. inner.Select(d => first + d), .. inner.Reverse().Select(d => last - d)];
    }

    private static int Count(double first, double last, double spacing) =>
        last < first - Slack ? 0 : (int)Math.Floor((last - first) / spacing + Slack) + 1;
}
