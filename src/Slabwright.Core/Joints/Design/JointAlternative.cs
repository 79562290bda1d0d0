using System.Collections.Immutable;

namespace Slabwright.Core.Joints.Design;

/// <summary>One way to carry load across the joints of a lane, with all it was checked for.</summary>
public sealed record JointAlternative
{
    /// <summary>The bars; null for a joint without bars.</summary>
    public required BarLayout? Layout { get; init; }

    /// <summary>Cost of one joint's bars, in the currency of the price list.</summary>
    public required decimal CostPerJoint { get; init; }

    /// <summary>Years until the faulting limit is reached under the design traffic; infinity when not within the years looked at.</summary>
    public required double Life { get; init; }

    /// <summary>Predicted faulting at the end of the design years, m; for ranking, see the model's caveat.</summary>
    public required double Faulting { get; init; }

    /// <summary>Greatest bearing stress of a bar on the concrete, Pa, by plate finite elements.</summary>
    public required double Bearing { get; init; }

    /// <summary>The same by the closed forms with a reach of 1.0 l and of 1.8 l, Pa.</summary>
    public required (double Reach10, double Reach18) ClosedBearing { get; init; }

    /// <summary>Deflection transfer with the axle in the wheel paths, share: unloaded over loaded side.</summary>
    public required double DeflectionTransfer { get; init; }

    /// <summary>Deflection of the loaded corner or edge at the joint, m.</summary>
    public required double Deflection { get; init; }

    /// <summary>Greatest tensile stress at the joint, Pa.</summary>
    public required double Stress { get; init; }

    /// <summary>Every limit with its value.</summary>
    public required ImmutableArray<LimitCheck> Checks { get; init; }

    /// <summary>Predicted faulting at the end of the design years by the incremental model, m; for ranking the alternatives of one place.</summary>
    public double IncrementalFaulting { get; init; }

    /// <summary>Fatigue damage of the slab at the joint over the design years; 1 is the law's failure.</summary>
    public double Damage { get; init; }

    /// <summary>The build-up these values hold for: of those of the lane the one that leaves this alternative the least margin.</summary>
    public string BuildUp { get; init; } = "";

    /// <summary>The limit nearest to being reached, or furthest exceeded.</summary>
    public LimitCheck Governing => Checks.MaxBy(c => c.Use)!;

    /// <summary>True when every limit holds.</summary>
    public bool Passes => Checks.All(c => c.Holds);
}
