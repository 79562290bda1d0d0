using System.Collections.Immutable;
using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>The inputs of concrete by hand, with units, ranges, defaults and where these come from.</summary>
internal static class HandInputs
{
    /// <summary>Seconds of an hour: spans are read in seconds.</summary>
    public const double Hour = 3600;

    private const double Yard3 = 0.9144 * 0.9144 * 0.9144;

    private static readonly UnitPair Content = new(Units.PoundPerCubicYard, Units.KilogramPerCubicMetre);
    private static readonly UnitPair Angle = new(Units.Degree);
    private static readonly SourceRef Assumed = SourceRef.CommonPractice;

    /// <summary>Sources of the defaults, by key.</summary>
    public static Dictionary<string, SourceRef> Sources { get; } = new(StringComparer.Ordinal);

    /// <summary>Inputs that may be left out altogether.</summary>
    public static ImmutableHashSet<string> Optional { get; } =
        ["cement", "fly-ash", "slag", "silica-fume", "water", "coarse", "fine", "air", "dose", "price", "strength", "least-age", "longitude", "utc-offset", "activation-energy", "datum", "first-tested"];

    /// <summary>Inputs that a weather file gives.</summary>
    public static ImmutableHashSet<string> Weather { get; } = ["low", "high", "humidity", "wind", "cloud", "latitude", "longitude", "utc-offset", "low-at", "high-at", "forecast"];

    /// <summary>Numbers with units.</summary>
    public static ImmutableArray<HandbookInput> Numbers { get; } =
    [
        Small("thickness", "h", "Slab thickness", 0.05, 1),
        With(Length("repair-length", "L", "Length of the repair", 100), 6 * 0.3048, Seen("FHWA-FDR-5", "least length")),
        Mass("cement", "C", "Cement", 50, 1000),
        Mass("fly-ash", "FA", "Fly ash", 0, 500),
        Mass("slag", "SL", "Slag", 0, 500),
        Mass("silica-fume", "SF", "Silica fume", 0, 100),
        Mass("water", "W", "Mixing water", 50, 400),
        Mass("coarse", "G", "Coarse aggregate", 0, 2000),
        Mass("fine", "S", "Fine aggregate", 0, 2000),
        Part("air", "a", "Air", 0, 0.2),
        Part("dose", "D", "Accelerator, solids as a share of the cementitious mass", 0, 0.1),
        Number("price", "P", "Price delivered, for each cubic yard (each cubic metre in SI)", 0, 1e5),
        With(new("placing-temperature", "Tp", "Concrete temperature when placed", Temperature, 0, 45), ConcreteSettings.AssumedPlacing, Assumed),
        Strength("strength", "S", "Strength at opening; by the rule set when left out", 8e7),
        Span("least-age", "t0", "Least age at opening; by the rule set when left out", 0, 1000),
        With(Part("confidence", "p", "Chance with which it must open", 0.5, 0.999), 0.95, Assumed),
        With(new("curing", "Tc", "Temperature the specimens were cured at", Temperature, -5, 80), 23, Seen("ASTM-C1074", "23 °C")),
        Span("first-tested", "t1", "Age of the youngest specimens behind a curve given by constants", 0, 1e5),
        With(Part("curve-error", "e", "Standard deviation of the curve given by constants", 0, 0.5), 0.10, Assumed),
        new("activation-energy", "Ea", "Activation energy measured on mortar of the mix", Molar, 20_000, 90_000),
        new("datum", "T0", "Datum temperature measured on mortar of the mix", Temperature, -20, 10),
        new("low", "Tn", "Lowest air of the night", Temperature, -40, 45),
        new("high", "Tx", "Highest air of the day", Temperature, -30, 55),
        With(Part("humidity", "r", "Relative humidity at placing", 0.02), 0.6, Assumed),
        With(new("wind", "V", "Wind, 10 m above ground", Speed, 0, 40), 2, Assumed),
        With(Part("cloud", "N", "Sky covered by cloud"), 0.5, Assumed),
        With(new("latitude", "φ", "Latitude, north positive", Angle, -Math.PI / 2, Math.PI / 2), 40 * Units.Degree.Factor, Assumed),
        new("longitude", "λ", "Longitude, east positive; left out, the sun is highest at noon of standard time", Angle, -Math.PI, Math.PI),
        Span("utc-offset", "z", "Standard time less universal time; goes with longitude", -12, 14),
        With(Span("clock-ahead", "d", "Clock ahead of standard time: 1 h with daylight saving", -2, 2), 0, Assumed),
        With(new("air-spread", "sa", "Air against the forecast, standard deviation", Difference, 0, 15), new OpeningSpread().Air, Assumed),
        With(new("placing-spread", "sp", "Placing temperature against the plan, standard deviation", Difference, 0, 15), new OpeningSpread().Placing, Assumed),
        With(Part("strength-spread", "ss", "Strength of the lot against the curve, standard deviation", 0, 0.5), new OpeningSpread().Strength, Assumed),
        With(new("blanket-resistance", "R", "Thermal resistance of the blanket", Insulation, 0.01, 5), 0.35, Assumed),
        With(Span("blanket-from", "tb", "Blanket laid so long after placing", 0, 48), Hour, Assumed),
        With(Whole("trials", "n", "Trials of each forecast", 100, 100_000), 2000, Assumed),
    ];

