namespace Slabwright.Examples.Ltpp;

/// <summary>A share with its 95 % interval.</summary>
/// <param name="Of">How many.</param>
/// <param name="Total">Of how many.</param>
/// <param name="Low">Lower end, 0 to 1.</param>
/// <param name="High">Upper end, 0 to 1.</param>
public sealed record Share(int Of, int Total, double Low, double High)
{
    public double Value => Total == 0 ? double.NaN : Of / (double)Total;
}

/// <summary>A figure with its 95 % interval.</summary>
public sealed record Figure(double Value, double Low, double High);

/// <summary>The few statistics the comparison needs.</summary>
public static class Statistics
{
    private const double NormalAt95 = 1.959963984540054;

    /// <summary>Wilson's score interval of a share.</summary>
    /// <remarks>Source: E. B. Wilson, Journal of the American Statistical Association 22 (1927), 209-212.</remarks>
    public static Share Wilson(int of, int total)
    {
        if (total == 0) return new Share(0, 0, 0, 1);
        var (p, z2) = (of / (double)total, NormalAt95 * NormalAt95);
        var middle = (p + z2 / (2 * total)) / (1 + z2 / total);
        var half = NormalAt95 / (1 + z2 / total) * Math.Sqrt(p * (1 - p) / total + z2 / (4.0 * total * total));
        return new Share(of, total, Math.Max(0, middle - half), Math.Min(1, middle + half));
    }

    /// <summary>Chance that one of the first is larger than one of the second, ties counting half (the area under the ROC curve).</summary>
    public static double ChanceLarger(IReadOnlyList<double> first, IReadOnlyList<double> second)
    {
        var sorted = second.Order().ToArray();
        var sum = first.Sum(v => (Below(sorted, v, inclusive: false) + Below(sorted, v, inclusive: true)) / 2.0);
        return sum / first.Count / second.Count;
    }

    /// <summary>Spearman's rank correlation, ties sharing their mean rank.</summary>
    public static double RankCorrelation(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        var (rx, ry) = (Ranks(x), Ranks(y));
        var (mx, my) = (rx.Average(), ry.Average());
        var top = rx.Zip(ry, (a, b) => (a - mx) * (b - my)).Sum();
        return top / Math.Sqrt(rx.Sum(a => (a - mx) * (a - mx)) * ry.Sum(b => (b - my) * (b - my)));
    }

    /// <summary>95 % interval of a figure by drawing whole groups (here: sections) again and again with a fixed seed.</summary>
    public static Figure Bootstrap<T>(IReadOnlyList<IReadOnlyList<T>> groups, Func<IReadOnlyList<T>, double> figure, int seed, int draws = 500)
    {
        var random = new Random(seed);
        var values = new List<double>(draws);
        for (var draw = 0; draw < draws; draw++)
        {
            var drawn = Enumerable.Range(0, groups.Count).SelectMany(_ => groups[random.Next(groups.Count)]).ToList();
            var value = figure(drawn);
            if (!double.IsNaN(value)) values.Add(value);
        }

        values.Sort();
        return new Figure(figure([.. groups.SelectMany(g => g)]), At(values, 0.025), At(values, 0.975));
    }

    private static double At(List<double> sorted, double share) => sorted[(int)Math.Round(share * (sorted.Count - 1))];

    private static int Below(double[] sorted, double value, bool inclusive)
    {
        var (low, high) = (0, sorted.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (sorted[middle] < value || (inclusive && sorted[middle] == value)) low = middle + 1;
            else high = middle;
        }

        return low;
    }

    private static double[] Ranks(IReadOnlyList<double> values)
    {
        var sorted = values.Order().ToArray();
        return [.. values.Select(v => (Below(sorted, v, false) + Below(sorted, v, true) + 1) / 2.0)];
    }
}
