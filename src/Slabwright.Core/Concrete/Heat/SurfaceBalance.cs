using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Numerics.Heat;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>
/// Heat into the road's surface under the weather: convection, sun taken up, long waves exchanged with the sky, evaporation while wet and above
/// −17 °C. Rain and condensation are left out.
/// </summary>
public sealed class SurfaceBalance : ISurfaceLaw
{
    private const double Instant = 1e-3;
    private const double Nudge = 1e-4;

    /// <summary>Below this, °C, water is ice and the evaporation formula does not hold.</summary>
    private const double Frozen = -17;

    private readonly SurfaceSettings settings;
    private readonly WeatherSeries weather;
    private readonly CoverSchedule covers;
    private readonly double start;
    private readonly double midnight;
    private readonly ConvectionLaw convection;
    private readonly double latent;
    private double air, humidity, wind, gained, emissivity, coefficient, evaporationWind, wet;

    /// <summary>A surface under some weather.</summary>
    /// <param name="settings">Coefficients.</param> <param name="covers">What lies on it; times count from placing.</param>
    /// <param name="weather">Weather.</param> <param name="placed">Local standard time from which the times of the run count.</param>
    public SurfaceBalance(SurfaceSettings settings, CoverSchedule covers, WeatherSeries weather, DateTime placed)
    {
        (this.settings, this.covers, this.weather) = (settings, covers, weather);
        start = weather.SecondsTo(placed);
        midnight = placed.TimeOfDay.TotalHours;
        convection = settings.Convection.Value;
        latent = settings.LatentHeat.Value / 3600;
    }

    /// <inheritdoc/>
    public double Resistance { get; private set; }

    /// <summary>Air temperature at the time set, °C.</summary>
    public double Air => air;

    /// <summary>Sets the time, s after placing. On the full hour the weather of the hour that ends holds, as a step that ends there needs it.</summary>
    public void Set(double time)
    {
        var now = weather.At(start + time - Instant);
        var cover = covers.At(time - Instant);
        (air, humidity, wind) = (now.Air, now.Humidity, now.Wind * settings.WindFactor.Value);
        Resistance = cover.Resistance;
        emissivity = convection == ConvectionLaw.Barber ? 0 : (cover.Emissivity ?? settings.Emissivity.Value);
        gained = (cover.Absorptivity ?? settings.Absorptivity.Value) * now.Sun
            + (emissivity > 0 ? emissivity * Sky.Incoming(settings.Sky.Value, now, midnight + time / 3600) : 0);
        coefficient = convection == ConvectionLaw.ForcedAndFree ? 0 : Convection.By(convection, wind, air, air);
        wet = cover.WetShare;
        evaporationWind = now.Wind * settings.EvaporationWindFactor.Value;
    }

    /// <inheritdoc/>
    public double Flux(double outer, out double slope)
    {
        var kelvin = outer + EquivalentAge.Freezing;
        var cube = emissivity * Sky.StefanBoltzmann * kelvin * kelvin * kelvin;
        var (h, growth) = convection == ConvectionLaw.ForcedAndFree ? Free(outer) : (coefficient, 0);
        slope = -h + growth * (air - outer) - 4 * cube;
        var flux = h * (air - outer) + gained - cube * kelvin;
        if (wet == 0 || outer < Frozen || air < Frozen) return flux;
        var rate = Evaporation.Rate(outer, air, humidity, evaporationWind);
        if (rate <= 0) return flux;
        slope -= latent * wet * (Evaporation.Rate(outer + Nudge, air, humidity, evaporationWind) - rate) / Nudge;
        return flux - latent * wet * rate;
    }

    /// <summary>Coefficient of the law by wind and warmth, and its growth with the surface temperature, which is left out where it has none.</summary>
    private (double Coefficient, double Growth) Free(double outer)
    {
        var h = Convection.ForcedAndFree(wind, outer, air);
        var apart = outer - air;
        return Math.Abs(apart) < 1e-3 ? (h, 0) : (h, (Convection.ForcedAndFree(wind, outer + 1e-4 * Math.Sign(apart), air) - h) / 1e-4 * Math.Sign(apart));
    }
}
