using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.Core.Boundaries;

/// <summary>Turns partial-depth and seal decisions into work with lengths and areas.</summary>
/// <remarks>
/// What the survey measured is used, per thing where a row counts several; for the rest the defaults below stand, all common practice: a
/// transverse joint, crack or spall whose length was not recorded crosses the lane, a longitudinal one runs over its extent or else the
/// slab, and a partial-depth repair reaches <see cref="BeyondSpall"/> beyond the spall on every side but is never narrower than
/// <see cref="LeastPartialWidth"/>.
/// </remarks>
public static class SurfaceWorks
{
    /// <summary>How far a partial-depth repair reaches beyond what shows, m: 3 in, common practice.</summary>
    public const double BeyondSpall = 3 * 0.0254;

    /// <summary>Least dimension of a partial-depth repair, m: 10 in, common practice.</summary>
    public const double LeastPartialWidth = 10 * 0.0254;

    /// <summary>Partial-depth repairs (P001 on) and sealing (S001 on), sorted along the road, then by lane.</summary>
    /// <param name="road">The road.</param>
    /// <param name="survey">The survey.</param>
    /// <param name="decisions">The decisions.</param>
    /// <param name="repairs">Full-depth repairs; work that lies wholly inside one of them comes out with it and is left off.</param>
    public static ImmutableArray<SurfaceWork> From(
        Road road, SurveyRecord survey, ImmutableArray<TreatmentDecision> decisions, ImmutableArray<Repair> repairs = default)
    {
        var distresses = survey.Distresses.ToDictionary(d => d.Id);
        var removed = repairs.IsDefault ? null : repairs.ToLookup(r => r.Lane);
        var works = decisions
            .Where(d => d.Treatment is Treatment.PartialDepthRepair or Treatment.Seal)
            .Select(d => (d.Treatment, Distress: distresses[d.DistressId]))
            .Where(w => removed is null || !removed[w.Distress.Lane].Any(r => r.From <= w.Distress.From && r.To >= w.Distress.To))
            .OrderBy(w => w.Distress.From).ThenBy(w => w.Distress.Lane).ThenBy(w => w.Distress.Id, StringComparer.Ordinal)
            .ToList();
        return [.. Numbered(road, works, Treatment.PartialDepthRepair, 'P'), .. Numbered(road, works, Treatment.Seal, 'S')];
    }

    private static IEnumerable<SurfaceWork> Numbered(
        Road road, IEnumerable<(Treatment Treatment, Distress Distress)> works, Treatment treatment, char letter) =>
        works.Where(w => w.Treatment == treatment).Select((w, i) =>
        {
            var id = string.Create(CultureInfo.InvariantCulture, $"{letter}{i + 1:000}");
            var lane = road.LaneByNumber(w.Distress.Lane);
            return treatment == Treatment.Seal ? Seal(id, w.Distress, lane) : Partial(id, w.Distress, lane);
        });

    /// <summary>A seal runs over the recorded length; else along the distress, or across the lane.</summary>
    private static SurfaceWork Seal(string id, Distress d, Lane lane) => new(
        id, d.Lane, d.From, d.To, Treatment.Seal, d.Count * LengthOf(d, lane), 0, [d.Id]);

    private static SurfaceWork Partial(string id, Distress d, Lane lane)
    {
        var along = RunsAlong(d);
        var spall = LengthOf(d, lane);
        var length = along ? spall + 2 * BeyondSpall : Math.Min(spall + 2 * BeyondSpall, lane.Width);
        var across = Math.Max((d.Width ?? 0) + BeyondSpall, LeastPartialWidth);
        var area = d.Count * length * across;
        var (from, to) = along
            ? (d.From - BeyondSpall, d.To + BeyondSpall)
            : (Math.Min(d.From, d.Middle - across / 2), Math.Max(d.To, d.Middle + across / 2));
        return new SurfaceWork(id, d.Lane, Math.Max(from, lane.From), Math.Min(to, lane.To), Treatment.PartialDepthRepair,
            d.Count * length, area, [d.Id]);
    }

    private static bool RunsAlong(Distress d) => d.Type
        is DistressType.LongitudinalCracking or DistressType.LongitudinalJointSpalling or DistressType.LongitudinalJointSealDamage;

    private static double LengthOf(Distress d, Lane lane)
    {
        if (d.Length is { } measured) return measured;
        if (RunsAlong(d)) return d.Extent > 0 ? d.Extent : lane.SlabAt(d.Middle).Length;
        return d.OffsetFrom is { } left && d.OffsetTo is { } right && right > left ? right - left : lane.Width;
    }
}
