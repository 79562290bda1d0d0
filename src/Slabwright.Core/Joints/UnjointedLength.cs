namespace Slabwright.Core.Joints;

/// <summary>How long a slab may be without a joint.</summary>
public static class UnjointedLength
{
    /// <summary>Longest plain slab by thickness, m: 24 T on granular base or subgrade, 21 T on stabilised base, concrete or asphalt.</summary>
    /// <remarks>Source: Iowa SUDAS Design Manual 5G-2.</remarks>
    public static double ByThickness(double thickness, bool stabilisedBase) => (stabilisedBase ? 21 : 24) * thickness;
}
