using Slabwright.Core.Boundaries;
using Slabwright.Core.Survey;

namespace Slabwright.Sheets.Strip;

/// <summary>
/// Where a surface work lies across its lane: at the distress it answers. A longitudinal joint is sealed at the lane's right edge, where
/// its damage is drawn; without any offset in the survey the middle of the lane is taken.
/// </summary>
internal sealed class SurfacePlaces
{
    private readonly Dictionary<string, Distress> distresses = new(StringComparer.Ordinal);
    private readonly CrossSection section;

    public SurfacePlaces(SurveyRecord survey, CrossSection section)
    {
        this.section = section;
        foreach (var distress in survey.Distresses) distresses[distress.Id] = distress;
    }

    /// <summary>Offset of the work's middle, m.</summary>
    public double Middle(SurfaceWork work)
    {
        var band = section.Of(work.Lane);
        foreach (var id in work.DistressIds)
        {
            if (!distresses.TryGetValue(id, out var distress)) continue;
            if (distress is { OffsetFrom: { } from, OffsetTo: { } to }) return band.Left + Math.Clamp((from + to) / 2, 0, band.Width);
            if (distress.Type is DistressType.LongitudinalJointSealDamage or DistressType.LongitudinalJointSpalling) return band.Right;
        }

        return band.Middle;
    }

    /// <summary>True where the work runs along the lane rather than across it.</summary>
    public bool IsAlong(SurfaceWork work) => work.To - work.From > section.Of(work.Lane).Width / 2;

    /// <summary>The work's line along or across the lane.</summary>
    public StripPoint[] Line(SurfaceWork work)
    {
        var (band, middle, offset) = (section.Of(work.Lane), (work.From + work.To) / 2, Middle(work));
        return IsAlong(work)
            ? [new(work.From, offset), new(work.To, offset)]
            : [new(middle, band.Left), new(middle, band.Right)];
    }

    /// <summary>The work's box: its area spread over its length, no wider than the lane and inside it.</summary>
    public (double From, double To, double Left, double Right) Box(SurfaceWork work)
    {
        var band = section.Of(work.Lane);
        var half = Math.Max((work.To - work.From) / 2, 0.15);
        var width = Math.Min(band.Width, work.Area / (2 * half));
        var left = Math.Clamp(Middle(work) - width / 2, band.Left, band.Right - width);
        var middle = (work.From + work.To) / 2;
        return (middle - half, middle + half, left, left + width);
    }
}
