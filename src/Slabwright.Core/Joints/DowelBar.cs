namespace Slabwright.Core.Joints;

/// <summary>
/// A round steel dowel as a beam on springs in concrete, and the load it takes within its group. N, m, Pa, Pa/m.
/// </summary>
/// <remarks>Source: Timoshenko and Lessels 1925; Friberg 1940, as in NPTEL IIT Kanpur Module II lecture 4 eq. 25–28.</remarks>
public static class DowelBar
{
    /// <summary>Reach of a group after Friberg 1940, in radii of relative stiffness.</summary>
    public const double FribergReach = 1.8;

    /// <summary>Reach of a group after plate finite elements (Tabatabaie et al. 1979) and IRC:58, in radii of relative stiffness.</summary>
    public const double LaterReach = 1.0;

    /// <summary>Diameter by the rule of thumb, m: an eighth of the thickness.</summary>
    /// <remarks>Source: university lecture "Rigid Pavement Mechanics: Dowel Bars".</remarks>
    public static double DiameterForThickness(double thickness) => thickness / 8;

    /// <summary>Second moment of a round bar, m⁴: π d⁴/64.</summary>
    public static double SecondMoment(double diameter) => Math.PI * Math.Pow(diameter, 4) / 64;

    /// <summary>Relative stiffness of bar and concrete, 1/m: β = [K d/(4 E I)]^¼.</summary>
    /// <param name="support">Modulus of dowel support K, Pa/m.</param> <param name="diameter">Bar diameter, m.</param>
    /// <param name="modulus">Young's modulus of steel, Pa.</param>
    public static double Beta(double support, double diameter, double modulus) =>
        Math.Pow(support * diameter / (4 * modulus * SecondMoment(diameter)), 0.25);

    /// <summary>Deflection of the bar at the joint face, m: y0 = P (2 + β z)/(4 β³ E I).</summary>
    /// <param name="shear">Load carried by the bar, N.</param> <param name="joint">Joint width z, m.</param>
    /// <param name="beta">β, 1/m.</param> <param name="diameter">Bar diameter, m.</param> <param name="modulus">Steel modulus, Pa.</param>
    public static double FaceDeflection(double shear, double joint, double beta, double diameter, double modulus) =>
        shear * (2 + beta * joint) / (4 * Math.Pow(beta, 3) * modulus * SecondMoment(diameter));

    /// <summary>Bearing stress of concrete under the bar at the joint face, Pa: K y0.</summary>
    public static double BearingStress(double support, double faceDeflection) => support * faceDeflection;

    /// <summary>Allowable bearing, Pa: (4 − d)/3 · f'c with d in inches.</summary>
    /// <remarks>Source: university lecture "Rigid Pavement Mechanics: Dowel Bars".</remarks>
    /// <param name="diameter">Bar diameter, m; below 4 in.</param> <param name="strength">Cylinder strength f'c, Pa.</param>
    public static double AllowableBearing(double diameter, double strength) => (4 - diameter / 0.0254) / 3 * strength;

    /// <summary>Allowable bearing from cube strength, Pa: (101.6 − d)/95.25 · fck with d in mm.</summary>
    /// <remarks>Source: IRC:58-2015 method as in a project annexure (IRC58-ANNEX-B) and NPTEL IIT Kanpur Module II lecture 4 slide 4.</remarks>
    public static double AllowableBearingFromCube(double diameter, double cubeStrength) => (101.6 - diameter * 1000) / 95.25 * cubeStrength;

    /// <summary>
    /// Sum of the shares of a group when the bar under the wheel takes 1 and the others linearly less to zero at the reach.
    /// </summary>
    /// <remarks>Source: Friberg 1940, reach 1.8 l; Tabatabaie et al. 1979 and IRC:58, reach 1.0 l.</remarks>
    /// <param name="spacing">Bar spacing, m.</param> <param name="reach">Distance at which a bar takes nothing, m.</param>
    /// <param name="sides">1 where the loaded bar is the outermost, 2 where bars lie on both sides.</param>
    public static double GroupSum(double spacing, double reach, int sides)
    {
        var sum = 0.0;
        for (var i = 1; i * spacing < reach; i++) sum += 1 - i * spacing / reach;
        return 1 + sides * sum;
    }

    /// <summary>Stiffness of one bar across the joint, N/m: D = 1/[1/DCI + 1/(12 C)].</summary>
    /// <remarks>
    /// DCI = 4 β³ E I/(2 + β z); C = E I/[z³ (1 + φ)]; φ = 12 E I/(G A z²), A 0.9 of the section. Source: Ioannides and Korovesis 1992
    /// (from memory).
    /// </remarks>
    /// <param name="support">K, Pa/m.</param> <param name="diameter">d, m.</param> <param name="modulus">E, Pa.</param>
    /// <param name="poisson">Poisson's ratio of steel.</param> <param name="joint">z, m; above 0.</param>
    public static double JointStiffness(double support, double diameter, double modulus, double poisson, double joint)
    {
        var bending = modulus * SecondMoment(diameter);
        var beta = Beta(support, diameter, modulus);
        var dci = 4 * Math.Pow(beta, 3) * bending / (2 + beta * joint);
        var shearArea = 0.9 * Math.PI * diameter * diameter / 4;
        var phi = 12 * bending / (modulus / (2 * (1 + poisson)) * shearArea * joint * joint);
        var across = bending / (Math.Pow(joint, 3) * (1 + phi));
        return 1 / (1 / dci + 1 / (12 * across));
    }
}
