using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace Slabwright.Core.Evidence;

/// <summary>How far a fact or rule has been checked against its source.</summary>
public enum SourceStatus
{
    /// <summary>The figure was read in the source named.</summary>
    Verified,

    /// <summary>A fact of the trade without a single published source.</summary>
    CommonPractice,

    /// <summary>Known from memory of the publication named; not yet read there. Starts switched off in rule sets.</summary>
    FromMemory,

    /// <summary>Set by the engineer or the project.</summary>
    Project,

    /// <summary>Worked out by Slabwright from the inputs shown; the method is on the page named.</summary>
    Computed,
}

/// <summary>Where a number or rule comes from.</summary>
/// <param name="Tag">Key into docs/sources.md, e.g. <c>FHWA-FDR-5</c>, or <c>common practice</c>.</param>
/// <param name="Place">Page, section, table or row in the source; empty where there is none.</param>
/// <param name="Status">How far the figure was checked.</param>
public sealed record SourceRef(string Tag, string Place, SourceStatus Status)
{
    /// <summary>The source of a fact of the trade.</summary>
    public static SourceRef CommonPractice { get; } = new("common practice", "", SourceStatus.CommonPractice);

    /// <summary>A value the engineer set in the project.</summary>
    public static SourceRef Project { get; } = new("project", "", SourceStatus.Project);

    /// <inheritdoc/>
    public override string ToString()
    {
        var place = Place.Length == 0 ? Tag : $"{Tag}, {Place}";
        return Status == SourceStatus.FromMemory ? $"{place} (from memory)" : place;
    }
}

/// <summary>One input of a decision or formula, ready to print with its unit.</summary>
/// <param name="Name">Name in the trade's words.</param>
/// <param name="Value">Value with its unit, as printed.</param>
public readonly record struct ReasonInput(string Name, string Value);

/// <summary>Why a decision fell as it did or how a number came about: rule, sentence, source and inputs.</summary>
/// <param name="Rule">Identifier of the rule or formula.</param>
/// <param name="Sentence">One sentence for the sheet.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="Inputs">The inputs that met it.</param>
[method: JsonConstructor]
public sealed record Reason(string Rule, string Sentence, SourceRef Source, ImmutableArray<ReasonInput> Inputs)
{
    /// <summary>A reason with no inputs.</summary>
    public Reason(string rule, string sentence, SourceRef source) : this(rule, sentence, source, []) { }
}
