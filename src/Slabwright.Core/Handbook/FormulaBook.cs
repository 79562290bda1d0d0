using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Handbook;

/// <summary>All formulas of the handbook, found by identifier and worked out from text.</summary>
public static class FormulaBook
{
    /// <summary>Every entry, chapter by chapter.</summary>
    public static ImmutableArray<HandbookEntry> All { get; } =
    [
        .. QuantityFormulas.Entries, .. RemovalFormulas.Entries, .. RiskFormulas.Entries, .. CostFormulas.Entries,
        .. SlabFormulas.Entries, .. WheelFormulas.Entries, .. CurlingFormulas.Entries, .. FatigueFormulas.Entries,
        .. ThicknessFormulas.Entries, .. DowelFormulas.Entries, .. DowelDesignFormulas.Entries, .. TransferFormulas.Entries, .. JointFormulas.Entries,
        .. FaultingFormulas.Entries, .. FaultingRegressions.Entries, .. PressureFormulas.Entries, .. TrafficFormulas.Entries, .. SealFormulas.Entries, .. LiftFormulas.Entries, .. KerfFormulas.Entries,
        .. MixFormulas.Entries, .. MaturityFormulas.Entries, .. OpeningFormulas.Entries, .. HydrationFormulas.Entries, .. HeatFormulas.Entries,
    ];

    /// <summary>The entry with an identifier, or null.</summary>
    public static HandbookEntry? Find(string id) => All.FirstOrDefault(e => e.Id.Equals(id, StringComparison.OrdinalIgnoreCase));

    /// <summary>Works out a formula.</summary>
    /// <param name="id">Identifier.</param>
    /// <param name="inputs">Inputs by key or symbol, as text: <c>6 ft</c>, <c>1.8 m</c>, or a bare number in the input's own unit.</param>
    /// <param name="system">Units of bare numbers and of the results.</param>
    public static HandbookResult Evaluate(string id, IReadOnlyDictionary<string, string> inputs, UnitSystem system = UnitSystem.UsCustomary)
    {
        if (Find(id) is { } entry) return Evaluate(entry, inputs, system);
        var near = All.Where(e => e.Id.Contains(id, StringComparison.OrdinalIgnoreCase)
            || e.Title.Contains(id, StringComparison.OrdinalIgnoreCase)).Select(e => e.Id).Take(5).ToList();
        var mend = near.Count > 0 ? $"Perhaps one of: {string.Join(", ", near)}." : "List the formulas to see their names.";
        return new HandbookResult(null, [], [], [],
            [new Finding("HBK-001", FindingLevel.Error, $"The handbook has no formula named {id}.", new FindingPlace(Field: id), id, mend)]);
    }

    /// <summary>Works out an entry.</summary>
    public static HandbookResult Evaluate(HandbookEntry entry, IReadOnlyDictionary<string, string> inputs, UnitSystem system)
    {
        var reader = new InputReader(entry, system);
        var values = reader.Read(inputs);
        if (reader.Findings.Any(f => f.Level == FindingLevel.Error)) return new HandbookResult(entry, [], [], [], reader.Findings);
        var sheet = new CalculationSheet(entry, values, system);
        entry.Work(sheet);
        ImmutableArray<Finding> findings = [.. reader.Findings, .. sheet.Findings];
        var taken = entry.Inputs
            .Select(i => new ReasonInput(i.Name, MeasureText.Write(values[i.Key], i.Units.In(system), i.Whole))).ToImmutableArray();
        if (findings.Any(f => f.Level == FindingLevel.Error)) return new HandbookResult(entry, taken, [], sheet.Steps, findings);
        var results = entry.Outputs.Select(o => Value(o, sheet.Results[o.Symbol], system)).ToImmutableArray();
        var last = new Reason(
            entry.Id, $"{entry.Expression}: {string.Join(", ", results.Select(r => $"{r.Output.Symbol} = {r.Text}"))}", entry.Source, taken);
        return new HandbookResult(entry, taken, results, [.. sheet.Steps, last], findings);
    }

    private static HandbookValue Value(HandbookOutput output, double value, UnitSystem system)
    {
        var unit = output.Units.In(system);
        return new HandbookValue(output, value, unit, MeasureText.Write(value, unit, output.Whole));
    }
}
