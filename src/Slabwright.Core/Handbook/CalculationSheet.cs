using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Handbook;

/// <summary>The sheet one formula is worked out on: inputs and results in base units, steps on the way with their numbers printed.</summary>
internal sealed class CalculationSheet(HandbookEntry entry, IReadOnlyDictionary<string, double> inputs, UnitSystem system)
{
    private readonly Dictionary<string, double> results = [];
    private readonly List<Reason> steps = [];
    private readonly List<Finding> findings = [];

    /// <summary>Value of an input by its key, base unit.</summary>
    public double this[string key] => inputs[key];

    /// <summary>Value of an input by its key, base unit; 0 where the entry has no such input.</summary>
    public double Given(string key) => inputs.GetValueOrDefault(key);

    /// <summary>Value of a count by its key.</summary>
    public int Count(string key) => (int)Math.Round(inputs[key]);

    /// <summary>Results by symbol, base unit.</summary>
    public IReadOnlyDictionary<string, double> Results => results;

    /// <summary>Steps in order.</summary>
    public ImmutableArray<Reason> Steps => [.. steps];

    /// <summary>What the formula refused or doubted.</summary>
    public ImmutableArray<Finding> Findings => [.. findings];

    /// <summary>Writes a step on the way to the result and returns its value.</summary>
    /// <param name="name">What the number is.</param> <param name="value">Base value.</param> <param name="units">Units to print it in.</param>
    public double Step(string name, double value, UnitPair units)
    {
        steps.Add(new Reason(entry.Id, $"{name} = {MeasureText.Write(value, units.In(system))}", entry.Source));
        return value;
    }

    /// <summary>Writes a result.</summary>
    /// <param name="symbol">Symbol of an output of the entry.</param> <param name="value">Base value.</param>
    public double Result(string symbol, double value)
    {
        results[symbol] = value;
        return value;
    }

    /// <summary>Says that the inputs lie outside what the formula is good for; the results stand.</summary>
    public void Doubt(string sentence, string limit) => findings.Add(new Finding(
        "HBK-008", FindingLevel.Warning, sentence, new FindingPlace(Field: entry.Id), Limit: limit, Source: entry.Source.ToString()));

    /// <summary>Says that the formula has no answer for these inputs.</summary>
    public void Refuse(string sentence, string mend) => findings.Add(new Finding(
        "HBK-009", FindingLevel.Error, sentence, new FindingPlace(Field: entry.Id), Mend: mend));
}
