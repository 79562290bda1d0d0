using Slabwright.Core.Measures;
using Slabwright.Core.Prices;
using Slabwright.Core.Quantities;
using Slabwright.Tests.Quantities;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Iowa SUDAS 7040 (2013): full-depth patches by the square yard, a patch under 2 yd² paid as 2 yd². Areas worked by hand; the
/// 4 × 12 ft patch is the size of the I-64 York County night patches (Daily Press, 10 October 2006). Deviation 0.
/// </summary>
public class IowaUrbanMeasurementTests
{
    [Theory]
    [InlineData(6, 12, 8.0, "6.0 ft × 12.0 ft ÷ 9 = 8.00 yd2")]
    [InlineData(15, 12, 20.0, "15.0 ft × 12.0 ft ÷ 9 = 20.00 yd2")]
    [InlineData(4, 12, 16.0 / 3, "4.0 ft × 12.0 ft ÷ 9 = 5.33 yd2")]
    [InlineData(4, 4, 2.0, "4.0 ft × 4.0 ft ÷ 9 = 1.78 yd2; paid as 2.00 yd2, the least")]
    public void Patches_by_the_square_yard(double lengthFeet, double widthFeet, double squareYards, string working)
    {
        var item = SampleWork.Item(PayRole.FullDepthArea, Units.SquareYard, 250) with { LeastPay = 2 };
        var line = Assert.Single(TakeOff.Measure(
            SampleWork.Road(), [SampleWork.Repair(0, lengthFeet, widthFeet)], [], new PriceList("USD", [item]),
            SampleWork.Joints, SampleWork.Settings));
        Assert.Equal(squareYards, line.Measured, 9);
        Assert.Equal(working, line.Working);
    }
}
