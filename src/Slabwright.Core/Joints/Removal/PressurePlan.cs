using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;

namespace Slabwright.Core.Joints.Removal;

/// <summary>Slab temperature in one hour of the day.</summary>
/// <param name="Hour">Hour of the day in which it holds, 0 to 23.</param>
/// <param name="Temperature">Mean temperature of the slab, °C.</param>
public sealed record HourTemperature(int Hour, double Temperature);

/// <summary>What a boundary cut meets in one hour.</summary>
/// <param name="Hour">Hour of the day.</param>
/// <param name="Temperature">Slab temperature, °C.</param>
/// <param name="Stress">Compression before the cut, Pa, joints closed.</param>
/// <param name="Closure">How far the kerf closes, m.</param>
/// <param name="Binds">True when it closes onto the blade.</param>
/// <param name="BindsAfterRelief">True when it would still bind after the relief cut.</param>
public sealed record SawingHour(int Hour, double Temperature, double Stress, double Closure, bool Binds, bool BindsAfterRelief);

/// <summary>A relief cut by carbide wheel saw inside a repair.</summary>
/// <param name="At">Middle of the cut, metres along the road.</param>
/// <param name="Kerf">Width, m.</param>
/// <param name="Depth">Greatest depth below the surface, m.</param>
/// <param name="ToStart">From the first boundary to the near edge of the cut, m.</param>
/// <param name="ToEnd">From the near edge of the cut to the last boundary, m.</param>
/// <param name="AtLiftCut">True when it takes the place of a lift cut.</param>
/// <param name="Closure">How far the relief cut itself closes at the hottest hour, m.</param>
public sealed record ReliefCut(double At, double Kerf, double Depth, double ToStart, double ToEnd, bool AtLiftCut, double Closure);

/// <summary>Pressure at one repair.</summary>
public sealed record RepairPressure
{
    /// <summary>The repair.</summary>
    public required string RepairId { get; init; }

    /// <summary>Lane number.</summary>
    public required int Lane { get; init; }

    /// <summary>Concrete that unloads into the cut on the side behind, m: up to the nearest free end, no more than friction and the tied lane beside allow.</summary>
    public required double UnloadsBehind { get; init; }

    /// <summary>The same on the side ahead, m.</summary>
    public required double UnloadsAhead { get; init; }

    /// <summary>Slab temperature above which the blade binds, °C; null when it never does up to 80 °C.</summary>
    public required double? BindsAbove { get; init; }

    /// <summary>Hour by hour.</summary>
    public required ImmutableArray<SawingHour> Hours { get; init; }

    /// <summary>True when the blade binds in an hour the crew means to saw.</summary>
    public required bool ReliefNeeded { get; init; }

    /// <summary>The relief cuts, one or, in a long repair, one for each boundary; empty when none is needed or none fits.</summary>
    public required ImmutableArray<ReliefCut> Reliefs { get; init; }

    /// <summary>Checks of the relief cuts; empty when there are none.</summary>
    public required ImmutableArray<LimitCheck> Checks { get; init; }

    /// <summary>How the numbers came about.</summary>
    public required ImmutableArray<Reason> Reasons { get; init; }
}

/// <summary>What the look at pressure hands on.</summary>
public sealed record PressurePlan
{
    /// <summary>Nothing looked at.</summary>
    public static PressurePlan Empty { get; } = new() { Repairs = [], Hours = [], Notes = [], Findings = [] };

    /// <summary>One entry for each repair, in their order.</summary>
    public required ImmutableArray<RepairPressure> Repairs { get; init; }

    /// <summary>The temperatures used.</summary>
    public required ImmutableArray<HourTemperature> Hours { get; init; }

    /// <summary>Where they come from, in words.</summary>
    public string HoursFrom { get; init; } = "";

    /// <summary>Rules of the relief cut for the crew.</summary>
    public required ImmutableArray<CrewNote> Notes { get; init; }

    /// <summary>What was wrong with inputs or could not be met.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }
}
