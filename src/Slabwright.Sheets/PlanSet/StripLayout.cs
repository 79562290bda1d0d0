using System.Collections.Immutable;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Sheets.PlanSet;

/// <summary>One row of a strip sheet.</summary>
/// <param name="From">Metres along the road.</param>
/// <param name="To">Metres along the road.</param>
/// <param name="SkippedFrom">Start of the stretch without work left out before this row, or null.</param>
internal sealed record StripRow(double From, double To, double? SkippedFrom);

/// <summary>
/// The rows of the strip sheets at a scale. Every repair and surface work is whole on at least one row unless it is longer than a row;
/// stretches without work are left out when they are longer than <see cref="LeastSkip"/>, and the next row says which.
/// </summary>
internal sealed class StripLayout
{
    /// <summary>Shortest stretch worth leaving out, m.</summary>
    private const double LeastSkip = 60;

    /// <summary>Road drawn before the first cut of a row, m.</summary>
    private const double Lead = 3;

    /// <summary>Scales a person may lay an engineer's or metric scale on: 1 in = 20 and 40 ft; 1:250 and 1:500.</summary>
    private static readonly double[] UsScales = [240, 480];
    private static readonly double[] SiScales = [250, 500];

    private readonly double step;
    private readonly Stationing stationing;
    private readonly double length;

    private StripLayout(Project project, double scale, double rowWidth)
    {
        Scale = scale;
        PointsPerMetre = 72 / 0.0254 / scale;
        step = project.UnitSystem == UnitSystem.UsCustomary ? 25 * 0.3048 : 10;
        length = project.Road.Length;
        stationing = project.Road.Stationing;
        RowLength = Math.Max(1, Math.Floor(rowWidth / PointsPerMetre / step)) * step;
    }

    /// <summary>The number after "1:".</summary>
    public double Scale { get; }

    public double PointsPerMetre { get; }

    /// <summary>Road length of a full row, m.</summary>
    public double RowLength { get; }

    public ImmutableArray<StripRow> Rows { get; private set; } = [];

    /// <summary>Stretch after the last row without work, or null.</summary>
    public (double From, double To)? SkippedAtEnd { get; private set; }

    /// <summary>Lays out the rows: the larger scale unless it would take more than <paramref name="mostRows"/> rows.</summary>
    public static StripLayout Of(Project project, RepairPlan plan, double rowWidth, double? scale, int mostRows)
    {
        var scales = scale is { } given ? [given] : project.UnitSystem == UnitSystem.Si ? SiScales : UsScales;
        StripLayout? layout = null;
        foreach (var candidate in scales)
        {
            layout = new StripLayout(project, candidate, rowWidth);
            layout.Fill(plan);
            if (layout.Rows.Length <= mostRows) break;
        }

        return layout!;
    }

    private void Fill(RepairPlan plan)
    {
        var works = plan.Boundaries.Repairs.Select(r => (r.From, r.To)).Concat(plan.SurfaceWorks.Select(w => (w.From, w.To))).OrderBy(w => w.From).ToList();
        var rows = ImmutableArray.CreateBuilder<StripRow>();
        var (end, next) = (0.0, 0);
        while (next < works.Count)
        {
            var (start, skipped) = StartOf(works[next], end);
            var stop = Math.Min(start + RowLength, length);
            rows.Add(new StripRow(start, stop, skipped));
            while (next < works.Count && works[next].To <= stop + 1e-6) next++;
            end = stop;
            if (stop >= length) break;
        }

        Rows = rows.ToImmutable();
        SkippedAtEnd = length - end > 1 ? (end, length) : null;
    }

    /// <summary>Where the row of the next work starts, and where the skipped stretch before it starts.</summary>
    private (double Start, double? Skipped) StartOf((double From, double To) work, double end)
    {
        var wished = Math.Max(0, Snap(work.From - Lead));
        if (wished - end >= LeastSkip) return (wished, end);
        if (work.From < end && work.To - wished <= RowLength) return (wished, null);
        return (end, null);
    }

    /// <summary>The last place before, or at, a place whose station is a multiple of the step; an equation in between is not looked for.</summary>
    private double Snap(double at)
    {
        var steps = stationing.ValueAt(at) / step;
        return at - step * (stationing.Direction < 0 ? Math.Ceiling(steps - 1e-9) - steps : steps - Math.Floor(steps + 1e-9));
    }
}
