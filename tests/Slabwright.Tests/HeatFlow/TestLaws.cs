using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Numerics.Heat;

namespace Slabwright.Tests.HeatFlow;

/// <summary>A face that gives off heat to something at a temperature of time: a film; a very good one holds the temperature.</summary>
internal sealed class Film(double coefficient, Func<double, double> around) : ISurfaceLaw
{
    private double temperature;

    public double Resistance => 0;

    public static Film Held(Func<double, double> temperature) => new(1e9, temperature);

    public void Set(double time) => temperature = around(time);

    public double Flux(double outer, out double slope)
    {
        slope = -coefficient;
        return coefficient * (temperature - outer);
    }
}

/// <summary>A face that takes up a steady flux.</summary>
internal sealed class SteadyFlux(double flux) : ISurfaceLaw
{
    public double Resistance => 0;

    public void Set(double time) { }

    public double Flux(double outer, out double slope)
    {
        slope = 0;
        return flux;
    }
}

/// <summary>Columns of one or two materials under a test's law.</summary>
internal static class TestColumn
{
    /// <summary>Conductivity, W/(m·K), of the published half-space examples.</summary>
    public const double Conductivity = 1.5;

    /// <summary>Capacity, J/(m³·K), of the published half-space examples.</summary>
    public const double Capacity = 2.35e6;

    /// <summary>A column of one material; its lower end is held at the deep temperature, 0 unless set.</summary>
    public static HeatGrid Of(double[] heights, double start)
    {
        var grid = new HeatGrid([1], heights);
        grid.Fill((0, 1), (0, heights.Length), Conductivity, Capacity);
        Array.Fill(grid.Temperatures, start);
        grid.Outer[0] = start;
        grid.Link();
        return grid;
    }

    /// <summary>Steps to a time; the first steps are short, as after placing.</summary>
    public static void Run(HeatGrid grid, Func<ISurfaceLaw> law, double to, double step, double from = 0, Action<double>? after = null)
    {
        ISurfaceLaw[] early = [law()], late = [law()];
        var time = from;
        while (time < to - 1e-6)
        {
            var length = Math.Min(Math.Min(step, Math.Max(step / 50, time - from)), to - time);
            grid.Step(time, length, early, late);
            time += length;
            after?.Invoke(time);
        }
    }

    /// <summary>Temperature at a depth, straight between middles and the surface.</summary>
    public static double At(HeatGrid grid, double depth)
    {
        var middles = CellGrading.Middles(grid.Heights);
        return depth <= 0 ? grid.Surface(0) : new GroundProfile([0, .. middles], [grid.Surface(0), .. grid.Temperatures], 0).At(depth);
    }
}
