using System.Collections.Immutable;
using Slabwright.Core.Joints;
using Slabwright.Core.Measures;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Slabs under wheels and temperature.</summary>
internal static class SlabFormulas
{
    private const string Topic = "Slabs";
    private const string LargeSlab =
        "Magnitudes. The slab must be large against l: 3.5 l (interior), 5 l (edge), 4 l (corner) for bending (Ioannides et al. 1985, from memory).";

    private static readonly HandbookInput WheelRadius = Small("radius", "a", "Radius of the loaded circle", 0.005, 1);
    private static readonly HandbookInput[] Plate = [Modulus, Thickness, Poisson, Springs];

    private static readonly string[] HuangSlab =
        ["load", "10,000 lbf", "radius", "6 in", "modulus", "4e6 psi", "thickness", "10 in", "poisson", "0.15", "reaction", "100 pci"];

    public static ImmutableArray<HandbookEntry> Entries { get; } =
        [Radius, Interior, Edge, Corner, Curling, Friction, LongestSlab, DragSteel];

    private static HandbookEntry Radius => new()
    {
        Id = "relative-stiffness",
        Title = "Radius of relative stiffness",
        Topic = Topic,
        Expression = "l = [E h³ / (12 (1 − µ²) k)]^¼",
        Inputs = [.. Plate],
        Outputs = [new("l", "Radius of relative stiffness", Short)],
        Source = Seen("WESTERGAARD-1926", "as NPTEL IIT Bombay lecture 29, eq. 29.1"),
        Notes = "Thin elastic plate on springs.",
        Work = s => s.Result("l", RadiusOf(s)),
        Examples =
        [
            Example("Lecture slab", ["modulus", "3e6 psi", "thickness", "10 in", "reaction", "200 pci"], [new("l", "33.6 in", 0.05)], Seen("DOWEL-LECTURE")),
            Example("Annexure slab", ["modulus", "30000 MPa", "thickness", "250 mm", "reaction", "285 MPa/m"],
                [new("l", "611.93 mm", 0.05)], Seen("IRC58-ANNEX-A")),
        ],
    };

    private static HandbookEntry Interior => new()
    {
        Id = "wheel-interior",
        Title = "Wheel in the interior of a slab",
        Topic = Topic,
        Expression = "σ = 3P(1+µ)/(2πh²) [ln(2l/b) + ½ − γ] + 3P(1+µ)/(64h²) (b/l)²; w = P/(8kl²) {1 + [ln(a/2l) + γ − 1.25] (a/l)²/(2π)}",
        Inputs = [Load("load", "P", "Wheel load"), WheelRadius, .. Plate],
        Outputs = [new("σ", "Stress at the bottom", Stress), new("w", "Deflection", Short)],
        Source = Seen("WESTERGAARD-1926", "as Ioannides et al. 1985 eq. A.3; deflection from memory"),
        Notes = LargeSlab,
        Work = s =>
        {
            var l = s.Step("Radius of relative stiffness l", RadiusOf(s), Short);
            s.Step("Equivalent radius b", WheelLoad.EquivalentRadius(s["radius"], s["thickness"]), Short);
            s.Result("σ", WheelLoad.InteriorStress(s["load"], s["radius"], s["thickness"], s["poisson"], l));
            s.Result("w", WheelLoad.InteriorDeflection(s["load"], s["radius"], s["reaction"], l));
        },
        Examples =
        [
            Example("10,000-lb wheel", HuangSlab, [new("σ", "143.7 psi", 0.2), new("w", "0.0067 in", 0.00005)],
                Memory("HUANG-2004", "example 4.3"), "The book's short form leaves out the supplementary term of 0.10 psi."),
        ],
    };

