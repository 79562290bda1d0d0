namespace Slabwright.Core.Joints;

/// <summary>Tie bars across a longitudinal joint. SI.</summary>
/// <remarks>Source: Huang 2004 ch. 4 (from memory); metric text form in NPTEL IIT Bombay lecture 29 p. 14.</remarks>
public static class TieBars
{
    /// <summary>Steel per length of joint, m²/m: γ h L' f/fs.</summary>
    /// <param name="density">Concrete density, kg/m³.</param> <param name="thickness">Slab thickness, m.</param>
    /// <param name="width">Distance from the joint to the nearest free edge, m.</param> <param name="friction">Friction coefficient.</param>
    /// <param name="steelStress">Allowable steel stress, Pa.</param>
    public static double SteelPerLength(double density, double thickness, double width, double friction, double steelStress) =>
        density * SlabTemperature.Gravity * thickness * width * friction / steelStress;

    /// <summary>Spacing of bars of one diameter, m.</summary>
    public static double Spacing(double diameter, double steelPerLength) => Math.PI * diameter * diameter / 4 / steelPerLength;

    /// <summary>Bar length, m: fs d/(2 u) and an allowance for misplacement.</summary>
    /// <param name="steelStress">fs, Pa.</param> <param name="diameter">d, m.</param> <param name="bond">Allowable bond u, Pa.</param>
    /// <param name="allowance">Allowance, m; 3 in in US practice, none in the metric text.</param>
    public static double Length(double steelStress, double diameter, double bond, double allowance) =>
        steelStress * diameter / (2 * bond) + allowance;
}
