using System.Collections.Immutable;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Handbook;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Concrete;

/// <summary>Chance that the lane may open, over the night: with the chance asked for, the deadline and the chance at it.</summary>
public static class ChancePlot
{
    private const int Points = 160;

    /// <summary>Draws the plot.</summary>
    /// <param name="forecast">The forecast.</param> <param name="clock">Clock of the night.</param> <param name="units">Units of the project.</param>
    /// <param name="options">Width and type size.</param> <param name="prior">Forecast before the readings, drawn faint; null: none.</param>
    public static Figure Draw(OpeningForecastResult forecast, NightClock clock, JobUnits units, PlotOptions options, OpeningForecastResult? prior = null)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        ArgumentNullException.ThrowIfNull(clock);
        ArgumentNullException.ThrowIfNull(units);
        ArgumentNullException.ThrowIfNull(options);
        var size = options.TextSize;
        var last = NightHours.Last(forecast, clock);
        var plot = new NightPlot(clock.Of(forecast, 0), last, options, 0);
        var y = PlotScale.Round(0, 100, plot.Height, 0, 5);
        PlotAxes.Upright(plot.Figure, y, 0, size, "Chance to be open, %", plot.Width);
        plot.DrawClock();
        if (prior is not null) plot.Curve(FigureStyle.CurveBefore, Curve(prior, clock, last, y));
        plot.Curve(FigureStyle.CurveFirst, Curve(forecast, clock, last, y));
        var asked = forecast.Case.Criterion.Confidence;
        plot.Level(y.At(100 * asked), $"asked for: {JobUnits.Plain(100 * asked, 1)} %", below: true);
        Marks(forecast, clock, plot, y, size);
        if (prior is not null)
        {
            plot.Explain("with the readings", FigureStyle.CurveFirst);
            plot.Explain("before the readings", FigureStyle.CurveBefore);
            plot.DrawLegend();
        }

        return plot.Figure.Build($"Chance of {forecast.Case.Heat.Mix.Name} to be open", Describe(forecast, clock, units));
    }

    private static IEnumerable<(DateTime At, double Y)> Curve(OpeningForecastResult forecast, NightClock clock, DateTime last, PlotScale y)
    {
        var hours = (last - clock.Of(forecast, 0)).TotalHours;
        return Enumerable.Range(0, Points + 1).Select(i => hours * i / Points).Select(h => (clock.Of(forecast, h), y.At(100 * forecast.ChanceBy(h))));
    }

    private static void Marks(OpeningForecastResult forecast, NightClock clock, NightPlot plot, PlotScale y, double size)
    {
        var deadline = clock.Night.Deadline;
        var chance = 100 * forecast.ChanceBy(clock.HoursToDeadline(forecast));
        plot.Mark(deadline, $"open by {NightClock.Hour(deadline)}", FigureStyle.Deadline);
        if (forecast.Earliest is { } earliest)
        {
            var at = ClockText.NextMinute(clock.Of(forecast, earliest));
            plot.Mark(at, $"{JobUnits.Plain(100 * forecast.Case.Criterion.Confidence, 1)} % at {NightClock.Hour(at)}", FigureStyle.CurveSecond);
        }

        plot.DrawMarks();
        if (!plot.Shows(deadline)) return;
        var x = plot.X(deadline);
        plot.Figure.Circle(FigureStyle.PointChosen, x, y.At(chance), size * 0.38, "chance-at-deadline");
        var below = Math.Min(plot.Height - size * 0.6, y.At(chance) + size * 1.7);
        plot.Figure.Text($"{ChanceWords.Of(chance / 100)} at the deadline", x < plot.Width / 2 ? x + size * 0.8 : x - size * 0.8, below, size * 0.9, x < plot.Width / 2 ? FigureAnchor.Start : FigureAnchor.End, true);
        plot.Figure.ClearUnderLast();
    }

    private static string Describe(OpeningForecastResult forecast, NightClock clock, JobUnits units)
    {
        var criterion = forecast.Case.Criterion;
        var at = forecast.Earliest is { } e ? $"{JobUnits.Plain(100 * criterion.Confidence, 1)} % is reached at {NightClock.Full(ClockText.NextMinute(clock.Of(forecast, e)))}." : $"{JobUnits.Plain(100 * criterion.Confidence, 1)} % is not reached within the hours computed.";
        return $"Chance that {units.StressText(criterion.Strength)} {OpeningCriteria.Words(criterion.Kind)} is reached: {ChanceWords.Of(forecast.ChanceBy(clock.HoursToDeadline(forecast)))} at {NightClock.Full(clock.Night.Deadline)}. {at}";
    }
}

/// <summary>Chances in words: no forecast is certain.</summary>
internal static class ChanceWords
{
    /// <summary>A chance in whole percent, or what lies beyond what the trials can tell.</summary>
    public static string Of(double chance) => chance switch
    {
        < 0.001 => "under 0.1 %",
        > 0.999 => "over 99.9 %",
        < 0.01 or > 0.99 => $"{JobUnits.Number(100 * chance, 1)} %",
        _ => $"{JobUnits.Number(100 * chance)} %",
    };
}
