using System.Collections.Immutable;
using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;
using Slabwright.Core.Numerics;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Heat between slab, air, sky and ground.</summary>
internal static class HeatFormulas
{
    private const string Topic = "Hydration and heat";

    private static readonly HandbookInput Wind = new("wind", "V", "Wind", Speed, 0, 60);
    private static readonly HandbookInput Conduct = new("conductivity", "k", "Conductivity", Conductivity, 0.05, 10);
    private static readonly HandbookInput Capacity = new("capacity", "ρc", "Heat capacity", HeatCapacity, 1e5, 1e7);
    private static readonly HandbookInput Depth = new("depth", "x", "Depth", Short, 0, 5);

    public static ImmutableArray<HandbookEntry> Entries { get; } = [Film, SkyRadiation, Blanket, DailyWave, SuddenStep, Contact];

    private static HandbookEntry Film => new()
    {
        Id = "surface-film",
        Title = "Heat carried off a slab by wind",
        Topic = Topic,
        Expression = "h = 5.6 + 4.0 V up to 5 m/s, 7.2 V^0.78 above (W/m²K); with radiation, for pavements: h = 1.3 + 0.62 v^0.75 (Btu/hft²°F, mph)",
        Inputs = [Wind],
        Outputs = [new("h", "Convection", HeatTransfer), new("hb", "With radiation, after Barber", HeatTransfer)],
        Source = Seen("BARBER-1957", "HRB Bulletin 168; the first form as in NISTIR 6551, from memory"),
        Notes = "The two branches differ by 1.3 % where they meet. Wind at the mast; a sheltered slab sees less.",
        Work = s =>
        {
            s.Result("h", Convection.TwoBranch(s["wind"]));
            s.Result("hb", Convection.Barber(s["wind"]));
        },
        Examples = [Example("10 mph", ["wind", "10 mph"], [new("hb", "4.787 Btu/hft2°F", 0.001)], ByHand), Example("5 m/s", ["wind", "5 m/s"], [new("h", "25.60 W/m2K", 0.005)], ByHand)],
    };

    private static HandbookEntry SkyRadiation => new()
    {
        Id = "sky-radiation",
        Title = "Long waves from the sky",
        Topic = Topic,
        Expression = "ε = (0.787 + 0.764 ln(Td/273))(1 + 0.0224 N − 0.0035 N² + 0.00028 N³); q = ε σ Ta⁴; Tsky = ε^¼ Ta",
        Inputs = [new("air", "Ta", "Air temperature", Temperature, -60, 60), Part("humidity", "r", "Relative humidity") with { Least = 0.01 }, Part("cloud", "N", "Cloud, tenths in the formula")],
        Outputs = [new("Td", "Dew point", Temperature), new("q", "Radiation that comes down", HeatFlux), new("Tsky", "Sky temperature", Temperature)],
        Source = Seen("NBSIR-83-2655", "Clark and Allen; cloud after Walton"),
        Notes = "A clear sky is 10 to 20 K colder than the air: why slabs and dew cool below the air at night.",
        Work = s =>
        {
            var dewPoint = Sky.DewPoint(s["air"], s["humidity"]);
            var emissivity = s.Step("Emissivity", Sky.ClarkAllenEmissivity(dewPoint, s["cloud"]), Plain);
            s.Result("Td", dewPoint);
            s.Result("q", Sky.Incoming(SkyLaw.ClarkAllen, new WeatherHour(s["air"], s["humidity"], 0, 0, s["cloud"]), 0));
            s.Result("Tsky", Math.Pow(emissivity, 0.25) * (s["air"] + EquivalentAge.Freezing) - EquivalentAge.Freezing);
        },
        Examples =
        [
            Example("15 °C, 60 %, three tenths", ["air", "15 °C", "humidity", "60 %", "cloud", "30 %"], [new("Td", "7.297 °C", 0.001), new("q", "329.35 W/m2", 0.01), new("Tsky", "2.914 °C", 0.001)], ByHand),
        ],
    };

    private static HandbookEntry Blanket => new()
    {
        Id = "blanket-loss",
        Title = "Loss through a blanket",
        Topic = Topic,
        Expression = "U = 1/(1/h + R)",
        Inputs = [new("film", "h", "Film coefficient", HeatTransfer, 0.1, 200), new("resistance", "R", "Resistance of the blanket", Insulation, 0, 10)],
        Outputs = [new("U", "Loss for a kelvin", HeatTransfer)],
        Source = SourceRef.CommonPractice,
        Notes = "R of an inch, hft²°F/Btu, from memory: extruded polystyrene 5.0, bead board 3.9 to 4.3, mineral fibre 3.1. Wet or flapping blankets keep far less.",
        Work = s => s.Result("U", 1 / (1 / s["film"] + s["resistance"])),
        Examples =
        [
            Example("h 27, R 0.35", ["film", "27 W/m2K", "resistance", "0.35 m2K/W"], [new("U", "2.58 W/m2K", 0.005)], ByHand),
            Example("h 27, R 0.70", ["film", "27 W/m2K", "resistance", "0.70 m2K/W"], [new("U", "1.36 W/m2K", 0.005)], ByHand),
        ],
    };

