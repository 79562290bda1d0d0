using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Measures;
using Slabwright.Core.Quantities;
using Slabwright.Tests.Quantities;

namespace Slabwright.Tests.Laws;

/// <summary>The working printed beside every quantity must give the quantity when somebody works it out again.</summary>
public class WorkingLaws
{
    private static readonly Gen<Repair> Repairs =
        from length in Gen.Int[12, 400]
        from width in Gen.Int[18, 30]
        from left in Gen.Enum<LongitudinalFace>()
        from right in Gen.Enum<LongitudinalFace>()
        from design in Gen.Enum<JointDesign>()
        from bars in Gen.Int[0, 12]
        select SampleWork.Repair(100, 100 + length / 4.0, width / 2.0, left: left, right: right, design: design, bars: bars);

    [Fact]
    public void Every_working_evaluates_to_its_quantity() => Repairs.Sample(
        repair =>
        {
            var settings = SampleWork.Settings with { LooseBaseShare = 0.2, LooseBaseDepth = 0.25 * SampleWork.Foot };
            var prices = SampleWork.FullList();
            foreach (var line in TakeOff.Measure(SampleWork.Road(), [repair], [], prices, SampleWork.Joints, settings))
            {
                var working = line.Working.Split(';')[0].Split('=')[0];
                Assert.True(Math.Abs(Evaluate(working) - line.Measured) < 0.006, $"{line.ItemCode}: {line.Working} against {line.Measured}");
            }
        },
        seed: "0000KOIPSQsT", iter: 500);

    [Fact]
    public void Sawing_two_lanes_together_never_costs_more_than_apart_and_saves_the_shared_edge() => Gen.Int[12, 400].Sample(
        quarterFeet =>
        {
            var length = quarterFeet / 4.0;
            var apart = 2 * LongSaw(SampleWork.Repair(0, length));
            var together = LongSaw(SampleWork.Repair(0, length, right: LongitudinalFace.SharedWithRepair))
                + LongSaw(SampleWork.Repair(0, length, lane: 2, left: LongitudinalFace.SharedWithRepair));
            Assert.Equal(length, apart - together, 9);
        },
        seed: "0000KOIPSQsT", iter: 200);

    private static double LongSaw(Repair repair)
    {
        var prices = new Slabwright.Core.Prices.PriceList(
            "USD", [SampleWork.Item(Slabwright.Core.Prices.PayRole.LongitudinalSawCut, Units.Foot, 5)]);
        return TakeOff.Measure(SampleWork.Road(), [repair], [], prices, SampleWork.Joints, SampleWork.Settings).Sum(l => l.Measured);
    }

    /// <summary>Sums of products, with brackets around a sum that is divided; words and units are skipped.</summary>
    private static double Evaluate(string working)
    {
        var divided = Regex.Match(working, @"^\((?<sum>.*)\) ÷ (?<by>[\d.]+)");
        if (divided.Success) return Evaluate(divided.Groups["sum"].Value) / Number(divided.Groups["by"].Value);
        return working.Split('+').Sum(Product);
    }

    private static double Product(string text)
    {
        var factors = text.Split('÷');
        var product = factors[0].Split('×').Aggregate(1.0, (p, f) => p * Number(f));
        return factors.Skip(1).Aggregate(product, (p, f) => p / Number(f));
    }

    private static double Number(string text) =>
        double.Parse(Regex.Match(text, @"\d+(\.\d+)?").Value, CultureInfo.InvariantCulture);
}
