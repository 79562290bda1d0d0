using System.Collections.Immutable;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>A change asked about.</summary>
/// <param name="Name">What it is, in words.</param> <param name="Change">The case with the change.</param>
public sealed record WhatIfChange(string Name, Func<OpeningCase, OpeningCase> Change)
{
    /// <summary>Air colder throughout by a difference, K.</summary>
    /// <param name="kelvin">Difference, K.</param> <param name="name">Name.</param>
    public static WhatIfChange Colder(double kelvin, string name) => new(name, c => c with { Heat = c.Heat with { AirShift = c.Heat.AirShift - kelvin } });

    /// <summary>A blanket from an hour after placing on.</summary>
    /// <param name="resistance">Thermal resistance, m²K/W.</param>
    public static WhatIfChange Blanket(double resistance) =>
        new("a blanket from one hour on", c => c with { Heat = c.Heat with { Blanket = new BlanketCover(1, double.PositiveInfinity, resistance) } });

    /// <summary>Strength of the lot lower by a share.</summary>
    /// <param name="share">Share.</param> <param name="name">Name.</param>
    public static WhatIfChange Weaker(double share, string name) => new(name, c => c with { StrengthFactor = c.StrengthFactor * (1 - share) });

    /// <summary>The three questions everyone asks: 10 °F colder, a blanket of 0.35 m²K/W, 5 % less strength.</summary>
    public static ImmutableArray<WhatIfChange> Usual { get; } = [Colder(10 / 1.8, "10 °F (5.6 K) colder"), Blanket(0.35), Weaker(0.05, "5 % less strength")];
}

/// <summary>Answer to a what-if.</summary>
/// <param name="Name">The change.</param> <param name="Forecast">The forecast under it.</param>
/// <param name="Later">How much later it opens with the confidence asked for, h; null when one of the two does not open.</param>
public sealed record WhatIfAnswer(string Name, OpeningForecastResult Forecast, double? Later);

/// <summary>What-if questions, and the latest placing for a deadline.</summary>
public static class OpeningStudies
{
    /// <summary>Hours computed beyond a deadline, so that a placing just too late still has an opening time to draw a line to.</summary>
    private const double HoursBeyond = 6;

    /// <summary>Answers what-ifs against a forecast.</summary>
    public static ImmutableArray<WhatIfAnswer> WhatIf(OpeningForecastResult forecast, ISlabHeat heat, IEnumerable<WhatIfChange> changes) =>
    [
        .. changes.Select(change =>
        {
            var other = OpeningForecast.Run(change.Change(forecast.Case), heat);
            return new WhatIfAnswer(change.Name, other, other.Earliest is { } late && forecast.Earliest is { } plain ? late - plain : null);
        }),
    ];

    /// <summary>
    /// Latest time of placing that still opens by a deadline with the confidence asked for; null when even the earliest does not. Forecasts
    /// are made at a few times and the hours they take drawn straight between them; edges lag as they do in the case given.
    /// </summary>
    /// <param name="question">The case.</param> <param name="heat">Temperatures.</param> <param name="first">Earliest placing, standard time.</param>
    /// <param name="deadline">Deadline, standard time.</param> <param name="every">Hours between the forecasts.</param>
    public static DateTime? LastPlacing(OpeningCase question, ISlabHeat heat, DateTime first, DateTime deadline, double every = 2)
    {
        var span = (deadline - first).TotalHours;
        if (span <= 0) return null;
        heat = heat.Around(question.Heat);
        var (found, before) = ((DateTime?)null, (At: 0.0, Ready: double.NaN));
        for (var at = 0.0; at < span; at += every)
        {
            var enough = Math.Min(question.Heat.Hours, span - at + HoursBeyond);
            var hours = OpeningForecast.Earliest(question with { Heat = question.Heat with { PlacedAt = first.AddHours(at), Hours = enough } }, heat);
            var ready = at + (hours ?? double.PositiveInfinity);
            if (ready <= span) found = first.AddHours(at);
            else if (found is not null && double.IsFinite(ready))
            {
                var share = (span - before.Ready) / (ready - before.Ready);
                return first.AddHours(before.At + share * (at - before.At));
            }

            if (ready > span) return found;
            before = (at, ready);
        }

        return found;
    }
}
