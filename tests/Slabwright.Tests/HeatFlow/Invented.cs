using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Weather;

namespace Slabwright.Tests.HeatFlow;

/// <summary>Invented weather and mixes.</summary>
internal static class Invented
{
    public static DateTime Start { get; } = new(2026, 9, 1, 0, 0, 0, DateTimeKind.Unspecified);

    /// <summary>Clear days and cool nights.</summary>
    public static WeatherSeries Weather(int days = 20, double air = 16, double swing = 8, double wind = 3) => new()
    {
        Start = Start,
        Name = "invented.csv",
        Site = new(40, -90, -6),
        Hours =
        [
            .. Enumerable.Range(0, 24 * days + 1).Select(i => new WeatherHour(
                air + swing * Math.Cos(2 * Math.PI * (i - 15) / 24), 0.6 - 0.2 * Math.Cos(2 * Math.PI * (i - 15) / 24), wind + Math.Sin(i * 0.7),
                Math.Max(0, 850 * Math.Sin(Math.PI * (i % 24 + 0.5 - 6) / 12)), 0.3 + 0.2 * Math.Sin(i * 0.3))),
        ],
    };

    /// <summary>Type III repair mix, 480 kg/m³ at w/c 0.40.</summary>
    public static HydrationCurve Mix { get; } = HydrationEstimate.From(new(CementComposition.TypeIii, 0.40), 480);

    public static SlabColumn Column { get; } = new() { Thickness = 0.23, Hydration = Mix };

    public static SlabSection Section { get; } = new() { Column = Column, Length = 1.8 };

    /// <summary>Placed at ten in the evening after fifteen days.</summary>
    public static HeatRun Run(WeatherSeries? weather = null, double hours = 36) => new()
    {
        Weather = weather ?? Weather(), Placed = Start.AddDays(15).AddHours(22), PlacingTemperature = 24, Duration = hours * 3600,
    };
}
