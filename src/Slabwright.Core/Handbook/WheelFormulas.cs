using System.Collections.Immutable;
using Slabwright.Core.Joints;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Wheels beside the plate formulas: forms for hand checks, where a corner breaks, tyres, how large a slab must be.</summary>
internal static class WheelFormulas
{
    private const string Topic = "Slabs";

    private static readonly HandbookInput WheelRadius = Small("radius", "a", "Radius of the loaded circle", 0.005, 1);
    private static readonly HandbookInput Pressure = Strength("pressure", "q", "Contact pressure", 5e6) with { Least = 1e4 };
    private static readonly HandbookInput Relative = Small("relative", "l", "Radius of relative stiffness", 0.1, 5);

    public static ImmutableArray<HandbookEntry> Entries { get; } = [ShortForms, CornerPlace, SlabSize, TyrePrint, DualTyres];

    private static HandbookEntry ShortForms => new()
    {
        Id = "wheel-short-forms",
        Title = "Wheel stresses by the short forms for µ = 0.15",
        Topic = Topic,
        Expression = "σi = 0.316P/h² [4log(l/b) + 1.069]; σe(1926) = 0.572P/h² [4log(l/b) + 0.359]; circle σ = 0.803P/h² [4log(l/a) + 0.666a/l − 0.034], "
            + "w = 0.431P/(kl²) [1 − 0.82a/l]; half circle σ = 0.803P/h² [4log(l/a) + 0.282a/l + 0.650], w = 0.431P/(kl²) [1 − 0.349a/l]",
        Inputs = [Load("load", "P", "Wheel load"), WheelRadius, Modulus, Thickness, Springs],
        Outputs =
        [
            new("σi", "Interior stress", Stress), new("σe", "Edge stress of 1926", Stress), new("σ", "Edge stress, circle", Stress),
            new("w", "Edge deflection, circle", Short), new("σ½", "Edge stress, half circle", Stress), new("w½", "Edge deflection, half circle", Short),
        ],
        Source = Memory("HUANG-2004", "ch. 4; 1926 edge as in Indian texts"),
        Notes = "For hand checks; the long forms take any Poisson's ratio. The edge formula of 1926 gives less than the later ones, and Indian texts still use it.",
        Work = s =>
        {
            var l = s.Step("Radius of relative stiffness l", RelativeStiffness.Radius(
                s["modulus"], s["thickness"], WheelShortForms.Poisson, s["reaction"]), Short);
            s.Result("σi", WheelShortForms.InteriorStress(s["load"], s["radius"], s["thickness"], l));
            s.Result("σe", WheelShortForms.EdgeStress1926(s["load"], s["radius"], s["thickness"], l));
            s.Result("σ", WheelShortForms.EdgeStressCircle(s["load"], s["radius"], s["thickness"], l));
            s.Result("w", WheelShortForms.EdgeDeflectionCircle(s["load"], s["radius"], s["reaction"], l));
            s.Result("σ½", WheelShortForms.EdgeStressHalfCircle(s["load"], s["radius"], s["thickness"], l));
            s.Result("w½", WheelShortForms.EdgeDeflectionHalfCircle(s["load"], s["radius"], s["reaction"], l));
        },
        Examples =
        [
            Example("10,000-lb wheel", ["load", "10,000 lbf", "radius", "6 in", "modulus", "4e6 psi", "thickness", "10 in", "reaction", "100 pci"],
                [
                    new("σi", "143.7 psi", 0.05), new("σ", "279.4 psi", 0.05), new("w", "0.0207 in", 0.00005), new("σ½", "330.0 psi", 0.05),
                    new("w½", "0.0222 in", 0.00005),
                ],
                Memory("HUANG-2004", "examples 4.3 and 4.4")),
            Example("The same wheel, edge of 1926",
                ["load", "10,000 lbf", "radius", "6 in", "modulus", "4e6 psi", "thickness", "10 in", "reaction", "100 pci"],
                [new("σe", "219.47 psi", 0.005)], ByHand),
        ],
    };

