using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Opening;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Opening to traffic.</summary>
internal static class OpeningFormulas
{
    private const string Topic = "Opening to traffic";

    public static ImmutableArray<HandbookEntry> Entries { get; } = [Hours, Beam];

    private static HandbookEntry Hours => new()
    {
        Id = "hours-to-opening",
        Title = "Hours to a strength at a steady temperature",
        Topic = Topic,
        Expression = "te = t0 + S/[(Su − S) k]; t = te/exp[−5000 (1/T − 1/296.15)]",
        Inputs =
        [
            Strength("opening", "S", "Strength at opening", 1e8), Strength("end", "Su", "End strength of the curve", 2e8), Number("rate", "k", "Rate of the curve, 1/h", 1e-4, 10),
            Number("set", "t0", "Equivalent hours at set", 0, 100) with { Default = 0 }, new("temperature", "T", "Concrete temperature", Temperature, -5, 80),
        ],
        Outputs = [new("te", "Equivalent hours at 23 °C", Plain), new("t", "Hours", Plain)],
        Source = Memory("CARINO-1984"),
        Notes = "A slab is not steady: use the forecast. This is its check by hand.",
        Caution = ConcretePlan.Cautions[1],
        Work = s =>
        {
            var age = StrengthForms.Inverse(StrengthForm.HyperbolicFromSet, [s["end"], s["rate"], s["set"]], s["opening"]);
            if (double.IsInfinity(age)) s.Doubt("The curve never reaches the opening strength.", "end strength");
            s.Result("t", s.Result("te", age) / MaturityScale.Age.Rate(s["temperature"]));
        },
        Examples =
        [
            Example("2,000 psi at 23 °C", ["opening", "13.79 MPa", "end", "40 MPa", "rate", "0.1", "set", "3", "temperature", "23 °C"], [new("te", "8.261", 0.002), new("t", "8.261", 0.002)], ByHand),
        ],
    };

    private static HandbookEntry Beam => new()
    {
        Id = "beam-strength",
        Title = "Flexural strength from a beam",
        Topic = Topic,
        Expression = "third-point: P L/(b d²); centre-point: 3 P L/(2 b d²)",
        Inputs =
        [
            Load("load", "P", "Load at failure"), Small("span", "L", "Span", 0.1, 2), Small("width", "b", "Width", 0.05, 1), Small("depth", "d", "Depth", 0.05, 1),
        ],
        Outputs = [new("third", "Third-point", Stress), new("centre", "Centre-point", Stress)],
        Source = Memory("ASTM-C1074", "tests of beams; IS 516 for the third-point formula"),
        Notes = "Third-point: the beam must break inside the middle third. A third-point value is not met by a centre-point test without the conversion.",
        Caution = ConcretePlan.Cautions[1],
        Work = s =>
        {
            s.Result("third", StrengthConversions.ThirdPointStress(s["load"], s["span"], s["width"], s["depth"]));
            s.Result("centre", StrengthConversions.CentrePointStress(s["load"], s["span"], s["width"], s["depth"]));
        },
        Examples = [Example("6 in beam on 18 in", ["load", "3600 lbf", "span", "18 in", "width", "6 in", "depth", "6 in"], [new("third", "300 psi", 0.01), new("centre", "450 psi", 0.01)], ByHand)],
    };
}
