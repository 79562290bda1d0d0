using System.Collections.Immutable;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Boundaries;

/// <summary>
/// The boundary question as whole numbers: positions in <see cref="Ticks"/>, money in hundred-millionths of the currency unit
/// (<see cref="MoneyPerUnit"/> to one), so that every rate per tick is a whole number and two plans can be compared for equality.
/// </summary>
public sealed record BoundaryProblem
{
    /// <summary>Whole money units in one currency unit.</summary>
    public const long MoneyPerUnit = 100_000_000;

    /// <summary>Lanes from the left.</summary>
    public required ImmutableArray<ProblemLane> Lanes { get; init; }

    /// <summary>Cut step in thousandths of a tick; mark number m lies at m × step, rounded to the nearest tick.</summary>
    public required long StepThousandths { get; init; }

    /// <summary>Rules for every lane.</summary>
    public required ProblemLimits Limits { get; init; }

    /// <summary>Prices that do not depend on the lane.</summary>
    public required ProblemPrices Prices { get; init; }

    /// <summary>Place of a mark, ticks.</summary>
    /// <param name="mark">Mark number, 0 at the start of the road.</param>
    public long MarkAt(long mark) => (mark * StepThousandths + 500) / 1000;

    /// <summary>Number of the last mark at or before a place.</summary>
    /// <param name="at">Ticks, not negative.</param>
    public long MarkAtOrBefore(long at)
    {
        var mark = at * 1000 / StepThousandths + 1;
        while (MarkAt(mark) > at) mark--;
        return mark;
    }

    /// <summary>The mark nearest a place, ticks; the earlier one where two are equally near.</summary>
    /// <param name="at">Ticks.</param>
    public long NearestMark(long at)
    {
        var before = MarkAtOrBefore(at);
        var (low, high) = (MarkAt(before), MarkAt(before + 1));
        return at - low <= high - at ? low : high;
    }
}

/// <summary>The rules in ticks. A rule the rule set is silent about holds the least value that still can be built.</summary>
public sealed record ProblemLimits
{
    /// <summary>Least repair length.</summary>
    public required long LeastLength { get; init; }

    /// <summary>True where a repair within one slab may be as short as half of it, when that is less than the least length.</summary>
    public bool OrHalfSlab { get; init; }

    /// <summary>Least length where both ends stand at undowelled joints.</summary>
    public required long LeastLengthUndowelled { get; init; }

    /// <summary>Least old slab between a cut and the next joint on the side that stays.</summary>
    public required long LeastRemnant { get; init; }

    /// <summary>Least old slab between two repairs of a lane; at least 1.</summary>
    public required long LeastGap { get; init; }

    /// <summary>How far a cut passes a dowelled joint that is taken out.</summary>
    public required long PassDowelled { get; init; }

    /// <summary>How far a cut passes any other joint or crack that is taken out.</summary>
    public required long PassOther { get; init; }

    /// <summary>True where a cut may stand at an undowelled joint or working crack.</summary>
    public required bool EndAtUndowelled { get; init; }

    /// <summary>Least panel between a re-established joint and the next new joint.</summary>
    public required long LeastPanel { get; init; }

    /// <summary>Two joints this near one another across a lane line match.</summary>
    public required long MatchWithin { get; init; }
}

/// <summary>Prices common to all lanes; rates in money units a tick.</summary>
public sealed record ProblemPrices
{
    /// <summary>Longitudinal cut, a tick.</summary>
    public required long CutRate { get; init; }

    /// <summary>Longitudinal seal, a tick.</summary>
    public required long SealRate { get; init; }

    /// <summary>Isolation board, a tick of face.</summary>
    public required long IsolationRate { get; init; }

    /// <summary>Tie bars, a tick of face.</summary>
    public required long TieRate { get; init; }

    /// <summary>Repairs this long are tied along the lane line unless they span a joint unmatched; <see cref="long.MaxValue"/> for never.</summary>
    public required long TieFrom { get; init; }

    /// <summary>Longest lift piece.</summary>
    public required long LiftPiece { get; init; }

    /// <summary>Planning weight of a neighbour's joint spanned and not matched.</summary>
    public required long SpannedJoint { get; init; }

    /// <summary>Planning weight of a repair end that meets no joint and no repair end across the lane line.</summary>
    public required long UnmatchedEnd { get; init; }
}

/// <summary>A stretch in ticks.</summary>
/// <param name="From">First tick.</param>
/// <param name="To">Last tick.</param>
public readonly record struct TickSpan(long From, long To)
{
    /// <summary>Length, ticks.</summary>
    public long Length => To - From;
}

/// <summary>A transverse joint or crack in ticks; a skewed one covers a band.</summary>
/// <param name="At">At the lane centre.</param>
/// <param name="AtLeft">At the left edge.</param>
/// <param name="AtRight">At the right edge.</param>
/// <param name="Kind">What it is.</param>
public readonly record struct ProblemJoint(long At, long AtLeft, long AtRight, JointKind Kind)
{
    /// <summary>First tick of the band.</summary>
    public long First => Math.Min(AtLeft, AtRight);

    /// <summary>Last tick of the band.</summary>
    public long Last => Math.Max(AtLeft, AtRight);

    /// <summary>True for a joint square to the lane.</summary>
    public bool Square => AtLeft == AtRight;
}

