using System.Text.Json;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Sealing;
using Slabwright.Core.Measures;
using static Slabwright.Data.Folder.SettingFields;

namespace Slabwright.Data.Folder;

/// <summary>The <c>sealing</c> part of project.json: reads what is given, writes what is set.</summary>
internal static class SealingSettingsFile
{
    public static SealingSettings Read(JsonFields file, UnitSystem units)
    {
        var plain = Plain(units);
        if (!file.Has("sealing") || file.Object("sealing") is not { } f) return plain;
        return plain with
        {
            Sealant = Family(f),
            Coldest = f.Measure("coldest", Warmth, -60, 40),
            Hottest = f.Measure("hottest", Warmth, -20, 80),
            SealFrom = f.Measure("seal_from", Warmth, -30, 80).Or(plain.SealFrom),
            SealTo = f.Measure("seal_to", Warmth, -30, 80).Or(plain.SealTo),
            OldExpansion = f.Measure("old_expansion", Expansion, 1e-7, 1e-4).Or(plain.OldExpansion),
            NewExpansion = f.Measure("new_expansion", Expansion, 1e-7, 1e-4).Or(plain.NewExpansion),
            OldShrinkage = f.Number("old_shrinkage", 0, 0.01).Or(plain.OldShrinkage),
            NewShrinkage = f.Number("new_shrinkage", 0, 0.01).Or(plain.NewShrinkage),
            BaseFactor = f.Number("base_factor", 0.01, 1),
            SurroundingWidth = f.Length("surrounding_width", 0.001, 0.1),
            WidthStep = f.Length("width_step", 0.0001, 0.02) ?? plain.WidthStep,
            LeastSawDepth = f.Length("least_saw_depth", 0, 0.2).Or(plain.LeastSawDepth),
            SealSizes = f.LengthsIfGiven("seal_sizes") is { } sizes ? new(sizes, SourceRef.Project) : plain.SealSizes,
        };
    }

    public static void Write(Utf8JsonWriter json, SealingSettings s, FolderUnits units)
    {
        var plain = Plain(units.System);
        if (s == plain) return;
        json.WriteStartObject("sealing");
        if (s.Sealant != plain.Sealant) WriteFamily(json, s.Sealant, units);
        json.Put("coldest", s.Coldest, Warmth, units);
        json.Put("hottest", s.Hottest, Warmth, units);
        json.Put("seal_from", s.SealFrom, Warmth, units);
        json.Put("seal_to", s.SealTo, Warmth, units);
        json.Put("old_expansion", s.OldExpansion, Expansion, units);
        json.Put("new_expansion", s.NewExpansion, Expansion, units);
        json.Plain("old_shrinkage", s.OldShrinkage);
        json.Plain("new_shrinkage", s.NewShrinkage);
        json.Plain("base_factor", s.BaseFactor);
        json.Put("surrounding_width", s.SurroundingWidth, Small, units);
        if (!s.WidthStep.Equals(plain.WidthStep)) json.Put("width_step", s.WidthStep, Small, units);
        json.Put("least_saw_depth", s.LeastSawDepth, Small, units);
        if (s.SealSizes.Source == SourceRef.Project)
        {
            json.WriteStartArray($"seal_sizes_{units.Small}");
            foreach (var size in s.SealSizes.Value) json.WriteRawValue(units.SmallText(size));
            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    /// <summary>Saws are set in sixteenths of an inch or in millimetres.</summary>
    private static SealingSettings Plain(UnitSystem units) =>
        units == UnitSystem.Si ? SealingSettings.Default with { WidthStep = 0.001 } : SealingSettings.Default;

    private static SealantFamily Family(JsonFields f)
    {
        var kind = f.Has("sealant") ? f.Word<SealantKind>("sealant") : null;
        var plain = SealantFamilies.Of(kind ?? SealingSettings.Default.Sealant.Kind);
        return plain with
        {
            DepthOverWidth = f.Number("depth_over_width", 0.1, 4).Or(plain.DepthOverWidth),
            LeastDepth = f.Length("least_depth", 0, 0.1).Or(plain.LeastDepth),
            MostDepth = f.Length("most_depth", 0.001, 0.1).Or(plain.MostDepth),
            LeastWidth = f.Length("least_width", 0.001, 0.1).Or(plain.LeastWidth),
            MostWidth = f.Length("most_width", 0.001, 0.1).Or(plain.MostWidth),
            Recess = f.Length("recess", 0.001, 0.05).Or(plain.Recess),
            AllowableStrain = f.Number("allowable_strain", 0.01, 5).Or(plain.AllowableStrain),
            AllowableSqueeze = f.Number("allowable_squeeze", 0.01, 1).Or(plain.AllowableSqueeze),
            LeastCompression = f.Number("least_compression", 0, 1).Or(plain.LeastCompression),
            MostCompression = f.Number("most_compression", 0, 1).Or(plain.MostCompression),
            LeastTemperature = f.Measure("least_temperature", Warmth, -30, 40).Or(plain.LeastTemperature),
        };
    }

    private static void WriteFamily(Utf8JsonWriter json, SealantFamily s, FolderUnits units)
    {
        json.WriteString("sealant", TradeWords.Of(s.Kind));
        json.Plain("depth_over_width", s.DepthOverWidth);
        json.Put("least_depth", s.LeastDepth, Small, units);
        json.Put("most_depth", s.MostDepth, Small, units);
        json.Put("least_width", s.LeastWidth, Small, units);
        json.Put("most_width", s.MostWidth, Small, units);
        json.Put("recess", s.Recess, Small, units);
        json.Plain("allowable_strain", s.AllowableStrain);
        json.Plain("allowable_squeeze", s.AllowableSqueeze);
        json.Plain("least_compression", s.LeastCompression);
        json.Plain("most_compression", s.MostCompression);
        json.Put("least_temperature", s.LeastTemperature, Warmth, units);
    }
}
