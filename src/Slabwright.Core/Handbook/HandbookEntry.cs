using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Handbook;

/// <summary>One input of a formula.</summary>
/// <param name="Key">Word it is given by on the command line, e.g. <c>length</c>.</param>
/// <param name="Symbol">Symbol in the expression.</param>
/// <param name="Name">Name in the trade's words.</param>
/// <param name="Units">Units it is read and printed in when none is given.</param>
/// <param name="Least">Least value that makes sense, base unit.</param>
/// <param name="Most">Greatest value that makes sense, base unit.</param>
public sealed record HandbookInput(string Key, string Symbol, string Name, UnitPair Units, double Least, double Most)
{
    /// <summary>Value taken when none is given, base unit; null where the input is required.</summary>
    public double? Default { get; init; }

    /// <summary>True for counts.</summary>
    public bool Whole { get; init; }
}

/// <summary>One result of a formula.</summary>
/// <param name="Symbol">Symbol in the expression.</param>
/// <param name="Name">Name in the trade's words.</param>
/// <param name="Units">Units it is printed in.</param>
/// <param name="Whole">True for counts, printed without decimals.</param>
public sealed record HandbookOutput(string Symbol, string Name, UnitPair Units, bool Whole = false);

/// <summary>What a published or hand-worked example gives for one result.</summary>
/// <param name="Symbol">Symbol of the result.</param>
/// <param name="Text">Value with its unit, as printed.</param>
/// <param name="Tolerance">Greatest deviation that counts as agreement, in the unit of <paramref name="Text"/>.</param>
public sealed record ExpectedValue(string Symbol, string Text, double Tolerance);

/// <summary>An example with its answer, run by the tests.</summary>
/// <param name="Title">What is worked out.</param>
/// <param name="Inputs">Inputs by key, as text with units.</param>
/// <param name="Expected">Answers.</param>
/// <param name="Source">Where the answer comes from.</param>
/// <param name="Remark">Why the answer differs, where it does; empty otherwise.</param>
public sealed record WorkedExample(
    string Title,
    ImmutableArray<(string Key, string Text)> Inputs,
    ImmutableArray<ExpectedValue> Expected,
    SourceRef Source,
    string Remark = "");

/// <summary>A formula of the handbook: what it says, where it comes from, what it has been checked against, and how to work it out.</summary>
public sealed record HandbookEntry
{
    /// <summary>Identifier on the command line, e.g. <c>dowel-bearing</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Printed title.</summary>
    public required string Title { get; init; }

    /// <summary>Chapter it stands in.</summary>
    public required string Topic { get; init; }

    /// <summary>The formula as text.</summary>
    public required string Expression { get; init; }

    /// <summary>Inputs in order.</summary>
    public required ImmutableArray<HandbookInput> Inputs { get; init; }

    /// <summary>Results in order.</summary>
    public required ImmutableArray<HandbookOutput> Outputs { get; init; }

    /// <summary>Where the formula comes from.</summary>
    public required SourceRef Source { get; init; }

    /// <summary>Range of validity and what to know before using it.</summary>
    public required string Notes { get; init; }

    /// <summary>Danger to people or to the pavement; empty where there is none.</summary>
    public string Caution { get; init; } = "";

    /// <summary>Worked examples.</summary>
    public ImmutableArray<WorkedExample> Examples { get; init; } = [];

    /// <summary>Works the formula out on a sheet of base values.</summary>
    internal Action<CalculationSheet> Work { get; init; } = _ => throw new InvalidOperationException("The entry has no working.");
}
