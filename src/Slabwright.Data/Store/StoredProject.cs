using Slabwright.Core.Measures;

namespace Slabwright.Data.Store;

/// <summary>A job in the store: its name and the files of its project folder, byte for byte.</summary>
internal sealed class StoredProject
{
    public Guid Id { get; set; }

    public required string Name { get; set; }

    public UnitSystem Units { get; set; }

    /// <summary>Full path of the folder it was read from.</summary>
    public required string ImportedFrom { get; set; }

    public DateTimeOffset ImportedAt { get; set; }

    /// <summary>Hash over all file names and contents; see <see cref="ContentHash"/>.</summary>
    public required string ContentHash { get; set; }

    public List<StoredFile> Files { get; set; } = [];

    public StoredPlan? Plan { get; set; }
}

/// <summary>One file of a project folder.</summary>
internal sealed class StoredFile
{
    public Guid ProjectId { get; set; }

    /// <summary>Path inside the folder, parts joined by <c>/</c> on every platform.</summary>
    public required string Path { get; set; }

    public required byte[] Bytes { get; set; }

    /// <summary>SHA-256 of <see cref="Bytes"/>, lower-case hexadecimal.</summary>
    public required string Hash { get; set; }
}

/// <summary>The newest plan computed for a job; good only for the content and the engine it names.</summary>
internal sealed class StoredPlan
{
    public Guid ProjectId { get; set; }

    public required string ContentHash { get; set; }

    public required string EngineVersion { get; set; }

    public DateTimeOffset ComputedAt { get; set; }

    public int Repairs { get; set; }

    /// <summary>Bid total, in cents so that every provider keeps it exactly.</summary>
    public long TotalCents { get; set; }

    public required string Currency { get; set; }

    /// <summary>The plan as compressed JSON; see <see cref="PlanJson"/>.</summary>
    public required byte[] Content { get; set; }
}
