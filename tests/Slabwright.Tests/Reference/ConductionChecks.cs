using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Numerics.Heat;
using Slabwright.Tests.HeatFlow;

namespace Slabwright.Tests.Reference;

/// <summary>Conduction against textbook solutions (Carslaw and Jaeger, from memory), worked out in Python; properties of NISTIR 6551.</summary>
public sealed class ConductionChecks : ICheckRows
{
    private const string Section = "C8 Conduction in slab and ground";
    private const string Book = "Carslaw and Jaeger, textbook solutions (from memory); worked independently";
    private const string Wave = "Barber, HRB Bulletin 168, 1957; worked independently";
    private const double Day = 86400;
    private const double Hour = 3600;

    public IEnumerable<CheckRow> Rows() => [.. Step(), .. Sine(), .. Slab(), .. Flux(), .. FilmRows(), .. Layers(), .. Barber()];

    private static IEnumerable<CheckRow> Step()
    {
        foreach (var (depth, hours, published) in ((double, double, double)[])[(.05, 1, .4608), (.10, 4, .4608), (.10, 8, .6020), (.20, 8, .2969), (.20, 24, .5470)])
        {
            var grid = Half();
            TestColumn.Run(grid, () => Film.Held(_ => 1), hours * Hour, 120);
            yield return Row("S13", $"step of 1 on a half-space, {depth} m after {hours} h", published, TestColumn.At(grid, depth), 0.001);
        }
    }

    private static IEnumerable<CheckRow> Sine()
    {
        var (cosine, sine) = Harmonics(() => Film.Held(t => Math.Sin(2 * Math.PI * t / Day)), [.05, .10, .20, .30], 2.4, 0.004);
        (double Depth, double Amplitude, double Lag)[] published = [(.05, .6857, 1.441), (.10, .4701, 2.883), (.20, .2210, 5.766), (.30, .1039, 8.649)];
        for (var i = 0; i < published.Length; i++)
        {
            yield return Row("S13", $"daily sine, amplitude at {published[i].Depth} m", published[i].Amplitude, Amplitude(cosine[i], sine[i]), 0.001);
            yield return Row("S13", $"daily sine, lag at {published[i].Depth} m", published[i].Lag, Lag(cosine[i], sine[i]), 0.02, "h");
        }
    }

    private static IEnumerable<CheckRow> Slab()
    {
        foreach (var (hours, published) in ((double, double)[])[(1, .8204), (2, .5400), (4, .2292), (8, .0413)])
        {
            var grid = TestColumn.Of(CellGrading.Both(0.23, 0.003, 1.02), 1);
            TestColumn.Run(grid, () => Film.Held(_ => 0), hours * Hour, 60);
            yield return Row("S13", $"slab of 0.23 m, both faces stepped, what the centre still holds after {hours} h", published, TestColumn.At(grid, 0.115), 0.001);
        }

        var warm = TestColumn.Of(CellGrading.Both(0.25, 0.003, 1.02), 0);
        warm.Extra = (_, _, _) => 2000;
        TestColumn.Run(warm, () => Film.Held(_ => 0), 10 * Day, 3600);
        yield return Row("S13", "slab of 0.25 m with 2,000 W/m³, faces held, centre in the end", 10.417, TestColumn.At(warm, 0.125), 0.01, "K");
    }

    private static IEnumerable<CheckRow> Flux()
    {
        foreach (var (hours, published) in ((double, double)[])[(1, 10.82), (4, 21.64), (8, 30.60)])
        {
            var grid = Half();
            TestColumn.Run(grid, () => new SteadyFlux(300), hours * Hour, 120);
            yield return Row("S13", $"300 W/m² into a half-space, rise of the surface after {hours} h", published, grid.Surface(0), 0.03, "K");
        }
    }

    private static IEnumerable<CheckRow> FilmRows()
    {
        foreach (var (hours, surface, inside) in ((double, double, double)[])[(1, .3736, .0331), (4, .5609, .2133), (8, .6531, .3503), (24, .7773, .5661)])
        {
            var grid = Half();
            TestColumn.Run(grid, () => new Film(15, _ => 1), hours * Hour, 120);
            yield return Row("S13", $"half-space behind a film of 15 W/(m²·K), surface after {hours} h", surface, grid.Surface(0), 0.001);
            yield return Row("S13", $"the same 0.1 m down after {hours} h", inside, TestColumn.At(grid, 0.1), 0.001);
        }
    }

