using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Slabs;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using JointChecks = Slabwright.Core.Joints.Design.JointChecks;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>
/// Works one joint out from text: a wheel on the slab before the joint, in the interior, at the joint and at the corner, with the joint's
/// bars and without, by closed forms and by plate finite elements.
/// </summary>
public static class JointByHand
{
    /// <summary>Name of the list of bar offsets, given beside the other inputs.</summary>
    public const string BarsKey = "bars";

    private const double Inch = 0.0254;

    private static readonly SourceRef Assumed = SourceRef.CommonPractice;

    private static readonly Dictionary<string, SourceRef> Sources = new(StringComparer.Ordinal);

    private static readonly HandbookEntry Reading = new()
    {
        Id = "joint-by-hand",
        Title = "One joint by hand",
        Topic = "Joints",
        Expression = "closed forms beside plate finite elements",
        Inputs =
        [
            Small("thickness", "h", "Slab thickness", 0.05, 1),
            With(new("k", "k", "Modulus of foundation reaction", Reaction, 1e6, 1e9), JointDefaults.Reaction(BaseKind.Granular)),
            With(new("wheel", "W", "Wheel load", Force, 100, 1e6), 9000 * Units.PoundOfForce.Factor, Assumed),
            With(new("pressure", "q", "Tyre pressure", Stress, 1e5, 5e6), JointDefaults.TyrePressure),
            With(new("wheel-at", "x", "Wheel's middle from the lane's left edge; 0 for the wheel path", Long, 0, 10), 0, Assumed),
            With(Strength("modulus", "E", "Young's modulus of concrete"), JointDefaults.Modulus),
            With(Number("poisson", "µ", "Poisson's ratio of concrete", 0, 0.49), JointDefaults.Poisson),
            With(Strength("strength", "f'c", "Cylinder strength of concrete", 2e8), JointDefaults.Strength),
            With(new("lane-width", "B", "Lane width", Long, 2, 10), 12 * 0.3048, Assumed),
            With(new("slab", "S", "Length of the old slab", Long, 0.5, 100), 15 * 0.3048, Assumed),
            With(new("repair", "R", "Length of the repair", Long, 0.5, 100), 6 * 0.3048, Seen("FHWA-FDR-5", "least length")),
            With(Small("joint-width", "z", "Joint width", 0.0001, 0.05), JointMovement.DowelledLimit, Memory("HUANG-2004", "limit of dowelled joints")),
            With(Small("diameter", "d", "Bar diameter", 0.005, 0.1), 1.25 * Inch, Assumed),
            With(Small("bar-length", "Lb", "Bar length", 0.1, 1.5), 18 * Inch, Assumed),
            With(Small("embedment", "Le", "Length in the old slab; 0 for half the bar", 0, 1.5), 0, Assumed),
            With(Small("spacing", "s", "Bar spacing", 0.05, 2), 12 * Inch, Seen("WA-13", "12 in centres")),
            With(Small("edge", "e", "Outer bars from the lane's edges", 0, 2), BarRow.EdgeDistance, Seen("WA-13", "first bar 12 in from the edge")),
            With(Whole("per-path", "n", "Bars in each wheel path; 0 for the full width", 0, 12), 0, Assumed),
            With(new("dowel-support", "K", "Modulus of dowel support", Reaction, 1e9, 1e13), JointDefaults.DowelSupport),
            With(Strength("steel", "Es", "Young's modulus of steel"), JointDefaults.SteelModulus),
        ],
        Outputs = [],
        Source = Assumed,
        Notes = "Closed forms beside plate finite elements.",
    };

    /// <summary>The inputs in order; those without a default must be given.</summary>
    public static ImmutableArray<HandbookInput> Inputs => Reading.Inputs;

    /// <summary>Works a joint out.</summary>
    /// <param name="texts">Inputs by key as text with units; <see cref="BarsKey"/> lists bar offsets from the left edge, e.g. <c>1 ft; 2 ft; 3 ft</c>, in place of spacing.</param>
    /// <param name="system">Units of bare numbers.</param>
    public static HandJoint Evaluate(IReadOnlyDictionary<string, string> texts, UnitSystem system = UnitSystem.UsCustomary)
    {
        var reader = new InputReader(Reading, system);
        var values = reader.Read(texts.Where(t => t.Key != BarsKey).ToDictionary(t => t.Key, t => t.Value));
        var findings = reader.Findings.Select(Missing).ToImmutableArray().ToBuilder();
        var inputs = Taken(texts, values, system);
        if (HasError(findings)) return new HandJoint { Inputs = inputs, Findings = findings.ToImmutable() };
        var conditions = Conditions(values);
        var layout = Layout(values, Offsets(texts, values, system, findings));
        findings.AddRange(JointChecks.Conditions(conditions).Select(ByOption));
        findings.AddRange(JointChecks.Layout(layout, conditions.LaneWidth, conditions.Thickness).Select(ByOption));
        var wheel = Wheel(values, conditions, findings);
        if (HasError(findings)) return new HandJoint { Inputs = inputs, Findings = findings.ToImmutable() };
        return HandJointWork.Of(conditions, layout, wheel, values["strength"]) with { Inputs = inputs, Findings = [.. findings, .. HandJointWork.Doubts(conditions)] };
    }

    private static ImmutableArray<HandInput> Taken(IReadOnlyDictionary<string, string> texts, Dictionary<string, double> values, UnitSystem system)
    {
        var taken = Reading.Inputs.Where(i => values.ContainsKey(i.Key)).Select(i => new HandInput(
            i.Key, i.Name, MeasureText.Write(values[i.Key], i.Units.In(system), i.Whole),
            texts.Keys.Any(k => k.Equals(i.Key, StringComparison.OrdinalIgnoreCase)) ? null : Sources.GetValueOrDefault(i.Key)));
        return texts.TryGetValue(BarsKey, out var bars) ? [.. taken, new HandInput(BarsKey, "Bars from the lane's left edge", bars, null)] : [.. taken];
    }

