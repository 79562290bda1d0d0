using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Pavement;

/// <summary>
/// Joints at repeating spacings over a stretch. The first line of the pattern stands at <see cref="From"/> and the spacings follow one
/// another from there, again and again. A skewed line runs straight over all lanes; its place is taken at the left edge of the first lane.
/// </summary>
/// <param name="Lanes">Lanes it holds for; empty means all.</param>
/// <param name="From">Metres along the road.</param>
/// <param name="To">Metres along the road.</param>
/// <param name="Spacings">Spacings in order, m; one value for constant spacing.</param>
/// <param name="Kind">What the joints are.</param>
/// <param name="Skew">Metres along the road for a metre to the right: 1/6 for the usual 1:6, positive when the right edge meets the joint further along.</param>
/// <param name="Place">Where the pattern is written, for findings.</param>
public sealed record JointPattern(
    ImmutableArray<int> Lanes, double From, double To, ImmutableArray<double> Spacings, JointKind Kind, double Skew, FindingPlace Place);

/// <summary>A joint or working crack given one by one.</summary>
/// <param name="Lane">Lane number.</param>
/// <param name="Joint">The joint.</param>
/// <param name="Place">Where it is written, for findings.</param>
public sealed record ListedJoint(int Lane, TransverseJoint Joint, FindingPlace Place);

/// <summary>
/// A bridge deck, from abutment to abutment, with the approach slabs before and behind it. The pavement ends at the deck; an expansion
/// joint stands at the far end of each approach slab.
/// </summary>
/// <param name="From">Start of the deck, metres along the road.</param>
/// <param name="To">End of the deck, metres along the road.</param>
/// <param name="ApproachSlab">Length of the approach slab at each end, m; 0 where there is none.</param>
public sealed record BridgeDeck(double From, double To, double ApproachSlab);

/// <summary>A lane before its joints are laid out.</summary>
public sealed record LaneLayout
{
    /// <summary>Number from the left, starting at 1.</summary>
    public required int Number { get; init; }

    /// <summary>Width, m.</summary>
    public required double Width { get; init; }

    /// <summary>Where the lane's concrete begins, metres along the road.</summary>
    public required double From { get; init; }

    /// <summary>Where it ends, metres along the road.</summary>
    public required double To { get; init; }

    /// <summary>What lies to the left, where no other lane does.</summary>
    public required LaneEdge LeftEdge { get; init; }

    /// <summary>What lies to the right, where no other lane does.</summary>
    public required LaneEdge RightEdge { get; init; }

    /// <summary>Where the lane is written, for findings.</summary>
    public required FindingPlace Place { get; init; }
}

/// <summary>A pavement section or earlier repair with its lane and the place it is written.</summary>
/// <param name="Lane">Lane number.</param>
/// <param name="Value">The section or repair.</param>
/// <param name="Place">Where it is written, for findings.</param>
public sealed record OnLane<T>(int Lane, T Value, FindingPlace Place);

/// <summary>The lanes of a road as people describe them: patterns, lists, bridges and earlier repairs. Built into lanes by <see cref="LaneBuilder"/>.</summary>
public sealed record RoadLayout
{
    /// <summary>Length of the road, m.</summary>
    public required double Length { get; init; }

    /// <summary>Lanes.</summary>
    public required ImmutableArray<LaneLayout> Lanes { get; init; }

    /// <summary>Repeating joints.</summary>
    public ImmutableArray<JointPattern> Patterns { get; init; } = [];

    /// <summary>Joints and working cracks one by one; a listed joint stands in for a pattern joint closer than <see cref="LaneBuilder.SameJoint"/>.</summary>
    public ImmutableArray<ListedJoint> Joints { get; init; } = [];

    /// <summary>Bridges.</summary>
    public ImmutableArray<BridgeDeck> Bridges { get; init; } = [];

    /// <summary>Build-up.</summary>
    public ImmutableArray<OnLane<PavementSection>> Sections { get; init; } = [];

    /// <summary>Full-depth repairs made in the past.</summary>
    public ImmutableArray<OnLane<EarlierRepair>> EarlierRepairs { get; init; } = [];
}

/// <summary>Lanes with what was wrong in their description.</summary>
/// <param name="Lanes">Lanes that could be built, in order of number.</param>
/// <param name="Findings">What was wrong or doubtful.</param>
public sealed record LaneBuildResult(ImmutableArray<Lane> Lanes, ImmutableArray<Finding> Findings);
