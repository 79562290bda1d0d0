using System.Globalization;
using Slabwright.Core.Joints.Design;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Strip;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Joints;

/// <summary>
/// Cost of a joint against its life. Shape tells the arrangement, filled or hollow whether every limit holds, and the winner wears a ring
/// and its name: nothing is told by colour alone.
/// </summary>
public static class AlternativesChart
{
    /// <summary>Draws the chart.</summary>
    /// <param name="lane">The design of a lane.</param>
    /// <param name="units">Units of bar sizes.</param>
    /// <param name="currency">Currency of the price list.</param>
    /// <param name="options">Width and type size.</param>
    public static Figure Draw(LaneJointDesign lane, JobUnits units, string currency, PlotOptions options)
    {
        ArgumentNullException.ThrowIfNull(lane);
        ArgumentNullException.ThrowIfNull(units);
        ArgumentNullException.ThrowIfNull(options);
        return new Chart(lane, units, currency, options).Draw();
    }

    private sealed class Chart(LaneJointDesign lane, JobUnits units, string currency, PlotOptions options)
    {
        private readonly FigureBuilder figure = new(options.Ruler);
        private readonly double size = options.TextSize;
        private readonly TextBoxes taken = new();

        private double Width => options.Width - size * 11;

        private double Height => Math.Min(options.GreatestHeight, Width * 0.5);

        private double Radius => size * 0.42;

        public Figure Draw()
        {
            var costs = lane.Alternatives.Select(a => (double)a.CostPerJoint).ToList();
            var lives = lane.Alternatives.Select(a => a.Life).Where(double.IsFinite).Append(lane.Conditions.DesignYears).ToList();
            var x = PlotScale.Round(0, lives.Max(), 0, Width, 8);
            var y = PlotScale.Round(0, costs.DefaultIfEmpty(1).Max(), Height, 0, 6);
            PlotAxes.Upright(figure, y, 0, size, $"Bars of one joint, {currency}", Width);
            PlotAxes.Level(figure, x, Height, size, "Years until the faulting limit is reached");
            var beyond = Width + size * 3.2;
            var design = x.At(lane.Conditions.DesignYears);
            figure.Line(FigureStyle.Limit, design, 0, design, Height);
            figure.Text($"design years: {lane.Conditions.DesignYears.ToString("0.#", CultureInfo.InvariantCulture)}", design, -5, size * 0.85, FigureAnchor.Middle, true);
            if (lane.Alternatives.Any(a => double.IsInfinity(a.Life)))
            {
                figure.Line(FigureStyle.Grid, beyond, 0, beyond, Height);
                figure.Text("not reached", beyond, Height + size * 1.3, size * 0.85, FigureAnchor.Middle);
            }

            var points = lane.Alternatives.Select(a => (Alternative: a, X: double.IsInfinity(a.Life) ? beyond : x.At(a.Life), Y: y.At((double)a.CostPerJoint))).ToList();
            foreach (var (a, px, py) in points)
            {
                Mark(a.Layout, px, py, Radius, a.Passes ? FigureStyle.PointPasses : FigureStyle.PointFails);
                taken.Take(px - Radius, py - Radius, Radius * 2, Radius * 2);
            }

            foreach (var (a, px, py) in points.Where(p => p.Alternative == lane.Winner)) DrawWinner(a, px, py);
            Legend();
            return figure.Build($"Cost against life, lane {lane.Lane}", Describe());
        }

        private void DrawWinner(JointAlternative winner, double x, double y)
        {
            figure.Circle(FigureStyle.WinnerRing, x, y, Radius * 2.1, "winner");
            Mark(winner.Layout, x, y, Radius * 1.25, FigureStyle.PointChosen);
            var text = "chosen: " + Name(winner);
            var width = figure.Measure(text, size, true);
            var places = from step in Enumerable.Range(0, 12)
                         from up in new[] { -1, 1 }
                         from left in new[] { x + Radius * 2.8, x - Radius * 2.8 - width, x - width / 2 }
                         select (X: left, Y: y + up * (size * 1.6 + step * size * 1.2) + (up > 0 ? size * 0.8 : 0));
            var inside = places.Where(p => p.X > 2 && p.X + width < Width + size * 6 && p.Y - size > 0 && p.Y < Height - 2).ToArray();
            var free = inside.FirstOrDefault(p => taken.IsFree(p.X - 2, p.Y - size, width + 4, size * 1.4), inside.FirstOrDefault((X: x, Y: y - size * 2)));
            var edge = free.Y < y ? free.Y + size * 0.3 : free.Y - size;
            figure.Line(FigureStyle.Dimension, x, y + (free.Y < y ? -1 : 1) * Radius * 2.1, Math.Clamp(x, free.X, free.X + width), edge);
            figure.Text(text, free.X, free.Y, size, FigureAnchor.Start, true);
            figure.ClearUnderLast();
        }

        /// <summary>Circle: full width. Triangle: wheel paths. Square: no bars.</summary>
        private void Mark(BarLayout? layout, double x, double y, double r, FigureStyle style)
        {
            if (layout is null) figure.Box(style, x - r * 0.9, y - r * 0.9, x + r * 0.9, y + r * 0.9);
            else if (layout.Arrangement == BarArrangement.FullWidth) figure.Circle(style, x, y, r);
            else figure.Area(style, "", new FigurePoint(x, y - r * 1.2), new FigurePoint(x + r * 1.15, y + r * 0.8), new FigurePoint(x - r * 1.15, y + r * 0.8));
        }

        private void Legend()
        {
            var full = lane.Alternatives.FirstOrDefault(a => a.Layout?.Arrangement == BarArrangement.FullWidth)?.Layout;
            var paths = lane.Alternatives.FirstOrDefault(a => a.Layout?.Arrangement == BarArrangement.WheelPaths)?.Layout;
            var y = Height + size * 4.1;
            var x = 0.0;
            foreach (var (layout, name, isThere) in new[] { (full, "full width", full is not null), (paths, "wheel paths", paths is not null), (null, "no bars", lane.Alternatives.Any(a => a.Layout is null)) })
            {
                if (!isThere) continue;
                Mark(layout, x + Radius, y, Radius, FigureStyle.PointPasses);
                Mark(layout, x + Radius * 4, y, Radius, FigureStyle.PointFails);
                figure.Text(name, x + Radius * 6, y + size * 0.35, size * 0.9);
                x += Radius * 6 + figure.Measure(name, size * 0.9) + size * 1.6;
            }

            figure.Text("filled: keeps every limit; hollow: fails one", x, y + size * 0.35, size * 0.9);
        }

        private string Name(JointAlternative a) => a.Layout is { } bars ? JointWords.Of(bars, units) : "no bars";

        private string Describe()
        {
            var passing = lane.Alternatives.Count(a => a.Passes);
            var winner = lane.Winner is { } w ? $"Chosen: {Name(w)} at {JobUnits.Cents(w.CostPerJoint)} {currency} a joint." : "None keeps every limit.";
            return $"{SheetWords.Count(lane.Alternatives.Length, "alternative")} by cost of the bars of one joint and years until the faulting limit; {passing} keep every limit. {winner}";
        }
    }
}
