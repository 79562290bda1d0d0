using System.Collections.Immutable;
using System.Text.Json;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;

namespace Slabwright.Data.Folder;

/// <summary>The <c>joints</c> part of project.json: reads what is given, writes what is set.</summary>
internal static class JointSettingsFile
{
    private static readonly (string, Unit)[] Stress = [("psi", Units.Psi), ("mpa", Units.Megapascal), ("gpa", Units.Gigapascal), ("kpa", Units.Kilopascal)];
    private static readonly (string, Unit)[] Reaction = [("pci", Units.Pci), ("mpa_per_m", Units.MegapascalPerMetre)];
    private static readonly (string, Unit)[] Expansion = [("per_f", Units.PerFahrenheit), ("per_c", Units.PerKelvin)];
    private static readonly (string, Unit)[] Warmth = [("f", Units.Fahrenheit), ("c", Units.Celsius)];
    private static readonly (string, Unit)[] Load = [("kip", Units.Kip), ("kn", Units.Kilonewton)];

    public static JointSettings Read(JsonFields file, FolderScene scene)
    {
        if (!file.Has("joints") || file.Object("joints") is not { } f) return JointSettings.Default;
        return new JointSettings
        {
            Modulus = f.Measure("modulus", Stress, 1e9, 1e11),
            Poisson = f.Number("poisson", 0, 0.4999),
            Strength = f.Measure("strength", Stress, 1e6, 2e8),
            Rupture = f.Measure("rupture", Stress, 1e5, 3e7),
            Reaction = f.Measure("reaction", Reaction, 1e4, 1e9),
            Expansion = f.Measure("expansion", Expansion, 1e-7, 1e-4),
            Shrinkage = f.Number("shrinkage", 0, 0.01),
            Drainage = f.Number("drainage", 0.1, 2),
            DowelSupport = f.Measure("dowel_support", Reaction, 1e9, 1e13),
            SteelModulus = f.Measure("steel_modulus", Stress, 1e10, 1e12),
            Coldest = f.Measure("coldest", Warmth, -60, 40),
            Hottest = f.Measure("hottest", Warmth, -20, 80),
            DesignYears = f.Number("design_years", 0.1, 100),
            Axles = [.. Axles(f)],
            EquivalentAxlesPerDay = f.Number("equivalent_axles_per_day", 0, 1e6),
            TruckFactor = f.Number("truck_factor", 0.001, 100),
            LaneShare = f.Number("lane_share", 0.001, 1),
            TyrePressure = f.Measure("tyre_pressure", Stress, 1e5, 2e6),
            Anchor = f.Has("anchor") ? f.Word<BarAnchor>("anchor") : null,
            GangDrills = f.Whole("gang_drills", 1, 30),
            GangSpacing = f.Length("gang_spacing", 0.05, 2),
            Diameters = f.LengthsIfGiven("diameters") ?? [],
            Lengths = f.LengthsIfGiven("lengths") ?? [],
            Costs = Costs(f),
            CurbWidth = f.Length("curb_width", 0, 2),
            TieOneEnd = f.YesNo("tie_one_end") ?? true,
            KeepOuts = [.. KeepOuts(f, scene)],
        };
    }

    public static void Write(Utf8JsonWriter json, JointSettings s, FolderUnits units)
    {
        if (s == JointSettings.Default) return;
        json.WriteStartObject("joints");
        Measure(json, "modulus", s.Modulus, Stress, units);
        Plain(json, "poisson", s.Poisson);
        Measure(json, "strength", s.Strength, Stress, units);
        Measure(json, "rupture", s.Rupture, Stress, units);
        Measure(json, "reaction", s.Reaction, Reaction, units);
        Measure(json, "expansion", s.Expansion, Expansion, units);
        Plain(json, "shrinkage", s.Shrinkage);
        Plain(json, "drainage", s.Drainage);
        Measure(json, "dowel_support", s.DowelSupport, Reaction, units);
        Measure(json, "steel_modulus", s.SteelModulus, Stress, units);
        // Degrees Celsius in both systems: the offset of °F would cost the last bit.
        Plain(json, "coldest_c", s.Coldest);
        Plain(json, "hottest_c", s.Hottest);
        Plain(json, "design_years", s.DesignYears);
        WriteAxles(json, s.Axles, units);
        Plain(json, "equivalent_axles_per_day", s.EquivalentAxlesPerDay);
        Plain(json, "truck_factor", s.TruckFactor);
        Plain(json, "lane_share", s.LaneShare);
        Measure(json, "tyre_pressure", s.TyrePressure, Stress, units);
        if (s.Anchor is { } anchor) json.WriteString("anchor", TradeWords.Of(anchor));
        if (s.GangDrills is { } drills) json.WriteNumber("gang_drills", drills);
        Small(json, "gang_spacing", s.GangSpacing, units);
        WriteLengths(json, "diameters", s.Diameters, units);
        WriteLengths(json, "lengths", s.Lengths, units);
        WriteCosts(json, s.Costs, units);
        Small(json, "curb_width", s.CurbWidth, units);
        if (!s.TieOneEnd) json.WriteBoolean("tie_one_end", false);
        WriteKeepOuts(json, s.KeepOuts, units);
        json.WriteEndObject();
    }

