namespace Slabwright.Core.Pavement;

/// <summary>
/// Where the lanes lie beside the centre line. The alignment runs along the middle of all lanes together, so that lane 1 begins half of
/// their width to the left of it.
/// </summary>
public static class LaneOffsets
{
    /// <summary>Offset of a lane's left edge from the centre line, m; positive to the right of the direction of travel.</summary>
    /// <param name="road">Road.</param>
    /// <param name="lane">Lane number.</param>
    public static double LeftEdge(Road road, int lane)
    {
        ArgumentNullException.ThrowIfNull(road);
        var offset = -road.Lanes.Sum(l => l.Width) / 2;
        foreach (var other in road.Lanes)
        {
            if (other.Number == lane) break;
            offset += other.Width;
        }

        return offset;
    }

    /// <summary>The lane at an offset from the centre line; null beside the lanes by more than the tolerance.</summary>
    /// <param name="road">Road.</param>
    /// <param name="offset">Offset, m; positive to the right.</param>
    /// <param name="tolerance">How far outside a point may lie and still count, m.</param>
    public static Lane? LaneAt(Road road, double offset, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(road);
        var left = LeftEdge(road, road.Lanes[0].Number);
        if (offset < left - tolerance) return null;
        foreach (var lane in road.Lanes)
        {
            if (offset <= left + lane.Width) return lane;
            left += lane.Width;
        }

        return offset <= left + tolerance ? road.Lanes[^1] : null;
    }
}
