using System.Collections.Immutable;

namespace Slabwright.Core.Pavement;

/// <summary>A stretch in which no transverse cut may fall, e.g. a bridge approach slab, a gore or detector loops.</summary>
/// <param name="Name">What is there.</param>
/// <param name="Lane">Lane it holds for, or null for all lanes.</param>
/// <param name="From">Metres along the road.</param>
/// <param name="To">Metres along the road.</param>
public sealed record NoCutZone(string Name, int? Lane, double From, double To);

/// <summary>What a drawn feature of the road is.</summary>
public enum FeatureKind
{
    /// <summary>Bridge, from abutment to abutment.</summary>
    Bridge,

    /// <summary>Entrance ramp.</summary>
    EntranceRamp,

    /// <summary>Exit ramp.</summary>
    ExitRamp,

    /// <summary>Anything else worth drawing.</summary>
    Mark,
}

/// <summary>Something along the road worth drawing on the sheets.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">Printed name.</param>
/// <param name="From">Metres along the road.</param>
/// <param name="To">Metres along the road.</param>
public sealed record RoadFeature(FeatureKind Kind, string Name, double From, double To);

/// <summary>Climate as the rules ask for it.</summary>
/// <param name="FreezeThaw">True where slabs freeze and thaw wet; hidden margins grow there.</param>
/// <param name="FreezingIndex">Freezing index, °C·days; null when unknown.</param>
/// <param name="AnnualPrecipitation">Metres of water a year; null when unknown.</param>
public sealed record Climate(bool FreezeThaw, double? FreezingIndex = null, double? AnnualPrecipitation = null);

/// <summary>Traffic as the rules ask for it; hourly volumes belong to Closures.</summary>
/// <param name="Aadt">Annual average daily traffic in the direction of the project, vehicles per day.</param>
/// <param name="TruckShare">Share of trucks, 0 to 1.</param>
/// <param name="GrowthPerYear">Growth per year, share.</param>
public sealed record Traffic(double Aadt, double TruckShare, double GrowthPerYear = 0)
{
    /// <summary>Trucks per day in the direction of the project.</summary>
    public double TrucksPerDay => Aadt * TruckShare;
}

/// <summary>
/// The road of one project and direction. Places along it are metres from its start in the direction of travel
/// (<c>at</c>, <c>from</c>, <c>to</c>); <see cref="Stationing"/> turns them into the stations people write.
/// </summary>
public sealed record Road
{
    /// <summary>Name of the road.</summary>
    public required string Name { get; init; }

    /// <summary>Length, m.</summary>
    public required double Length { get; init; }

    /// <summary>How stations are written.</summary>
    public required Stationing Stationing { get; init; }

    /// <summary>Lanes in order from the left.</summary>
    public required ImmutableArray<Lane> Lanes { get; init; }

    /// <summary>Climate.</summary>
    public required Climate Climate { get; init; }

    /// <summary>Traffic; null when the project gives none.</summary>
    public Traffic? Traffic { get; init; }

    /// <summary>Centre line in plan; null when the project gives none.</summary>
    public Alignment? Alignment { get; init; }

    /// <summary>Where no transverse cut may fall.</summary>
    public ImmutableArray<NoCutZone> NoCutZones { get; init; } = [];

    /// <summary>Bridges, ramps and marks.</summary>
    public ImmutableArray<RoadFeature> Features { get; init; } = [];

    /// <summary>The lane with a number; throws when there is none.</summary>
    public Lane LaneByNumber(int number) => Lanes.First(l => l.Number == number);
}
