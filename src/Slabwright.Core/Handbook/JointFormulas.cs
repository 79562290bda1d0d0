using System.Collections.Immutable;
using Slabwright.Core.Joints;
using Slabwright.Core.Measures;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Joint opening, seals and tie bars.</summary>
internal static class JointFormulas
{
    private const string Topic = "Joints";

    private static readonly HandbookInput Restraint = Number("restraint", "C", "Base factor: 0.80 granular, 0.65 stabilised", 0.1, 1);
    private static readonly HandbookInput Range = new("range", "ΔT", "Temperature range", Difference, 0, 100);
    private static readonly HandbookInput Shrinkage = Number("shrinkage", "ε", "Drying shrinkage", 0, 0.002) with { Default = 1e-4 };
    private static readonly HandbookInput Least = Part("least", "Cmin", "Least working compression of the seal") with { Default = 0.20 };
    private static readonly HandbookInput Most = Part("most", "Cmax", "Greatest working compression of the seal") with { Default = 0.55 };

    public static ImmutableArray<HandbookEntry> Entries { get; } = [Opening, MeanOpening, ExpansionGap, LongestSlab, SealWidth, SawWidth, TieSteel, TieLength];

    private static HandbookEntry Opening => new()
    {
        Id = "joint-opening",
        Title = "Change of a joint's opening",
        Topic = Topic,
        Expression = "ΔL = C L (α ΔT + ε)",
        Inputs = [Restraint, Length("length", "L", "Slab length", 100), Alpha, Range, Shrinkage],
        Outputs = [new("ΔL", "Change of opening", Short)],
        Source = Seen("NB-33", "design equation; C = 0.65 from memory"),
        Notes = "Openings measured in the LTPP programme were mostly larger and irregular (TRB paper 513052, 1999).",
        Work = s => s.Result("ΔL", JointMovement.Opening(s["restraint"], s["length"], s["expansion"], s["range"], s["shrinkage"])),
        Examples =
        [
            Example("60 ft, granular base, 14 to 90 °F",
                ["restraint", "0.80", "length", "60 ft", "expansion", "5.5e-6 1/°F", "range", "76 °F"], [new("ΔL", "0.3 in", 0.005)],
                Seen("NB-33", "example A"), "0.298 in, printed as 0.3."),
        ],
    };

    private static HandbookEntry MeanOpening => new()
    {
        Id = "joint-mean-opening",
        Title = "Mean opening of a joint in a month",
        Topic = Topic,
        Expression = "w = max{L β [α (Tc − Tm) + ε], 0}",
        Inputs =
        [
            Length("length", "L", "Slab length", 100), Number("share", "β", "0.85 or 0.65 by the base; see the note", 0.1, 1), Alpha,
            new("placed", "Tc", "Temperature when placed", Temperature, -20, 60), new("mean", "Tm", "Mean temperature of the month", Temperature, -60, 60),
            Shrinkage,
        ],
        Outputs = [new("w", "Mean opening", Short)],
        Source = Memory("NCHRP-1-37A", "part 3 ch. 4"),
        Notes = "β is printed as 0.85 and 0.65 for two kinds of base; which belongs to which could not be checked, so work out both. A joint pressed shut has no opening.",
        Work = s => s.Result("w", JointMovement.MeanOpening(
            s["share"], s["length"], s["expansion"], s["placed"] - s["mean"], s["shrinkage"])),
        Examples =
        [
            Example("15 ft, placed at 90 °F, month of 30 °F",
                ["length", "15 ft", "share", "0.65", "expansion", "5.5e-6 1/°F", "placed", "90 °F", "mean", "30 °F", "shrinkage", "1.5e-4"],
                [new("w", "0.05616 in", 0.00001)], ByHand),
            Example("Pressed shut in a hot month",
                ["length", "15 ft", "share", "0.85", "expansion", "5.5e-6 1/°F", "placed", "50 °F", "mean", "90 °F", "shrinkage", "1e-4"],
                [new("w", "0 in", 1e-9)], ByHand),
        ],
    };

