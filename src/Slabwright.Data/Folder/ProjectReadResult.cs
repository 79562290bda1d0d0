using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;

namespace Slabwright.Data.Folder;

/// <summary>A folder as read.</summary>
/// <param name="Project">The project, or null when something every project needs is missing; its findings are the same as here.</param>
/// <param name="Findings">What was wrong or doubtful, file by file.</param>
public sealed record ProjectReadResult(Project? Project, ImmutableArray<Finding> Findings)
{
    /// <summary>True when at least one finding is an error.</summary>
    public bool HasErrors => Findings.Any(f => f.Level == FindingLevel.Error);
}