    private static HandbookEntry Edge => new()
    {
        Id = "wheel-edge",
        Title = "Wheel at a free edge",
        Topic = Topic,
        Expression = "σ = 3(1+µ)P/(π(3+µ)h²) [ln(Eh³/(100ka⁴)) + 1.84 − 4µ/3 + (1−µ)/2 + 1.18(1+2µ)a/l]; w = √(2+1.2µ) P/√(Eh³k) [1 − (0.76+0.4µ)a/l]",
        Inputs = [Load("load", "P", "Wheel load"), WheelRadius, .. Plate],
        Outputs =
        [
            new("σ", "Stress, circle touching the edge", Stress), new("w", "Deflection, circle", Short),
            new("σ½", "Stress, half circle on the edge", Stress), new("w½", "Deflection, half circle", Short),
        ],
        Source = Memory("WESTERGAARD-1948", "as Ioannides et al. 1985"),
        Notes = LargeSlab + " The exact deflection of a point load at a free edge is 0.4314 P/(kl²) at µ = 0.15; this form gives 0.4311.",
        Work = s =>
        {
            var l = s.Step("Radius of relative stiffness l", RadiusOf(s), Short);
            s.Result("σ", OnEdge(s, l, WheelLoad.EdgeStressCircle));
            s.Result("w", OnEdge(s, l, WheelLoad.EdgeDeflectionCircle));
            s.Result("σ½", OnEdge(s, l, WheelLoad.EdgeStressHalfCircle));
            s.Result("w½", OnEdge(s, l, WheelLoad.EdgeDeflectionHalfCircle));
        },
        Examples =
        [
            Example("10,000-lb wheel", HuangSlab,
                [
                    new("σ", "279.4 psi", 0.15), new("w", "0.0207 in", 0.00005), new("σ½", "330.0 psi", 0.1), new("w½", "0.0222 in", 0.00005),
                ],
                Memory("HUANG-2004", "example 4.4"), "The book's short form rounds the constants."),
        ],
    };

    private static HandbookEntry Corner => new()
    {
        Id = "wheel-corner",
        Title = "Wheel at a free corner",
        Topic = Topic,
        Expression = "σ = 3P/h² [1 − (a√2/l)^0.6], w = P/(kl²) [1.1 − 0.88 a√2/l]; fitted: σ = 3P/h² [1 − (c/l)^0.72], w = P/(kl²) [1.205 − 0.69 c/l], c = 1.772 a",
        Inputs = [Load("load", "P", "Wheel load"), WheelRadius, .. Plate],
        Outputs =
        [
            new("σ", "Stress at the top, Westergaard", Stress), new("w", "Deflection, Westergaard", Short),
            new("σf", "Stress at the top, fitted to finite elements", Stress), new("wf", "Deflection, fitted", Short),
        ],
        Source = Memory("WESTERGAARD-1926", "fit of Ioannides et al. 1985"),
        Notes = LargeSlab,
        Work = s =>
        {
            var l = s.Step("Radius of relative stiffness l", RadiusOf(s), Short);
            s.Result("σ", WheelLoad.CornerStress(s["load"], s["radius"], s["thickness"], l));
            s.Result("w", WheelLoad.CornerDeflection(s["load"], s["radius"], s["reaction"], l));
            s.Result("σf", WheelLoad.CornerStressFitted(s["load"], s["radius"], s["thickness"], l));
            s.Result("wf", WheelLoad.CornerDeflectionFitted(s["load"], s["radius"], s["reaction"], l));
        },
        Examples =
        [
            Example("10,000-lb wheel", HuangSlab,
                [new("σ", "186.6 psi", 0.1), new("w", "0.0502 in", 0.0001), new("σf", "190.3 psi", 0.1), new("wf", "0.0560 in", 0.00005)],
                Memory("HUANG-2004", "example 4.2")),
        ],
    };

    private static HandbookEntry Curling => new()
    {
        Id = "curling-stress",
        Title = "Curling stress of a slab",
        Topic = Topic,
        Expression = "interior σ = EαΔT/2 (Cx + µCy)/(1 − µ²); edge σ = Cx EαΔT/2; C(B/l) in closed form",
        Inputs =
        [
            Length("length", "Lx", "Slab length", 100), Length("width", "Ly", "Slab width", 20), .. Plate, Alpha,
            new("difference", "ΔT", "Temperature difference top to bottom", Difference, 0, 60),
        ],
        Outputs =
        [
            new("Cx", "Coefficient along", Plain), new("Cy", "Coefficient across", Plain),
            new("σi", "Interior stress", Stress), new("σe", "Edge stress", Stress),
        ],
        Source = Seen("BRADBURY", "as NPTEL IIT Bombay lecture 29 p. 5; closed form of the strip after Westergaard"),
        Notes = "Full contact with the base; loss of contact relieves long slabs.",
        Work = s =>
        {
            var l = s.Step("Radius of relative stiffness l", RadiusOf(s), Short);
            var along = s.Result("Cx", SlabTemperature.CurlingCoefficient(s["length"] / l));
            var across = s.Result("Cy", SlabTemperature.CurlingCoefficient(s["width"] / l));
            s.Result("σi", SlabTemperature.InteriorCurling(s["modulus"], s["expansion"], s["difference"], s["poisson"], along, across));
            s.Result("σe", SlabTemperature.EdgeCurling(s["modulus"], s["expansion"], s["difference"], along));
        },
        Examples =
        [
            Example("25 × 12 ft, 8 in, 20 °F",
                [
                    "length", "25 ft", "width", "12 ft", "modulus", "4e6 psi", "thickness", "8 in", "reaction", "200 pci",
                    "expansion", "5e-6 1/°F", "difference", "20 °F",
                ],
                [new("Cx", "1.07", 0.01), new("Cy", "0.63", 0.01), new("σi", "238 psi", 3), new("σe", "214 psi", 2)],
                Memory("HUANG-2004", "example 4.1"), "The book reads its coefficients from a chart; the closed form gives 1.079 and 0.639."),
        ],
    };

