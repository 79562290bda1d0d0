using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Prices;

/// <summary>What a pay item pays for. The role fixes the measurement rule; the project fixes code, name, unit and price.</summary>
public enum PayRole
{
    /// <summary>Full-depth repair by area, price by size class of the repair.</summary>
    FullDepthArea,

    /// <summary>Each repair: marking, set-up and lifting at the place.</summary>
    RepairSetUp,

    /// <summary>Transverse full-depth saw cut, length.</summary>
    TransverseSawCut,

    /// <summary>Longitudinal full-depth saw cut, length; an edge shared by two repairs counts once.</summary>
    LongitudinalSawCut,

    /// <summary>Cuts inside the removal for lift pieces and pressure relief, length.</summary>
    InternalSawCut,

    /// <summary>Dowel bar drilled and anchored, each.</summary>
    DrilledDowel,

    /// <summary>Dowel in a basket at a new joint inside the repair, each.</summary>
    BasketDowel,

    /// <summary>Tie bar drilled and anchored, each.</summary>
    TieBar,

    /// <summary>Isolation board along a lane line, length.</summary>
    IsolationBoard,

    /// <summary>Transverse joint sawn and sealed, length.</summary>
    TransverseSeal,

    /// <summary>Longitudinal joint sawn and sealed, length.</summary>
    LongitudinalSeal,

    /// <summary>Asphalt shoulder strip out and back, length along the edge.</summary>
    ShoulderStrip,

    /// <summary>Edge form, length.</summary>
    EdgeForm,

    /// <summary>Loose base replaced by concrete, volume.</summary>
    BaseConcrete,

    /// <summary>Partial-depth repair, area.</summary>
    PartialDepthArea,

    /// <summary>Crack or joint cleaned and sealed, length.</summary>
    SealLength,

    /// <summary>Lump sum for the whole job, e.g. mobilisation.</summary>
    LumpSum,

    /// <summary>Traffic control by night, each; the number of nights comes from Closures or from the project.</summary>
    TrafficControlNight,
}

/// <summary>A unit price that holds from an area upwards.</summary>
/// <param name="FromArea">Least area of one repair, m²; the first class starts at 0.</param>
/// <param name="UnitPrice">Price per pay unit.</param>
public sealed record SizeClass(double FromArea, decimal UnitPrice);

/// <summary>One line of the price list.</summary>
public sealed record PayItem
{
    /// <summary>Item code as bid.</summary>
    public required string Code { get; init; }

    /// <summary>Item name as bid.</summary>
    public required string Name { get; init; }

    /// <summary>What it pays for.</summary>
    public required PayRole Role { get; init; }

    /// <summary>Pay unit, e.g. <c>yd2</c>, <c>ft</c>, or <c>each</c> and <c>lump sum</c> with no dimension.</summary>
    public required Unit Unit { get; init; }

    /// <summary>Price per pay unit; for items with <see cref="SizeClasses"/> the price of the first class.</summary>
    public required decimal UnitPrice { get; init; }

    /// <summary>Prices by size of one repair, ascending; empty when one price holds for all. Each class is a bid line of its own.</summary>
    public ImmutableArray<SizeClass> SizeClasses { get; init; } = [];

    /// <summary>Measured totals are rounded up to a multiple of this, in pay units.</summary>
    public double RoundTo { get; init; } = 1;

    /// <summary>Least pay quantity for one repair, in pay units; 0 for none.</summary>
    public double LeastPay { get; init; }

    /// <summary>Low price as a share of the price, for the cost range.</summary>
    public double LowShare { get; init; } = 1;

    /// <summary>High price as a share of the price, for the cost range.</summary>
    public double HighShare { get; init; } = 1;

    /// <summary>Where the price comes from.</summary>
    public SourceRef Source { get; init; } = SourceRef.Project;

    /// <summary>Areas this close to a class limit belong to the class, m²; far below what can be marked, above rounding noise.</summary>
    private const double AreaTolerance = 1e-6;

    /// <summary>Index of the size class a repair's area falls in, or null when one price holds for all sizes.</summary>
    /// <param name="area">Area of the repair, m².</param>
    public int? SizeClassFor(double area) =>
        SizeClasses.IsEmpty ? null : Math.Max(0, SizeClasses.Count(c => area + AreaTolerance >= c.FromArea) - 1);

    /// <summary>Price per pay unit for a repair of an area.</summary>
    /// <param name="area">Area of the repair, m².</param>
    public decimal PriceFor(double area) => SizeClassFor(area) is { } index ? SizeClasses[index].UnitPrice : UnitPrice;
}

/// <summary>The pay items and prices of a project.</summary>
/// <param name="Currency">Printed currency, e.g. <c>USD</c>.</param>
/// <param name="Items">Items in bid order.</param>
public sealed record PriceList(string Currency, ImmutableArray<PayItem> Items)
{
    /// <summary>The item with a role, or null when the project does not pay it separately.</summary>
    public PayItem? Find(PayRole role) => Items.FirstOrDefault(i => i.Role == role);
}
