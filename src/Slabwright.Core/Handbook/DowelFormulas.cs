using System.Collections.Immutable;
using Slabwright.Core.Joints;
using Slabwright.Core.Measures;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Dowels and the load they carry.</summary>
internal static class DowelFormulas
{
    private const string Topic = "Dowels";

    private static readonly HandbookInput Diameter = Small("diameter", "d", "Bar diameter", 0.005, 0.1);
    private static readonly HandbookInput Support = new("support", "K", "Modulus of dowel support", Reaction, 1e9, 1e13);
    private static readonly HandbookInput SteelModulus = Strength("steel", "Es", "Young's modulus of steel") with { Default = 29e6 * Units.Psi.Factor };
    private static readonly HandbookInput JointWidth = Small("joint", "z", "Joint width", 0.0001, 0.1);
    private static readonly HandbookInput Spacing = Small("spacing", "s", "Bar spacing", 0.05, 2);

    public static ImmutableArray<HandbookEntry> Entries { get; } = [Group, Bearing, AllowableCylinder, AllowableCube, JointStiffness, TransferRatio];

    private static HandbookEntry Group => new()
    {
        Id = "dowel-group",
        Title = "Load on the dowel under the wheel",
        Topic = Topic,
        Expression = "P = t W / Σ max(0, 1 − x/L₀)",
        Inputs =
        [
            Load("load", "W", "Wheel load"), Part("transfer", "t", "Share carried across the joint") with { Default = 0.5 }, Spacing,
            Small("reach", "L₀", "Distance at which a dowel carries nothing", 0.05, 5),
            Whole("sides", "n", "Sides with more dowels: 1 at the outermost bar, 2 inside", 1, 2) with { Default = 1 },
        ],
        Outputs = [new("Σ", "Dowels that share", Plain), new("P", "Load on the dowel", Force)],
        Source = Seen("DOWEL-LECTURE", "Friberg 1940, L₀ = 1.8 l; later L₀ = 1.0 l (Tabatabaie et al. 1979)"),
        Notes = "Both published reaches are in use: 1.8 l after Friberg, 1.0 l after plate finite elements and current Indian practice. 45 to 50 % transfer is usual at a sound dowelled joint.",
        Work = s =>
        {
            var sum = s.Result("Σ", DowelBar.GroupSum(s["spacing"], s["reach"], s.Count("sides")));
            s.Result("P", s["load"] * s["transfer"] / sum);
        },
        Examples =
        [
            Example("9000-lb wheel over the outermost dowel", ["load", "9000 lbf", "spacing", "12 in", "reach", "66 in"],
                [new("Σ", "3.27", 0.005), new("P", "1375 lbf", 2)], Memory("HUANG-2004", "ch. 4"), "The reach is rounded in the book."),
            Example("Lecture example, 45 % across", ["load", "9000 lbf", "transfer", "45 %", "spacing", "12 in", "reach", "60 in"],
                [new("Σ", "3.0", 1e-6), new("P", "1350 lbf", 0.5)], Seen("DOWEL-LECTURE")),
            Example("65-kN wheel", ["load", "65 kN", "spacing", "300 mm", "reach", "950 mm"],
                [new("Σ", "2.1053", 0.00005), new("P", "15437.5 N", 0.5)], Seen("NPTEL-IITK", "Module II lecture 4, slide 4")),
            Example("Annexure, 40 % of 80 kN", ["load", "80 kN", "transfer", "40 %", "spacing", "300 mm", "reach", "1177.4 mm"],
                [new("Σ", "2.47", 0.005), new("P", "12.95 kN", 0.005)], Seen("IRC58-ANNEX-B")),
        ],
    };

