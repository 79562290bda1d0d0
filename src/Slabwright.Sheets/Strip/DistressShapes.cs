using System.Collections.Immutable;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Strip;

/// <summary>
/// Our drawing of each distress, at its place and extent. What the survey did not measure gets a nominal size: the drawing shows where and
/// what, the reasons appendix shows the figures.
/// </summary>
internal static class DistressShapes
{
    private const double NominalExtent = 0.3;
    private const double CornerLeg = 0.9;
    private const double Jag = 0.12;

    /// <summary>The shapes of one distress.</summary>
    public static IEnumerable<StripShape> Of(Distress distress, Lane lane, LaneBand band)
    {
        var site = Site.Of(distress, band);
        return DistressKey.Of(distress.Type).Drawing switch
        {
            DistressDrawing.CrackAcross => [site.Line(Jagged(site.Middle, site.Left, site.Middle, site.Right))],
            DistressDrawing.CrackAlong => [site.Line(Jagged(site.From, site.Centre, site.To, site.Centre))],
            DistressDrawing.Corner => [site.Line(Corner(site, lane, band))],
            DistressDrawing.SpallAcross => SpallAcross(site),
            DistressDrawing.SpallAlong => SpallAlong(site, band),
            DistressDrawing.SealAcross => Dots(site, new(site.Middle, site.Left), new(site.Middle, site.Right)),
            DistressDrawing.SealAlong => Dots(site, new(site.From, band.Right), new(site.To, band.Right)),
            DistressDrawing.Area => Area(site),
            DistressDrawing.Step => [site.Line(Step(site, band))],
            DistressDrawing.Box => [site.Line(Box(site))],
            DistressDrawing.Star => Star(site),
            _ => Wedges(site),
        };
    }

    private static StripPoint[] Box(Site s) => [new(s.From, s.Left), new(s.To, s.Left), new(s.To, s.Right), new(s.From, s.Right), new(s.From, s.Left)];

    private static StripPoint[] Jagged(double at, double offset, double toAt, double toOffset)
    {
        var (dx, dy) = (toAt - at, toOffset - offset);
        var length = Math.Max(Math.Sqrt(dx * dx + dy * dy), 1e-6);
        var steps = Math.Clamp((int)(length / 0.4), 3, 60);
        var points = new StripPoint[steps + 1];
        for (var i = 0; i <= steps; i++)
        {
            var share = i / (double)steps;
            var side = i == 0 || i == steps ? 0 : i % 2 == 0 ? Jag : -Jag;
            points[i] = new(at + dx * share - dy / length * side, offset + dy * share + dx / length * side);
        }

        return points;
    }

    /// <summary>The corner is the nearest end of the slab, on the side the offsets name; without offsets the right side.</summary>
    private static StripPoint[] Corner(Site s, Lane lane, LaneBand band)
    {
        var slab = lane.SlabAt(s.Middle);
        var atEnd = Math.Abs(slab.End.At - s.Middle) < Math.Abs(s.Middle - slab.Start.At);
        var onLeft = s.HasOffsets && s.Centre < band.Middle;
        var joint = atEnd ? slab.End : slab.Start;
        var at = onLeft ? joint.AtLeftEdge : joint.AtRightEdge;
        var edge = onLeft ? band.Left : band.Right;
        var along = Math.Max(s.Measured, CornerLeg);
        var across = s.HasOffsets ? Math.Max(s.Right - s.Left, 0.3) : along;
        return [new(at + (atEnd ? -along : along), edge), new(at, edge + (onLeft ? across : -across))];
    }

    private static IEnumerable<StripShape> SpallAcross(Site s)
    {
        var teeth = Math.Clamp((int)((s.Right - s.Left) / 0.4), 2, 12);
        var points = new List<StripPoint>();
        for (var i = 0; i <= teeth; i++)
        {
            points.Add(new(i % 2 == 0 ? s.From : s.To, s.Left + (s.Right - s.Left) * i / teeth));
        }

        yield return s.Line([.. points]);
        yield return s.Line([new(s.Middle, s.Left), new(s.Middle, s.Right)]);
    }

