namespace Slabwright.Core.Joints.Design;

/// <summary>Stress transfer of a joint from its deflection transfer.</summary>
/// <remarks>
/// Worked out for two half plates on springs joined by a shear spring, µ 0.15, by Fourier transform along the joint; between the values
/// by straight lines. Loads of 0.1 and 0.3 radii of relative stiffness.
/// </remarks>
internal static class StressTransfer
{
    private static readonly double[] Deflections = [0, 0.081, 0.4225, 0.733, 0.826, 0.967, 1];
    private static readonly double[] Small = [0, 0.016, 0.097, 0.215, 0.278, 0.522, 1];
    private static readonly double[] Large = [0, 0.025, 0.150, 0.339, 0.438, 0.771, 1];

    /// <summary>Stress transfer, share.</summary>
    /// <param name="deflection">Deflection transfer, 0 to 1.</param> <param name="loadRatio">Load radius over radius of relative stiffness.</param>
    public static double Of(double deflection, double loadRatio)
    {
        var between = Math.Clamp((loadRatio - 0.1) / 0.2, 0, 1);
        return (1 - between) * Interpolate(Small, deflection) + between * Interpolate(Large, deflection);
    }

    private static double Interpolate(double[] values, double at)
    {
        for (var n = 1; n < Deflections.Length; n++)
        {
            if (at > Deflections[n]) continue;
            var share = (at - Deflections[n - 1]) / (Deflections[n] - Deflections[n - 1]);
            return values[n - 1] + share * (values[n] - values[n - 1]);
        }

        return 1;
    }
}
