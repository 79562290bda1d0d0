using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Handbook;

/// <summary>One input of a joint worked out by hand.</summary>
/// <param name="Key">Option it is given by.</param>
/// <param name="Name">What it is.</param>
/// <param name="Value">As taken, with unit.</param>
/// <param name="Source">Where a value that was not given comes from; null where it was given.</param>
public sealed record HandInput(string Key, string Name, string Value, SourceRef? Source);

/// <summary>One quantity by a closed form beside plate finite elements.</summary>
/// <param name="Case">Where the wheel stands and whether bars are there.</param>
/// <param name="Quantity">What is compared.</param>
/// <param name="Units">Units it is printed in.</param>
/// <param name="Closed">By the closed form, base unit; null where there is none.</param>
/// <param name="Form">Name of the closed form, with its source.</param>
/// <param name="Plate">By plate finite elements, base unit; null where they have no such number.</param>
public sealed record HandComparison(string Case, string Quantity, UnitPair Units, double? Closed, string Form, double? Plate)
{
    /// <summary>Closed form over plate; null where either is missing.</summary>
    public double? Ratio => Closed / Plate;
}

/// <summary>One bar under the wheel.</summary>
/// <param name="Number">From 1 at the left edge.</param>
/// <param name="Offset">From the lane's left edge, m.</param>
/// <param name="Reach10">Load by the closed form with a reach of 1.0 l, N.</param>
/// <param name="Reach18">Load by the closed form with a reach of 1.8 l, N.</param>
/// <param name="Plate">Shear by plate finite elements, N.</param>
/// <param name="Bearing">Bearing on the concrete by plate finite elements, Pa.</param>
public sealed record HandBar(int Number, double Offset, double Reach10, double Reach18, double Plate, double Bearing);

/// <summary>How the plate model was made and ended.</summary>
/// <param name="Unknowns">Unknowns of the model.</param>
/// <param name="Residual">Relative residual of the solution.</param>
/// <param name="Equilibrium">Load not met by the base as a share of the load.</param>
public sealed record HandPlateRun(int Unknowns, double Residual, double Equilibrium);

/// <summary>One joint by hand: closed forms beside plate finite elements, or the findings that kept it from being worked out.</summary>
public sealed record HandJoint
{
    /// <summary>Every input as taken.</summary>
    public required ImmutableArray<HandInput> Inputs { get; init; }

    /// <summary>The bars; null where an input is wrong.</summary>
    public BarLayout? Layout { get; init; }

    /// <summary>Closed forms beside plate finite elements.</summary>
    public ImmutableArray<HandComparison> Comparisons { get; init; } = [];

    /// <summary>The bars under the wheel at the joint.</summary>
    public ImmutableArray<HandBar> Bars { get; init; } = [];

    /// <summary>Values held against limits.</summary>
    public ImmutableArray<LimitCheck> Checks { get; init; } = [];

    /// <summary>How the plate model ended; null where it was not run.</summary>
    public HandPlateRun? Run { get; init; }

    /// <summary>What was wrong or doubtful.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>True when it was worked out.</summary>
    public bool Succeeded => Run is not null;
}
