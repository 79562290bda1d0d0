using System.Collections.Immutable;
using System.Text.Json;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.Core.RuleSets;

/// <summary>Reads one treatment rule.</summary>
internal sealed class TreatmentRuleReader(JsonDoor door)
{
    private static readonly string[] RuleProperties = ["id", "sentence", "when", "treatment", "warning", "source", "on"];

    private static readonly string[] ConditionProperties =
    [
        "types", "severity_from", "severity_to", "depth_share_over", "depth_share_from", "depth_share_up_to", "depth_up_to", "depth_known",
        "width_over", "width_up_to", "width_known", "faulting_from", "faulting_known", "causes", "pavement", "slab_from", "slab_up_to",
        "other_calls_in_slab_from", "damaged_slabs_in_row_from", "beside_earlier_repair", "through_overlay", "freeze_thaw",
    ];

    /// <summary>The rule, or null with findings when any part of it cannot be read: half a rule would decide wrongly.</summary>
    public TreatmentRule? Read(JsonElement item, string path)
    {
        if (item.ValueKind != JsonValueKind.Object)
        {
            door.Wrong(path, item, "a rule in braces");
            return null;
        }

        var before = door.Count;
        door.OnlyKnown(item, path, RuleProperties);
        var (id, sentence) = (door.Text(item, path, "id"), door.Text(item, path, "sentence"));
        var treatment = door.Word<Treatment>(item, path, "treatment", required: true);
        var source = Source(door, item, path);
        var on = door.YesNo(item, path, "on") ?? true;
        var warning = door.Text(item, path, "warning", required: false);
        var conditions = Conditions(item, path);
        if (door.Count > before || id is null || sentence is null || treatment is null || source is null) return null;
        return conditions with
        {
            Id = id, Sentence = sentence, Treatment = treatment.Value, Source = source, On = on, Warning = warning,
        };
    }

    /// <summary>A source such as <c>{ "tag": "FHWA-FDR-1", "place": "Table 1", "status": "verified" }</c>.</summary>
    internal static SourceRef? Source(JsonDoor door, JsonElement parent, string path)
    {
        var at = JsonLines.Join(path, "source");
        if (!parent.TryGetProperty("source", out _))
        {
            door.Missing(at);
            return null;
        }

        if (door.Object(parent, path, "source") is not { } element) return null;
        door.OnlyKnown(element, at, ["tag", "place", "status"]);
        var tag = door.Text(element, at, "tag");
        var status = door.Word<SourceStatus>(element, at, "status", required: true);
        var place = door.Text(element, at, "place", required: false) ?? "";
        return tag is null || status is null ? null : new SourceRef(tag, place, status.Value);
    }

    private TreatmentRule Conditions(JsonElement item, string path)
    {
        var blank = new TreatmentRule { Id = "", Sentence = "", Treatment = Treatment.Leave, Source = SourceRef.Project };
        if (!item.TryGetProperty("when", out _)) door.Missing(path + ".when");
        if (door.Object(item, path, "when") is not { } when) return blank;
        var at = path + ".when";
        door.OnlyKnown(when, at, ConditionProperties);
        var kind = door.Text(when, at, "pavement", required: false);
        if (kind is not (null or "plain" or "reinforced"))
        {
            door.Report("TRT-004", FindingLevel.Error, at + ".pavement", "The pavement kind is not known.", kind,
                "Write plain or reinforced.");
        }

        return Measured(when, at, blank) with
        {
            Types = Words<DistressType>(when, at, "types"),
            Causes = Words<DistressCause>(when, at, "causes"),
            AtLeast = door.Word<Severity>(when, at, "severity_from"),
            AtMost = door.Word<Severity>(when, at, "severity_to"),
            PlainPavement = kind is null ? null : kind == "plain",
            OtherCallsInSlabFrom = door.Whole(when, at, "other_calls_in_slab_from"),
            DamagedSlabsInRowFrom = door.Whole(when, at, "damaged_slabs_in_row_from"),
            BesideEarlierRepair = door.YesNo(when, at, "beside_earlier_repair"),
            ThroughOverlay = door.YesNo(when, at, "through_overlay"),
            FreezeThaw = door.YesNo(when, at, "freeze_thaw"),
        };
    }

    private TreatmentRule Measured(JsonElement when, string at, TreatmentRule rule) => rule with
    {
        DepthShareOver = door.Number(when, at, "depth_share_over"),
        DepthShareFrom = door.Number(when, at, "depth_share_from"),
        DepthShareUpTo = door.Number(when, at, "depth_share_up_to"),
        DepthUpTo = door.Length(when, at, "depth_up_to"),
        DepthKnown = door.YesNo(when, at, "depth_known"),
        WidthOver = door.Length(when, at, "width_over"),
        WidthUpTo = door.Length(when, at, "width_up_to"),
        WidthKnown = door.YesNo(when, at, "width_known"),
        FaultingFrom = door.Length(when, at, "faulting_from"),
        FaultingKnown = door.YesNo(when, at, "faulting_known"),
        SlabFrom = door.Length(when, at, "slab_from"),
        SlabUpTo = door.Length(when, at, "slab_up_to"),
    };

    private ImmutableArray<T> Words<T>(JsonElement when, string at, string name) where T : struct, Enum =>
        [.. door.Items(when, at, name)
            .Select(i => door.Text(i.Item, i.Path) is { } words ? door.Word<T>(words, i.Path) : null)
            .OfType<T>()];
}
