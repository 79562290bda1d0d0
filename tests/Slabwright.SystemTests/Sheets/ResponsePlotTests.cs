using System.Collections.Immutable;
using System.Xml.Linq;
using Slabwright.Core.Measures;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;

namespace Slabwright.SystemTests.Sheets;

/// <summary>Plots of responses: areas of contour bands against the fields they show, words apart, wrong arrays refused.</summary>
public sealed class ResponsePlotTests
{
    /// <summary>A cone over a rectangle: the area above a level is a circle of known size.</summary>
    [Theory]
    [InlineData(0.25)]
    [InlineData(0.5)]
    [InlineData(0.8)]
    public void TheAreaAboveALevelOfAConeIsACircle(double level)
    {
        double[] lines = [.. Enumerable.Range(0, 201).Select(i => -1 + i * 0.01)];
        double[] values = [.. lines.SelectMany(y => lines.Select(x => 1 - Math.Sqrt(x * x + y * y)))];
        var rings = new ContourRings(lines, lines, values).Above(level);
        Assert.Equal(Math.PI * (1 - level) * (1 - level), Math.Abs(Assert.Single(rings).Select(p => p.Place).ToImmutableArray().Area()), 2e-3);
    }

    /// <summary>Even-odd area of all rings against counting cells of a fine grid, on fields with saddles, holes and gaps.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void AreasAgreeWithCountingOnWildFields(int seed)
    {
        var random = new Random(seed);
        double[] xs = [.. Enumerable.Range(0, 9).Select(i => i * 1.0)];
        double[] ys = [.. Enumerable.Range(0, 7).Select(i => i * 1.0)];
        double[] values = [.. Enumerable.Range(0, 63).Select(_ => random.NextDouble())];
        foreach (var level in new[] { 0.2, 0.5, 0.8 })
        {
            var rings = new ContourRings(xs, ys, values).Above(level).Select(r => r.Select(p => p.Place).ToImmutableArray()).ToList();
            var area = Math.Abs(rings.Sum(r => r.Area()));
            Assert.Equal(Counted(values, level), area, 1.2);
            Assert.All(Enumerable.Range(0, 63).Where(i => Math.Abs(values[i] - level) > 0.02), i =>
            {
                var (x, y) = (i % 9, i / 9);
                if (x is 0 or 8 || y is 0 or 6) return;
                Assert.Equal(values[i] >= level, rings.Count(r => r.Holds(x + 1e-7, y + 1e-7)) % 2 == 1);
            });
        }
    }

    [Fact]
    public void PointsWithoutSlabStayOutside()
    {
        double[] lines = [0, 1, 2, 3, 4];
        double[] values = [.. lines.SelectMany(_ => lines.Select(x => x < 1.5 ? double.NaN : 1.0))];
        var ring = Assert.Single(new ContourRings(lines, lines, values).Above(0.5));
        Assert.Equal(2, ring.Min(p => p.Place.X));
        Assert.All(ring, p => Assert.True(p.IsBorder));
    }

    [Theory]
    [InlineData(700)]
    [InlineData(420)]
    public void EveryPlotIsReadable(double width)
    {
        var options = new PlotOptions { Width = width };
        foreach (var figure in new[] { ResponsePlots.ContourFigure(Field(), options), ResponsePlots.SectionFigure(Curves(), options), ResponsePlots.BarFigure(Bars(), options) })
        {
            FigureAsserts.Readable(figure, options.Ruler);
            Assert.InRange(figure.Width, width * 0.7, width + 70);
        }
    }

    [Fact]
    public void AxesNameTheirUnitsAndNothingIsToldByColourAlone()
    {
        var field = Words(ResponsePlots.ContourFigure(Field()));
        Assert.Contains("Along the road, ft", field);
        Assert.Contains("From the left edge, ft", field);
        Assert.Contains("mil", field);
        Assert.True(field.GroupBy(w => w).Count(g => g.Count() >= 2 && double.TryParse(g.Key, out _)) >= 4, "level values stand on the map and in the key");
        var section = ResponsePlots.SectionFigure(Curves());
        Assert.Contains("Deflection, mil", Words(section));
        Assert.Equal([FigureStyle.CurveFirst, FigureStyle.CurveSecond], section.Shapes.OfType<FigureLine>().Select(l => l.Style).Where(s => s is FigureStyle.CurveFirst or FigureStyle.CurveSecond).Distinct());
        Assert.True(FigureInk.Of(FigureStyle.CurveFirst).Dash.IsDefaultOrEmpty);
        Assert.NotEmpty(FigureInk.Of(FigureStyle.CurveSecond).Dash);
        var bars = ResponsePlots.BarFigure(Bars());
        Assert.Equal(3, bars.Shapes.Count(s => s.Style == FigureStyle.ColumnBeyond));
        Assert.Equal(11, bars.Shapes.Count(s => s.Ref.StartsWith("bar-", StringComparison.Ordinal)));
    }

