using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Prices;
using Slabwright.Core.Quantities;
using static Slabwright.Tests.Quantities.SampleWork;

namespace Slabwright.Tests.Quantities;

public class PriceListCheckTests
{
    private static Finding Only(params PayItem[] items) => Assert.Single(PriceListCheck.Check(new PriceList("USD", [.. items]), "prices.csv"));

    private static readonly PayItem Saw = Item(PayRole.TransverseSawCut, Units.Foot, 5);

    [Fact]
    public void A_sound_list_has_no_findings() => Assert.Empty(PriceListCheck.Check(FullList()));

    [Fact]
    public void A_unit_of_the_wrong_kind_names_row_field_and_mend()
    {
        var finding = Only(Saw, Item(PayRole.FullDepthArea, Units.Foot, 200));
        Assert.Equal("QTY-001", finding.Code);
        Assert.Equal(new FindingPlace("prices.csv", 3, "unit"), finding.Place);
        Assert.Equal("Give a unit of area.", finding.Mend);
    }

    [Fact]
    public void Negative_and_zero_prices()
    {
        Assert.Equal("QTY-002", Only(Saw with { UnitPrice = -1 }).Code);
        Assert.Equal("QTY-011", Only(Saw with { UnitPrice = 0 }).Code);
    }

    [Fact]
    public void Size_classes_start_at_zero_rise_and_usually_get_cheaper()
    {
        var area = Item(PayRole.FullDepthArea, Units.SquareYard, 200);
        Assert.Equal("QTY-003", Only(area with { SizeClasses = [new(5, 200), new(9, 100)] }).Code);
        Assert.Equal("QTY-003", Only(area with { SizeClasses = [new(0, 200), new(9, 150), new(9, 100)] }).Code);
        Assert.Equal("QTY-013", Only(area with { SizeClasses = [new(0, 200), new(9, 250)] }).Code);
        Assert.Equal("QTY-012", Only(Saw with { SizeClasses = [new(0, 5), new(9, 4)] }).Code);
    }

    [Fact]
    public void Codes_are_unique_and_roles_pay_once()
    {
        Assert.Equal("QTY-004", Only(Saw, Saw with { Role = PayRole.InternalSawCut }).Code);
        Assert.Equal("QTY-005", Only(Saw, Saw with { Code = "other" }).Code);
        var sum = Item(PayRole.LumpSum, Each, 1000, "mobilisation");
        Assert.Empty(PriceListCheck.Check(new PriceList("USD", [sum, sum with { Code = "signs" }])));
    }

    [Theory]
    [InlineData(0, 0, 1, 1, "QTY-006")]
    [InlineData(1, -1, 1, 1, "QTY-006")]
    [InlineData(1, 0, 1.1, 1.2, "QTY-007")]
    [InlineData(1, 0, 0.9, 0.95, "QTY-007")]
    [InlineData(1, 0, 0, 1, "QTY-007")]
    public void Rounding_least_pay_and_range(double roundTo, double leastPay, double low, double high, string code) =>
        Assert.Equal(code, Only(Saw with { RoundTo = roundTo, LeastPay = leastPay, LowShare = low, HighShare = high }).Code);

    [Fact]
    public void Work_no_item_pays_for_is_told()
    {
        var prices = FullList() with { };
        prices = prices with { Items = prices.Items.RemoveAll(i => i.Role is PayRole.IsolationBoard or PayRole.TrafficControlNight) };
        var finding = Assert.Single(QuantityFindings.For([Repair(0, 6)], [], prices, Joints, Settings));
        Assert.Equal(("QTY-008", "IsolationBoard"), (finding.Code, finding.Value));
    }

    [Fact]
    public void Unplanned_nights_and_an_assumed_tie_spacing_are_told()
    {
        var joints = Joints with { TieBarSpacing = null };
        var codes = QuantityFindings.For([Repair(0, 16, left: LongitudinalFace.Tied)], [], FullList(), joints, Settings).Select(f => f.Code);
        Assert.Equal(["QTY-009", "QTY-010"], codes);
        Assert.Empty(QuantityFindings.For([Repair(0, 16)], [], FullList(), Joints, Settings with { Nights = 3 }));
    }
}
