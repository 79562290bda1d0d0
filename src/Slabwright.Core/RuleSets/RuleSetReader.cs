using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.RuleSets;

/// <summary>Turns the JSON of one rule set into the set, filled from another where it is silent.</summary>
internal sealed class RuleSetReader(JsonDoor door, Func<string, RuleSet?> find)
{
    private static readonly string[] SetProperties =
    [
        "id", "name", "summary", "silent_about", "fills_from", "switch_on", "switch_off", "treatments", "boundaries", "joints",
        DiameterSteps.Property, OpeningRows.Property,
    ];

    private static readonly string[] LimitProperties = ["value", "unit", "sentence", "source", "on"];

    private readonly Dictionary<string, OfferedLimit> _offered = [];

    public RuleSet? Read(JsonElement root)
    {
        door.OnlyKnown(root, "", SetProperties);
        var (id, name, summary) = (door.Text(root, "", "id"), door.Text(root, "", "name"), door.Text(root, "", "summary"));
        var filler = FillsFrom(root);
        var own = Rules(root);
        var limits = Limits(root, filler);
        var missing = LimitTable.Rows.Where(r => r.Required && limits.GetValueOrDefault(r.Path)?.Value is null).ToList();
        missing.ForEach(row => door.Missing(row.Path));
        if (id is null || missing.Count > 0) return null;
        var rules = Switch(root, Filled(own, filler), limits);
        return new RuleSet
        {
            Id = id,
            Name = name ?? id,
            Summary = summary ?? "",
            FillsFrom = filler?.Id,
            SilentAbout = [.. door.Items(root, "", "silent_about").Select(i => door.Text(i.Item, i.Path)).OfType<string>()],
            Treatments = rules,
            Boundaries = LimitTable.ToBoundaries(limits),
            Joints = LimitTable.ToJoints(limits, DiameterSteps.Read(door, root, filler)),
            Opening = NoteMemory(OpeningRows.Read(door, root, filler)),
            Offered = [.. LimitTable.Rows.Where(r => _offered.ContainsKey(r.Path)).Select(r => _offered[r.Path])],
        };
    }

    private RuleSet? FillsFrom(JsonElement root)
    {
        if (door.Text(root, "", "fills_from", required: false) is not { } id) return null;
        if (find(id) is { } filler) return filler;
        door.Report("TRT-006", FindingLevel.Error, "fills_from", "There is no rule set of this name to fill in from.", id,
            "Name a published set, e.g. common-practice, or a set of the project.");
        return null;
    }

    private List<TreatmentRule> Rules(JsonElement root)
    {
        var reader = new TreatmentRuleReader(door);
        var rules = new List<TreatmentRule>();
        foreach (var (item, path) in door.Items(root, "", "treatments"))
        {
            if (reader.Read(item, path) is not { } rule) continue;
            if (rules.Any(r => r.Id == rule.Id))
            {
                door.Report("TRT-008", FindingLevel.Error, path + ".id", "Two rules of the set have the same id; the second is left out.",
                    rule.Id, "Give each rule its own id.");
            }
            else rules.Add(rule);
        }

        return rules;
    }

    /// <summary>The set's own rules first, then the filler's, except those the set states anew under the same id.</summary>
    private static List<TreatmentRule> Filled(List<TreatmentRule> own, RuleSet? filler) =>
        filler is null ? own : [.. own, .. filler.Treatments.Where(f => own.All(o => o.Id != f.Id))];

    private Dictionary<string, LimitValue> Limits(JsonElement root, RuleSet? filler)
    {
        var limits = filler is null ? [] : LimitTable.FromSet(filler);
        foreach (var offered in filler?.Offered ?? []) _offered[offered.Key] = offered;
        foreach (var group in LimitTable.Rows.GroupBy(r => r.Group))
        {
            if (door.Object(root, "", group.Key) is not { } element) continue;
            door.OnlyKnown(element, group.Key, [.. group.Select(r => r.Key)]);
            foreach (var row in group.Where(r => element.TryGetProperty(r.Key, out _)))
            {
                _offered.Remove(row.Path);
                if (Limit(element, row) is { } limit) limits[row.Path] = limit;
            }
        }

        return limits;
    }

