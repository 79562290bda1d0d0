using System.Globalization;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>
/// The spread a forecast file gives, as the one number of the air that trials draw: each of air, humidity, wind, sun and cloud moves maturity
/// at the deadline by so much; the air that moves it as much as all of them together stands for them.
/// </summary>
internal static class ForecastSpread
{
    private static readonly (string Name, Func<WeatherSpread, double> Of, WeatherDraw Draw)[] Variables =
    [
        ("air", s => s.Air, new(1, 0, 0, 0, 0)), ("humidity", s => s.Humidity, new(0, 1, 0, 0, 0)), ("wind", s => s.Wind, new(0, 0, 1, 0, 0)),
        ("sun", s => s.Sun, new(0, 0, 0, 1, 0)), ("cloud", s => s.Cloud, new(0, 0, 0, 0, 1)),
    ];

    /// <summary>The project's spread with the air of the forecast's own; as it is where the file gives none over the night.</summary>
    /// <remarks>Effects of one standard deviation each, added as squares: they are taken as independent and small (our inference).</remarks>
    /// <param name="project">Spread of the project.</param> <param name="heat">Temperatures.</param> <param name="planned">The case.</param>
    /// <param name="scale">Maturity function.</param> <param name="hours">Hours after placing at which maturity is compared.</param>
    public static OpeningSpread Of(OpeningSpread project, WeatherSlabHeat heat, HeatCase planned, MaturityScale scale, double hours)
    {
        var weather = heat.Weather.Between(planned.PlacedAt, planned.PlacedAt.AddHours(planned.Hours));
        var given = Variables.Where(v => weather.Spreads.Any(s => v.Of(s) > 0)).ToArray();
        if (given.Length == 0) return project;
        var plain = Log(heat, planned, scale, hours, weather);
        var kelvin = Log(heat, planned with { AirShift = planned.AirShift + 1 }, scale, hours, weather) - plain;
        if (!(Math.Abs(kelvin) > 1e-6)) return project;
        var parts = given.Select(v => (v.Name, Air: Math.Abs((Log(heat, planned, scale, hours, weather.Drawn(v.Draw)) - plain) / kelvin))).ToList();
        if (given.All(v => v.Name != "air")) parts.Insert(0, ("air of the project", project.Air));
        var air = Math.Sqrt(parts.Sum(p => p.Air * p.Air));
        return project with
        {
            Air = air,
            Because = new Reason("forecast spread",
                string.Create(CultureInfo.InvariantCulture, $"The spread of the forecast moves the concrete as {air:0.0} K of air would; it stands in place of the project's {project.Air:0.0} K."),
                SourceRef.Project, [.. parts.Select(p => new ReasonInput(p.Name, string.Create(CultureInfo.InvariantCulture, $"as {p.Air:0.0} K of air")))]),
        };
    }

    /// <summary>Logarithm of the least maturity at an hour.</summary>
    private static double Log(WeatherSlabHeat heat, HeatCase heatCase, MaturityScale scale, double hours, WeatherSeries weather) =>
        Math.Log(heat.RunIn(heatCase, weather).Min(p => Math.Max(1e-9, scale.Of([.. p.History.TakeWhile(t => t.Hours <= hours + 1e-9)]))));
}
