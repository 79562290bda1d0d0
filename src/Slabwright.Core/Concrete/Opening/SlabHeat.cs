using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>Places of a repair that may lag behind.</summary>
public enum SlabPlace
{
    /// <summary>Top face.</summary>
    Surface,

    /// <summary>Mid-depth, away from the faces.</summary>
    MidDepth,

    /// <summary>Bottom face on the base.</summary>
    Bottom,

    /// <summary>Beside the old slab or the form.</summary>
    Edge,

    /// <summary>Corner of the repair.</summary>
    Corner,
}

/// <summary>Cover laid on fresh concrete.</summary>
/// <param name="FromHours">Laid this many hours after placing.</param>
/// <param name="ToHours">Taken off this many hours after placing; infinity when it stays.</param>
/// <param name="Resistance">Thermal resistance, m²K/W.</param>
public sealed record BlanketCover(double FromHours, double ToHours, double Resistance);

/// <summary>A form along a side of the repair, open air behind it.</summary>
/// <param name="StripHours">Taken off this many hours after placing; infinity when it stays.</param>
/// <param name="Resistance">Thermal resistance, m²K/W.</param>
/// <param name="Width">Width of the repair between the form and the side across, m.</param>
public sealed record EdgeFormCover(double StripHours, double Resistance, double Width = 3.6576);

/// <summary>What a computation of temperatures is asked: a mix placed at an hour at a temperature, in weather shifted from the one forecast.</summary>
/// <param name="Mix">The mix.</param>
/// <param name="PlacedAt">Time of placing, local standard time.</param>
/// <param name="PlacingTemperature">Concrete temperature when placed, °C.</param>
/// <param name="Thickness">Slab thickness, m.</param>
/// <param name="Hours">Hours after placing to compute.</param>
public sealed record HeatCase(ConcreteMix Mix, DateTime PlacedAt, double PlacingTemperature, double Thickness, double Hours)
{
    /// <summary>Air warmer than forecast by this, K.</summary>
    public double AirShift { get; init; }

    /// <summary>Wind over the wind forecast.</summary>
    public double WindFactor { get; init; } = 1;

    /// <summary>Cover; null: none.</summary>
    public BlanketCover? Blanket { get; init; }

    /// <summary>Length of the repair, m; null: long, nothing but a column is looked at.</summary>
    public double? RepairLength { get; init; }

    /// <summary>Form along a side; null: old slabs or lanes all round.</summary>
    public EdgeFormCover? Form { get; init; }
}

/// <summary>Temperatures at one place of the repair.</summary>
/// <param name="Place">The place.</param>
/// <param name="History">Temperatures, from placing on.</param>
public sealed record PlaceHistory(SlabPlace Place, ImmutableArray<ConcreteTemperature> History);

/// <summary>Computes concrete temperatures: the column or the section under the project's weather, or a test's simple law.</summary>
public interface ISlabHeat
{
    /// <summary>Temperatures at the places that may govern; all histories at the same hours, rising from 0.</summary>
    ImmutableArray<PlaceHistory> Run(HeatCase heatCase);

    /// <summary>The temperatures near a planned case: what is costly and changes little from trial to trial is found once.</summary>
    /// <param name="planned">The case as planned.</param>
    ISlabHeat Around(HeatCase planned) => this;
}
