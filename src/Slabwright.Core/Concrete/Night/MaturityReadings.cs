using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Night;

/// <summary>One reading of a probe.</summary>
/// <param name="At">When, local time.</param>
/// <param name="Temperature">Concrete temperature, °C; null when the sensor gave none.</param>
/// <param name="Row">Row of the file, 1 the first line; 0 when typed.</param>
public sealed record ProbeReading(DateTime At, double? Temperature, long Row = 0)
{
    /// <summary>Temperature–time factor the logger printed, °C·h; null when it did not.</summary>
    public double? Factor { get; init; }
}

/// <summary>A probe and its readings.</summary>
/// <param name="Name">Name of the probe or channel.</param>
/// <param name="Place">Where it sits.</param>
/// <param name="Readings">Readings in the order given.</param>
public sealed record Probe(string Name, SlabPlace Place, ImmutableArray<ProbeReading> Readings);

/// <summary>The readings of one night at one repair.</summary>
public sealed record NightReadings
{
    /// <summary>The repair, or a name of the placement.</summary>
    public required string Repair { get; init; }

    /// <summary>Mix placed.</summary>
    public required string Mix { get; init; }

    /// <summary>When the concrete was placed, local time.</summary>
    public required DateTime PlacedAt { get; init; }

    /// <summary>Probes.</summary>
    public required ImmutableArray<Probe> Probes { get; init; }

    /// <summary>File they were read from; null when typed or pasted.</summary>
    public string? File { get; init; }
}

/// <summary>Readings of a probe put right: rising times from placing on, faults taken out and told of.</summary>
/// <param name="Name">Probe.</param> <param name="Place">Where it sits.</param>
/// <param name="History">Temperatures from placing on.</param>
/// <param name="Trusted">False when the probe is left out of the decision.</param>
public sealed record ProbeHistory(string Name, SlabPlace Place, ImmutableArray<ConcreteTemperature> History, bool Trusted);

/// <summary>The readings of a night, checked.</summary>
/// <param name="Probes">Histories.</param>
/// <param name="Findings">Gaps, clock shifts, sensor failures and disagreement.</param>
public sealed record CheckedReadings(ImmutableArray<ProbeHistory> Probes, ImmutableArray<Finding> Findings);