    /// <summary>Two layers: contact of two half-spaces, which stays at one temperature, and steady flow through slab and base.</summary>
    private static IEnumerable<CheckRow> Layers()
    {
        double[] heights = [.. CellGrading.From(1.5, 0.004, 1.08).Reverse(), .. CellGrading.From(1.5, 0.004, 1.08)];
        var grid = new HeatGrid([1], heights) { Deep = 15 };
        var half = heights.Length / 2;
        grid.Fill((0, 1), (0, half), TestColumn.Conductivity, TestColumn.Capacity);
        grid.Fill((0, 1), (half, heights.Length), 0.3, 1600 * 800);
        for (var i = 0; i < heights.Length; i++) grid.Temperatures[i] = i < half ? 30 : 15;
        grid.Link();
        TestColumn.Run(grid, () => new SteadyFlux(0), 4 * Hour, 60);
        yield return Row("S13", "30 °C concrete on 15 °C dry soil, where they touch", 26.28, grid.Between(0, half - 1), 0.01, "°C");
        // 30 − (30 − Tc) erfc(x/√(4at)), a = 6.383e-7, x 0.05 m, t 4 h
        yield return new(Section, "two layers", "Contact of two half-spaces, worked independently", "the concrete 0.05 m above the contact after 4 h", 27.3486, Above(grid, 0.05), "°C", 0.02);

        var steady = new HeatGrid([1], [.. CellGrading.Both(0.2, 0.01, 1.3), .. CellGrading.Both(0.3, 0.01, 1.3)]) { Deep = 10 };
        var slab = CellGrading.Both(0.2, 0.01, 1.3).Length;
        steady.Fill((0, 1), (0, slab), 1.5, TestColumn.Capacity);
        steady.Fill((0, 1), (slab, steady.Heights.Length), 0.6, TestColumn.Capacity);
        steady.Link();
        TestColumn.Run(steady, () => Film.Held(_ => 40), 60 * Day, 3 * Hour);
        // resistances 0.2/1.5 = 0.13333 and 0.3/0.6 = 0.5 m²K/W: flux 30/0.63333 = 47.368 W/m², interface 40 − 47.368·0.13333
        yield return new(Section, "two layers", "Two layers in series, worked by hand", "0.2 m of 1.5 on 0.3 m of 0.6 W/(m·K), 40 °C on 10 °C, steady flux", 47.3684, steady.Flux[0], "W/m²", 0.001);
        yield return new(Section, "two layers", "Two layers in series, worked by hand", "the same, where they touch", 33.6842, steady.Between(0, slab - 1), "°C", 0.001);
    }

    /// <summary>Barber's daily wave of a pavement under a film.</summary>
    private static IEnumerable<CheckRow> Barber()
    {
        // k 1.25 Btu/(h·ft·°F), s 0.22 Btu/(lb·°F), w 150 lb/ft³, 10 mph
        const double k = 1.25 * 1.730735, capacity = 0.22 * 150 * 67066.1;
        yield return new(Section, "S12", Wave, "film at 10 mph", 4.787, Convection.Barber(4.4704) / 5.678263, "Btu/(h·ft²·°F)", 0.001);
        foreach (var (mph, published) in ((double, double)[])[(0, 7.4), (5, 19.2), (10, 27.2), (15, 34.2), (20, 40.7)])
            yield return new(Section, "S12", Wave, $"film at {mph} mph", published, Convection.Barber(mph * 0.44704), "W/(m²·K)", 0.06);
        var (cosine, sine) = Harmonics(() => new Film(Convection.Barber(4.4704), t => Math.Sin(0.262 * t / Hour)), [0, 4.5 * 0.0254, 9 * 0.0254], 3, 0.004, k, capacity, 2 * Math.PI / 0.262 * Hour);
        (double Inches, double Ratio, double Lag)[] wave = [(0, .6398, 1.206), (4.5, .3185, 3.868), (9, .1586, 6.529)];
        for (var i = 0; i < wave.Length; i++)
        {
            yield return new(Section, "S12", Wave, $"amplitude ratio {wave[i].Inches} in down", wave[i].Ratio, Amplitude(cosine[i], sine[i]), "", 0.001);
            yield return new(Section, "S12", Wave, $"lag {wave[i].Inches} in down", wave[i].Lag, Lag(cosine[i], sine[i]), "h", 0.02);
        }
    }

    private static HeatGrid Half() => TestColumn.Of(CellGrading.From(4, 0.003, 1.06), 0);

    private static double Above(HeatGrid grid, double up)
    {
        var middles = CellGrading.Middles(grid.Heights);
        return new GroundProfile([.. middles], [.. grid.Temperatures], 0).At(1.5 - up);
    }

    /// <summary>Cosine and sine parts of the temperatures at some depths in the last of ten periods.</summary>
    private static (double[] Cosine, double[] Sine) Harmonics(
        Func<ISurfaceLaw> law, double[] depths, double depth, double first, double k = TestColumn.Conductivity, double capacity = TestColumn.Capacity, double period = Day)
    {
        var heights = CellGrading.From(depth, first, 1.06);
        var grid = new HeatGrid([1], heights);
        grid.Fill((0, 1), (0, heights.Length), k, capacity);
        grid.Link();
        var (cosine, sine) = (new double[depths.Length], new double[depths.Length]);
        const int steps = 288;
        ISurfaceLaw[] early = [law()], late = [law()];
        for (var i = 0; i < 10 * steps; i++)
        {
            grid.Step(i * period / steps, period / steps, early, late);
            if (i < 9 * steps) continue;
            var angle = 2 * Math.PI * (i + 1) / steps;
            for (var d = 0; d < depths.Length; d++)
            {
                var value = TestColumn.At(grid, depths[d]);
                cosine[d] += value * Math.Cos(angle) * 2 / steps;
                sine[d] += value * Math.Sin(angle) * 2 / steps;
            }
        }

        return (cosine, sine);
    }

    private static double Amplitude(double cosine, double sine) => Math.Sqrt(cosine * cosine + sine * sine);

    private static double Lag(double cosine, double sine) => (Math.Atan2(-cosine, sine) / (2 * Math.PI) * 24 + 24) % 24;

    private static CheckRow Row(string item, string what, double published, double ours, double tolerance, string unit = "") =>
        new(Section, item, Book, what, published, ours, unit, tolerance);
}
