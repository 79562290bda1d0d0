using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Boundaries;

/// <summary>The long sides of one repair, stretch by stretch.</summary>
internal sealed class RepairFaces(
    Road road, BoundaryProblem problem, JointLimits limits, ChosenRepair repair, List<long> inner, ILookup<int, ChosenRepair> byLane, bool explain)
{
    public ImmutableArray<FaceStretch> Side(bool left)
    {
        var lane = problem.Lanes[repair.Lane];
        var side = left ? lane.Left : lane.Right;
        var edge = left ? road.Lanes[repair.Lane].LeftEdge : road.Lanes[repair.Lane].RightEdge;
        if (!side.Concrete) return [Stretch(repair.From, repair.To, Open(edge), false, null)];
        var tied = edge is LaneEdge.TiedLane or LaneEdge.TiedConcreteShoulder;
        var closed = Closed(side, left);
        if (side.Lane < 0) return [Stretch(repair.From, repair.To, closed.Face, tied, closed.Because)];
        return Along(problem.Lanes[side.Lane], side.Lane, closed, edge, tied);
    }

    private ImmutableArray<FaceStretch> Along(
        ProblemLane neighbour, int index, (LongitudinalFace Face, Reason? Because) closed, LaneEdge edge, bool tied)
    {
        var breaks = new SortedSet<long> { repair.From, repair.To, neighbour.From, neighbour.To };
        var beside = byLane[index].Where(o => o.From <= repair.To && o.To >= repair.From).ToArray();
        foreach (var other in beside) breaks.UnionWith([other.From, other.To]);
        var places = breaks.Where(b => b >= repair.From && b <= repair.To).ToArray();
        var stretches = ImmutableArray.CreateBuilder<FaceStretch>();
        for (var n = 1; n < places.Length; n++)
        {
            var (from, to) = (places[n - 1], places[n]);
            var concrete = from >= neighbour.From && to <= neighbour.To;
            var shared = beside.Any(o => o.From <= from && to <= o.To);
            var face = !concrete ? Open(edge) : shared ? LongitudinalFace.SharedWithRepair : closed.Face;
            stretches.Add(Stretch(from, to, face, concrete && tied, concrete && !shared ? closed.Because : null));
        }

        return stretches.ToImmutable();
    }

    /// <summary>
    /// Against old concrete: tied where the repair is long enough and matches every joint and working crack it spans, isolated otherwise.
    /// </summary>
    private (LongitudinalFace Face, Reason? Because) Closed(ProblemSide side, bool left)
    {
        if (limits.TieLongitudinalFrom is null || repair.To - repair.From < problem.Prices.TieFrom)
            return (LongitudinalFace.Isolated, explain ? NeverTied() : null);
        var spanned = side.Lane < 0 ? null : FirstSpanned(problem.Lanes[side.Lane], left);
        return (spanned is null ? LongitudinalFace.Tied : LongitudinalFace.Isolated, explain ? LongEnough(spanned) : null);
    }

    private ReasonInput Length => new("length", BoundaryWords.Length(repair.To - repair.From));

    private Reason NeverTied() => limits.TieLongitudinalFrom is not { } from
        ? new("side isolated", "The rule set ties no lane joint: a board stands full depth against the old concrete.", SourceRef.CommonPractice, [Length])
        : new("side isolated", $"Shorter than {BoundaryWords.Length(from.Value)}, from which lane joints are tied: a board stands full depth against the "
            + "old concrete.", from.Source, [Length]);

    private Reason LongEnough(ProblemJoint? spanned) => spanned is not { } first
        ? new("side tied", $"At least {BoundaryWords.Length(limits.TieLongitudinalFrom!.Value)} long, and no joint or working crack of the neighbour ends at "
            + "its side without a joint of its own there.", limits.TieLongitudinalFrom.Source, [Length])
        : new("side isolated", $"Spans a {BoundaryWords.Name(first.Kind)} of the next lane that no joint of the repair meets; a board keeps it from running on "
            + "into the repair.", new SourceRef("FHWA-CPPG", "longitudinal joint", SourceStatus.FromMemory),
            [Length, new("neighbour's joint at", BoundaryWords.Station(road, Ticks.ToMetres(first.At)))]);

    /// <summary>The neighbour's first joint that ends at this side with no joint of the repair near it.</summary>
    private ProblemJoint? FirstSpanned(ProblemLane neighbour, bool left)
    {
        foreach (var joint in neighbour.Joints)
        {
            if (Unmatched(joint, left ? joint.AtRight : joint.AtLeft)) return joint;
        }

        return null;
    }

    private bool Unmatched(ProblemJoint joint, long at)
    {
        var within = problem.Limits.MatchWithin;
        return joint.Kind != JointKind.PavementEnd && at > repair.From + within && at < repair.To - within
            && !inner.Exists(i => Math.Abs(i - at) <= within);
    }

    private static LongitudinalFace Open(LaneEdge edge) =>
        edge is LaneEdge.Curb or LaneEdge.Unpaved ? LongitudinalFace.Formed : LongitudinalFace.FormedAgainstShoulder;

    private static FaceStretch Stretch(long from, long to, LongitudinalFace face, bool severed, Reason? because) =>
        new(Ticks.ToMetres(from), Ticks.ToMetres(to), face, severed) { Because = because };
}
