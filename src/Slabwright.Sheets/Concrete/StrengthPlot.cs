using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Handbook;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Concrete;

/// <summary>
/// Strength over the night: 5, 50 and 95 of a hundred, the strength asked for, the deadline and the time of opening. What lies before the
/// youngest specimens, or was never tested, wears another pattern.
/// </summary>
public static class StrengthPlot
{
    /// <summary>Draws the plot.</summary>
    /// <param name="forecast">The forecast.</param> <param name="clock">Clock of the night.</param> <param name="units">Units of the project.</param>
    /// <param name="options">Width and type size.</param> <param name="prior">Forecast before the readings, drawn faint; null: none.</param>
    public static Figure Draw(OpeningForecastResult forecast, NightClock clock, JobUnits units, PlotOptions options, OpeningForecastResult? prior = null)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        ArgumentNullException.ThrowIfNull(clock);
        ArgumentNullException.ThrowIfNull(units);
        ArgumentNullException.ThrowIfNull(options);
        return new Plot(forecast, clock, units, options, prior).Draw();
    }

    private sealed class Plot
    {
        private readonly OpeningForecastResult forecast;
        private readonly OpeningForecastResult? prior;
        private readonly NightClock clock;
        private readonly JobUnits units;
        private readonly NightPlot plot;
        private readonly PlotScale y;
        private readonly double size;
        private readonly StrengthHour[] hours;
        private readonly DateTime last;

        public Plot(OpeningForecastResult forecast, NightClock clock, JobUnits units, PlotOptions options, OpeningForecastResult? prior)
        {
            (this.forecast, this.clock, this.units, this.prior, size) = (forecast, clock, units, prior, options.TextSize);
            last = NightHours.Last(forecast, clock);
            plot = new NightPlot(clock.Of(forecast, 0), last, options, new FigureBuilder(options.Ruler).Measure("median", size * 0.85) + 14);
            hours = [.. forecast.Hours.Where(h => clock.Of(forecast, h.Hours) <= last)];
            var most = hours.Select(h => h.Strength.High).Concat(prior is null ? [] : Shown(prior).Select(h => h.Strength.High)).DefaultIfEmpty(0).Max();
            y = PlotScale.Round(0, units.Stress.FromBase(Math.Max(most, forecast.Case.Criterion.Strength * 1.1)), plot.Height, 0, 6);
        }

        private OpeningCriterion Criterion => forecast.Case.Criterion;

        public Figure Draw()
        {
            PlotAxes.Upright(plot.Figure, y, 0, size, $"Strength, {OpeningCriteria.Words(Criterion.Kind)}, {JobUnits.Symbol(units.Stress)}", plot.Width);
            var tested = HoursTested();
            Band(0, tested, FigureStyle.ChanceBandUntested);
            Band(tested, double.PositiveInfinity, FigureStyle.ChanceBand);
            plot.DrawClock();
            if (prior is not null) Prior(prior);
            plot.Curve(FigureStyle.BandEdge, hours.Select(h => Point(h, h.Strength.Low)));
            plot.Curve(FigureStyle.BandEdge, hours.Select(h => Point(h, h.Strength.High)));
            plot.Curve(FigureStyle.CurveFirst, hours.Select(h => Point(h, h.Strength.Middle)));
            plot.Level(Y(Criterion.Strength), $"asked for: {units.StressText(Criterion.Strength)}");
            Marks();
            Names();
            Legend(tested);
            return plot.Figure.Build($"Strength of {forecast.Case.Heat.Mix.Name} over the night", Describe());
        }

        private IEnumerable<StrengthHour> Shown(OpeningForecastResult other) => other.Hours.Where(h => clock.Of(other, h.Hours) <= last);

        private (DateTime At, double Y) Point(StrengthHour hour, double strength) => (clock.Of(forecast, hour.Hours), Y(strength));

        private double Y(double strength) => y.At(units.Stress.FromBase(strength));

        /// <summary>Hours after placing at which the curve reaches its youngest specimens; infinite for a curve without any.</summary>
        private double HoursTested()
        {
            var curve = forecast.Case.Curve;
            if (curve.Origin == CurveOrigin.Composition) return double.PositiveInfinity;
            var after = Array.FindIndex(hours, h => !curve.IsBeforeFirstTested(h.Maturity));
            if (after <= 0) return after < 0 ? double.PositiveInfinity : 0;
            var (a, b) = (hours[after - 1], hours[after]);
            return a.Hours + (curve.FirstTested - a.Maturity) / (b.Maturity - a.Maturity) * (b.Hours - a.Hours);
        }

        private void Band(double from, double to, FigureStyle style)
        {
            var part = Between(from, to).ToArray();
            if (part.Length < 2) return;
            plot.Figure.Area(style, style == FigureStyle.ChanceBand ? "band" : "band-untested",
                [.. part.Select(p => new FigurePoint(p.X, Y(p.Band.Low))), .. part.Reverse().Select(p => new FigurePoint(p.X, Y(p.Band.High)))]);
        }

        /// <summary>The hours of a stretch, its ends drawn straight between them.</summary>
        private IEnumerable<(double X, StrengthBand Band)> Between(double from, double to)
        {
            for (var i = 0; i < hours.Length; i++)
            {
                if (i > 0 && hours[i - 1].Hours < from && hours[i].Hours > from) yield return At(i, from);
                if (hours[i].Hours >= from && hours[i].Hours <= to) yield return At(i, hours[i].Hours);
                if (i > 0 && hours[i - 1].Hours < to && hours[i].Hours > to) yield return At(i, to);
            }
        }

        private (double X, StrengthBand Band) At(int i, double at)
        {
            var x = plot.X(clock.Of(forecast, at));
            if (i == 0) return (x, hours[0].Strength);
            var (a, b, share) = (hours[i - 1].Strength, hours[i].Strength, (at - hours[i - 1].Hours) / (hours[i].Hours - hours[i - 1].Hours));
            return (x, new StrengthBand(a.Low + share * (b.Low - a.Low), a.Middle + share * (b.Middle - a.Middle), a.High + share * (b.High - a.High)));
        }

        private void Prior(OpeningForecastResult before)
        {
            foreach (var pick in new Func<StrengthBand, double>[] { b => b.Low, b => b.Middle, b => b.High })
                plot.Curve(FigureStyle.CurveBefore, Shown(before).Select(h => (clock.Of(before, h.Hours), Y(pick(h.Strength)))).Where(p => plot.Shows(p.Item1)));
        }

        private void Marks()
        {
            plot.Mark(clock.Night.Deadline, $"open by {NightClock.Hour(clock.Night.Deadline)}", FigureStyle.Deadline);
            if (forecast.Earliest is { } earliest)
            {
                var at = ClockText.NextMinute(clock.Of(forecast, earliest));
                plot.Mark(at, $"opens {NightClock.Hour(at)} ({JobUnits.Number(100 * Criterion.Confidence)} % sure)", FigureStyle.CurveSecond);
            }

            if (Criterion.LeastAge > 0)
            {
                var age = clock.Of(forecast, Criterion.LeastAge);
                plot.Mark(age, $"least age {JobUnits.Plain(Criterion.LeastAge, 1)} h: {NightClock.Hour(age)}", FigureStyle.Limit);
            }

            plot.DrawMarks();
            if (forecast.Earliest is { } hours && plot.Shows(clock.Of(forecast, hours)))
                plot.Figure.Circle(FigureStyle.PointChosen, plot.X(clock.Of(forecast, hours)), Y(Criterion.Strength), size * 0.38, "opening");
        }

        private void Names()
        {
            if (hours.Length == 0) return;
            var (x, end) = (plot.X(clock.Of(forecast, hours[^1].Hours)), hours[^1].Strength);
            plot.Names([(x, Y(end.High), "95 %"), (x, Y(end.Middle), "median"), (x, Y(end.Low), "5 %")]);
        }

        private void Legend(double tested)
        {
            var isEstimate = forecast.Case.Curve.Origin == CurveOrigin.Composition;
            if (tested > 0) plot.ExplainBox(isEstimate ? "90 of 100 nights, estimated from what is in the mix" : "90 of 100 nights, before the youngest specimens: curve extended", FigureStyle.ChanceBandUntested);
            if (hours.Length > 0 && hours[^1].Hours > tested) plot.ExplainBox("90 of 100 nights, on tested ages", FigureStyle.ChanceBand);
            if (prior is not null) plot.Explain("forecast before the readings (5 %, median, 95 %)", FigureStyle.CurveBefore);
            plot.DrawLegend();
        }

        private string Describe()
        {
            var opens = forecast.Earliest is { } e
                ? $"It is reached with {JobUnits.Number(100 * Criterion.Confidence)} % at {NightClock.Full(ClockText.NextMinute(clock.Of(forecast, e)))}."
                : $"It is not reached with {JobUnits.Number(100 * Criterion.Confidence)} % within the hours computed.";
            return $"Strength of {forecast.Case.Heat.Mix.Name} from {NightClock.Full(clock.Of(forecast, 0))} on with its 90 % band; {units.StressText(Criterion.Strength)} {OpeningCriteria.Words(Criterion.Kind)} is asked for. {opens} Traffic returns at {NightClock.Full(clock.Night.Deadline)}.";
        }
    }
}

/// <summary>Hours of a night worth showing.</summary>
internal static class NightHours
{
    /// <summary>Last clock time shown: two hours past deadline and opening, a whole hour, within the hours computed.</summary>
    public static DateTime Last(OpeningForecastResult forecast, NightClock clock)
    {
        var end = clock.Of(forecast, forecast.Hours.IsEmpty ? forecast.Case.Heat.Hours : forecast.Hours[^1].Hours);
        var opens = forecast.Earliest ?? forecast.HoursAt(0.5);
        var wanted = clock.Night.Deadline.AddHours(2);
        if (opens is { } hours && clock.Of(forecast, hours + 1) > wanted) wanted = clock.Of(forecast, hours + 1);
        var whole = wanted.Date.AddHours(Math.Ceiling((wanted - wanted.Date).TotalHours));
        var shown = whole < end ? whole : end;
        return shown > clock.Of(forecast, 0) ? shown : clock.Of(forecast, 1);
    }
}
