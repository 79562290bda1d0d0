using System.Collections.Immutable;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Measures;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Mixes: absolute volume, placing temperature, evaporation.</summary>
internal static class MixFormulas
{
    private const string Topic = "Concrete mixes";

    private static readonly UnitPair Content = new(Units.PoundPerCubicYard, Units.KilogramPerCubicMetre);
    private static readonly UnitPair Volume = new(Units.CubicFoot, Units.CubicMetre);
    private static readonly UnitPair Speed = new(Units.MilePerHour, Units.MetrePerSecond);

    public static ImmutableArray<HandbookEntry> Entries { get; } = [Absolute, FineAggregate, Placing, Drying];

    private static HandbookEntry Absolute => new()
    {
        Id = "absolute-volume",
        Title = "Absolute volume of a mass",
        Topic = Topic,
        Expression = "V = M/(SG × 62.4 lb/ft³)",
        Inputs = [new("mass", "M", "Mass", Mass, 0, 1e5), Number("relative", "SG", "Relative density, saturated and surface-dry", 0.5, 8)],
        Outputs = [new("V", "Volume without voids", Volume)],
        Source = Seen("ACI-211-1"),
        Notes = "The volumes of all parts with the air make the yield.",
        Work = s => s.Result("V", AbsoluteVolume.Of(s["mass"], s["relative"])),
        Examples = [Example("Cement of a cubic yard", ["mass", "588 lb", "relative", "3.15"], [new("V", "2.99 ft3", 0.005)], Seen("ACI-211-1"))],
    };

    private static HandbookEntry FineAggregate => new()
    {
        Id = "fine-by-volume",
        Title = "Fine aggregate by absolute volume",
        Topic = Topic,
        Expression = "fine = [1 − C/(SGc ρw) − W/ρw − G/(SGg ρw) − air] SGf ρw for a unit of volume",
        Inputs =
        [
            new("cement", "C", "Cement", Content, 50, 1000), new("water", "W", "Water", Content, 50, 400), new("coarse", "G", "Coarse aggregate", Content, 0, 2000),
            Part("air", "a", "Air", 0, 0.2), Number("relative_coarse", "SGg", "Relative density of coarse aggregate", 2, 4) with { Default = 2.65 },
            Number("relative_fine", "SGf", "Relative density of sand", 2, 4) with { Default = 2.65 },
        ],
        Outputs = [new("W/C", "Water–cement ratio", Plain), new("F", "Fine aggregate", Content)],
        Source = Seen("NAVEDTRA-14070", "ch. 17"),
        Notes = "Cement at a relative density of 3.15. Check the yield on the first batch.",
        Work = s =>
        {
            s.Result("W/C", s["water"] / s["cement"]);
            var left = 1 - AbsoluteVolume.Of(s["cement"], 3.15) - AbsoluteVolume.Of(s["water"], 1) - AbsoluteVolume.Of(s["coarse"], s["relative_coarse"]) - s["air"];
            s.Result("F", left * s["relative_fine"] * AbsoluteVolume.WaterDensity);
        },
        Examples =
        [
            Example("Training manual", ["cement", "610 lb/yd3", "water", "305 lb/yd3", "coarse", "1735 lb/yd3", "air", "5 %", "relative_coarse", "2.60", "relative_fine", "2.65"],
                [new("W/C", "0.50", 0.001), new("F", "1152 lb/yd3", 2)], Seen("NAVEDTRA-14070", "ch. 17")),
        ],
    };

    private static HandbookEntry Placing => new()
    {
        Id = "placing-temperature",
        Title = "Temperature of fresh concrete",
        Topic = Topic,
        Expression = "T = [0.22 (Ta Wa + Tc Wc) + Tw Ww − 79.6 Wi]/[0.22 (Wa + Wc) + Ww + Wi], °C",
        Inputs =
        [
            new("aggregate", "Wa", "Aggregates", Content, 0, 4000), new("aggregate_temp", "Ta", "Their temperature", Temperature, -10, 80),
            new("cement", "Wc", "Cement", Content, 0, 1000), new("cement_temp", "Tc", "Its temperature", Temperature, -10, 100),
            new("water", "Ww", "Water without ice", Content, 0, 400), new("water_temp", "Tw", "Its temperature", Temperature, 0, 90),
            new("ice", "Wi", "Ice", Content, 0, 200) { Default = 0 },
        ],
        Outputs = [new("T", "Concrete temperature", Temperature)],
        Source = Memory("ACI-305R"),
        Notes = "Water in the aggregates counts with the water. Fails when ice is more than half of the water.",
        Work = s => s.Result("T", PlacingTemperature.Of(new(
            new(s["aggregate"], s["aggregate_temp"]), new(s["cement"], s["cement_temp"]), new(s["water"], s["water_temp"]), default, s["ice"]))),
        Examples =
        [
            Example("Hot cement; all water at 75 °F",
                ["aggregate", "3000 lb/yd3", "aggregate_temp", "80 °F", "cement", "850 lb/yd3", "cement_temp", "150 °F", "water", "310 lb/yd3", "water_temp", "75 °F"],
                [new("T", "90.0 °F", 0.1)], ByHand),
        ],
    };

    private static HandbookEntry Drying => new()
    {
        Id = "evaporation",
        Title = "Evaporation from fresh concrete",
        Topic = Topic,
        Expression = "E = 5.275 ([Tc + 17.778]^2.5 − r [Ta + 17.778]^2.5)(V + 4.02336) 10⁻⁶, kg/(m²·h), °C, km/h",
        Inputs =
        [
            new("concrete", "Tc", "Concrete temperature", Temperature, 0, 60), new("air", "Ta", "Air temperature", Temperature, -15, 60),
            Part("humidity", "r", "Relative humidity"), new("wind", "V", "Wind half a metre above the slab", Speed, 0, 40),
        ],
        Outputs = [new("E", "Evaporation, kg/(m²·h)", Plain), new("E2", "Evaporation, lb/(ft²·h)", Plain)],
        Source = Seen("UNO-1998"),
        Notes = "Precautions from 0.2 lb/(ft²·h) (1.0 kg), 0.1 with silica fume; paving concrete from 0.5 kg/(m²·h). Error about ±40 %.",
        Work = s =>
        {
            var rate = s.Result("E", Evaporation.Rate(s["concrete"], s["air"], s["humidity"], s["wind"]));
            s.Result("E2", rate * 0.3048 * 0.3048 / 0.45359237);
            if (rate > CuringCalls.Limit) s.Doubt("The rate is above the limit: wet burlap under plastic, wind breaks or fog.", "0.2 lb/(ft²·h)");
        },
        Examples = [Example("70 °F, 70 %, 10 mph", ["concrete", "70 °F", "air", "70 °F", "humidity", "70 %", "wind", "10 mph"], [new("E2", "0.061", 0.0006)], ByHand)],
    };
}
