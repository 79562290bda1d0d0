using System.Collections.Immutable;

namespace Slabwright.Core.Joints;

/// <summary>Modulus of foundation reaction from soil tests. Pa, Pa/m. A plate test or back-calculated deflections are better.</summary>
public static class FoundationModulus
{
    private const double Inch = 0.0254;
    private const double Psi = 6894.757293168361;

    /// <summary>k of a slab on subgrade, Pa/m: MR/19.4 in psi and pci.</summary>
    /// <remarks>Source: AASHTO Guide 1993 (from memory).</remarks>
    /// <param name="resilient">Resilient modulus, Pa.</param>
    public static double FromResilient(double resilient) => resilient / (19.4 * Inch);

    /// <summary>Resilient modulus of fine soils with a low CBR, Pa: 1500 CBR in psi.</summary>
    /// <remarks>Source: AASHTO Guide 1993 (from memory); CBR to about 10.</remarks>
    public static double ResilientOfFineSoil(double bearingRatio) => 1500 * bearingRatio * Psi;

    /// <summary>Resilient modulus, Pa: 2555 CBR^0.64 in psi.</summary>
    /// <remarks>Source: NCHRP 1-37A (from memory).</remarks>
    public static double Resilient(double bearingRatio) => 2555 * Math.Pow(bearingRatio, 0.64) * Psi;

    /// <summary>CBR and k in pci, US texts (from memory).</summary>
    public static ImmutableArray<(double BearingRatio, double Pci)> UsTable { get; } =
        [(3, 100), (10, 200), (20, 250), (25, 290), (50, 500), (100, 800)];

    /// <summary>CBR and k in MPa/m, IRC:58 (from memory).</summary>
    public static ImmutableArray<(double BearingRatio, double MegapascalPerMetre)> IrcTable { get; } =
        [(2, 21), (3, 28), (4, 35), (5, 42), (7, 48), (10, 55), (15, 62), (20, 69), (50, 140), (100, 220)];

    /// <summary>k by the US table, Pa/m; null outside CBR 3 to 100.</summary>
    public static double? ByUsTable(double bearingRatio) => Between(UsTable, bearingRatio) * Psi / Inch;

    /// <summary>k by the table of IRC:58, Pa/m; null outside CBR 2 to 100.</summary>
    public static double? ByIrcTable(double bearingRatio) => Between(IrcTable, bearingRatio) * 1e6;

    private static double? Between(ImmutableArray<(double X, double Y)> table, double x)
    {
        if (x < table[0].X || x > table[^1].X) return null;
        var i = 1;
        while (table[i].X < x) i++;
        var (left, right) = (table[i - 1], table[i]);
        return left.Y + (x - left.X) / (right.X - left.X) * (right.Y - left.Y);
    }
}
