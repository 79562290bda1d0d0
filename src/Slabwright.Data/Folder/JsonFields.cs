using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Data.Folder;

/// <summary>
/// The properties of one JSON object, with the path to it. Reading a property that is missing or wrong adds a finding; properties
/// nobody asked for are named by <see cref="Unread"/>.
/// </summary>
internal sealed class JsonFields(JsonElement element, string path, string file, List<Finding> findings)
{
    private static readonly ImmutableArray<string> LengthUnits = ["ft", "in", "m", "mm", "mi", "km"];
    private readonly HashSet<string> _asked = new(StringComparer.Ordinal);
    private readonly List<JsonFields> _inside = [];

    public FindingPlace Place => new(file, null, path.Length == 0 ? null : path);

    public List<Finding> Findings => findings;

    public bool Has(string name) => Find(name) is not null;

    public string? Text(string name, bool required = false)
    {
        if (Value(name, required) is not { } value) return null;
        if (value.ValueKind == JsonValueKind.String) return value.GetString();
        Wrong(name, value, "text in quotes");
        return null;
    }

    public bool? YesNo(string name)
    {
        if (Value(name) is not { } value) return null;
        if (value.ValueKind is JsonValueKind.True or JsonValueKind.False) return value.GetBoolean();
        Wrong(name, value, "true or false");
        return null;
    }

    public double? Number(string name, double least, double most, bool required = false) =>
        Value(name, required) is { } value ? Measured(name, value, Units.One, least, most) : null;

