using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Numerics;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Growth, hidden damage and the distributions of the cost range.</summary>
internal static class RiskFormulas
{
    private const string Topic = "Growth and risk";

    public static ImmutableArray<HandbookEntry> Entries { get; } = [GrownLength, TriangularQuantile, TriangularMean];

    private static HandbookEntry GrownLength => new()
    {
        Id = "grown-length",
        Title = "Length to remove with hidden margin and growth",
        Topic = Topic,
        Expression = "L' = L + 2 (m + g t)",
        Inputs =
        [
            new("length", "L", "Length of the visible damage", Long, 0, 1000),
            new("margin", "m", "Hidden margin at each end", Long, 0, 10),
            new("growth", "g", "Growth at each end in a year", Long, 0, 10) { Default = 0 },
            Number("years", "t", "Years from survey to work", 0, 50) with { Default = 0 },
        ],
        Outputs = [new("L'", "Length to remove", Long)],
        Source = SourceRef.CommonPractice,
        Notes = "The underside may reach about 3 ft beyond what shows (M-GUIDE, from memory); cores or sounding decide. No published growth rate was found.",
        Work = s => s.Result("L'", s["length"] + 2 * (s.Step("Growth at each end", s["growth"] * s["years"], Long) + s["margin"])),
        Examples =
        [
            Example("2 ft of damage, 1 ft margin, 0.5 ft a year for 2 years",
                ["length", "2 ft", "margin", "1 ft", "growth", "0.5 ft", "years", "2"], [new("L'", "6 ft", 1e-6)], ByHand),
        ],
    };

    private static HandbookEntry TriangularQuantile => new()
    {
        Id = "triangular-quantile",
        Title = "Value of a triangular distribution at a probability",
        Topic = Topic,
        Expression = "x = a + √(p (c − a)(b − a)) up to the likely value b, else c − √((1 − p)(c − a)(c − b))",
        Inputs =
        [
            Number("low", "a", "Low", -1e12, 1e12), Number("likely", "b", "Likely", -1e12, 1e12), Number("high", "c", "High", -1e12, 1e12),
            Part("probability", "p", "Probability"),
        ],
        Outputs = [new("x", "Value not exceeded with that probability", Plain)],
        Source = SourceRef.CommonPractice,
        Notes = "Used for growth, hidden margin and unit prices in the cost range.",
        Work = s =>
        {
            var shape = new Triangular(s["low"], s["likely"], s["high"]);
            if (shape.IsSound) s.Result("x", shape.Quantile(s["probability"]));
            else s.Refuse("Low, likely and high are out of order.", "Give low ≤ likely ≤ high.");
        },
        Examples =
        [
            Example("0, 1, 2 at one half", ["low", "0", "likely", "1", "high", "2", "probability", "50 %"], [new("x", "1", 1e-9)], ByHand),
            Example("0, 1, 2 at one eighth", ["low", "0", "likely", "1", "high", "2", "probability", "12.5 %"], [new("x", "0.5", 1e-9)], ByHand),
        ],
    };

    private static HandbookEntry TriangularMean => new()
    {
        Id = "triangular-mean",
        Title = "Mean of a triangular distribution",
        Topic = Topic,
        Expression = "x̄ = (a + b + c) / 3",
        Inputs = [Number("low", "a", "Low", -1e12, 1e12), Number("likely", "b", "Likely", -1e12, 1e12), Number("high", "c", "High", -1e12, 1e12)],
        Outputs = [new("x̄", "Mean", Plain)],
        Source = SourceRef.CommonPractice,
        Notes = "Above the likely value where the high side is longer, which is why a plan on likely values runs over.",
        Work = s =>
        {
            var shape = new Triangular(s["low"], s["likely"], s["high"]);
            if (shape.IsSound) s.Result("x̄", shape.Mean);
            else s.Refuse("Low, likely and high are out of order.", "Give low ≤ likely ≤ high.");
        },
        Examples = [Example("0, 1, 5", ["low", "0", "likely", "1", "high", "5"], [new("x̄", "2", 1e-9)], ByHand)],
    };
}
