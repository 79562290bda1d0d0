using System.Collections.Immutable;

namespace Slabwright.Core.Pavement;

/// <summary>Lays a repeating joint pattern out over one lane.</summary>
public static class JointPatternLines
{
    /// <summary>
    /// The joints of a pattern in a lane. A line closer to the stretch's end than half the least spacing is left out, so that the last
    /// slab takes up the remainder; the line at the stretch's start is kept, since another stretch may end there.
    /// </summary>
    /// <param name="pattern">The pattern, spacings above 0.</param>
    /// <param name="toLeftEdge">From the road's left edge to the lane's left edge, m.</param>
    /// <param name="width">Lane width, m.</param>
    public static ImmutableArray<TransverseJoint> Of(JointPattern pattern, double toLeftEdge, double width)
    {
        var joints = ImmutableArray.CreateBuilder<TransverseJoint>();
        var shift = pattern.Skew * (toLeftEdge + width / 2);
        var last = pattern.To - Remainder(pattern);
        var (round, turn) = (pattern.From, 0);
        var cycle = pattern.Spacings.Sum();
        for (var i = 0; ; i++)
        {
            var place = round + Within(pattern.Spacings, i % pattern.Spacings.Length);
            if (place > last) return joints.ToImmutable();
            joints.Add(new TransverseJoint(place + shift, pattern.Kind, pattern.Skew * width));
            if (i % pattern.Spacings.Length == pattern.Spacings.Length - 1) round = pattern.From + ++turn * cycle;
        }
    }

    /// <summary>Shortest slab a pattern leaves at the end of its stretch, at a bridge or at the end of a lane: half its least spacing, m.</summary>
    public static double Remainder(JointPattern pattern) => pattern.Spacings.Min() / 2;

    private static double Within(ImmutableArray<double> spacings, int count)
    {
        var sum = 0.0;
        for (var i = 0; i < count; i++) sum += spacings[i];
        return sum;
    }
}
