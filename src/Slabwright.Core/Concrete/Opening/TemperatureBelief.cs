namespace Slabwright.Core.Concrete.Opening;

/// <summary>
/// What is believed of the air against its forecast and of the placing temperature against the plan: two normal numbers, in K, correlated
/// once readings have tied them together.
/// </summary>
/// <param name="Air">Mean of the air's difference.</param> <param name="Placing">Mean of the placing temperature's difference.</param>
/// <param name="AirDeviation">Standard deviation of the first.</param>
/// <param name="PlacingByAir">How far the second moves with one standard deviation of the first.</param>
/// <param name="PlacingDeviation">Standard deviation of the second when the first is known.</param>
public readonly record struct TemperatureBelief(double Air, double Placing, double AirDeviation, double PlacingByAir, double PlacingDeviation)
{
    /// <summary>Before any reading.</summary>
    public static TemperatureBelief Before(OpeningSpread spread) => new(0, 0, spread.Air, 0, spread.Placing);

    /// <summary>The two differences at standard normal draws.</summary>
    public (double Air, double Placing) At(double first, double second) =>
        (Air + AirDeviation * first, Placing + PlacingByAir * first + PlacingDeviation * second);

    /// <summary>Standard deviation of the placing temperature's difference.</summary>
    public double PlacingSpread => Math.Sqrt(PlacingByAir * PlacingByAir + PlacingDeviation * PlacingDeviation);
}
