namespace Slabwright.Core.Quantities;

/// <summary>Present worth and its equivalent per year. Rates as shares, time in years, money in any currency.</summary>
/// <remarks>Source: standard engineering economy; form in FHWA-RD-02-095 App. I eq. 72–73.</remarks>
public static class LifeCycleCost
{
    /// <summary>Present worth of one sum: A/(1 + r)^t.</summary>
    public static double PresentWorth(double amount, double rate, double years) => amount / Math.Pow(1 + rate, years);

    /// <summary>Sum per year over a number of years with the same present worth: NPV r(1 + r)^n/[(1 + r)^n − 1].</summary>
    public static double PerYear(double presentWorth, double rate, double years)
    {
        if (rate == 0) return presentWorth / years;
        var growth = Math.Pow(1 + rate, years);
        return presentWorth * rate * growth / (growth - 1);
    }

    /// <summary>Share of a longer-lived alternative's cost that a shorter-lived one may cost at most, for equal cost per year.</summary>
    public static double EqualCostShare(double rate, double shortYears, double longYears) =>
        PerYear(1, rate, longYears) / PerYear(1, rate, shortYears);

    /// <summary>Real rate from interest and inflation: (1 + i)/(1 + f) − 1.</summary>
    public static double RealRate(double interest, double inflation) => (1 + interest) / (1 + inflation) - 1;

    /// <summary>
    /// Gap between two repairs below which one repair is cheaper, m: what the two joints and a set-up cost over the cost of the gap per
    /// length.
    /// </summary>
    /// <remarks>Our own break-even in the shape repair-practice guidance describes (saw, dowels and seal of two joints against removal).</remarks>
    /// <param name="jointCost">Cost of one end joint: saw cut, dowels, seal.</param> <param name="setUp">Set-up of one repair.</param>
    /// <param name="areaPrice">Removal and concrete, per m².</param> <param name="sidePrice">Work along both sides, per m of repair.</param>
    /// <param name="width">Lane width, m.</param>
    public static double JoinGap(double jointCost, double setUp, double areaPrice, double sidePrice, double width) =>
        (2 * jointCost + setUp) / (areaPrice * width + sidePrice);
}
