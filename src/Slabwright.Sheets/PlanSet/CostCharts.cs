using System.Collections.Immutable;
using System.Globalization;
using SkiaSharp;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Quantities;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Strip;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>Charts of the cost: range bar, distribution, drivers, and the curve from spot repairs to full replacement.</summary>
internal static class CostCharts
{
    private const string Bar = "#c9cdd1";

    /// <summary>P10 to P90 on one line with the median and the bid total.</summary>
    public static void RangeBar(PaperPad pad, SKRect box, CostRange range, string currency, decimal bid)
    {
        var scale = new ValueScale((double)Math.Min(range.P10, bid), (double)Math.Max(range.P90, bid), box.Left + 34, box.Right - 34);
        var y = box.MidY;
        pad.Line(scale.At(range.P10), y, scale.At(range.P90), y, 7, Bar);
        foreach (var (name, value) in new[] { ("P10", range.P10), ("P50", range.P50), ("P90", range.P90) })
        {
            var x = scale.At(value);
            pad.Line(x, y - 6, x, y + 6, name == "P50" ? 2 : 1.2f);
            pad.Text(name, x, y - 9, 8, Face.Bold, PaperPad.Ink, Side.Centre);
            pad.Text(Short(value), x, y + 15, 8, Face.Text, PaperPad.Ink, Side.Centre);
        }

        pad.Text(currency, box.Right, box.Bottom + 1, 7, Face.Text, PaperPad.Quiet, Side.Right);
        Diamond(pad, scale.At(bid), y, 4);
    }

    /// <summary>Histogram of the trials with P10, P50, P90 and the bid total.</summary>
    public static void Distribution(PaperPad pad, SKRect box, CostRange range, string currency, decimal bid)
    {
        var costs = range.Costs;
        if (costs.IsEmpty) return;
        var scale = new ValueScale((double)costs[0], (double)costs[^1], box.Left + 4, box.Right - 4);
        const int bins = 40;
        var counts = new int[bins];
        foreach (var cost in costs) counts[Math.Clamp((int)(scale.Share(cost) * bins), 0, bins - 1)]++;
        var (bottom, top) = (box.Bottom - 26, box.Top + 14);
        var width = (box.Width - 8) / bins;
        for (var i = 0; i < bins; i++)
        {
            var height = (bottom - top) * counts[i] / Math.Max(1, counts.Max());
            pad.Box(new SKRect(box.Left + 4 + i * width, bottom - height, box.Left + 4 + (i + 1) * width - 0.7f, bottom), Bar);
        }

        pad.Line(box.Left, bottom, box.Right, bottom, 0.8f);
        foreach (var (name, value) in new[] { ("P10", range.P10), ("P50", range.P50), ("P90", range.P90) })
        {
            var x = scale.At(value);
            pad.Line(x, top - 2, x, bottom + 3, 0.9f);
            pad.Text(name, x, top - 5, 7.6f, Face.Bold, PaperPad.Ink, Side.Centre);
            pad.Text(Short(value), x, bottom + 11, 7.6f, Face.Text, PaperPad.Ink, Side.Centre);
        }

        if (bid >= costs[0] && bid <= costs[^1]) Diamond(pad, scale.At(bid), bottom, 4);
        pad.Text($"{currency}; height: trials of {costs.Length.ToString("N0", CultureInfo.InvariantCulture)}; diamond: bid schedule", box.Left, box.Bottom - 3, 7, Face.Text, PaperPad.Quiet);
    }

