namespace Slabwright.Core.Joints.Removal;

/// <summary>Concrete under pressure between friction below and a cut that sets it free. SI.</summary>
/// <remarks>
/// A bar whose stress can change by no more than a gradient g along its length: friction γ f, or more where the lane beside holds it.
/// Elementary; worked out in docs/steps/joints-sealing-and-removal.md. With the length alone it is α L ΔT.
/// </remarks>
public static class PressureMechanics
{
    /// <summary>How far the face of a new cut moves on one side, m.</summary>
    /// <param name="stress">Stress under full restraint σ, Pa.</param> <param name="modulus">E, Pa.</param>
    /// <param name="buildUp">Length x in which the stress builds up from a free end, m.</param>
    /// <param name="toFreeEnd">Distance D to the nearest free end on this side, m; infinity where there is none.</param>
    /// <remarks>
    /// The released strain: the stress before the cut, min(σ, g s) from the free end, less the stress after it, which builds up from both
    /// ends. D ≥ 2x: σ x/2E; x ≤ D &lt; 2x: (σ D − σ x/2 − g D²/4)/E; D &lt; x: g D²/4E.
    /// </remarks>
    public static double FaceMovement(double stress, double modulus, double buildUp, double toFreeEnd)
    {
        if (stress <= 0) return 0;
        if (toFreeEnd >= 2 * buildUp) return stress * buildUp / (2 * modulus);
        var gradient = stress / buildUp;
        var after = gradient * toFreeEnd * toFreeEnd / 4;
        var before = toFreeEnd >= buildUp ? stress * (toFreeEnd - buildUp / 2) : gradient * toFreeEnd * toFreeEnd / 2;
        return (before - after) / modulus;
    }

    /// <summary>Closure of a boundary cut next to an open relief cut, m: the face towards the long side gives way as far as the strip between held it.</summary>
    /// <param name="stress">σ, Pa.</param> <param name="modulus">E, Pa.</param> <param name="buildUp">x, m.</param>
    /// <param name="strip">Concrete between the boundary and the relief cut, m.</param>
    /// <param name="toFreeEnd">Distance from the boundary to the nearest free end on the long side, m.</param>
    /// <remarks>Long side: what it moves with its end at the boundary, less what it already moved with its end at the relief cut; an upper bound, half the strip's share is left in. Strip: both its ends free.</remarks>
    public static double ClosureAfterRelief(double stress, double modulus, double buildUp, double strip, double toFreeEnd)
    {
        if (stress <= 0) return 0;
        var held = stress / buildUp * Math.Min(strip, buildUp);
        var released = held * Math.Min(buildUp, toFreeEnd) / modulus;
        return released + held * strip / (4 * modulus);
    }
}