    private static JointConditions Conditions(Dictionary<string, double> values) => new()
    {
        Thickness = values["thickness"], LaneWidth = values["lane-width"], OldSlab = values["slab"], Repair = values["repair"],
        Modulus = values["modulus"], Poisson = values["poisson"], Strength = values["strength"], Rupture = JointDefaults.Rupture.Value,
        Reaction = values["k"], Expansion = JointDefaults.Expansion.Value, Base = BaseKind.Granular, Drainage = JointDefaults.Drainage.Value,
        Climate = new Climate(false), Temperatures = (0, 40), DowelSupport = values["dowel-support"], SteelModulus = values["steel"],
        JointWidth = values["joint-width"], OuterEdge = LaneEdge.Unpaved, Traffic = [], EquivalentAxlesPerDay = 0, Growth = 0,
        DesignYears = JointDefaults.DesignYears.Value, TyrePressure = values["pressure"],
    };

    private static BarLayout Layout(Dictionary<string, double> values, ImmutableArray<double> offsets)
    {
        var length = values["bar-length"];
        return new BarLayout
        {
            Kind = BarKind.Dowel, Arrangement = values["per-path"] > 0 ? BarArrangement.WheelPaths : BarArrangement.FullWidth,
            Diameter = values["diameter"], Length = length, Embedment = values["embedment"] > 0 ? values["embedment"] : length / 2,
            Depth = values["thickness"] / 2, Offsets = offsets, Spacing = values["spacing"],
        };
    }

    private static ImmutableArray<double> Offsets(
        IReadOnlyDictionary<string, string> texts, Dictionary<string, double> values, UnitSystem system, ImmutableArray<Finding>.Builder findings)
    {
        if (texts.TryGetValue(BarsKey, out var list)) return ReadBars(list, system, findings);
        var (first, last) = (values["edge"], values["lane-width"] - values["edge"]);
        var count = (int)values["per-path"];
        var row = count > 0 ? BarRow.WheelPaths(first, last, values["spacing"], count) : BarRow.FullWidth(first, last, values["spacing"]);
        if (row.IsEmpty)
        {
            findings.Add(new Finding(
                "JNT-081", FindingLevel.Error, "The bars do not fit the lane.", new FindingPlace(Field: count > 0 ? "per-path" : "spacing"),
                MeasureText.Write(values["spacing"], Short.In(system)), "Give fewer bars, a smaller spacing or edge distance, or list them with bars."));
        }

        return row;
    }

    private static ImmutableArray<double> ReadBars(string list, UnitSystem system, ImmutableArray<Finding>.Builder findings)
    {
        var offsets = ImmutableArray.CreateBuilder<double>();
        foreach (var text in list.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (MeasureText.Read(text, Short.In(system), out var offset) == MeasureReading.Read) offsets.Add(offset);
            else
            {
                findings.Add(new Finding(
                    "JNT-080", FindingLevel.Error, "A bar's place is not a length.", new FindingPlace(Field: BarsKey), text,
                    "List distances from the lane's left edge, e.g. bars=\"12 in; 24 in; 36 in\"."));
            }
        }

        return offsets.ToImmutable();
    }

    /// <summary>The tyre's print at the joint: a rectangle of the contact area, as the design takes it.</summary>
    private static WheelPatch Wheel(Dictionary<string, double> values, JointConditions conditions, ImmutableArray<Finding>.Builder findings)
    {
        var (length, width) = WheelImprint.Rectangle(values["wheel"] / values["pressure"]);
        var at = values["wheel-at"] > 0 ? values["wheel-at"] : conditions.LaneWidth - JointLoads.PathFromEdge - width / 2;
        if (at - width / 2 < 0 || at + width / 2 > conditions.LaneWidth)
        {
            findings.Add(new Finding(
                "JNT-082", FindingLevel.Error, "The wheel stands beside the lane.", new FindingPlace(Field: "wheel-at"), JointWords.Of(at, Long),
                "Give the wheel's middle from the lane's left edge, half a tyre inside both edges.", JointWords.Of(conditions.LaneWidth - width / 2, Long)));
        }

        return new WheelPatch(-length / 2, at, length, width, values["wheel"]);
    }

    /// <summary>Only the thickness has no default; the mend says how to give it.</summary>
    private static Finding Missing(Finding finding) =>
        finding.Code == "HBK-002" ? finding with { Mend = "Give it, e.g. --thickness \"10 in\"." } : finding;

    private static bool HasError(IEnumerable<Finding> findings) => findings.Any(f => f.Level == FindingLevel.Error);

    /// <summary>A finding of the design in the words of the options.</summary>
    private static Finding ByOption(Finding finding)
    {
        var field = (finding.Place.Field ?? "").Replace("joints.", "", StringComparison.Ordinal);
        field = field.StartsWith("offsets", StringComparison.Ordinal) ? BarsKey : field switch
        {
            "reaction" => "k",
            "old_slab" => "slab",
            _ => field.Replace('_', '-'),
        };
        return finding with { Place = finding.Place with { Field = field } };
    }

    private static HandbookInput With(HandbookInput input, JointDefault value) => With(input, value.Value, value.Source);

    private static HandbookInput With(HandbookInput input, double value, SourceRef source)
    {
        Sources[input.Key] = source;
        return input with { Default = value };
    }
}
