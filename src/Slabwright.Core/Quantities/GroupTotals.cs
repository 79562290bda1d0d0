using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Pavement;
using Slabwright.Core.Treatments;

namespace Slabwright.Core.Quantities;

/// <summary>
/// Money by kind of work and by station range: measured quantity × price, before the rounding of bid lines, so the groups add up to
/// the take-off and fall short of the bid total by the rounding.
/// </summary>
public static class GroupTotals
{
    /// <summary>Name of the group of items that belong to no single work.</summary>
    public const string JobWide = "Whole job";

    /// <summary>Totals by kind: full-depth repairs, slab replacements, slab runs, partial-depth repairs, seals, whole job.</summary>
    public static ImmutableArray<GroupTotal> ByKind(
        IReadOnlyList<TakeOffLine> takeOff, IReadOnlyList<Repair> repairs, IReadOnlyList<SurfaceWork> surfaceWorks)
    {
        var places = Places(repairs, surfaceWorks);
        var order = new[]
        {
            Treatment.FullDepthRepair, Treatment.SlabReplacement, Treatment.SlabRun, Treatment.PartialDepthRepair, Treatment.Seal,
        };
        var groups = order.Select(kind => Group(KindName(kind), takeOff, places, p => p.Kind == kind)).Where(g => g.Count > 0);
        return [.. groups, .. JobWideGroup(takeOff)];
    }

    /// <summary>Totals by station range; a work belongs to the range its middle lies in. Ranges without work are left out.</summary>
    /// <param name="takeOff">Take-off.</param> <param name="repairs">Repairs.</param> <param name="surfaceWorks">Surface works.</param>
    /// <param name="road">The road, for its stations.</param> <param name="range">Length of a range, m.</param>
    public static ImmutableArray<GroupTotal> ByStation(
        IReadOnlyList<TakeOffLine> takeOff,
        IReadOnlyList<Repair> repairs,
        IReadOnlyList<SurfaceWork> surfaceWorks,
        Road road,
        double range)
    {
        var places = Places(repairs, surfaceWorks);
        var groups = places.Values.Select(p => RangeOf(p.Middle, range)).Distinct().Order()
            .Select(i => Group(RangeName(road, i, range), takeOff, places, p => RangeOf(p.Middle, range) == i));
        return [.. groups, .. JobWideGroup(takeOff)];
    }

    /// <summary>Printed name of a kind of work.</summary>
    public static string KindName(Treatment kind) => kind switch
    {
        Treatment.FullDepthRepair => "Full-depth repair",
        Treatment.SlabReplacement => "Slab replacement",
        Treatment.SlabRun => "Slab run",
        Treatment.PartialDepthRepair => "Partial-depth repair",
        Treatment.Seal => "Seal",
        _ => "Leave",
    };

    private sealed record Place(Treatment Kind, double Middle, double Area);

    private static Dictionary<string, Place> Places(IReadOnlyList<Repair> repairs, IReadOnlyList<SurfaceWork> surfaceWorks)
    {
        var places = repairs.ToDictionary(r => r.Id, r => new Place(r.Kind, (r.From + r.To) / 2, r.Area));
        foreach (var work in surfaceWorks) places[work.Id] = new Place(work.Treatment, (work.From + work.To) / 2, work.Area);
        return places;
    }

    private static GroupTotal Group(
        string name, IReadOnlyList<TakeOffLine> takeOff, Dictionary<string, Place> places, Func<Place, bool> wanted)
    {
        var members = places.Where(p => wanted(p.Value)).ToDictionary();
        var amount = takeOff.Where(l => members.ContainsKey(l.WorkId)).Sum(l => l.Amount);
        return new GroupTotal(name, members.Count, members.Values.Sum(p => p.Area), amount);
    }

    private static IEnumerable<GroupTotal> JobWideGroup(IReadOnlyList<TakeOffLine> takeOff)
    {
        var lines = takeOff.Where(l => l.WorkId.Length == 0).ToList();
        if (lines.Count > 0) yield return new GroupTotal(JobWide, lines.Count, 0, lines.Sum(l => l.Amount));
    }

    private static int RangeOf(double at, double range) => (int)Math.Floor(at / range);

    private static string RangeName(Road road, int index, double range)
    {
        var to = Math.Min((index + 1) * range, road.Length);
        return $"{road.Stationing.Format(index * range)} to {road.Stationing.Format(Math.Max(to, index * range))}";
    }
}
