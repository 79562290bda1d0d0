using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using static Slabwright.Tests.Treatments.Sample;

namespace Slabwright.Tests.Treatments;

public class TreatmentRulesTests
{
    [Fact]
    public void A_spall_of_a_third_of_the_slab_is_partial_depth_and_a_hair_deeper_is_full_depth()
    {
        var spall = Distress(DistressType.TransverseJointSpalling, Severity.High);
        Assert.Equal(Treatment.PartialDepthRepair, DecideOne(Common, spall with { Depth = 3 * Inch }).Treatment);
        Assert.Equal(Treatment.FullDepthRepair, DecideOne(Common, spall with { Depth = 3.01 * Inch }).Treatment);
    }

    [Fact]
    public void A_shallow_spall_is_full_depth_when_the_concrete_itself_is_the_cause()
    {
        var spall = Distress(DistressType.TransverseJointSpalling, Severity.Low) with { Depth = 1 * Inch };
        Assert.Equal(Treatment.PartialDepthRepair, DecideOne(Common, spall).Treatment);
        var stated = DecideOne(Common, spall with { Cause = DistressCause.DurabilityCracking });
        Assert.Equal((Treatment.FullDepthRepair, "CP-MATERIAL-SPALL"), (stated.Treatment, stated.Reasons[0].Rule));
        var seen = Decide(Common, Road(), spall, Distress(DistressType.DurabilityCracking, Severity.Low, id: "other")).Decisions[0];
        Assert.Equal(Treatment.FullDepthRepair, seen.Treatment);
        Assert.Contains(seen.Reasons[0].Inputs, i => i.Value == "durability cracking, seen in the same slab");
    }

    [Fact]
    public void The_reason_prints_its_inputs_in_the_units_of_the_project()
    {
        var spall = Distress(DistressType.TransverseJointSpalling, Severity.Moderate) with { Depth = 4 * Inch, Width = 5 * Inch };
        var reason = DecideOne(Common, spall).Reasons[0];
        Assert.Equal("CP-SPALL-DEEP", reason.Rule);
        Assert.Equal("FHWA-FDR-5, sec. 5.1", reason.Source.ToString());
        Assert.Equal("4.00 in, 44 % of thickness", reason.Inputs.Single(i => i.Name == "depth").Value);
        Assert.Equal("5, 15.0 ft long, 9.0 in thick", reason.Inputs.Single(i => i.Name == "slab").Value);
        Assert.Equal("not measured", reason.Inputs.Single(i => i.Name == "faulting").Value);
        var metric = TreatmentRules.Decide(Road(), Survey(spall), Common, [], UnitSystem.Si).Decisions[0].Reasons[0];
        Assert.Equal("102 mm, 44 % of thickness", metric.Inputs.Single(i => i.Name == "depth").Value);
    }

    [Fact]
    public void What_was_not_measured_is_named_and_the_safe_side_is_taken()
    {
        var result = Decide(Common, Road(), Distress(DistressType.TransverseJointSpalling, Severity.High));
        var decision = result.Decisions.Single();
        Assert.Equal(("CP-SPALL-HIGH", Treatment.FullDepthRepair), (decision.Reasons[0].Rule, decision.Treatment));
        Assert.Contains(decision.Reasons, r => r.Rule == "CP-SPALL-TOP" && r.Sentence.StartsWith("Could not be tried, depth", StringComparison.Ordinal));
        var finding = Assert.Single(result.Findings);
        Assert.Equal("TRT-021", finding.Code);
        Assert.Contains("depth and width not measured", finding.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.5, 3.0, Treatment.PartialDepthRepair)]
    [InlineData(0.5, 6.0, Treatment.FullDepthRepair)]
    [InlineData(0.7, 3.0, Treatment.FullDepthRepair)]
    public void A_core_at_the_spall_speaks_for_its_depth(double metresAway, double depthInches, Treatment expected)
    {
        var spall = Distress(DistressType.TransverseJointSpalling, Severity.High);
        var core = new CoreSample("C7", 1, spall.From + metresAway, null, 10 * Inch, depthInches * Inch, null);
        var survey = Survey(spall) with { Cores = [core] };
        var result = TreatmentRules.Decide(Road(), survey, Common, [], UnitSystem.UsCustomary);
        Assert.Equal(expected, result.Decisions.Single().Treatment);
        var depth = result.Decisions[0].Reasons[0].Inputs.Single(i => i.Name == "depth").Value;
        Assert.Equal(metresAway < 0.6, depth.EndsWith("of thickness, core C7", StringComparison.Ordinal));
        Assert.Equal(metresAway < 0.6, result.Findings.IsEmpty);
    }

    [Fact]
    public void A_core_never_makes_a_surveyed_depth_less()
    {
        var spall = Distress(DistressType.TransverseJointSpalling, Severity.High) with { Depth = 5 * Inch };
        var survey = Survey(spall) with { Cores = [new CoreSample("C7", 1, spall.From, null, null, 2 * Inch, null)] };
        var decision = TreatmentRules.Decide(Road(), survey, Common, [], UnitSystem.UsCustomary).Decisions.Single();
        Assert.Equal("5.00 in, 56 % of thickness", decision.Reasons[0].Inputs.Single(i => i.Name == "depth").Value);
    }