    private LimitValue? Limit(JsonElement group, LimitRow row)
    {
        if (door.Object(group, row.Group, row.Key) is not { } element) return null;
        var before = door.Count;
        door.OnlyKnown(element, row.Path, LimitProperties);
        var silent = element.TryGetProperty("value", out var raw) && raw.ValueKind == JsonValueKind.String && raw.GetString() == "none";
        var value = silent ? null : Value(element, row);
        var sentence = door.Text(element, row.Path, "sentence");
        var source = TreatmentRuleReader.Source(door, element, row.Path);
        var on = door.YesNo(element, row.Path, "on") ?? true;
        if (door.Count > before || source is null || sentence is null) return null;
        if (on) return NoteMemory(new LimitValue(value, sentence, source), row.Path);
        if (value is { } known)
            _offered[row.Path] = new OfferedLimit(row.Path, Written(element, row), sentence, source) { BaseValue = known };
        return null;
    }

    private double? Value(JsonElement element, LimitRow row)
    {
        if (row.Shape == LimitShape.Length) return door.LengthOf(element, row.Path);
        double? value = row.Shape switch
        {
            LimitShape.YesNo => door.YesNo(element, row.Path, "value") is { } yes ? (yes ? 1 : 0) : null,
            LimitShape.Count => door.Whole(element, row.Path, "value"),
            _ => door.Number(element, row.Path, "value"),
        };
        if (!element.TryGetProperty("value", out _)) door.Missing(row.Path + ".value");
        return value;
    }

    private static string Written(JsonElement element, LimitRow row) => row.Shape == LimitShape.Length
        ? $"{element.GetProperty("value").GetRawText().Trim('"')} {element.GetProperty("unit").GetString()}"
        : element.GetProperty("value").GetRawText().Trim('"');

    private LimitValue NoteMemory(LimitValue limit, string path)
    {
        if (limit.Source.Status == SourceStatus.FromMemory) ReportMemory(path, limit.Source);
        return limit;
    }

    private ImmutableArray<OpeningRow> NoteMemory(ImmutableArray<OpeningRow> rows)
    {
        foreach (var row in rows.Where(r => r.On && r.Source.Status == SourceStatus.FromMemory)) ReportMemory(OpeningRows.Property, row.Source);
        return rows;
    }

    private void ReportMemory(string path, SourceRef source) => door.Report("TRT-009", FindingLevel.Warning, path,
        "A rule or limit known only from memory is switched on.", source.ToString(),
        "Check it against the document named before relying on it.");

    /// <summary>Applies <c>switch_on</c> and <c>switch_off</c> to rules and to offered limits.</summary>
    private ImmutableArray<TreatmentRule> Switch(JsonElement root, List<TreatmentRule> rules, Dictionary<string, LimitValue> limits)
    {
        foreach (var (on, property) in new[] { (true, "switch_on"), (false, "switch_off") })
        {
            foreach (var (item, path) in door.Items(root, "", property))
            {
                if (door.Text(item, path) is not { } name) continue;
                if (!SwitchRule(rules, name, on) && !(on && SwitchLimit(limits, name)))
                {
                    door.Report("TRT-007", FindingLevel.Error, path, "There is no rule or switched-off limit of this name.", name,
                        "Use the id of a rule, or the name of an offered limit such as boundaries.longest_unjointed.");
                }
            }
        }

        foreach (var rule in rules.Where(r => r.On && r.Source.Status == SourceStatus.FromMemory))
            ReportMemory(string.Create(CultureInfo.InvariantCulture, $"treatments.{rule.Id}"), rule.Source);
        return [.. rules];
    }

    private static bool SwitchRule(List<TreatmentRule> rules, string id, bool on)
    {
        var index = rules.FindIndex(r => r.Id == id);
        if (index >= 0) rules[index] = rules[index] with { On = on };
        return index >= 0;
    }

    private bool SwitchLimit(Dictionary<string, LimitValue> limits, string path)
    {
        if (!_offered.Remove(path, out var offered)) return false;
        limits[path] = NoteMemory(new LimitValue(offered.BaseValue, offered.Sentence, offered.Source), path);
        return true;
    }
}