    private static HandbookEntry ExpansionGap => new()
    {
        Id = "expansion-gap",
        Title = "Gap of an expansion joint",
        Topic = Topic,
        Expression = "w = α L ΔT",
        Inputs = [Length("length", "L", "Length that pushes into the gap"), Alpha, Range],
        Outputs = [new("w", "Least gap", Short)],
        Source = Seen("ELEMENTARY", "thermal expansion"),
        Notes = "ΔT from the temperature when placed to the hottest. The filler takes room besides: add its compressed thickness.",
        Work = s => s.Result("w", SlabTemperature.FreeMovement(s["expansion"], s["length"], s["range"])),
        Examples = [Example("50 ft, 60 °F", ["length", "50 ft", "expansion", "5.5e-6 1/°F", "range", "60 °F"], [new("w", "0.198 in", 1e-6)], ByHand)],
    };

    private static HandbookEntry LongestSlab => new()
    {
        Id = "longest-slab-opening",
        Title = "Longest slab for a joint opening",
        Topic = Topic,
        Expression = "L = ΔL / [C (α ΔT + ε)]",
        Inputs = [Small("opening", "ΔL", "Allowed opening", 1e-5, 0.1), Restraint, Alpha, Range, Shrinkage],
        Outputs = [new("L", "Longest slab", Long)],
        Source = Seen("NB-33", "design equation solved for length"),
        Notes = "Common limits for load transfer: 0.05 in without dowels, 0.25 in with (from memory).",
        Work = s => s.Result("L", JointMovement.LongestSlab(s["opening"], s["restraint"], s["expansion"], s["range"], s["shrinkage"])),
        Examples =
        [
            Example("Without dowels", ["opening", "0.05 in", "restraint", "0.65", "expansion", "5.5e-6 1/°F", "range", "60 °F"],
                [new("L", "14.9 ft", 0.05)], Memory("HUANG-2004", "ch. 4")),
            Example("With dowels", ["opening", "0.25 in", "restraint", "0.65", "expansion", "5.5e-6 1/°F", "range", "60 °F"],
                [new("L", "74.5 ft", 0.05)], Memory("HUANG-2004", "ch. 4")),
        ],
    };

    private static HandbookEntry SealWidth => new()
    {
        Id = "seal-width",
        Title = "Width of a preformed compression seal",
        Topic = Topic,
        Expression = "W = ΔL / (Cmax − Cmin)",
        Inputs = [Small("opening", "ΔL", "Change of the joint's opening", 1e-5, 0.1), Least, Most],
        Outputs = [new("W", "Least uncompressed width", Short)],
        Source = Seen("NB-33", "design equation"),
        Notes = "20 to 55 % is one maker's range, 20 to 60 % another's; take the next width made.",
        Work = s =>
        {
            if (s["most"] > s["least"]) s.Result("W", JointMovement.SealWidth(s["opening"], s["least"], s["most"]));
            else s.Refuse("The seal has no working range.", "Give a greatest compression above the least.");
        },
        Examples = [Example("0.3 in", ["opening", "0.3 in"], [new("W", "0.86 in", 0.005)], Seen("NB-33", "example A"), "1 in was chosen.")],
    };

    private static HandbookEntry SawWidth => new()
    {
        Id = "seal-saw-width",
        Title = "Saw width for a preformed seal by temperature",
        Topic = Topic,
        Expression = "Pc = Cmin + (Ti − Tmin)/(Tmax − Tmin)(Cmax − Cmin), S = (1 − Pc) W",
        Inputs =
        [
            Small("width", "W", "Uncompressed width of the seal", 0.001, 0.2),
            new("installed", "Ti", "Temperature when sealing", Temperature, -60, 80),
            new("coldest", "Tmin", "Coldest", Temperature, -60, 80), new("hottest", "Tmax", "Hottest", Temperature, -60, 80), Least, Most,
        ],
        Outputs = [new("Pc", "Compression when sealing", Share), new("S", "Saw width", Short)],
        Source = Seen("NB-33", "design equations"),
        Notes = "Saw width within 1/16 in (NB-32).",
        Work = s =>
        {
            if (s["hottest"] <= s["coldest"]) s.Refuse("The hottest temperature is not above the coldest.", "Give Tmax above Tmin.");
            else s.Result("S", JointMovement.SawWidth(s.Result("Pc", Compression(s)), s["width"]));
        },
        Examples =
        [
            Example("Sealed at 80 °F", ["width", "1 in", "installed", "80 °F", "coldest", "14 °F", "hottest", "90 °F"],
                [new("Pc", "50 %", 0.5), new("S", "0.5 in", 0.005)], Seen("NB-33", "example A")),
            Example("Sealed at 40 °F", ["width", "1 in", "installed", "40 °F", "coldest", "14 °F", "hottest", "90 °F"],
                [new("Pc", "32 %", 0.5), new("S", "0.68 in", 0.005)], Seen("NB-33", "example A")),
        ],
    };

