using System.Collections.Immutable;
using Slabwright.Core.Joints;
using Slabwright.Core.Joints.Faulting;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Faulting by closed regressions.</summary>
internal static class FaultingRegressions
{
    private const string Topic = "Faulting";
    private const string AsItIs = "Mean of many roads. A negative result is shown as it is and means no more than none: the inputs left the data the regression was fitted to.";

    private static readonly HandbookInput Axles = Number("axles", "CESAL", "18-kip equivalent single axles so far", 1000, 1e10);
    private static readonly HandbookInput Age = Number("age", "AGE", "Age, years", 0, 60);
    private static readonly HandbookInput Drainage = Number("drainage", "Cd", "Drainage coefficient", 0.6, 1.3) with { Default = 1 };
    private static readonly HandbookInput Spacing = Length("spacing", "L", "Joint spacing", 50);
    private static readonly HandbookInput Freezing = new("freezing", "FI", "Freezing index, degree-days", Difference, 0, 5000);
    private static readonly HandbookInput Rain = Small("rain", "P", "Precipitation a year", 0, 10);
    private static readonly HandbookInput Base = Whole("base", "BASE", "Base: 1 stabilised, 0 not", 0, 1) with { Default = 0 };
    private static readonly HandbookInput Wide = Whole("wide", "WIDE", "Lane: 1 widened, 0 not", 0, 1) with { Default = 0 };
    private static readonly HandbookInput BearingStress = Strength("bearing", "B", "Bearing stress by `faulting-bearing`", 1e8) with { Least = 0 };
    private static readonly HandbookInput Diameter = Small("diameter", "d", "Dowel diameter", 0.005, 0.1);

    private static readonly string[] Road =
        ["axles", "10e6", "spacing", "15 ft", "freezing", "500 °F", "rain", "30 in"];

    public static ImmutableArray<HandbookEntry> Entries { get; } = [Bearing, Dowelled1998, Undowelled1998, Study1990, EarlyDowelled, EarlyUndowelled];

    private static HandbookEntry Bearing => new()
    {
        Id = "faulting-bearing",
        Title = "Bearing stress for the faulting regressions",
        Topic = Topic,
        Expression = "B = f P T K (2 + βz)/(4EsIβ³), f = 24/(l + 12), P 9000 lb, T 0.45, K 1.5e6 pci, Es 29e6 psi; z = C L (α TRANGE/2 + 1.5e-4)",
        Inputs =
        [
            Diameter, Small("relative", "l", "Radius of relative stiffness", 0.1, 5), Spacing, Number("restraint", "C", "0.65 stabilised, 0.80 granular base", 0.1, 1),
            Alpha, new("range", "TRANGE", "Yearly range of temperature", Difference, 0, 100),
        ],
        Outputs = [new("z", "Joint opening", Short), new("B", "Bearing stress", Stress)],
        Source = Memory("FHWA-RD-89-136", "with the AASHTO Supplement 1998"),
        Notes = "For these regressions only; the bearing limit is checked with the stress of `dowel-bearing`.",
        Work = s =>
        {
            var opening = s.Result("z", FaultingRegression.Opening(s["restraint"], s["spacing"], s["expansion"], s["range"]));
            s.Result("B", FaultingRegression.BearingStress(s["diameter"], s["relative"], opening));
        },
        Examples =
        [
            Example("1¼-in dowel, 15 ft",
                ["diameter", "1.25 in", "relative", "36.1 in", "spacing", "15 ft", "restraint", "0.80", "expansion", "5.5e-6 1/°F", "range", "80 °F"],
                [new("z", "0.0533 in", 0.00005), new("B", "1991 psi", 1.5)], ByHand),
        ],
    };

    private static HandbookEntry Dowelled1998 => new()
    {
        Id = "faulting-dowelled",
        Title = "Faulting of dowelled joints, AASHTO 1998",
        Topic = Topic,
        Expression = "F = CESAL^0.25 [0.0628 − 0.0628Cd + 0.3673e-8 B² + 0.4116e-5 L² + 0.7466e-9 FI² P^0.5 − 0.009503 BASE − 0.01917 WIDE + 0.0009217 AGE] (millions, psi, ft, °F·days, in)",
        Inputs = [Axles, Age, Drainage, BearingStress, Spacing, Freezing, Rain, Base, Wide],
        Outputs = [new("F", "Mean faulting", Short)],
        Source = Memory("AASHTO-1998", "supplement, FHWA-RD-97-131"),
        Notes = AsItIs,
        Work = s => Give(s, FaultingRegression.Aashto1998Dowelled(From(s))),
        Examples = [Of("2500 psi", "0.0771 in"), Of("1500 psi", "0.0509 in"), Of("4000 psi", "0.1408 in")],
    };

