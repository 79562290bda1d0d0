using System.Collections.Immutable;
using Slabwright.Core.Joints;
using Slabwright.Core.Numerics;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Empirical thickness and the foundation modulus it asks for.</summary>
internal static class ThicknessFormulas
{
    private const string Topic = "Thickness and foundation";

    private static readonly HandbookInput[] Common =
    [
        Springs, Modulus, Strength("rupture", "S'c", "Mean modulus of rupture", 2e7), Number("transfer", "J", "Load transfer coefficient", 2, 5),
        Number("drainage", "Cd", "Drainage coefficient", 0.6, 1.3) with { Default = 1 },
        Number("initial", "p₀", "Serviceability at opening", 3, 5) with { Default = 4.5 },
        Number("terminal", "pt", "Serviceability at the end", 1.5, 3.5) with { Default = 2.5 },
        Part("reliability", "R", "Reliability", 0.5, 0.9999), Number("deviation", "S₀", "Overall standard deviation", 0.1, 0.6) with { Default = 0.35 },
    ];

    private static readonly HandbookInput Traffic = Number("axles", "W₁₈", "18-kip equivalent single axles", 1000, 1e10);
    private static readonly HandbookInput BearingRatio = Number("cbr", "CBR", "California bearing ratio, %", 0.5, 100);

    private static readonly string[] Nomograph =
    [
        "reaction", "72 pci", "modulus", "5e6 psi", "rupture", "650 psi", "transfer", "3.2", "initial", "4.2", "reliability", "95 %",
        "deviation", "0.29",
    ];

    public static ImmutableArray<HandbookEntry> Entries { get; } = [Needed, Carried, FromResilient, FromBearingRatio];

    private static HandbookEntry Needed => new()
    {
        Id = "thickness",
        Title = "Slab thickness for a traffic",
        Topic = Topic,
        Expression = "log W₁₈ = ZR S₀ + 7.35 log(D + 1) − 0.06 + log(ΔPSI/3.0)/[1 + 1.624e7/(D + 1)^8.46] + (4.22 − 0.32 pt) log{S'c Cd (D^0.75 − 1.132)/(215.63 J [D^0.75 − 18.42/(Ec/k)^0.25])}, solved for D",
        Inputs = [Traffic, .. Common],
        Outputs = [new("D", "Thickness", Short)],
        Source = Memory("AASHTO-1993", "rigid design equation"),
        Notes = "Found by halving between 3 and 30 in. Rooted in one road test; round up to the half inch.",
        Work = s =>
        {
            if (!Falls(s)) return;
            if (SlabThickness.Needed(s["axles"], From(s)) is { } thickness) s.Result("D", thickness);
            else s.Refuse("No thickness from the equation's least up to 30 in just carries this traffic.", "Check traffic, strength and k.");
        },
        Examples =
        [
            Example("Nomograph example", ["axles", "5.1e6", .. Nomograph], [new("D", "10.0 in", 0.5)], Memory("AASHTO-1993", "nomograph"),
                "The equation gives 9.72 in; the nomograph is read to the half inch."),
        ],
    };

    private static HandbookEntry Carried => new()
    {
        Id = "thickness-traffic",
        Title = "Traffic a slab carries",
        Topic = Topic,
        Expression = "the equation of `thickness`, W₁₈ from D",
        Inputs = [Thickness with { Symbol = "D" }, .. Common],
        Outputs = [new("W₁₈", "18-kip equivalent single axles", Plain)],
        Source = Memory("AASHTO-1993", "rigid design equation"),
        Notes = "The equation has no answer for very thin slabs on stiff ground.",
        Work = s =>
        {
            if (!Falls(s)) return;
            var axles = SlabThickness.EquivalentAxles(s["thickness"], From(s));
            if (double.IsFinite(axles)) s.Result("W₁₈", axles);
            else s.Refuse("The slab is too thin for the equation.", "Give a thicker slab or a smaller k.");
        },
        Examples = [Example("9.72 in", ["thickness", "9.72 in", .. Nomograph], [new("W₁₈", "5.1e6", 2e4)], ByHand)],
    };

    private static HandbookEntry FromResilient => new()
    {
        Id = "foundation-modulus",
        Title = "k of a slab on subgrade from the resilient modulus",
        Topic = Topic,
        Expression = "k = MR/19.4 (psi, pci)",
        Inputs = [Strength("resilient", "MR", "Resilient modulus", 1e9) with { Least = 1e6 }],
        Outputs = [new("k", "Modulus of foundation reaction", Reaction)],
        Source = Memory("AASHTO-1993", "slab on subgrade"),
        Notes = "Tends to be high; back-calculated or plate-test values are better. A base adds to it.",
        Work = s => s.Result("k", FoundationModulus.FromResilient(s["resilient"])),
        Examples = [Example("7000 psi", ["resilient", "7000 psi"], [new("k", "361 pci", 0.5)], Memory("AASHTO-1993"))],
    };

    private static HandbookEntry FromBearingRatio => new()
    {
        Id = "foundation-cbr",
        Title = "Resilient modulus and k from CBR",
        Topic = Topic,
        Expression = "MR = 1500 CBR (fine soils), MR = 2555 CBR^0.64; k from two tables, straight lines between their rows",
        Inputs = [BearingRatio],
        Outputs =
        [
            new("MR₁", "Resilient modulus, fine soils", Stress), new("MR₂", "Resilient modulus", Stress), new("k₁", "k, US texts", Reaction),
            new("k₂", "k, IRC:58", Reaction),
        ],
        Source = Memory("AASHTO-1993", "NCHRP 1-37A; tables of US texts and IRC:58"),
        Notes = "Rough. US table CBR 3 to 100 (100 to 800 pci), IRC:58 CBR 2 to 100 (21 to 220 MPa/m): the two part widely above CBR 20.",
        Work = s =>
        {
            s.Result("MR₁", FoundationModulus.ResilientOfFineSoil(s["cbr"]));
            s.Result("MR₂", FoundationModulus.Resilient(s["cbr"]));
            if (s["cbr"] > 10) s.Doubt("1500 CBR is for fine soils with a CBR to about 10.", "CBR 10");
            if (FoundationModulus.ByUsTable(s["cbr"]) is not { } us || FoundationModulus.ByIrcTable(s["cbr"]) is not { } irc)
            {
                s.Refuse("The tables of k begin at CBR 3.", "Give a CBR of 3 or more, or take k from the resilient modulus.");
                return;
            }

            s.Result("k₁", us);
            s.Result("k₂", irc);
        },
        Examples =
        [
            Example("CBR 8", ["cbr", "8"], [new("k₂", "50.3 MPa/m", 0.05), new("MR₁", "12000 psi", 0.5)], ByHand, "An annexure lists CBR 8 with 50 MPa/m, rounded."),
            Example("CBR 10", ["cbr", "10"], [new("k₁", "200 pci", 1e-6), new("k₂", "55 MPa/m", 1e-6)], Memory("AASHTO-1993")),
        ],
    };

    private static bool Falls(CalculationSheet s)
    {
        if (s["initial"] > s["terminal"]) return true;
        s.Refuse("Serviceability does not fall.", "Give a terminal value below the one at opening.");
        return false;
    }

    private static ThicknessInputs From(CalculationSheet s) => new()
    {
        Reaction = s["reaction"], Modulus = s["modulus"], Rupture = s["rupture"], LoadTransfer = s["transfer"], Drainage = s["drainage"],
        Initial = s["initial"], Terminal = s["terminal"], Deviate = -Normal.Quantile(s["reliability"]), Deviation = s["deviation"],
    };
}
