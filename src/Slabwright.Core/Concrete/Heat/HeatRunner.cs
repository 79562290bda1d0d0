using System.Collections.Immutable;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>Steps a grid through a run: short steps after placing and after each change of cover, answers at even times.</summary>
internal static class HeatRunner
{
    private const double Smallest = 1e-6;

    /// <summary>Runs from a time to another, both in seconds after placing.</summary>
    /// <param name="grid">The grid.</param> <param name="surfaces">What its columns meet.</param> <param name="from">Start, s.</param> <param name="to">End, s.</param>
    /// <param name="step">Longest step, s.</param> <param name="every">Time between answers, s; infinity for none but the last.</param>
    /// <param name="changes">Times of changes, rising, the first at or before the start.</param> <param name="answer">Called at each answer, not at the start.</param>
    public static void Run(
        HeatGrid grid, RoadSurfaces surfaces, double from, double to, double step, double every, ImmutableArray<double> changes, Action<double> answer)
    {
        var time = from;
        var (next, changed) = (Math.Min(from + every, to), 0);
        while (time < to - Smallest)
        {
            while (changed + 1 < changes.Length && changes[changed + 1] <= time + Smallest) changed++;
            var length = Math.Min(step, Math.Max(step / 10, time - (changes.IsEmpty ? double.NegativeInfinity : changes[changed])));
            var stop = changed + 1 < changes.Length ? Math.Min(next, changes[changed + 1]) : next;
            if (time + length > stop - Smallest) length = stop - time;
            surfaces.Step(grid, time, length);
            time += length;
            if (time < next - Smallest) continue;
            answer(next);
            time = next;
            next = Math.Min(next + every, to);
        }
    }

    /// <summary>What the weather cannot answer for. An error means that there is no run.</summary>
    /// <param name="run">The run.</param> <param name="end">Seconds after placing up to which it can be computed.</param>
    public static List<Finding> Check(HeatRun run, out double end)
    {
        var findings = new List<Finding>();
        var weather = run.Weather;
        end = Math.Min(run.Duration, (weather.End - run.Placed).TotalSeconds);
        var place = new FindingPlace(weather.Name.Length == 0 ? null : weather.Name);
        if (weather.Hours.Length == 0 || run.Placed < weather.Start || end <= 0)
        {
            end = 0;
            findings.Add(new("CON-111", FindingLevel.Error, "The weather does not reach the hour of placing.", place, Text(run.Placed),
                "Give weather from before placing to the end of the run.", weather.Hours.Length == 0 ? "no hours" : $"{Text(weather.Start)} to {Text(weather.End)}"));
            return findings;
        }

        if (end < run.Duration - 1)
        {
            findings.Add(new("CON-112", FindingLevel.Warning, "The weather ends before the run; temperatures end with it.", place,
                Text(weather.End), "Give weather to the end of the run.", Text(run.Placed.AddSeconds(run.Duration))));
        }

        foreach (var gap in weather.GapsIn(run.Placed, run.Placed.AddSeconds(end)))
        {
            findings.Add(new("CON-113", FindingLevel.Warning, "The run goes through hours the weather file does not give; they were bridged straight.",
                place with { Field = gap.Variable }, $"{Text(gap.From)}, {gap.Hours} h", "Fill in the hours, or take care with temperatures there."));
        }

        return findings;
    }

    /// <summary>Names a spin-up cut short.</summary>
    public static Finding? ShortSpinUp(HeatRun run)
    {
        var have = Math.Min(run.SpinUp, run.Weather.SecondsTo(run.Placed));
        return have >= run.SpinUp - 1 || run.Before is not null
            ? null
            : new("CON-114", FindingLevel.Note, "The weather before placing is shorter than the time asked for to find the road's temperatures.",
                new FindingPlace(run.Weather.Name.Length == 0 ? null : run.Weather.Name), Hours(have), "Give weather further back, or measured temperatures of base and subgrade.", Hours(run.SpinUp));
    }

    private static string Text(DateTime time) => time.ToString("yyyy-MM-dd HH:mm", System.Globalization.CultureInfo.InvariantCulture);

    private static string Hours(double seconds) => (seconds / 3600).ToString("0.#", System.Globalization.CultureInfo.InvariantCulture) + " h";
}
