using System.Collections.Immutable;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Boundaries;

/// <summary>The long sides of one repair, stretch by stretch.</summary>
internal sealed class RepairFaces(
    Road road, BoundaryProblem problem, ChosenRepair repair, List<long> inner, ILookup<int, ChosenRepair> byLane)
{
    public ImmutableArray<FaceStretch> Side(bool left)
    {
        var lane = problem.Lanes[repair.Lane];
        var side = left ? lane.Left : lane.Right;
        var edge = left ? road.Lanes[repair.Lane].LeftEdge : road.Lanes[repair.Lane].RightEdge;
        if (!side.Concrete) return [Stretch(repair.From, repair.To, Open(edge), false)];
        var tied = edge is LaneEdge.TiedLane or LaneEdge.TiedConcreteShoulder;
        var closed = Closed(side, left);
        if (side.Lane < 0) return [Stretch(repair.From, repair.To, closed, tied)];
        return Along(problem.Lanes[side.Lane], side.Lane, closed, edge, tied);
    }

    private ImmutableArray<FaceStretch> Along(ProblemLane neighbour, int index, LongitudinalFace closed, LaneEdge edge, bool tied)
    {
        var breaks = new SortedSet<long> { repair.From, repair.To, neighbour.From, neighbour.To };
        foreach (var other in byLane[index]) breaks.UnionWith([other.From, other.To]);
        var places = breaks.Where(b => b >= repair.From && b <= repair.To).ToArray();
        var stretches = ImmutableArray.CreateBuilder<FaceStretch>();
        for (var n = 1; n < places.Length; n++)
        {
            var (from, to) = (places[n - 1], places[n]);
            var concrete = from >= neighbour.From && to <= neighbour.To;
            var shared = byLane[index].Any(o => o.From <= from && to <= o.To);
            var face = !concrete ? Open(edge) : shared ? LongitudinalFace.SharedWithRepair : closed;
            stretches.Add(Stretch(from, to, face, concrete && tied));
        }

        return stretches.ToImmutable();
    }

    /// <summary>Against old concrete: tied where the repair is long enough and matches every joint it spans, isolated otherwise.</summary>
    private LongitudinalFace Closed(ProblemSide side, bool left)
    {
        if (repair.To - repair.From < problem.Prices.TieFrom) return LongitudinalFace.Isolated;
        if (side.Lane < 0) return LongitudinalFace.Tied;
        return problem.Lanes[side.Lane].Joints.Any(j => Unmatched(j, left ? j.AtRight : j.AtLeft))
            ? LongitudinalFace.Isolated
            : LongitudinalFace.Tied;
    }

    private bool Unmatched(ProblemJoint joint, long at)
    {
        var within = problem.Limits.MatchWithin;
        return joint.Kind != JointKind.PavementEnd && at > repair.From + within && at < repair.To - within
            && !inner.Exists(i => Math.Abs(i - at) <= within);
    }

    private static LongitudinalFace Open(LaneEdge edge) =>
        edge is LaneEdge.Curb or LaneEdge.Unpaved ? LongitudinalFace.Formed : LongitudinalFace.FormedAgainstShoulder;

    private static FaceStretch Stretch(long from, long to, LongitudinalFace face, bool severed) =>
        new(Ticks.ToMetres(from), Ticks.ToMetres(to), face, severed);
}
