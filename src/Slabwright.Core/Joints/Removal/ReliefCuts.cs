using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Joints.Removal;

/// <summary>Where a relief cut goes in a repair: on a lift cut if one lies far enough inside, else at the usual distance, else in the middle.</summary>
internal static class ReliefCuts
{
    private static readonly UnitPair Small = new(Units.Inch, Units.Millimetre);

    /// <summary>
    /// Middles of the cuts, metres along the road, and whether each is a lift cut. One cut where it frees both boundaries, else one for
    /// each; none where the repair is too short for any.
    /// </summary>
    /// <param name="repair">The repair.</param> <param name="liftCuts">Its lift cuts.</param> <param name="settings">Distances.</param>
    /// <param name="frees">True when a boundary no longer binds with a relief cut this far from it, m.</param>
    public static ImmutableArray<(double At, bool AtLiftCut)> Place(
        Repair repair, ImmutableArray<double> liftCuts, PressureSettings settings, Func<double, bool> frees)
    {
        var half = settings.ReliefKerf.Value / 2;
        var (inset, least) = (settings.ReliefInset.Value + half, settings.LeastInset.Value + half);
        if (repair.Length < 2 * least - 1e-9) return [];
        if (repair.Length < 2 * inset - 1e-9) return [(repair.From + repair.Length / 2, false)];
        ImmutableArray<(double At, bool AtLiftCut)> places =
        [
            .. liftCuts.Where(c => c - repair.From >= inset - 1e-9 && repair.To - c >= inset - 1e-9).Select(c => (c, true)),
            (repair.From + inset, false), (repair.To - inset, false),
        ];
        foreach (var place in places.OrderByDescending(p => p.AtLiftCut).ThenBy(p => Furthest(p.At)))
        {
            if (frees(Furthest(place.At))) return [place];
        }

        var first = places.Where(p => frees(p.At - half - repair.From)).DefaultIfEmpty(places[^2]).First();
        var last = places.Where(p => frees(repair.To - half - p.At)).Append(places[^1]).OrderByDescending(p => p.AtLiftCut).First();
        return first.At == last.At ? [first] : first.At < last.At ? [first, last] : [last, first];

        double Furthest(double at) => Math.Max(at - repair.From, repair.To - at) - half;
    }

    /// <summary>The relief cut held against its rules.</summary>
    public static ImmutableArray<LimitCheck> Checks(ReliefCut cut, Repair repair, PressureSettings settings) =>
    [
        new("relief cut inside the boundary", Math.Min(cut.ToStart, cut.ToEnd), settings.LeastInset.Value, LimitSense.AtLeast, Small, settings.LeastInset.Source),
        new("depth into the base", cut.Depth - repair.Thickness, settings.BaseBite.Value, LimitSense.AtMost, Small, settings.BaseBite.Source),
        new("closing of the relief cut", cut.Closure, cut.Kerf, LimitSense.AtMost, Small, settings.ReliefKerf.Source),
    ];

    /// <summary>Rules of the relief cut for the crew.</summary>
    public static ImmutableArray<CrewNote> Notes(PressureSettings settings, UnitSystem units)
    {
        var manual = new SourceRef("UFC-3-270-04", "sec. 4.5", SourceStatus.Verified);
        return
        [
            new("Saw cool", "Saw at night or in the morning where the table of hours allows it.", manual),
            new("Relief first", $"Where a relief cut is shown, cut it by carbide wheel saw before the boundary: {In(settings.ReliefInset.Value)} inside, never nearer than {In(settings.LeastInset.Value)}, because the wheel leaves fine cracks.", manual),
            new("Depth", $"Through the slab, no deeper than {In(settings.BaseBite.Value)} into the base.", settings.BaseBite.Source),
            new("Blade caught", "Stop; never force or wrench a caught blade. Cut relief, or wait until the slab cools.", SourceRef.CommonPractice),
        ];

        string In(double metres) => Small.In(units).Format(metres, units == UnitSystem.Si ? 0 : 1);
    }
}
