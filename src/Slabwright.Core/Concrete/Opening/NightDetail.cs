using System.Collections.Immutable;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>The hottest the concrete gets by the forecast.</summary>
/// <param name="Temperature">Temperature, °C.</param> <param name="Hours">Hours after placing.</param> <param name="Place">Where.</param>
public sealed record ConcretePeak(double Temperature, double Hours, SlabPlace Place);

/// <summary>What else is asked about a mix on a night beside its opening.</summary>
/// <param name="Row">The mix on the night.</param>
/// <param name="Peak">Hottest concrete; null without a forecast.</param>
/// <param name="Saw">When a joint inside the repair can be sawn; null without a forecast.</param>
/// <param name="WhatIfs">The questions everyone asks; empty without a forecast.</param>
public sealed record NightDetail(MixNight Row, ConcretePeak? Peak, SawWindow? Saw, ImmutableArray<WhatIfAnswer> WhatIfs)
{
    /// <summary>Works the rest out.</summary>
    /// <param name="study">The concrete of the job.</param> <param name="row">The mix on the night.</param>
    public static NightDetail Of(ConcreteStudy study, MixNight row) => new(
        row, row.Forecast is { } forecast && study.Job.Heat is { } heat ? PeakOf(heat, forecast.Case.Heat) : null,
        study.SawWindow(row.Night, row.Mix, NightChange.None), study.WhatIf(row.Night, row.Mix, NightChange.None));

    private static ConcretePeak PeakOf(ISlabHeat heat, HeatCase heatCase)
    {
        var (place, top) = heat.Run(heatCase).Select(p => (p.Place, Top: p.History.MaxBy(t => t.Temperature))).MaxBy(p => p.Top.Temperature);
        return new(top.Temperature, top.Hours, place);
    }
}
