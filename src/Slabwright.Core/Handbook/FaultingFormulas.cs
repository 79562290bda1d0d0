using System.Collections.Immutable;
using Slabwright.Core.Joints;
using Slabwright.Core.Joints.Faulting;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Faulting month by month, and how joints wear.</summary>
internal static class FaultingFormulas
{
    private const string Topic = "Faulting";

    private const string RankOnly =
        "From memory throughout. The coefficients hold with the slab and climate models they were fitted with: rank alternatives, do not foretell faulting.";

    private static readonly HandbookInput Set = Whole("set", "C", "Coefficients: 1 report of 2004, 2 manual of 2008, 3 from 2015 on", 1, 3) with { Default = 1 };
    private static readonly HandbookInput Diameter = Small("diameter", "d", "Bar diameter", 0.005, 0.1);
    private static readonly HandbookInput SideDifference = Small("difference", "δ", "Deflection of loaded less unloaded side", 0, 0.1);

    private static readonly HandbookInput[] Site =
    [
        Number("erodibility", "EROD", "Erodibility of the base, 1 resists to 5 erodes", 1, 5), Part("frozen", "FR", "Share of the time the base is frozen"),
        Part("fines", "P200", "Subgrade finer than the No. 200 sieve", 0.001), Number("wet-days", "W", "Days a year with more than 0.1 in of rain", 1, 366),
        Strength("overburden", "ps", "Weight of slab and base on the subgrade", 1e5) with { Least = 100 },
        Small("lift", "δc", "Greatest mean monthly upward corner deflection by curling", 0, 0.02),
    ];

    public static ImmutableArray<HandbookEntry> Entries { get; } = [Energy, Month, Together, Bars, Faces];

    private static HandbookEntry Energy => new()
    {
        Id = "differential-energy",
        Title = "Differential energy of one axle pass",
        Topic = Topic,
        Expression = "DE = k/2 (dl + du)(dl − du)",
        Inputs = [Springs, Small("loaded", "dl", "Deflection of the loaded corner", 0, 0.1), Small("unloaded", "du", "Deflection of the unloaded corner", 0, 0.1)],
        Outputs = [new("DE", "Energy", Spring)],
        Source = Memory("NCHRP-1-37A", "part 3 ch. 4"),
        Notes = "Sum over the passes of a month. None at full load transfer.",
        Work = s =>
        {
            if (s["unloaded"] > s["loaded"]) s.Refuse("The unloaded side moves more than the loaded one.", "Exchange the two deflections.");
            else s.Result("DE", FaultingModel.Energy(s["reaction"], s["loaded"], s["unloaded"]));
        },
        Examples = [Example("30 and 25 mil, k 200 pci", ["reaction", "200 pci", "loaded", "0.030 in", "unloaded", "0.025 in"], [new("DE", "0.0275 lbf/in", 1e-6)], ByHand)],
    };

