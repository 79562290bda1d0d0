using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>
/// Maturity at the place that lags behind, over time, for any air and placing temperature: computed at a few of them and taken between by
/// parabolas of its logarithm. A trial then costs a few multiplications instead of a heat computation; tests hold it against direct ones.
/// </summary>
internal sealed class MaturityPaths
{
    /// <summary>Standard deviations at which the paths are computed.</summary>
    private static readonly double[] Knots = [-1.7, 0, 1.7];

    private readonly double[][] _logs;
    private readonly int _firsts;
    private readonly int _seconds;

    private MaturityPaths(double[] hours, double[][] logs, int firsts, int seconds, SlabPlace[] governs, double[] temperatures)
    {
        (Hours, _logs, _firsts, _seconds, Governs, Temperatures) = (hours, logs, firsts, seconds, governs, temperatures);
    }

    /// <summary>Hours after placing.</summary>
    public double[] Hours { get; }

    /// <summary>The place that lags behind at each hour, at the mean of the belief.</summary>
    public SlabPlace[] Governs { get; }

    /// <summary>Temperature there, °C.</summary>
    public double[] Temperatures { get; }

    /// <summary>Computes the paths.</summary>
    /// <param name="heat">Temperatures.</param> <param name="planned">The case at the forecast air and the planned placing temperature.</param>
    /// <param name="scale">Maturity function.</param> <param name="belief">Air and placing temperature.</param>
    /// <param name="adjust">Puts computed histories right by readings; null where there are none.</param>
    public static MaturityPaths Of(
        ISlabHeat heat, HeatCase planned, MaturityScale scale, TemperatureBelief belief, Func<ImmutableArray<PlaceHistory>, ImmutableArray<PlaceHistory>>? adjust)
    {
        heat = heat.Around(planned);
        var firsts = belief.AirDeviation > 0 || belief.PlacingByAir != 0 ? Knots : [0];
        var seconds = belief.PlacingDeviation > 0 ? Knots : [0];
        var logs = new double[firsts.Length * seconds.Length][];
        double[] hours = [];
        var (governs, temperatures) = (Array.Empty<SlabPlace>(), Array.Empty<double>());
        for (var i = 0; i < firsts.Length; i++)
        {
            for (var j = 0; j < seconds.Length; j++)
            {
                var (air, placing) = belief.At(firsts[i], seconds[j]);
                var places = heat.Run(planned with { AirShift = planned.AirShift + air, PlacingTemperature = planned.PlacingTemperature + placing });
                if (adjust is not null) places = adjust(places);
                var (least, lagging) = Lagging(places, scale);
                logs[i * seconds.Length + j] = [.. least.Select(m => Math.Log(Math.Max(m, 1e-9)))];
                if (firsts[i] != 0 || seconds[j] != 0) continue;
                hours = [.. places[0].History.Select(t => t.Hours)];
                governs = [.. lagging.Select(k => places[k].Place)];
                temperatures = [.. lagging.Select((k, n) => places[k].History[n].Temperature)];
            }
        }

        return new MaturityPaths(hours, logs, firsts.Length, seconds.Length, governs, temperatures);
    }

    /// <summary>Weights of the computed paths for a trial.</summary>
    /// <param name="first">Standard normal draw of the air.</param> <param name="second">Of the placing temperature.</param>
    /// <param name="weights">Room for <see cref="Count"/> weights.</param>
    public void Weights(double first, double second, Span<double> weights)
    {
        Span<double> a = stackalloc double[3], b = stackalloc double[3];
        Parabola(first, _firsts, a);
        Parabola(second, _seconds, b);
        for (var i = 0; i < _firsts; i++)
            for (var j = 0; j < _seconds; j++) weights[i * _seconds + j] = a[i] * b[j];
    }

    /// <summary>Number of computed paths.</summary>
    public int Count => _logs.Length;

    /// <summary>Maturity at a step.</summary>
    public double Maturity(int step, ReadOnlySpan<double> weights)
    {
        var log = 0.0;
        for (var k = 0; k < _logs.Length; k++) log += weights[k] * _logs[k][step];
        return Math.Exp(log);
    }

    /// <summary>Hours after placing at which a maturity is reached, straight between steps; infinity when not within the hours computed.</summary>
    public double HoursTo(double maturity, ReadOnlySpan<double> weights)
    {
        var (low, high) = (0, Hours.Length - 1);
        if (!(Maturity(high, weights) >= maturity)) return double.PositiveInfinity;
        if (Maturity(low, weights) >= maturity) return Hours[low];
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (Maturity(middle, weights) >= maturity) high = middle;
            else low = middle;
        }

        var (before, after) = (low == 0 ? 0 : Maturity(low, weights), Maturity(high, weights));
        return after > before ? Hours[low] + (maturity - before) / (after - before) * (Hours[high] - Hours[low]) : Hours[high];
    }

    private static void Parabola(double z, int count, Span<double> weights)
    {
        weights[0] = 1;
        if (count == 1) return;
        var u = z / Knots[2];
        (weights[0], weights[1], weights[2]) = (u * (u - 1) / 2, 1 - u * u, u * (u + 1) / 2);
    }

    /// <summary>Least maturity of all places at each step, and the place it is at.</summary>
    private static (double[] Least, int[] Place) Lagging(ImmutableArray<PlaceHistory> places, MaturityScale scale)
    {
        var least = scale.Along(places[0].History).ToArray();
        var place = new int[least.Length];
        for (var k = 1; k < places.Length; k++)
        {
            var sums = scale.Along(places[k].History);
            for (var i = 0; i < least.Length; i++)
                if (sums[i] < least[i]) (least[i], place[i]) = (sums[i], k);
        }

        return (least, place);
    }
}
