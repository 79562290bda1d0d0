using Slabwright.Core.Joints;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Wheel-load closed forms against Huang 2004, examples 4.2 to 4.4 (from memory), and against exact integrals of the plate on springs
/// (worked independently by numerical integration; deviations stated with each check). k 100 pci, h 10 in, a 6 in, P 10,000 lb,
/// E 4 million psi, µ 0.15.
/// </summary>
public class WestergaardTests
{
    private const double Inch = 0.0254;
    private const double Pound = 4.4482216152605;
    private const double Psi = Pound / (Inch * Inch);
    private const double P = 10_000 * Pound;
    private const double A = 6 * Inch;
    private const double H = 10 * Inch;
    private const double E = 4e6 * Psi;
    private const double K = 100 * Psi / Inch;

    private static readonly double L = RelativeStiffness.Radius(E, H, 0.15, K);

    [Fact]
    public void Radius_of_relative_stiffness() => Assert.Equal(42.97, L / Inch, 0.005);

    [Fact]
    public void Corner()
    {
        Assert.Equal(186.6, WheelLoad.CornerStress(P, A, H, L) / Psi, 0.1);
        Assert.Equal(0.0502, WheelLoad.CornerDeflection(P, A, K, L) / Inch, 0.00005);
        Assert.Equal(190.3, WheelLoad.CornerStressFitted(P, A, H, L) / Psi, 0.1);
        Assert.Equal(0.0560, WheelLoad.CornerDeflectionFitted(P, A, K, L) / Inch, 0.00005);
    }

    /// <summary>Huang's short form leaves the supplementary term of 0.10 psi out: deviation 0.10 %.</summary>
    [Fact]
    public void Interior()
    {
        Assert.Equal(5.804, WheelLoad.EquivalentRadius(A, H) / Inch, 0.0005);
        Assert.Equal(143.7, WheelLoad.InteriorStress(P, A, H, 0.15, L) / Psi, 0.2);
        Assert.Equal(0.0067, WheelLoad.InteriorDeflection(P, A, K, L) / Inch, 0.00005);
    }

    /// <summary>Exact integral with Kelvin functions: 0.00669902 in; the closed form deviates by 2 in a million.</summary>
    [Fact]
    public void Interior_deflection_meets_the_exact_integral() =>
        Assert.Equal(0.00669902, WheelLoad.InteriorDeflection(P, A, K, L) / Inch, 2e-8);

    /// <summary>Ordinary theory with the supplementary term is 142.0287 psi, exact integral 142.0283; reached here where b = a.</summary>
    [Fact]
    public void Interior_stress_meets_the_exact_integral_for_a_thin_plate()
    {
        // A plate thin enough that the special theory does not apply (a > 1.724 h), scaled to the same a/l.
        var thin = A / 2;
        var ratio = A / L;
        var stress = WheelLoad.InteriorStress(P, A, thin, 0.15, A / ratio) * thin * thin;
        Assert.Equal(142.0283 * Psi * H * H, stress, 0.0005 * Psi * H * H + 1e-6 * stress);
    }

    /// <summary>The long form deviates from Huang's short form by 0.04 %.</summary>
    [Fact]
    public void Edge()
    {
        Assert.Equal(279.4, WheelLoad.EdgeStressCircle(P, A, H, E, 0.15, K, L) / Psi, 0.15);
        Assert.Equal(0.0207, WheelLoad.EdgeDeflectionCircle(P, A, H, E, 0.15, K, L) / Inch, 0.00005);
        Assert.Equal(330.0, WheelLoad.EdgeStressHalfCircle(P, A, H, E, 0.15, K, L) / Psi, 0.1);
        Assert.Equal(0.0222, WheelLoad.EdgeDeflectionHalfCircle(P, A, H, E, 0.15, K, L) / Inch, 0.00005);
    }

    /// <summary>Exact deflection of a point load at a free edge, in P/(k l²): 0.408248 at µ 0, 0.431438 at 0.15, 0.440640 at 0.20.</summary>
    [Theory]
    [InlineData(0, 0.408248)]
    [InlineData(0.15, 0.431438)]
    [InlineData(0.20, 0.440640)]
    public void Edge_deflection_of_a_point_load_meets_the_exact_integral(double poisson, double factor)
    {
        var radius = RelativeStiffness.Radius(E, H, poisson, K);
        var deflection = WheelLoad.EdgeDeflectionCircle(P, 1e-9, H, E, poisson, K, radius);
        Assert.Equal(factor, deflection * K * radius * radius / P, 0.0012);
    }
}
