using System.Collections.Immutable;
using System.Text.Json;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.RuleSets;

/// <summary>Reads and writes the rows of least dowel diameters by slab thickness.</summary>
internal static class DiameterSteps
{
    internal const string Property = "dowel_diameters";

    private static readonly string[] RowProperties = ["over", "from", "diameter", "sentence", "source", "on"];

    /// <summary>The set's own rows; the filler's too while none of the own is on.</summary>
    public static ImmutableArray<DiameterStep> Read(JsonDoor door, JsonElement root, RuleSet? filler)
    {
        if (!root.TryGetProperty(Property, out _)) return filler?.Joints.DiametersByThickness ?? [];
        var rows = door.Items(root, "", Property).Select(i => Row(door, i.Item, i.Path)).OfType<DiameterStep>();
        var own = rows.ToArray();
        var filled = own.Any(r => r.On) ? own : [.. own, .. filler?.Joints.DiametersByThickness ?? []];
        return [.. filled.OrderBy(r => r.Over)];
    }

    public static void Write(Utf8JsonWriter json, ImmutableArray<DiameterStep> rows, Action<DiameterStep> writeRow)
    {
        if (rows.IsEmpty) return;
        json.WriteStartArray(Property);
        foreach (var row in rows) writeRow(row);
        json.WriteEndArray();
    }

    private static DiameterStep? Row(JsonDoor door, JsonElement item, string path)
    {
        if (item.ValueKind != JsonValueKind.Object)
        {
            door.Wrong(path, item, "a row in braces");
            return null;
        }

        var before = door.Count;
        door.OnlyKnown(item, path, RowProperties);
        var (over, from) = (door.Length(item, path, "over"), door.Length(item, path, "from"));
        if (over is null == from is null && door.Count == before) door.Missing(path + ".over");
        var diameter = door.Length(item, path, "diameter");
        if (diameter is null && !item.TryGetProperty("diameter", out _)) door.Missing(path + ".diameter");
        var sentence = door.Text(item, path, "sentence");
        var source = TreatmentRuleReader.Source(door, item, path);
        var on = door.YesNo(item, path, "on") ?? true;
        if (door.Count > before || diameter is null || sentence is null || source is null) return null;
        return new DiameterStep(over ?? from!.Value, over is not null, diameter.Value, sentence, source, on);
    }
}
