namespace Slabwright.Core.Joints;

/// <summary>Curling of a slab that ends at one straight edge and goes on for ever otherwise; full contact. Pa, m.</summary>
/// <remarks>Source: Westergaard 1927, as NPTEL IIT Kanpur Module II lecture 2, eq. 17–19.</remarks>
public static class EdgeCurling
{
    /// <summary>Stress far from every edge, Pa: E α ΔT/(2(1 − µ)).</summary>
    public static double FarStress(double modulus, double expansion, double difference, double poisson) =>
        modulus * expansion * difference / (2 * (1 - poisson));

    /// <summary>Stress at right angles to the edge, Pa; 0 at the edge.</summary>
    /// <param name="far">From <see cref="FarStress"/>, Pa.</param> <param name="distance">Distance from the edge, m.</param>
    /// <param name="radius">l, m.</param>
    public static double StressAcross(double far, double distance, double radius) => far * (1 - Wave(distance, radius));

    /// <summary>Stress along the edge, Pa; E α ΔT/2 at the edge.</summary>
    /// <param name="far">From <see cref="FarStress"/>, Pa.</param> <param name="distance">Distance from the edge, m.</param>
    /// <param name="radius">l, m.</param> <param name="poisson">µ.</param>
    public static double StressAlong(double far, double distance, double radius, double poisson) =>
        far * (1 - poisson * Wave(distance, radius));

    /// <summary>Deflection by curling, m, positive downwards for a warm top: −w0 √2 cos(y/(l√2) + π/4) e^(−y/(l√2)), w0 = (1 + µ) α ΔT l²/h.</summary>
    /// <param name="expansion">α, 1/K.</param> <param name="difference">ΔT top to bottom, K.</param> <param name="thickness">h, m.</param>
    /// <param name="poisson">µ.</param> <param name="distance">Distance from the edge, m.</param> <param name="radius">l, m.</param>
    public static double Deflection(
        double expansion, double difference, double thickness, double poisson, double distance, double radius)
    {
        var (place, w0) = (distance / (radius * Math.Sqrt(2)), (1 + poisson) * expansion * difference * radius * radius / thickness);
        return -w0 * Math.Sqrt(2) * Math.Cos(place + Math.PI / 4) * Math.Exp(-place);
    }

    /// <summary>Stress at a corner, Pa: E α ΔT/(3(1 − µ)) √(a/l).</summary>
    /// <remarks>Source: Bradbury, as NPTEL IIT Bombay lecture 29 p. 5, eq. 3.</remarks>
    /// <param name="modulus">E, Pa.</param> <param name="expansion">α, 1/K.</param> <param name="difference">ΔT, K.</param>
    /// <param name="poisson">µ.</param> <param name="loadRadius">Radius of the wheel's circle a, m.</param> <param name="radius">l, m.</param>
    public static double CornerStress(
        double modulus, double expansion, double difference, double poisson, double loadRadius, double radius) =>
        modulus * expansion * difference / (3 * (1 - poisson)) * Math.Sqrt(loadRadius / radius);

    private static double Wave(double distance, double radius)
    {
        var place = distance / (radius * Math.Sqrt(2));
        return Math.Sqrt(2) * Math.Sin(place + Math.PI / 4) * Math.Exp(-place);
    }
}

/// <summary>The hours that govern in Indian practice.</summary>
public enum GoverningHour
{
    /// <summary>Summer midday at the edge: friction relieves.</summary>
    SummerMiddayEdge,

    /// <summary>Winter midday at the edge: friction adds.</summary>
    WinterMiddayEdge,

    /// <summary>Night at the corner: no friction.</summary>
    NightCorner,
}

/// <summary>Wheel, warping and friction stress put together.</summary>
public static class CombinedStress
{
    /// <summary>Stress to design for, Pa.</summary>
    /// <remarks>Source: lecture notes after IRC practice, sect. 29.4.</remarks>
    /// <param name="hour">Season, hour and place.</param> <param name="load">Wheel stress at that place, Pa.</param>
    /// <param name="warping">Warping stress at that place, Pa.</param> <param name="friction">Friction stress, Pa.</param>
    public static double At(GoverningHour hour, double load, double warping, double friction) => hour switch
    {
        GoverningHour.SummerMiddayEdge => load + warping - friction,
        GoverningHour.WinterMiddayEdge => load + warping + friction,
        GoverningHour.NightCorner => load + warping,
        _ => throw new ArgumentOutOfRangeException(nameof(hour)),
    };
}
