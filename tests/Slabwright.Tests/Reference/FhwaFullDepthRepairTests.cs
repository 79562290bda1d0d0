using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using static Slabwright.Tests.Treatments.Sample;

namespace Slabwright.Tests.Reference;

/// <summary>
/// FHWA, Full-Depth Repairs, web guidance: Table 1 (sec. 1) row by row, sec. 2.1 and sec. 5.1. Faulting of the table is in inches.
/// </summary>
public class FhwaFullDepthRepairTests
{
    private static readonly RuleSet Fhwa = Set("fhwa");

    [Theory]
    [InlineData(DistressType.CornerBreak, Severity.Low, null)]
    [InlineData(DistressType.JointDeterioration, Severity.Moderate, 0.25)]
    [InlineData(DistressType.ReactiveAggregate, Severity.Moderate, null)]
    [InlineData(DistressType.TransverseCracking, Severity.Moderate, 0.25)]
    [InlineData(DistressType.LongitudinalCracking, Severity.High, 0.5)]
    public void Table_1_warrants_full_depth_repair_from_its_lowest_severity_and_faulting_on(
        DistressType type, Severity lowest, double? faultingInches)
    {
        foreach (var severity in Enum.GetValues<Severity>().Where(s => s >= lowest))
            Assert.Equal(Treatment.FullDepthRepair, Call(type, severity, faultingInches));
    }

    [Theory]
    [InlineData(DistressType.JointDeterioration, Severity.Low, 0.25)]
    [InlineData(DistressType.JointDeterioration, Severity.High, 0.24)]
    [InlineData(DistressType.ReactiveAggregate, Severity.Low, null)]
    [InlineData(DistressType.TransverseCracking, Severity.Low, 0.25)]
    [InlineData(DistressType.TransverseCracking, Severity.High, 0.24)]
    [InlineData(DistressType.LongitudinalCracking, Severity.Moderate, 0.5)]
    [InlineData(DistressType.LongitudinalCracking, Severity.High, 0.49)]
    public void Table_1_does_not_below_it(DistressType type, Severity severity, double? faultingInches) =>
        Assert.True(Call(type, severity, faultingInches) < Treatment.FullDepthRepair);

    [Fact]
    public void Table_1_deterioration_next_to_an_existing_repair_from_medium_severity()
    {
        var crack = Distress(DistressType.TransverseCracking, Severity.Moderate) with { Faulting = 0, BesideEarlierRepair = true };
        Assert.Equal(Treatment.FullDepthRepair, DecideOne(Fhwa, crack).Treatment);
        Assert.True(DecideOne(Fhwa, crack with { Severity = Severity.Low }).Treatment < Treatment.FullDepthRepair);
    }

    /// <summary>The text of sec. 2.1 repairs medium and high transverse cracks without asking for faulting; a switch in the set.</summary>
    [Fact]
    public void Section_2_1_repairs_transverse_cracks_whether_faulted_or_not()
    {
        var text = Fhwa with { Treatments = [.. Fhwa.Treatments.Select(r => r.Id == "FHWA-TRANSVERSE-TEXT" ? r with { On = true } : r)] };
        var crack = Distress(DistressType.TransverseCracking, Severity.Moderate) with { Faulting = 0 };
        Assert.Equal(Treatment.Seal, DecideOne(Fhwa, crack).Treatment);
        Assert.Equal(Treatment.FullDepthRepair, DecideOne(text, crack).Treatment);
        Assert.Equal(Treatment.FullDepthRepair, DecideOne(Common, crack).Treatment);
    }

    /// <summary>Sec. 5.1: 6 ft with load transfer, 8 to 10 ft on interlock, 6 ft to the next joint, 1 ft past a dowelled joint.</summary>
    [Fact]
    public void Section_5_1_lengths()
    {
        Assert.Equal(6 * Foot, Fhwa.Boundaries.LeastLength.Value, 12);
        Assert.InRange(Fhwa.Boundaries.LeastLengthUndowelled!.Value, 8 * Foot - 1e-12, 10 * Foot);
        Assert.Equal(6 * Foot, Fhwa.Boundaries.LeastRemnant!.Value, 12);
        Assert.Equal(1 * Foot, Fhwa.Boundaries.ExtendPastDowelledJoint!.Value, 12);
    }

    /// <summary>Sec. 5.1: partial-depth repair only where damage stays in the top third.</summary>
    [Theory]
    [InlineData(3.0, Treatment.PartialDepthRepair)]
    [InlineData(3.1, Treatment.FullDepthRepair)]
    public void Section_5_1_top_third_of_a_9_in_slab(double depthInches, Treatment expected)
    {
        var spall = Distress(DistressType.TransverseJointSpalling, Severity.Moderate) with { Depth = depthInches * Inch };
        Assert.Equal(expected, DecideOne(Fhwa, spall).Treatment);
        Assert.Equal(expected, DecideOne(Common, spall).Treatment);
    }

    private static Treatment Call(DistressType type, Severity severity, double? faultingInches) =>
        DecideOne(Fhwa, Distress(type, severity) with { Faulting = faultingInches * Inch }).Treatment;
}
