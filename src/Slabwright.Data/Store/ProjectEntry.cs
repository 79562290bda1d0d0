using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Data.Store;

/// <summary>A job as the store lists it, without its files.</summary>
/// <param name="Id">Identifier in the store.</param>
/// <param name="Name">Name of the job.</param>
/// <param name="Units">Units of its files, screens and sheets.</param>
/// <param name="ImportedFrom">Folder it was read from.</param>
/// <param name="ImportedAt">When the content last changed.</param>
/// <param name="ContentHash">Names the content.</param>
/// <param name="Plan">The newest plan in short; null when none was computed for this content by this engine.</param>
public sealed record ProjectEntry(
    Guid Id, string Name, UnitSystem Units, string ImportedFrom, DateTimeOffset ImportedAt, string ContentHash, PlanInShort? Plan);

/// <summary>What the list of jobs shows of a plan.</summary>
/// <param name="Repairs">Number of repairs.</param>
/// <param name="Total">Bid total.</param>
/// <param name="Currency">Printed currency.</param>
public sealed record PlanInShort(int Repairs, decimal Total, string Currency);

/// <summary>What an import did.</summary>
public enum ImportOutcome
{
    /// <summary>The folder was new to the store.</summary>
    Added,

    /// <summary>The store already held this folder with the same content.</summary>
    Unchanged,

    /// <summary>The store held this folder with other content, which was replaced.</summary>
    Replaced,

    /// <summary>The folder does not hold a project that can be read; the findings say why.</summary>
    Refused,
}

/// <summary>The end of an import.</summary>
/// <param name="Outcome">What was done.</param>
/// <param name="Id">Identifier in the store; null when refused.</param>
/// <param name="Findings">What was wrong in the files.</param>
public sealed record ImportResult(ImportOutcome Outcome, Guid? Id, ImmutableArray<Finding> Findings);
