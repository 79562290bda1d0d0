using System.Collections.Immutable;
using Slabwright.Core.Job;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Folder;

/// <summary>What project.json says, before the tables are read.</summary>
internal sealed record ProjectHead(
    string Name,
    string Owner,
    string Currency,
    FolderScene Scene,
    string RoadName,
    Climate Climate,
    Traffic? Traffic,
    Alignment? Alignment,
    ImmutableArray<JointPattern> Patterns,
    ProjectSettings Settings);
