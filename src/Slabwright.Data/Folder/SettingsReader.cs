using System.Collections.Immutable;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;
using Slabwright.Core.Survey;

namespace Slabwright.Data.Folder;

/// <summary>Reads the settings of a project.</summary>
internal static class SettingsReader
{
    /// <summary>The settings, with the defaults of <see cref="ProjectSettings"/> where the file is silent.</summary>
    public static ProjectSettings Read(JsonFields file, FolderScene scene, UnitSystem units)
    {
        var plain = new ProjectSettings
        {
            CutStep = units == UnitSystem.Si ? 0.1 : Units.Inch.ToBase(6),
            StationRange = units == UnitSystem.Si ? 250 : Units.Foot.ToBase(1000),
            Joints = JointSettingsFile.Read(file, scene),
            Sealing = SealingSettingsFile.Read(file, scene.Units),
            Lifting = LiftingSettingsFile.Read(file),
            Pressure = PressureSettingsFile.Read(file),
        };
        if (file.Has("concrete") && file.Object("concrete") is { } concrete) plain = plain with { Concrete = ConcreteSettingsReader.Read(concrete) };
        if (!file.Has("settings") || file.Object("settings") is not { } fields) return plain;
        return plain with
        {
            CutStep = fields.Length("cut_step", 0.001, 10) ?? plain.CutStep,
            WorkDay = fields.Day("work_day"),
            StationRange = fields.Length("station_range", 1, 100_000) ?? plain.StationRange,
            Trials = fields.Whole("trials", 1, 1_000_000) ?? plain.Trials,
            Seed = fields.Whole("seed", 0, int.MaxValue) ?? plain.Seed,
            Nights = fields.Whole("nights", 0, 10_000),
            LooseBaseShare = fields.Number("loose_base_share", 0, 1) ?? 0,
            LooseBaseDepth = fields.Length("loose_base_depth", 0, 2) ?? 0,
            Growth = new GrowthModel([.. Growth(fields)]),
        };
    }

    private static IEnumerable<GrowthRate> Growth(JsonFields fields)
    {
        foreach (var row in fields.Objects("growth"))
        {
            DistressType? type = row.Has("type") ? row.Word<DistressType>("type") : null;
            if (row.Has("type") && type is null) continue;
            var low = row.Length("low_per_year", 0, 10, required: true);
            var likely = row.Length("likely_per_year", 0, 10, required: true);
            var high = row.Length("high_per_year", 0, 10, required: true);
            var more = row.Number("new_share_per_year", 0, 10) ?? 0;
            if (low is null || likely is null || high is null) continue;
            if (low <= likely && likely <= high) yield return new(type, low.Value, likely.Value, high.Value, more);
            else row.Bad("ROAD-009", "Growth must rise from low over likely to high.", "likely_per_year", Units.Metre.Format(likely.Value, 3), "Check the three values.");
        }
    }
}