    [Fact]
    public void A_crack_without_severity_is_taken_as_calling_for_the_most_removal()
    {
        var result = Decide(Common, Road(), Distress(DistressType.TransverseCracking));
        Assert.Equal(Treatment.FullDepthRepair, result.Decisions.Single().Treatment);
        Assert.Equal("TRT-022", Assert.Single(result.Findings).Code);
    }

    [Fact]
    public void Three_damaged_slabs_in_a_row_make_a_run_and_two_do_not()
    {
        Distress Crack(int slab) => Distress(DistressType.TransverseCracking, Severity.High, slab);
        Assert.All(Decide(Common, Road(), Crack(4), Crack(5)).Decisions, d => Assert.Equal(Treatment.FullDepthRepair, d.Treatment));
        var three = Decide(Common, Road(), Crack(4), Crack(5), Crack(6), Crack(9)).Decisions;
        Assert.Equal([Treatment.SlabRun, Treatment.SlabRun, Treatment.SlabRun, Treatment.FullDepthRepair], three.Select(d => d.Treatment));
        Assert.Equal(["CP-RUN", "CP-TRANSVERSE"], three[0].Reasons.Select(r => r.Rule));
    }

    [Fact]
    public void Long_reinforced_slabs_are_not_run_together()
    {
        var road = Road(12, PavementKind.JointedReinforced);
        var cracks = Enumerable.Range(4, 3).Select(s => Distress(DistressType.TransverseCracking, Severity.High, s)).ToArray();
        Assert.All(Decide(Common, road, cracks).Decisions, d => Assert.Equal(Treatment.FullDepthRepair, d.Treatment));
    }

    [Fact]
    public void Three_full_depth_calls_in_a_slab_replace_it_and_a_sealed_crack_does_not_count()
    {
        var corners = Enumerable.Range(1, 3).Select(i => Distress(DistressType.CornerBreak, Severity.Low, 5, $"C{i}")).ToArray();
        Assert.All(Decide(Common, Road(), corners).Decisions, d => Assert.Equal(Treatment.SlabReplacement, d.Treatment));
        Distress[] two = [.. corners[..2], Distress(DistressType.TransverseCracking, Severity.Low, 5, "T")];
        Assert.Equal([Treatment.FullDepthRepair, Treatment.FullDepthRepair, Treatment.Seal],
            Decide(Common, Road(), two).Decisions.Select(d => d.Treatment));
    }

    [Fact]
    public void The_engineers_override_wins_and_keeps_what_the_rules_called()
    {
        var choice = new TreatmentOverride("D5", Treatment.Leave, "Lane is rebuilt next year.", "J. Doe", new DateOnly(2025, 5, 2));
        var survey = Survey(Distress(DistressType.CornerBreak, Severity.High));
        var decision = TreatmentRules.Decide(Road(), survey, Common, [choice], UnitSystem.UsCustomary).Decisions.Single();
        Assert.Equal((Treatment.Leave, Treatment.FullDepthRepair), (decision.Treatment, decision.CalledByRules));
        Assert.Equal(["override", "CP-CORNER"], decision.Reasons.Select(r => r.Rule));
        Assert.Equal("Lane is rebuilt next year.", decision.Reasons[0].Sentence);
        Assert.Contains(decision.Reasons[0].Inputs, i => i.Value == "2025-05-02");
    }

    [Fact]
    public void The_slabs_beside_reckon_with_the_engineers_choice()
    {
        var cracks = Enumerable.Range(4, 3).Select(s => Distress(DistressType.TransverseCracking, Severity.High, s)).ToArray();
        var choice = new TreatmentOverride("D5", Treatment.Leave, "Replaced last year, survey is older.");
        var left = TreatmentRules.Decide(Road(), Survey(cracks), Common, [choice], UnitSystem.UsCustomary).Decisions;
        Assert.Equal([Treatment.FullDepthRepair, Treatment.Leave, Treatment.FullDepthRepair], left.Select(d => d.Treatment));
        Assert.Equal(Treatment.SlabRun, left[1].CalledByRules);

        cracks[1] = cracks[1] with { Severity = Severity.Low };
        var added = choice with { Treatment = Treatment.FullDepthRepair };
        var run = TreatmentRules.Decide(Road(), Survey(cracks), Common, [added], UnitSystem.UsCustomary).Decisions;
        Assert.Equal([Treatment.SlabRun, Treatment.FullDepthRepair, Treatment.SlabRun], run.Select(d => d.Treatment));
    }

    [Theory]
    [InlineData("nobody", "A reason.", "TRT-024")]
    [InlineData("D5", " ", "TRT-025")]
    public void An_override_that_cannot_be_used_is_a_finding(string id, string because, string code)
    {
        var survey = Survey(Distress(DistressType.CornerBreak, Severity.High));
        var result = TreatmentRules.Decide(
            Road(), survey, Common, [new TreatmentOverride(id, Treatment.Leave, because)], UnitSystem.UsCustomary);
        Assert.Equal(Treatment.FullDepthRepair, result.Decisions.Single().Treatment);
        Assert.Equal(code, Assert.Single(result.Findings).Code);
    }

    [Fact]
    public void A_distress_outside_the_lanes_is_a_finding_and_the_others_are_decided()
    {
        var stray = Distress(DistressType.Blowup, id: "stray") with { Lane = 3 };
        var result = Decide(Common, Road(), stray, Distress(DistressType.Blowup));
        Assert.Equal(["D5"], result.Decisions.Select(d => d.DistressId));
        Assert.Equal("TRT-020", Assert.Single(result.Findings).Code);
    }
}
