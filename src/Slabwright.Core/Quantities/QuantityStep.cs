using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Quantities;

/// <summary>The whole step without its cost range: take-off, bid schedule and group totals.</summary>
public static class QuantityStep
{
    /// <summary>Measures a plan and sums it; <see cref="QuantityResult.Range"/> is left null.</summary>
    public static QuantityResult Run(
        Road road,
        IReadOnlyList<Repair> repairs,
        IReadOnlyList<SurfaceWork> surfaceWorks,
        PriceList prices,
        JointLimits joints,
        MeasurementSettings settings)
    {
        ImmutableArray<TakeOffLine> takeOff = TakeOff.Measure(road, repairs, surfaceWorks, prices, joints, settings);
        return new QuantityResult(
            takeOff,
            BidSchedules.Build(takeOff, prices),
            GroupTotals.ByKind(takeOff, repairs, surfaceWorks),
            GroupTotals.ByStation(takeOff, repairs, surfaceWorks, road, settings.StationRange),
            null);
    }
}