    public int? Whole(string name, int least, int most)
    {
        if (Value(name) is not { } value) return null;
        if (value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out var number) && number >= least && number <= most) return number;
        Wrong(name, value, string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most}"));
        return null;
    }

    /// <summary>A length in metres from a property whose name ends in its unit.</summary>
    public double? Length(string name, double least, double most, bool required = false)
    {
        foreach (var unit in LengthUnits)
        {
            if (Find($"{name}_{unit}") is not { } value) continue;
            Units.TryFind(unit, out var found);
            return Measured($"{name}_{unit}", value, found!, least, most);
        }

        if (required) Missing($"{name}_ft or {name}_m");
        return null;
    }

    /// <summary>
    /// A measure in base units from a property whose name ends in its unit; limits in base units. Of several properties the first given counts.
    /// </summary>
    /// <param name="name">Name without the unit.</param> <param name="units">Endings and their units.</param>
    /// <param name="least">Base unit.</param> <param name="most">Base unit.</param>
    public double? Measure(string name, IReadOnlyList<(string Ending, Unit Unit)> units, double least, double most)
    {
        foreach (var (ending, unit) in units)
        {
            if (Find($"{name}_{ending}") is { } value) return Measured($"{name}_{ending}", value, unit, least, most);
        }

        return null;
    }

    /// <summary>A strength or temperature in its base unit, from a property whose name ends in its unit.</summary>
    public double? Measure(string name, FieldKind kind, double least, double most)
    {
        foreach (var measure in FolderMeasures.Of(kind))
        {
            var full = $"{name}_{measure.Suffix}";
            if (Find(full) is not { } value) continue;
            if (value.ValueKind != JsonValueKind.Number || !measure.TryRead(value.GetRawText(), out var number))
            {
                Wrong(full, value, "a number without its unit: the unit stands in the property's name");
                return null;
            }

            if (number >= least && number <= most) return number;
            Bad("ROAD-009", "The value is out of range.", full, value.GetRawText(), "Check the value and the unit in the property's name.",
                $"{measure.Unit.Format(least, 0)} to {measure.Unit.Format(most, 0)}");
            return null;
        }

        return null;
    }

    /// <summary>Lengths in metres from an array property, or null where there is none.</summary>
    public ImmutableArray<double>? LengthsIfGiven(string name) =>
        LengthUnits.Any(u => Find($"{name}_{u}") is not null) ? Lengths(name) : null;

    /// <summary>A clock time such as <c>21:00</c>.</summary>
    public TimeOnly? Clock(string name, bool required = false)
    {
        if (Text(name, required) is not { } text) return null;
        if (TimeOnly.TryParseExact(text, ["HH:mm", "H:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)) return time;
        Bad("CON-070", "The clock time cannot be read.", name, text, "Write hours and minutes as 21:00.");
        return null;
    }

    /// <summary>Lengths in metres from an array property whose name ends in its unit.</summary>
    public ImmutableArray<double>? Lengths(string name)
    {
        foreach (var unit in LengthUnits)
        {
            if (Find($"{name}_{unit}") is not { } value) continue;
            Units.TryFind(unit, out var found);
            var items = value.ValueKind == JsonValueKind.Array ? value.EnumerateArray().ToArray() : [value];
            var read = items.Select(i => Measured($"{name}_{unit}", i, found!, double.MinValue, double.MaxValue)).ToArray();
            return read.Any(r => r is null) ? null : [.. read.Select(r => r!.Value)];
        }

        Missing($"{name}_ft or {name}_m");
        return null;
    }

    /// <summary>A place along the road from a station or a length with its unit.</summary>
    public double? At(string name, FolderScene scene, bool required = false)
    {
        if (Text($"{name}_station") is { } station) return scene.PlaceOf(station, Place with { Field = Path($"{name}_station") }, findings);
        if (Length(name, double.MinValue, double.MaxValue, required) is not { } at) return null;
        if (scene.OnRoad(at)) return Math.Clamp(at, 0, scene.Length);
        findings.Add(new("ROAD-013", FindingLevel.Error, "The place is not on the road.", Place with { Field = Path(name) },
            Units.Metre.Format(at), "Check the place; the road's length is in project.json.", scene.LimitText));
        return null;
    }

    public T? Word<T>(string name, bool required = false) where T : struct, Enum
    {
        if (Text(name, required) is not { } words) return null;
        if (TradeWords.TryRead<T>(words, out var member)) return member;
        findings.Add(new("ROAD-008", FindingLevel.Error, "The word is not one this property knows.", Place with { Field = Path(name) }, words,
            "Use one of: " + TradeWords.All<T>() + "."));
        return null;
    }

    public DateOnly? Day(string name)
    {
        if (Text(name) is not { } text) return null;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)) return day;
        findings.Add(new("ROAD-015", FindingLevel.Error, "The day cannot be read.", Place with { Field = Path(name) }, text,
            "Write year, month and day as 2026-04-01."));
        return null;
    }

    public JsonFields? Object(string name, bool required = false)
    {
        if (Value(name, required) is not { } value) return null;
        return Inside(name, value);
    }

    public IEnumerable<JsonFields> Objects(string name) =>
        Items(name, "a list in square brackets").Select((item, i) => Inside($"{name}[{i.ToString(CultureInfo.InvariantCulture)}]", item)).OfType<JsonFields>();

    public ImmutableArray<string> Texts(string name) =>
        [.. Items(name, "a list of texts in square brackets").Where(i => i.ValueKind == JsonValueKind.String).Select(i => i.GetString()!)];

    public ImmutableArray<int> Wholes(string name) =>
        [.. Items(name, "a list of whole numbers in square brackets").Where(i => i.ValueKind == JsonValueKind.Number && i.TryGetInt32(out _)).Select(i => i.GetInt32())];

    /// <summary>Adds an error about a property.</summary>
    public void Bad(string code, string sentence, string name, string? value, string mend, string? limit = null) =>
        findings.Add(new(code, FindingLevel.Error, sentence, Place with { Field = Path(name) }, value, mend, limit));

    /// <summary>Names every property that nobody asked for, here and inside.</summary>
    public void Unread()
    {
        foreach (var property in element.EnumerateObject().Where(p => !_asked.Contains(p.Name)))
        {
            findings.Add(new("ROAD-004", FindingLevel.Warning, "The property is not one this file has; it is not read.",
                Place with { Field = Path(property.Name) }, property.Name, "Check the spelling against docs/steps/project-folder.md."));
        }

        foreach (var fields in _inside) fields.Unread();
    }

    private string Path(string name) => path.Length == 0 ? name : $"{path}.{name}";

    private JsonElement? Find(string name)
    {
        _asked.Add(name);
        return element.TryGetProperty(name, out var value) && value.ValueKind != JsonValueKind.Null ? value : null;
    }

    private JsonElement? Value(string name, bool required = false)
    {
        var value = Find(name);
        if (value is null && required) Missing(name);
        return value;
    }

    private JsonFields? Inside(string name, JsonElement value)
    {
        if (value.ValueKind != JsonValueKind.Object)
        {
            Wrong(name, value, "an object in braces");
            return null;
        }

        _inside.Add(new JsonFields(value, Path(name), file, findings));
        return _inside[^1];
    }

    private JsonElement[] Items(string name, string wanted)
    {
        if (Value(name) is not { } value) return [];
        if (value.ValueKind == JsonValueKind.Array) return [.. value.EnumerateArray()];
        Wrong(name, value, wanted);
        return [];
    }

    private double? Measured(string name, JsonElement value, Unit unit, double least, double most)
    {
        if (value.ValueKind != JsonValueKind.Number || !ExactNumber.TryRead(value.GetRawText(), unit with { Offset = 0 }, out var number))
        {
            Wrong(name, value, "a number without its unit: the unit stands in the property's name");
            return null;
        }

        number += unit.Offset;
        if (number >= least && number <= most) return number;
        findings.Add(new("ROAD-009", FindingLevel.Error, "The value is out of range.", Place with { Field = Path(name) }, value.GetRawText(),
            "Check the value and the unit in the property's name.", $"{ExactNumber.Write(least - unit.Offset, unit)} to {ExactNumber.Write(most - unit.Offset, unit)} {unit.Symbol}".TrimEnd()));
        return null;
    }

    private void Missing(string name) => findings.Add(new(
        "ROAD-006", FindingLevel.Error, "A property every project needs is missing.", Place with { Field = Path(name) }, null, $"Add {name}."));

    private void Wrong(string name, JsonElement value, string wanted) => findings.Add(new(
        "ROAD-007", FindingLevel.Error, "The value has the wrong form.", Place with { Field = Path(name) }, value.GetRawText(), $"Write {wanted}."));
}
