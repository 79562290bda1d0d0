using Slabwright.Core.Concrete.Opening;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Strip;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Concrete;

/// <summary>Cost of a mix against its chance to open by the deadline: filled where the chance is enough, ringed the cheapest of those.</summary>
public static class MixComparisonPlot
{
    /// <summary>Draws the plot.</summary>
    /// <param name="mixes">Mixes, each on its night.</param> <param name="confidence">Chance asked for.</param> <param name="units">Units of the project.</param>
    /// <param name="currency">Currency of the price list.</param> <param name="options">Width and type size.</param>
    public static Figure Draw(IReadOnlyList<MixNight> mixes, double confidence, JobUnits units, string currency, PlotOptions options)
    {
        ArgumentNullException.ThrowIfNull(mixes);
        ArgumentNullException.ThrowIfNull(units);
        ArgumentNullException.ThrowIfNull(options);
        return new Plot(mixes, confidence, units, currency, options).Draw();
    }

    private sealed class Plot(IReadOnlyList<MixNight> mixes, double confidence, JobUnits units, string currency, PlotOptions options)
    {
        private readonly FigureBuilder figure = new(options.Ruler);
        private readonly double size = options.TextSize;
        private readonly TextBoxes taken = new();
        private readonly bool isOneNight = mixes.Select(m => m.Night.Day).Distinct().Count() < 2;
        private readonly MixNight? cheapest = MixChoice.Cheapest(mixes, confidence);

        private double Width => options.Width - size * 7;

        private double Height => Math.Min(options.GreatestHeight, Width * 0.45);

        private double Radius => size * 0.42;

        public Figure Draw()
        {
            var shown = mixes.Where(m => m.ChanceByDeadline is not null && m.CostPerCubicMetre is not null).ToList();
            var x = PlotScale.Round(0, 100, 0, Width, 10);
            var y = PlotScale.Round(0, shown.Select(Cost).DefaultIfEmpty(1).Max() * 1.08, Height, 0, 6);
            PlotAxes.Upright(figure, y, 0, size, $"Concrete, {currency} / {JobUnits.Symbol(units.Volume)}", Width);
            PlotAxes.Level(figure, x, Height, size, "Chance to open by the deadline, %");
            var asked = x.At(100 * confidence);
            var text = $"asked for: {JobUnits.Plain(100 * confidence, 1)} %";
            figure.Line(FigureStyle.Limit, asked, 0, asked, Height);
            figure.Text(text, Math.Min(asked, Width - figure.Measure(text, size * 0.9, true) / 2 + size), -5, size * 0.9, FigureAnchor.Middle, true);
            var points = shown.Select(m => (Mix: m, X: x.At(100 * m.ChanceByDeadline!.Value), Y: y.At(Cost(m)))).ToList();
            foreach (var (mix, px, py) in points.OrderBy(p => p.Mix != cheapest))
            {
                if (mix == cheapest) figure.Circle(FigureStyle.WinnerRing, px, py, Radius * 2, "cheapest");
                var opens = MixChoice.Opens(mix, confidence);
                figure.Circle(mix == cheapest ? FigureStyle.PointChosen : opens ? FigureStyle.PointPasses : FigureStyle.PointFails, px, py, Radius, $"mix-{mix.Mix.Id}");
                taken.Take(px - Radius * 2, py - Radius * 2, Radius * 4, Radius * 4);
            }

            foreach (var (mix, px, py) in points.OrderBy(p => p.Y)) Name(mix, px, py);
            Words(shown.Count > 0);
            return figure.Build("Mixes: cost against the chance to open", Describe());
        }

        private double Cost(MixNight mix) => (double)mix.CostPerCubicMetre!.Value * units.Volume.Factor;

