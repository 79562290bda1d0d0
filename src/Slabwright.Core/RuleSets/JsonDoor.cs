using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.RuleSets;

/// <summary>
/// Reads typed values out of a JSON text. What cannot be read becomes a finding with file, line and property path, and the value is null.
/// </summary>
internal sealed class JsonDoor(string fileName, Dictionary<string, long> lines)
{
    private readonly ImmutableArray<Finding>.Builder _findings = ImmutableArray.CreateBuilder<Finding>();

    public ImmutableArray<Finding> Findings => _findings.ToImmutable();

    public int Count => _findings.Count;

    public void Report(string code, FindingLevel level, string path, string sentence, string? value, string mend)
    {
        long? row = lines.TryGetValue(path, out var line) ? line : null;
        _findings.Add(new Finding(code, level, sentence, new FindingPlace(fileName, row, path), value, mend));
    }

    /// <summary>Reports properties that the format does not know, so that a misspelt limit is never passed over in silence.</summary>
    public void OnlyKnown(JsonElement element, string path, IReadOnlyCollection<string> known)
    {
        foreach (var property in element.EnumerateObject().Where(p => !known.Contains(p.Name)))
        {
            Report("TRT-003", FindingLevel.Error, JsonLines.Join(path, property.Name), "Rule sets have no such property here.",
                property.Name, "Use one of: " + string.Join(", ", known) + ".");
        }
    }

    /// <summary>A child object, or null with a finding when it is there but no object.</summary>
    public JsonElement? Object(JsonElement parent, string path, string name)
    {
        if (!parent.TryGetProperty(name, out var child)) return null;
        if (child.ValueKind == JsonValueKind.Object) return child;
        Wrong(JsonLines.Join(path, name), child, "an object in braces");
        return null;
    }

    /// <summary>Items of a child array; empty when absent.</summary>
    public IEnumerable<(JsonElement Item, string Path)> Items(JsonElement parent, string path, string name)
    {
        if (!parent.TryGetProperty(name, out var child)) return [];
        var at = JsonLines.Join(path, name);
        if (child.ValueKind == JsonValueKind.Array) return child.EnumerateArray().Select((item, i) => (item, $"{at}[{i}]"));
        Wrong(at, child, "a list in square brackets");
        return [];
    }

    public string? Text(JsonElement parent, string path, string name, bool required = true)
    {
        var at = JsonLines.Join(path, name);
        if (!parent.TryGetProperty(name, out var child))
        {
            if (required) Missing(at);
            return null;
        }

        if (child.ValueKind == JsonValueKind.String && (child.GetString()!.Trim().Length > 0 || !required)) return child.GetString();
        Wrong(at, child, "words in quotes");
        return null;
    }

    public string? Text(JsonElement item, string path)
    {
        if (item.ValueKind == JsonValueKind.String) return item.GetString();
        Wrong(path, item, "words in quotes");
        return null;
    }

    public bool? YesNo(JsonElement parent, string path, string name)
    {
        if (!parent.TryGetProperty(name, out var child)) return null;
        if (child.ValueKind is JsonValueKind.True or JsonValueKind.False) return child.GetBoolean();
        Wrong(JsonLines.Join(path, name), child, "true or false");
        return null;
    }

    public int? Whole(JsonElement parent, string path, string name)
    {
        if (!parent.TryGetProperty(name, out var child)) return null;
        if (child.ValueKind == JsonValueKind.Number && child.TryGetInt32(out var whole) && whole >= 0) return whole;
        Wrong(JsonLines.Join(path, name), child, "a whole number, 0 or more");
        return null;
    }

    /// <summary>A plain number, or a fraction in quotes such as <c>"1/3"</c>.</summary>
    public double? Number(JsonElement parent, string path, string name)
    {
        if (!parent.TryGetProperty(name, out var child)) return null;
        if (child.ValueKind == JsonValueKind.Number && child.TryGetDouble(out var number) && number >= 0) return number;
        if (child.ValueKind == JsonValueKind.String && Fraction(child.GetString()!) is { } fraction) return fraction;
        Wrong(JsonLines.Join(path, name), child, "a number, 0 or more, or a fraction such as \"1/3\"");
        return null;
    }

    /// <summary>A length such as <c>{ "value": 6, "unit": "ft" }</c>, in metres.</summary>
    public double? Length(JsonElement parent, string path, string name)
    {
        var at = JsonLines.Join(path, name);
        if (!parent.TryGetProperty(name, out _) || Object(parent, path, name) is not { } child) return null;
        return LengthOf(child, at);
    }

    /// <summary>The length in an object that has a value and a unit, in metres.</summary>
    public double? LengthOf(JsonElement child, string at) => MeasureOf(child, at, Dimension.Length, "ft, in, m, cm or mm");

    /// <summary>A measure such as <c>{ "value": 2000, "unit": "psi" }</c>, in the base unit of its dimension.</summary>
    public double? Measure(JsonElement parent, string path, string name, Dimension dimension, string units) =>
        parent.TryGetProperty(name, out _) && Object(parent, path, name) is { } child
            ? MeasureOf(child, JsonLines.Join(path, name), dimension, units)
            : null;

    private double? MeasureOf(JsonElement child, string at, Dimension dimension, string units)
    {
        var number = Number(child, at, "value");
        if (number is null && !child.TryGetProperty("value", out _)) Missing(JsonLines.Join(at, "value"));
        var symbol = Text(child, at, "unit");
        if (number is null || symbol is null) return null;
        if (Units.TryFind(symbol, out var unit) && unit.Dimension == dimension) return unit.ToBase(number.Value);
        Report("TRT-005", FindingLevel.Error, JsonLines.Join(at, "unit"),
            $"The unit is no unit of {TradeWords.Of(dimension)}.", symbol, $"Write {units}.");
        return null;
    }

    public T? Word<T>(JsonElement parent, string path, string name, bool required = false) where T : struct, Enum
    {
        if (Text(parent, path, name, required) is not { } words) return null;
        return Word<T>(words, JsonLines.Join(path, name));
    }

    public T? Word<T>(string words, string path) where T : struct, Enum
    {
        if (TradeWords.TryRead<T>(words, out var member)) return member;
        Report("TRT-004", FindingLevel.Error, path, "The word is not one of those rule sets use here.", words,
            "Use one of: " + TradeWords.All<T>() + ".");
        return null;
    }

    public void Missing(string path) => Report("TRT-002", FindingLevel.Error, path, "A property the rule set needs is missing.", null,
        $"Add \"{path[(path.LastIndexOf('.') + 1)..]}\".");

    public void Wrong(string path, JsonElement value, string wanted) => Report("TRT-004", FindingLevel.Error, path,
        "The value has the wrong form.", value.GetRawText(), $"Write {wanted}.");

    private static double? Fraction(string words)
    {
        var parts = words.Split('/');
        if (parts.Length != 2 || !Positive(parts[0], out var top) || !Positive(parts[1], out var bottom)) return null;
        return top / bottom;
    }

    private static bool Positive(string digits, out double number) =>
        double.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out number) && number > 0;
}
