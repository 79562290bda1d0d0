using Slabwright.Core.Joints.Faulting;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Design;

/// <summary>Faulting of a joint over the years by the closed regressions of the AASHTO 1998 supplement; for ranking alternatives.</summary>
/// <param name="conditions">The build-up.</param>
/// <param name="bars">The bars; null for none.</param>
internal sealed class FaultingForecast(JointConditions conditions, BarLayout? bars)
{
    private const double LongestLife = 100;

    private readonly double _bearing = bars is null ? 0 : StandardBearing(conditions, bars);

    /// <summary>Mean faulting after some years, m. Where the regression falls below nought, outside what it was fitted to, it counts as none.</summary>
    public double After(double years) => years <= 0 ? 0 : Math.Max(0, Raw(years));

    /// <summary>Years until a faulting is reached, to a hundredth; infinity where not within a hundred years.</summary>
    public double LifeUpTo(double limit)
    {
        if (After(LongestLife) <= limit) return double.PositiveInfinity;
        var (low, high) = (0.0, LongestLife);
        while (high - low > 0.005)
        {
            var middle = (low + high) / 2;
            if (After(middle) > limit) high = middle;
            else low = middle;
        }

        return Math.Round(low, 2);
    }

    private double Raw(double years)
    {
        var inputs = Inputs(years);
        return bars is null ? FaultingRegression.Aashto1998Undowelled(inputs) : FaultingRegression.Aashto1998Dowelled(inputs);
    }

    private RegressionInputs Inputs(double years) => new()
    {
        EquivalentAxles = conditions.EquivalentAxlesPerDay * 365.25 * EquivalentAxles.GrowthFactor(conditions.Growth, years),
        Age = years,
        Drainage = conditions.Drainage,
        Bearing = _bearing,
        JointSpacing = conditions.OldSlab,
        Thickness = conditions.Thickness,
        FreezingIndex = conditions.Climate.FreezingIndex ?? 0,
        Precipitation = conditions.Climate.AnnualPrecipitation ?? 0,
        StabilisedBase = JointConditionsBuilder.Stabilised(conditions.Base),
        EdgeSupport = conditions.OuterEdge is LaneEdge.TiedLane or LaneEdge.TiedConcreteShoulder,
        Reaction = conditions.Reaction,
        DowelDiameter = bars?.Diameter ?? 0,
    };

    /// <summary>
    /// Bearing as the regression defines it for a full row at 12 in, times what such a row shares out over what these bars do: the outermost
    /// bar under the wheel, a reach of one radius of relative stiffness.
    /// </summary>
    private static double StandardBearing(JointConditions c, BarLayout bars)
    {
        var restraint = JointConditionsBuilder.Restraint(c.Base);
        var opening = FaultingRegression.Opening(restraint, c.OldSlab, c.Expansion, c.Temperatures.Hottest - c.Temperatures.Coldest);
        var full = DowelBar.GroupSum(12 * 0.0254, c.Radius, 1);
        return FaultingRegression.BearingStress(bars.Diameter, c.Radius, opening) * full / SharedOut(c, bars);
    }

    /// <summary>Sum of the shares of the bars when the outermost takes 1: it takes one over this of the load.</summary>
    internal static double SharedOut(JointConditions c, BarLayout bars) =>
        bars.Offsets.Sum(x => Math.Max(0, 1 - (bars.Offsets[^1] - x) / c.Radius));
}
