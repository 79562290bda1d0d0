using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;

namespace Slabwright.Core.Joints.Design;

/// <summary>The old slab a row of bars is drilled into.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="Cut">Place of the cut, metres along the road.</param>
/// <param name="Before">True where the old slab lies before the cut.</param>
internal readonly record struct OldFace(Lane Lane, double Cut, bool Before)
{
    /// <summary>The stretch of old slab within a distance of the cut.</summary>
    public (double From, double To) Within(double distance) => Before ? (Cut - distance, Cut) : (Cut, Cut + distance);
}

/// <summary>Moves or drops bars that would meet core holes, keep-outs or the bars of an old joint that stays.</summary>
/// <remarks>Distances are common practice: 2 in of sound concrete beside a hole, cores of 4 in, old bars 18 in long at the same centres.</remarks>
internal sealed class BarClearance(IReadOnlyList<CoreSample> cores, ImmutableArray<DrillKeepOut> keepOuts)
{
    private const double Inch = 0.0254;
    private const double Cover = 2 * Inch;
    private const double CoreRadius = 2 * Inch;
    private const double OldBarHalf = 9 * Inch;
    private const double Step = Inch;

    private sealed record Obstacle(string Name, double Left, double Right);

    /// <summary>The row with every bar clear, and what was done.</summary>
    public (BarLayout Bars, ImmutableArray<Reason> Reasons) Clear(BarLayout bars, OldFace face, double clearLeft, double clearRight)
    {
        var reasons = new List<Reason>();
        var (first, last) = (clearLeft, face.Lane.Width - clearRight);
        var offsets = BesideOldBars(bars, face, first, last, reasons);
        var obstacles = Obstacles(face, bars.Embedment).ToArray();
        var kept = new List<double>();
        for (var n = 0; n < offsets.Count; n++)
        {
            var others = kept.Concat(offsets.Skip(n + 1)).ToArray();
            if (Place(offsets[n], bars, obstacles, others, first, last, out var at, out var met)) kept.Add(at);
            if (met is not null) reasons.Add(Told(n + 1, met, offsets[n], kept.Count > 0 && kept[^1] == at ? at : null));
        }

        return (bars with { Offsets = [.. kept.Order()] }, [.. reasons]);
    }

    /// <summary>
    /// Beside an old dowelled joint that stays within reach, its bars are taken to stand at the same centres: the new row goes half a
    /// spacing over, towards the middle of the lane.
    /// </summary>
    private static List<double> BesideOldBars(BarLayout bars, OldFace face, double first, double last, List<Reason> reasons)
    {
        var (from, to) = face.Within(bars.Embedment + OldBarHalf);
        var old = face.Lane.Joints.Where(j => j.Kind is JointKind.Dowelled or JointKind.EarlierRepairEdge
            && j.First <= to && j.Last >= from && Math.Abs(j.At - face.Cut) > 1e-3).ToArray();
        if (old.Length == 0) return [.. bars.Offsets];
        var middle = face.Lane.Width / 2;
        var moved = bars.Offsets.Select(x => x <= middle ? x + bars.Spacing / 2 : x - bars.Spacing / 2).Where(x => x >= first && x <= last)
            .DistinctBy(x => Math.Round(x, 4)).ToList();
        reasons.Add(new("clear of old dowels", $"An old dowelled joint stays {JointWords.Long(Math.Abs(old[0].At - face.Cut))} from the cut; its bars are "
            + $"taken to stand at the same centres, so the row goes half a spacing over and keeps {moved.Count} of {bars.Bars} bars. Check with a bar locator.",
            SourceRef.CommonPractice));
        return moved;
    }

    private IEnumerable<Obstacle> Obstacles(OldFace face, double embedment)
    {
        var (from, to) = face.Within(embedment + Cover);
        foreach (var core in cores.Where(c => c.Lane == face.Lane.Number && c.Offset is not null && c.At + CoreRadius >= from && c.At - CoreRadius <= to))
            yield return new($"core {core.Id}", core.Offset!.Value - CoreRadius, core.Offset.Value + CoreRadius);
        foreach (var zone in keepOuts.Where(k => (k.Lane is null || k.Lane == face.Lane.Number) && k.To >= from && k.From <= to))
            yield return new(zone.Name, zone.Left, zone.Right);
    }

    /// <summary>The nearest clear place within half a spacing, an inch at a time, the middle of the lane first.</summary>
    private static bool Place(
        double wanted, BarLayout bars, Obstacle[] obstacles, double[] others, double first, double last, out double at, out Obstacle? met)
    {
        at = wanted;
        met = Meets(wanted, bars, obstacles);
        if (met is null) return true;
        var inward = wanted <= (first + last) / 2 ? 1 : -1;
        for (var step = 1; step * Step <= bars.Spacing / 2 + 1e-9; step++)
        {
            foreach (var side in new[] { inward, -inward })
            {
                at = wanted + side * step * Step;
                var place = at;
                var free = at >= first - 1e-9 && at <= last + 1e-9 && others.All(o => Math.Abs(o - place) >= bars.Spacing / 2 - 1e-9);
                if (free && Meets(at, bars, obstacles) is null) return true;
            }
        }

        at = double.NaN;
        return false;
    }

    private static Obstacle? Meets(double at, BarLayout bars, Obstacle[] obstacles)
    {
        var room = bars.Diameter / 2 + Cover;
        return Array.Find(obstacles, o => at + room > o.Left && at - room < o.Right);
    }

    private static Reason Told(int number, Obstacle met, double wanted, double? at)
    {
        var bar = number.ToString(CultureInfo.InvariantCulture);
        var inputs = ImmutableArray.Create(new ReasonInput("wanted at", JointWords.Long(wanted)), new("sound concrete beside a hole", JointWords.Bar(Cover)));
        return at is { } place
            ? new("bar moved", $"Bar {bar} moves to {JointWords.Long(place)} from the left edge, clear of {met.Name}.", SourceRef.CommonPractice, inputs)
            : new("bar left out", $"Bar {bar} is left out: no place within half a spacing is clear of {met.Name}.", SourceRef.CommonPractice, inputs);
    }
}
