using Slabwright.Core.Evidence;
using Slabwright.Core.Handbook;
using Slabwright.Core.Measures;

namespace Slabwright.Tests.Handbook;

public class JointByHandTests
{
    private static HandJoint Of(params string[] pairs) => JointByHand.Evaluate(pairs.Chunk(2).ToDictionary(p => p[0], p => p[1]));

    private static double Ratio(HandJoint joint, string where, string what, string form) =>
        joint.Comparisons.Single(c => c.Case.Contains(where) && c.Quantity.Contains(what) && c.Form.Contains(form)).Ratio!.Value;

    /// <summary>
    /// On slabs as large as the closed forms ask (8 l), both ways of working agree. The margins are those of fits, of b, and of shear: the
    /// plates give a little under the wheel, which the thin plates of the closed forms do not, and a rectangle's middle lies further from the joint than the circle's. With the bar of
    /// two elastic sides the fit of load transfer meets the plates; with the published, stiffer bar it reads high.
    /// </summary>
    [Fact]
    public void Closed_forms_and_plate_agree_where_the_slab_is_large()
    {
        var joint = Of("thickness", "8 in", "k", "300 pci", "lane-width", "32 ft", "slab", "40 ft", "repair", "40 ft", "diameter", "1.25 in", "wheel-at", "16 ft");
        Assert.True(joint.Succeeded);
        Assert.Empty(joint.Findings);
        Assert.Equal(1, Ratio(joint, "interior", "stress", "1926"), 0.04);
        Assert.Equal(1, Ratio(joint, "interior", "deflection", "1939"), 0.06);
        Assert.Equal(1, Ratio(joint, "amid the lane", "stress", "circle"), 0.12);
        Assert.Equal(1, Ratio(joint, "amid the lane", "deflection", "circle"), 0.06);
        Assert.Equal(1, Ratio(joint, "corner, no bars", "deflection", "Ioannides"), 0.06);
        Assert.Equal(1, Ratio(joint, "corner, no bars", "stress", "Ioannides"), 0.14);
        Assert.Equal(1, Ratio(joint, "with bars", "transfer", "two elastic sides"), 0.03);
        Assert.InRange(Ratio(joint, "with bars", "transfer", "FHWA-RD-02-088, reach 1.0 l"), 1.05, 1.20);
    }

    /// <summary>The exact stiffness with two elastic sides is that of the plate model's bar; the published form is over twice as stiff.</summary>
    [Fact]
    public void The_exact_bar_is_the_plate_models_bar()
    {
        var joint = Of("thickness", "10 in");
        Assert.Equal(1, Ratio(joint, "one bar", "stiffness", "two elastic sides"), 0.001);
        Assert.InRange(Ratio(joint, "one bar", "stiffness", "one face"), 2.0, 2.4);
    }

    [Fact]
    public void Bars_carry_what_the_joint_carries()
    {
        var joint = Of("thickness", "10 in", "per-path", "4");
        Assert.Equal(8, joint.Bars.Length);
        var carried = joint.Comparisons.Single(c => c.Quantity == "load carried over");
        Assert.Equal(carried.Plate!.Value, joint.Bars.Sum(b => b.Plate), 1e-6 * carried.Plate.Value);
        Assert.Equal(carried.Closed!.Value, joint.Bars.Sum(b => b.Reach10), 1e-6 * carried.Closed.Value);
        Assert.True(joint.Bars.Max(b => b.Reach10) > joint.Bars.Max(b => b.Reach18));
        Assert.Equal(joint.Comparisons.First(c => c.Quantity.StartsWith("bearing", StringComparison.Ordinal)).Plate, joint.Bars.Max(b => b.Bearing));
        Assert.True(Math.Abs(joint.Run!.Equilibrium) < 1e-9);
    }

    [Fact]
    public void What_is_not_given_is_taken_and_says_from_where()
    {
        var joint = Of("thickness", "10 in", "k", "120 pci");
        Assert.Equal(JointByHand.Inputs.Length, joint.Inputs.Length);
        Assert.Equal(["thickness", "k"], joint.Inputs.Where(i => i.Source is null).Select(i => i.Key));
        Assert.All(JointByHand.Inputs.Where(i => i.Key != "thickness"), i => Assert.NotNull(i.Default));
    }

    [Fact]
    public void A_small_slab_is_doubted_but_worked_out()
    {
        var joint = Of("thickness", "10 in");
        Assert.True(joint.Succeeded);
        Assert.Equal(3, joint.Findings.Count(f => f.Code == "JNT-083" && f.Level == FindingLevel.Warning));
    }

    [Fact]
    public void Bare_numbers_follow_the_system()
    {
        var customary = Of("thickness", "10", "bars", "12; 24; 36", "wheel-at", "2");
        var si = JointByHand.Evaluate(
            new Dictionary<string, string> { ["thickness"] = "254", ["bars"] = "304.8; 609.6; 914.4", ["wheel-at"] = "0.6096" }, UnitSystem.Si);
        Assert.Equal(customary.Bars.Select(b => b.Plate), si.Bars.Select(b => b.Plate), (a, b) => Math.Abs(a - b) < 1e-6);
    }

    [Theory]
    [InlineData("HBK-002", "thickness")]
    [InlineData("HBK-005", "thickness", "thickness", "0 in")]
    [InlineData("HBK-005", "k", "thickness", "10 in", "k", "-50 pci")]
    [InlineData("HBK-003", "wheel", "thickness", "10 in", "wheel", "heavy")]
    [InlineData("HBK-004", "slab", "thickness", "10 in", "slab", "15 psi")]
    [InlineData("HBK-006", "colour", "thickness", "10 in", "colour", "grey")]
    [InlineData("JNT-013", "diameter", "thickness", "3 in", "diameter", "2 in")]
    [InlineData("JNT-014", "embedment", "thickness", "10 in", "embedment", "20 in")]
    [InlineData("JNT-016", "bars", "thickness", "10 in", "bars", "1 ft; 13 ft")]
    [InlineData("JNT-017", "bars", "thickness", "10 in", "bars", "12 in; 12.5 in")]
    [InlineData("JNT-080", "bars", "thickness", "10 in", "bars", "1 ft; two")]
    [InlineData("JNT-081", "per-path", "thickness", "10 in", "per-path", "9")]
    [InlineData("JNT-082", "wheel-at", "thickness", "10 in", "wheel-at", "13 ft")]
    public void Bad_input_becomes_a_finding_that_names_field_and_mend(string code, string field, params string[] pairs)
    {
        var joint = Of(pairs);
        Assert.False(joint.Succeeded);
        var finding = Assert.Single(joint.Findings);
        Assert.Equal((code, field, FindingLevel.Error), (finding.Code, finding.Place.Field, finding.Level));
        Assert.NotEmpty(finding.Mend!);
    }
}
