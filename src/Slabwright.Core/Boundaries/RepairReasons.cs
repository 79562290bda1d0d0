using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Boundaries;

/// <summary>Says why each boundary lies where it does: what it holds, what it stands at, and which rule keeps it from lying nearer.</summary>
internal sealed class RepairReasons(Road road, BoundaryProblem problem, RuleSet rules)
{
    private static readonly SourceRef Optimum = new("boundary optimum", "docs/steps/boundaries.md", SourceStatus.Computed);

    private readonly CutRules[] _cuts = [.. problem.Lanes.Select(l => new CutRules(problem, l))];

    public ImmutableArray<Reason> Of(ChosenRepair chosen, Cut start, Cut end, RemovalDemand[] demands)
    {
        var reasons = ImmutableArray.CreateBuilder<Reason>();
        reasons.Add(Holds(demands));
        if (chosen.To - chosen.From - problem.Limits.LeastLength < Step) reasons.Add(LeastLength(chosen));
        reasons.Add(End("start", chosen.Lane, start, Ticks.FromMetres(demands.Min(d => d.From)), removesAhead: true));
        reasons.Add(End("end", chosen.Lane, end, Ticks.FromMetres(demands.Max(d => d.To)), removesAhead: false));
        AddClass(chosen, reasons);
        return reasons.ToImmutable();
    }

    private long Step => problem.StepThousandths / 1000 + 1;

    private Reason Holds(RemovalDemand[] demands)
    {
        var (from, to) = (demands.Min(d => d.From), demands.Max(d => d.To));
        var sentence = demands.Length == 1
            ? "Takes out one demand."
            : "Takes out several demands in one piece: apart they would cost more or break a rule.";
        return new Reason("demands held", sentence, Optimum,
            [
                new("demands", demands.Length.ToString(CultureInfo.InvariantCulture)),
                new("from", BoundaryWords.Station(road, from)),
                new("to", BoundaryWords.Station(road, to)),
                new("demanded length", BoundaryWords.Length(to - from)),
            ]);
    }

    private Reason LeastLength(ChosenRepair chosen) => new("least length", "The repair is as short as the rules allow.",
        rules.Boundaries.LeastLength.Source,
        [
            new("length", BoundaryWords.Length(chosen.To - chosen.From)),
            new("least length", BoundaryWords.Length(rules.Boundaries.LeastLength.Value)
                + (problem.Limits.OrHalfSlab ? ", or half the slab where that is less" : "")),
        ]);

    private Reason End(string which, int lane, Cut cut, long demand, bool removesAhead)
    {
        var place = new ReasonInput(which, BoundaryWords.Station(road, Ticks.ToMetres(cut.At)));
        if (cut.Standing is { } kind)
        {
            var source = rules.Boundaries.EndAtUndowelledJoint?.Source ?? SourceRef.CommonPractice;
            return new Reason($"{which} at joint", $"The {which} stands at the {BoundaryWords.Name(kind)}.", source, [place]);
        }

        var beyond = new ReasonInput("beyond the demand", BoundaryWords.Length(Math.Abs(cut.At - demand)));
        var nearer = removesAhead ? problem.MarkAt(problem.MarkAtOrBefore(cut.At) + 1) : problem.MarkAt(problem.MarkAtOrBefore(cut.At - 1));
        var holds = removesAhead ? nearer <= demand : nearer >= demand;
        if (holds && _cuts[lane].Blocker(nearer, removesAhead) is { } blocker) return Blocked(which, blocker, nearer, place, beyond);
        var sentence = holds
            ? $"The {which} lies where length, joints, prices and the neighbouring lane together cost least."
            : $"The {which} is the first mark outside the demand.";
        return new Reason($"{which} placed", sentence, Optimum, [place, beyond]);
    }

    private Reason Blocked(string which, (CutBlock Block, ProblemJoint Joint) blocker, long nearer, ReasonInput place, ReasonInput beyond)
    {
        var joint = blocker.Joint;
        var limits = rules.Boundaries;
        var (sentence, source) = blocker.Block switch
        {
            CutBlock.NoCutZone => ("no transverse cut may fall in the zone there", SourceRef.Project),
            CutBlock.Skew => ("it would cross a skewed joint", SourceRef.CommonPractice),
            CutBlock.AtJoint => ($"it would stand at the {BoundaryWords.Name(joint.Kind)}, which must come out or stay whole",
                limits.ExtendPastDowelledJoint?.Source ?? SourceRef.CommonPractice),
            CutBlock.Remnant => ($"it would leave less than {BoundaryWords.Length(problem.Limits.LeastRemnant)} of old slab to the "
                + BoundaryWords.Name(joint.Kind), limits.LeastRemnant?.Source ?? SourceRef.CommonPractice),
            _ => ($"it would not pass the {BoundaryWords.Name(joint.Kind)} by "
                + BoundaryWords.Length(joint.Kind == JointKind.Dowelled ? problem.Limits.PassDowelled : problem.Limits.PassOther),
                limits.ExtendPastDowelledJoint?.Source ?? SourceRef.CommonPractice),
        };
        var inputs = ImmutableArray.Create(place, beyond, new ReasonInput("mark not used", BoundaryWords.Station(road, Ticks.ToMetres(nearer))));
        if (blocker.Block != CutBlock.NoCutZone)
            inputs = inputs.Add(new ReasonInput("joint", BoundaryWords.Station(road, Ticks.ToMetres(joint.At))));
        return new Reason($"{which} moved out", $"The {which} may not lie nearer: {sentence}.", source, inputs);
    }

    private void AddClass(ChosenRepair chosen, ImmutableArray<Reason>.Builder reasons)
    {
        var length = chosen.To - chosen.From;
        foreach (var size in problem.Lanes[chosen.Lane].Classes.Skip(1))
        {
            if (length < size.FromLength || length - size.FromLength > Step) continue;
            var width = road.Lanes[chosen.Lane].Width;
            reasons.Add(new Reason("price class", "The repair just reaches a price class of larger repairs.", SourceRef.Project,
                [
                    new("area", BoundaryWords.Area(Ticks.ToMetres(length) * width)),
                    new("class from", BoundaryWords.Area(Ticks.ToMetres(size.FromLength) * width)),
                ]));
        }
    }
}
