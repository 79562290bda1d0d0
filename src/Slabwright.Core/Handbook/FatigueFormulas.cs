using System.Collections.Immutable;
using Slabwright.Core.Joints;
using Slabwright.Core.Measures;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Fatigue of concrete and the strength it is held against.</summary>
internal static class FatigueFormulas
{
    private const string Topic = "Fatigue";

    private static readonly HandbookInput BendingStress = Strength("stress", "σ", "Bending stress", 2e7);
    private static readonly HandbookInput Rupture = Strength("rupture", "MR", "Modulus of rupture", 2e7) with { Least = 1e5 };

    public static ImmutableArray<HandbookEntry> Entries { get; } = [Repetitions, AllLaws, Damage, Cracked, Strengths, AxleStress];

    private static HandbookEntry Repetitions => new()
    {
        Id = "fatigue-repetitions",
        Title = "Load repetitions concrete stands",
        Topic = Topic,
        Expression = "log₁₀ N = (0.9718 − SR)/0.0828 above 0.55; N = [4.2577/(SR − 0.4325)]^3.268 down to 0.45; unlimited below",
        Inputs = [BendingStress, Rupture],
        Outputs = [new("SR", "Stress ratio", Plain), new("N", "Repetitions", Plain)],
        Source = Memory("PCA-1984", "EB109"),
        Notes = "Use with this method's own stresses only; fatigue laws differ by orders of magnitude and must not be mixed.",
        Work = s => s.Result("N", ConcreteFatigue.AllowableRepetitions(s.Result("SR", s["stress"] / s["rupture"]))),
        Examples =
        [
            Example("3.247 MPa", ["stress", "3.247 MPa", "rupture", "4.95 MPa"], [new("SR", "0.656", 0.0005), new("N", "6513", 60)],
                Seen("IRC58-FATIGUE"), "The table's stresses are rounded."),
            Example("2.649 MPa", ["stress", "2.649 MPa", "rupture", "4.95 MPa"], [new("SR", "0.535", 0.0005), new("N", "194161", 1800)],
                Seen("IRC58-FATIGUE"), "The table's stresses are rounded."),
        ],
    };

    private static HandbookEntry AllLaws => new()
    {
        Id = "fatigue-laws",
        Title = "Repetitions by every fatigue law",
        Topic = Topic,
        Expression = string.Join("; ", FatigueLaws.All.Skip(1).Select(f => $"{f.Name}: {f.Expression}")),
        Inputs = [BendingStress, Rupture],
        Outputs = [new("SR", "Stress ratio", Plain), .. FatigueLaws.All.Select(f => new HandbookOutput(f.Name, $"Repetitions by {f.Name}", Plain))],
        Source = Memory("PCA-1984", "and the publications named with each law"),
        Notes = FatigueLaws.NeverMix + " The spread shown here is the reason. The author of the 2.13 law could not be confirmed.",
        Work = s =>
        {
            var ratio = s.Result("SR", s["stress"] / s["rupture"]);
            foreach (var law in FatigueLaws.All)
            {
                s.Result(law.Name, ConcreteFatigue.AllowableRepetitions(law.Law, ratio));
                if (ratio >= law.MostRatio) s.Doubt($"The {law.Name} law was given for ratios below {law.MostRatio:0.00}.", $"{law.MostRatio:0.00}");
            }

            if (ratio > 1) s.Doubt("The stress is above the modulus of rupture: the first load breaks the slab.", "1");
        },
        Examples =
        [
            Example("Half the modulus of rupture", ["stress", "325 psi", "rupture", "650 psi"],
                [
                    new("PCA 1984", "762000", 400), new("zero-maintenance, 50 %", "6.383e8", 4e5), new("NCHRP 1-37A", "45600", 20),
                    new("NCHRP 1-37A, report of 2004", "124700", 60), new("Vesic and Saxena", "3600000", 1),
                ],
                ByHand),
        ],
    };

    private static HandbookEntry Damage => new()
    {
        Id = "fatigue-damage",
        Title = "Fatigue damage of one load class",
        Topic = Topic,
        Expression = "FD = n/N; the damages of all classes add up, failure at 1",
        Inputs = [Number("passes", "n", "Passes of the load", 0, 1e12), Number("allowed", "N", "Repetitions to failure by one law", 1, 1e30)],
        Outputs = [new("FD", "Damage", Plain)],
        Source = Memory("MINER", "linear damage"),
        Notes = "Use one law for all classes. Where strength grows, give every time step the strength it has then.",
        Work = s => s.Result("FD", s["passes"] / s["allowed"]),
        Examples = [Example("First row of the table", ["passes", "29396", "allowed", "6513"], [new("FD", "4.513", 0.001)], Seen("IRC58-FATIGUE"))],
    };

