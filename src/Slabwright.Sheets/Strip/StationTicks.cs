using Slabwright.Core.Pavement;

namespace Slabwright.Sheets.Strip;

/// <summary>A tick of the station ruler.</summary>
/// <param name="At">Metres along the road.</param>
/// <param name="Label">Written station, or empty for a minor tick.</param>
/// <param name="IsEquation">True where a station equation makes the ruler jump.</param>
public readonly record struct StationTick(double At, string Label, bool IsEquation = false);

/// <summary>Ticks at round stations; follows falling stations and station equations.</summary>
public static class StationTicks
{
    /// <summary>Steps of the ruler in station units of the style, metres.</summary>
    private static readonly double[] FeetSteps = [5, 25, 50, 100, 500, 1000, 5000, 10000];
    private static readonly double[] MetreSteps = [1, 5, 10, 20, 50, 100, 500, 1000, 5000];
    private static readonly double[] MileSteps = [0.001, 0.005, 0.01, 0.05, 0.1, 0.5, 1, 5];

    /// <summary>The ticks of a stretch.</summary>
    /// <param name="stationing">How stations are written.</param>
    /// <param name="from">Metres along the road.</param>
    /// <param name="to">Metres along the road.</param>
    /// <param name="leastLabelGap">Least distance between two labels, m.</param>
    public static IReadOnlyList<StationTick> Of(Stationing stationing, double from, double to, double leastLabelGap)
    {
        var (unit, steps) = stationing.Style switch
        {
            StationStyle.Feet => (0.3048, FeetSteps),
            StationStyle.Metres => (1.0, MetreSteps),
            _ => (1609.344, MileSteps),
        };
        var major = steps.FirstOrDefault(s => s * unit >= leastLabelGap, steps[^1]);
        var minor = steps.LastOrDefault(s => s < major && Math.Abs(major / s - Math.Round(major / s)) < 1e-9, major);
        var ticks = new List<StationTick>();
        foreach (var (start, end) in Pieces(stationing, from, to)) AddPiece(ticks, stationing, start, end, major * unit, minor * unit);
        foreach (var equation in stationing.Equations.Where(e => e.At > from && e.At < to))
        {
            var back = stationing.Format(Math.BitDecrement(equation.At));
            ticks.Add(new StationTick(equation.At, $"{back} back = {stationing.Format(equation.At)} ahead", true));
        }

        return ticks;
    }

    /// <summary>Stretches without a jump inside.</summary>
    private static IEnumerable<(double Start, double End)> Pieces(Stationing stationing, double from, double to)
    {
        var start = from;
        foreach (var equation in stationing.Equations.Where(e => e.At > from && e.At < to))
        {
            yield return (start, equation.At);
            start = equation.At;
        }

        yield return (start, to);
    }

    private static void AddPiece(List<StationTick> ticks, Stationing stationing, double start, double end, double major, double minor)
    {
        var value = stationing.ValueAt(start);
        var direction = stationing.Direction < 0 ? -1 : 1;
        var (low, high) = direction > 0 ? (value, value + end - start) : (value - (end - start), value);
        for (var k = (long)Math.Ceiling(low / minor - 1e-9); k * minor <= high + 1e-9; k++)
        {
            var at = start + direction * (k * minor - value);
            var isMajor = Math.Abs(k * minor / major - Math.Round(k * minor / major)) < 1e-6;
            ticks.Add(new StationTick(at, isMajor ? Short(stationing.Format(at)) : ""));
        }
    }

    /// <summary>Drops the decimals a round station does not need.</summary>
    private static string Short(string station)
    {
        var dot = station.IndexOf('.', StringComparison.Ordinal);
        return dot > 0 && station.Contains('+', StringComparison.Ordinal) && station[(dot + 1)..].All(c => c == '0') ? station[..dot] : station;
    }
}
