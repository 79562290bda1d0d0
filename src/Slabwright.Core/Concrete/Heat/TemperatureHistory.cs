using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>Temperature and hydration of one place over time.</summary>
/// <param name="Name">Name of the place, e.g. <c>top</c>.</param>
/// <param name="Along">Metres along the road from the middle of the repair; 0 in a column.</param>
/// <param name="Depth">Metres below the surface.</param>
/// <param name="Temperatures">Temperatures at the times of the history, °C.</param>
/// <param name="Degrees">Degree of hydration at those times; all 0 in old concrete.</param>
public sealed record PointHistory(string Name, double Along, double Depth, ImmutableArray<double> Temperatures, ImmutableArray<double> Degrees)
{
    /// <summary>Mean over the history, °C.</summary>
    public double Mean => Temperatures.Average();
}

/// <summary>The whole section at one time, for a map.</summary>
/// <param name="Time">Seconds after placing.</param>
/// <param name="Temperatures">Temperatures, °C, of the cells of <see cref="TemperatureHistory.Along"/> and <see cref="TemperatureHistory.Depths"/>, depth running fastest.</param>
public sealed record FieldAt(double Time, ImmutableArray<float> Temperatures);

/// <summary>
/// Where the heat went, J for each square metre of a column or each metre of lane width of a section. What is stored must equal what the
/// concrete freed plus what came in.
/// </summary>
/// <param name="Stored">Change of the stored heat.</param>
/// <param name="Freed">Freed by hydration.</param>
/// <param name="ThroughSurface">Came in through the surface; negative when lost.</param>
/// <param name="FromBelow">Came in from the ground below.</param>
public readonly record struct HeatBalance(double Stored, double Freed, double ThroughSurface, double FromBelow)
{
    /// <summary>What does not add up, as a share of all heat that moved.</summary>
    public double Error
    {
        get
        {
            var moved = Math.Abs(Stored) + Math.Abs(Freed) + Math.Abs(ThroughSurface) + Math.Abs(FromBelow);
            return moved == 0 ? 0 : Math.Abs(Stored - Freed - ThroughSurface - FromBelow) / moved;
        }
    }
}

/// <summary>What a plate feels of the temperatures down its depth.</summary>
/// <param name="Time">Seconds after placing.</param>
/// <param name="Mean">Mean over the depth, °C: what lengthens the slab.</param>
/// <param name="TopMinusBottom">Surface minus bottom face, K; positive by day.</param>
/// <param name="EquivalentDifference">Difference of the straight profile that curls the slab as much, K.</param>
public readonly record struct PlateTemperature(double Time, double Mean, double TopMinusBottom, double EquivalentDifference);

/// <summary>Temperatures of a run, with the balance that vouches for them.</summary>
public sealed record TemperatureHistory
{
    /// <summary>Local standard time of placing.</summary>
    public required DateTime Placed { get; init; }

    /// <summary>Seconds after placing, rising from 0.</summary>
    public required ImmutableArray<double> Times { get; init; }

    /// <summary>The places asked for.</summary>
    public required ImmutableArray<PointHistory> Points { get; init; }

    /// <summary>Mean and difference over the depth in the middle of the repair.</summary>
    public required ImmutableArray<PlateTemperature> Plate { get; init; }

    /// <summary>Heat balance of the run from placing on.</summary>
    public required HeatBalance Balance { get; init; }

    /// <summary>Time steps taken.</summary>
    public required int Steps { get; init; }

    /// <summary>Middles of the cells along the road, m; one entry, 0, in a column.</summary>
    public ImmutableArray<double> Along { get; init; } = [0];

    /// <summary>Middles of the cells below the surface, m.</summary>
    public ImmutableArray<double> Depths { get; init; } = [];

    /// <summary>The whole section hour by hour where it was asked for.</summary>
    public ImmutableArray<FieldAt> Fields { get; init; } = [];

    /// <summary>What speaks against relying on it: weather bridged or missing.</summary>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <summary>The place of a name; throws when the run was not asked for it.</summary>
    public PointHistory Point(string name) => Points.First(p => p.Name == name);
}
