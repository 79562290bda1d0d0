using System.Globalization;
using Slabwright.Core.Concrete.Heat;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Concrete;

/// <summary>
/// Temperatures of a section through repair, old slabs, base and soil at one time. All times of a history share one range of bands, so
/// that maps can be compared. Depths are drawn larger than lengths, and the axis says how much.
/// </summary>
public static class SectionMap
{
    private const double Soil = 0.25;
    private const double MostStretch = 12;

    /// <summary>Draws the map of one time.</summary>
    /// <param name="history">A section computed with its fields.</param> <param name="time">Which of <see cref="TemperatureHistory.Fields"/>.</param>
    /// <param name="clock">Clock of the night.</param> <param name="units">Units of the project.</param> <param name="options">Width and type size.</param>
    /// <param name="ground">Layers below the slab; null: the usual.</param>
    /// <exception cref="ArgumentException">The history has no section or no fields.</exception>
    public static Figure Draw(TemperatureHistory history, int time, NightClock clock, JobUnits units, PlotOptions options, IReadOnlyList<GroundLayer>? ground = null)
    {
        ArgumentNullException.ThrowIfNull(history);
        ArgumentNullException.ThrowIfNull(clock);
        ArgumentNullException.ThrowIfNull(units);
        ArgumentNullException.ThrowIfNull(options);
        if (history.Along.Length < 2 || history.Fields.IsEmpty) throw new ArgumentException("A map needs a section computed with its fields.", nameof(history));
        ArgumentOutOfRangeException.ThrowIfNegative(time);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(time, history.Fields.Length);
        return new Map(history, time, clock, units, options, ground ?? GroundLayer.Usual).Draw();
    }

    private sealed class Map
    {
        private readonly TemperatureHistory history;
        private readonly int time;
        private readonly NightClock clock;
        private readonly JobUnits units;
        private readonly FigureBuilder figure;
        private readonly double size;
        private readonly double thickness;
        private readonly double halfLength;
        private readonly double baseDepth;
        private readonly double bottom;
        private readonly int rows;
        private readonly double scale;
        private readonly double stretch;

        public Map(TemperatureHistory history, int time, NightClock clock, JobUnits units, PlotOptions options, IReadOnlyList<GroundLayer> ground)
        {
            (this.history, this.time, this.clock, this.units, size) = (history, time, clock, units, options.TextSize);
            figure = new FigureBuilder(options.Ruler);
            thickness = history.Point("bottom").Depth;
            halfLength = history.Points.FirstOrDefault(p => p.Name == "edge") is { } edge ? edge.Along + SlabSection.ProbeInset : 0;
            baseDepth = thickness + (ground.Count > 0 ? ground[0].Thickness : 0);
            rows = Math.Max(2, history.Depths.Count(d => d <= baseDepth + Soil));
            bottom = history.Depths[rows - 1];
            scale = (options.Width - size * 12) / (history.Along[^1] - history.Along[0]);
            var plain = bottom * scale;
            stretch = Math.Clamp(Math.Floor(Math.Min(options.GreatestHeight, options.Width * 0.4) / plain * 2) / 2, 1, MostStretch);
        }

        private double Width => (history.Along[^1] - history.Along[0]) * scale;

        private double Height => Y(bottom);

        public Figure Draw()
        {
            var levels = ContourDrawing.LevelsOf(history.Fields.SelectMany(Window));
            var contours = new ContourDrawing(figure, levels, Width, Height, size);
            contours.Draw(new ContourRings([.. history.Along.Select(X)], [0, .. history.Depths.Take(rows).Select(Y)], Values()));
            Outlines(contours);
            contours.Label();
            Axes();
            contours.Key(units.Temperature.Symbol);
            var clockTime = clock.Of(history.Placed.AddSeconds(history.Fields[time].Time));
            var hours = history.Fields[time].Time / 3600;
            figure.Text($"{NightClock.Full(clockTime)}, {JobUnits.Number(hours, 1)} h after placing", 0, -size * 2, size, FigureAnchor.Start, true);
            return figure.Build("Temperatures in the section", Describe(clockTime, hours));
        }

