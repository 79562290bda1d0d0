using System.Collections.Concurrent;
using System.Collections.Immutable;
using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>
/// Temperatures under a weather series: down a column, or along a section through a repair of a length, whose edges and corners are then
/// reported too. May be called on many threads; road temperatures at placing are found once for each time of placing.
/// </summary>
public sealed class WeatherSlabHeat : ISlabHeat
{
    private const double Hour = 3600;

    private readonly ConcurrentDictionary<(DateTime Placed, double Thickness), Lazy<GroundProfile>> _before = new();
    private readonly WeatherSeries _forecast;

    /// <summary>Temperatures under some weather.</summary>
    /// <param name="weather">Weather from some days before the first placing on.</param>
    public WeatherSlabHeat(WeatherSeries weather) => _forecast = weather;

    /// <summary>Length of the repair, m: a section is computed; null: a column.</summary>
    public double? RepairLength { get; init; }

    /// <summary>Layers below the slab.</summary>
    public ImmutableArray<GroundLayer> Ground { get; init; } = GroundLayer.Usual;

    /// <summary>Coefficients of the surface.</summary>
    public SurfaceSettings Surface { get; init; } = SurfaceSettings.Default;

    /// <summary>Hours between the times of the answer.</summary>
    public double Every { get; init; } = 0.5;

    /// <inheritdoc/>
    public ImmutableArray<PlaceHistory> Run(HeatCase heatCase)
    {
        var history = History(heatCase);
        var hours = history.Times.Select(t => t / Hour).ToArray();
        return
        [
            .. history.Points.Select(p => (Point: p, Place: PlaceOf(p.Name))).Where(p => p.Place is not null).Select(p =>
                new PlaceHistory(p.Place!.Value, [.. p.Point.Temperatures.Select((t, i) => new ConcreteTemperature(hours[i], t))])),
        ];
    }

    /// <summary>The whole computation behind a case, for maps and balances.</summary>
    /// <param name="heatCase">The case.</param> <param name="keepFields">True to keep the whole section at each time.</param>
    public TemperatureHistory History(HeatCase heatCase, bool keepFields = false) => Compute(heatCase, RepairLength, keepFields);

    /// <summary>The section through a repair of the length the case names, old slabs at both ends.</summary>
    /// <param name="heatCase">The case.</param> <param name="keepFields">True to keep the whole section at each time.</param>
    public TemperatureHistory Section(HeatCase heatCase, bool keepFields = false) => Compute(heatCase, heatCase.RepairLength, keepFields);

    private TemperatureHistory Compute(HeatCase heatCase, double? length, bool keepFields)
    {
        var column = ColumnOf(heatCase);
        var before = _before.GetOrAdd((heatCase.PlacedAt, heatCase.Thickness),
            key => new(() => column.SpinUp(RunOf(heatCase, _forecast))));
        var run = RunOf(heatCase, WeatherOf(heatCase)) with { Before = before.Value, KeepFields = keepFields };
        return length is { } along ? new SlabSection { Column = column, Length = along }.Run(run) : column.Run(run);
    }

    /// <summary>The column of a case.</summary>
    public SlabColumn ColumnOf(HeatCase heatCase)
    {
        var mix = heatCase.Mix;
        return new SlabColumn
        {
            Thickness = heatCase.Thickness,
            Hydration = MixHydration.Of(mix),
            Concrete = ConcreteHeat.Default with
            {
                Density = new Sourced<double>(mix.Density, SourceRef.Project),
                Ingredients = new HydratingHeat(mix.Cementitious, mix.Water, mix.Coarse + mix.Fine),
            },
            Ground = Ground,
            Surface = Surface,
            Covers = heatCase.Blanket is { } b ? CoverSchedule.WithBlanket(b.FromHours * Hour, b.ToHours * Hour, b.Resistance) : CoverSchedule.Compound,
        };
    }

    private HeatRun RunOf(HeatCase heatCase, WeatherSeries weather) => new()
    {
        Weather = weather, Placed = heatCase.PlacedAt, PlacingTemperature = heatCase.PlacingTemperature, Duration = heatCase.Hours * Hour, Every = Every * Hour,
        Step = Math.Min(Every * Hour, 900),
    };

    private WeatherSeries WeatherOf(HeatCase heatCase) => heatCase is { AirShift: 0, WindFactor: 1 }
        ? _forecast
        : _forecast.Between(heatCase.PlacedAt, heatCase.PlacedAt.AddHours(heatCase.Hours)).Shifted(heatCase.AirShift, heatCase.WindFactor);

    private static SlabPlace? PlaceOf(string name) => name switch
    {
        "top" => SlabPlace.Surface,
        "middle" => SlabPlace.MidDepth,
        "bottom" => SlabPlace.Bottom,
        _ when name.StartsWith("edge", StringComparison.Ordinal) => SlabPlace.Edge,
        _ when name.Contains("corner", StringComparison.Ordinal) => SlabPlace.Corner,
        _ => null,
    };
}

/// <summary>Hydration of a mix from what is in it.</summary>
public static class MixHydration
{
    /// <summary>
    /// The curve; null for special rapid cements, for which the published regressions do not hold: the slab then warms without heat of its
    /// own and the forecast is late. Non-chloride accelerators have no published factor and are left out.
    /// </summary>
    public static HydrationCurve? Of(ConcreteMix mix)
    {
        if (CementOf(mix.CementKind) is not { } cement || !(mix.Cementitious > 0)) return null;
        var all = mix.Cementitious;
        var binder = new Binder(cement, mix.WaterCement, mix.FlyAsh / all, mix.FlyAshLime, mix.Slag / all, mix.SilicaFume / all);
        var chloride = mix.Accelerator == Accelerator.CalciumChloride && mix.AcceleratorDose > 0
            ? AcceleratorFactor.CalciumChloride(Math.Min(mix.AcceleratorDose, 0.02), HydrationRegression.ActivationEnergy(binder))
            : null;
        return HydrationEstimate.From(binder, all, chloride);
    }

    private static CementComposition? CementOf(CementKind kind) => kind switch
    {
        CementKind.TypeI => CementComposition.TypeI,
        CementKind.TypeIi => CementComposition.TypeIi,
        CementKind.TypeIii => CementComposition.TypeIii,
        CementKind.TypeIv => CementComposition.TypeIv,
        CementKind.TypeV => CementComposition.TypeV,
        _ => null,
    };
}
