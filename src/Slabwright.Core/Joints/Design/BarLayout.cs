using System.Collections.Immutable;

namespace Slabwright.Core.Joints.Design;

/// <summary>What a bar across a joint does.</summary>
public enum BarKind
{
    /// <summary>Smooth bar: carries shear, lets the joint open.</summary>
    Dowel,

    /// <summary>Deformed bar: holds the joint closed.</summary>
    TieBar,
}

/// <summary>How bars stand along a joint.</summary>
public enum BarArrangement
{
    /// <summary>Over the full lane width at one spacing.</summary>
    FullWidth,

    /// <summary>In two groups under the wheel paths.</summary>
    WheelPaths,
}

/// <summary>The bars of one transverse joint: the same at every joint of its lane.</summary>
public sealed record BarLayout
{
    /// <summary>Dowel or tie bar.</summary>
    public required BarKind Kind { get; init; }

    /// <summary>Full width or wheel paths.</summary>
    public required BarArrangement Arrangement { get; init; }

    /// <summary>Bar diameter, m.</summary>
    public required double Diameter { get; init; }

    /// <summary>Bar length, m.</summary>
    public required double Length { get; init; }

    /// <summary>Length drilled into the old slab, m.</summary>
    public required double Embedment { get; init; }

    /// <summary>Depth of the bar's centre below the surface, m; half the thickness.</summary>
    public required double Depth { get; init; }

    /// <summary>Bar centres from the lane's left edge in the direction of travel, m, rising.</summary>
    public required ImmutableArray<double> Offsets { get; init; }

    /// <summary>Spacing within a group or over the full width, m.</summary>
    public required double Spacing { get; init; }

    /// <summary>Number of bars.</summary>
    public int Bars => Offsets.Length;
}
