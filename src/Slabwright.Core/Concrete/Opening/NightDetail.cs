using System.Collections.Immutable;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>The hottest the concrete gets by the forecast.</summary>
/// <param name="Temperature">Temperature, °C.</param> <param name="Hours">Hours after placing.</param> <param name="Place">Where.</param>
public sealed record ConcretePeak(double Temperature, double Hours, SlabPlace Place);

/// <summary>What else is asked about a mix on a night beside its opening.</summary>
/// <param name="Row">The mix on the night.</param>
/// <param name="Peak">Hottest concrete; null without a forecast.</param>
public sealed record NightDetail(MixNight Row, ConcretePeak? Peak)
{
    /// <summary>Works the rest out.</summary>
    /// <param name="study">The concrete of the job.</param> <param name="row">The mix on the night.</param>
    public static NightDetail Of(ConcreteStudy study, MixNight row) =>
        new(row, row.Forecast is { } forecast && study.Job.Heat is { } heat ? PeakOf(heat, forecast.Case.Heat) : null);

    private static ConcretePeak PeakOf(ISlabHeat heat, HeatCase heatCase)
    {
        var (place, top) = heat.Run(heatCase).Select(p => (p.Place, Top: p.History.MaxBy(t => t.Temperature))).MaxBy(p => p.Top.Temperature);
        return new(top.Temperature, top.Hours, place);
    }
}

/// <summary>The place of a repair that lags behind.</summary>
public static class GoverningPlace
{
    /// <summary>The place that lags behind some hours after placing.</summary>
    /// <param name="forecast">The forecast.</param> <param name="hours">Hours after placing.</param>
    public static SlabPlace At(OpeningForecastResult forecast, double hours) =>
        (forecast.Hours.LastOrDefault(h => h.Hours <= hours + 1e-9 && h.Hours > 0) ?? forecast.Hours[^1]).Governs;
}
