using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;

namespace Slabwright.Sheets.Concrete;

/// <summary>The frame of every plot over the hours of a night: clock axis with its days, named times above, named levels, legend below.</summary>
internal sealed class NightPlot
{
    private const double Aspect = 0.5;

    private readonly DateTime from;
    private readonly DateTime to;
    private readonly double size;
    private readonly List<NightMark> marks = [];
    private readonly List<(string Name, Action<double, double> Swatch)> legend = [];

    /// <param name="from">First clock time shown.</param> <param name="to">Last clock time shown.</param>
    /// <param name="options">Width and type size.</param> <param name="right">Room right of the plot for names of curves.</param>
    public NightPlot(DateTime from, DateTime to, PlotOptions options, double right)
    {
        (this.from, this.to, size) = (from, to, options.TextSize);
        Figure = new FigureBuilder(options.Ruler);
        Width = options.Width - size * 5.2 - Math.Max(right, size * 1.5);
        Height = Math.Min(Width * Aspect, options.GreatestHeight);
    }

    public FigureBuilder Figure { get; }

    public double Width { get; }

    public double Height { get; }

    /// <summary>Place of a clock time.</summary>
    public double X(DateTime clock) => Width * (clock - from).TotalHours / (to - from).TotalHours;

    public bool Shows(DateTime clock) => clock >= from && clock <= to;

    /// <summary>The clock axis: hours, a line at midnight, and the day below each stretch.</summary>
    public void DrawClock()
    {
        var step = StepHours();
        for (var tick = NextHour(step); tick <= to; tick = tick.AddHours(step))
        {
            var x = X(tick);
            Figure.Line(tick.Hour == 0 ? FigureStyle.CentreLine : FigureStyle.Grid, x, 0, x, Height);
            Figure.Line(FigureStyle.Axis, x, Height, x, Height + 4);
            Figure.Text(NightClock.Hour(tick), x, Height + 5 + size * 0.85, size * 0.9, FigureAnchor.Middle);
        }

        Figure.Line(FigureStyle.Axis, 0, Height, Width, Height);
        DrawDays(Height + 7 + size * 2);
        Figure.Text($"Clock time, placed at {NightClock.Hour(from)}", Width / 2, Height + 10 + size * 3.2, size, FigureAnchor.Middle);
    }

    /// <summary>An upright line with its name above the plot, drawn by <see cref="DrawMarks"/>; nothing for times not shown.</summary>
    public void Mark(DateTime clock, string name, FigureStyle style)
    {
        if (Shows(clock)) marks.Add(new NightMark(X(clock), name, style, Figure.Measure(name, size * 0.9, true)));
    }

    /// <summary>The upright lines, their names placed so that none lies on another nor on a line.</summary>
    public void DrawMarks()
    {
        var type = size * 0.9;
        foreach (var (mark, left, row) in NightMarks.Lay(marks, Width))
        {
            var y = -5.0 - row * type * 1.3;
            Figure.Line(mark.Style, mark.X, y + 3, mark.X, Height);
            Figure.Text(mark.Name, left, y, type, FigureAnchor.Start, true);
        }
    }

    /// <summary>A level line with its name at the left, on it or, near the top where names of upright lines stand, below it.</summary>
    public void Level(double y, string name, FigureStyle style = FigureStyle.Limit, bool below = false)
    {
        Figure.Line(style, 0, y, Width, y);
        Figure.Text(name, 8, below ? y + size * 1.1 : y - 5, size * 0.9, FigureAnchor.Start, true);
        Figure.ClearUnderLast();
    }

    /// <summary>Names of curves right of the plot, moved apart where they would touch, with a line to the end of each.</summary>
    public void Names(IEnumerable<(double X, double Y, string Name)> ends)
    {
        var rows = ends.OrderBy(e => e.Y).ToArray();
        var (type, least) = (size * 0.85, size * 1.05);
        var at = rows.Select(r => r.Y).ToArray();
        for (var pass = 0; pass < 60; pass++)
        {
            for (var i = 1; i < at.Length; i++)
            {
                var lack = least - (at[i] - at[i - 1]);
                if (lack <= 0) continue;
                at[i - 1] -= lack / 2;
                at[i] += lack / 2;
            }

            if (at.Length > 0 && at[^1] > Height) at[^1] = Height;
            if (at.Length > 0 && at[0] < 0) at[0] = 0;
        }

        for (var i = 1; i < at.Length; i++) at[i] = Math.Max(at[i], at[i - 1] + least);
        for (var i = 0; i < rows.Length; i++)
        {
            Figure.Line(FigureStyle.Extension, rows[i].X, rows[i].Y, Width + 9, at[i]);
            Figure.Text(rows[i].Name, Width + 12, at[i] + type * 0.35, type);
        }
    }

    /// <summary>A line of the legend.</summary>
    public void Explain(string name, FigureStyle style) => legend.Add((name, (x, y) => Figure.Line(style, x, y, x + size * 2.2, y)));

    /// <summary>A box of the legend.</summary>
    public void ExplainBox(string name, FigureStyle style) => legend.Add((name, (x, y) => Figure.Box(style, x, y - size * 0.45, x + size * 2.2, y + size * 0.45)));