    private static IEnumerable<StripShape> SpallAlong(Site s, LaneBand band)
    {
        var onLeft = s.HasOffsets && s.Centre < band.Middle;
        var (edge, depth) = onLeft ? (band.Left, 0.3) : (band.Right, -0.3);
        var teeth = Math.Clamp((int)((s.To - s.From) / 0.4), 2, 60);
        var points = new List<StripPoint>();
        for (var i = 0; i <= teeth; i++)
        {
            points.Add(new(s.From + (s.To - s.From) * i / teeth, i % 2 == 0 ? edge : edge + depth));
        }

        yield return s.Line([.. points]);
    }

    private static IEnumerable<StripShape> Dots(Site s, StripPoint a, StripPoint b)
    {
        var length = Math.Max(Math.Abs(b.At - a.At), Math.Abs(b.Offset - a.Offset));
        var count = Math.Clamp((int)(length / 0.8), 2, 40);
        for (var i = 0; i < count; i++)
        {
            var share = (i + 0.5) / count;
            yield return new StripDot(new(a.At + (b.At - a.At) * share, a.Offset + (b.Offset - a.Offset) * share), s.Style, s.Id);
        }
    }

    private static IEnumerable<StripShape> Area(Site s)
    {
        yield return s.Line(Box(s));
        var (across, along) = (Math.Clamp((int)((s.Right - s.Left) / 0.9), 1, 5), Math.Clamp((int)((s.To - s.From) / 0.9), 1, 20));
        for (var i = 0; i < across; i++)
        {
            for (var j = 0; j < along; j++)
            {
                var shift = i % 2 == 0 ? 0.35 : 0.65;
                yield return new StripDot(
                    new(s.From + (s.To - s.From) * (j + shift) / along, s.Left + (s.Right - s.Left) * (i + 0.5) / across), s.Style, s.Id);
            }
        }
    }

    private static StripPoint[] Step(Site s, LaneBand band)
    {
        var (at, half, low, high) = (s.Middle, 0.6, band.Left + band.Width * 0.62, band.Left + band.Width * 0.38);
        return [new(at - half, high), new(at, high), new(at, low), new(at + half, low)];
    }

    private static IEnumerable<StripShape> Star(Site s)
    {
        yield return s.Line(Jagged(s.From, s.Left, s.To, s.Right));
        yield return s.Line(Jagged(s.From, s.Right, s.To, s.Left));
        yield return s.Line(Jagged(s.Middle, s.Left, s.Middle, s.Right));
    }

    private static IEnumerable<StripShape> Wedges(Site s)
    {
        var (half, quarter) = (0.7, (s.Right - s.Left) / 4);
        yield return s.Line([new(s.Middle - half, s.Centre - quarter), new(s.Middle, s.Centre), new(s.Middle - half, s.Centre + quarter)]);
        yield return s.Line([new(s.Middle + half, s.Centre - quarter), new(s.Middle, s.Centre), new(s.Middle + half, s.Centre + quarter)]);
        yield return s.Line([new(s.Middle, s.Left), new(s.Middle, s.Right)]);
    }

    /// <summary>The box of a distress on the strip, nominal where the survey is silent.</summary>
    private readonly record struct Site(
        string Id, double From, double To, double Left, double Right, double Measured, bool HasOffsets, StripStyle Style)
    {
        public double Middle => (From + To) / 2;

        public double Centre => (Left + Right) / 2;

        public static Site Of(Distress d, LaneBand band)
        {
            var spread = Math.Max(NominalExtent - d.Extent, 0) / 2;
            var hasOffsets = d.OffsetFrom is not null && d.OffsetTo is not null;
            var left = band.Left + (hasOffsets ? Math.Clamp(d.OffsetFrom!.Value, 0, band.Width) : 0);
            var right = band.Left + (hasOffsets ? Math.Clamp(d.OffsetTo!.Value, 0, band.Width) : band.Width);
            var style = d.Severity switch
            {
                Severity.High => StripStyle.DistressHigh,
                Severity.Moderate => StripStyle.DistressModerate,
                _ => StripStyle.DistressLow,
            };
            return new Site(d.Id, d.From - spread, d.To + spread, Math.Min(left, right), Math.Max(left, right), d.Extent, hasOffsets, style);
        }

        public StripLine Line(StripPoint[] points) => new(ImmutableArray.Create(points), Style, Id);
    }
}
