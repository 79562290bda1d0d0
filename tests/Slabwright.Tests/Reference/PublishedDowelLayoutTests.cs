using Slabwright.Core.Joints.Design;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;

namespace Slabwright.Tests.Reference;

/// <summary>Published dowel layouts and tables, reproduced by rows of bars and by the rule sets.</summary>
public sealed class PublishedDowelLayoutTests
{
    private const double Inch = 0.0254;

    /// <summary>WSDOT dowel bar policy, February 2013: 12 in centres, first bar 12 in from the edge; 11 bars in a 12 ft lane.</summary>
    [Fact]
    public void Washington_full_width()
    {
        var row = BarRow.FullWidth(12 * Inch, (144 - 12) * Inch, 12 * Inch);
        Assert.Equal(Enumerable.Range(1, 11).Select(n => 12.0 * n), row.Select(x => Math.Round(x / Inch, 6)));
        Assert.Equal(11, BarRow.FullWidthCount(144 * Inch, 12 * Inch, 12 * Inch));
        Assert.Equal(11, PublishedRuleSets.Find("washington")!.Joints.StatedDowels(144 * Inch));
    }

    /// <summary>WSDOT dowel bar policy, February 2013: four bars in each wheel path, outermost bars 12 in from the lane edges.</summary>
    [Fact]
    public void Washington_wheel_paths()
    {
        var row = BarRow.WheelPaths(12 * Inch, (144 - 12) * Inch, 12 * Inch, 4);
        Assert.Equal([12, 24, 36, 48, 96, 108, 120, 132], row.Select(x => Math.Round(x / Inch, 6)));
    }

    /// <summary>ACPA question page on dowels, Table 1: 8 to 10 in 1¼ in, over 10 in 1½ in; below 8 in judgement (no row).</summary>
    [Theory]
    [InlineData(7.5, null)]
    [InlineData(8, 1.25)]
    [InlineData(10, 1.25)]
    [InlineData(10.5, 1.5)]
    [InlineData(13, 1.5)]
    public void Acpa_diameters(double thickness, double? diameter) => Assert.Equal(diameter, DiameterOf("common-practice", thickness, on: true));

    /// <summary>ACPA TB002.02P (from memory, switched off): up to 6 in ¾; over 6 to under 8 in 1; 8 to 9.5 in 1¼; 10 in and over 1½.</summary>
    [Theory]
    [InlineData(6, 0.75)]
    [InlineData(7, 1)]
    [InlineData(8, 1.25)]
    [InlineData(9.5, 1.25)]
    [InlineData(10, 1.5)]
    public void Full_depth_repair_table(double thickness, double diameter) => Assert.Equal(diameter, DiameterOf("fhwa", thickness, on: false));

    /// <summary>UFC 3-260-02 Table 12-8, airfields, switched off: under 8 in ¾, 8 in 1, 12 in 1, 21 in 2, 26 in 3.</summary>
    [Theory]
    [InlineData(7.5, 0.75)]
    [InlineData(8, 1)]
    [InlineData(14, 1)]
    [InlineData(22, 2)]
    [InlineData(26, 3)]
    public void Airfield_table(double thickness, double diameter) => Assert.Equal(diameter, DiameterOf("dod-2001", thickness, on: false));

    /// <summary>ACPA text: at least one eighth of the slab, at least 6 in embedded; SUDAS 5G-2: none within 24 in of the back of a curb.</summary>
    [Fact]
    public void Shares_and_distances()
    {
        var joints = PublishedRuleSets.CommonPractice.Joints;
        Assert.Equal((0.125, 6, 24), (joints.DiameterPerThickness!.Value, Math.Round(joints.LeastEmbedment!.Value / Inch, 6), Math.Round(joints.ClearOfCurb!.Value / Inch, 6)));
        var washington = PublishedRuleSets.Find("washington")!.Joints;
        Assert.Equal((1.5, 18), (Math.Round(washington.LeastDowelDiameter.Value / Inch, 6), Math.Round(washington.LeastDowelLength!.Value / Inch, 6)));
    }

    /// <summary>ACPA dowels construction joints whatever the thickness, so the limits for bare joints wait to be switched on.</summary>
    [Fact]
    public void Bare_joints_are_offered_but_off()
    {
        var set = PublishedRuleSets.CommonPractice;
        Assert.Null(set.Joints.UndowelledBelowThickness);
        Assert.Contains(set.Offered, o => o.Key == "joints.undowelled_below_thickness" && Math.Abs(o.BaseValue - 7 * Inch) < 1e-9);
        Assert.Contains(set.Offered, o => o.Key == "joints.undowelled_below_trucks_per_day" && o.BaseValue == 80);
    }

    /// <summary>A lane under the Washington rules gets 1½ in bars, 18 in long, over the full width.</summary>
    [Fact]
    public void Washington_lane()
    {
        var design = JointDesigner.Design([JointLayouts.Lanes.Highway], PublishedRuleSets.Find("washington")!.Joints, null, 20);
        Assert.Equal((11, 1.5, 18.0), (design.Winner!.Layout!.Bars, Math.Round(design.Winner.Layout.Diameter / Inch, 6), Math.Round(design.Winner.Layout.Length / Inch, 6)));
    }

    private static double? DiameterOf(string set, double inches, bool on)
    {
        var rows = PublishedRuleSets.Find(set)!.Joints.DiametersByThickness.Where(r => r.On == on).Select(r => r with { On = true });
        return rows.LastOrDefault(r => r.Holds(inches * Inch)) is { } row ? Math.Round(row.Diameter / Inch, 6) : null;
    }
}
