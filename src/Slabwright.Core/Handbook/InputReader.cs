using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Handbook;

/// <summary>Reads the inputs of one formula from text and says what is wrong with them.</summary>
internal sealed class InputReader(HandbookEntry entry, UnitSystem system)
{
    private readonly List<Finding> findings = [];

    /// <summary>What was wrong.</summary>
    public ImmutableArray<Finding> Findings => [.. findings];

    /// <summary>Base values by key; inputs with findings are left out.</summary>
    public Dictionary<string, double> Read(IReadOnlyDictionary<string, string> texts)
    {
        var values = new Dictionary<string, double>();
        foreach (var input in entry.Inputs)
        {
            var given = texts.FirstOrDefault(t => Names(input, t.Key));
            if (given.Key is null) TakeDefault(values, input);
            else if (ReadOne(input, given.Value) is { } value) values[input.Key] = value;
        }

        foreach (var unknown in texts.Keys.Where(k => !entry.Inputs.Any(i => Names(i, k))))
        {
            Add("HBK-006", $"{entry.Title} has no input named {unknown}.", unknown, unknown,
                "Use one of: " + string.Join(", ", entry.Inputs.Select(i => i.Key)) + ".");
        }

        return values;
    }

    private static bool Names(HandbookInput input, string key) =>
        input.Key.Equals(key, StringComparison.OrdinalIgnoreCase) || input.Symbol.Equals(key, StringComparison.Ordinal)
        || input.Name.Equals(key, StringComparison.OrdinalIgnoreCase);

    private void TakeDefault(Dictionary<string, double> values, HandbookInput input)
    {
        if (input.Default is { } value) values[input.Key] = value;
        else Add("HBK-002", $"{input.Name} ({input.Key}) is missing.", input.Key, null, $"Give it, e.g. {Example(input)}.");
    }

    private double? ReadOne(HandbookInput input, string text)
    {
        var unit = input.Units.In(system);
        switch (MeasureText.Read(text, unit, out var value))
        {
            case MeasureReading.NoNumber:
                Add("HBK-003", $"{input.Name} is not a number with a unit.", input.Key, text, $"Write e.g. {Example(input)}.");
                return null;
            case MeasureReading.UnknownUnit:
                Add("HBK-004", $"The unit of {input.Name.ToLowerInvariant()} is not known.", input.Key, text, UnitMend(unit));
                return null;
            case MeasureReading.WrongDimension:
                Add("HBK-004", $"The unit of {input.Name.ToLowerInvariant()} measures something else.", input.Key, text, UnitMend(unit));
                return null;
        }

        return InRange(input, value, text, unit) ? value : null;
    }

    private bool InRange(HandbookInput input, double value, string text, Unit unit)
    {
        if (input.Whole && Math.Abs(value - Math.Round(value)) > 1e-9)
        {
            Add("HBK-007", $"{input.Name} is a count.", input.Key, text, "Give a whole number.");
            return false;
        }

        var slack = 1e-9 * Math.Max(Math.Abs(input.Least), Math.Abs(input.Most));
        if (value >= input.Least - Math.Min(slack, 1e-9) && value <= input.Most + slack) return true;
        var limit = $"{MeasureText.Write(input.Least, unit)} to {MeasureText.Write(input.Most, unit)}";
        findings.Add(new Finding(
            "HBK-005", FindingLevel.Error, $"{input.Name} is outside what makes sense here.", new FindingPlace(Field: input.Key), text,
            $"Give a value from {limit}; check the unit.", limit));
        return false;
    }

    private static string UnitMend(Unit unit) => unit.Dimension == Dimension.None
        ? "Give a number without a unit."
        : "Use one of: " + string.Join(", ", Units.All.Where(u => u.Dimension == unit.Dimension).Select(u => u.Symbol)) + ".";

    private string Example(HandbookInput input)
    {
        var unit = input.Units.In(system);
        var value = input.Default ?? Math.Clamp(unit.ToBase(1), input.Least, input.Most);
        return $"{input.Key}=\"{MeasureText.Write(value, unit, input.Whole).Replace("Δ", "", StringComparison.Ordinal)}\"";
    }

    private void Add(string code, string sentence, string field, string? value, string mend) =>
        findings.Add(new Finding(code, FindingLevel.Error, sentence, new FindingPlace(Field: field), value, mend));
}
