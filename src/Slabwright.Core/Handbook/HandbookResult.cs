using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Handbook;

/// <summary>One result with its unit, as printed.</summary>
/// <param name="Output">Which result.</param>
/// <param name="Base">Value in the base unit of its dimension.</param>
/// <param name="Unit">Unit it is printed in.</param>
/// <param name="Text">Value with its unit.</param>
public sealed record HandbookValue(HandbookOutput Output, double Base, Unit Unit, string Text)
{
    /// <summary>Value in <see cref="Unit"/>.</summary>
    public double Value => Unit.FromBase(Base);
}

/// <summary>A formula worked out: results with the steps that led there, or the findings that kept it from being worked out.</summary>
/// <param name="Entry">The formula, or null when there is none of that name.</param>
/// <param name="Inputs">Inputs as taken, defaults included.</param>
/// <param name="Values">Results; empty when an error was found.</param>
/// <param name="Reasons">Steps in order.</param>
/// <param name="Findings">What was wrong or doubtful.</param>
public sealed record HandbookResult(
    HandbookEntry? Entry,
    ImmutableArray<ReasonInput> Inputs,
    ImmutableArray<HandbookValue> Values,
    ImmutableArray<Reason> Reasons,
    ImmutableArray<Finding> Findings)
{
    /// <summary>True when there are results.</summary>
    public bool Succeeded => !Values.IsEmpty;
}
