using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;

namespace Slabwright.SystemTests.Sheets;

/// <summary>Designed joints written by hand for the hand-made plan: dowels over the full width in odd lanes, in wheel paths in even lanes.</summary>
internal static class HandMadeJoints
{
    public static JointPlan Build(Project project, IEnumerable<Repair> repairs) => new()
    {
        Lanes = [.. project.Road.Lanes.Select(l => HandMadeLanes.Build(project, l.Number))],
        Joints = [.. repairs.SelectMany(r => OfRepair(project, r))],
        Findings = [new Finding("JNT-001", FindingLevel.Note, "Assumed for the joints: modulus of concrete.", new FindingPlace("project.json", null, "joints.modulus"), Source: "common practice")],
    };

    private static IEnumerable<DesignedJoint> OfRepair(Project project, Repair repair)
    {
        yield return Make(project, repair, repair.Start, JointPosition.Start);
        foreach (var joint in repair.Intermediate) yield return Make(project, repair, joint, JointPosition.Inner);
        yield return Make(project, repair, repair.End, JointPosition.End);
    }

    public static DesignedJoint Make(Project project, Repair repair, RepairJoint joint, JointPosition position)
    {
        var bars = joint.Design switch
        {
            JointDesign.Dowelled => Dowels(project.UnitSystem, repair.Width, repair.Thickness, repair.Lane % 2 == 0),
            JointDesign.Tied => Ties(project.UnitSystem, repair.Width, repair.Thickness),
            _ => null,
        };
        return new DesignedJoint
        {
            RepairId = repair.Id,
            Position = position,
            At = joint.At,
            Lane = repair.Lane,
            LaneWidth = repair.Width,
            Thickness = repair.Thickness,
            Design = joint.Design,
            Bars = bars,
            Drilling = bars is null || position == JointPosition.Inner ? null : Drill(bars, project.UnitSystem),
            Reasons = [new Reason("JNT-TEST", "Hand-made.", SourceRef.CommonPractice)],
        };
    }

    /// <summary>Dowels at 12 in (300 mm), over the full width or four in each wheel path.</summary>
    public static BarLayout Dowels(UnitSystem units, double width, double thickness, bool inWheelPaths)
    {
        var isUs = units == UnitSystem.UsCustomary;
        var step = isUs ? 0.3048 : 0.3;
        var count = (int)Math.Floor((width - step) / step + 0.01);
        var first = isUs ? step : Math.Round((width - (count - 1) * step) / 2, 3);
        ImmutableArray<double> all = [.. Enumerable.Range(0, count).Select(i => Math.Round(first + i * step, 6))];
        return new BarLayout
        {
            Kind = BarKind.Dowel,
            Arrangement = inWheelPaths ? BarArrangement.WheelPaths : BarArrangement.FullWidth,
            Diameter = isUs ? 0.0381 : 0.038,
            Length = isUs ? 0.4572 : 0.45,
            Embedment = isUs ? 0.2286 : 0.225,
            Depth = thickness / 2,
            Offsets = inWheelPaths ? [.. all.Take(4), .. all.TakeLast(4)] : all,
            Spacing = step,
        };
    }

    public static BarLayout Ties(UnitSystem units, double width, double thickness)
    {
        var step = units == UnitSystem.UsCustomary ? 0.6096 : 0.6;
        var count = (int)Math.Floor(width / step + 0.01) - 1;
        return new BarLayout
        {
            Kind = BarKind.TieBar,
            Arrangement = BarArrangement.FullWidth,
            Diameter = units == UnitSystem.UsCustomary ? 0.015875 : 0.016,
            Length = 0.762,
            Embedment = 0.254,
            Depth = thickness / 2,
            Offsets = [.. Enumerable.Range(0, count).Select(i => (width - (count - 1) * step) / 2 + i * step)],
            Spacing = step,
        };
    }

    public static DrillPlan Drill(BarLayout bars, UnitSystem units)
    {
        var sizes = bars.Offsets.Select((o, i) => (Number: i + 1, Offset: o)).Chunk(4).ToList();
        var text = units == UnitSystem.UsCustomary ? "1/4 in" : "6 mm";
        return new DrillPlan
        {
            Anchor = "epoxy",
            HoleDiameter = bars.Diameter + (units == UnitSystem.UsCustomary ? 0.003175 : 0.003),
            HoleDepth = bars.Embedment + (units == UnitSystem.UsCustomary ? 0.0127 : 0.012),
            SetUps = [.. sizes.Select((s, i) => new GangSetUp(i + 1, [.. s.Select(b => b.Number)], s[0].Offset))],
            Tolerances =
            [
                Note("Square and level", $"within {text} in 1 ft of bar, across and up and down", "FHWA-CK-10"),
                Note("Depth", $"centre within {text} of mid-depth", "FHWA-CK-10"),
                Note("Hole", $"no wider than the bar plus {text}; no spalls around the mouth", "UFC-04"),
            ],
            Steps =
            [
                Note("Face", "old face sawn, upright and sound; loose concrete taken off", "common practice"),
                Note("Frame", "rest the drill frame on the slab to be drilled, never on the base; check level and square before the first hole", "common practice"),
                Note("Drill", "at least three holes at a time, to the full depth, without spalling the face", "ODOT-255"),
                Note("Clean", "blow out with oil-free air from the back, brush, blow again; the hole is dry and dust-free when a finger comes out clean", "ODOT-255"),
                Note("Anchor", "inject at the back of the hole, enough that some comes out around the bar", "ODOT-255"),
                Note("Insert", "turn the bar while pushing it in, so that the anchor wraps it; do not pump it", "common practice"),
                Note("Disc", "slide the disc against the face at once, so that nothing runs out", "ODOT-255"),
                Note("Check", "bars hold firm within 30 minutes; sight along all of them and mend crooked ones while they can be moved", "ODOT-255"),
                Note("Grease", "thin coat on the free ends only; none on the faces", "UFC-04"),
                Note("Concrete", "vibrate around every bar; do not walk on bars", "common practice"),
            ],
        };
    }

    private static CrewNote Note(string name, string text, string tag) =>
        new(name, text, tag == "common practice" ? SourceRef.CommonPractice : new SourceRef(tag, "", SourceStatus.Verified));
}
