using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Quantities;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Money over time.</summary>
internal static class CostFormulas
{
    private const string Topic = "Cost over time";

    private static readonly SourceRef Economy = Seen("FHWA-RD-02-095", "App. I eq. 72–73");
    private static readonly HandbookInput Rate = Part("rate", "r", "Real discount rate a year", 0, 0.5);
    private static readonly HandbookInput Years = Number("years", "n", "Years", 0, 200);

    public static ImmutableArray<HandbookEntry> Entries { get; } = [PresentWorth, CostPerYear, EqualCostShare, RealRate];

    private static HandbookEntry PresentWorth => new()
    {
        Id = "present-worth",
        Title = "Present worth of a later cost",
        Topic = Topic,
        Expression = "PW = A / (1 + r)ⁿ",
        Inputs = [Number("amount", "A", "Amount", -1e12, 1e12), Rate, Years],
        Outputs = [new("PW", "Present worth", Plain)],
        Source = Economy,
        Notes = "Real rates go with prices of today; 3 to 5 % is FHWA-SA-98-079's range, from memory.",
        Work = s => s.Result("PW", LifeCycleCost.PresentWorth(s["amount"], s["rate"], s["years"])),
        Examples =
        [
            Factor("3 %", "5", "0.8626"), Factor("3 %", "20", "0.5537"), Factor("4 %", "10", "0.6756"), Factor("4 %", "30", "0.3083"),
            Factor("5 %", "15", "0.4810"), Factor("5 %", "40", "0.1420"),
        ],
    };

    private static HandbookEntry CostPerYear => new()
    {
        Id = "cost-per-year",
        Title = "Equal cost per year (EUAC)",
        Topic = Topic,
        Expression = "EUAC = PW r (1 + r)ⁿ / [(1 + r)ⁿ − 1]",
        Inputs = [Number("worth", "PW", "Present worth", -1e12, 1e12), Rate, Years with { Least = 0.5 }],
        Outputs = [new("EUAC", "Cost per year", Plain)],
        Source = Economy,
        Notes = "Compares alternatives of different lives.",
        Work = s => s.Result("EUAC", LifeCycleCost.PerYear(s["worth"], s["rate"], s["years"])),
        Examples =
        [
            Annual("5", "0.22463"), Annual("10", "0.12329"), Annual("15", "0.08994"), Annual("20", "0.07358"), Annual("30", "0.05783"),
            Annual("40", "0.05052"),
            Example("167.92 over 30 years at 4 %", ["worth", "167.92", "rate", "4 %", "years", "30"], [new("EUAC", "9.71", 0.005)], ByHand),
        ],
    };

    private static HandbookEntry EqualCostShare => new()
    {
        Id = "equal-cost-share",
        Title = "Most a short-lived repair may cost against a longer-lived one",
        Topic = Topic,
        Expression = "q = EUAC factor(n₂) / EUAC factor(n₁)",
        Inputs = [Rate, Number("short", "n₁", "Life of the repair", 0.5, 200), Number("long", "n₂", "Life of the alternative", 0.5, 200)],
        Outputs = [new("q", "Share of the alternative's cost", Share)],
        Source = Economy,
        Notes = "Equal cost per year, user cost left out.",
        Work = s => s.Result("q", LifeCycleCost.EqualCostShare(s["rate"], s["short"], s["long"])),
        Examples = [Example("10 against 30 years at 4 %", ["rate", "4 %", "short", "10", "long", "30"], [new("q", "46.9 %", 0.05)], ByHand)],
    };

    private static HandbookEntry RealRate => new()
    {
        Id = "real-rate",
        Title = "Real rate from interest and inflation",
        Topic = Topic,
        Expression = "r = (1 + i)/(1 + f) − 1",
        Inputs = [Part("interest", "i", "Interest a year", 0, 1), Part("inflation", "f", "Inflation a year", 0, 1)],
        Outputs = [new("r", "Real rate", Share)],
        Source = Economy,
        Notes = "The difference i − f is a close approximation while both are small.",
        Work = s => s.Result("r", LifeCycleCost.RealRate(s["interest"], s["inflation"])),
        Examples = [Example("8 % interest, 4 % inflation", ["interest", "8 %", "inflation", "4 %"], [new("r", "3.846 %", 0.0005)], ByHand)],
    };

    private static WorkedExample Factor(string rate, string years, string factor) => Example(
        $"Factor at {rate} after {years} years", ["amount", "1", "rate", rate, "years", years], [new("PW", factor, 0.00005)], ByHand);

    private static WorkedExample Annual(string years, string factor) => Example(
        $"Factor at 4 % over {years} years", ["worth", "1", "rate", "4 %", "years", years], [new("EUAC", factor, 0.000005)], ByHand);
}
