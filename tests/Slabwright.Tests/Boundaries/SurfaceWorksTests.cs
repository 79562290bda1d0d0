using Slabwright.Core.Boundaries;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using Slabwright.Tests.Treatments;
using static Slabwright.Tests.Treatments.Sample;

namespace Slabwright.Tests.Boundaries;

public class SurfaceWorksTests
{
    [Fact]
    public void A_spall_becomes_a_partial_depth_repair_with_3_in_around_it()
    {
        var spall = Distress(DistressType.TransverseJointSpalling, Severity.Low) with
        {
            Length = 4 * Foot, Width = 9 * Inch, Depth = 1 * Inch,
        };
        var work = Assert.Single(Works(spall));
        Assert.Equal(("P001", Treatment.PartialDepthRepair), (work.Id, work.Treatment));
        Assert.Equal(4.5 * Foot, work.Length, 9);
        Assert.Equal(4.5 * Foot * 12 * Inch, work.Area, 9);
        Assert.Equal(1 * Foot, work.To - work.From, 9);
    }

    [Fact]
    public void A_joint_without_a_recorded_length_is_sealed_across_the_lane_and_the_numbers_follow_the_road()
    {
        var far = Distress(DistressType.TransverseCracking, Severity.Low, 9, "far");
        var near = Distress(DistressType.TransverseCracking, Severity.Low, 3, "near") with { Length = 2, Count = 2 };
        var works = Works(far, near);
        Assert.Equal(["S001 near", "S002 far"], works.Select(w => $"{w.Id} {w.DistressIds[0]}"));
        Assert.Equal([4, 12 * Foot], works.Select(w => w.Length));
        Assert.All(works, w => Assert.Equal(0, w.Area));
    }

    [Fact]
    public void Work_inside_a_repair_comes_out_with_it()
    {
        var crack = Distress(DistressType.TransverseCracking, Severity.Low);
        var repair = new Repair
        {
            Id = "R001", Lane = 1, From = crack.From - 1, To = crack.To + 1, Width = 3.6, Thickness = 0.2, Kind = Treatment.FullDepthRepair,
            Start = new RepairJoint(crack.From - 1, JointDesign.Dowelled, false, 11),
            End = new RepairJoint(crack.To + 1, JointDesign.Dowelled, false, 11),
            LeftFace = [], RightFace = [], DistressIds = [], Reasons = [],
        };
        var decisions = Decide(Common, Road(), crack).Decisions;
        Assert.Empty(SurfaceWorks.From(Road(), Survey(crack), decisions, [repair]));
        Assert.Single(SurfaceWorks.From(Road(), Survey(crack), decisions, [repair with { To = crack.To - 0.5 }]));
    }

    private static IReadOnlyList<SurfaceWork> Works(params Distress[] distresses) =>
        SurfaceWorks.From(Road(), Survey(distresses), Decide(Common, Road(), distresses).Decisions);
}
