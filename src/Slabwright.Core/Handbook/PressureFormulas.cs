using System.Collections.Immutable;
using Slabwright.Core.Joints;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Slabs that push: build-up by friction and blow-up.</summary>
internal static class PressureFormulas
{
    private const string Topic = "Pressure and blow-up";

    public static ImmutableArray<HandbookEntry> Entries { get; } = [BuildUp, OnSprings, Arch];

    private static HandbookEntry BuildUp => new()
    {
        Id = "pressure-build-up",
        Title = "Length over which friction builds a pressure up",
        Topic = Topic,
        Expression = "σ(x) = γ f x, x = σ/(γ f)",
        Inputs = [Strength("stress", "σ", "Pressure", 1e8), ConcreteDensity, FrictionFactor],
        Outputs = [new("x", "Length from a free end", Long)],
        Source = Seen("ELEMENTARY", "sliding block"),
        Notes = "A relief cut frees no more than this length on each side.",
        Work = s => s.Result("x", SlabBuckling.BuildUpLength(s["stress"], s["density"], s["friction"])),
        Examples = [Example("1320 psi", ["stress", "1320 psi"], [new("x", "845 ft", 0.5)], ByHand)],
    };

    private static HandbookEntry OnSprings => new()
    {
        Id = "buckling-springs",
        Title = "Buckling of a strip held by springs both ways",
        Topic = Topic,
        Expression = "σcr = 2 √(k E I)/h; with a hinge √(k E I)/h",
        Inputs = [Modulus, Thickness, Entry.Springs],
        Outputs = [new("σcr", "Buckling stress, continuous", Stress), new("σh", "Buckling stress with a hinge", Stress)],
        Source = Seen("MDPI-BLOWUP", "finite elements converge to this result"),
        Notes = "Far above crushing, because ground cannot pull down: a check for an eigenvalue solver, not a design value. Use the lift-off form.",
        Work = s =>
        {
            s.Result("σcr", SlabBuckling.OnSprings(s["modulus"], s["thickness"], s["reaction"]));
            s.Result("σh", SlabBuckling.OnSpringsHinged(s["modulus"], s["thickness"], s["reaction"]));
        },
        Examples =
        [
            Example("10 in, k 100 pci", ["modulus", "4e6 psi", "thickness", "10 in", "reaction", "100 pci"],
                [new("σh", "18257 psi", 1), new("σcr", "36515 psi", 1)], ByHand),
        ],
    };

    private static HandbookEntry Arch => new()
    {
        Id = "blow-up",
        Title = "Warm-up a slab stands before it can arch up",
        Topic = Topic,
        Expression = "P0 = 80.76 EI/L² + (w L/EI) √[1.597e-5 EA f w L⁵ − ¼ (f EI)²], least over L; ΔT = P0/(EA α)",
        Inputs = [Modulus, Thickness, Alpha, ConcreteDensity, FrictionFactor],
        Outputs =
        [
            new("ΔT", "Safe rise of slab temperature", Difference), new("L", "Length of the arch", Long), new("σ", "Compression far from it", Stress),
            new("lift", "Height of the arch", Short),
        ],
        Source = Seen("HOBBS-1981", "form read, constants from memory"),
        Notes = "A straight slab without hinge, released at the temperature counted from. Joints, cracks and uneven faces lower it; published figures with hinges were not found.",
        Caution = "A blow-up happens within seconds and can throw vehicles. This is an estimate for a flawless slab, not a limit to plan traffic by.",
        Work = s =>
        {
            var arch = SlabBuckling.Arch(s["modulus"], s["thickness"], s["expansion"], s["density"], s["friction"]);
            s.Result("ΔT", arch.SafeRise);
            s.Result("L", arch.Length);
            s.Result("σ", arch.Stress);
            s.Result("lift", arch.Lift);
        },
        Examples = [Rise("8 in", "1.5", "86"), Rise("10 in", "1.5", "97"), Rise("12 in", "1.5", "107"), Rise("8 in", "1.0", "80"), Rise("10 in", "1.0", "90"), Rise("12 in", "1.0", "100")],
    };

    private static WorkedExample Rise(string thickness, string friction, string degrees) => Example(
        $"{thickness}, friction {friction}",
        ["modulus", "4e6 psi", "thickness", thickness, "expansion", "5.5e-6 1/°F", "friction", friction],
        [new("ΔT", $"{degrees} °F", 0.5)], ByHand, "Least value found on a table of lengths.");
}