    private static HandbookEntry Undowelled1998 => new()
    {
        Id = "faulting-undowelled",
        Title = "Faulting of joints without dowels, AASHTO 1998",
        Topic = Topic,
        Expression = "F = CESAL^0.25 [0.2347 − 0.1516Cd − 0.000250 h²/L^0.25 − 0.0115 BASE + 0.7784e-7 FI^1.5 P^0.25 − 0.002478 D90^0.5 − 0.0415 WIDE]",
        Inputs = [Axles, Drainage, Thickness, Spacing, Freezing, Rain, Number("hot-days", "D90", "Days a year above 90 °F", 0, 366), Base, Wide],
        Outputs = [new("F", "Mean faulting", Short)],
        Source = Memory("AASHTO-1998", "supplement, FHWA-RD-97-131"),
        Notes = AsItIs,
        Work = s => Give(s, FaultingRegression.Aashto1998Undowelled(From(s))),
        Examples = [Example("10 in, 30 hot days", [.. Road, "thickness", "10 in", "hot-days", "30"], [new("F", "0.1047 in", 0.0001)], ByHand)],
    };

    private static HandbookEntry Study1990 => new()
    {
        Id = "faulting-study-1990",
        Title = "Faulting of dowelled joints, performance study of 1990",
        Topic = Topic,
        Expression = "F = CESAL^0.5377 [2.2073 + 0.002171 B^0.4918 + 0.0003292 L^1.0793 − 2.1397 k^0.01305]",
        Inputs = [Axles, BearingStress, Spacing, Springs],
        Outputs = [new("F", "Mean faulting", Short)],
        Source = Memory("FHWA-RD-89-136", "R² 0.53"),
        Notes = AsItIs + " It does so at low bearing stress.",
        Work = s => Give(s, FaultingRegression.PerformanceStudy1990(From(s))),
        Examples = [Study("2500 psi", "0.0771 in"), Study("1500 psi", "-0.0009 in"), Study("4000 psi", "0.1684 in")],
    };

    private static HandbookEntry EarlyDowelled => new()
    {
        Id = "faulting-p020-dowelled",
        Title = "Faulting of dowelled joints, early analysis of 1994",
        Topic = Topic,
        Expression = "F = CESAL^0.25 [0.0238 + 0.0006(L/10)² + 0.0037(100/k)² + 0.0039(AGE/10)² − 0.0037 EDGE − 0.0218 d]",
        Inputs = [Axles, Age, Spacing, Springs, Diameter, Whole("edge", "EDGE", "Edge support: 1 tied concrete, 0 none", 0, 1) with { Default = 0 }],
        Outputs = [new("F", "Mean faulting", Short)],
        Source = Memory("P-020", "1994"),
        Notes = AsItIs,
        Work = s => Give(s, FaultingRegression.EarlyAnalysisDowelled(From(s))),
        Examples =
        [
            Example("1¼-in dowels", ["axles", "10e6", "age", "20", "spacing", "15 ft", "reaction", "200 pci", "diameter", "1.25 in"], [new("F", "0.0257 in", 0.0001)], ByHand),
        ],
    };

    private static HandbookEntry EarlyUndowelled => new()
    {
        Id = "faulting-p020-undowelled",
        Title = "Faulting of joints without dowels, early analysis of 1994",
        Topic = Topic,
        Expression = "F = CESAL^0.25 [−0.0757 + 0.0251 AGE^0.5 + 0.0013(P/10)² + 0.0012 FI P/1000 − 0.0378 DRAIN]",
        Inputs = [Axles, Age, Freezing, Rain, Whole("drains", "DRAIN", "Edge drains: 1 yes, 0 no", 0, 1) with { Default = 0 }],
        Outputs = [new("F", "Mean faulting", Short)],
        Source = Memory("P-020", "1994"),
        Notes = AsItIs,
        Work = s => Give(s, FaultingRegression.EarlyAnalysisUndowelled(From(s))),
        Examples = [Example("20 years, 30 in", ["axles", "10e6", "age", "20", "freezing", "500 °F", "rain", "30 in"], [new("F", "0.1178 in", 0.0001)], ByHand)],
    };

    private static void Give(CalculationSheet s, double faulting)
    {
        if (s.Result("F", faulting) < 0) s.Doubt("The regression goes below zero here: no more than no faulting.", "0");
    }

    private static RegressionInputs From(CalculationSheet s) => new()
    {
        EquivalentAxles = s["axles"], Age = s.Given("age"), Drainage = s.Given("drainage"), Bearing = s.Given("bearing"), JointSpacing = s.Given("spacing"),
        Thickness = s.Given("thickness"), FreezingIndex = s.Given("freezing"), Precipitation = s.Given("rain"), HotDays = s.Given("hot-days"),
        StabilisedBase = s.Given("base") > 0.5, WideLane = s.Given("wide") > 0.5, EdgeSupport = s.Given("edge") > 0.5, EdgeDrains = s.Given("drains") > 0.5,
        Reaction = s.Given("reaction"), DowelDiameter = s.Given("diameter"),
    };

    private static WorkedExample Of(string bearing, string faulting) =>
        Example($"20 years, bearing {bearing}", [.. Road, "age", "20", "bearing", bearing], [new("F", faulting, 0.0001)], ByHand);

    private static WorkedExample Study(string bearing, string faulting) => Example(
        $"Bearing {bearing}", ["axles", "10e6", "spacing", "15 ft", "reaction", "200 pci", "bearing", bearing], [new("F", faulting, 0.0001)], ByHand);
}
