using System.Collections.Immutable;
using System.Text.Json;
using Slabwright.Core.Measures;

namespace Slabwright.Core.RuleSets;

/// <summary>Reads the rows of opening strengths.</summary>
internal static class OpeningRows
{
    internal const string Property = "opening";
    internal const string LeastAge = "least_age_h";

    private static readonly string[] RowProperties =
        ["from", "repair_under", "compressive", "third_point", "centre_point", LeastAge, "sentence", "source", "on"];

    /// <summary>The set's own rows; the filler's too while none of the own is on. Thin slabs first, stated lengths before any length.</summary>
    public static ImmutableArray<OpeningRow> Read(JsonDoor door, JsonElement root, RuleSet? filler)
    {
        if (!root.TryGetProperty(Property, out _)) return filler?.Opening ?? [];
        var own = door.Items(root, "", Property).Select(i => Row(door, i.Item, i.Path)).OfType<OpeningRow>().ToArray();
        var filled = own.Any(r => r.On) ? own : [.. own, .. filler?.Opening ?? []];
        return [.. filled.OrderBy(r => r.From).ThenBy(r => r.RepairUnder ?? double.PositiveInfinity)];
    }

    private static OpeningRow? Row(JsonDoor door, JsonElement item, string path)
    {
        if (item.ValueKind != JsonValueKind.Object)
        {
            door.Wrong(path, item, "a row in braces");
            return null;
        }

        var before = door.Count;
        door.OnlyKnown(item, path, RowProperties);
        var (from, under) = (door.Length(item, path, "from"), door.Length(item, path, "repair_under"));
        var (crushed, third, centre) = (Strength("compressive"), Strength("third_point"), Strength("centre_point"));
        var age = door.Number(item, path, LeastAge);
        var sentence = door.Text(item, path, "sentence");
        var source = TreatmentRuleReader.Source(door, item, path);
        var on = door.YesNo(item, path, "on") ?? true;
        if (door.Count == before && crushed is null && third is null && centre is null && age is null) door.Missing(path + ".compressive");
        if (door.Count > before || sentence is null || source is null) return null;
        return new OpeningRow
        {
            From = from ?? 0, RepairUnder = under, Compressive = crushed, ThirdPoint = third, CentrePoint = centre, LeastAge = age,
            Sentence = sentence, Source = source, On = on,
        };

        double? Strength(string name) => door.Measure(item, path, name, Dimension.Stress, "psi, MPa or kPa");
    }
}
