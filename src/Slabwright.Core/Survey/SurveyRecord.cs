using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Survey;

/// <summary>A condition survey as read: the good rows, the cores and what was wrong with the rest.</summary>
/// <param name="Distresses">Distresses in file order.</param>
/// <param name="Cores">Cores in file order.</param>
/// <param name="Findings">What was wrong or doubtful, with the mend.</param>
public sealed record SurveyRecord(
    ImmutableArray<Distress> Distresses, ImmutableArray<CoreSample> Cores, ImmutableArray<Finding> Findings)
{
    /// <summary>An empty survey.</summary>
    public static SurveyRecord Empty { get; } = new([], [], []);

    /// <summary>Newest survey day, or null when there is no distress.</summary>
    public DateOnly? NewestDay => Distresses.IsEmpty ? null : Distresses.Max(d => d.SurveyedOn);
}
