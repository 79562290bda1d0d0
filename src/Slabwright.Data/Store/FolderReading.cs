using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;

namespace Slabwright.Data.Store;

/// <summary>Reads a project folder on disk.</summary>
/// <param name="folder">The folder.</param>
/// <returns>The project, or null when something every project needs is missing, and what was wrong in its files.</returns>
public delegate FolderContent FolderReading(string folder);

/// <summary>A project folder as read.</summary>
/// <param name="Project">The project, or null when something every project needs is missing.</param>
/// <param name="Findings">What was wrong in its files.</param>
public readonly record struct FolderContent(Project? Project, ImmutableArray<Finding> Findings);
