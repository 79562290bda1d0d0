using System.Collections.Immutable;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Hydration of cement and its heat.</summary>
internal static class HydrationFormulas
{
    private const string Topic = "Hydration and heat";

    private static readonly SourceRef Paper = Memory("SCHINDLER-2005", "ACI Materials Journal 102(1)");
    private static readonly UnitPair FineUnits = new(Units.SquareMetrePerKilogram);

    private static readonly HandbookInput End = Part("end", "αu", "Degree of hydration in the end") with { Least = 0.01 };
    private static readonly HandbookInput Slope = Number("slope", "β", "Slope parameter", 0.1, 5);
    private static readonly HandbookInput Time = new("time", "τ", "Time parameter", Hours, 60, 3.6e6);
    private static readonly HandbookInput Age = new("age", "t", "Equivalent age", Hours, 1, 3.6e7);
    private static readonly HandbookInput Heat = new("heat", "Hu", "Heat of complete hydration", HeatOfMass, 1e4, 1e6);
    private static readonly HandbookInput Mass = new("cementitious", "C", "Cementitious material in the concrete", Density, 50, 1000);

    public static ImmutableArray<HandbookEntry> Entries { get; } = [Degree, Parameters, Rate, Rise, SetTimes];

    private static HandbookEntry Degree => new()
    {
        Id = "hydration-degree",
        Title = "Degree of hydration at an equivalent age",
        Topic = Topic,
        Expression = "α = αu exp[−(τ/t)^β]",
        Inputs = [Age, End, Slope, Time],
        Outputs = [new("α", "Degree of hydration", Share)],
        Source = Paper,
        Notes = "Age and τ at the same reference temperature. Ordinary Portland cement; rapid cements need parameters fitted to their own heat.",
        Work = s => s.Result("α", Curve(s).DegreeOfHydration(s["age"])),
        Examples =
        [
            Example("Type I at w/c 0.40, 12 h", ["age", "12 h", "end", "69.43 %", "slope", "0.6742", "time", "15.01 h"], [new("α", "21.70 %", 0.01)], ByHand),
            Example("Type III at w/c 0.40, 8 h", ["age", "8 h", "end", "69.43 %", "slope", "0.5880", "time", "9.80 h"], [new("α", "22.49 %", 0.02)], ByHand),
        ],
    };

    private static HandbookEntry Parameters => new()
    {
        Id = "hydration-parameters",
        Title = "Hydration parameters from the cement's composition",
        Topic = Topic,
        Expression = "Hu = Hcem p + 461 p_slag + 1800 p_FA CaO; αu = 1.031 w/(0.194 + w) + 0.50 p_FA + 0.30 p_slag ≤ 1; β = 181.4 C3A^0.146 C3S^0.227 B^−0.535 SO3^0.558 e^(−0.647 p_slag); "
            + "τ = 66.78 C3A^−0.154 C3S^−0.401 B^−0.804 SO3^−0.758 e^(2.187 p_slag + 9.50 p_FA CaO); E = 22100 f C3A^0.30 C4AF^0.25 B^0.35, f = 1 − 1.05 p_FA (1 − CaO/0.40) + 0.40 p_slag",
        Inputs =
        [
            Part("c3s", "C3S", "Tricalcium silicate") with { Least = 0.05 }, Part("c2s", "C2S", "Dicalcium silicate"), Part("c3a", "C3A", "Tricalcium aluminate") with { Least = 0.005 },
            Part("c4af", "C4AF", "Tetracalcium aluminoferrite") with { Least = 0.005 }, Part("so3", "SO3", "Sulphate") with { Least = 0.002 },
            new("fineness", "B", "Blaine fineness", FineUnits, 100, 1000), Part("lime", "CaOf", "Free lime") with { Default = 0.01 }, Part("magnesia", "MgO", "Magnesia") with { Default = 0.02 },
            Number("water", "w", "Water over cementitious mass", 0.2, 1), Part("ash", "p_FA", "Fly ash") with { Default = 0 }, Part("ash-lime", "CaO", "Lime of the ash") with { Default = 0 },
            Part("slag", "p_slag", "Slag") with { Default = 0 },
        ],
        Outputs = [new("Hu", "Heat of complete hydration", HeatOfMass), new("αu", "Degree in the end", Share), new("β", "Slope", Plain), new("τ", "Time", Hours), new("E", "Activation energy for heat", Molar)],
        Source = Memory("SCHINDLER-2005", "and Schindler 2004 for E"),
        Notes = "A mill certificate is the only sound input. Early strength of Type III is underestimated by heat alone: a measured curve of the mix wins.",
        Work = s =>
        {
            var cement = new CementComposition("given", s["c3s"], s["c2s"], s["c3a"], s["c4af"], s["so3"], s["fineness"], s["lime"], s["magnesia"], SourceRef.Project);
            var binder = new Binder(cement, s["water"], s["ash"], s["ash-lime"], s["slag"]);
            s.Result("Hu", HydrationRegression.UltimateHeat(binder));
            s.Result("αu", HydrationRegression.UltimateDegree(binder));
            s.Result("β", HydrationRegression.Slope(binder));
            s.Result("τ", HydrationRegression.Time(binder));
            s.Result("E", HydrationRegression.ActivationEnergy(binder));
        },
        Examples =
        [
            Example("Type I", TypeI, [new("Hu", "484.6 kJ/kg", 0.05), new("αu", "69.43 %", 0.005), new("β", "0.6742", 0.00005), new("τ", "15.01 h", 0.005), new("E", "46.626 kJ/mol", 0.0005)], ByHand),
            Example("Type I with 30 % slag", [.. TypeI, "slag", "30 %"], [new("Hu", "477.5 kJ/kg", 0.05), new("αu", "78.43 %", 0.005), new("β", "0.5552", 0.00005), new("τ", "28.93 h", 0.005), new("E", "52.221 kJ/mol", 0.0005)], ByHand),
        ],
    };

