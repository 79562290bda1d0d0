using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Folder;

/// <summary>Reads project.json.</summary>
internal static partial class ProjectFileReader
{
    private const double LongestRoad = 1_000_000;

    /// <summary>The project's head, or null when a part that every project needs is missing.</summary>
    public static ProjectHead? Read(JsonFields file, string folder)
    {
        var name = file.Text("name", required: true);
        var owner = file.Text("owner") ?? "";
        var currency = file.Text("currency") ?? "USD";
        var units = System(file);
        var road = file.Object("road", required: true);
        if (road is null) return null;
        var length = road.Length("length", 1, LongestRoad, required: true);
        var roadName = road.Text("name", required: true);
        var alignment = AlignmentChoice.Read(road, folder, out var fromFile);
        var stationing = road.Has("stationing") || fromFile is null ? StationingReader.Read(road) : fromFile;
        var climate = Climate(road);
        var traffic = Traffic(road);
        if (units is null || length is null || name is null || roadName is null) return null;
        var scene = new FolderScene(length.Value, stationing ?? Fallback(units.Value), units.Value);
        AlignmentChoice.CheckLength(alignment, length.Value, road);
        var settings = SettingsReader.Read(file, scene, units.Value);
        return stationing is null
            ? null
            : new(name, owner, currency, scene, roadName, climate, traffic, alignment, [.. Patterns(file, scene)], settings);
    }

    private static UnitSystem? System(JsonFields file)
    {
        switch (file.Text("units", required: true))
        {
            case "us": return UnitSystem.UsCustomary;
            case "si": return UnitSystem.Si;
            case null: return null;
            case var other:
                file.Bad("ROAD-008", "The system of units is not known.", "units", other, "Write \"us\" or \"si\".");
                return null;
        }
    }

    private static Stationing Fallback(UnitSystem units) => new() { Style = units == UnitSystem.Si ? StationStyle.Metres : StationStyle.Feet };

    private static Climate Climate(JsonFields road)
    {
        if (road.Object("climate", required: true) is not { } fields) return new(true);
        if (!fields.Has("freeze_thaw"))
            fields.Bad("ROAD-006", "A property every project needs is missing.", "freeze_thaw", null, "Add \"freeze_thaw\": true where slabs freeze and thaw wet, else false.");
        return new(
            fields.YesNo("freeze_thaw") ?? true, fields.Number("freezing_index_c_days", 0, 10_000), fields.Length("annual_precipitation", 0, 20));
    }

    private static Traffic? Traffic(JsonFields road)
    {
        if (!road.Has("traffic") || road.Object("traffic") is not { } fields) return null;
        var aadt = fields.Number("aadt_veh_per_day", 0, 1_000_000, required: true);
        var share = fields.Number("truck_share", 0, 1, required: true);
        var growth = fields.Number("growth_share_per_year", -0.5, 0.5) ?? 0;
        return aadt is null || share is null ? null : new(aadt.Value, share.Value, growth);
    }

    private static IEnumerable<JointPattern> Patterns(JsonFields file, FolderScene scene)
    {
        foreach (var fields in file.Objects("joint_layouts"))
        {
            var lanes = fields.Wholes("lanes");
            var (from, to) = (fields.At("from", scene, required: true), fields.At("to", scene, required: true));
            var spacings = fields.Lengths("spacing");
            var kind = fields.Word<JointKind>("kind", required: true);
            var skew = Skew(fields);
            if (from is null || to is null || spacings is null || kind is null || skew is null) continue;
            yield return new(lanes, from.Value, to.Value, spacings.Value, kind.Value, skew.Value, fields.Place);
        }
    }

    /// <summary>A skew such as <c>1:6</c> or <c>-1:6</c>, as run along the road for one across.</summary>
    private static double? Skew(JsonFields fields)
    {
        if (fields.Text("skew") is not { } text) return 0;
        var match = SkewPattern().Match(text);
        if (match.Success && double.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture) is var across && across > 0)
            return double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) / across;
        fields.Bad("ROAD-007", "The skew cannot be read.", "skew", text, "Write run along the road to width across, for example \"1:6\"; \"-1:6\" where the left end is further along.");
        return null;
    }

    [GeneratedRegex(@"^\s*(-?\d{1,4}(?:\.\d{1,6})?)\s*:\s*(\d{1,4}(?:\.\d{1,6})?)\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex SkewPattern();
}
