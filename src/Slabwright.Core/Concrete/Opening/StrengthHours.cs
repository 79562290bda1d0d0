using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Numerics;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>Strength over time with its band, for charts.</summary>
internal static class StrengthHours
{
    private const int Nodes = 9;

    /// <summary>One row for each hour step of the paths.</summary>
    /// <remarks>
    /// Band by quadrature: nine equal-chance nodes of air and placing temperature and forty-one of strength; steady from step to step where random draws would flicker.
    /// </remarks>
    public static ImmutableArray<StrengthHour> Of(OpeningCase question, MaturityPaths paths, double lotDeviation, double[] openings)
    {
        var weights = Grid(paths);
        var rows = ImmutableArray.CreateBuilder<StrengthHour>(paths.Hours.Length);
        var strengths = new double[weights.Length * StrengthNodes.Length];
        for (var step = 0; step < paths.Hours.Length; step++)
        {
            var count = 0;
            foreach (var w in weights)
            {
                var maturity = step == 0 ? 0 : paths.Maturity(step, w);
                var (strength, spread) = NeededMaturity.Spread(question.Curve, lotDeviation, maturity);
                foreach (var z in StrengthNodes) strengths[count++] = question.StrengthFactor * strength * Math.Max(0, 1 + z * spread);
            }

            Array.Sort(strengths);
            var band = new StrengthBand(Samples.Quantile(strengths, 0.05), Samples.Quantile(strengths, 0.5), Samples.Quantile(strengths, 0.95));
            var middle = step == 0 ? 0 : paths.Maturity(step, weights[weights.Length / 2]);
            rows.Add(new StrengthHour(paths.Hours[step], paths.Temperatures[step], middle, band, Chance(openings, paths.Hours[step]), paths.Governs[step]));
        }

        return rows.MoveToImmutable();
    }

    private static double[] StrengthNodes { get; } = [.. Enumerable.Range(0, 41).Select(i => Normal.Quantile((i + 0.5) / 41))];

    private static double[][] Grid(MaturityPaths paths)
    {
        var nodes = paths.Count == 1 ? [0.0] : Enumerable.Range(0, Nodes).Select(i => Normal.Quantile((i + 0.5) / Nodes)).ToArray();
        var grid = new List<double[]>();
        for (var i = 0; i < nodes.Length; i++)
        {
            // Pairs that spread evenly over both: each node of the one meets a different node of the other.
            var weights = new double[paths.Count];
            paths.Weights(nodes[i], nodes[(i * 4 + 4) % nodes.Length], weights);
            grid.Add(weights);
        }

        var middle = new double[paths.Count];
        paths.Weights(0, 0, middle);
        grid[grid.Count / 2] = middle;
        return [.. grid];
    }

    private static double Chance(double[] openings, double hours)
    {
        var (low, high) = (0, openings.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (openings[middle] <= hours) low = middle + 1;
            else high = middle;
        }

        return (double)low / openings.Length;
    }
}