        private void Name(MixNight mix, double x, double y)
        {
            var text = NameOf(mix);
            var (wide, type) = (figure.Measure(text, size * 0.9, mix == cheapest), size * 0.9);
            var places = from step in Enumerable.Range(0, 10)
                         from up in step == 0 ? new[] { 0 } : [-1, 1]
                         from left in new[] { x + Radius * 2.6, x - Radius * 2.6 - wide, x - wide / 2 }
                         select (X: left, Y: y + up * step * type * 0.8 + type * 0.35);
            var inside = places.Where(p => p.X > 2 && p.X + wide < Width + size && p.Y - type > 0 && p.Y < Height - 2).ToArray();
            var free = inside.FirstOrDefault(p => taken.IsFree(p.X - 1, p.Y - type * 0.8, wide + 2, type * 1.05), (X: x - wide - Radius * 2.6, Y: y + type * 0.35));
            if (Math.Abs(free.Y - type * 0.35 - y) > type) figure.Line(FigureStyle.Extension, x, y, Math.Clamp(x, free.X, free.X + wide), free.Y - type * 0.35);
            taken.Take(free.X - 1, free.Y - type * 0.8, wide + 2, type * 1.05);
            figure.Text(text, free.X, free.Y, type, FigureAnchor.Start, mix == cheapest);
            figure.ClearUnderLast();
        }

        private string NameOf(MixNight mix) => isOneNight ? mix.Mix.Name : $"{mix.Mix.Name}, {mix.Night.Day.ToString("d MMM", System.Globalization.CultureInfo.InvariantCulture)}";

        private void Words(bool any)
        {
            var y = Height + size * 4.2;
            if (any)
            {
                foreach (var (style, text) in Legend())
                {
                    if (style == FigureStyle.WinnerRing) figure.Circle(style, Radius * 2, y, Radius * 1.6);
                    figure.Circle(style == FigureStyle.WinnerRing ? FigureStyle.PointChosen : style, Radius * 2, y, Radius * (style == FigureStyle.WinnerRing ? 0.8 : 1));
                    figure.Text(text, Radius * 5, y + size * 0.33, size * 0.9);
                    y += size * 1.5;
                }
            }

            foreach (var line in Left().SelectMany(t => FigureWords.Wrap(t, size * 0.9, Width, options.Ruler)))
            {
                figure.Text(line, 0, y + size * 0.33, size * 0.9);
                y += size * 1.35;
            }
        }

        private IEnumerable<(FigureStyle Style, string Text)> Legend()
        {
            var asked = $"{JobUnits.Plain(100 * confidence, 1)} %";
            if (cheapest is not null) yield return (FigureStyle.WinnerRing, $"cheapest that opens by the deadline with {asked}");
            if (mixes.Any(m => m != cheapest && MixChoice.Opens(m, confidence))) yield return (FigureStyle.PointPasses, $"opens by the deadline with {asked}");
            if (mixes.Any(m => m.ChanceByDeadline is not null && !MixChoice.Opens(m, confidence))) yield return (FigureStyle.PointFails, $"does not open by the deadline with {asked}");
        }

        /// <summary>What has no place on the plot.</summary>
        private IEnumerable<string> Left()
        {
            var bare = mixes.Where(m => m.ChanceByDeadline is not null && m.CostPerCubicMetre is null).Select(m => $"{NameOf(m)} ({ChanceWords.Of(m.ChanceByDeadline!.Value)})").ToArray();
            if (bare.Length > 0) yield return $"No price: {string.Join(", ", bare)}.";
            var none = mixes.Where(m => m.ChanceByDeadline is null).Select(NameOf).ToArray();
            if (none.Length > 0) yield return $"No forecast: {string.Join(", ", none)}; the findings say why.";
        }

        private string Describe() => string.Join(" ", mixes.Select(m =>
            $"{NameOf(m)}: {(m.ChanceByDeadline is { } c ? ChanceWords.Of(c) : "no forecast")}{(m.CostPerCubicMetre is { } p ? $", {currency} {JobUnits.Cents(p * (decimal)units.Volume.Factor)} / {JobUnits.Symbol(units.Volume)}" : "")}."));
    }
}

/// <summary>Which mixes open a night on time, and which of them costs least.</summary>
public static class MixChoice
{
    /// <summary>True when a mix opens by the deadline with the confidence asked for.</summary>
    public static bool Opens(MixNight mix, double confidence)
    {
        ArgumentNullException.ThrowIfNull(mix);
        return mix.ChanceByDeadline is { } chance && chance >= confidence - 1e-9;
    }

    /// <summary>The cheapest mix that opens on time; null when none with a price does.</summary>
    public static MixNight? Cheapest(IEnumerable<MixNight> mixes, double confidence)
    {
        ArgumentNullException.ThrowIfNull(mixes);
        return mixes.Where(m => Opens(m, confidence) && m.CostPerCubicMetre is not null).MinBy(m => m.CostPerCubicMetre);
    }
}
