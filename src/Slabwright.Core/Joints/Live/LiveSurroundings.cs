using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Slabs;

namespace Slabwright.Core.Joints.Live;

/// <summary>Under which corner at the joint the base has gone.</summary>
public enum HollowCorner
{
    /// <summary>Nowhere.</summary>
    None,

    /// <summary>The old slab's corner on the right.</summary>
    OldSlab,

    /// <summary>The repair's corner on the right.</summary>
    Repair,
}

/// <summary>What a joint is looked at with besides wheels.</summary>
/// <param name="LosesContact">True to let slabs lift off: own weight counts and the base pushes but does not pull.</param>
/// <param name="TopWarmer">How much warmer the top is than the bottom, K; counts only where contact may be lost.</param>
/// <param name="Hollow">Corner over a hollow; counts only where contact may be lost.</param>
/// <param name="HollowSide">Sides of the hollow triangle along both edges, m.</param>
/// <param name="HollowDepth">How far the slab must go down there to touch, m.</param>
public sealed record LiveSurroundings(
    bool LosesContact = false, double TopWarmer = 0, HollowCorner Hollow = HollowCorner.None, double HollowSide = 0.6, double HollowDepth = 0.003)
{
    /// <summary>True where the answer to two loads is the sum of the answers to each.</summary>
    public bool AddsUp => !LosesContact;

    /// <summary>The slabs with temperature and hollow put in.</summary>
    public SlabSystem In(SlabSystem system)
    {
        if (!LosesContact) return system;
        return system with
        {
            Pieces = [.. system.Pieces.Select(p => p with { TopWarmer = TopWarmer })],
            Voids = Hollow == HollowCorner.None ? [] : [Triangle(system.Pieces[JointSlabs.Old])],
        };
    }

    private SlabVoid Triangle(SlabPiece old) => Hollow == HollowCorner.OldSlab
        ? new SlabVoid(old.To - HollowSide, old.To, old.Right - HollowSide, old.Right, HollowDepth, (AtFrom: false, AtLeft: false))
        : new SlabVoid(old.To, old.To + HollowSide, old.Right - HollowSide, old.Right, HollowDepth, (AtFrom: true, AtLeft: false));
}
