using System.Collections.Immutable;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Handbook;

/// <summary>One answer of a worked example beside what the formula gives.</summary>
/// <param name="Expected">The answer.</param>
/// <param name="Given">What the formula gives, in the unit of the answer.</param>
/// <param name="Published">The answer as a number, in the same unit.</param>
/// <param name="Unit">Unit of both.</param>
public sealed record ExampleComparison(ExpectedValue Expected, double Given, double Published, Unit Unit)
{
    /// <summary>Deviation as a share of the answer; 0 where the answer is 0 and met.</summary>
    public double Deviation => Published == 0 ? Math.Abs(Given) : (Given - Published) / Math.Abs(Published);

    /// <summary>True when the deviation is within the stated tolerance.</summary>
    public bool Agrees => Math.Abs(Given - Published) <= Expected.Tolerance + 1e-9 * Math.Abs(Published);
}

/// <summary>Works the examples of an entry and compares.</summary>
public static class ExampleCheck
{
    /// <summary>Compares every answer of an example; empty when the example could not be worked out.</summary>
    public static ImmutableArray<ExampleComparison> Compare(HandbookEntry entry, WorkedExample example)
    {
        var inputs = example.Inputs.ToDictionary(i => i.Key, i => i.Text);
        var result = FormulaBook.Evaluate(entry, inputs, UnitSystem.UsCustomary);
        if (!result.Succeeded) return [];
        return [.. example.Expected.Select(e => Compare(result.Values.First(v => v.Output.Symbol == e.Symbol), e))];
    }

    private static ExampleComparison Compare(HandbookValue value, ExpectedValue expected)
    {
        var unit = MeasureText.UnitOf(expected.Text, value.Unit);
        if (MeasureText.Read(expected.Text, value.Unit, out var published) != MeasureReading.Read)
        {
            throw new InvalidOperationException($"The answer {expected.Text} of an example cannot be read.");
        }

        return new ExampleComparison(expected, unit.FromBase(value.Base), unit.FromBase(published), unit);
    }
}
