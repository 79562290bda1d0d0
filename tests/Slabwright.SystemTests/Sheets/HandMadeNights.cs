using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.RuleSets;

namespace Slabwright.SystemTests.Sheets;

/// <summary>Mixes, nights and weather by hand: a quick mix with its breaks, a slow one known only by what is in it, one without any curve, one without a price.</summary>
internal static class HandMadeNights
{
    private const double Psi = 6894.757293168361;

    public static ConcreteSettings Settings { get; } = new()
    {
        Mixes =
        [
            Mix("QUICK", "Tarn Quick", CementKind.TypeIii, 480, 178, 300),
            Mix("SLOW", "Tarn Ordinary", CementKind.TypeI, 360, 165, 180),
            Mix("RAPID", "Tarn Special", CementKind.SpecialRapid, 390, 160, 620),
            Mix("BARE", "Tarn Unpriced", CementKind.TypeIii, 430, 170, null),
        ],
        Breaks = [.. Breaks("QUICK", 1.4), .. Breaks("BARE", 0.8)],
        CriterionKind = StrengthKind.Compressive,
        CriterionStrength = 2000 * Psi,
        LeastAge = 4,
        PlacingTemperature = 24,
        ClockAhead = 1,
        Trials = 400,
        Nights =
        [
            new WorkNight(new DateOnly(2026, 9, 7), new TimeOnly(20, 30), new TimeOnly(5, 0)) { PlacedAt = new TimeOnly(22, 0) },
            new WorkNight(new DateOnly(2026, 9, 8), new TimeOnly(20, 30), new TimeOnly(5, 0)) { PlacedAt = new TimeOnly(0, 30) },
        ],
    };

    /// <summary>A month of days alike: coldest before sunrise, sun by day.</summary>
    public static WeatherSeries Weather { get; } = new()
    {
        Start = new DateTime(2026, 8, 20),
        Hours = [.. Enumerable.Range(0, 24 * 30).Select(i => new WeatherHour(
            14 + 6 * Math.Sin(2 * Math.PI * (i % 24 - 9) / 24), 0.65, 2.5, Math.Max(0, 650 * Math.Sin(Math.PI * (i % 24 - 6) / 12)), 0.3))],
        Name = "days alike",
    };

    public static ConcreteJob Job { get; } = new()
    {
        Settings = Settings, Rows = ImmutableArray<OpeningRow>.Empty, Thickness = 0.23, Length = 2.4, Weather = Weather,
    };

    private static readonly Lazy<ConcretePlan> Planned = new(() => ConcretePlanner.Plan(Job));

    public static ConcretePlan Plan => Planned.Value;

    private static ConcreteMix Mix(string id, string name, CementKind kind, double cement, double water, double? price) => new()
    {
        Id = id, Name = name, CementKind = kind, Cement = cement, Water = water, Coarse = 1050, Fine = 2300 - 1050 - cement - water, Air = 0.06, Price = (decimal?)price,
    };

    private static IEnumerable<StrengthBreak> Breaks(string mix, double share) =>
        new[] { (4.0, 1500), (6, 2400), (8, 3100), (12, 3900), (24, 5000), (5, 1950), (10, 3500) }.Select(b =>
            new StrengthBreak(mix, StrengthKind.Compressive, b.Item1, b.Item2 * share * Psi));
}
