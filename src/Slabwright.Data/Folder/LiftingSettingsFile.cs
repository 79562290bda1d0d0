using System.Collections.Immutable;
using System.Text.Json;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Removal;
using static Slabwright.Data.Folder.SettingFields;

namespace Slabwright.Data.Folder;

/// <summary>The <c>lifting</c> part of project.json: reads what is given, writes what is set.</summary>
internal static class LiftingSettingsFile
{
    public static LiftingSettings Read(JsonFields file)
    {
        var plain = LiftingSettings.Default;
        if (!file.Has("lifting") || file.Object("lifting") is not { } f) return plain;
        return plain with
        {
            LongestPiece = f.Length("longest_piece", 0.1, 30).Or(plain.LongestPiece),
            ShortestPiece = f.Length("shortest_piece", 0.1, 30).Or(plain.ShortestPiece),
            HeaviestPiece = f.Measure("heaviest_piece", Mass, 1, 1e6),
            Density = f.Measure("density", Density, 1000, 4000).Or(plain.Density),
            WaterShare = f.Number("water_share", 0, 1).Or(plain.WaterShare),
            BaseBond = f.Measure("base_bond", Stress, 0, 1e6).Or(plain.BaseBond),
            SideFriction = f.Measure("side_friction", Stress, 0, 1e6).Or(plain.SideFriction),
            DynamicFactor = f.Number("dynamic_factor", 1, 5).Or(plain.DynamicFactor),
            Legs = f.Whole("legs", 1, 8) ?? plain.Legs,
            Equalised = f.YesNo("equalised") ?? plain.Equalised,
            SlingAngle = f.Measure("sling_angle", Angle, 0, Math.PI / 2) ?? plain.SlingAngle,
            Practice = (f.Has("anchor_practice") ? f.Word<AnchorPractice>("anchor_practice") : null) ?? plain.Practice,
            PinStrength = f.Measure("pin_strength", Force, 1, 1e8),
            GearStrength = f.Measure("gear_strength", Force, 1, 1e8),
            Crane = Crane(f),
        };
    }

    public static void Write(Utf8JsonWriter json, LiftingSettings s, FolderUnits units)
    {
        var plain = LiftingSettings.Default;
        if (s == plain) return;
        json.WriteStartObject("lifting");
        json.Put("longest_piece", s.LongestPiece, Long, units);
        json.Put("shortest_piece", s.ShortestPiece, Long, units);
        json.Put("heaviest_piece", s.HeaviestPiece, Mass, units);
        json.Put("density", s.Density, Density, units);
        json.Plain("water_share", s.WaterShare);
        json.Put("base_bond", s.BaseBond, Stress, units);
        json.Put("side_friction", s.SideFriction, Stress, units);
        json.Plain("dynamic_factor", s.DynamicFactor);
        if (s.Legs != plain.Legs) json.WriteNumber("legs", s.Legs);
        if (s.Equalised) json.WriteBoolean("equalised", true);
        if (!s.SlingAngle.Equals(plain.SlingAngle)) json.Put("sling_angle", s.SlingAngle, Angle, units);
        if (s.Practice != plain.Practice) json.WriteString("anchor_practice", TradeWords.Of(s.Practice));
        json.Put("pin_strength", s.PinStrength, Force, units);
        json.Put("gear_strength", s.GearStrength, Force, units);
        if (s.Crane is { } crane) Write(json, crane, units);
        json.WriteEndObject();
    }

    private static CraneSetting? Crane(JsonFields lifting)
    {
        if (!lifting.Has("crane") || lifting.Object("crane") is not { } f || f.Text("name", required: true) is not { } name) return null;
        var plain = new CraneSetting { Name = name, Chart = [.. Rows(f)] };
        return plain with
        {
            Share = f.Number("share", 0.01, 1).Or(plain.Share),
            RiggingMass = f.Measure("rigging_mass", Mass, 0, 1e5) ?? plain.RiggingMass,
            Reading = (f.Has("reading") ? f.Word<ChartReading>("reading") : null) ?? plain.Reading,
            BesideEdge = f.Length("beside_edge", 0, 30),
            AlongReach = f.Length("along_reach", 0, 100) ?? plain.AlongReach,
            InLineDistance = f.Length("in_line_distance", 0.5, 100) ?? plain.InLineDistance,
        };
    }

    private static IEnumerable<ChartRow> Rows(JsonFields crane)
    {
        foreach (var row in crane.Objects("chart"))
        {
            var radius = row.Length("radius", 0.1, 200, required: true);
            var capacity = row.Measure("capacity", Mass, 1, 1e7);
            if (radius is { } far && capacity is { } mass) yield return new(far, mass);
            else if (radius is not null && !Mass.Any(m => row.Has($"capacity_{m.Item1}")))
                row.Bad("ROAD-006", "A value the row needs is missing.", "capacity", null, "Give capacity_lb, capacity_kg or capacity_t.");
        }
    }

    private static void Write(Utf8JsonWriter json, CraneSetting crane, FolderUnits units)
    {
        var plain = new CraneSetting { Name = crane.Name, Chart = [] };
        json.WriteStartObject("crane");
        json.WriteString("name", crane.Name);
        json.Plain("share", crane.Share);
        if (!crane.RiggingMass.Equals(plain.RiggingMass)) json.Put("rigging_mass", crane.RiggingMass, Mass, units);
        if (crane.Reading != plain.Reading) json.WriteString("reading", TradeWords.Of(crane.Reading));
        json.Put("beside_edge", crane.BesideEdge, Long, units);
        if (!crane.AlongReach.Equals(plain.AlongReach)) json.Put("along_reach", crane.AlongReach, Long, units);
        if (!crane.InLineDistance.Equals(plain.InLineDistance)) json.Put("in_line_distance", crane.InLineDistance, Long, units);
        json.WriteStartArray("chart");
        foreach (var row in crane.Chart)
        {
            json.WriteStartObject();
            json.Put("radius", row.Radius, Long, units);
            json.Put("capacity", row.Capacity, Mass, units);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
