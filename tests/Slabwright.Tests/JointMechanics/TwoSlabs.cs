using Slabwright.Core.Joints.Slabs;

namespace Slabwright.Tests.JointMechanics;

/// <summary>A repair and the old slab ahead of it in one lane; invented but ordinary.</summary>
internal static class TwoSlabs
{
    public const double Inch = 0.0254;
    public const double Psi = 6894.757293168;
    public const double Pci = Psi / Inch;
    public const double Pound = 4.4482216152605;

    /// <summary>A single axle with dual tyres just past the joint, right wheels near the right edge.</summary>
    public static WheelPatch[] Axle(double along = 0.15) =>
    [
        new(along, 0.9, 0.25, 0.5, 40_000),
        new(along, 3.0, 0.25, 0.5, 40_000),
    ];

    public static SlabSystem System(SlabMesh? mesh = null) => new()
    {
        Pieces =
        [
            new SlabPiece { Name = "old slab", From = -4.5, To = 0, Left = 0, Right = 3.6, Thickness = 0.25, Modulus = 28e9 },
            new SlabPiece { Name = "repair", From = 0.005, To = 2.0, Left = 0, Right = 3.6, Thickness = 0.25, Modulus = 30e9 },
        ],
        Reaction = 50e6,
        FineAt = [.. Axle()],
        Mesh = mesh ?? SlabMesh.Coarse,
    };

    public static double[] Offsets { get; } = [.. Enumerable.Range(0, 11).Select(n => 0.3 + 0.3 * n)];

    public static GapBar Bar(double diameter = 0.0318) => new(diameter, 0.005, 0.225, 0.22, 407e9);
}