    private static IEnumerable<AxleClass> Axles(JsonFields f)
    {
        foreach (var row in f.Objects("axles"))
        {
            var axles = row.Whole("axles", 1, 3);
            var load = row.Measure("load", Load, 100, 2e6);
            var passes = row.Number("per_day", 0, 1e6, required: true);
            if (axles is { } n && load is { } weight && passes is { } perDay) yield return new(n, weight, perDay);
            else if (passes is not null && !(row.Has("axles") && (row.Has("load_kip") || row.Has("load_kn"))))
                row.Bad("ROAD-006", "A value the row needs is missing.", "axles", null, "Give axles (1, 2 or 3), load_kip or load_kn, and per_day.");
        }
    }

    private static BarCostShares? Costs(JsonFields f)
    {
        if (!f.Has("cost_shares") || f.Object("cost_shares") is not { } c) return null;
        var plain = BarCostShares.Assumption;
        return new(c.Number("fixed", 0, 1) ?? plain.Fixed, c.Number("hole", 0, 1) ?? plain.Hole, c.Number("steel", 0, 1) ?? plain.Steel,
            c.Length("diameter", 0.005, 0.1) ?? plain.Diameter, c.Length("length", 0.1, 2) ?? plain.Length);
    }

    private static IEnumerable<DrillKeepOut> KeepOuts(JsonFields f, FolderScene scene)
    {
        foreach (var row in f.Objects("keep_outs"))
        {
            var name = row.Text("name", required: true);
            var lane = row.Whole("lane", 1, 20);
            var (from, to) = (row.At("from", scene, required: true), row.At("to", scene, required: true));
            var (left, right) = (row.Length("left", 0, 20, required: true), row.Length("right", 0, 20, required: true));
            if (name is not null && from is not null && to is not null && left is not null && right is not null)
                yield return new(name, lane, from.Value, to.Value, left.Value, right.Value);
        }
    }

    private static void WriteAxles(Utf8JsonWriter json, ImmutableArray<AxleClass> axles, FolderUnits units)
    {
        if (axles.IsEmpty) return;
        json.WriteStartArray("axles");
        foreach (var axle in axles)
        {
            json.WriteStartObject();
            json.WriteNumber("axles", axle.Axles);
            Measure(json, "load", axle.Load, Load, units);
            Plain(json, "per_day", axle.PerDay);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteLengths(Utf8JsonWriter json, string name, ImmutableArray<double> lengths, FolderUnits units)
    {
        if (lengths.IsEmpty) return;
        json.WriteStartArray($"{name}_{units.Small}");
        foreach (var length in lengths) json.WriteRawValue(units.SmallText(length));
        json.WriteEndArray();
    }

    private static void WriteCosts(Utf8JsonWriter json, BarCostShares? costs, FolderUnits units)
    {
        if (costs is not { } c) return;
        json.WriteStartObject("cost_shares");
        Plain(json, "fixed", c.Fixed);
        Plain(json, "hole", c.Hole);
        Plain(json, "steel", c.Steel);
        Small(json, "diameter", c.Diameter, units);
        Small(json, "length", c.Length, units);
        json.WriteEndObject();
    }

    private static void WriteKeepOuts(Utf8JsonWriter json, ImmutableArray<DrillKeepOut> zones, FolderUnits units)
    {
        if (zones.IsEmpty) return;
        json.WriteStartArray("keep_outs");
        foreach (var zone in zones)
        {
            json.WriteStartObject();
            json.WriteString("name", zone.Name);
            if (zone.Lane is { } lane) json.WriteNumber("lane", lane);
            ProjectFileWriter.Number(json, $"from_{units.Long}", units.LongText(zone.From));
            ProjectFileWriter.Number(json, $"to_{units.Long}", units.LongText(zone.To));
            Small(json, "left", zone.Left, units);
            Small(json, "right", zone.Right, units);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Measure(Utf8JsonWriter json, string name, double? value, (string Ending, Unit Unit)[] units, FolderUnits system)
    {
        if (value is not { } known) return;
        var (ending, unit) = units[system.System == UnitSystem.Si ? 1 : 0];
        ProjectFileWriter.Number(json, $"{name}_{ending}", ExactNumber.Write(known, unit));
    }

    private static void Small(Utf8JsonWriter json, string name, double? value, FolderUnits units)
    {
        if (value is { } known) ProjectFileWriter.Number(json, $"{name}_{units.Small}", units.SmallText(known));
    }

    private static void Plain(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } known) ProjectFileWriter.Number(json, name, ExactNumber.Write(known, Units.One));
    }
}
