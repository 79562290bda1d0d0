namespace Slabwright.Core.Concrete.Opening;

/// <summary>What a person changes about a night, against the project. SI.</summary>
public sealed record NightChange
{
    /// <summary>Nothing changed.</summary>
    public static NightChange None { get; } = new();

    /// <summary>Added to the forecast air, K.</summary>
    public double Air { get; init; }

    /// <summary>Wind over the wind forecast.</summary>
    public double Wind { get; init; } = 1;

    /// <summary>Placing temperature, °C; null: as the project says.</summary>
    public double? PlacingTemperature { get; init; }

    /// <summary>Clock time of placing; null: as the night says.</summary>
    public TimeOnly? PlacedAt { get; init; }

    /// <summary>Blanket; null: as the project says.</summary>
    public BlanketChange? Blanket { get; init; }

    /// <summary>Strength of the lot over the curve.</summary>
    public double Strength { get; init; } = 1;

    /// <summary>Slab thickness, m; null: that of the job.</summary>
    public double? Thickness { get; init; }

    /// <summary>Length of the repair, m; null: that of the job.</summary>
    public double? Length { get; init; }

    /// <summary>Chance with which the night must open; null: as the project says.</summary>
    public double? Confidence { get; init; }
}

/// <summary>Another blanket than the project's.</summary>
/// <param name="Cover">The blanket; null: none is laid.</param>
public sealed record BlanketChange(BlanketCover? Cover);

/// <summary>When a mix opens on a night, in clock times of the project.</summary>
public sealed record NightAnswer
{
    /// <summary>The forecast; its case has everything it was made for.</summary>
    public required OpeningForecastResult Forecast { get; init; }

    /// <summary>When the concrete is placed.</summary>
    public required DateTime Placed { get; init; }

    /// <summary>Earliest opening with the confidence asked for; null when not within the hours computed.</summary>
    public required DateTime? OpensAt { get; init; }

    /// <summary>Opening of half the trials; null when not within the hours computed.</summary>
    public required DateTime? MedianAt { get; init; }

    /// <summary>Chance that it opens by the deadline, 0 to 1.</summary>
    public required double ChanceByDeadline { get; init; }
}
