using System.Globalization;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Joints;

/// <summary>A column for each bar at its place along the joint, its number below and its value at its end.</summary>
internal static class BarPlot
{
    private const double AspectRatio = 0.36;
    private const double WidestColumn = 34;

    public static Figure Draw(BarResponse bars, PlotOptions options)
    {
        var figure = new FigureBuilder(options.Ruler);
        var size = options.TextSize;
        var width = options.Width - size * 5 - (bars.Limit is { } l ? figure.Measure(l.Name, size * 0.85, true) : size);
        var height = Math.Min(width * AspectRatio, options.GreatestHeight);
        var x = PlotScale.Exact(0, bars.LengthUnit.FromBase(bars.LaneWidth), 0, width, 8);
        var columns = new Columns(bars, x, figure, size);
        var y = columns.ScaleOf(height);
        PlotAxes.Upright(figure, y, 0, size, $"{bars.Quantity}, {JobUnits.Symbol(bars.Unit)}", width);
        if (bars.Limit is { } named)
        {
            figure.Line(FigureStyle.Limit, 0, y.At(columns.Limit), width, y.At(columns.Limit));
            figure.Text(named.Name, width + 4, y.At(columns.Limit) + size * 0.3, size * 0.85, FigureAnchor.Start, true);
        }

        var below = height + size * 1.6;
        columns.Draw(y, below);
        figure.Line(FigureStyle.Axis, 0, y.At(0), width, y.At(0));
        foreach (var wheel in bars.Wheels)
        {
            var at = x.At(bars.LengthUnit.FromBase(wheel));
            figure.Area(FigureStyle.PointPasses, "wheel", new FigurePoint(at, -2), new FigurePoint(at - 5, -12), new FigurePoint(at + 5, -12));
            figure.Text("wheel", at, -15, size * 0.85, FigureAnchor.Middle);
        }

        figure.Text("bar", -6, below, size * 0.9, FigureAnchor.End);
        PlotAxes.Level(figure, x, below + size * 0.5, size, $"From the lane’s left edge, {bars.LengthUnit.Symbol}");
        return figure.Build(bars.Title, Describe(bars));
    }

    private static string Describe(BarResponse bars)
    {
        var words = bars.Values.Select((v, i) => string.Create(CultureInfo.InvariantCulture, $"bar {i + 1} {bars.Unit.FromBase(v):G4}"));
        return $"{bars.Quantity} in {JobUnits.Symbol(bars.Unit)}: {string.Join(", ", words)}.{(bars.Limit is { } l ? $" {l.Name}." : "")}";
    }

    /// <summary>The columns with their values; turned where the bars stand too close for them.</summary>
    private sealed class Columns
    {
        private readonly FigureBuilder figure;
        private readonly double size;
        private readonly double[] values;
        private readonly double[] at;
        private readonly string[] texts;
        private readonly double half;
        private readonly bool isRoomy;

        public Columns(BarResponse bars, PlotScale x, FigureBuilder figure, double size)
        {
            (this.figure, this.size) = (figure, size);
            values = [.. bars.Values.Select(bars.Unit.FromBase)];
            Limit = bars.Limit is { } limit ? bars.Unit.FromBase(limit.Value) : double.NaN;
            at = [.. bars.Offsets.Select(o => x.At(bars.LengthUnit.FromBase(o)))];
            var gap = at.Length > 1 ? Enumerable.Range(1, at.Length - 1).Min(i => at[i] - at[i - 1]) : WidestColumn * 2;
            half = Math.Min(WidestColumn, gap * 0.6) / 2;
            var decimals = Math.Clamp((int)Math.Ceiling(1 - Math.Log10(PlotScale.StepFor(Least, Greatest, 5))), 0, 6);
            texts = [.. values.Select(v => JobUnits.Number(v, decimals).Replace('-', '−'))];
            isRoomy = texts.All(t => Measure(t) <= gap - 3);
        }

        public double Limit { get; }

        private double Least => values.Where(double.IsFinite).Append(0).Min();

        private double Greatest => values.Where(double.IsFinite).Append(0).Append(double.IsNaN(Limit) ? 0 : Limit).Max();

        /// <summary>A scale with room for the values above and below the columns.</summary>
        public PlotScale ScaleOf(double height)
        {
            var head = isRoomy ? size * 1.3 : texts.Max(Measure) + 8;
            var room = (Greatest - Least) * head / Math.Max(height - 2 * head, height * 0.3);
            return PlotScale.Round(Least - (Least < 0 ? room : 0), Greatest + room, height, 0, 5);
        }

        public void Draw(PlotScale y, double below)
        {
            for (var i = 0; i < at.Length; i++)
            {
                figure.Text((i + 1).ToString(CultureInfo.InvariantCulture), at[i], below, size * 0.9, FigureAnchor.Middle, true);
                if (!double.IsFinite(values[i])) continue;
                var isBeyond = Math.Abs(values[i]) > Limit;
                var (end, zero, up) = (y.At(values[i]), y.At(0), values[i] >= 0);
                figure.Box(isBeyond ? FigureStyle.ColumnBeyond : FigureStyle.Column, at[i] - half, Math.Min(end, zero), at[i] + half, Math.Max(end, zero), $"bar-{i + 1}");
                if (isRoomy) figure.Text(texts[i], at[i], end + (up ? -3 : size * 0.85), size * 0.85, FigureAnchor.Middle, isBeyond);
                else figure.TurnedText(texts[i], at[i], end + (up ? -1 : 1) * (Measure(texts[i]) / 2 + 3), size * 0.85, FigureStyle.Note, isBeyond);
                figure.ClearUnderLast();
            }
        }

        private double Measure(string text) => figure.Measure(text, size * 0.85, true);
    }
}