    private static HandbookEntry DailyWave => new()
    {
        Id = "daily-wave",
        Title = "Daily wave of temperature below a surface",
        Topic = Topic,
        Expression = "d = √(2k/(ρc ω)), ω = 2π/24 h; amplitude e^(−x/d), lag x/(d ω)",
        Inputs = [Conduct, Capacity, Depth],
        Outputs = [new("d", "Depth at which 37 % is left", Short), new("A", "Amplitude over that of the surface", Share), new("t", "Lag", Hours)],
        Source = Memory("CARSLAW-JAEGER", "half-space, periodic surface"),
        Notes = "Below half a metre a road hardly knows the hour.",
        Work = s =>
        {
            var omega = 2 * Math.PI / 86400;
            var d = s.Result("d", Math.Sqrt(2 * s["conductivity"] / (s["capacity"] * omega)));
            s.Result("A", Math.Exp(-s["depth"] / d));
            s.Result("t", s["depth"] / (d * omega));
        },
        Examples =
        [
            Example("0.1 m of concrete", ["conductivity", "1.5 W/mK", "capacity", "2350 kJ/m3K", "depth", "100 mm"], [new("d", "132.49 mm", 0.01), new("A", "47.01 %", 0.01), new("t", "2.883 h", 0.001)], ByHand),
        ],
    };

    private static HandbookEntry SuddenStep => new()
    {
        Id = "step-in-depth",
        Title = "Sudden change of surface temperature felt in depth",
        Topic = Topic,
        Expression = "share = erfc(x/√(4 k t/ρc))",
        Inputs = [Conduct, Capacity, Depth, new("time", "t", "Time after the change", Hours, 1, 3.6e6)],
        Outputs = [new("share", "Part of the change felt", Share)],
        Source = Memory("CARSLAW-JAEGER", "half-space, stepped surface"),
        Notes = "A deep body. In a slab on a poor conductor the change goes deeper.",
        Work = s => s.Result("share", 2 * Normal.Cumulative(-s["depth"] / Math.Sqrt(2 * s["conductivity"] / s["capacity"] * s["time"]))),
        Examples =
        [
            Example("0.1 m after 8 h", ["conductivity", "1.5 W/mK", "capacity", "2350 kJ/m3K", "depth", "100 mm", "time", "8 h"], [new("share", "60.20 %", 0.01)], ByHand),
            Example("0.05 m after 1 h", ["conductivity", "1.5 W/mK", "capacity", "2350 kJ/m3K", "depth", "50 mm", "time", "1 h"], [new("share", "46.08 %", 0.01)], ByHand),
        ],
    };

    private static HandbookEntry Contact => new()
    {
        Id = "contact-temperature",
        Title = "Temperature where fresh concrete meets the base",
        Topic = Topic,
        Expression = "T = (e1 T1 + e2 T2)/(e1 + e2), e = √(k ρc)",
        Inputs =
        [
            Conduct, Capacity, new("concrete", "T1", "Concrete temperature", Temperature, -20, 80), Conduct with { Key = "base-conductivity", Symbol = "k2", Name = "Conductivity of the base" },
            Capacity with { Key = "base-capacity", Symbol = "ρc2", Name = "Heat capacity of the base" }, new("base", "T2", "Base temperature", Temperature, -40, 80),
        ],
        Outputs = [new("T", "Temperature where they touch", Temperature)],
        Source = Memory("CARSLAW-JAEGER", "two half-spaces in contact"),
        Notes = "Holds from the first minute until the heat of hydration or the far sides are felt.",
        Work = s =>
        {
            var (one, two) = (Math.Sqrt(s["conductivity"] * s["capacity"]), Math.Sqrt(s["base-conductivity"] * s["base-capacity"]));
            s.Result("T", (one * s["concrete"] + two * s["base"]) / (one + two));
        },
        Examples =
        [
            Example("30 °C concrete on dry soil of 15 °C", ["conductivity", "1.5 W/mK", "capacity", "2350 kJ/m3K", "concrete", "30 °C", "base-conductivity", "0.3 W/mK", "base-capacity", "1280 kJ/m3K", "base", "15 °C"],
                [new("T", "26.28 °C", 0.005)], ByHand),
        ],
    };
}