    [Fact]
    public void TheSvgIsWellFormed()
    {
        foreach (var text in new[] { ResponsePlots.Contours(Field()), ResponsePlots.Section(Curves()), ResponsePlots.Bars(Bars()) })
        {
            var svg = XDocument.Parse(text).Root!;
            Assert.Contains(svg.Elements(), e => e.Name.LocalName == "desc" && e.Value.Length > 20);
        }
    }

    [Fact]
    public void WrongArraysAreRefused()
    {
        Assert.Throws<ArgumentException>(() => ResponsePlots.Contours(Field() with { Values = [1, 2, 3] }));
        Assert.Throws<ArgumentException>(() => ResponsePlots.Contours(Field() with { Along = [1, 1, 2] }));
        Assert.Throws<ArgumentException>(() => ResponsePlots.Section(Curves() with { Curves = [] }));
        Assert.Throws<ArgumentException>(() => ResponsePlots.Bars(Bars() with { Values = [1] }));
    }

    [Theory]
    [InlineData(0, 9.7, 5, 2)]
    [InlineData(-0.031, 0.082, 6, 0.02)]
    [InlineData(0, 5, 5, 1)]
    public void StepsAreRound(double least, double greatest, int parts, double step) => Assert.Equal(step, PlotScale.StepFor(least, greatest, parts), 12);

    private static List<string> Words(Figure figure) => [.. figure.Shapes.OfType<FigureText>().Select(t => t.Text)];

    private static Unit Mil { get; } = new("mil", Dimension.Length, 0.0000254);

    private static ResponseField Field()
    {
        ImmutableArray<double> along = [.. Enumerable.Range(0, 61).Select(i => -4.5 + i * 0.15)];
        ImmutableArray<double> across = [.. Enumerable.Range(0, 25).Select(i => i * 3.6576 / 24)];
        ImmutableArray<double> values = [.. across.SelectMany(y => along.Select(x =>
            4.2e-4 * Math.Exp(-((x + 0.3) * (x + 0.3) + (y - 3.2) * (y - 3.2)) / 1.6) * (x > 0 ? 0.8 : 1) - 2e-5 * Math.Cos(x)))];
        return new ResponseField("Deflection", along, across, values, Mil, Units.Foot)
        {
            Overlays =
            [
                new([new(0, 0), new(0, 3.6576)], FigureStyle.BoundaryCut),
                new([new(-0.45, 3.0), new(-0.15, 3.0), new(-0.15, 3.3), new(-0.45, 3.3)], FigureStyle.Wheel, true),
            ],
        };
    }

    private static ResponseSection Curves()
    {
        ImmutableArray<double> along = [.. Enumerable.Range(0, 61).Select(i => -4.5 + i * 0.15)];
        return new ResponseSection("Deflection under the right wheel path", "Along the road from the joint", "Deflection",
            [new("with dowels", along, [.. along.Select(x => 4e-4 * Math.Exp(-x * x))]), new("without", along, [.. along.Select(x => x > 0 ? 1e-4 * Math.Exp(-x) : 6e-4 * Math.Exp(x))])], Mil, Units.Foot)
        {
            IsDownward = true,
            Limit = new(7e-4, "limit 28 mil"),
            Places = [new(0, "joint")],
        };
    }

    private static BarResponse Bars()
    {
        ImmutableArray<double> offsets = [.. Enumerable.Range(1, 11).Select(i => i * 0.3048)];
        return new BarResponse("Shear on each bar", "Shear", offsets, [.. offsets.Select(o => 9000 * Math.Exp(-Math.Abs(o - 3.0)) - 900)], 3.6576, Units.PoundOfForce, Units.Foot)
        {
            Limit = new(4500, "limit 1,012 lbf"),
            Wheels = [3.0, 1.2],
        };
    }

    private static double Counted(double[] values, double level)
    {
        const int fine = 40;
        var count = 0;
        for (var j = 0; j < 6 * fine; j++)
        {
            for (var i = 0; i < 8 * fine; i++)
            {
                var (x, y) = ((i + 0.5) / fine, (j + 0.5) / fine);
                var (a, b) = ((int)x, (int)y);
                var (s, t) = (x - a, y - b);
                double At(int p, int q) => values[q * 9 + p];
                var value = At(a, b) * (1 - s) * (1 - t) + At(a + 1, b) * s * (1 - t) + At(a, b + 1) * (1 - s) * t + At(a + 1, b + 1) * s * t;
                if (value >= level) count++;
            }
        }

        return count / (double)(fine * fine);
    }
}

internal static class RingMeasures
{
    public static double Area(this ImmutableArray<FigurePoint> ring)
    {
        var twice = 0.0;
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
            twice += a.X * b.Y - b.X * a.Y;
        }

        return twice / 2;
    }

    public static bool Holds(this ImmutableArray<FigurePoint> ring, double x, double y)
    {
        var inside = false;
        for (int i = 0, j = ring.Length - 1; i < ring.Length; j = i++)
        {
            if (ring[i].Y > y != ring[j].Y > y && x < (ring[j].X - ring[i].X) * (y - ring[i].Y) / (ring[j].Y - ring[i].Y) + ring[i].X) inside = !inside;
        }

        return inside;
    }
}
