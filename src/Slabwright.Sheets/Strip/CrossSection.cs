using System.Collections.Immutable;
using Slabwright.Core.Pavement;

namespace Slabwright.Sheets.Strip;

/// <summary>Where lanes and their outer edges lie across the road: offsets in metres to the right of lane 1's left edge.</summary>
/// <param name="Lanes">Lanes from the left.</param>
public sealed record CrossSection(ImmutableArray<LaneBand> Lanes)
{
    /// <summary>Width a shoulder is drawn with, m. Projects do not give shoulder widths; the legend says so.</summary>
    public const double ShoulderWidth = 1.2;

    /// <summary>Width an edge without shoulder is drawn with, m.</summary>
    public const double BareEdgeWidth = 0.5;

    /// <summary>Width of all lanes together, m.</summary>
    public double Width => Lanes.IsEmpty ? 0 : Lanes[^1].Right;

    /// <summary>The section of a road.</summary>
    public static CrossSection Of(Road road)
    {
        var bands = ImmutableArray.CreateBuilder<LaneBand>(road.Lanes.Length);
        var left = 0.0;
        foreach (var lane in road.Lanes.OrderBy(l => l.Number))
        {
            bands.Add(new LaneBand(lane.Number, left, left + lane.Width));
            left += lane.Width;
        }

        return new CrossSection(bands.ToImmutable());
    }

    /// <summary>The band of a lane.</summary>
    public LaneBand Of(int lane)
    {
        foreach (var band in Lanes)
        {
            if (band.Lane == lane) return band;
        }

        throw new ArgumentOutOfRangeException(nameof(lane), lane, "The road has no lane with this number.");
    }

    /// <summary>Width drawn beyond a lane edge: none where another lane lies there.</summary>
    public static double EdgeWidth(LaneEdge edge) => edge switch
    {
        LaneEdge.TiedLane or LaneEdge.UntiedLane => 0,
        LaneEdge.TiedConcreteShoulder or LaneEdge.AsphaltShoulder => ShoulderWidth,
        _ => BareEdgeWidth,
    };
}