    private static string[] TypeI =>
        ["c3s", "54 %", "c2s", "18 %", "c3a", "10 %", "c4af", "8 %", "so3", "3 %", "fineness", "369 m2/kg", "water", "0.40"];

    private static HandbookEntry Rate => new()
    {
        Id = "hydration-heat-rate",
        Title = "Heat freed by hydrating concrete",
        Topic = Topic,
        Expression = "q = Hu C (τ/t)^β (β/t) α exp[(E/R)(1/Tr − 1/T)]",
        Inputs = [Heat, Mass, Age, End, Slope, Time, new("energy", "E", "Activation energy", Molar, 1e4, 1e5), new("temperature", "T", "Concrete temperature", Temperature, -20, 150), new("reference", "Tr", "Reference temperature", Temperature, 0, 40)],
        Outputs = [new("q", "Heat rate", new UnitPair(Units.WattPerCubicMetre)), new("t*", "Age of the greatest rate at the reference temperature", Hours)],
        Source = Paper,
        Notes = "The derivative of the degree by time. The greatest rate stands at τ [β/(1 + β)]^(1/β).",
        Work = s =>
        {
            var curve = Curve(s) with { Cementitious = s["cementitious"], UltimateHeat = s["heat"], ActivationEnergy = s["energy"], Reference = s["reference"] };
            s.Step("Degree α", curve.DegreeOfHydration(s["age"]), Share);
            s.Result("q", curve.HeatRate(s["age"], s["temperature"]));
            s.Result("t*", curve.AgeOfGreatestHeat);
        },
        Examples =
        [
            Example("390 kg/m³ at 8 h and 23 °C", ["heat", "477 kJ/kg", "cementitious", "390 kg/m3", "age", "8 h", "end", "75 %", "slope", "0.9", "time", "12 h", "energy", "40 kJ/mol", "temperature", "23 °C", "reference", "23 °C"],
                [new("q", "1487 W/m3", 0.5), new("t*", "5.231 h", 0.0005)], ByHand),
        ],
    };

    private static HandbookEntry Rise => new()
    {
        Id = "adiabatic-rise",
        Title = "Temperature rise without loss",
        Topic = Topic,
        Expression = "ΔT = Hu C α/(ρc)",
        Inputs = [Heat, Mass, Part("degree", "α", "Degree of hydration"), new("capacity", "ρc", "Heat capacity of the concrete", HeatCapacity, 1e6, 5e6) { Default = 2.4e6 }],
        Outputs = [new("ΔT", "Rise", Difference)],
        Source = SourceRef.CommonPractice,
        Notes = "An upper bound: a slab of a foot or less loses much of its heat to air and base within hours.",
        Work = s => s.Result("ΔT", s["heat"] * s["cementitious"] * s["degree"] / s["capacity"]),
        Examples =
        [
            Example("390 kg/m³ of Type I in the end", ["heat", "484.6 kJ/kg", "cementitious", "390 kg/m3", "degree", "69.43 %", "capacity", "2400 kJ/m3K"], [new("ΔT", "54.7 K", 0.05)], ByHand),
        ],
    };

    private static HandbookEntry SetTimes => new()
    {
        Id = "set-from-hydration",
        Title = "Setting from the degree of hydration",
        Topic = Topic,
        Expression = "initial set at α = 0.15 w, final set at α = 0.26 w; t = τ/[ln(αu/α)]^(1/β)",
        Inputs = [Number("water", "w", "Water over cementitious mass", 0.2, 1), End, Slope, Time],
        Outputs = [new("ti", "Equivalent age at initial set", Hours), new("tf", "Equivalent age at final set", Hours)],
        Source = Memory("SCHINDLER-2005", "setting thresholds"),
        Notes = "Equivalent ages at the reference temperature: warmer concrete sets sooner. Test by penetration where sawing depends on it.",
        Work = s =>
        {
            s.Result("ti", Curve(s).AgeAt(HydrationRegression.InitialSet(s["water"])));
            s.Result("tf", Curve(s).AgeAt(HydrationRegression.FinalSet(s["water"])));
        },
        Examples =
        [
            Example("Type III at w/c 0.40", ["water", "0.40", "end", "69.43 %", "slope", "0.5880", "time", "9.80 h"], [new("ti", "2.14 h", 0.006), new("tf", "3.30 h", 0.006)], ByHand),
        ],
    };

    private static HydrationCurve Curve(CalculationSheet s) => new()
    {
        Cementitious = 1, UltimateHeat = 1, UltimateDegree = s["end"], Slope = s["slope"], Time = s["time"], ActivationEnergy = 0,
    };
}