    /// <summary>What moves the cost: median cost with each driver at its P10 and P90, widest first.</summary>
    public static void Drivers(PaperPad pad, SKRect box, CostRange range, string currency)
    {
        if (range.Drivers.IsEmpty) return;
        var low = (double)Math.Min(range.P50, range.Drivers.Min(d => Math.Min(d.LowCost, d.HighCost)));
        var high = (double)Math.Max(range.P50, range.Drivers.Max(d => Math.Max(d.LowCost, d.HighCost)));
        var scale = new ValueScale(low, high, box.Left + 150, box.Right - 46);
        var y = box.Top + 14;
        foreach (var driver in range.Drivers)
        {
            var (a, b) = (scale.At(driver.LowCost), scale.At(driver.HighCost));
            pad.Text(TextFlow.Fit(pad.Fonts, driver.Name, Face.Text, 8.4f, 102), box.Left, y + 3, 8.4f);
            pad.Box(new SKRect(Math.Min(a, b), y - 5, Math.Max(a, b), y + 5), Bar);
            pad.Text(Short(driver.LowCost), Math.Min(a, b) - 3, y + 3, 7.4f, Face.Text, PaperPad.Ink, Side.Right);
            pad.Text(Short(driver.HighCost), Math.Max(a, b) + 3, y + 3, 7.4f);
            y += 17;
        }

        var median = scale.At(range.P50);
        pad.Line(median, box.Top + 5, median, y - 7, 0.9f, PaperPad.Ink, 3, 2);
        pad.Text("median", median, box.Top + 2, 7, Face.Text, PaperPad.Quiet, Side.Centre);
        pad.Text(currency, box.Left, box.Bottom - 3, 7, Face.Text, PaperPad.Quiet);
    }

    /// <summary>Height the drivers need, pt.</summary>
    public static float DriversHeight(CostRange range) => 26 + range.Drivers.Length * 17;

    /// <summary>Least cost against the length replaced, from the spot plan to all of it.</summary>
    public static void Curve(PaperPad pad, SKRect box, ImmutableArray<CostCurvePoint> points, JobUnits units, string currency)
    {
        if (points.Length < 2) return;
        var (left, right, top, bottom) = (box.Left + 46, box.Right - 12, box.Top + 8, box.Bottom - 28);
        var x = new ValueScale(0, points.Max(p => p.LengthReplaced), left, right);
        var y = new ValueScale(0, (double)points.Max(p => p.Cost), bottom, top);
        for (var i = 0; i <= 4; i++)
        {
            var (cost, length) = (y.Last * i / 4, x.Last * i / 4);
            pad.Line(left, y.At(cost), right, y.At(cost), 0.3f, PaperPad.Rule);
            pad.Text(Short((decimal)cost), left - 4, y.At(cost) + 2.6f, 7.4f, Face.Text, PaperPad.Ink, Side.Right);
            pad.Text(units.WholeLength(length), x.At(length), bottom + 10, 7.4f, Face.Text, PaperPad.Ink, i == 4 ? Side.Right : Side.Centre);
        }

        using var builder = new SKPathBuilder();
        builder.MoveTo(x.At(points[0].LengthReplaced), y.At((double)points[0].Cost));
        foreach (var point in points.Skip(1)) builder.LineTo(x.At(point.LengthReplaced), y.At((double)point.Cost));
        using var path = builder.Detach();
        pad.Path(path, null, StripInk.Removal, 1.6f);
        foreach (var point in points) pad.Dot(x.At(point.LengthReplaced), y.At((double)point.Cost), 1.8f, "#ffffff", StripInk.Removal, 1);
        pad.Line(left, bottom, right, bottom, 0.8f);
        pad.Text($"Lane length replaced; cost in {currency}", left, box.Bottom - 5, 7, Face.Text, PaperPad.Quiet);
    }

    private static void Diamond(PaperPad pad, float x, float y, float size)
    {
        using var builder = new SKPathBuilder();
        builder.MoveTo(x, y - size);
        builder.LineTo(x + size, y);
        builder.LineTo(x, y + size);
        builder.LineTo(x - size, y);
        builder.Close();
        using var path = builder.Detach();
        pad.Path(path, StripInk.Removal, "#ffffff", 0.8f);
    }

    /// <summary>Money in thousands or millions with three or four figures.</summary>
    private static string Short(decimal value) => value switch
    {
        >= 1_000_000 => (value / 1_000_000).ToString("0.00", CultureInfo.InvariantCulture) + " M",
        >= 10_000 => (value / 1000).ToString("0", CultureInfo.InvariantCulture) + " k",
        _ => value.ToString("N0", CultureInfo.InvariantCulture),
    };

    /// <summary>Maps values to paper.</summary>
    private readonly record struct ValueScale(double First, double Last, float Start, float End)
    {
        public double Share(decimal value) => Last > First ? ((double)value - First) / (Last - First) : 0.5;

        public float At(decimal value) => Start + (End - Start) * (float)Share(value);

        public float At(double value) => Start + (End - Start) * (float)(Last > First ? (value - First) / (Last - First) : 0.5);
    }
}
