using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.RuleSets;

/// <summary>Writes a rule set with all its rules and limits.</summary>
internal static class RuleSetWriter
{
    private static readonly Unit[] LengthUnits = [Units.Foot, Units.Inch, Units.Millimetre, Units.Metre];
    private static readonly Unit[] StrengthUnits = [Units.Psi, Units.Megapascal, Units.Pascal];

    public static string Write(RuleSet set)
    {
        using var stream = new MemoryStream();
        var options = new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (var json = new Utf8JsonWriter(stream, options))
        {
            json.WriteStartObject();
            json.WriteString("id", set.Id);
            json.WriteString("name", set.Name);
            json.WriteString("summary", set.Summary);
            WriteStrings(json, "silent_about", set.SilentAbout);
            if (set.FillsFrom is not null) json.WriteString("fills_from", set.FillsFrom);
            json.WriteStartArray("treatments");
            foreach (var rule in set.Treatments) WriteRule(json, rule);
            json.WriteEndArray();
            foreach (var group in LimitTable.Rows.GroupBy(r => r.Group)) WriteLimits(json, set, group);
            DiameterSteps.Write(json, set.Joints.DiametersByThickness, row => WriteStep(json, row));
            WriteOpening(json, set);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void WriteLimits(Utf8JsonWriter json, RuleSet set, IGrouping<string, LimitRow> group)
    {
        var limits = LimitTable.FromSet(set);
        json.WriteStartObject(group.Key);
        foreach (var row in group)
        {
            if (limits.TryGetValue(row.Path, out var limit)) WriteLimit(json, row, limit.Value, limit.Sentence, limit.Source);
            else if (set.Offered.FirstOrDefault(o => o.Key == row.Path) is { } offered)
                WriteLimit(json, row, offered.BaseValue, offered.Sentence, offered.Source, on: false);
            else WriteLimit(json, row, null, "The rule set does not bind here.", SourceRef.Project);
        }

        json.WriteEndObject();
    }

    private static void WriteLimit(
        Utf8JsonWriter json, LimitRow row, double? value, string sentence, SourceRef source, bool on = true)
    {
        json.WriteStartObject(row.Key);
        if (value is not { } number) json.WriteString("value", "none");
        else if (row.Shape == LimitShape.YesNo) json.WriteBoolean("value", number != 0);
        else if (row.Shape == LimitShape.Length) WriteMeasure(json, number);
        else WriteNumber(json, "value", number);
        json.WriteString("sentence", sentence);
        WriteSource(json, source);
        if (!on) json.WriteBoolean("on", false);
        json.WriteEndObject();
    }

    private static void WriteStep(Utf8JsonWriter json, DiameterStep row)
    {
        json.WriteStartObject();
        WriteLength(json, row.Exclusive ? "over" : "from", row.Over);
        WriteLength(json, "diameter", row.Diameter);
        json.WriteString("sentence", row.Sentence);
        WriteSource(json, row.Source);
        if (!row.On) json.WriteBoolean("on", false);
        json.WriteEndObject();
    }

    private static void WriteOpening(Utf8JsonWriter json, RuleSet set)
    {
        if (set.Opening.IsEmpty) return;
        json.WriteStartArray(OpeningRows.Property);
        foreach (var row in set.Opening)
        {
            json.WriteStartObject();
            if (row.From > 0) WriteLength(json, "from", row.From);
            WriteLength(json, "repair_under", row.RepairUnder);
            WriteStrength(json, "compressive", row.Compressive);
            WriteStrength(json, "third_point", row.ThirdPoint);
            WriteStrength(json, "centre_point", row.CentrePoint);
            WriteNumber(json, OpeningRows.LeastAge, row.LeastAge);
            json.WriteString("sentence", row.Sentence);
            WriteSource(json, row.Source);
            if (!row.On) json.WriteBoolean("on", false);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteStrength(Utf8JsonWriter json, string name, double? pascals)
    {
        if (pascals is not { } known) return;
        json.WriteStartObject(name);
        WriteMeasure(json, known, StrengthUnits);
        json.WriteEndObject();
    }

    private static void WriteRule(Utf8JsonWriter json, TreatmentRule rule)
    {
        json.WriteStartObject();
        json.WriteString("id", rule.Id);
        json.WriteString("sentence", rule.Sentence);
        json.WriteStartObject("when");
        WriteStrings(json, "types", rule.Types.Select(TradeWords.Of));
        WriteWord(json, "severity_from", rule.AtLeast);
        WriteWord(json, "severity_to", rule.AtMost);
        WriteMeasured(json, rule);
        WriteStrings(json, "causes", rule.Causes.Select(TradeWords.Of));
        if (rule.PlainPavement is { } plain) json.WriteString("pavement", plain ? "plain" : "reinforced");
        WriteLength(json, "slab_from", rule.SlabFrom);
        WriteLength(json, "slab_up_to", rule.SlabUpTo);
        if (rule.OtherCallsInSlabFrom is { } calls) json.WriteNumber("other_calls_in_slab_from", calls);
        if (rule.DamagedSlabsInRowFrom is { } row) json.WriteNumber("damaged_slabs_in_row_from", row);
        WriteYesNo(json, "beside_earlier_repair", rule.BesideEarlierRepair);
        WriteYesNo(json, "through_overlay", rule.ThroughOverlay);
        WriteYesNo(json, "freeze_thaw", rule.FreezeThaw);
        json.WriteEndObject();
        json.WriteString("treatment", TradeWords.Of(rule.Treatment));
        if (rule.Warning is not null) json.WriteString("warning", rule.Warning);
        WriteSource(json, rule.Source);
        if (!rule.On) json.WriteBoolean("on", false);
        json.WriteEndObject();
    }

    private static void WriteMeasured(Utf8JsonWriter json, TreatmentRule rule)
    {
        WriteNumber(json, "depth_share_over", rule.DepthShareOver);
        WriteNumber(json, "depth_share_from", rule.DepthShareFrom);
        WriteNumber(json, "depth_share_up_to", rule.DepthShareUpTo);
        WriteLength(json, "depth_up_to", rule.DepthUpTo);
        WriteYesNo(json, "depth_known", rule.DepthKnown);
        WriteLength(json, "width_over", rule.WidthOver);
        WriteLength(json, "width_up_to", rule.WidthUpTo);
        WriteYesNo(json, "width_known", rule.WidthKnown);
        WriteLength(json, "faulting_from", rule.FaultingFrom);
        WriteYesNo(json, "faulting_known", rule.FaultingKnown);
    }

    private static void WriteSource(Utf8JsonWriter json, SourceRef source)
    {
        json.WriteStartObject("source");
        json.WriteString("tag", source.Tag);
        json.WriteString("place", source.Place);
        json.WriteString("status", TradeWords.Of(source.Status));
        json.WriteEndObject();
    }

    private static void WriteStrings(Utf8JsonWriter json, string name, IEnumerable<string> words)
    {
        var list = words.ToList();
        if (list.Count == 0) return;
        json.WriteStartArray(name);
        foreach (var word in list) json.WriteStringValue(word);
        json.WriteEndArray();
    }

    private static void WriteWord<T>(Utf8JsonWriter json, string name, T? member) where T : struct, Enum
    {
        if (member is { } known) json.WriteString(name, TradeWords.Of(known));
    }

    private static void WriteYesNo(Utf8JsonWriter json, string name, bool? yes)
    {
        if (yes is { } known) json.WriteBoolean(name, known);
    }

    private static void WriteLength(Utf8JsonWriter json, string name, double? metres)
    {
        if (metres is not { } known) return;
        json.WriteStartObject(name);
        WriteMeasure(json, known);
        json.WriteEndObject();
    }

    /// <summary>Value and unit, in the first unit that needs no more than three decimals; the last unit in full otherwise.</summary>
    private static void WriteMeasure(Utf8JsonWriter json, double measure, Unit[]? units = null)
    {
        units ??= LengthUnits;
        var unit = units.FirstOrDefault(u => u.ToBase(Math.Round(u.FromBase(measure), 3)) == measure) ?? units[^1];
        var value = unit.FromBase(measure);
        var rounded = Math.Round(value, 3);
        json.WriteNumber("value", unit.ToBase(rounded) == measure ? rounded : value);
        json.WriteString("unit", unit.Symbol);
    }

    /// <summary>A number; thirds and the like as a fraction so that they stay exact.</summary>
    private static void WriteNumber(Utf8JsonWriter json, string name, double? number)
    {
        if (number is not { } known) return;
        var below = Enumerable.Range(2, 11).FirstOrDefault(d => Math.Round(known * d) / d == known && known != Math.Round(known, 4));
        if (below == 0) json.WriteNumber(name, known);
        else json.WriteString(name, string.Create(CultureInfo.InvariantCulture, $"{Math.Round(known * below)}/{below}"));
    }
}
