namespace Slabwright.Core.Joints;

/// <summary>How long a slab may be without a joint, and how joints share a repair.</summary>
public static class UnjointedLength
{
    /// <summary>Longest plain slab by thickness, m: 24 T on granular base or subgrade, 21 T on stabilised base, concrete or asphalt.</summary>
    /// <remarks>Source: Iowa SUDAS Design Manual 5G-2.</remarks>
    public static double ByThickness(double thickness, bool stabilisedBase) => (stabilisedBase ? 21 : 24) * thickness;

    /// <summary>Dowels in a full-width row: first bar an edge distance in, then at the spacing.</summary>
    /// <remarks>Source: WSDOT dowel bar policy, February 2013: 12 in centres, first bar 12 in from the edge.</remarks>
    /// <param name="width">Lane width, m.</param> <param name="edge">Edge distance of the outer bars, m.</param> <param name="spacing">m.</param>
    public static int FullWidthDowels(double width, double edge, double spacing) =>
        width < 2 * edge ? 0 : (int)Math.Floor((width - 2 * edge) / spacing + 1e-9) + 1;
}
