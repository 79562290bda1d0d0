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
/// Temperatures under a weather series: down a column, with the lag of edges and corners near a planned case (<see cref="Around"/>); or along a
/// whole section every time where <see cref="RepairLength"/> is set. May be called on many threads; road temperatures at placing are found
/// once for each time of placing.
/// </summary>
public sealed class WeatherSlabHeat : ISlabHeat
{
    private const double Hour = 3600;

    /// <summary>Planned cases remembered; sliders ask for many.</summary>
    private const int Remembered = 256;

    private readonly ConcurrentDictionary<(DateTime Placed, double Thickness), Lazy<GroundProfile>> _before = new();
    private readonly ConcurrentDictionary<HeatCase, Lazy<ISlabHeat>> _around = new();
    private readonly WeatherSeries _forecast;

    /// <summary>Temperatures under some weather.</summary>
    /// <param name="weather">Weather from some days before the first placing on.</param>
    public WeatherSlabHeat(WeatherSeries weather) => _forecast = weather;

    /// <summary>The weather.</summary>
    public WeatherSeries Weather => _forecast;

    /// <summary>Length of the repair, m: a section is computed; null: a column.</summary>
    public double? RepairLength { get; init; }

    /// <summary>Layers below the slab.</summary>
    public ImmutableArray<GroundLayer> Ground { get; init; } = GroundLayer.Usual;

    /// <summary>Coefficients of the surface.</summary>
    public SurfaceSettings Surface { get; init; } = SurfaceSettings.Default;

    /// <summary>Hydration fitted to measured heat, by mix; a mix without one is computed from what is in it.</summary>
    public ImmutableDictionary<string, HydrationCurve> Fitted { get; init; } = ImmutableDictionary<string, HydrationCurve>.Empty;

    /// <summary>Hours between the times of the answer.</summary>
    public double Every { get; init; } = 0.5;

    /// <inheritdoc/>
    public ImmutableArray<PlaceHistory> Run(HeatCase heatCase) => Places(History(heatCase));

    /// <summary>The same under other weather from placing on; before placing the road lay under the forecast.</summary>
    internal ImmutableArray<PlaceHistory> RunIn(HeatCase heatCase, WeatherSeries weather)
    {
        var column = ColumnOf(heatCase);
        return Places(column.Run(PlacedRun(heatCase, column) with { Weather = weather.Shifted(heatCase.AirShift, heatCase.WindFactor) }));
    }

    private static ImmutableArray<PlaceHistory> Places(TemperatureHistory history)
    {
        var hours = history.Times.Select(t => t / Hour).ToArray();
        return
        [
            .. history.Points.Select(p => (Point: p, Place: PlaceOf(p.Name))).Where(p => p.Place is not null).Select(p =>
                new PlaceHistory(p.Place!.Value, [.. p.Point.Temperatures.Select((t, i) => new ConcreteTemperature(hours[i], t))])),
        ];
    }

    /// <inheritdoc/>
    public ISlabHeat Around(HeatCase planned)
    {
        if (RepairLength is not null || planned.RepairLength is not > 0) return this;
        if (_around.Count > Remembered) _around.Clear();
        return _around.GetOrAdd(planned, key => new(() =>
        {
            var column = ColumnOf(key);
            return new LaggingSlabHeat(this, SectionLag.Of(column, PlacedRun(key, column), key.RepairLength!.Value, key.Form), Run(key), key.AirShift);
        })).Value;
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
        var run = PlacedRun(heatCase, column) with { KeepFields = keepFields };
        return length is { } along ? new SlabSection { Column = column, Length = along }.Run(run) : column.Run(run);
    }

    /// <summary>The column of a case.</summary>
    public SlabColumn ColumnOf(HeatCase heatCase)
    {
        var mix = heatCase.Mix;
        return new SlabColumn
        {
            Thickness = heatCase.Thickness,
            Hydration = HydrationOf(mix),
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

    /// <summary>Hydration of a mix: fitted to its measured heat where there is any, else from what is in it; null where neither holds.</summary>
    /// <param name="mix">The mix.</param>
    public HydrationCurve? HydrationOf(ConcreteMix mix) => Fitted.GetValueOrDefault(mix.Id) is { } fitted ? fitted with { Cementitious = mix.Cementitious } : MixHydration.Of(mix);

    /// <summary>The run of a case with the road's temperatures at placing found.</summary>
    private HeatRun PlacedRun(HeatCase heatCase, SlabColumn column)
    {
        if (_before.Count > Remembered) _before.Clear();
        var before = _before.GetOrAdd((heatCase.PlacedAt, heatCase.Thickness), key => new(() => column.SpinUp(RunOf(heatCase, _forecast))));
        return RunOf(heatCase, WeatherOf(heatCase)) with { Before = before.Value };
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
