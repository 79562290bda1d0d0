using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Joints.Removal;

/// <summary>Holds the lifting settings against what makes sense.</summary>
internal static class LiftCheck
{
    /// <summary>True when pieces can be weighed and lifted with these settings.</summary>
    public static bool Usable(LiftingSettings settings) => AngleHolds(settings) && settings.Legs is 1 or 2 or 4 && Numbers(settings) && ChartHolds(settings);

    /// <summary>What is wrong or missing.</summary>
    public static IEnumerable<Finding> Of(LiftingSettings settings)
    {
        if (!AngleHolds(settings))
        {
            yield return Bad("JNT-060", "The slings are flatter than 30° from the horizontal: refused.", "sling_angle_deg",
                Units.Degree.Format(settings.SlingAngle, 1), "Use longer slings or a spreader; 60° is usual.", "30° to 90°");
        }

        if (settings.Crane is not null && !ChartHolds(settings))
        {
            yield return Bad("JNT-061", "The crane's load chart cannot be used: radii must rise, capacities must not, and the share must lie above 0 and up to 1.",
                "crane.chart", null, "Copy the rows of the maker's chart for the boom and counterweight in use, nearest radius first.");
        }

        if (settings.Legs is not (1 or 2 or 4))
            yield return Bad("JNT-065", "Slings with one, two or four legs are planned for.", "legs", Units.One.Format(settings.Legs, 0), "Give 1, 2 or 4.");
        if (!Numbers(settings))
        {
            yield return Bad("JNT-066", "Lengths, density and the dynamic factor must be above 0 (the factor at least 1) and allowances not below 0.", "lifting", null,
                "Check longest and shortest piece, density, allowances and strengths.");
        }

        if (settings.Crane is null)
        {
            yield return new("JNT-063", FindingLevel.Note, "No crane load chart is given; reach and capacity are not checked.",
                Place("crane"), null, "Copy the chart of the machine into project.json.");
        }
    }

    private static bool AngleHolds(LiftingSettings settings) =>
        settings.SlingAngle >= LiftMechanics.LeastAngle - 1e-9 && settings.SlingAngle <= Math.PI / 2 + 1e-9;

    private static bool Numbers(LiftingSettings s) =>
        s.LongestPiece.Value > 0 && s.ShortestPiece.Value > 0 && s.Density.Value > 0 && s.DynamicFactor.Value >= 1 && s.WaterShare.Value >= 0
        && s.BaseBond.Value >= 0 && s.SideFriction.Value >= 0 && s.HeaviestPiece is null or > 0 && s.PinStrength is null or > 0 && s.GearStrength is null or > 0;

    private static bool ChartHolds(LiftingSettings settings)
    {
        if (settings.Crane is not { } crane) return true;
        if (crane.Chart.IsEmpty || crane.Share.Value is not (> 0 and <= 1) || crane.Chart[0].Radius <= 0 || crane.Chart[^1].Capacity <= 0) return false;
        return crane.Chart.Zip(crane.Chart.Skip(1)).All(p => p.Second.Radius > p.First.Radius && p.Second.Capacity <= p.First.Capacity);
    }

    private static Finding Bad(string code, string sentence, string field, string? value, string mend, string? limit = null) =>
        new(code, FindingLevel.Error, sentence, Place(field), value, mend, limit);

    private static FindingPlace Place(string field) => new("project.json", Field: field == "lifting" ? field : $"lifting.{field}");
}
