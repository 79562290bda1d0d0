using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Night;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Concrete;

/// <summary>Temperatures of the repair over the night, a curve for each place told apart by its dashes and its name, with air and readings.</summary>
public static class TemperaturePlot
{
    /// <summary>Draws the plot.</summary>
    /// <param name="history">Computed temperatures.</param> <param name="clock">Clock of the night.</param> <param name="units">Units of the project.</param>
    /// <param name="options">Width and type size.</param> <param name="air">Weather, for the air; null: not drawn.</param>
    /// <param name="readings">Readings of the night, as points; null: none.</param> <param name="until">Last clock time shown; null: all that was computed.</param>
    public static Figure Draw(TemperatureHistory history, NightClock clock, JobUnits units, PlotOptions options, WeatherSeries? air = null, CheckedReadings? readings = null, DateTime? until = null)
    {
        ArgumentNullException.ThrowIfNull(history);
        ArgumentNullException.ThrowIfNull(clock);
        ArgumentNullException.ThrowIfNull(units);
        ArgumentNullException.ThrowIfNull(options);
        if (history.Times.Length < 2) throw new ArgumentException("A plot needs at least two times.", nameof(history));
        return new Plot(history, clock, units, options, air, readings, until).Draw();
    }

    /// <summary>A place in words.</summary>
    internal static string Words(string point) => point switch { "top" => "surface", "middle" => "mid-depth", _ => point };

    private sealed record Curve(string Name, FigureStyle Style, (DateTime At, double Value)[] Points);

    private sealed class Plot
    {
        private readonly NightClock clock;
        private readonly JobUnits units;
        private readonly double size;
        private readonly DateTime from;
        private readonly DateTime last;
        private readonly NightPlot plot;
        private readonly List<Curve> curves;
        private readonly (string Name, bool Trusted, (DateTime At, double Value)[] Points)[] probes;
        private readonly PlotScale y;

        public Plot(TemperatureHistory history, NightClock clock, JobUnits units, PlotOptions options, WeatherSeries? air, CheckedReadings? readings, DateTime? until)
        {
            (this.clock, this.units, size) = (clock, units, options.TextSize);
            (from, last) = (clock.Of(history.Placed), clock.Of(history.Placed.AddSeconds(history.Times[^1])));
            if (until is { } limit && limit < last && limit > from) last = limit;
            curves = [.. Places(history)];
            if (air is not null) curves.Add(new("air", FigureStyle.CurveBefore, [.. Air(air)]));
            probes = [.. (readings?.Probes ?? []).Select(p => (p.Name, p.Trusted, Shown(p.History.Select(t => (from.AddHours(t.Hours), t.Temperature)))))];
            var ruler = new FigureBuilder(options.Ruler);
            plot = new NightPlot(from, last, options, curves.Max(c => ruler.Measure(c.Name, size * 0.85)) + 14);
            double[] values = [.. curves.SelectMany(c => c.Points).Concat(probes.SelectMany(p => p.Points)).Select(p => units.Temperature.FromBase(p.Value))];
            y = PlotScale.Round(values.Min(), values.Max(), plot.Height, 0, 6);
        }

        public Figure Draw()
        {
            PlotAxes.Upright(plot.Figure, y, 0, size, $"Temperature, {units.Temperature.Symbol}", plot.Width);
            plot.DrawClock();
            plot.Mark(clock.Night.Deadline, $"open by {NightClock.Hour(clock.Night.Deadline)}", FigureStyle.Deadline);
            plot.DrawMarks();
            foreach (var curve in curves) plot.Curve(curve.Style, curve.Points.Select(p => (p.At, Y(p.Value))));
            plot.Names(curves.Where(c => c.Points.Length > 0).Select(c => (plot.X(c.Points[^1].At), Y(c.Points[^1].Value), c.Name)));
            foreach (var curve in curves) plot.Explain(curve.Name, curve.Style);
            for (var i = 0; i < probes.Length; i++) Probe(i);
            plot.DrawLegend();
            return plot.Figure.Build("Temperatures of the repair over the night", Describe());
        }

        /// <summary>Curves of the places; of two ends of a repair, the colder.</summary>
        private IEnumerable<Curve> Places(TemperatureHistory history)
        {
            var style = FigureStyle.CurveFirst;
            foreach (var point in history.Points.Where(p => !p.Name.EndsWith(" behind", StringComparison.Ordinal)))
            {
                if (style > FigureStyle.CurveSixth) yield break;
                var other = history.Points.FirstOrDefault(p => p.Name == point.Name + " behind");
                var shown = other is not null && other.Mean < point.Mean ? other : point;
                yield return new(Words(point.Name), style++, Shown(shown.Temperatures.Select((t, i) => (from.AddSeconds(history.Times[i]), t))));
            }
        }

        private IEnumerable<(DateTime At, double Value)> Air(WeatherSeries air)
        {
            for (var at = from; at <= last; at = at.AddMinutes(15))
            {
                var standard = at.AddHours(-clock.ClockAhead);
                if (air.Covers(standard, standard)) yield return (at, air.At(air.SecondsTo(standard)).Air);
            }
        }

        private (DateTime At, double Value)[] Shown(IEnumerable<(DateTime At, double Value)> points) => [.. points.Where(p => p.At >= from && p.At <= last)];

        private double Y(double celsius) => y.At(units.Temperature.FromBase(celsius));

        private void Probe(int index)
        {
            var (name, trusted, points) = probes[index];
            void At(double x, double atY) => Symbol(index, trusted, x, atY);
            foreach (var (at, value) in points) At(plot.X(at), Y(value));
            plot.ExplainPoint(trusted ? $"read: {name}" : $"read: {name} (left out)", At);
        }

        /// <summary>Circle, square, triangle and so on by probe; hollow where the probe is left out.</summary>
        private void Symbol(int index, bool trusted, double x, double at)
        {
            var (style, r) = (trusted ? FigureStyle.PointPasses : FigureStyle.PointFails, size * 0.24);
            switch (index % 3)
            {
                case 0: plot.Figure.Circle(style, x, at, r, $"probe-{index + 1}"); break;
                case 1: plot.Figure.Box(style, x - r, at - r, x + r, at + r, $"probe-{index + 1}"); break;
                default: plot.Figure.Area(style, $"probe-{index + 1}", new FigurePoint(x, at - r * 1.2), new FigurePoint(x + r * 1.15, at + r), new FigurePoint(x - r * 1.15, at + r)); break;
            }
        }

        private string Describe() => string.Join(" ", curves.Where(c => c.Points.Length > 0).Select(c =>
            $"{SheetWords.Capital(c.Name)}: {units.TemperatureText(c.Points.Min(p => p.Value))} to {units.TemperatureText(c.Points.Max(p => p.Value))}."));
    }
}
