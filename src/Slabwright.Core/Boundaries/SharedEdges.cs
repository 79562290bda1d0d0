namespace Slabwright.Core.Boundaries;

/// <summary>What two repairs facing one another across a lane line save together against standing alone.</summary>
internal static class SharedEdges
{
    /// <summary>Refund in money units, never negative.</summary>
    /// <param name="prices">Prices.</param>
    /// <param name="left">Repair in the left lane.</param>
    /// <param name="right">Repair in the lane to its right.</param>
    public static long Refund(ProblemPrices prices, Candidate left, Candidate right)
    {
        if (left.To < right.From || right.To < left.From) return 0;
        var overlap = Math.Min(left.To, right.To) - Math.Max(left.From, right.From);
        var refund = overlap * (prices.CutRate + prices.SealRate + left.RightFace + right.LeftFace);
        refund += prices.SpannedJoint * (Inside(left.RightSpanned, right) + Inside(right.LeftSpanned, left));
        return refund + prices.UnmatchedEnd * LinedUp(left, right);
    }

    private static long Inside(long[] joints, Candidate repair)
    {
        var count = 0;
        foreach (var at in joints)
        {
            if (repair.From < at && at < repair.To) count++;
        }

        return count;
    }

    private static long LinedUp(Candidate left, Candidate right)
    {
        var count = 0;
        if (left.RightStartLoose && EndsAt(right, left.From)) count++;
        if (left.RightEndLoose && EndsAt(right, left.To)) count++;
        if (right.LeftStartLoose && EndsAt(left, right.From)) count++;
        if (right.LeftEndLoose && EndsAt(left, right.To)) count++;
        return count;
    }

    private static bool EndsAt(Candidate repair, long at) => repair.From == at || repair.To == at;
}
