using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Numerics.Heat;

namespace Slabwright.Tests.HeatFlow;

/// <summary>A made-up solution: the error falls with the square of cells and steps, in a column and in a section.</summary>
public sealed class HeatOrderTests
{
    private const double K = TestColumn.Conductivity, C = TestColumn.Capacity, Depth = 0.4, Length = 0.6, Rate = 2e-4;

    /// <summary>20 + 10 cos(πz/2d) cos(2πx/L) sin(rt + 0.3): insulated ends and a bottom held at 20 °C, as the grid has them.</summary>
    private static double Exact(double x, double z, double t) => 20 + 10 * Math.Cos(Math.PI * z / (2 * Depth)) * Math.Cos(Wave * x) * Math.Sin(Rate * t + 0.3);

    private static double wave;

    private static double Wave => wave;

    private static double Source(double x, double z, double t)
    {
        var shape = 10 * Math.Cos(Math.PI * z / (2 * Depth)) * Math.Cos(Wave * x);
        var bend = Math.Pow(Math.PI / (2 * Depth), 2) + Wave * Wave;
        return shape * (C * Rate * Math.Cos(Rate * t + 0.3) + K * bend * Math.Sin(Rate * t + 0.3));
    }

    [Fact]
    public void Errors_fall_with_the_square_of_the_cells()
    {
        foreach (var columns in (int[])[1, 0])
        {
            var errors = new[] { 10, 20, 40 }.Select(n => Error(columns == 1 ? 1 : n, n, 7200, 20)).ToArray();
            Assert.InRange(Math.Log2(errors[0] / errors[1]), 1.85, 2.2);
            Assert.InRange(Math.Log2(errors[1] / errors[2]), 1.85, 2.2);
        }
    }

    /// <summary>Against the same cells with very short steps, so that only the steps err.</summary>
    [Fact]
    public void Errors_fall_with_the_square_of_the_steps()
    {
        foreach (var columns in (int[])[1, 16])
        {
            var fine = Run(columns, 16, 14_400, 7.5).Temperatures;
            var errors = new[] { 1200.0, 600, 300 }.Select(step => Run(columns, 16, 14_400, step).Temperatures.Zip(fine, (a, b) => Math.Abs(a - b)).Max()).ToArray();
            Assert.True(errors[0] > 1e-5, $"{errors[0]}");
            Assert.InRange(Math.Log2(errors[0] / errors[1]), 1.8, 2.3);
            Assert.InRange(Math.Log2(errors[1] / errors[2]), 1.8, 2.3);
        }
    }

    private static double Error(int columns, int rows, double to, double step)
    {
        var grid = Run(columns, rows, to, step);
        var (xs, zs) = (CellGrading.Middles(grid.Widths), CellGrading.Middles(grid.Heights));
        return Enumerable.Range(0, grid.Temperatures.Length).Max(i => Math.Abs(grid.Temperatures[i] - Exact(xs[i / rows], zs[i % rows], to)));
    }

    private static HeatGrid Run(int columns, int rows, double to, double step)
    {
        wave = columns == 1 ? 0 : 2 * Math.PI / Length;
        var grid = new HeatGrid([.. Enumerable.Repeat(columns == 1 ? 1 : Length / columns, columns)], [.. Enumerable.Repeat(Depth / rows, rows)]) { Deep = 20, Extra = Source };
        grid.Fill((0, columns), (0, rows), K, C);
        grid.Link();
        var (xs, zs) = (CellGrading.Middles(grid.Widths), CellGrading.Middles(grid.Heights));
        for (var i = 0; i < grid.Temperatures.Length; i++) grid.Temperatures[i] = Exact(xs[i / rows], zs[i % rows], 0);
        ISurfaceLaw[] early = [new SteadyFlux(0)], late = [new SteadyFlux(0)];
        for (var i = 0; i < (int)Math.Round(to / step); i++) grid.Step(i * step, step, early, late);
        return grid;
    }
}
