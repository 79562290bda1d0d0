using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Joints.Removal;

/// <summary>Holds the settings for slabs under pressure against what makes sense.</summary>
internal static class PressureCheck
{
    /// <summary>True when pressure can be worked out with these settings.</summary>
    public static bool Usable(PressureSettings settings) => Numbers(settings) && Cuts(settings) && Hours(settings.Hours);

    /// <summary>What is wrong or missing.</summary>
    public static IEnumerable<Finding> Of(PressureSettings settings)
    {
        if (!Numbers(settings))
        {
            yield return Bad("JNT-070", "Modulus, expansion, density, friction and the unloaded length must be above 0.", "pressure", null, "Check them; friction is usually 1.5.");
        }

        if (!Cuts(settings))
        {
            yield return Bad("JNT-071", "The kerf must be wider than the blade's core, and the relief cut's distances above 0 with the least no greater than the usual.",
                "pressure.kerf", Units.Millimetre.Format(settings.Kerf.Value, 1), "Give the width of kerf and core of the blade in use.");
        }

        if (!Hours(settings.Hours))
        {
            yield return Bad("JNT-072", "Each hour of the slab temperatures must stand once, from 0 to 23, and be warmer than −60 °C and cooler than 90 °C.",
                "pressure.hours", null, "Give one temperature for each hour.");
        }

        if (settings.ClosedAt is null)
        {
            yield return Note("JNT-073", $"No temperature is given at which the joints close; {Units.Celsius.Format(settings.AssumedClosedAt.Value, 0)} was taken.", "closed_at",
                "Watch at which slab temperature the joints are shut, and give it.", settings.AssumedClosedAt.Source);
        }

        if (settings.Hours.IsEmpty)
        {
            yield return Note("JNT-074", $"No slab temperatures by hour are given; {Units.Celsius.Format(settings.AssumedTemperature.Value, 0)} was taken all day.", "hours",
                "Give the slab temperatures of the hottest working day.", settings.AssumedTemperature.Source);
        }
    }

    private static bool Numbers(PressureSettings s) =>
        s.Modulus.Value > 0 && s.Expansion.Value > 0 && s.Density.Value > 0 && s.Friction.Value > 0 && s.UnloadedLength.Value > 0;

    private static bool Cuts(PressureSettings s) =>
        s.BladeCore.Value > 0 && s.Kerf.Value > s.BladeCore.Value && s.ReliefKerf.Value > 0 && s.LeastInset.Value > 0
        && s.ReliefInset.Value >= s.LeastInset.Value && s.BaseBite.Value >= 0 && s.SawFrom is >= 0 and <= 23 && s.SawTo is >= 0 and <= 23;

    private static bool Hours(IReadOnlyList<HourTemperature> hours) =>
        hours.All(h => h.Hour is >= 0 and <= 23 && h.Temperature is > -60 and < 90) && hours.Select(h => h.Hour).Distinct().Count() == hours.Count;

    private static Finding Bad(string code, string sentence, string field, string? value, string mend) =>
        new(code, FindingLevel.Error, sentence, new FindingPlace("project.json", Field: field), value, mend);

    private static Finding Note(string code, string sentence, string field, string mend, SourceRef source) =>
        new(code, FindingLevel.Note, sentence, new FindingPlace("project.json", Field: $"pressure.{field}"), null, mend, null, source.ToString());
}
