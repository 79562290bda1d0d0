using System.Collections.Immutable;
using Slabwright.Core.Concrete.Weather;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>What a run is asked: weather, placing and hours.</summary>
public sealed record HeatRun
{
    /// <summary>Weather.</summary>
    public required WeatherSeries Weather { get; init; }

    /// <summary>Local standard time of placing.</summary>
    public required DateTime Placed { get; init; }

    /// <summary>Concrete temperature when placed, °C.</summary>
    public required double PlacingTemperature { get; init; }

    /// <summary>Seconds to compute from placing on.</summary>
    public required double Duration { get; init; }

    /// <summary>Seconds between the times of the answer.</summary>
    public double Every { get; init; } = 3600;

    /// <summary>Longest time step, s. The first steps after placing are shorter.</summary>
    public double Step { get; init; } = 600;

    /// <summary>Temperatures of road and ground at placing; null: found by <see cref="SpinUp"/> on the weather before.</summary>
    public GroundProfile? Before { get; init; }

    /// <summary>Seconds of weather before placing that the old road is run through to find its temperatures.</summary>
    public double SpinUp { get; init; } = 14 * 86400;

    /// <summary>Temperature of the ground at the bottom of the model, °C; null: from the weather by the yearly wave.</summary>
    public double? Deep { get; init; }

    /// <summary>True to keep the whole section at each time of the answer.</summary>
    public bool KeepFields { get; init; }
}

/// <summary>Temperatures of the road from the surface down, in the cells of the column they were found with.</summary>
/// <param name="Depths">Middles of the cells, m.</param>
/// <param name="Temperatures">°C.</param>
/// <param name="Deep">Temperature at the bottom of the model, °C.</param>
public sealed record GroundProfile(ImmutableArray<double> Depths, ImmutableArray<double> Temperatures, double Deep)
{
    /// <summary>Temperature at a depth, straight between cells.</summary>
    public double At(double depth)
    {
        var i = 0;
        while (i < Depths.Length && Depths[i] < depth) i++;
        if (i == 0) return Temperatures[0];
        if (i == Depths.Length) return Temperatures[^1];
        return Temperatures[i - 1] + (depth - Depths[i - 1]) / (Depths[i] - Depths[i - 1]) * (Temperatures[i] - Temperatures[i - 1]);
    }
}

/// <summary>A place to report.</summary>
/// <param name="Name">Name.</param>
/// <param name="Along">Metres along the road from the middle of the repair; 0 in a column.</param>
/// <param name="Depth">Metres below the surface.</param>
public sealed record ReportPoint(string Name, double Along, double Depth);

/// <summary>Cells of the model.</summary>
/// <param name="First">Length of the cells at faces, m.</param>
/// <param name="Growth">Each cell over its neighbour nearer a face.</param>
/// <param name="Beside">Old slab kept on each side of the repair, m.</param>
public sealed record HeatCells(double First = 0.01, double Growth = 1.4, double Beside = 1.2)
{
    /// <summary>The defaults; docs/steps/concrete-heat.md shows what finer cells change.</summary>
    public static HeatCells Default { get; } = new();
}
