using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Boundaries;

/// <summary>
/// An independent check of any plan, the optimiser's or one changed by hand: knows only the road, the demands and the rules, works in
/// metres and shares no code with the search.
/// </summary>
public sealed class BoundaryChecker
{
    private const double Tolerance = 0.0002;

    private readonly Road _road;
    private readonly BoundaryLimits _limits;
    private readonly double _cutStep;
    private readonly BoundaryOptions _options;
    private readonly List<Finding> _findings = [];

    private BoundaryChecker(Road road, BoundaryLimits limits, double cutStep, BoundaryOptions options) =>
        (_road, _limits, _cutStep, _options) = (road, limits, cutStep, options);

    /// <summary>Lists every rule a plan breaks; empty for a legal plan.</summary>
    /// <param name="road">The road.</param>
    /// <param name="demands">What must come out.</param>
    /// <param name="limits">The rules.</param>
    /// <param name="cutStep">Cut step, m.</param>
    /// <param name="repairs">The plan.</param>
    /// <param name="options">Planning choices; the defaults when null.</param>
    public static ImmutableArray<Finding> Check(
        Road road, IReadOnlyList<RemovalDemand> demands, BoundaryLimits limits, double cutStep, IReadOnlyList<Repair> repairs,
        BoundaryOptions? options = null)
    {
        var checker = new BoundaryChecker(road, limits, cutStep, options ?? BoundaryOptions.Default);
        foreach (var repair in repairs) checker.CheckRepair(repair);
        foreach (var lane in repairs.GroupBy(r => r.Lane)) checker.CheckGaps([.. lane.OrderBy(r => r.From)]);
        checker.CheckDemands(demands, repairs);
        return [.. checker._findings];
    }

    private void CheckRepair(Repair repair)
    {
        var lane = _road.Lanes.FirstOrDefault(l => l.Number == repair.Lane);
        if (lane is null || repair.From < lane.From - Tolerance || repair.To > lane.To + Tolerance || Math.Abs(repair.Width - lane.Width) > Tolerance)
        {
            Report("BND-020", repair, repair.From, "does not lie on its lane over the full width", BoundaryWords.Length(repair.Width),
                "Keep the repair on the lane's concrete and as wide as the lane.", SourceRef.CommonPractice);
            return;
        }

        CheckLength(repair, lane);
        CheckCut(repair, lane, repair.From, repair.Start, removedAhead: true);
        CheckCut(repair, lane, repair.To, repair.End, removedAhead: false);
        CheckPanels(repair, lane);
        CheckFaces(repair, repair.LeftFace, "left");
        CheckFaces(repair, repair.RightFace, "right");
    }

    private void CheckLength(Repair repair, Lane lane)
    {
        var bare = repair.Start.Design == JointDesign.Undowelled && repair.End.Design == JointDesign.Undowelled;
        var least = bare && _limits.LeastLengthUndowelled is { } longer ? longer : _limits.LeastLength;
        var slab = lane.SlabAt(repair.From + Tolerance);
        if (_limits.LeastLengthOrHalfSlab is { Value: true } half && repair.To <= slab.End.At + Tolerance && slab.Length / 2 < least.Value)
            least = new Sourced<double>(slab.Length / 2, half.Source);
        if (repair.Length >= least.Value - Tolerance) return;
        Report("BND-021", repair, repair.From, $"is shorter than {BoundaryWords.Length(least.Value)}", BoundaryWords.Length(repair.Length),
            "Lengthen it.", least.Source);
    }

    private void CheckCut(Repair repair, Lane lane, double at, RepairJoint joint, bool removedAhead)
    {
        if (Math.Abs(joint.At - at) > Tolerance)
            Report("BND-022", repair, at, "has an end joint that is not at its end", BoundaryWords.Length(joint.At - at), "Move the joint to the cut.",
                SourceRef.CommonPractice);
        foreach (var zone in _road.NoCutZones)
        {
            if ((zone.Lane is not null && zone.Lane != lane.Number) || at <= zone.From + Tolerance || at >= zone.To - Tolerance) continue;
            Report("BND-023", repair, at, $"is cut inside the no-cut zone {zone.Name}", BoundaryWords.Station(_road, at),
                "Move the cut out of the zone.", SourceRef.Project);
        }

        var stands = false;
        foreach (var old in lane.Joints)
        {
            if (Math.Abs(old.SkewRun) < Tolerance && Math.Abs(old.At - at) <= Tolerance && MayStand(old.Kind)) stands = true;
            else CheckJoint(repair, old, at, removedAhead);
        }

        if (stands || OnMark(at)) return;
        Report("BND-024", repair, at, "is not cut on a mark or at a joint it may end at", BoundaryWords.Station(_road, at),
            "Move the cut to a mark of the cut step.", SourceRef.Project);
    }

    private void CheckJoint(Repair repair, TransverseJoint old, double at, bool removedAhead)
    {
        if (old.First < at - Tolerance && old.Last > at + Tolerance)
        {
            Report("BND-025", repair, at, "is cut across a skewed joint", BoundaryWords.Station(_road, old.At),
                "Take the whole joint into the repair or leave it out.", SourceRef.CommonPractice);
            return;
        }

        var ahead = old.First >= at - Tolerance;
        var distance = ahead ? old.First - at : at - old.Last;
        if (ahead == removedAhead) CheckPass(repair, old, at, distance);
        else CheckRemnant(repair, old, at, distance);
    }

