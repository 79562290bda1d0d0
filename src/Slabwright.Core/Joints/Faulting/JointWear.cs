namespace Slabwright.Core.Joints.Faulting;

/// <summary>Load transfer of a joint as bars loosen and faces wear, and how fast they do.</summary>
/// <remarks>
/// Source: NCHRP 1-37A part 3 ch. 4 (from memory throughout). Stiffnesses are dimensionless; the coefficients ask for inches, mils and psi
/// inside.
/// </remarks>
public static class JointWear
{
    private const double Inch = 0.0254;
    private const double Psi = 6894.757293168361;

    /// <summary>Stiffness of new bars, J0 = 120 d²/h (inches).</summary>
    /// <param name="diameter">d, m.</param> <param name="thickness">h, m.</param>
    public static double NewBars(double diameter, double thickness) => 120 * SizeRatio(diameter, thickness);

    /// <summary>Stiffness worn bars tend to, Jd* = min(118, max(165 d²/h − 19.812, 0.4)) (inches).</summary>
    /// <remarks>Above d²/h = 0.44 in the formula passes that of new bars; real highway joints stay below.</remarks>
    /// <param name="diameter">d, m.</param> <param name="thickness">h, m.</param>
    public static double WornBars(double diameter, double thickness) =>
        Math.Min(118, Math.Max(165 * SizeRatio(diameter, thickness) - 19.812, 0.4));

    /// <summary>Stiffness of bars at a damage: Jd* + (J0 − Jd*) e^−D.</summary>
    /// <param name="new">J0.</param> <param name="worn">Jd*.</param> <param name="damage">Damage D, 0 when new.</param>
    public static double Bars(double @new, double worn, double damage) => worn + (@new - worn) * Math.Exp(-damage);

    /// <summary>
    /// Damage of the bars by passes of one axle group: C8 F n/(10⁶ d f*c) with F = Jd (d_l − d_u) s in the units as printed (inches).
    /// </summary>
    /// <remarks>
    /// As a force F would need the factor k l. With it, the coefficient of 400 would wear every bar out within weeks, while as printed bars
    /// last for tens of millions of axles; so F is taken as printed and is not a force.
    /// </remarks>
    /// <param name="factor">C8.</param> <param name="stiffness">Jd now.</param> <param name="difference">d_l − d_u, m.</param>
    /// <param name="spacing">Bar spacing, m.</param> <param name="passes">Passes n.</param> <param name="diameter">d, m.</param>
    /// <param name="strength">Estimated compressive strength of the concrete, Pa.</param>
    public static double BarDamage(
        double factor, double stiffness, double difference, double spacing, double passes, double diameter, double strength) =>
        factor * (stiffness * (difference / Inch) * (spacing / Inch)) * passes / (1e6 * (diameter / Inch) * (strength / Psi));

    /// <summary>Shear capacity of new faces, S0 = 0.05 h e^(−0.028 w) with h in inches and the opening w in mils.</summary>
    /// <param name="thickness">h, m.</param> <param name="opening">Joint opening w, m.</param>
    public static double FaceCapacity(double thickness, double opening) =>
        0.05 * (thickness / Inch) * Math.Exp(-0.028 * Mils(opening));

    /// <summary>Stiffness of interlocking faces: log J = −3.19626 + 16.09737 exp{−exp[−(S − 0.35)/0.38]}.</summary>
    /// <param name="capacity">Shear capacity S now.</param>
    public static double Faces(double capacity) =>
        Math.Pow(10, -3.19626 + 16.09737 * Math.Exp(-Math.Exp(-(capacity - 0.35) / 0.38)));

    /// <summary>Loss of shear capacity by one pass.</summary>
    /// <remarks>
    /// None below an opening of 0.001 mil per inch of slab; 0.005e-6/[1 + (w/h)^−5.7] τ/τref up to 3.8; 0.068e-6/[1 + 6 (w/h − 3)^−1.98]
    /// τ/τref beyond; τ = J (d_l − d_u) as printed; τref = 111.1 exp{−exp[0.9988 exp(−0.1089 log J)]}.
    /// </remarks>
    /// <param name="thickness">h, m.</param> <param name="opening">w, m.</param> <param name="stiffness">J of the faces now.</param>
    /// <param name="difference">d_l − d_u, m.</param>
    public static double FaceLoss(double thickness, double opening, double stiffness, double difference)
    {
        var ratio = Mils(opening) / (thickness / Inch);
        if (ratio < 0.001) return 0;
        var perPass = ratio <= 3.8
            ? 0.005e-6 / (1 + Math.Pow(ratio, -5.7))
            : 0.068e-6 / (1 + 6 * Math.Pow(ratio - 3, -1.98));
        return perPass * stiffness * (difference / Inch) / ReferenceStress(stiffness);
    }

    /// <summary>τref = 111.1 exp{−exp[0.9988 exp(−0.1089 log J)]}, as printed.</summary>
    public static double ReferenceStress(double stiffness) =>
        111.1 * Math.Exp(-Math.Exp(0.9988 * Math.Exp(-0.1089 * Math.Log10(stiffness))));

    /// <summary>Load transfer by bars, faces and base together: 1 − (1 − T_d)(1 − T_a)(1 − T_b), shares.</summary>
    public static double Together(double bars, double faces, double @base) => 1 - (1 - bars) * (1 - faces) * (1 - @base);

    private static double SizeRatio(double diameter, double thickness) => diameter * diameter / (thickness * Inch);

    private static double Mils(double length) => length / Inch * 1000;
}
