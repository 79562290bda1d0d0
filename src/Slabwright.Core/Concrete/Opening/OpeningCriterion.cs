using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>When traffic may return: a strength, an age, and how sure one must be.</summary>
public sealed record OpeningCriterion
{
    /// <summary>How strength is measured.</summary>
    public required StrengthKind Kind { get; init; }

    /// <summary>Strength needed, Pa.</summary>
    public required double Strength { get; init; }

    /// <summary>Age needed besides, h; 0 where none is.</summary>
    public double LeastAge { get; init; }

    /// <summary>Chance with which both must be reached, 0 to 1.</summary>
    public double Confidence { get; init; } = 0.95;

    /// <summary>Why these.</summary>
    public required ImmutableArray<Reason> Reasons { get; init; }
}
