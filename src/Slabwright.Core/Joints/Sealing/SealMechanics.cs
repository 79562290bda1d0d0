namespace Slabwright.Core.Joints.Sealing;

/// <summary>What a bead of sealant does when its joint opens and closes. SI; the bead keeps its area.</summary>
/// <remarks>
/// Source: geometry of a bead whose free faces are parabolas (the picture E. Tons used in 1959, from memory); worked out here, see
/// docs/steps/joints-sealing-and-removal.md.
/// </remarks>
public static class SealMechanics
{
    /// <summary>How far each free face of the bead draws in when the joint widens, m: 3 d δ / (4 (w + δ)).</summary>
    /// <param name="width">Width when placed w, m.</param> <param name="depth">Depth d, m.</param> <param name="opening">Widening δ, m.</param>
    public static double Sag(double width, double depth, double opening) => 0.75 * depth * opening / (width + opening);

    /// <summary>Lengthening along the curved face when the joint widens, share: length of the parabola over the width placed, less one.</summary>
    /// <param name="width">Width when placed w, m.</param> <param name="depth">Depth d, m.</param> <param name="opening">Widening δ, m.</param>
    public static double SurfaceStrain(double width, double depth, double opening)
    {
        var (chord, sag) = (width + opening, Sag(width, depth, opening));
        return sag <= 0 ? chord / width - 1 : ParabolaLength(chord, sag) / width - 1;
    }

    /// <summary>How far the bead bulges upward when the joint narrows and the backer rod does not give, m: 3 d δ / (2 (w − δ)).</summary>
    /// <param name="width">Width when placed w, m.</param> <param name="depth">Depth d, m.</param> <param name="closing">Narrowing δ below w, m.</param>
    public static double Bulge(double width, double depth, double closing) =>
        closing >= width ? double.PositiveInfinity : 1.5 * depth * closing / (width - closing);

    /// <summary>Half of each body of concrete beside a joint moves at it, m: C (½ Lₗ + ½ Lᵣ)(α ΔT + ε), with each body's own α and ε.</summary>
    /// <param name="restraint">C.</param>
    /// <param name="oldLength">Halves of the old concrete beside the joint, m.</param> <param name="oldStrain">α ΔT + ε of the old concrete.</param>
    /// <param name="newLength">Halves of the new concrete beside the joint, m.</param> <param name="newStrain">α ΔT + ε of the new concrete.</param>
    public static double Opening(double restraint, double oldLength, double oldStrain, double newLength, double newStrain) =>
        JointMovement.Opening(restraint, oldLength, 1, oldStrain, 0) + JointMovement.Opening(restraint, newLength, 1, newStrain, 0);

    private static double ParabolaLength(double chord, double sag)
    {
        var slant = Math.Sqrt(chord * chord + 16 * sag * sag);
        return slant / 2 + chord * chord / (8 * sag) * Math.Log((4 * sag + slant) / chord);
    }
}
