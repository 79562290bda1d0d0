using Slabwright.Core.Boundaries;
using Slabwright.Core.Measures;
using Slabwright.Core.Prices;
using Slabwright.Core.Quantities;
using Slabwright.Tests.Quantities;

namespace Slabwright.Tests.Reference;

/// <summary>
/// MoDOT Engineering Policy Guide 613.1: saw cuts by length, the joint between lanes once. Expected lengths are worked by hand from
/// that rule (tags MO-EPG in docs/sources.md); deviation 0.
/// </summary>
public class MissouriMeasurementTests
{
    private static readonly PriceList Saws = new("USD",
    [
        SampleWork.Item(PayRole.TransverseSawCut, Units.Foot, 5),
        SampleWork.Item(PayRole.LongitudinalSawCut, Units.Foot, 5),
    ]);

    private static double SawLength(params Repair[] repairs) => TakeOff
        .Measure(SampleWork.Road(), repairs, [], Saws, SampleWork.Joints, SampleWork.Settings).Sum(l => l.Measured);

    [Fact]
    public void Ten_feet_over_two_lanes_is_78_feet_of_saw_cut_not_88()
    {
        var left = SampleWork.Repair(0, 10, lane: 1, id: "R001", right: LongitudinalFace.SharedWithRepair);
        var right = SampleWork.Repair(0, 10, lane: 2, id: "R002", left: LongitudinalFace.SharedWithRepair);
        Assert.Equal(78, SawLength(left, right), 9);

        var alone = SampleWork.Repair(0, 10);
        Assert.Equal(88, SawLength(alone) + SawLength(alone), 9);
    }

    [Fact]
    public void Eight_feet_in_one_lane_is_40_feet() => Assert.Equal(40, SawLength(SampleWork.Repair(0, 8)), 9);
}
