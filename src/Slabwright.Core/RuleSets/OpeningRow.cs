using Slabwright.Core.Evidence;

namespace Slabwright.Core.RuleSets;

/// <summary>Strength and age at which traffic may return, from a slab thickness on. Any one of the strengths it names is enough.</summary>
public sealed record OpeningRow
{
    /// <summary>Holds for slabs at least this thick, m; 0 for all.</summary>
    public double From { get; init; }

    /// <summary>Holds for repairs shorter than this, m; null for any length.</summary>
    public double? RepairUnder { get; init; }

    /// <summary>Compressive strength, Pa; null where not stated.</summary>
    public double? Compressive { get; init; }

    /// <summary>Third-point flexural strength, Pa; null where not stated.</summary>
    public double? ThirdPoint { get; init; }

    /// <summary>Centre-point flexural strength, Pa; null where not stated.</summary>
    public double? CentrePoint { get; init; }

    /// <summary>Least age besides, h; null where none is asked.</summary>
    public double? LeastAge { get; init; }

    /// <summary>What the row says.</summary>
    public required string Sentence { get; init; }

    /// <summary>Where it comes from.</summary>
    public required SourceRef Source { get; init; }

    /// <summary>False for rows from memory until the engineer takes them over.</summary>
    public bool On { get; init; } = true;

    /// <summary>True when the row speaks of a slab and a repair; a tenth of a millimetre is forgiven.</summary>
    /// <param name="thickness">Slab thickness, m.</param> <param name="length">Repair length, m.</param>
    public bool Holds(double thickness, double length) => On && thickness >= From - 1e-4 && (RepairUnder is not { } under || length < under - 1e-4);
}
