using CsCheck;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using Slabwright.Tests.Treatments;

namespace Slabwright.Tests.Laws;

/// <summary>What holds for every published rule set and any survey.</summary>
public class TreatmentLaws
{
    private static readonly Gen<double?> Measured = Gen.OneOf(Gen.Const((double?)null), Gen.Double[0, 0.25].Select(v => (double?)v));

    private static readonly Gen<Distress> AnyDistress = Gen.Select(
        OneOf(Enum.GetValues<DistressType>()), Gen.Int[1, 3], Gen.Int[1, 40], Measured, Measured, Measured,
        OneOf(Enum.GetValues<DistressCause>()), Gen.Bool,
        (type, severity, slab, depth, width, faulting, cause, beside) => Sample.Distress(type, (Severity)severity, slab) with
        {
            Depth = depth is { } d ? Math.Min(d, 9 * Sample.Inch) : null, Width = width, Faulting = faulting / 10, Cause = cause,
            BesideEarlierRepair = beside,
        });

    private static readonly Gen<Distress[]> AnySurvey = AnyDistress.Array[1, 25]
        .Select(distresses => distresses.Select((d, i) => d with { Id = $"D{i:00}" }).ToArray());

    private static readonly Gen<RuleSet> AnySet = OneOf<RuleSet>([.. PublishedRuleSets.All]);

    [Fact]
    public void Worse_severity_never_lessens_the_treatment() => Gen.Select(AnySet, AnyDistress).Sample((set, distress) =>
        distress.Severity == Severity.High
        || Call(set, distress with { Severity = distress.Severity + 1 }) >= Call(set, distress));

    [Fact]
    public void Greater_depth_never_lessens_the_treatment() =>
        Gen.Select(AnySet, AnyDistress, Gen.Double[0, 0.2]).Sample((set, distress, more) =>
            distress.Depth is null || Call(set, distress with { Depth = distress.Depth + more }) >= Call(set, distress));

    [Fact]
    public void Greater_width_or_faulting_never_lessens_the_treatment() =>
        Gen.Select(AnySet, AnyDistress, Gen.Double[0, 0.2]).Sample((set, distress, more) =>
            Call(set, distress with { Width = distress.Width + more, Faulting = distress.Faulting + more }) >= Call(set, distress));

    [Fact]
    public void One_more_distress_never_lessens_the_treatment_of_another() =>
        Gen.Select(AnySet, AnySurvey, AnyDistress).Sample((set, survey, more) =>
        {
            var before = Sample.Decide(set, Sample.Road(), survey).Decisions;
            var after = Sample.Decide(set, Sample.Road(), [.. survey, more with { Id = "more" }]).Decisions;
            return before.Zip(after).All(p => p.Second.Treatment >= p.First.Treatment);
        });

    [Fact]
    public void The_order_of_the_survey_changes_no_decision() =>
        Gen.Select(AnySet, AnySurvey).Sample((set, survey) =>
        {
            var forward = Sample.Decide(set, Sample.Road(), survey).Decisions.Select(Short).Order(StringComparer.Ordinal);
            var backward = Sample.Decide(set, Sample.Road(), [.. survey.Reverse()]).Decisions.Select(Short).Order(StringComparer.Ordinal);
            return forward.SequenceEqual(backward);
        });

    [Fact]
    public void Switching_off_a_rule_changes_only_what_it_decided() =>
        Gen.Select(AnySet, AnyDistress, Gen.Int[0, 200]).Sample((set, distress, index) =>
        {
            var off = set.Treatments[index % set.Treatments.Length];
            var without = set with { Treatments = [.. set.Treatments.Select(r => r == off ? r with { On = false } : r)] };
            var (before, after) = (Sample.DecideOne(set, distress), Sample.DecideOne(without, distress));
            return after.Reasons.All(r => r.Rule != off.Id)
                && (before.Reasons.Any(r => r.Rule == off.Id) || before.Treatment == after.Treatment);
        });

    [Fact]
    public void Every_decision_names_a_rule_and_its_source_and_inputs() =>
        Gen.Select(AnySet, AnySurvey).Sample((set, survey) => Sample.Decide(set, Sample.Road(), survey).Decisions.All(d =>
            d.Reasons[0].Inputs.Length > 0 && d.Reasons[0].Source.Tag.Length > 0 && set.Treatments.Any(r => r.On && r.Id == d.Reasons[0].Rule)));

    private static Gen<T> OneOf<T>(T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Treatment Call(RuleSet set, Distress distress) => Sample.DecideOne(set, distress).Treatment;

    private static string Short(TreatmentDecision d) => $"{d.DistressId} {d.Treatment} {d.Reasons[0].Rule}";
}