    private static HandbookEntry Cracked => new()
    {
        Id = "cracked-slabs",
        Title = "Share of slabs cracked at a fatigue damage",
        Topic = Topic,
        Expression = "2004: 1/(1 + FD^−1.68); 2008: 1/(1 + FD^−1.98); 2015: 1/(1 + 0.52 FD^−2.17); both ways: b + t − b t",
        Inputs = [Number("bottom", "FDb", "Damage from the bottom", 0, 1e6), Number("top", "FDt", "Damage from the top", 0, 1e6) with { Default = 0 }],
        Outputs = [new("2004", "Report of 2004", Share), new("2008", "Manual of 2008", Share), new("2015", "From 2015 on", Share)],
        Source = Memory("NCHRP-1-37A", "and MEPDG-2008, MEPDG-2015"),
        Notes = "Each calibration goes with the damage of its own procedure (NCHRP 1-37A law).",
        Work = s =>
        {
            s.Result("2004", CrackedBy(s, CrackingCalibration.Report2004));
            s.Result("2008", CrackedBy(s, CrackingCalibration.Manual2008));
            s.Result("2015", CrackedBy(s, CrackingCalibration.Recalibrated2015));
        },
        Examples =
        [
            Example("Damage 1 from the bottom", ["bottom", "1"], [new("2004", "50 %", 1e-6), new("2008", "50 %", 1e-6), new("2015", "65.789 %", 0.0005)], ByHand),
            Example("Damage 1 both ways", ["bottom", "1", "top", "1"], [new("2004", "75 %", 1e-6)], ByHand),
        ],
    };

    private static HandbookEntry Strengths => new()
    {
        Id = "concrete-strength",
        Title = "Modulus of rupture and Young's modulus from compressive strength",
        Topic = Topic,
        Expression = "MR = 9.5 √f'c or 2.3 f'c^⅔, E = 57,000 √f'c (psi)",
        Inputs = [Strength("strength", "f'c", "Cylinder strength", 2e8) with { Least = 1e6 }],
        Outputs = [new("MR", "Modulus of rupture, square root", Stress), new("MR⅔", "Modulus of rupture, two thirds", Stress), new("E", "Young's modulus", Stress)],
        Source = Memory("NCHRP-1-37A", "concrete; E after ACI 318"),
        Notes = "Correlations with wide scatter; a test of the concrete itself is better.",
        Work = s =>
        {
            s.Result("MR", ConcreteStrength.RuptureBySquareRoot(s["strength"]));
            s.Result("MR⅔", ConcreteStrength.RuptureByTwoThirds(s["strength"]));
            s.Result("E", ConcreteStrength.Modulus(s["strength"]));
        },
        Examples =
        [
            Example("4900 psi", ["strength", "4900 psi"], [new("MR", "665 psi", 1e-6), new("MR⅔", "663.5 psi", 0.05), new("E", "3,990,000 psi", 0.5)], ByHand),
        ],
    };

    private static HandbookEntry AxleStress => new()
    {
        Id = "axle-stress",
        Title = "Stress of an axle from that of the standard axle",
        Topic = Topic,
        Expression = "σ = σ₀ (L/L₀)^0.94",
        Inputs =
        [
            Strength("standard", "σ₀", "Equivalent stress of the standard axle", 2e7), new("load", "L", "Axle load", Kips, 100, 1e6),
            new("base", "L₀", "Standard axle: 18 kip single, 36 kip tandem", Kips, 100, 1e6) { Default = 18_000 * Units.PoundOfForce.Factor },
        ],
        Outputs = [new("σ", "Stress", Stress)],
        Source = Memory("PCA-1984", "EB109"),
        Notes = "The stress grows a little less than the load, since a heavier axle presses a larger print.",
        Work = s => s.Result("σ", ConcreteFatigue.ScaledStress(s["standard"], s["load"], s["base"])),
        Examples = [Example("36-kip single axle", ["standard", "206 psi", "load", "36 kip"], [new("σ", "395.2 psi", 0.05)], ByHand)],
    };

    private static double CrackedBy(CalculationSheet s, CrackingCalibration calibration) => ConcreteFatigue.Cracked(
        ConcreteFatigue.CrackedSlabs(calibration, s["bottom"]), ConcreteFatigue.CrackedSlabs(calibration, s["top"]));
}
