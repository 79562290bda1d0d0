namespace Slabwright.Core.Concrete.Maturity;

/// <summary>A specimen broken, or the mean of several.</summary>
/// <param name="Mix">Mix it was made of.</param>
/// <param name="Kind">How it was tested.</param>
/// <param name="Hours">Age, h.</param>
/// <param name="Strength">Strength, Pa.</param>
public sealed record StrengthBreak(string Mix, StrengthKind Kind, double Hours, double Strength)
{
    /// <summary>Temperature–time factor of the specimen, °C·h from the datum of the mix; null: from age and curing temperature.</summary>
    public double? Factor { get; init; }

    /// <summary>Mean temperature the specimen was cured at, °C.</summary>
    public double Curing { get; init; } = 23;

    /// <summary>Set of specimens it belongs to: <c>curve</c> for those the curve is fitted to, <c>check</c> for later ones held against it.</summary>
    public bool IsCheck { get; init; }

    /// <summary>Pulse velocity of the specimen before it was broken, m/s; null when not taken.</summary>
    public double? PulseVelocity { get; init; }

    /// <summary>Row of the file it was read from; 0 when typed.</summary>
    public long Row { get; init; }
}
