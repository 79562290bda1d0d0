using System.Collections.Immutable;

namespace Slabwright.Core.Joints.Design;

/// <summary>Set-ups of a gang drill over a row of bars.</summary>
public static class GangDrill
{
    private const double Slack = 0.002;

    /// <summary>
    /// The fewest set-ups that drill every bar once. A frame reaches only bars that stand whole drill spacings apart, so bars fall into
    /// families; in each the frame is put to the leftmost bar not drilled yet, which no other choice betters. The frame is slid left by whole
    /// spacings where it would stand out over the lane's right edge.
    /// </summary>
    /// <param name="offsets">Bar centres from the lane's left edge, m, rising.</param>
    /// <param name="drills">Drills on the frame, 1 or more.</param>
    /// <param name="spacing">Distance of the drills, m.</param>
    /// <param name="width">Lane width, m.</param>
    public static ImmutableArray<GangSetUp> SetUps(IReadOnlyList<double> offsets, int drills, double spacing, double width)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(drills, 1);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spacing);
        var left = Enumerable.Range(0, offsets.Count).ToList();
        var frames = new List<(double At, ImmutableArray<int> Bars)>();
        while (left.Count > 0)
        {
            var at = offsets[left[0]];
            var reached = left.Where(n => Drill(offsets[n] - at, spacing) is { } drill && drill < drills).ToImmutableArray();
            frames.Add((Slide(at, Drill(offsets[reached[^1]] - at, spacing)!.Value, drills, spacing, width), [.. reached.Select(n => n + 1)]));
            left.RemoveAll(reached.Contains);
        }

        return [.. frames.OrderBy(f => f.Bars[0]).Select((f, n) => new GangSetUp(n + 1, f.Bars, f.At))];
    }

    /// <summary>Number of the drill, from 0, that stands over a bar; null where none does within 2 mm.</summary>
    private static int? Drill(double distance, double spacing)
    {
        var number = Math.Round(distance / spacing);
        return number >= 0 && Math.Abs(distance - number * spacing) <= Slack ? (int)number : null;
    }

    private static double Slide(double at, int last, int drills, double spacing, double width)
    {
        for (var idle = drills - 1 - last; idle > 0 && at + (drills - 1) * spacing > width && at >= spacing; idle--) at -= spacing;
        return at;
    }
}