    private static HandbookEntry Month => new()
    {
        Id = "faulting-month",
        Title = "Faulting of one month",
        Topic = Topic,
        Expression = "ΔF = C34 (Fmax − F)² DE, Fmax,0 = C12 δc [log(1 + C5·5^EROD) log(P200 W/ps)]^C6, Fmax grows by C7 DE [log(1 + C5·5^EROD)]^C6; C12 = C1 + C2 FR^¼, C34 = C3 + C4 FR^¼",
        Inputs =
        [
            Set, .. Site, new HandbookInput("energy", "DE", "Differential energy of the month", Spring, 0, 1e9),
            Small("faulting", "F", "Faulting before the month", 0, 0.05) with { Default = 0 },
            Number("share", "e", "Share of the energy Fmax grows by: 1 as printed, 1e-6 for sums over passes", 0, 1) with { Default = 1 },
        ],
        Outputs =
        [
            new("Fmax,0", "Greatest faulting before traffic", Short), new("ΔF", "Growth as printed", Short), new("ΔFi", "Growth integrated over the month", Short),
            new("Fmax", "Greatest faulting after the month", Short),
        ],
        Source = Memory("NCHRP-1-37A", "part 3 ch. 4; sets of MEPDG-2008 and MEPDG-2015"),
        Notes = RankOnly + " As remembered, with energies summed over passes in lb/in, Fmax would pass all bounds within a month; a millionth of the energy keeps it in tenths of an inch. In heavy months the printed step overshoots Fmax, the integrated does not.",
        Work = s =>
        {
            var (set, site) = (FaultingCoefficients.All[s.Count("set") - 1], From(s));
            var greatest = s.Result("Fmax,0", FaultingModel.FirstGreatest(set, site));
            if (!double.IsFinite(greatest))
            {
                s.Refuse("P200 W/ps is 1 or less, where the formula has no answer.", "Check fines (%), wet days and overburden.");
                return;
            }

            var before = new FaultingMonth(0, s["faulting"], greatest);
            if (s["faulting"] > greatest) s.Doubt("The faulting is above the greatest value before traffic.", "Fmax,0");
            var printed = FaultingModel.Next(set, site, before, s["energy"], FaultingStep.Printed, s["share"]);
            var integrated = FaultingModel.Next(set, site, before, s["energy"], FaultingStep.Integrated, s["share"]);
            s.Result("ΔF", printed.Faulting - s["faulting"]);
            s.Result("ΔFi", integrated.Faulting - s["faulting"]);
            s.Result("Fmax", printed.Greatest);
            if (printed.Faulting > printed.Greatest) s.Doubt("The printed step overshoots the greatest faulting; take the integrated one.", "Fmax");
        },
        Examples =
        [
            Example("First month of an invented road",
                [
                    "erodibility", "4", "frozen", "10 %", "fines", "40 %", "wet-days", "120", "overburden", "1.5 psi", "lift", "0.02 in", "energy", "0.05 lbf/in",
                ],
                [new("Fmax,0", "0.1218 in", 0.0001), new("ΔF", "1.6145e-6 in", 5e-10), new("Fmax", "0.2378 in", 0.00005)], ByHand),
        ],
    };

    private static HandbookEntry Together => new()
    {
        Id = "transfer-together",
        Title = "Load transfer by bars, faces and base together",
        Topic = Topic,
        Expression = "T = 1 − (1 − Td)(1 − Ta)(1 − Tb), Td, Ta = 1/(1 + 1.2 J^−0.849)",
        Inputs =
        [
            Number("bars", "Jd", "Dimensionless stiffness of the bars, 0 for none", 0, 1e4), Number("faces", "Ja", "Dimensionless stiffness of interlock, 0 for none", 0, 1e6),
            Part("base", "Tb", "Load transfer by the base: 20 % aggregate, 30 % asphalt-treated, 40 % cement-treated"),
        ],
        Outputs = [new("Td", "By the bars", Share), new("Ta", "By the faces", Share), new("T", "Together", Share)],
        Source = Memory("NCHRP-1-37A", "part 3 ch. 4"),
        Notes = "A sawn repair face against new concrete interlocks little.",
        Work = s => s.Result("T", JointWear.Together(
            s.Result("Td", LoadTransfer.ByCrovetti(s["bars"])), s.Result("Ta", LoadTransfer.ByCrovetti(s["faces"])), s["base"])),
        Examples = [Example("Bars of 27, aggregate base", ["bars", "27", "faces", "0", "base", "20 %"], [new("Td", "93.187 %", 0.001), new("T", "94.550 %", 0.001)], ByHand)],
    };

