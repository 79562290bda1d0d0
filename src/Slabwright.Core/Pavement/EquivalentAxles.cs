namespace Slabwright.Core.Pavement;

/// <summary>Traffic in equivalent 18-kip single axles on rigid pavement.</summary>
public static class EquivalentAxles
{
    private const double Kip = 4448.2216152605;

    /// <summary>Load equivalency factor of one axle group on a rigid pavement.</summary>
    /// <remarks>Source: AASHTO Guide 1993, rigid equivalency with road-test constants (Liu, Darter and Carpenter, TRR 1207, eq. 1).</remarks>
    /// <param name="load">Load of the whole group, N.</param> <param name="axles">1 single, 2 tandem, 3 tridem.</param>
    /// <param name="thickness">Slab thickness, m.</param> <param name="terminal">Terminal serviceability, e.g. 2.5.</param>
    public static double Factor(double load, int axles, double thickness, double terminal)
    {
        var (kips, inches) = (load / Kip, thickness / 0.0254);
        var loss = Math.Log10((4.5 - terminal) / 3.0);
        var ratio = 4.62 * Math.Log10(19) - 4.62 * Math.Log10(kips + axles) + 3.28 * Math.Log10(axles)
            + loss / Beta(kips, axles, inches) - loss / Beta(18, 1, inches);
        return Math.Pow(10, -ratio);
    }

    /// <summary>Road-test exponent β = 1 + 3.63 (L + n)^5.20 / [(D + 1)^8.46 n^3.52].</summary>
    /// <param name="kips">Load of the group, kip.</param> <param name="axles">Axles in the group.</param> <param name="inches">Slab, in.</param>
    public static double Beta(double kips, int axles, double inches) =>
        1 + 3.63 * Math.Pow(kips + axles, 5.20) / (Math.Pow(inches + 1, 8.46) * Math.Pow(axles, 3.52));

    /// <summary>Share of trucks in the design lane: 1.567 − 0.0826 ln(one-way AADT) − 0.12368 for three lanes or more.</summary>
    /// <remarks>Source: NCHRP 277 (from memory); reproduces FDOT 625-010-002 (2018) Table D.2.</remarks>
    /// <param name="oneWayVolume">AADT in one direction, vehicles per day.</param> <param name="lanes">Lanes in that direction, 2 or more.</param>
    public static double DesignLaneShare(double oneWayVolume, int lanes) =>
        1.567 - 0.0826 * Math.Log(oneWayVolume) - (lanes >= 3 ? 0.12368 : 0);

    /// <summary>Sum of a growing series of yearly volumes over the first year's: [(1 + g)^n − 1]/g; n where g is 0.</summary>
    /// <remarks>Elementary geometric series.</remarks>
    public static double GrowthFactor(double growth, double years) =>
        growth == 0 ? years : (Math.Pow(1 + growth, years) - 1) / growth;
}
