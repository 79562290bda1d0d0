using System.Collections.Immutable;
using Slabwright.Core.Joints;
using Slabwright.Core.Measures;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Sizing dowels, and what they do inside the concrete.</summary>
internal static class DowelDesignFormulas
{
    private const string Topic = "Dowels";

    private static readonly HandbookInput Diameter = Small("diameter", "d", "Bar diameter", 0.005, 0.1);
    private static readonly HandbookInput Support = new("support", "K", "Modulus of dowel support", Reaction, 1e9, 1e13);
    private static readonly HandbookInput SteelModulus = Strength("steel", "Es", "Young's modulus of steel") with { Default = 29e6 * Units.Psi.Factor };
    private static readonly HandbookInput SteelPoisson = Number("steel-poisson", "νs", "Poisson's ratio of steel", 0, 0.5) with { Default = 0.3 };
    private static readonly HandbookInput JointWidth = Small("joint", "z", "Joint width", 0, 0.1);

    public static ImmutableArray<HandbookEntry> Entries { get; } = [RuleOfThumb, Bradbury, BalancedLength, Buried, TwoSides];

    private static HandbookEntry RuleOfThumb => new()
    {
        Id = "dowel-diameter",
        Title = "Dowel diameter by the rule of thumb",
        Topic = Topic,
        Expression = "d = h/8",
        Inputs = [Thickness],
        Outputs = [new("d", "Diameter", Short)],
        Source = Seen("DOWEL-LECTURE", "rule of thumb"),
        Notes = "A start only; bearing and faulting decide.",
        Work = s => s.Result("d", DowelBar.DiameterForThickness(s["thickness"])),
        Examples = [Example("10-in slab", ["thickness", "10 in"], [new("d", "1.25 in", 1e-9)], ByHand)],
    };

    private static HandbookEntry Bradbury => new()
    {
        Id = "dowel-bradbury",
        Title = "Dowel capacity by Bradbury's method",
        Topic = Topic,
        Expression = "Ps = 0.785 d² Fs, Pf = 2 d³ Ff/(Ld + 8.8 z), Pb = Fb Ld² d/[12.5 (Ld + 1.5 z)], needed Σ = 0.40 P/min(Ps, Pf, Pb)",
        Inputs =
        [
            Load("load", "P", "Wheel load"), Diameter, Small("length", "Ld", "Length buried in both slabs together", 0.05, 1.5), JointWidth,
            Strength("shear", "Fs", "Allowable shear of the bar", 1e9), Strength("bending", "Ff", "Allowable bending of the bar", 1e9),
            Strength("bearing", "Fb", "Allowable bearing on the concrete", 1e8), Small("spacing", "s", "Bar spacing", 0.05, 2),
            Small("relative", "l", "Radius of relative stiffness", 0.1, 5),
        ],
        Outputs =
        [
            new("Ps", "Capacity in shear", Force), new("Pf", "Capacity in bending", Force), new("Pb", "Capacity in bearing", Force),
            new("needed", "Bars' worth needed", Plain), new("Σ", "Bars' worth given by the spacing, reach 1.8 l", Plain),
        ],
        Source = Seen("NPTEL-IITB", "lecture 29 p. 12"),
        Notes = "Older Indian and British practice: the group carries 40 % of the wheel load. The spacing does where Σ reaches what is needed.",
        Work = s =>
        {
            var shear = s.Result("Ps", BradburyDowel.Shear(s["diameter"], s["shear"]));
            var bending = s.Result("Pf", BradburyDowel.Bending(s["diameter"], s["bending"], s["length"], s["joint"]));
            var bearing = s.Result("Pb", BradburyDowel.Bearing(s["diameter"], s["bearing"], s["length"], s["joint"]));
            var needed = s.Result("needed", BradburyDowel.CarriedShare * s["load"] / Math.Min(shear, Math.Min(bending, bearing)));
            var given = s.Result("Σ", DowelBar.GroupSum(s["spacing"], DowelBar.FribergReach * s["relative"], 1));
            if (given < needed) s.Doubt("The bars stand too far apart for this load.", $"Σ {needed:0.00}");
        },
        Examples =
        [
            Capacity("30 cm", new("Ps", "4906 kgf", 0.5), new("Pf", "722 kgf", 0.5), new("Pb", "804 kgf", 0.5), new("needed", "2.77", 0.005), new("Σ", "2.92", 0.005)),
            Capacity("35 cm", new ExpectedValue("Σ", "2.57", 0.005)),
        ],
    };

