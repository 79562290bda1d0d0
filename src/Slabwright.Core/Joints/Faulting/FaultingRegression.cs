namespace Slabwright.Core.Joints.Faulting;

/// <summary>What the closed regressions of faulting ask. SI; a regression uses only some of it.</summary>
public sealed record RegressionInputs
{
    /// <summary>18-kip equivalent single axles so far.</summary>
    public required double EquivalentAxles { get; init; }

    /// <summary>Age, years.</summary>
    public double Age { get; init; }

    /// <summary>AASHTO drainage coefficient Cd.</summary>
    public double Drainage { get; init; } = 1;

    /// <summary>Bearing stress of the outer dowel by <see cref="FaultingRegression.BearingStress"/>, Pa.</summary>
    public double Bearing { get; init; }

    /// <summary>Joint spacing, m.</summary>
    public double JointSpacing { get; init; }

    /// <summary>Slab thickness, m.</summary>
    public double Thickness { get; init; }

    /// <summary>Freezing index, K·days.</summary>
    public double FreezingIndex { get; init; }

    /// <summary>Precipitation a year, m.</summary>
    public double Precipitation { get; init; }

    /// <summary>Days a year above 90 °F (32 °C).</summary>
    public double HotDays { get; init; }

    /// <summary>True on a stabilised base.</summary>
    public bool StabilisedBase { get; init; }

    /// <summary>True with a widened lane.</summary>
    public bool WideLane { get; init; }

    /// <summary>True with a tied concrete shoulder or other edge support.</summary>
    public bool EdgeSupport { get; init; }

    /// <summary>True with edge drains.</summary>
    public bool EdgeDrains { get; init; }

    /// <summary>k, Pa/m.</summary>
    public double Reaction { get; init; }

    /// <summary>Dowel diameter, m.</summary>
    public double DowelDiameter { get; init; }
}

/// <summary>
/// Mean faulting by regressions on roads, m. They can go below zero where the inputs leave the data they were fitted to; the result is given
/// as it is, and a negative one means no more than none.
/// </summary>
public static class FaultingRegression
{
    private const double Inch = 0.0254;
    private const double Foot = 0.3048;
    private const double Psi = 6894.757293168361;
    private const double Pound = 4.4482216152605;

    /// <summary>Dowelled joints: CESAL^0.25 [0.0628 − 0.0628 Cd + 0.3673e-8 B² + 0.4116e-5 L² + 0.7466e-9 FI² P^0.5 − 0.009503 BASE − 0.01917 WIDE + 0.0009217 AGE].</summary>
    /// <remarks>Source: AASHTO Supplement 1998, FHWA-RD-97-131 (from memory). CESAL in millions, psi, ft, °F·days, inches.</remarks>
    public static double Aashto1998Dowelled(RegressionInputs x) => Inch * Loads(x, 0.25)
        * (0.0628 - 0.0628 * x.Drainage + 0.3673e-8 * Math.Pow(x.Bearing / Psi, 2) + 0.4116e-5 * Math.Pow(x.JointSpacing / Foot, 2)
            + 0.7466e-9 * Math.Pow(x.FreezingIndex * 1.8, 2) * Math.Sqrt(x.Precipitation / Inch)
            - 0.009503 * One(x.StabilisedBase) - 0.01917 * One(x.WideLane) + 0.0009217 * x.Age);

    /// <summary>Joints without dowels: CESAL^0.25 [0.2347 − 0.1516 Cd − 0.000250 h²/L^0.25 − 0.0115 BASE + 0.7784e-7 FI^1.5 P^0.25 − 0.002478 D90^0.5 − 0.0415 WIDE].</summary>
    /// <remarks>Source: as <see cref="Aashto1998Dowelled"/> (from memory).</remarks>
    public static double Aashto1998Undowelled(RegressionInputs x) => Inch * Loads(x, 0.25)
        * (0.2347 - 0.1516 * x.Drainage - 0.000250 * Math.Pow(x.Thickness / Inch, 2) / Math.Pow(x.JointSpacing / Foot, 0.25)
            - 0.0115 * One(x.StabilisedBase) + 0.7784e-7 * Math.Pow(x.FreezingIndex * 1.8, 1.5) * Math.Pow(x.Precipitation / Inch, 0.25)
            - 0.002478 * Math.Sqrt(x.HotDays) - 0.0415 * One(x.WideLane));