    private static HandbookEntry Bars => new()
    {
        Id = "bar-wear",
        Title = "Bars loosening under passes",
        Topic = Topic,
        Expression = "J0 = 120 d²/h, Jd* = min(118, max(165 d²/h − 19.812, 0.4)), J = Jd* + (J0 − Jd*) e^−D, D = C8 J0 δ s n/(10⁶ d f*c)",
        Inputs =
        [
            Diameter, Thickness, Small("spacing", "s", "Bar spacing", 0.05, 2), SideDifference, Number("passes", "n", "Passes of the axle", 0, 1e10),
            Strength("strength", "f*c", "Estimated compressive strength", 2e8) with { Least = 1e6 }, Number("factor", "C8", "Coefficient", 0, 1e4) with { Default = 400 },
        ],
        Outputs = [new("J0", "New", Plain), new("Jd*", "Worn out", Plain), new("D", "Damage", Plain), new("J", "After the passes", Plain)],
        Source = Memory("NCHRP-1-37A", "part 3 ch. 4; inches and psi inside"),
        Notes = RankOnly + " The shear is taken as printed, without the factor k l that would make it a force: with it bars would wear out within weeks.",
        Work = s =>
        {
            var start = s.Result("J0", JointWear.NewBars(s["diameter"], s["thickness"]));
            var worn = s.Result("Jd*", JointWear.WornBars(s["diameter"], s["thickness"]));
            if (worn > start) s.Doubt("Above d²/h of 0.44 in the formula stiffens bars by wear.", "d²/h 0.44 in");
            var damage = s.Result("D", JointWear.BarDamage(
                s["factor"], start, s["difference"], s["spacing"], s["passes"], s["diameter"], s["strength"]));
            s.Result("J", JointWear.Bars(start, worn, damage));
        },
        Examples =
        [
            Example("1½-in bars, 10 in, 10 million passes of 3 mil",
                ["diameter", "1.5 in", "thickness", "10 in", "spacing", "12 in", "difference", "0.003 in", "passes", "1e7", "strength", "5000 psi"],
                [new("J0", "27", 1e-9), new("Jd*", "17.313", 0.0005), new("D", "0.5184", 0.00005), new("J", "23.081", 0.001)], ByHand),
        ],
    };

    private static HandbookEntry Faces => new()
    {
        Id = "face-wear",
        Title = "Interlock of joint faces and its wear",
        Topic = Topic,
        Expression = "S₀ = 0.05 h e^(−0.028 w), log J = −3.19626 + 16.09737 exp{−exp[−(S − 0.35)/0.38]}; loss a pass 0.005e-6/[1 + (w/h)^−5.7] τ/τref up to w/h 3.8, "
            + "0.068e-6/[1 + 6(w/h − 3)^−1.98] τ/τref beyond, τ = J δ, τref = 111.1 exp{−exp[0.9988 exp(−0.1089 log J)]}; w in mil, h in inches",
        Inputs = [Thickness, Small("opening", "w", "Joint opening", 0, 0.02), SideDifference],
        Outputs =
        [
            new("S₀", "Shear capacity when new", Plain), new("J", "Dimensionless stiffness when new", Plain), new("loss", "Loss of capacity a pass", Plain),
        ],
        Source = Memory("NCHRP-1-37A", "part 3 ch. 4"),
        Notes = RankOnly,
        Work = s =>
        {
            var capacity = s.Result("S₀", JointWear.FaceCapacity(s["thickness"], s["opening"]));
            var stiffness = s.Result("J", JointWear.Faces(capacity));
            s.Result("loss", JointWear.FaceLoss(s["thickness"], s["opening"], stiffness, s["difference"]));
        },
        Examples =
        [
            Example("30-mil joint, 10 in, 3 mil", ["thickness", "10 in", "opening", "0.030 in", "difference", "0.003 in"],
                [new("S₀", "0.21586", 0.00001), new("J", "4.805", 0.0005), new("loss", "8.1103e-12", 5e-16)], ByHand),
        ],
    };

    private static FaultingSite From(CalculationSheet s) => new()
    {
        Erodibility = s["erodibility"], FrozenShare = s["frozen"], FinesShare = s["fines"], WetDays = s["wet-days"], Overburden = s["overburden"],
        CornerLift = s["lift"],
    };
}