    /// <summary>Words, clock times and lists.</summary>
    public static ImmutableArray<HandText> Texts { get; } =
    [
        new("night", "Days on which nights begin, several by semicolons, each with its low and high where these differ", null, Assumed, "2026-05-04; 2026-05-05 45 °F to 66 °F"),
        new("placed-at", "Clock time of placing", "22:00", Assumed, "22:00"),
        new("placing-from", "Clock time from which placing is possible; two hours before placed-at when left out", null, Assumed, "20:30"),
        new("open-by", "Clock time at which traffic returns", "5:00", Assumed, "5:00"),
        new("mix", "Published mixes or classes by name, several by semicolons; or a name of your own with cement and the rest", null, Assumed, "Class FS; Mix 1"),
        new("cement-kind", "Cement of the mix", null, Assumed, "type iii"),
        new("accelerator", "Accelerator of the mix", null, Assumed, "calcium chloride"),
        new("breaks", "Age and strength of specimens, a mix before a colon where there are several", null, Assumed, "6 h 1500 psi; 12 h 2600 psi; 24 h 3900 psi"),
        new("breaks-kind", "How the specimens were tested", "compressive", Assumed, "third-point flexural"),
        new("curve", "Strength curve by its constants: form; end strength; k for each hour, or τ in hours; M0 in hours, or a", null, Assumed, "hyperbolic from set; 5600 psi; 0.30; 3"),
        new("kind", "How strength is tested at opening; as the specimens or by the rule set when left out", null, Assumed, "centre-point flexural"),
        new("maturity", "Maturity function", "equivalent age", Assumed, "temperature-time factor"),
        new("low-at", "Clock time of the lowest air", "6:00", Assumed, "6:00"),
        new("high-at", "Clock time of the highest air", "15:00", Assumed, "15:00"),
        new("forecast", "Forecast by hand in place of low and high: clock, air, then humidity, wind and cloud where known", null, Assumed, "22:00 58 °F 70 % 5 mph; 2:00 52 °F 80 %; 14:00 70 °F 45 %"),
        new("blanket", "Blanket, yes or no", "no", Assumed, "yes"),
        new("ingredient-prices", "Prices of ingredients for each pound (each kilogram in SI), where none is delivered", null, Assumed, "cement 0.08; coarse 0.012; fine 0.01; water 0.001; accelerator 0.4"),
    ];

    /// <summary>A price for each cubic yard or metre as one for each cubic metre.</summary>
    public static decimal PriceOfCubicMetre(double price, UnitSystem system) => decimal.Round((decimal)(system == UnitSystem.Si ? price : price / Yard3), 4);

    /// <summary>Number of kilograms that a price of an ingredient is for.</summary>
    public static double KilogramsOfPrice(UnitSystem system) => system == UnitSystem.Si ? 1 : Units.Pound.Factor;

    private static HandbookInput Span(string key, string symbol, string name, double least, double most) => new(key, symbol, name, Hours, least * Hour, most * Hour);

    private static HandbookInput Mass(string key, string symbol, string name, double least, double most) => new(key, symbol, name, Content, least, most);

    private static HandbookInput With(HandbookInput input, double value, SourceRef source)
    {
        Sources[input.Key] = source;
        return input with { Default = value };
    }
}