/// <summary>Price class by length of one repair.</summary>
/// <param name="FromLength">Least length, ticks.</param>
/// <param name="Rate">Money units a tick of length for the whole repair.</param>
public readonly record struct LengthClass(long FromLength, long Rate);

/// <summary>What lies along one side of a lane.</summary>
/// <param name="Concrete">True where concrete lies beyond.</param>
/// <param name="Lane">Index of the neighbouring lane, or −1.</param>
/// <param name="OpenRate">Money units a tick where no concrete lies beyond: shoulder strip and edge form.</param>
public readonly record struct ProblemSide(bool Concrete, int Lane, long OpenRate);

/// <summary>Longest concrete without a joint over a stretch.</summary>
/// <param name="From">Ticks.</param>
/// <param name="To">Ticks.</param>
/// <param name="Longest">Ticks; <see cref="long.MaxValue"/> for no limit.</param>
public readonly record struct UnjointedLimit(long From, long To, long Longest);

/// <summary>One lane: what is there, what must come out, and what it costs.</summary>
public sealed record ProblemLane
{
    /// <summary>Lane number.</summary>
    public required int Number { get; init; }

    /// <summary>Where the concrete begins.</summary>
    public required long From { get; init; }

    /// <summary>Where it ends.</summary>
    public required long To { get; init; }

    /// <summary>Joints sorted by <see cref="ProblemJoint.At"/>.</summary>
    public required ImmutableArray<ProblemJoint> Joints { get; init; }

    /// <summary>Where no cut may fall; the ends themselves are free.</summary>
    public required ImmutableArray<TickSpan> NoCut { get; init; }

    /// <summary>What must come out: sorted, apart from one another.</summary>
    public required ImmutableArray<TickSpan> Demands { get; init; }

    /// <summary>Limits on unjointed length along the lane; empty for none.</summary>
    public required ImmutableArray<UnjointedLimit> Unjointed { get; init; }

    /// <summary>Set-up and the two end cuts and seals of a repair.</summary>
    public required long FixedCost { get; init; }

    /// <summary>Drilled dowels of one end.</summary>
    public required long DowelledEndCost { get; init; }

    /// <summary>True where no joint of the lane has dowels: every end relies on interlock or on the base.</summary>
    public bool Undowelled { get; init; }

    /// <summary>Tie bars of one tied end.</summary>
    public long TiedEndCost { get; init; }

    /// <summary>Repairs up to this length inside reinforced slabs have one of two dowelled ends tied; 0 for none.</summary>
    public long TieOneEndUpTo { get; init; }

    /// <summary>Stretches of reinforced slabs; used where <see cref="TieOneEndUpTo"/> is above 0.</summary>
    public ImmutableArray<TickSpan> Reinforced { get; init; } = [];

    /// <summary>True where one of the two dowelled ends of a repair is tied.</summary>
    public bool TiesOneEnd(long from, long to) =>
        to - from <= TieOneEndUpTo && Reinforced.Any(r => r.From <= from && to <= r.To);

    /// <summary>One new joint inside a repair.</summary>
    public required long InnerJointCost { get; init; }

    /// <summary>One cut between lift pieces.</summary>
    public required long LiftCutCost { get; init; }

    /// <summary>Price classes, first from 0, ascending; the rate of a repair's class holds for all of it.</summary>
    public required ImmutableArray<LengthClass> Classes { get; init; }

    /// <summary>Least length paid by the class rate.</summary>
    public required long LeastPayLength { get; init; }

    /// <summary>Cost a tick of length that no class changes (concrete in place of loose base).</summary>
    public required long ExtraRate { get; init; }

    /// <summary>Left side.</summary>
    public required ProblemSide Left { get; init; }

    /// <summary>Right side.</summary>
    public required ProblemSide Right { get; init; }
}

/// <summary>One chosen repair.</summary>
/// <param name="Lane">Index of the lane in the problem.</param>
/// <param name="From">First cut, ticks.</param>
/// <param name="To">Last cut, ticks.</param>
public readonly record struct ChosenRepair(int Lane, long From, long To);

/// <summary>How a boundary search ended.</summary>
/// <param name="Repairs">Chosen repairs by lane, then place.</param>
/// <param name="Objective">Proven least cost, planning weights included, in money units.</param>
/// <param name="Unmet">Demands no legal repair can hold.</param>
/// <param name="Clusters">Independent clusters.</param>
/// <param name="Work">Repairs priced on the way: a measure of effort that does not depend on the machine.</param>
public sealed record BoundarySolution(
    ImmutableArray<ChosenRepair> Repairs, long Objective, ImmutableArray<UnmetDemand> Unmet, int Clusters, long Work);

/// <summary>A demand no legal repair can hold.</summary>
/// <param name="Lane">Index of the lane.</param>
/// <param name="Demand">The stretch.</param>
public readonly record struct UnmetDemand(int Lane, TickSpan Demand);
