namespace Slabwright.Core.Joints;

/// <summary>The least warm-up at which a slab on ground can arch up, and the arch at that point.</summary>
/// <param name="SafeRise">Rise of slab temperature below which no arch can stand, K.</param>
/// <param name="Length">Length of the arch, m.</param> <param name="Stress">Compression far from the arch, Pa.</param>
/// <param name="Lift">Height of the arch, m.</param> <param name="Moment">Greatest moment per width, N.</param>
public readonly record struct LiftOff(double SafeRise, double Length, double Stress, double Lift, double Moment);

/// <summary>Restrained expansion and blow-up of a slab strip, per unit width. Pa, m, K.</summary>
public static class SlabBuckling
{
    /// <summary>Compression that friction has built up at a distance from a free end, Pa: γ f x.</summary>
    /// <remarks>Elementary.</remarks>
    /// <param name="density">kg/m³.</param> <param name="friction">Friction coefficient.</param> <param name="distance">x, m.</param>
    public static double FrictionBuildUp(double density, double friction, double distance) =>
        density * SlabTemperature.Gravity * friction * distance;

    /// <summary>Distance from a free end over which friction builds a stress up, m: σ/(γ f). A relief cut frees no more than this.</summary>
    public static double BuildUpLength(double stress, double density, double friction) =>
        stress / (density * SlabTemperature.Gravity * friction);

    /// <summary>Buckling stress of a continuous strip held down by springs both ways, Pa: 2 √(k E I)/h.</summary>
    /// <remarks>
    /// Elementary beam on springs. Far above crushing for real slabs, since ground cannot pull down: a check for an eigenvalue solver, not a
    /// design value.
    /// </remarks>
    /// <param name="modulus">E, Pa.</param> <param name="thickness">h, m.</param> <param name="reaction">k, Pa/m.</param>
    public static double OnSprings(double modulus, double thickness, double reaction) =>
        2 * Math.Sqrt(reaction * modulus * Math.Pow(thickness, 3) / 12) / thickness;

    /// <summary>The same with a hinge (a joint), Pa: √(k E I)/h.</summary>
    /// <inheritdoc cref="OnSprings" path="/remarks"/> <inheritdoc cref="OnSprings" path="/param"/>
    public static double OnSpringsHinged(double modulus, double thickness, double reaction) => OnSprings(modulus, thickness, reaction) / 2;

    /// <summary>Least rise of temperature at which a heavy strip on hard ground can arch up: P0 = P + (w L/EI) √(1.597e-5 E A f w L⁵ − ¼ (f E I)²), least over L.</summary>
    /// <remarks>
    /// P = 80.76 EI/L², lift 2.408e-3 w L⁴/EI, moment 0.06938 w L². Source: Hobbs 1981 for pipelines and tracks (form read, constants from
    /// memory). Straight, without hinge; joints, cracks and uneven faces lower it.
    /// </remarks>
    /// <param name="modulus">E, Pa.</param> <param name="thickness">h, m.</param> <param name="expansion">α, 1/K.</param>
    /// <param name="density">kg/m³.</param> <param name="friction">Friction coefficient.</param>
    public static LiftOff Arch(double modulus, double thickness, double expansion, double density, double friction)
    {
        var (ei, ea) = (modulus * Math.Pow(thickness, 3) / 12, modulus * thickness);
        var weight = density * SlabTemperature.Gravity * thickness;
        var shortest = Math.Pow(0.25 * friction * ei * ei / (1.597e-5 * ea * weight), 0.2);
        var length = Math.Exp(Least(l => FarForce(Math.Exp(l), ei, ea, weight, friction), Math.Log(shortest), Math.Log(shortest) + 5));
        var force = FarForce(length, ei, ea, weight, friction);
        return new LiftOff(
            force / (ea * expansion), length, force / thickness, 2.408e-3 * weight * Math.Pow(length, 4) / ei, 0.06938 * weight * length * length);
    }

    /// <summary>Compression far from an arch of a length, per width, N/m; defined from the length where its root vanishes.</summary>
    private static double FarForce(double length, double ei, double ea, double weight, double friction)
    {
        var root = 1.597e-5 * ea * friction * weight * Math.Pow(length, 5) - 0.25 * friction * friction * ei * ei;
        return 80.76 * ei / (length * length) + weight * length / ei * Math.Sqrt(Math.Max(0, root));
    }

    /// <summary>Golden-section search for the least value of a function with one low point.</summary>
    private static double Least(Func<double, double> function, double low, double high)
    {
        var golden = (Math.Sqrt(5) - 1) / 2;
        var (left, right) = (high - golden * (high - low), low + golden * (high - low));
        while (high - low > 1e-10)
        {
            if (function(left) < function(right)) high = right;
            else low = left;
            (left, right) = (high - golden * (high - low), low + golden * (high - low));
        }

        return (low + high) / 2;
    }
}