    private static HandbookEntry TieSteel => new()
    {
        Id = "tie-spacing",
        Title = "Tie bar steel and spacing",
        Topic = Topic,
        Expression = "As = γ h L' f / fs, s = (π d²/4) / As",
        Inputs =
        [
            Thickness, Length("width", "L'", "Joint to nearest free edge", 50), new("steel", "fs", "Allowable steel stress", Stress, 1e7, 1e9),
            Small("diameter", "d", "Bar diameter", 0.005, 0.05), ConcreteDensity, FrictionFactor,
        ],
        Outputs = [new("As", "Steel per length of joint", Steel), new("s", "Greatest spacing", Short)],
        Source = Seen("NPTEL-IITB", "lecture 29 p. 14, metric text form; US form from memory"),
        Notes = "Long joints of full-depth repairs are usually not tied; where they are, from 10 ft (Ohio) or 15 ft of length.",
        Work = s =>
        {
            var steel = TieBars.SteelPerLength(s["density"], s["thickness"], s["width"], s["friction"], s["steel"]);
            s.Result("As", steel);
            s.Result("s", TieBars.Spacing(s["diameter"], steel));
        },
        Examples =
        [
            Example("18 cm, 7.2 m with a centre joint, 1-cm bars",
                ["thickness", "18 cm", "width", "3.6 m", "steel", "171.6164 MPa", "diameter", "10 mm", "density", "2400 kg/m3"],
                [new("As", "1.33 cm2/m", 0.005), new("s", "59 cm", 0.5)], Seen("NPTEL-IITB", "lecture 29 p. 14"), "1750 kg/cm² is 171.62 MPa; the page prints 59, say 55 cm."),
            Example("Two 12-ft lanes, 8 in, No. 4 bars",
                ["thickness", "8 in", "width", "12 ft", "steel", "27,000 psi", "diameter", "0.5 in"], [new("s", "36 in", 0.7)],
                Memory("HUANG-2004", "ch. 4"), "The book takes 0.2 in² for a No. 4 bar; the circle has 0.196."),
        ],
    };

    private static HandbookEntry TieLength => new()
    {
        Id = "tie-length",
        Title = "Tie bar length",
        Topic = Topic,
        Expression = "t = fs d / (2 u) + e",
        Inputs =
        [
            new("steel", "fs", "Allowable steel stress", Stress, 1e7, 1e9), Small("diameter", "d", "Bar diameter", 0.005, 0.05),
            new("bond", "u", "Allowable bond", Stress, 1e5, 1e8), Small("allowance", "e", "Allowance for misplacement", 0, 0.2) with { Default = 3 * 0.0254 },
        ],
        Outputs = [new("t", "Length", Short)],
        Source = Memory("HUANG-2004", "ch. 4"),
        Notes = "The metric text form (NPTEL-IITB) has no allowance.",
        Work = s => s.Result("t", TieBars.Length(s["steel"], s["diameter"], s["bond"], s["allowance"])),
        Examples =
        [
            Example("No. 4 bar", ["steel", "27,000 psi", "diameter", "0.5 in", "bond", "350 psi"], [new("t", "22.3 in", 0.05)],
                Memory("HUANG-2004", "ch. 4"), "24 in was chosen."),
            Example("1-cm bar", ["steel", "171.6164 MPa", "diameter", "10 mm", "bond", "2.412436 MPa", "allowance", "0 in"],
                [new("t", "36 cm", 0.5)], Seen("NPTEL-IITB", "lecture 29 p. 14"), "24.6 kg/cm² is 2.412 MPa."),
        ],
    };

    private static double Compression(CalculationSheet s) =>
        JointMovement.InstalledCompression(s["installed"], s["coldest"], s["hottest"], s["least"], s["most"]);
}
