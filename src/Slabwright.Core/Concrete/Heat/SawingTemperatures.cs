using System.Collections.Immutable;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Joints.Removal;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>Temperatures of the old slab through a day: what binds a saw.</summary>
public static class SawingTemperatures
{
    /// <summary>
    /// Temperatures of the old slab from an hour on, found by running the old road through the weather before. The plate values of the
    /// history give mean and difference over the depth.
    /// </summary>
    /// <param name="column">Thickness, ground and surface; hydration and covers play no part.</param>
    /// <param name="weather">Weather.</param> <param name="from">Local standard time.</param> <param name="duration">Seconds.</param>
    public static TemperatureHistory OldSlab(SlabColumn column, WeatherSeries weather, DateTime from, double duration)
    {
        var old = column with { Hydration = null, Concrete = column.Old, Covers = CoverSchedule.Dry };
        var run = new HeatRun { Weather = weather, Placed = from, PlacingTemperature = double.NaN, Duration = duration, Every = 900 };
        return old.Continue(run);
    }

    /// <summary>Mean temperature of the old slab in each hour of a day, as the pressure plan takes it; hours the weather does not reach are left out.</summary>
    /// <param name="column">Thickness, ground and surface.</param> <param name="weather">Weather.</param> <param name="day">The day.</param>
    public static ImmutableArray<HourTemperature> ByHour(SlabColumn column, WeatherSeries weather, DateOnly day)
    {
        var midnight = day.ToDateTime(TimeOnly.MinValue);
        var start = weather.Start > midnight && weather.Start < midnight.AddDays(1) ? weather.Start.AddMinutes((60 - weather.Start.Minute) % 60) : midnight;
        var history = OldSlab(column, weather, start, (midnight.AddDays(1) - start).TotalSeconds);
        return
        [
            .. history.Plate.Where(p => p.Time > 0)
                .GroupBy(p => start.AddSeconds(p.Time - 1).Hour)
                .Where(g => g.Count() == 4)
                .Select(g => new HourTemperature(g.Key, g.Average(p => p.Mean))),
        ];
    }
}
