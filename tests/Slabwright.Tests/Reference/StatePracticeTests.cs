using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using static Slabwright.Tests.Treatments.Sample;

namespace Slabwright.Tests.Reference;

/// <summary>What state specifications and manuals print, set against the sets that carry them.</summary>
public class StatePracticeTests
{
    /// <summary>MoDOT Engineering Policy Guide 613.1.1: stable faulted joints and cracks are better left alone.</summary>
    [Fact]
    public void Missouri_leaves_stable_faulted_joints_alone()
    {
        var faulting = Distress(DistressType.Faulting) with { Faulting = 0.5 * Inch };
        var decision = DecideOne(Set("missouri"), faulting);
        Assert.Equal((Treatment.Leave, "MODOT-EPG-613"), (decision.Treatment, decision.Reasons[0].Source.Tag));
        var crack = Distress(DistressType.TransverseCracking, Severity.Low);
        Assert.Equal(Treatment.Leave, DecideOne(Set("missouri"), crack).Treatment);
        Assert.Equal(Treatment.Seal, DecideOne(Common, crack).Treatment);
    }

    /// <summary>Ohio DOT CMS 2010, sec. 255.05: tie bars or hook bolts in patches of 10 ft or longer.</summary>
    [Fact]
    public void Ohio_ties_from_10_ft() => Assert.Equal(10 * Foot, Set("ohio").Joints.TieLongitudinalFrom!.Value, 12);

    /// <summary>WSDOT 2013: 1.5 in dowels at 12 in centres over the full width.</summary>
    [Fact]
    public void Washington_dowels()
    {
        var joints = Set("washington").Joints;
        Assert.Equal((1.5 * Inch, 12 * Inch), (joints.LeastDowelDiameter.Value, joints.DowelSpacing.Value));
        Assert.Null(joints.DowelsPerWheelPath);
    }

    /// <summary>Caltrans MTAG ch. 8: 6 ft least length, close repairs grow to the slab. Sec. 41-9: no dowels in new contraction joints.</summary>
    [Fact]
    public void California_grows_close_repairs_to_the_slab()
    {
        var california = Set("california");
        Assert.Equal(6 * Foot, california.Boundaries.LeastLength.Value, 12);
        Assert.False(california.Joints.DowelIntermediateJoints.Value);
        Distress[] two = [Distress(DistressType.CornerBreak, Severity.Low, id: "A"), Distress(DistressType.CornerBreak, Severity.Low, id: "B")];
        Assert.All(Decide(california, Road(), two).Decisions, d => Assert.Equal(Treatment.SlabReplacement, d.Treatment));
        Assert.Equal(Treatment.FullDepthRepair, DecideOne(california, two[0]).Treatment);
    }

    /// <summary>FDOT District 2, 2012: by the slab, joint spacing 15 ft, tie bars normally left out. WSDOT: by the panel.</summary>
    [Theory]
    [InlineData("florida")]
    [InlineData("washington")]
    public void Florida_and_Washington_work_by_the_slab(string id)
    {
        var corner = Distress(DistressType.CornerBreak, Severity.Low);
        Assert.Equal(Treatment.SlabReplacement, DecideOne(Set(id), corner).Treatment);
        Assert.Equal(Treatment.FullDepthRepair, DecideOne(Set(id), corner, Road(kind: PavementKind.JointedReinforced)).Treatment);
        Assert.Equal(15 * Foot, Set("florida").Boundaries.LongestUnjointed!.Value, 12);
        Assert.Null(Set("florida").Joints.TieLongitudinalFrom);
    }

    /// <summary>UFC 3-270-04 (2001) sec. 4.3: the lesser of 10 ft and half the slab, 2 ft to a joint, part only within one half.</summary>
    [Fact]
    public void Defense_manual_of_2001()
    {
        var limits = Set("dod-2001").Boundaries;
        Assert.Equal((10 * Foot, 2 * Foot), (limits.LeastLength.Value, limits.LeastRemnant!.Value));
        Assert.True(limits.LeastLengthOrHalfSlab!.Value && limits.PartOnlyWithinHalfSlab!.Value);
        Assert.Null(limits.WholeSlabBelow);
        Assert.Contains(Set("dod-2001").Offered, o => o.Key == "boundaries.whole_slab_below" && o.Value == "20 ft");
    }

    /// <summary>Iowa SUDAS 5G-2: slabs at most 24 thicknesses long on granular base, 21 on stabilised.</summary>
    [Fact]
    public void Iowa_spacing_by_thickness()
    {
        Assert.Equal(24, Common.Boundaries.UnjointedThicknessesGranular!.Value);
        Assert.Equal(21, Common.Boundaries.UnjointedThicknessesTreated!.Value);
    }

    /// <summary>Every published alternative differs from common practice in something, else it would be no alternative.</summary>
    [Fact]
    public void Every_alternative_differs_from_common_practice() => Assert.All(
        PublishedRuleSets.All.Skip(1),
        set => Assert.True(
            !set.Treatments.Select(r => (r.Id, r.On)).SequenceEqual(Common.Treatments.Select(r => (r.Id, r.On)))
            || set.Boundaries != Common.Boundaries || set.Joints != Common.Joints, set.Id));
}