    private void CheckPass(Repair repair, TransverseJoint old, double at, double distance)
    {
        var rule = old.Kind == JointKind.Dowelled ? _limits.ExtendPastDowelledJoint : null;
        var need = rule?.Value ?? _options.LeastSliver;
        if (distance >= need - Tolerance) return;
        Report("BND-026", repair, at, $"does not pass the {BoundaryWords.Name(old.Kind)} at {BoundaryWords.Station(_road, old.At)} by "
            + BoundaryWords.Length(need), BoundaryWords.Length(distance), "Move the cut further past the joint.", rule?.Source ?? SourceRef.Project);
    }

    private void CheckRemnant(Repair repair, TransverseJoint old, double at, double distance)
    {
        var need = _limits.LeastRemnant?.Value ?? _options.LeastSliver;
        if (distance >= Math.Max(need, 2 * Tolerance) - Tolerance) return;
        Report("BND-027", repair, at, $"leaves less than {BoundaryWords.Length(need)} of old slab to the {BoundaryWords.Name(old.Kind)} at "
            + BoundaryWords.Station(_road, old.At), BoundaryWords.Length(distance), "Take the remnant out or leave more.",
            _limits.LeastRemnant?.Source ?? SourceRef.Project);
    }

    private bool MayStand(JointKind kind) => kind switch
    {
        JointKind.Dowelled => false,
        JointKind.Undowelled or JointKind.WorkingCrack => _limits.EndAtUndowelledJoint is { Value: true },
        _ => true,
    };

    private bool OnMark(double at) => Math.Abs(at - Math.Round(at / _cutStep) * _cutStep) <= Tolerance;

    private void CheckPanels(Repair repair, Lane lane)
    {
        var last = repair.From;
        var limit = lane.Sections.Where(s => s.From < repair.To && s.To > repair.From).Select(Longest).DefaultIfEmpty(double.MaxValue).Min();
        foreach (var at in repair.Intermediate.Select(j => j.At).Append(repair.To))
        {
            if (at - last > limit + Tolerance)
                Report("BND-028", repair, last, $"has new concrete longer than {BoundaryWords.Length(limit)} without a joint",
                    BoundaryWords.Length(at - last), "Put a joint between.", _limits.LongestUnjointed?.Source ?? SourceRef.CommonPractice);
            if (at <= last + Tolerance || at > repair.To + Tolerance)
                Report("BND-022", repair, at, "has inner joints out of order", BoundaryWords.Station(_road, at), "Sort the joints.", SourceRef.CommonPractice);
            last = at;
        }
    }

    private double Longest(PavementSection section)
    {
        var times = section.Base is BaseKind.CementTreated or BaseKind.AsphaltTreated
            ? _limits.UnjointedThicknessesTreated
            : _limits.UnjointedThicknessesGranular;
        return Math.Min(_limits.LongestUnjointed?.Value ?? double.MaxValue, times is null ? double.MaxValue : times.Value * section.Thickness);
    }

    private void CheckFaces(Repair repair, ImmutableArray<FaceStretch> faces, string side)
    {
        var at = repair.From;
        foreach (var face in faces)
        {
            if (Math.Abs(face.From - at) > Tolerance) break;
            at = face.To;
        }

        if (Math.Abs(at - repair.To) <= Tolerance) return;
        Report("BND-029", repair, at, $"has a {side} face that does not cover its length", BoundaryWords.Length(at - repair.From),
            "Describe the face from end to end.", SourceRef.CommonPractice);
    }

    private void CheckGaps(Repair[] repairs)
    {
        var need = _limits.LeastGap?.Value ?? _options.LeastSliver;
        for (var n = 1; n < repairs.Length; n++)
        {
            var gap = repairs[n].From - repairs[n - 1].To;
            if (gap >= Math.Max(need, 2 * Tolerance) - Tolerance) continue;
            Report("BND-030", repairs[n], repairs[n].From, $"lies nearer than {BoundaryWords.Length(need)} to {repairs[n - 1].Id}",
                BoundaryWords.Length(gap), "Join the two or move them apart.", _limits.LeastGap?.Source ?? SourceRef.Project);
        }
    }

    private void CheckDemands(IReadOnlyList<RemovalDemand> demands, IReadOnlyList<Repair> repairs)
    {
        foreach (var demand in demands)
        {
            if (repairs.Any(r => r.Lane == demand.Lane && r.From <= demand.From + Tolerance && r.To >= demand.To - Tolerance)) continue;
            _findings.Add(new Finding("BND-031", FindingLevel.Error,
                $"No repair holds the whole demand of {string.Join(", ", demand.DistressIds)}.",
                new FindingPlace(Lane: demand.Lane, At: demand.From), BoundaryWords.Length(demand.To - demand.From),
                "Lengthen a repair over the demand or add one."));
        }
    }

    private void Report(string code, Repair repair, double at, string what, string value, string mend, SourceRef source) =>
        _findings.Add(new Finding(code, FindingLevel.Error, $"Repair {repair.Id} {what}.",
            new FindingPlace(Lane: repair.Lane, At: at), value, mend, null, source.ToString()));
}
