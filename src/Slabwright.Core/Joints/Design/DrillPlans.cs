using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Joints.Design;

/// <summary>Holes, set-ups, tolerances and steps for the bars of a joint drilled into old concrete.</summary>
internal static class DrillPlans
{
    private const double Inch = 0.0254;

    private static readonly SourceRef Ohio510 = new("ODOT-510", "dowel holes", SourceStatus.Verified);
    private static readonly SourceRef Ohio255 = new("ODOT-255", "sec. 255.05", SourceStatus.Verified);
    private static readonly SourceRef Defense = new("UFC-3-270-04", "sec. 4.7", SourceStatus.Verified);
    private static readonly SourceRef Checklist = new("FHWA-CK-10", "dowels", SourceStatus.FromMemory);

    /// <summary>Plan of one joint.</summary>
    public static DrillPlan Of(BarLayout bars, double width, JointInputs inputs) => new()
    {
        Anchor = inputs.Anchor == BarAnchor.Epoxy ? "epoxy" : "cement grout",
        HoleDiameter = bars.Diameter + Oversize(inputs.Anchor).Value,
        HoleDepth = bars.Embedment,
        SetUps = GangDrill.SetUps(bars.Offsets, inputs.GangDrills, inputs.GangSpacing, width),
        Tolerances = Tolerances(bars, inputs.Anchor),
        Steps = Steps(bars, inputs),
    };

    /// <summary>
    /// How much wider the hole is than the bar, m: ⅛ in for epoxy, which is the most allowed; ¼ in for cement grout.
    /// </summary>
    public static (double Value, SourceRef Source) Oversize(BarAnchor anchor) => anchor == BarAnchor.Epoxy
        ? (Inch / 8, Defense)
        : (Inch / 4, new SourceRef("FHWA-CK-10", "hole diameter, 0.20 to 0.25 in over the bar", SourceStatus.FromMemory));

    private static ImmutableArray<CrewNote> Tolerances(BarLayout bars, BarAnchor anchor)
    {
        var (over, source) = Oversize(anchor);
        return
        [
            new("hole diameter", anchor == BarAnchor.Epoxy
                ? $"{JointWords.Bar(bars.Diameter + over)}; no more than {JointWords.Bar(over)} above the bar."
                : $"{JointWords.Bar(bars.Diameter + over)}: {JointWords.Bar(over)} above the bar.", source),
            new("hole depth", $"{JointWords.Bar(bars.Embedment)}, not less; mark the drill steel.", SourceRef.CommonPractice),
            new("height", $"Bar centre {JointWords.Bar(bars.Depth)} below the surface, within {JointWords.Bar(Inch / 4)}.", Checklist),
            new("alignment", "Square to the face and level within 1/4 in per foot (20 mm per metre) of bar.", Checklist),
            new("place across", $"Within {JointWords.Bar(Inch)} of the offset shown.", SourceRef.CommonPractice),
        ];
    }

    private static ImmutableArray<CrewNote> Steps(BarLayout bars, JointInputs inputs)
    {
        var epoxy = inputs.Anchor == BarAnchor.Epoxy;
        var steps = ImmutableArray.CreateBuilder<CrewNote>();
        steps.Add(new("silica dust", "Drill outdoors only, with the shroud and dust collector running and a vacuum with fine filter for the holes; "
            + "wear the respirator the rule asks for at a dowel drilling rig.", new("CFR-1926-1153", "Table 1", SourceStatus.FromMemory)));
        steps.Add(new("drill", $"Set the gang drill on the mark, {JointWords.Count(inputs.GangDrills)} drills at {JointWords.Bar(inputs.GangSpacing)}; at "
            + "least three holes at a time; stop if the face spalls.", Ohio255));
        steps.Add(new("clean", "Blow each hole out from the back with oil-free air, brush it and blow again; no dust, mud or frost.", Ohio255));
        steps.Add(epoxy
            ? new("dry", "The hole must be dry before epoxy goes in.", Ohio510)
            : new("wet", "Saturate the hole, then blow out the free water.", Ohio510));
        steps.Add(new("temperature", "Old concrete at 40 °F (4 °C) or warmer, measured on the concrete.", Ohio510));
        steps.Add(new("anchor", $"Put the {(epoxy ? "epoxy" : "grout")} in at the back of the hole, enough to fill it when the bar goes in.", Ohio255));
        steps.Add(new("insert", "Push the bar in while turning it a full turn, so that the anchor runs all round it.", SourceRef.CommonPractice));
        steps.Add(new("disc", "Push the retention disc tight against the face; it holds the anchor in and leaves no hollow at the face.", Ohio255));
        if (bars.Kind == BarKind.Dowel)
            steps.Add(new("grease", "Coat the free end lightly with grease or oil, all of it; no bond on this side.", Defense));
        steps.Add(new("alignment check", "Check every bar with a level and against the lane line before the anchor sets; a bar out of line locks the joint.", Checklist));
        steps.Add(new("set", "Leave the bars alone until the anchor holds them firmly, and place no concrete before it has hardened.", Ohio255));
        return steps.ToImmutable();
    }
}
