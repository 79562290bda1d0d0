using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using static Slabwright.Tests.Treatments.Sample;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Pavement Interactive, spalling: less than 75 mm from the joint takes a partial-depth repair, more is suspected to go deeper. FP2,
/// partial and full depth concrete repair: low-severity spalling is a candidate for partial-depth repair.
/// </summary>
public class SpallingAndSmallRepairTests
{
    [Theory]
    [InlineData(50, Treatment.PartialDepthRepair)]
    [InlineData(75, Treatment.PartialDepthRepair)]
    [InlineData(80, Treatment.FullDepthRepair)]
    [InlineData(150, Treatment.FullDepthRepair)]
    public void Spall_width_in_millimetres(double width, Treatment expected)
    {
        var spall = Distress(DistressType.TransverseJointSpalling, Severity.Moderate) with { Width = width / 1000 };
        Assert.Equal(expected, DecideOne(Common, spall).Treatment);
    }

    [Fact]
    public void Low_severity_spalling_is_a_candidate_for_partial_depth_repair() => Assert.Equal(
        Treatment.PartialDepthRepair, DecideOne(Common, Distress(DistressType.TransverseJointSpalling, Severity.Low)).Treatment);
}
