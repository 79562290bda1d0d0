using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Sealing;

/// <summary>Old and new concrete, m.</summary>
/// <param name="Old">Old concrete, m.</param>
/// <param name="New">New concrete, m.</param>
internal readonly record struct Concrete(double Old, double New)
{
    public static Concrete operator +(Concrete one, Concrete two) => new(one.Old + two.Old, one.New + two.New);

    public Concrete Half => new(Old / 2, New / 2);
}

/// <summary>A repair joint with the concrete that moves at it.</summary>
/// <param name="RepairId">The repair.</param>
/// <param name="Position">Start, inner or end.</param>
/// <param name="Joint">The joint.</param>
/// <param name="Moves">Halves of the bodies on both sides, m; nothing at a tied joint.</param>
internal readonly record struct MovingJoint(string RepairId, JointPosition Position, RepairJoint Joint, Concrete Moves);

/// <summary>
/// Shares the concrete of a lane among its joints: from one working joint to the next it is one body, tied joints within it or not, which
/// moves about its middle, so half of it comes to each of the two.
/// </summary>
internal static class JointBodies
{
    private readonly record struct Line(double At, bool Works, Repair? Repair, JointPosition Position, RepairJoint? Joint);

    /// <summary>The repair joints of a lane in order, each with what moves at it.</summary>
    /// <param name="lane">The lane.</param> <param name="repairs">Its repairs, in order.</param>
    public static ImmutableArray<MovingJoint> Of(Lane lane, IReadOnlyList<Repair> repairs)
    {
        if (repairs.Count == 0) return [];
        var lines = Lines(lane, repairs);
        var before = Bodies(lines, repairs, forward: true);
        var after = Bodies(lines, repairs, forward: false);
        var joints = ImmutableArray.CreateBuilder<MovingJoint>();
        for (var i = 0; i < lines.Length; i++)
        {
            if (lines[i] is not { Repair: { } repair, Joint: { } joint }) continue;
            joints.Add(new(repair.Id, lines[i].Position, joint, lines[i].Works ? before[i].Half + after[i].Half : default));
        }

        return joints.ToImmutable();
    }

    private static Line[] Lines(Lane lane, IReadOnlyList<Repair> repairs)
    {
        var lines = new List<Line>(lane.Joints.Length + 2 * repairs.Count);
        var next = 0;
        foreach (var joint in lane.Joints)
        {
            while (next < repairs.Count && repairs[next].To < joint.At - 1e-6) next++;
            var takenOut = next < repairs.Count && repairs[next].From <= joint.At + 1e-6;
            if (!takenOut) lines.Add(new(joint.At, true, null, default, null));
        }

        foreach (var repair in repairs)
        {
            lines.Add(Of(repair, JointPosition.Start, repair.Start));
            lines.AddRange(repair.Intermediate.Select(j => Of(repair, JointPosition.Inner, j)));
            lines.Add(Of(repair, JointPosition.End, repair.End));
        }

        return [.. lines.OrderBy(l => l.At)];

        static Line Of(Repair repair, JointPosition position, RepairJoint joint) =>
            new(joint.At, joint.Design != JointDesign.Tied, repair, position, joint);
    }

    /// <summary>For each line the body that ends at it, back to the last working line, walking forward or backward.</summary>
    private static Concrete[] Bodies(Line[] lines, IReadOnlyList<Repair> repairs, bool forward)
    {
        var bodies = new Concrete[lines.Length];
        var body = default(Concrete);
        var repair = forward ? 0 : repairs.Count - 1;
        for (var n = 1; n < lines.Length; n++)
        {
            var i = forward ? n : lines.Length - 1 - n;
            var (from, to) = forward ? (lines[i - 1], lines[i]) : (lines[i], lines[i + 1]);
            if ((forward ? from : to).Works) body = default;
            var middle = (from.At + to.At) / 2;
            while (forward && repair < repairs.Count && repairs[repair].To < middle) repair++;
            while (!forward && repair >= 0 && repairs[repair].From > middle) repair--;
            var isNew = repair >= 0 && repair < repairs.Count && repairs[repair].From < middle && middle < repairs[repair].To;
            var length = to.At - from.At;
            body += isNew ? new Concrete(0, length) : new Concrete(length, 0);
            bodies[i] = body;
        }

        return bodies;
    }
}
