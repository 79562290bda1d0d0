using Slabwright.Core.Pavement;
using Slabwright.Core.Quantities;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Present worth and equal cost per year as in FHWA-RD-02-095 App. I. The factor table is worked by hand to four and five digits; it
/// agrees with any compound interest table. Deviation: rounding.
/// </summary>
public class EngineeringEconomyTests
{
    [Theory]
    [InlineData(5, 0.8626, 0.8219, 0.7835, 0.22463)]
    [InlineData(10, 0.7441, 0.6756, 0.6139, 0.12329)]
    [InlineData(15, 0.6419, 0.5553, 0.4810, 0.08994)]
    [InlineData(20, 0.5537, 0.4564, 0.3769, 0.07358)]
    [InlineData(30, 0.4120, 0.3083, 0.2314, 0.05783)]
    [InlineData(40, 0.3066, 0.2083, 0.1420, 0.05052)]
    public void Factors(double years, double at3, double at4, double at5, double perYear)
    {
        Assert.Equal(at3, LifeCycleCost.PresentWorth(1, 0.03, years), 0.00005);
        Assert.Equal(at4, LifeCycleCost.PresentWorth(1, 0.04, years), 0.00005);
        Assert.Equal(at5, LifeCycleCost.PresentWorth(1, 0.05, years), 0.00005);
        Assert.Equal(perYear, LifeCycleCost.PerYear(1, 0.04, years), 0.000005);
    }

    [Fact]
    public void Repairs_at_ten_and_twenty_years()
    {
        var worth = 100 + LifeCycleCost.PresentWorth(60, 0.04, 10) + LifeCycleCost.PresentWorth(60, 0.04, 20);
        Assert.Equal(167.92, worth, 0.005);
        Assert.Equal(9.71, LifeCycleCost.PerYear(worth, 0.04, 30), 0.005);
    }

    [Fact]
    public void A_ten_year_repair_may_cost_47_percent_of_a_thirty_year_one() =>
        Assert.Equal(0.4691, LifeCycleCost.EqualCostShare(0.04, 10, 30), 0.00005);

    [Theory]
    [InlineData(0.02, 24.297)]
    [InlineData(0.03, 26.870)]
    [InlineData(0.04, 29.778)]
    [InlineData(0.05, 33.066)]
    public void Traffic_growth_over_twenty_years(double growth, double factor) =>
        Assert.Equal(factor, EquivalentAxles.GrowthFactor(growth, 20), 0.0005);

    [Fact]
    public void Without_interest_costs_simply_add_up()
    {
        Assert.Equal(10, LifeCycleCost.PerYear(100, 0, 10), 12);
        Assert.Equal(20, EquivalentAxles.GrowthFactor(0, 20), 12);
    }
}
