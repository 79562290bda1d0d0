using System.Collections.Immutable;
using Slabwright.Core.Joints.Slabs;

namespace Slabwright.Core.Joints.Live;

/// <summary>Where a field is read off for maps: lines along and across, two lines a hair apart at every joint so that its step stays sharp.</summary>
/// <param name="Along">Lines along, m, rising.</param>
/// <param name="Across">Lines across, m, rising.</param>
/// <param name="PieceOf">Piece each line along lies on.</param>
public sealed record LiveGrid(ImmutableArray<double> Along, ImmutableArray<double> Across, ImmutableArray<int> PieceOf)
{
    private const double Hair = 1e-6;

    /// <summary>A grid over the stretch of a joint that is shown.</summary>
    /// <param name="joint">The joint.</param> <param name="from">Start, m.</param> <param name="to">End, m.</param>
    /// <param name="along">Lines along, about.</param> <param name="across">Lines across.</param>
    public static LiveGrid Over(LiveJoint joint, double from, double to, int along = 40, int across = 24)
    {
        var (lines, pieces) = (new List<double>(), new List<int>());
        var all = joint.Model.System.Pieces;
        (from, to) = (Math.Max(from, all[0].From), Math.Min(to, all[^1].To));
        for (var p = 0; p < all.Length; p++)
        {
            var (start, end) = (Math.Max(from, all[p].From), Math.Min(to, all[p].To));
            if (end - start < 1e-3) continue;
            (start, end) = (p == 0 ? start : start + Hair, end - Hair);
            var count = Math.Max(3, (int)Math.Round(along * (end - start) / (to - from)));
            for (var n = 0; n < count; n++)
            {
                lines.Add(start + (end - start) * n / (count - 1));
                pieces.Add(p);
            }
        }

        var width = joint.Conditions.LaneWidth;
        return new LiveGrid([.. lines], [.. Enumerable.Range(0, across).Select(n => width * n / (across - 1))], [.. pieces]);
    }
}
