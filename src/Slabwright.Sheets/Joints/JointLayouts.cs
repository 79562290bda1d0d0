using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Joints.Design;

namespace Slabwright.Sheets.Joints;

/// <summary>Joints that are drilled and built alike: one drawing serves them all.</summary>
/// <param name="Mark">Mark on the drawing and in the schedules, e.g. <c>J1</c>.</param>
/// <param name="Joints">The joints, in the order of the plan; at least one.</param>
public sealed record JointLayoutGroup(string Mark, ImmutableArray<DesignedJoint> Joints)
{
    /// <summary>The joint that is drawn: a drilled start where there is one.</summary>
    public DesignedJoint Sample => Joints.FirstOrDefault(j => j.Position == JointPosition.Start) ?? Joints[0];

    /// <summary>The bars of all of them.</summary>
    public BarLayout Bars => Sample.Bars!;
}

/// <summary>Finds the distinct layouts of a plan: lane, thickness, bars and drilling.</summary>
public static class JointLayouts
{
    /// <summary>The layouts, numbered by lane and then by place; joints without bars need none.</summary>
    public static ImmutableArray<JointLayoutGroup> Of(JointPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. plan.Joints.Where(j => j.Bars is not null).GroupBy(KeyOf).OrderBy(g => g.First().Lane).ThenBy(g => g.First().Drilling is null).ThenBy(g => g.First().At)
            .Select((g, i) => new JointLayoutGroup("J" + (i + 1).ToString(CultureInfo.InvariantCulture), [.. g]))];
    }

    /// <summary>Mark of every joint that has bars.</summary>
    public static Dictionary<(string Repair, double At), string> MarksOf(JointPlan plan)
    {
        var marks = new Dictionary<(string Repair, double At), string>();
        foreach (var group in Of(plan))
        {
            foreach (var joint in group.Joints) marks[(joint.RepairId, joint.At)] = group.Mark;
        }

        return marks;
    }

    /// <summary>What two joints share when they are built alike; lengths to a tenth of a millimetre.</summary>
    private static string KeyOf(DesignedJoint joint)
    {
        var bars = joint.Bars!;
        var drilling = joint.Drilling is { } d
            ? $"{d.Anchor}|{Text(d.HoleDiameter)}|{Text(d.HoleDepth)}|{string.Join(';', d.SetUps.Select(s => $"{s.Number}:{Text(s.FrameAt)}:{string.Join(',', s.Bars)}"))}"
            : "";
        return $"{joint.Lane}|{Text(joint.LaneWidth)}|{Text(joint.Thickness)}|{joint.Design}|{bars.Kind}|{bars.Arrangement}|{Text(bars.Diameter)}|{Text(bars.Length)}|"
            + $"{Text(bars.Embedment)}|{Text(bars.Depth)}|{string.Join(',', bars.Offsets.Select(Text))}|{drilling}";
    }

    private static string Text(double metres) => Math.Round(metres * 10_000).ToString(CultureInfo.InvariantCulture);
}
