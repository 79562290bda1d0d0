using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using static Slabwright.Tests.JointLayouts.Lanes;

namespace Slabwright.Tests.JointLayouts;

/// <summary>Bad input gets a finding with field, value and mend, and is not designed.</summary>
public sealed class DesignChecksTests
{
    public static TheoryData<string, string, JointConditions> BadConditions => new()
    {
        { "thickness", "JNT-010", Highway with { Thickness = 0 } },
        { "thickness", "JNT-010", Highway with { Thickness = double.NaN } },
        { "reaction", "JNT-010", Highway with { Reaction = -1e7 } },
        { "modulus", "JNT-010", Highway with { Modulus = 0 } },
        { "poisson", "JNT-010", Highway with { Poisson = 0.5 } },
        { "joint_width", "JNT-010", Highway with { JointWidth = 0 } },
        { "lane_width", "JNT-010", Highway with { LaneWidth = 0.1 } },
        { "design_years", "JNT-010", Highway with { DesignYears = 0 } },
        { "strength", "JNT-010", Highway with { Strength = -1 } },
        { "dowel_support", "JNT-010", Highway with { DowelSupport = double.PositiveInfinity } },
        { "hottest", "JNT-011", Highway with { Temperatures = (20, 10) } },
        { "axles", "JNT-012", Highway with { Traffic = [new(4, 1e5, 10)] } },
        { "axles", "JNT-012", Highway with { Traffic = [new(1, -5, 10)] } },
    };

    [Theory]
    [MemberData(nameof(BadConditions))]
    public void A_value_no_joint_can_have_is_named(string field, string code, JointConditions conditions)
    {
        var finding = Assert.Single(JointChecks.Conditions(conditions));
        Assert.Equal((code, FindingLevel.Error, "joints." + field), (finding.Code, finding.Level, finding.Place.Field));
        Assert.False(string.IsNullOrEmpty(finding.Mend));
    }

    [Fact]
    public void Sound_input_has_no_finding()
    {
        Assert.Empty(JointChecks.Conditions(Highway));
        Assert.Empty(JointChecks.Layout(Row(12, 24, 36), Highway.LaneWidth, Highway.Thickness));
    }

    [Theory]
    [InlineData("JNT-016", new[] { 0.5, 24.0 })]
    [InlineData("JNT-016", new[] { 24.0, 144.0 })]
    [InlineData("JNT-017", new[] { 24.0, 25.0 })]
    [InlineData("JNT-017", new[] { 36.0, 24.0 })]
    public void Bars_outside_the_slab_or_over_one_another_are_named(string code, double[] inches) =>
        Assert.Equal(code, Assert.Single(JointChecks.Layout(Row(inches), Highway.LaneWidth, Highway.Thickness)).Code);

    [Fact]
    public void A_bar_that_does_not_fit_is_named()
    {
        string Code(BarLayout bars) => Assert.Single(JointChecks.Layout(bars, Highway.LaneWidth, Highway.Thickness)).Code;
        Assert.Equal("JNT-013", Code(Row(24) with { Diameter = 6 * Inch }));
        Assert.Equal("JNT-014", Code(Row(24) with { Embedment = 18 * Inch }));
        Assert.Equal("JNT-014", Code(Row(24) with { Embedment = -1 }));
        Assert.Equal("JNT-015", Code(Row(24) with { Depth = 0.5 * Inch }));
        Assert.Equal("JNT-015", Code(Row(24) with { Depth = 9.5 * Inch }));
    }

    [Fact]
    public void Settings_that_cannot_be_stop_the_design_with_a_finding()
    {
        foreach (var bad in new[]
        {
            new JointSettings { Diameters = [0] }, new JointSettings { Lengths = [9] }, new JointSettings { GangDrills = 0 },
            new JointSettings { GangSpacing = -1 }, new JointSettings { LaneShare = 1.5 }, new JointSettings { TruckFactor = 0 },
            new JointSettings { Costs = new(0.9, 0.9, 0.3, 0.03, 0.4) }, new JointSettings { KeepOuts = [new("loop", 1, 10, 5, 0, 1)] },
        })
        {
            var (lanes, findings) = JointPlanner.Lanes(PlannedJointsTests.Road, PlannedJointsTests.Rules, Boundaries.Worked.Prices, bad);
            Assert.Empty(lanes);
            Assert.Contains(findings, f => f is { Code: "JNT-018", Level: FindingLevel.Error, Mend.Length: > 0 });
        }
    }
}
