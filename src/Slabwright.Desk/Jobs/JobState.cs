using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Desk.Jobs;

/// <summary>Where the work on a job stands.</summary>
public abstract record JobState
{
    private JobState() { }

    /// <summary>The plan is being made; <paramref name="Step"/> says what is done just now.</summary>
    public sealed record Working(string Step) : JobState;

    /// <summary>The plan is there.</summary>
    public sealed record Ready(OpenJob Job) : JobState;

    /// <summary>There is no plan; the sentence and the findings say why.</summary>
    public sealed record Failed(string Sentence, ImmutableArray<Finding> Findings) : JobState;
}
