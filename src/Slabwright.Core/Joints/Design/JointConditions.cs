using System.Collections.Immutable;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Design;

/// <summary>A load class of the design traffic: axles of one kind and weight.</summary>
/// <param name="Axles">1 single, 2 tandem, 3 tridem.</param>
/// <param name="Load">Load of the whole axle group, N.</param>
/// <param name="PerDay">Passes a day in the design lane in the first year.</param>
public sealed record AxleClass(int Axles, double Load, double PerDay);

/// <summary>What one joint has to live with: slab, support, traffic, climate. SI.</summary>
public sealed record JointConditions
{
    /// <summary>Slab thickness, m.</summary>
    public required double Thickness { get; init; }

    /// <summary>Lane width, m.</summary>
    public required double LaneWidth { get; init; }

    /// <summary>Length of the old slab beside the joint, m.</summary>
    public required double OldSlab { get; init; }

    /// <summary>Length of the repair beside the joint, m.</summary>
    public required double Repair { get; init; }

    /// <summary>Young's modulus of concrete, Pa.</summary>
    public required double Modulus { get; init; }

    /// <summary>Poisson's ratio of concrete.</summary>
    public required double Poisson { get; init; }

    /// <summary>Cylinder strength of the weaker concrete at the joint, Pa.</summary>
    public required double Strength { get; init; }

    /// <summary>Modulus of rupture, Pa.</summary>
    public required double Rupture { get; init; }

    /// <summary>Modulus of foundation reaction k, Pa/m.</summary>
    public required double Reaction { get; init; }

    /// <summary>Thermal expansion of concrete, 1/K.</summary>
    public required double Expansion { get; init; }

    /// <summary>What the slab rests on.</summary>
    public required BaseKind Base { get; init; }

    /// <summary>Drainage coefficient Cd.</summary>
    public required double Drainage { get; init; }

    /// <summary>Climate.</summary>
    public required Climate Climate { get; init; }

    /// <summary>Coldest and hottest slab temperature of the year, °C.</summary>
    public required (double Coldest, double Hottest) Temperatures { get; init; }

    /// <summary>Modulus of dowel support K, Pa/m.</summary>
    public required double DowelSupport { get; init; }

    /// <summary>Young's modulus of steel, Pa.</summary>
    public required double SteelModulus { get; init; }

    /// <summary>Joint width when open, m: the gap a dowel bridges.</summary>
    public required double JointWidth { get; init; }

    /// <summary>Edge on the side of the wheels: tied concrete or free.</summary>
    public required LaneEdge OuterEdge { get; init; }

    /// <summary>Traffic by axle class.</summary>
    public required ImmutableArray<AxleClass> Traffic { get; init; }

    /// <summary>18-kip equivalent axles a day in the first year, design lane.</summary>
    public required double EquivalentAxlesPerDay { get; init; }

    /// <summary>Growth of traffic a year, share.</summary>
    public required double Growth { get; init; }

    /// <summary>Years the joint is designed for.</summary>
    public required double DesignYears { get; init; }

    /// <summary>What the build-up is called in reasons, e.g. <c>10.0 in on granular base, 60.0 ft slabs</c>.</summary>
    public string BuildUp { get; init; } = "";

    /// <summary>Trucks a day in the lane in the first year; rule sets judge heavy and light traffic by it.</summary>
    public double TrucksPerDay { get; init; }

    /// <summary>Tyre pressure, Pa; gives the size of the wheel patches.</summary>
    public double TyrePressure { get; init; } = JointDefaults.TyrePressure.Value;

    /// <summary>Least distance of a bar from the lane's left edge, m; more than 12 in beside a curb.</summary>
    public double ClearLeft { get; init; } = BarRow.EdgeDistance;

    /// <summary>Least distance of a bar from the lane's right edge, m.</summary>
    public double ClearRight { get; init; } = BarRow.EdgeDistance;

    /// <summary>Radius of relative stiffness l, m.</summary>
    public double Radius => RelativeStiffness.Radius(Modulus, Thickness, Poisson, Reaction);
}
