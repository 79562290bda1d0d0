using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>Gathers the answers of a run.</summary>
/// <param name="points">Places to report.</param> <param name="keepFields">True to keep whole sections.</param>
internal sealed class HistoryRecord(ImmutableArray<ReportPoint> points, bool keepFields)
{
    private readonly List<double> times = [];
    private readonly List<double>[] temperatures = [.. points.Select(_ => new List<double>())];
    private readonly List<double>[] degrees = [.. points.Select(_ => new List<double>())];
    private readonly List<PlateTemperature> plate = [];
    private readonly List<FieldAt> fields = [];

    /// <summary>Takes down the state of a grid at a time.</summary>
    public void Take(HeatGrid grid, HeatProbe probe, (int From, int To) fresh, int middle, double time)
    {
        times.Add(time);
        for (var i = 0; i < points.Length; i++)
        {
            temperatures[i].Add(probe.Temperature(points[i].Along, points[i].Depth));
            degrees[i].Add(probe.Degree(points[i].Along, points[i].Depth, fresh));
        }

        plate.Add(probe.Plate(middle, time));
        if (keepFields) fields.Add(new(time, [.. grid.Temperatures.Select(t => (float)t)]));
    }

    /// <summary>The history.</summary>
    public TemperatureHistory Finish(DateTime placed, HeatBalance balance, int steps, ImmutableArray<double> along, ImmutableArray<double> depths, List<Finding> findings) => new()
    {
        Placed = placed,
        Times = [.. times],
        Points = [.. points.Select((p, i) => new PointHistory(p.Name, p.Along, p.Depth, [.. temperatures[i]], [.. degrees[i]]))],
        Plate = [.. plate],
        Balance = balance,
        Steps = steps,
        Along = along,
        Depths = depths,
        Fields = [.. fields],
        Findings = [.. findings],
    };
}