    private static HandbookEntry Bearing => new()
    {
        Id = "dowel-bearing",
        Title = "Bearing of a dowel on the concrete",
        Topic = Topic,
        Expression = "β = [K d/(4 Es I)]^¼, y₀ = P (2 + β z)/(4 β³ Es I), σb = K y₀",
        Inputs = [Load("load", "P", "Load on the dowel"), Diameter, Support, SteelModulus, JointWidth],
        Outputs =
        [
            new("β", "Relative stiffness of bar and concrete", new UnitPair(Units.PerInch, Units.PerMetre)),
            new("y₀", "Deflection at the joint face", Short), new("σb", "Bearing stress", Stress),
        ],
        Source = Seen("NPTEL-IITK", "Module II lecture 4, Timoshenko and Lessels 1925, Friberg 1940"),
        Notes = "K of 1.5 million pci is usual, 0.3 to 1.5 million quoted; Indian code 415,000 MPa/m.",
        Work = s =>
        {
            var beta = s.Result("β", DowelBar.Beta(s["support"], s["diameter"], s["steel"]));
            var deflection = s.Result("y₀", DowelBar.FaceDeflection(s["load"], s["joint"], beta, s["diameter"], s["steel"]));
            s.Result("σb", DowelBar.BearingStress(s["support"], deflection));
        },
        Examples =
        [
            Example("3/4-in dowel, 1375 lb",
                ["load", "1375 lbf", "diameter", "0.75 in", "support", "1.5e6 pci", "steel", "29e6 psi", "joint", "0.2 in"],
                [new("σb", "3556 psi", 10)], Memory("HUANG-2004", "ch. 4"), "The book rounds I to 0.0155 in⁴; unrounded it is 3549 psi."),
            Example("32-mm dowel, 15.4 kN",
                ["load", "15437.5 N", "diameter", "32 mm", "support", "415000 MPa/m", "steel", "200 GPa", "joint", "15 mm"],
                [new("β", "23.8 1/m", 0.05), new("σb", "27.20 MPa", 0.15)], Seen("NPTEL-IITK", "Module II lecture 4, slide 4"), "The lecture carries the rounded β."),
            Example("1-in dowel, 1350 lb",
                ["load", "1350 lbf", "diameter", "1 in", "support", "1.5e6 pci", "steel", "30e6 psi", "joint", "0.25 in"],
                [new("β", "0.7104 1/in", 0.0001), new("y₀", "0.001392 in", 0.000001), new("σb", "2088 psi", 1)], ByHand),
        ],
    };

    private static HandbookEntry AllowableCylinder => new()
    {
        Id = "allowable-bearing",
        Title = "Allowable bearing from cylinder strength",
        Topic = Topic,
        Expression = "fb = (4 − d)/3 f'c, d in inches",
        Inputs = [Diameter, Strength("strength", "f'c", "Cylinder strength of concrete", 2e8)],
        Outputs = [new("fb", "Allowable bearing", Stress)],
        Source = Seen("DOWEL-LECTURE", "allowable bearing"),
        Notes = "Bars under 4 in.",
        Work = s => s.Result("fb", DowelBar.AllowableBearing(s["diameter"], s["strength"])),
        Examples =
        [
            Example("3/4-in bar, 3000 psi", ["diameter", "0.75 in", "strength", "3000 psi"], [new("fb", "3250 psi", 0.5)], Memory("HUANG-2004", "ch. 4")),
        ],
    };

    private static HandbookEntry AllowableCube => new()
    {
        Id = "allowable-bearing-cube",
        Title = "Allowable bearing from cube strength",
        Topic = Topic,
        Expression = "fb = (101.6 − d)/95.25 fck, d in mm",
        Inputs = [Diameter, Strength("strength", "fck", "Cube strength of concrete", 2e8)],
        Outputs = [new("fb", "Allowable bearing", Stress)],
        Source = Seen("IRC58-ANNEX-B", "IRC:58-2015 method"),
        Notes = "The same rule as for cylinders with f'c = 0.8 fck.",
        Work = s => s.Result("fb", DowelBar.AllowableBearingFromCube(s["diameter"], s["strength"])),
        Examples =
        [
            Example("32 mm, 40 MPa", ["diameter", "32 mm", "strength", "40 MPa"], [new("fb", "29.23 MPa", 0.005)], Seen("NPTEL-IITK", "Module II lecture 4, slide 4")),
            Example("38 mm, 40 MPa", ["diameter", "38 mm", "strength", "40 MPa"], [new("fb", "26.7 MPa", 0.05)], Seen("IRC58-ANNEX-B")),
        ],
    };

