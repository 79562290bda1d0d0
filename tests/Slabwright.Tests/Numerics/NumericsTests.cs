using CsCheck;
using MathNet.Numerics.Statistics;
using Slabwright.Core.Numerics;
using Distributions = MathNet.Numerics.Distributions;

namespace Slabwright.Tests.Numerics;

/// <summary>Distributions and quantiles beside MathNet.Numerics 5.</summary>
public class NumericsTests
{
    /// <summary>First five outputs of SplitMix64 for seed 1234567, as widely reprinted test values (from memory).</summary>
    [Fact]
    public void The_mixing_function_is_that_of_SplitMix64()
    {
        ulong[] expected = [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821];
        var given = Enumerable.Range(1, 5).Select(i => CounterRandom.Mix(unchecked(1234567UL + (ulong)i * 0x9E3779B97F4A7C15)));
        Assert.Equal(expected, given);
    }

    [Fact]
    public void Uniform_numbers_fill_the_unit_interval_evenly_and_places_do_not_repeat_each_other()
    {
        var random = new CounterRandom(7);
        var values = Enumerable.Range(0, 20_000).Select(i => random.Uniform(1, i / 100, i % 100)).ToArray();
        Assert.All(values, v => Assert.InRange(v, double.Epsilon, 1 - 1e-16));
        Assert.Equal(20_000, values.Distinct().Count());
        Assert.Equal(0.5, values.Average(), 0.008);
        Assert.Equal(1.0 / 12, values.Variance(), 0.002);
        var shares = values.GroupBy(v => (int)(v * 10)).Select(g => g.Count() / 20_000.0);
        Assert.All(shares, s => Assert.InRange(s, 0.09, 0.11));
        var next = Enumerable.Range(0, 20_000).Select(i => random.Uniform(2, i / 100, i % 100)).ToArray();
        Assert.InRange(Correlation.Pearson(values, next), -0.03, 0.03);
    }

    [Fact]
    public void A_stratified_sample_has_one_value_in_each_step() => Gen.Int[1, 300].Sample(count =>
    {
        var sample = new CounterRandom(count).Stratified(3, count);
        Assert.Equal(Enumerable.Range(0, count), sample.Select(v => (int)(v * count)).Order());
    });

    [Fact]
    public void The_normal_distribution_agrees_with_MathNet()
    {
        for (var x = -8.0; x <= 8; x += 0.01) Assert.Equal(Distributions.Normal.CDF(0, 1, x), Normal.Cumulative(x), 1e-14);
        for (var p = 0.0005; p < 0.9999; p += 0.0005) Assert.Equal(Distributions.Normal.InvCDF(0, 1, p), Normal.Quantile(p), 1e-9);
    }

    [Fact]
    public void The_triangular_quantile_agrees_with_MathNet() =>
        Gen.Select(Gen.Double[-5, 0], Gen.Double[0, 3], Gen.Double[3, 9], Gen.Double[0.001, 0.999]).Sample((low, likely, high, p) =>
        {
            var expected = Distributions.Triangular.InvCDF(low, high, likely, p);
            Assert.Equal(expected, new Triangular(low, likely, high).Quantile(p), 9);
        });

    [Fact]
    public void A_single_value_has_one_quantile()
    {
        Assert.Equal(2, new Triangular(2, 2, 2).Quantile(0.1));
        Assert.Equal(2, new Triangular(2, 2, 3).Quantile(0), 12);
        Assert.Equal(3, new Triangular(2, 2, 3).Quantile(1), 12);
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(7)]
    [InlineData(120)]
    public void The_Poisson_quantile_is_the_least_count_that_reaches_the_probability(double mean)
    {
        foreach (var p in new[] { 0.01, 0.1, 0.5, 0.9, 0.99 })
        {
            var count = Samples.PoissonQuantile(mean, p);
            Assert.True(Distributions.Poisson.CDF(mean, count) >= p - 1e-9);
            Assert.True(count == 0 || Distributions.Poisson.CDF(mean, count - 1) < p + 1e-9);
        }

        Assert.Equal(0, Samples.PoissonQuantile(0, 0.99));
    }

    [Fact]
    public void Large_means_fall_back_to_the_normal_distribution_closely() =>
        Assert.InRange(Samples.PoissonQuantile(600, 0.9), 630, 633); // 600 + 1.2816 × √600 = 631.4

    [Fact]
    public void Sample_quantiles_are_nearest_ranks_as_in_MathNet_R1() =>
        Gen.Select(Gen.Double[-9, 9].Array[1, 60], Gen.Double[0.01, 0.99]).Sample((values, p) =>
        {
            var sorted = values.Order().ToArray();
            Assert.Equal(SortedArrayStatistics.QuantileCustom(sorted, p, QuantileDefinition.R1), Samples.Quantile(sorted, p));
        });

    [Fact]
    public void Tied_draws_are_uniform_and_correlate_by_the_weight()
    {
        var random = new CounterRandom(3);
        double[] Draw(int index) =>
            [.. Enumerable.Range(0, 20_000).Select(t => Samples.Tied(random.Uniform(1, t, index), random.Uniform(2, t, 0), 0.5))];
        var (one, two) = (Draw(0), Draw(1));
        Assert.Equal(0.5, one.Average(), 0.01);
        Assert.Equal(1.0 / 12, one.Variance(), 0.002);
        Assert.Equal(0.483, Correlation.Pearson(one, two), 0.02); // 6/π asin(ρ/2) for ranks of normals with ρ = 0.5
    }
}