    /// <summary>Dowelled joints: CESAL^0.5377 [2.2073 + 0.002171 B^0.4918 + 0.0003292 L^1.0793 − 2.1397 k^0.01305].</summary>
    /// <remarks>Source: FHWA rigid pavement performance study 1990, FHWA-RD-89-136 (from memory), R² 0.53. Negative at low bearing stress.</remarks>
    public static double PerformanceStudy1990(RegressionInputs x) => Inch * Loads(x, 0.5377)
        * (2.2073 + 0.002171 * Math.Pow(x.Bearing / Psi, 0.4918) + 0.0003292 * Math.Pow(x.JointSpacing / Foot, 1.0793)
            - 2.1397 * Math.Pow(Pci(x.Reaction), 0.01305));

    /// <summary>Dowelled joints: CESAL^0.25 [0.0238 + 0.0006 (L/10)² + 0.0037 (100/k)² + 0.0039 (AGE/10)² − 0.0037 EDGE − 0.0218 d].</summary>
    /// <remarks>Source: early analysis of long-term performance data, report P-020, 1994 (from memory).</remarks>
    public static double EarlyAnalysisDowelled(RegressionInputs x) => Inch * Loads(x, 0.25)
        * (0.0238 + 0.0006 * Math.Pow(x.JointSpacing / Foot / 10, 2) + 0.0037 * Math.Pow(100 / Pci(x.Reaction), 2)
            + 0.0039 * Math.Pow(x.Age / 10, 2) - 0.0037 * One(x.EdgeSupport) - 0.0218 * (x.DowelDiameter / Inch));

    /// <summary>Joints without dowels: CESAL^0.25 [−0.0757 + 0.0251 AGE^0.5 + 0.0013 (P/10)² + 0.0012 FI P/1000 − 0.0378 DRAIN].</summary>
    /// <remarks>Source: as <see cref="EarlyAnalysisDowelled"/> (from memory).</remarks>
    public static double EarlyAnalysisUndowelled(RegressionInputs x)
    {
        var rain = x.Precipitation / Inch;
        return Inch * Loads(x, 0.25) * (-0.0757 + 0.0251 * Math.Sqrt(x.Age) + 0.0013 * Math.Pow(rain / 10, 2)
            + 0.0012 * x.FreezingIndex * 1.8 * rain / 1000 - 0.0378 * One(x.EdgeDrains));
    }

    /// <summary>Bearing stress the regressions were fitted with, Pa: f P T K (2 + β z)/(4 E I β³), f = 24/(l + 12) in inches.</summary>
    /// <remarks>
    /// Source: FHWA-RD-89-136 (from memory). P = 9000 lb, T = 0.45, K = 1.5 million pci, Es = 29 million psi. Use with these regressions only.
    /// </remarks>
    /// <param name="diameter">Dowel diameter, m.</param> <param name="radius">Radius of relative stiffness l, m.</param>
    /// <param name="opening">Joint opening z by <see cref="Opening"/>, m.</param>
    public static double BearingStress(double diameter, double radius, double opening)
    {
        var (support, steel) = (1.5e6 * Psi / Inch, 29e6 * Psi);
        var load = 24 * Inch / (radius + 12 * Inch) * 9000 * Pound * 0.45;
        var beta = DowelBar.Beta(support, diameter, steel);
        return DowelBar.BearingStress(support, DowelBar.FaceDeflection(load, opening, beta, diameter, steel));
    }

    /// <summary>Joint opening the regressions were fitted with, m: C L (α TRANGE/2 + ε), ε = 1.5e-4.</summary>
    /// <remarks>Source: as <see cref="BearingStress"/>. The yearly range of mean monthly temperature is halved.</remarks>
    /// <param name="restraint">C: 0.65 on stabilised, 0.80 on granular base.</param> <param name="spacing">Joint spacing, m.</param>
    /// <param name="expansion">α, 1/K.</param> <param name="range">TRANGE, K.</param>
    public static double Opening(double restraint, double spacing, double expansion, double range) =>
        JointMovement.Opening(restraint, spacing, expansion, range / 2, 1.5e-4);

    private static double Loads(RegressionInputs x, double power) => Math.Pow(x.EquivalentAxles / 1e6, power);

    private static double Pci(double reaction) => reaction / (Psi / Inch);

    private static double One(bool yes) => yes ? 1 : 0;
}