    private static HandbookEntry JointStiffness => new()
    {
        Id = "dowel-joint",
        Title = "Stiffness and load transfer of a dowelled joint",
        Topic = Topic,
        Expression = "D = 1/[1/DCI + 1/(12C)], R = D/(s k l), LTE = 1/{1 + 10^[(0.214 − 0.183 a/l − log R)/1.18]}",
        Inputs =
        [
            Diameter, Spacing, JointWidth, Support, SteelModulus, Number("steel-poisson", "νs", "Poisson's ratio of steel", 0, 0.5) with { Default = 0.3 },
            Modulus, Thickness, Poisson, Springs, Number("ratio", "a/l", "Load radius over l", 0, 0.5),
        ],
        Outputs =
        [
            new("D", "Stiffness of one bar", new UnitPair(Units.PoundForcePerInch, Units.NewtonPerMillimetre)),
            new("R", "Dimensionless joint stiffness", Plain), new("LTE", "Load transfer by deflection", Share),
        ],
        Source = Memory("IOANNIDES-1992", "joint stiffness; fit of FHWA-RD-02-088"),
        Notes = "The fit stays within 0.022 of the exact integral for R 0.1 to 100 and a/l 0 to 0.3. Aggregate interlock and base add to it.",
        Work = s =>
        {
            var l = s.Step("Radius of relative stiffness l", RelativeStiffness.Radius(s["modulus"], s["thickness"], s["poisson"], s["reaction"]), Short);
            var bar = s.Result("D", DowelBar.JointStiffness(s["support"], s["diameter"], s["steel"], s["steel-poisson"], s["joint"]));
            var stiffness = s.Result("R", LoadTransfer.Stiffness(bar, s["spacing"], s["reaction"], l));
            s.Result("LTE", LoadTransfer.Deflection(stiffness, s["ratio"]));
        },
        Examples =
        [
            Example("1½-in bars at 12 in",
                [
                    "diameter", "1.5 in", "spacing", "12 in", "joint", "0.25 in", "support", "1.5e6 pci", "steel", "29e6 psi", "modulus", "4e6 psi",
                    "thickness", "10 in", "reaction", "200 pci", "ratio", "0.15",
                ],
                [new("D", "1.941e6 lbf/in", 1000), new("R", "22.4", 0.05), new("LTE", "90.6 %", 0.05)], ByHand),
        ],
    };

    private static HandbookEntry TransferRatio => new()
    {
        Id = "transfer-ratio",
        Title = "Load transfer from two deflections",
        Topic = Topic,
        Expression = "LTE = du/dl, LTE* = 2/(1 + 1/LTE)",
        Inputs = [Small("loaded", "dl", "Deflection of the loaded side", 1e-7, 0.1), Small("unloaded", "du", "Deflection of the other side", 1e-7, 0.1)],
        Outputs = [new("LTE", "Ratio", Share), new("LTE*", "Symmetric ratio", Share)],
        Source = Seen("FHWA-RD-02-088", "eq. 1–2"),
        Notes = "Both at the joint, corrected for the sensor's distance.",
        Work = s => s.Result("LTE*", LoadTransfer.Symmetric(s.Result("LTE", s["unloaded"] / s["loaded"]))),
        Examples = [Example("10 and 6 mil", ["loaded", "0.010 in", "unloaded", "0.006 in"], [new("LTE", "60 %", 1e-6), new("LTE*", "75 %", 1e-6)], ByHand)],
    };
}
