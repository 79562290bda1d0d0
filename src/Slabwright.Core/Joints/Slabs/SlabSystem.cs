using System.Collections.Immutable;

namespace Slabwright.Core.Joints.Slabs;

/// <summary>One slab or repair: a rectangle, or a parallelogram where a transverse side is skewed.</summary>
public sealed record SlabPiece
{
    /// <summary>What it is, e.g. <c>repair</c> or <c>slab ahead</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Start along the road at the middle of its width, m.</summary>
    public required double From { get; init; }

    /// <summary>End along the road at the middle of its width, m.</summary>
    public required double To { get; init; }

    /// <summary>Left side across the road, m.</summary>
    public required double Left { get; init; }

    /// <summary>Right side across the road, m.</summary>
    public required double Right { get; init; }

    /// <summary>How much further along the right end of the start side lies than its left end, m.</summary>
    public double StartSkew { get; init; }

    /// <summary>How much further along the right end of the end side lies than its left end, m.</summary>
    public double EndSkew { get; init; }

    /// <summary>Thickness, m.</summary>
    public required double Thickness { get; init; }

    /// <summary>Young's modulus, Pa.</summary>
    public required double Modulus { get; init; }

    /// <summary>Poisson's ratio.</summary>
    public double Poisson { get; init; } = 0.15;

    /// <summary>Density, kg/m³; counts where contact may be lost.</summary>
    public double Density { get; init; } = 2400;

    /// <summary>Thermal expansion, 1/K.</summary>
    public double Expansion { get; init; } = 1e-5;

    /// <summary>How much warmer the top is than the bottom, K; linear over the thickness.</summary>
    public double TopWarmer { get; init; }

    /// <summary>Curvature it would take freely, 1/m: α ΔT/h.</summary>
    public double FreeCurvature => Expansion * TopWarmer / Thickness;
}

/// <summary>A bar across a transverse joint.</summary>
/// <param name="First">Index of the piece that ends at the joint.</param>
/// <param name="Second">Index of the piece that starts there.</param>
/// <param name="Across">Place across the road, m.</param>
/// <param name="Bar">The bar.</param>
public sealed record SlabBar(int First, int Second, double Across, GapBar Bar);

/// <summary>Two pieces that meet end to start.</summary>
/// <param name="First">Index of the piece that ends at the joint.</param>
/// <param name="Second">Index of the piece that starts there.</param>
/// <param name="Interlock">Aggregate interlock, N/m per metre of joint; 0 for a sawn face.</param>
public sealed record TransverseMeeting(int First, int Second, double Interlock);

/// <summary>Two pieces side by side.</summary>
/// <param name="Left">Index of the piece on the left.</param>
/// <param name="Right">Index of the piece on the right.</param>
/// <param name="Shear">Stiffness against a step, N/m per metre; 0 for an isolated face.</param>
/// <param name="Bending">Stiffness against a kink, N·m per metre; 0 for a hinge.</param>
public sealed record LongitudinalMeeting(int Left, int Right, double Shear, double Bending = 0);

/// <summary>A hollow under a slab: a rectangle, or the triangle at its corner nearest to the slab's own corner.</summary>
/// <param name="From">Along, m.</param> <param name="To">Along, m.</param>
/// <param name="Left">Across, m.</param> <param name="Right">Across, m.</param>
/// <param name="Depth">How far the slab must go down to touch, m.</param>
/// <param name="Apex">Null for the whole rectangle; else the corner at which the triangle's right angle lies.</param>
public sealed record SlabVoid(double From, double To, double Left, double Right, double Depth, (bool AtFrom, bool AtLeft)? Apex = null)
{
    /// <summary>True when a place lies over the hollow.</summary>
    public bool Covers(double along, double across)
    {
        var (u, v) = ((along - From) / (To - From), (across - Left) / (Right - Left));
        if (u is < 0 or > 1 || v is < 0 or > 1) return false;
        return Apex is not { } apex || (apex.AtFrom ? u : 1 - u) + (apex.AtLeft ? v : 1 - v) <= 1;
    }
}

/// <summary>How fine the pieces are meshed with nine-node elements.</summary>
/// <param name="Most">Largest element, m.</param>
/// <param name="AtJoint">Element at transverse sides, m.</param>
/// <param name="AtWheel">Element under a wheel as a share of the wheel's side.</param>
/// <param name="Growth">Growth of the element by distance.</param>
public sealed record SlabMesh(double Most = 0.6, double AtJoint = 0.2, double AtWheel = 0.75, double Growth = 0.35)
{
    /// <summary>For a search over many alternatives.</summary>
    public static SlabMesh Coarse { get; } = new(0.8, 0.25, 1.0, 0.5);

    /// <summary>For a single joint looked at closely.</summary>
    public static SlabMesh Fine { get; } = new(0.4, 0.1, 0.5, 0.25);
}

/// <summary>Slabs on springs with what joins them. Along is the direction of travel, across runs to its right. SI.</summary>
public sealed record SlabSystem
{
    /// <summary>The slabs and repairs.</summary>
    public required ImmutableArray<SlabPiece> Pieces { get; init; }

    /// <summary>Modulus of foundation reaction k, Pa/m.</summary>
    public required double Reaction { get; init; }

    /// <summary>Bars.</summary>
    public ImmutableArray<SlabBar> Bars { get; init; } = [];

    /// <summary>Interlock of transverse joints.</summary>
    public ImmutableArray<TransverseMeeting> Transverse { get; init; } = [];

    /// <summary>Long sides.</summary>
    public ImmutableArray<LongitudinalMeeting> Longitudinal { get; init; } = [];

    /// <summary>Hollows.</summary>
    public ImmutableArray<SlabVoid> Voids { get; init; } = [];

    /// <summary>Where the mesh is fine besides the joints: wheels that will stand there.</summary>
    public ImmutableArray<WheelPatch> FineAt { get; init; } = [];

    /// <summary>How fine.</summary>
    public SlabMesh Mesh { get; init; } = new();
}