        private IEnumerable<double> Window(FieldAt field)
        {
            var depths = history.Depths.Length;
            for (var i = 0; i < field.Temperatures.Length; i++)
            {
                if (i % depths < rows) yield return units.Temperature.FromBase(field.Temperatures[i]);
            }
        }

        /// <summary>Values of the grid, row by row; the surface drawn straight on from the two cells below it.</summary>
        private double[] Values()
        {
            var (columns, depths, field) = (history.Along.Length, history.Depths.Length, history.Fields[time].Temperatures);
            var values = new double[columns * (rows + 1)];
            var share = history.Depths[0] / (history.Depths[1] - history.Depths[0]);
            for (var c = 0; c < columns; c++)
            {
                var (first, second) = (field[c * depths], field[c * depths + 1]);
                values[c] = units.Temperature.FromBase(first + (first - second) * share);
                for (var r = 0; r < rows; r++) values[(r + 1) * columns + c] = units.Temperature.FromBase(field[c * depths + r]);
            }

            return values;
        }

        private void Outlines(ContourDrawing contours)
        {
            figure.Line(FigureStyle.Surface, 0, Y(thickness), Width, Y(thickness));
            if (baseDepth < bottom) figure.Line(FigureStyle.CurveBefore, 0, Y(baseDepth), Width, Y(baseDepth));
            var (left, right) = (X(-halfLength), X(halfLength));
            foreach (var x in new[] { left, right }.Where(x => x > 1 && x < Width - 1)) figure.Line(FigureStyle.BoundaryCut, x, 0, x, Y(thickness));
            Name("repair", (left + right) / 2, right - left);
            Name("old slab", left / 2, left);
            Name("old slab", (right + Width) / 2, Width - right);
            Layer("slab", Y(thickness) / 2);
            if (baseDepth < bottom) Layer("base", (Y(thickness) + Y(baseDepth)) / 2);
            Layer(baseDepth < bottom ? "soil" : "ground", (Y(Math.Min(baseDepth, bottom)) + Height) / 2);

            void Name(string text, double x, double room)
            {
                if (room > figure.Measure(text, size * 0.9)) figure.Text(text, x, -4, size * 0.9, FigureAnchor.Middle);
            }

            void Layer(string text, double y)
            {
                var (wide, type) = (figure.Measure(text, size * 0.85), size * 0.85);
                figure.Text(text, 5, y + type * 0.35, type, FigureAnchor.Start, false, FigureStyle.Note);
                figure.ClearUnderLast();
                contours.Keep(0, y - type, wide + 12, type * 2);
            }
        }

        private void Axes()
        {
            figure.Line(FigureStyle.Axis, new FigurePoint(0, 0), new FigurePoint(Width, 0), new FigurePoint(Width, Height), new FigurePoint(0, Height), new FigurePoint(0, 0));
            var along = PlotScale.Exact(units.Length.FromBase(history.Along[0]), units.Length.FromBase(history.Along[^1]), 0, Width, 8);
            PlotAxes.Level(figure, along, Height, size, $"Along the road from the middle of the repair, {units.Length.Symbol}");
            var depth = PlotScale.Exact(0, units.Thickness.FromBase(bottom), 0, Height, Math.Max(2, (int)(Height / 36)));
            var times = stretch > 1 ? string.Create(CultureInfo.InvariantCulture, $" (×{stretch:0.#})") : "";
            PlotAxes.Upright(figure, depth, 0, size, $"Depth, {units.Thickness.Symbol}{times}");
        }

        private double X(double along) => (along - history.Along[0]) * scale;

        private double Y(double depth) => depth * scale * stretch;

        private string Describe(DateTime clockTime, double hours)
        {
            var values = Window(history.Fields[time]).ToArray();
            return $"Temperatures of repair, old slabs, base and soil on {NightClock.Full(clockTime)}, {JobUnits.Number(hours, 1)} h after placing: from {JobUnits.Number(values.Min())} to {JobUnits.Number(values.Max())} {units.Temperature.Symbol}. Depths are drawn {JobUnits.Plain(stretch, 1)} times as large as lengths.";
        }
    }
}
