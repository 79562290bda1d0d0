using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Numerics.Heat;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>The surface laws of a grid, twice: a step needs each at two times.</summary>
internal sealed class RoadSurfaces
{
    private readonly ISurfaceLaw[] early;
    private readonly ISurfaceLaw[] late;
    private readonly Func<HeatGrid, double, double>? ends;

    /// <param name="law">Makes the law of a number.</param> <param name="count">How many laws.</param>
    /// <param name="ends">Sets the links at open ends for a step that starts at a time and returns the air beyond, °C; null where they are insulated.</param>
    public RoadSurfaces(Func<int, ISurfaceLaw> law, int count, Func<HeatGrid, double, double>? ends = null)
    {
        early = [.. Enumerable.Range(0, count).Select(law)];
        late = [.. Enumerable.Range(0, count).Select(law)];
        this.ends = ends;
    }

    /// <summary>One surface under some weather.</summary>
    public static RoadSurfaces Of(SurfaceSettings settings, CoverSchedule covers, WeatherSeries weather, DateTime placed) =>
        new(_ => new SurfaceBalance(settings, covers, weather, placed), 1);

    /// <summary>Moves a grid on.</summary>
    public void Step(HeatGrid grid, double time, double length) => grid.Step(time, length, early, late, ends?.Invoke(grid, time + length / 2) ?? 0);
}