    private static HandbookEntry CornerPlace => new()
    {
        Id = "corner-break",
        Title = "Where a corner breaks off",
        Topic = Topic,
        Expression = "x = 2 √(√2 a l); Indian texts x = 2.58 √(a l); fitted x = 1.80 c^0.32 l^0.59 (inches), c = 1.772 a",
        Inputs = [WheelRadius, Relative],
        Outputs =
        [
            new("x", "Distance along the bisector, Westergaard", Short), new("xi", "Indian texts", Short), new("xf", "Fitted to finite elements", Short),
        ],
        Source = Memory("WESTERGAARD-1926", "fit of Ioannides et al. 1985; Indian form read in IRC-QUIZ"),
        Notes = "Three published versions that do not agree. 2 √√2 is 2.378; some texts print 2.58.",
        Work = s =>
        {
            s.Result("x", CornerCrack.Westergaard(s["radius"], s["relative"]));
            s.Result("xi", CornerCrack.IndianTexts(s["radius"], s["relative"]));
            s.Result("xf", CornerCrack.Ioannides(s["radius"], s["relative"]));
        },
        Examples =
        [
            Example("6-in circle, l 42.97 in", ["radius", "6 in", "relative", "42.9725 in"],
                [new("x", "38.19 in", 0.005), new("xi", "41.43 in", 0.005), new("xf", "35.27 in", 0.005)], ByHand),
        ],
    };

    private static HandbookEntry SlabSize => new()
    {
        Id = "slab-size",
        Title = "Is the slab large enough for the plate formulas",
        Topic = Topic,
        Expression = "side/l at least: interior 3.5 (bending) and 8.0 (deflection), edge 5.0 and 8.0, corner 4.0 and 5.0",
        Inputs = [Length("side", "L", "Shorter side of the slab", 100), Relative],
        Outputs =
        [
            new("L/l", "Side over l", Plain), new("interior", "Interior: 2 holds for both, 1 for bending only, 0 for neither", Plain, true),
            new("edge", "Edge, likewise", Plain, true), new("corner", "Corner, likewise", Plain, true),
        ],
        Source = Memory("IOANNIDES-1985", "least slab sides"),
        Notes = "Smaller slabs need plate finite elements; a repair of 6 ft is smaller nearly always.",
        Work = s =>
        {
            s.Result("L/l", s["side"] / s["relative"]);
            foreach (var (place, symbol) in new[] { (LoadPlace.Interior, "interior"), (LoadPlace.Edge, "edge"), (LoadPlace.Corner, "corner") })
            {
                var (bending, deflection) = LargeSlab.Holds(place, s["side"], s["relative"]);
                s.Result(symbol, deflection ? 2 : bending ? 1 : 0);
                if (bending) continue;
                s.Doubt($"The slab is too small for the {symbol} formulas.", $"{LargeSlab.LeastRatio(place).Bending:0.0} l");
            }
        },
        Examples =
        [
            Example("12-ft side, l 36 in", ["side", "12 ft", "relative", "36 in"],
                [new("L/l", "4", 1e-9), new("interior", "1", 0), new("edge", "0", 0), new("corner", "1", 0)], ByHand),
        ],
    };

    private static HandbookEntry TyrePrint => new()
    {
        Id = "tyre-print",
        Title = "Print of a tyre",
        Topic = Topic,
        Expression = "A = P/q, a = √(A/π), L = √(A/0.5227), width 0.6 L",
        Inputs = [Load("load", "P", "Load on the tyre"), Pressure],
        Outputs = [new("a", "Radius as a circle", Short), new("L", "Length of the print", Short), new("W", "Width of the print", Short)],
        Source = Memory("HUANG-2004", "ch. 4"),
        Notes = "A rectangle with half-round ends; contact pressure taken as tyre pressure.",
        Work = s =>
        {
            s.Result("a", WheelImprint.Radius(s["load"], s["pressure"]));
            s.Result("L", WheelImprint.Length(s["load"] / s["pressure"]));
            s.Result("W", WheelImprint.Width(s["load"] / s["pressure"]));
        },
        Examples =
        [
            Example("4500 lb at 80 psi", ["load", "4500 lbf", "pressure", "80 psi"],
                [new("a", "4.231 in", 0.0005), new("L", "10.374 in", 0.0005), new("W", "6.224 in", 0.0005)], ByHand),
        ],
    };

    private static HandbookEntry DualTyres => new()
    {
        Id = "dual-tyres",
        Title = "One circle for dual tyres",
        Topic = Topic,
        Expression = "a = √[0.8521 P/(q π) + (S/π) √(P/(0.5227 q))]",
        Inputs = [Load("load", "P", "Load on one of the two tyres"), Pressure, Small("spacing", "S", "Distance between centres", 0.1, 1)],
        Outputs = [new("a", "Radius of the circle", Short)],
        Source = Memory("HUANG-2004", "ch. 4"),
        Notes = "The circle covers both prints and the ground between; the full load of the pair acts on it.",
        Work = s => s.Result("a", WheelImprint.DualRadius(s["load"], s["pressure"], s["spacing"])),
        Examples = [Example("2 × 4500 lb, 80 psi, 13.5 in", ["load", "4500 lbf", "pressure", "80 psi", "spacing", "13.5 in"], [new("a", "7.735 in", 0.0005)], ByHand)],
    };
}
