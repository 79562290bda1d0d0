using System.Collections.Immutable;
using System.Text.Json;
using Slabwright.Core.Joints.Removal;
using static Slabwright.Data.Folder.SettingFields;

namespace Slabwright.Data.Folder;

/// <summary>The <c>pressure</c> part of project.json: reads what is given, writes what is set.</summary>
internal static class PressureSettingsFile
{
    public static PressureSettings Read(JsonFields file)
    {
        var plain = PressureSettings.Default;
        if (!file.Has("pressure") || file.Object("pressure") is not { } f) return plain;
        return plain with
        {
            ClosedAt = f.Measure("closed_at", Warmth, -40, 70),
            Hours = [.. Hours(f)],
            SawFrom = f.Whole("saw_from_hour", 0, 23) ?? plain.SawFrom,
            SawTo = f.Whole("saw_to_hour", 0, 23) ?? plain.SawTo,
            Modulus = f.Measure("modulus", Stress, 1e9, 1e11).Or(plain.Modulus),
            Expansion = f.Measure("expansion", Expansion, 1e-7, 1e-4).Or(plain.Expansion),
            Density = f.Measure("density", Density, 1000, 4000).Or(plain.Density),
            Friction = f.Number("friction", 0.1, 50).Or(plain.Friction),
            UnloadedLength = f.Length("unloaded_length", 0.1, 10_000).Or(plain.UnloadedLength),
            Kerf = f.Length("kerf", 0.0005, 0.1).Or(plain.Kerf),
            BladeCore = f.Length("blade_core", 0.0005, 0.1).Or(plain.BladeCore),
            ReliefKerf = f.Length("relief_kerf", 0.005, 0.3).Or(plain.ReliefKerf),
            ReliefInset = f.Length("relief_inset", 0.05, 3).Or(plain.ReliefInset),
            LeastInset = f.Length("least_inset", 0.05, 3).Or(plain.LeastInset),
            BaseBite = f.Length("base_bite", 0, 0.3).Or(plain.BaseBite),
        };
    }

    public static void Write(Utf8JsonWriter json, PressureSettings s, FolderUnits units)
    {
        var plain = PressureSettings.Default;
        if (s == plain) return;
        json.WriteStartObject("pressure");
        json.Put("closed_at", s.ClosedAt, Warmth, units);
        if (s.SawFrom != plain.SawFrom) json.WriteNumber("saw_from_hour", s.SawFrom);
        if (s.SawTo != plain.SawTo) json.WriteNumber("saw_to_hour", s.SawTo);
        json.Put("modulus", s.Modulus, Stress, units);
        json.Put("expansion", s.Expansion, Expansion, units);
        json.Put("density", s.Density, Density, units);
        json.Plain("friction", s.Friction);
        json.Put("unloaded_length", s.UnloadedLength, Long, units);
        json.Put("kerf", s.Kerf, Small, units);
        json.Put("blade_core", s.BladeCore, Small, units);
        json.Put("relief_kerf", s.ReliefKerf, Small, units);
        json.Put("relief_inset", s.ReliefInset, Small, units);
        json.Put("least_inset", s.LeastInset, Small, units);
        json.Put("base_bite", s.BaseBite, Small, units);
        if (!s.Hours.IsEmpty)
        {
            json.WriteStartArray("hours");
            foreach (var hour in s.Hours)
            {
                json.WriteStartObject();
                json.WriteNumber("hour", hour.Hour);
                json.Put("slab", hour.Temperature, Warmth, units);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static IEnumerable<HourTemperature> Hours(JsonFields f)
    {
        foreach (var row in f.Objects("hours"))
        {
            var (hour, slab) = (row.Whole("hour", 0, 23), row.Measure("slab", Warmth, -60, 90));
            if (hour is { } when && slab is { } warm) yield return new(when, warm);
            else if (!row.Has("hour") || !(row.Has("slab_f") || row.Has("slab_c")))
                row.Bad("ROAD-006", "A value the row needs is missing.", "hour", null, "Give hour (0 to 23) and slab_f or slab_c.");
        }
    }
}