    private static HandbookEntry Friction => new()
    {
        Id = "friction-stress",
        Title = "Friction stress at mid-slab",
        Topic = Topic,
        Expression = "σ = γ L f / 2",
        Inputs = [Length("length", "L", "Slab length"), ConcreteDensity, FrictionFactor],
        Outputs = [new("σ", "Tension", Stress)],
        Source = Seen("IRC-NOTES", "eq. 29.6–29.9"),
        Notes = "Friction 1.5 is customary; 1.06 to 2.10 was measured under 6-in slabs, far more on cement-treated base.",
        Work = s => s.Result("σ", SlabTemperature.FrictionStress(s["density"], s["length"], s["friction"])),
        Examples = [Example("25 ft", ["length", "25 ft"], [new("σ", "19.5 psi", 0.05)], Memory("HUANG-2004", "ch. 4"))],
    };

    private static HandbookEntry LongestSlab => new()
    {
        Id = "longest-slab-friction",
        Title = "Longest plain slab for an allowable tension",
        Topic = Topic,
        Expression = "L = 2 σa / (γ f)",
        Inputs = [new("tension", "σa", "Allowable tension", Stress, 100, 1e7), ConcreteDensity, FrictionFactor],
        Outputs = [new("L", "Longest slab", Long)],
        Source = Seen("BHEL-2023", "worked question"),
        Notes = "Friction alone; curling and shrinkage usually govern sooner.",
        Work = s => s.Result("L", SlabTemperature.LongestSlab(s["tension"], s["density"], s["friction"])),
        Examples =
        [
            Example("80 kN/m², 24 kN/m³", ["tension", "80 kPa", "density", "2447.319 kg/m3"], [new("L", "4.44 m", 0.005)], Seen("BHEL-2023"),
                "24 kN/m³ is 2447.3 kg/m³."),
        ],
    };

    private static HandbookEntry DragSteel => new()
    {
        Id = "drag-steel",
        Title = "Mesh to hold a slab together",
        Topic = Topic,
        Expression = "As = γ h L f / (2 fs)",
        Inputs = [Length("length", "L", "Slab length"), Thickness, ConcreteDensity, FrictionFactor, new("steel", "fs", "Allowable steel stress", Stress, 1e7, 1e9)],
        Outputs = [new("As", "Steel per width", Steel)],
        Source = Seen("SEAINT-1998", "drag formula"),
        Notes = "For reinforced slabs; take the distance between free edges.",
        Work = s => s.Result(
            "As", SlabTemperature.DragSteel(s["density"], s["thickness"], s["length"], s["friction"], s["steel"])),
        Examples =
        [
            Example("60 ft, 8 in", ["length", "60 ft", "thickness", "8 in", "steel", "43,000 psi"],
                [new("As", "0.105 in2/ft", 0.0005)], Memory("HUANG-2004", "ch. 4")),
            Example("24 ft tied across, 8 in", ["length", "24 ft", "thickness", "8 in", "steel", "43,000 psi"],
                [new("As", "0.042 in2/ft", 0.0005)], Memory("HUANG-2004", "ch. 4")),
        ],
    };

    private static double RadiusOf(CalculationSheet s) =>
        RelativeStiffness.Radius(s["modulus"], s["thickness"], s["poisson"], s["reaction"]);

    private static double OnEdge(CalculationSheet s, double l, Func<double, double, double, double, double, double, double, double> form) =>
        form(s["load"], s["radius"], s["thickness"], s["modulus"], s["poisson"], s["reaction"], l);
}