    /// <summary>A point of the legend.</summary>
    public void ExplainPoint(string name, Action<double, double> point) => legend.Add((name, (x, y) => point(x + size * 1.1, y)));

    /// <summary>The legend, below the axis, in as many rows as it needs.</summary>
    public void DrawLegend()
    {
        var (x, y, most, lead) = (0.0, Height + 12 + size * 4.6, Width + size * 2, size * 2.7);
        foreach (var (name, swatch) in legend)
        {
            var lines = FigureWords.Wrap(name, size * 0.9, most - lead, Figure.Measure);
            var wide = lead + lines.Max(l => Figure.Measure(l, size * 0.9));
            if (x > 0 && x + wide > most) (x, y) = (0, y + size * 1.5);
            swatch(x, y);
            for (var i = 0; i < lines.Count; i++) Figure.Text(lines[i], x + lead, y + size * (0.33 + 1.15 * i), size * 0.9);
            y += size * 1.15 * (lines.Count - 1);
            x = lines.Count > 1 ? most : x + wide + size * 1.6;
        }
    }

    /// <summary>A curve through values at clock times.</summary>
    public void Curve(FigureStyle style, IEnumerable<(DateTime At, double Y)> points)
    {
        ImmutableArray<FigurePoint> line = [.. points.Select(p => new FigurePoint(X(p.At), p.Y))];
        if (line.Length > 1) Figure.Line(style, line);
    }

    private int StepHours()
    {
        var wide = Figure.Measure("00:00", size * 0.9) + size;
        foreach (var step in new[] { 1, 2, 3, 6, 12, 24 })
        {
            if (Width / (to - from).TotalHours * step >= wide) return step;
        }

        return 48;
    }

    private DateTime NextHour(int step)
    {
        var hours = Math.Ceiling((from - from.Date).TotalHours / step - 1e-9) * step;
        return from.Date.AddHours(hours);
    }

    private void DrawDays(double y)
    {
        for (var day = from.Date; day < to; day = day.AddDays(1))
        {
            var (left, right) = (X(day < from ? from : day), X(day.AddDays(1) > to ? to : day.AddDays(1)));
            if (day > from) Figure.Line(FigureStyle.Axis, left, Height + 5 + size * 1.2, left, y + 3);
            foreach (var form in new[] { "ddd d MMM yyyy", "ddd d MMM", "d MMM", "ddd" })
            {
                var name = day.ToString(form, CultureInfo.InvariantCulture);
                if (Figure.Measure(name, size * 0.9) > right - left - 6) continue;
                Figure.Text(name, (left + right) / 2, y, size * 0.9, FigureAnchor.Middle, false, FigureStyle.QuietNote);
                break;
            }
        }
    }
}

/// <summary>A named time above a plot.</summary>
/// <param name="X">Its place.</param> <param name="Name">Its name.</param> <param name="Style">Its line.</param> <param name="Wide">Width of the name.</param>
internal sealed record NightMark(double X, string Name, FigureStyle Style, double Wide);

/// <summary>Places names of upright lines above a plot.</summary>
internal static class NightMarks
{
    private const double Gap = 4;

    /// <summary>Left end and row (0 the lowest) of each name: the fewest rows in which no name lies on another or on a line that rises through its row.</summary>
    public static IReadOnlyList<(NightMark Mark, double Left, int Row)> Lay(IReadOnlyList<NightMark> marks, double width)
    {
        var best = (Cost: double.PositiveInfinity, Rows: Array.Empty<(NightMark Mark, double Left, int Row)>());
        Try(marks, width, [], 0, ref best);
        return best.Rows;
    }

    private static void Try(IReadOnlyList<NightMark> marks, double width, List<(NightMark Mark, double Left, int Row)> laid, double cost, ref (double Cost, (NightMark, double, int)[] Rows) best)
    {
        if (cost >= best.Cost) return;
        if (laid.Count == marks.Count)
        {
            best = (cost, [.. laid]);
            return;
        }

        var mark = marks[laid.Count];
        for (var row = 0; row < marks.Count; row++)
        {
            foreach (var (share, more) in new[] { (0.5, 0.0), (1.0, 0.3), (0.0, 0.3) })
            {
                var left = Math.Clamp(mark.X - mark.Wide * share + (share - 0.5) * -2 * Gap, 0, Math.Max(0, width - mark.Wide));
                var next = (mark, left, row);
                if (laid.Any(l => Clash(l, next) || Clash(next, l))) continue;
                laid.Add(next);
                Try(marks, width, laid, cost + row + more, ref best);
                laid.RemoveAt(laid.Count - 1);
            }
        }
    }

    private static bool Clash((NightMark Mark, double Left, int Row) a, (NightMark Mark, double Left, int Row) b)
    {
        if (a.Row == b.Row) return a.Left < b.Left + b.Mark.Wide + Gap && b.Left < a.Left + a.Mark.Wide + Gap;
        return b.Row > a.Row && b.Mark.X > a.Left - Gap / 2 && b.Mark.X < a.Left + a.Mark.Wide + Gap / 2;
    }
}
