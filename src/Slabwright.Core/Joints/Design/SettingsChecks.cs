using Slabwright.Core.Evidence;

namespace Slabwright.Core.Joints.Design;

/// <summary>Checks of the settings that conditions do not carry: stock, drill, shares, keep-outs.</summary>
internal static class SettingsChecks
{
    public static IEnumerable<Finding> Of(JointSettings s)
    {
        foreach (var diameter in s.Diameters.Where(d => !(d > 0.005 && d < 0.1)))
            yield return Bad("diameters", "A bar diameter in stock is not one of a dowel.", JointWords.Bar(diameter), "Give diameters between 0.2 and 4 in (5 and 100 mm).");
        foreach (var length in s.Lengths.Where(d => !(d > 0.1 && d < 2)))
            yield return Bad("lengths", "A bar length in stock is not one of a dowel.", JointWords.Bar(length), "Give lengths between 4 and 78 in (100 and 2,000 mm).");
        if (s.GangDrills is < 1)
            yield return Bad("gang_drills", "The gang drill has no drill.", JointWords.Count(s.GangDrills.Value), "Give 1 or more.");
        if (s.GangSpacing is { } spacing && !(spacing > 0.05))
            yield return Bad("gang_spacing", "The drills stand too near one another.", JointWords.Bar(spacing), "Give the spacing of the drills, above 2 in (50 mm).");
        if (s.LaneShare is { } share && !(share is > 0 and <= 1))
            yield return Bad("lane_share", "The share of trucks in the lane is not a share.", JointWords.Of(share, JointWords.Plain), "Give a share above 0 and at most 1.");
        if (s.TruckFactor is { } factor && !(factor > 0))
            yield return Bad("truck_factor", "The truck factor is not above 0.", JointWords.Of(factor, JointWords.Plain), "Give the equivalent axles of a truck.");
        if (s.Costs is { } c && (!(c.Fixed >= 0 && c.Hole >= 0 && c.Steel >= 0) || Math.Abs(c.Fixed + c.Hole + c.Steel - 1) > 1e-6 || !(c.Diameter > 0 && c.Length > 0)))
            yield return Bad("cost_shares", "The cost shares do not add up to 1, or the bar they stand for has no size.",
                JointWords.Of(c.Fixed + c.Hole + c.Steel, JointWords.Plain), "Give shares of 0 or more that add up to 1, and the bar's diameter and length.");
        foreach (var zone in s.KeepOuts.Where(k => !(k.To >= k.From) || !(k.Right >= k.Left)))
            yield return Bad("keep_outs", $"The place {zone.Name} where no hole may be drilled ends before it starts.", JointWords.Long(zone.To), "Give from and to, left and right, rising.");
    }

    private static Finding Bad(string field, string sentence, string value, string mend) =>
        new("JNT-018", FindingLevel.Error, sentence, new FindingPlace("project.json", null, "joints." + field), value, mend);
}
