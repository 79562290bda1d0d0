namespace Slabwright.Core.Concrete.Hydration;

/// <summary>Heat of a mix measured in a calorimeter at a steady temperature.</summary>
/// <param name="Mix">The mix.</param>
/// <param name="Hours">Time since mixing, h.</param>
/// <param name="Heat">Heat freed since mixing, J/kg of cementitious material.</param>
/// <param name="Bath">Temperature of the bath, °C.</param>
public sealed record MeasuredHeat(string Mix, double Hours, double Heat, double Bath)
{
    /// <summary>Row of the file it was read from; 0 when typed.</summary>
    public long Row { get; init; }
}
