namespace Slabwright.Core.Joints;

/// <summary>How finding the buried length of a dowel ended.</summary>
/// <param name="Length">Length buried in both slabs together, m.</param> <param name="Iterations">Rounds taken.</param>
/// <param name="Residual">Change in the last round, m.</param> <param name="Converged">True when the change fell below a micrometre.</param>
public readonly record struct DowelLength(double Length, int Iterations, double Residual, bool Converged);

/// <summary>Bradbury's method for dowels: capacities in shear, bending and bearing, and the length that balances the last two. N, m, Pa.</summary>
/// <remarks>
/// Source: NPTEL IIT Bombay lecture 29 p. 12 (older Indian and British practice). The group must carry 40 % of the wheel load over a reach of
/// 1.8 l.
/// </remarks>
public static class BradburyDowel
{
    /// <summary>Share of the wheel load the group must carry.</summary>
    public const double CarriedShare = 0.40;

    /// <summary>Shear capacity, N: 0.785 d² Fs.</summary>
    public static double Shear(double diameter, double allowable) => 0.785 * diameter * diameter * allowable;

    /// <summary>Bending capacity, N: 2 d³ Ff/(Ld + 8.8 z).</summary>
    public static double Bending(double diameter, double allowable, double length, double joint) =>
        2 * Math.Pow(diameter, 3) * allowable / (length + 8.8 * joint);

    /// <summary>Bearing capacity, N: Fb Ld² d/[12.5 (Ld + 1.5 z)].</summary>
    public static double Bearing(double diameter, double allowable, double length, double joint) =>
        allowable * length * length * diameter / (12.5 * (length + 1.5 * joint));

    /// <summary>Buried length at which bending and bearing are used alike: Ld = 5 d √{(Ff/Fb)(Ld + 1.5 z)/(Ld + 8.8 z)}, by repetition.</summary>
    /// <param name="diameter">d, m.</param> <param name="bending">Allowable bending stress of the bar Ff, Pa.</param>
    /// <param name="bearing">Allowable bearing on the concrete Fb, Pa.</param> <param name="joint">z, m.</param>
    public static DowelLength BalancedLength(double diameter, double bending, double bearing, double joint)
    {
        var length = 5 * diameter * Math.Sqrt(bending / bearing);
        var change = double.PositiveInfinity;
        var round = 0;
        while (change > 1e-6 && round < 100)
        {
            var next = 5 * diameter * Math.Sqrt(bending / bearing * (length + 1.5 * joint) / (length + 8.8 * joint));
            (change, length) = (Math.Abs(next - length), next);
            round++;
        }

        return new DowelLength(length, round, change, change <= 1e-6);
    }
}