    private static HandbookEntry BalancedLength => new()
    {
        Id = "dowel-length",
        Title = "Dowel length that balances bending and bearing",
        Topic = Topic,
        Expression = "Ld = 5 d √{(Ff/Fb)(Ld + 1.5 z)/(Ld + 8.8 z)}, repeated until it stands; bar = Ld + z",
        Inputs =
        [
            Diameter, JointWidth, Strength("bending", "Ff", "Allowable bending of the bar", 1e9), Strength("bearing", "Fb", "Allowable bearing on the concrete", 1e8),
        ],
        Outputs = [new("Ld", "Length buried in both slabs", Short), new("bar", "Bar length", Short), new("n", "Rounds taken", Plain, true)],
        Source = Seen("NPTEL-IITB", "lecture 29 p. 12"),
        Notes = "Round the bar up. The rounds end when the length changes by less than a micrometre.",
        Work = s =>
        {
            var found = BradburyDowel.BalancedLength(s["diameter"], s["bending"], s["bearing"], s["joint"]);
            s.Result("n", found.Iterations);
            s.Result("bar", s.Result("Ld", found.Length) + s["joint"]);
            if (!found.Converged) s.Refuse("The length does not settle.", "Check bar, joint width and allowable stresses.");
        },
        Examples =
        [
            Example("2.5-cm bar", ["diameter", "2.5 cm", "joint", "2 cm", "bending", "1400 kgf/cm2", "bearing", "100 kgf/cm2"],
                [new("Ld", "40.5 cm", 0.05)], Seen("NPTEL-IITB", "lecture 29 p. 12"), "A bar of 45 cm was chosen."),
        ],
    };

    private static HandbookEntry Buried => new()
    {
        Id = "dowel-buried",
        Title = "Deflection along a buried dowel",
        Topic = Topic,
        Expression = "y = e^−βx/(2β³EsI) [P cos βx − βM₀ (cos βx − sin βx)], M₀ = −P z/2, σ = K y",
        Inputs = [Load("load", "P", "Load on the dowel"), Diameter, Support, SteelModulus, JointWidth, Small("distance", "x", "Distance from the joint face", 0, 1)],
        Outputs = [new("y", "Deflection against the concrete", Short), new("σ", "Bearing stress there", Stress)],
        Source = Memory("TIMOSHENKO-1925", "beam on springs; the face checked against NPTEL-IITK"),
        Notes = "For a bar buried to at least two lengths 1/β. Below zero the bar presses upwards.",
        Work = s =>
        {
            var beta = DowelBar.Beta(s["support"], s["diameter"], s["steel"]);
            var y = s.Result("y", DowelSpring.BuriedDeflection(s["distance"], s["load"], s["joint"], beta, s["diameter"], s["steel"]));
            s.Result("σ", DowelBar.BearingStress(s["support"], y));
        },
        Examples =
        [
            Example("1-in dowel at the face, 1350 lb", Bar("0 in"), [new("y", "0.001392 in", 1e-6), new("σ", "2088 psi", 1)], ByHand),
            Example("The same, 3 in deep", Bar("3 in"), [new("y", "-9.9246e-5 in", 1e-9)], ByHand),
        ],
    };

    private static HandbookEntry TwoSides => new()
    {
        Id = "dowel-spring",
        Title = "Stiffness of a dowel between two elastic slabs",
        Topic = Topic,
        Expression = "published D = 1/[1/DCI + 1/(12C)]; exact 1/D = (2 + βz)/(2β³EsI) + z(1 + βz)/(2β²EsI) + z³/(12EsI) + z/(GA)",
        Inputs = [Diameter, Support, SteelModulus, SteelPoisson, JointWidth with { Least = 0.0001 }],
        Outputs =
        [
            new("D", "Published stiffness", Spring), new("D₂", "Exact stiffness, two sides", Spring), new("faces", "Share of the yield by bearing", Share),
            new("turning", "by turning of the bar at the faces", Share), new("gap", "by bending and shear over the gap", Share),
        ],
        Source = Memory("IOANNIDES-1992", "published form; the exact one from Timoshenko's beam on springs"),
        Notes = "A bar bears on both slabs and turns in both; the published form counts one face and no turning, so it is a little over twice as stiff. Put into the fits of load transfer, the exact stiffness meets plate finite elements within 3 % on large slabs; the published one reads some 10 % high.",
        Work = s =>
        {
            s.Result("D", DowelBar.JointStiffness(s["support"], s["diameter"], s["steel"], s["steel-poisson"], s["joint"]));
            var parts = DowelSpring.Yield(s["support"], s["diameter"], s["steel"], s["steel-poisson"], s["joint"]);
            s.Result("D₂", 1 / parts.Total);
            s.Result("faces", parts.Faces / parts.Total);
            s.Result("turning", parts.Turning / parts.Total);
            s.Result("gap", (parts.Bending + parts.Shear) / parts.Total);
        },
        Examples =
        [
            Example("1½-in bar, ¼-in joint", ["diameter", "1.5 in", "support", "1.5e6 pci", "joint", "0.25 in"],
                [new("D", "1.941e6 lbf/in", 500), new("D₂", "9.2054e5 lbf/in", 5)], ByHand),
        ],
    };

    private static WorkedExample Capacity(string spacing, params ImmutableArray<ExpectedValue> expected) => Example(
        $"5-t wheel, bars at {spacing}",
        [
            "load", "5000 kgf", "diameter", "2.5 cm", "length", "43 cm", "joint", "2 cm", "shear", "1000 kgf/cm2", "bending", "1400 kgf/cm2",
            "bearing", "100 kgf/cm2", "spacing", spacing, "relative", "80 cm",
        ],
        expected, Seen("NPTEL-IITB", "lecture 29 p. 12"), "Bar of 45 cm, less 2 cm of joint.");

    private static string[] Bar(string distance) =>
        ["load", "1350 lbf", "diameter", "1 in", "support", "1.5e6 pci", "steel", "30e6 psi", "joint", "0.25 in", "distance", distance];
}
