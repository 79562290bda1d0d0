using System.Collections.Immutable;
using Slabwright.Core.Joints;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Curling at edges and corners, and stresses put together.</summary>
internal static class CurlingFormulas
{
    private const string Topic = "Slabs";

    private static readonly HandbookInput Warmth = new("difference", "ΔT", "Temperature difference top to bottom", Difference, 0, 60);

    public static ImmutableArray<HandbookEntry> Entries { get; } = [NearEdge, AtCorner, Combined, FrictionTable];

    private static HandbookEntry NearEdge => new()
    {
        Id = "curling-near-edge",
        Title = "Curling at a distance from a straight edge",
        Topic = Topic,
        Expression = "σ0 = EαΔT/[2(1 − µ)], u = y/(l√2): σ_y = σ0 [1 − √2 sin(u + π/4) e^−u], σ_x = σ0 [1 − µ√2 sin(u + π/4) e^−u], "
            + "w = −w0 √2 cos(u + π/4) e^−u, w0 = (1 + µ)αΔT l²/h",
        Inputs = [Modulus, Thickness, Poisson, Springs, Alpha, Warmth, Length("distance", "y", "Distance from the edge", 100) with { Least = 0 }],
        Outputs =
        [
            new("σ0", "Stress far from edges", Stress), new("σ_y", "Stress at right angles to the edge", Stress),
            new("σ_x", "Stress along the edge", Stress), new("w", "Deflection, down for a warm top", Short),
        ],
        Source = Seen("NPTEL-IITK", "Module II lecture 2, eq. 17–19"),
        Notes = "A slab that ends at one edge only, in full contact. At the edge itself the stress along it is E α ΔT/2.",
        Work = s =>
        {
            var l = s.Step("Radius of relative stiffness l", RelativeStiffness.Radius(s["modulus"], s["thickness"], s["poisson"], s["reaction"]), Short);
            var far = s.Result("σ0", EdgeCurling.FarStress(s["modulus"], s["expansion"], s["difference"], s["poisson"]));
            s.Result("σ_y", EdgeCurling.StressAcross(far, s["distance"], l));
            s.Result("σ_x", EdgeCurling.StressAlong(far, s["distance"], l, s["poisson"]));
            s.Result("w", EdgeCurling.Deflection(s["expansion"], s["difference"], s["thickness"], s["poisson"], s["distance"], l));
        },
        Examples =
        [
            Example("At the edge, 8 in, 20 °F", Slab("0 ft"),
                [new("σ0", "235.29 psi", 0.005), new("σ_y", "0 psi", 1e-6), new("σ_x", "200 psi", 1e-6), new("w", "-0.013431 in", 5e-7)], ByHand),
            Example("2 ft in", Slab("2 ft"), [new("σ_y", "49.344 psi", 0.0005), new("σ_x", "207.40 psi", 0.005), new("w", "-0.0024876 in", 5e-8)], ByHand),
        ],
    };

    private static HandbookEntry AtCorner => new()
    {
        Id = "curling-corner",
        Title = "Curling stress at a corner under a wheel",
        Topic = Topic,
        Expression = "σ = EαΔT/[3(1 − µ)] √(a/l)",
        Inputs = [Modulus, Thickness, Poisson, Springs, Alpha, Warmth, Small("radius", "a", "Radius of the loaded circle", 0.005, 1)],
        Outputs = [new("σ", "Stress", Stress)],
        Source = Seen("BRADBURY", "as NPTEL IIT Bombay lecture 29 p. 5, eq. 3"),
        Notes = "To be added to the wheel's corner stress at night.",
        Work = s =>
        {
            var l = s.Step("Radius of relative stiffness l", RelativeStiffness.Radius(s["modulus"], s["thickness"], s["poisson"], s["reaction"]), Short);
            s.Result("σ", EdgeCurling.CornerStress(s["modulus"], s["expansion"], s["difference"], s["poisson"], s["radius"], l));
        },
        Examples = [Example("6-in circle, 8 in, 20 °F", [.. Slab("")[..^2], "radius", "6 in"], [new("σ", "69.50 psi", 0.005)], ByHand)],
    };

    private static HandbookEntry Combined => new()
    {
        Id = "combined-stress",
        Title = "Wheel, warping and friction together",
        Topic = Topic,
        Expression = "summer midday edge σ = σl + σw − σf; winter midday edge σ = σl + σw + σf; night corner σ = σl + σw",
        Inputs =
        [
            new("load", "σl", "Wheel stress", Stress, 0, 2e7), new("warping", "σw", "Warping stress", Stress, 0, 2e7),
            new("friction", "σf", "Friction stress", Stress, 0, 2e7),
        ],
        Outputs = [new("summer", "Summer midday, edge", Stress), new("winter", "Winter midday, edge", Stress), new("night", "Night, corner", Stress)],
        Source = Seen("IRC-NOTES", "sect. 29.4"),
        Notes = "Indian practice. Give the stresses of the place meant: edge values for the edge, corner values for the corner.",
        Work = s =>
        {
            s.Result("summer", CombinedStress.At(GoverningHour.SummerMiddayEdge, s["load"], s["warping"], s["friction"]));
            s.Result("winter", CombinedStress.At(GoverningHour.WinterMiddayEdge, s["load"], s["warping"], s["friction"]));
            s.Result("night", CombinedStress.At(GoverningHour.NightCorner, s["load"], s["warping"], s["friction"]));
        },
        Examples =
        [
            Example("280, 120 and 20 psi", ["load", "280 psi", "warping", "120 psi", "friction", "20 psi"],
                [new("summer", "380 psi", 1e-6), new("winter", "420 psi", 1e-6), new("night", "400 psi", 1e-6)], ByHand),
        ],
    };

    private static HandbookEntry FrictionTable => new()
    {
        Id = "base-friction",
        Title = "Friction coefficient by what the slab rests on",
        Topic = Topic,
        Expression = string.Join("; ", SurfaceFriction.Aashto.Select((f, i) => $"{i + 1} {f.Surface} {f.Coefficient:0.0}")),
        Inputs = [Whole("row", "n", "Row of the table above", 1, SurfaceFriction.Aashto.Length)],
        Outputs = [new("f", "Friction coefficient", Plain)],
        Source = Memory("AASHTO-1993", "table of friction factors"),
        Notes = "1.5 is customary; 1.06 to 2.10 was measured under 6-in slabs of 20 to 100 ft (CC-DRAG), far more on cement-treated base.",
        Work = s => s.Result("f", SurfaceFriction.Aashto[s.Count("row") - 1].Coefficient),
        Examples = [Example("Crushed stone", ["row", "6"], [new("f", "1.5", 1e-9)], Memory("AASHTO-1993"))],
    };

    private static string[] Slab(string distance) =>
    [
        "modulus", "4e6 psi", "thickness", "8 in", "poisson", "0.15", "reaction", "200 pci", "expansion", "5e-6 1/°F", "difference", "20 °F",
        "distance", distance,
    ];
}
