using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.RuleSets;

namespace Slabwright.Data.Folder;

/// <summary>The rule set in force and those to compare with.</summary>
internal sealed record RuleSetChoice(RuleSet InForce, ImmutableArray<RuleSet> Compare)
{
    /// <summary>
    /// Reads the choice from project.json: the set in force is required; without a list to compare, every other set is compared.
    /// </summary>
    public static RuleSetChoice? Read(JsonFields file, string folder, FolderDoors doors, List<Finding> findings)
    {
        var own = Own(folder, doors, findings);
        var all = doors.RuleSets.Where(s => own.All(o => o.Id != s.Id)).Concat(own).ToImmutableArray();
        if (file.Object("rule_sets", required: true) is not { } fields) return null;
        var inForce = Find(fields, "in_force", fields.Text("in_force", required: true), all);
        var compare = fields.Has("compare")
            ? [.. fields.Texts("compare").Select(id => Find(fields, "compare", id, all)).OfType<RuleSet>()]
            : all.Where(s => s.Id != inForce?.Id).ToImmutableArray();
        return inForce is null ? null : new(inForce, compare);
    }

    private static List<RuleSet> Own(string folder, FolderDoors doors, List<Finding> findings)
    {
        var rules = Path.Combine(folder, FolderFormat.RulesFolder);
        var own = new List<RuleSet>();
        if (!Directory.Exists(rules)) return own;
        foreach (var path in Directory.EnumerateFiles(rules, "*.json").Order(StringComparer.Ordinal))
        {
            var name = $"{FolderFormat.RulesFolder}/{Path.GetFileName(path)}";
            var (set, wrong) = doors.ReadRuleSet(File.ReadAllText(path), name, doors.RuleSets.AddRange(own));
            findings.AddRange(wrong);
            if (set is null) continue;
            if (own.Any(s => s.Id == set.Id))
            {
                findings.Add(new("ROAD-018", FindingLevel.Error, "Another file has a rule set with the same identifier; this file is not used.",
                    new(name, null, "id"), set.Id, "Give the set an identifier of its own."));
                continue;
            }

            own.Add(set);
            if (doors.RuleSets.Any(s => s.Id == set.Id))
            {
                findings.Add(new("ROAD-018", FindingLevel.Note, "The file stands in for the published rule set of the same identifier.", new(name, null, "id"), set.Id,
                    "Nothing, if that is meant; else give the set an identifier of its own."));
            }
        }

        return own;
    }

    private static RuleSet? Find(JsonFields fields, string name, string? id, ImmutableArray<RuleSet> all)
    {
        if (id is null) return null;
        if (all.FirstOrDefault(s => s.Id == id) is { } found) return found;
        fields.Bad("ROAD-016", "There is no rule set with this identifier.", name, id, "Use one of: " + string.Join(", ", all.Select(s => s.Id)) + ".");
        return null;
    }
}
